#pragma once
// One form for all ways of writing the same, for whatever is found by what is typed.

#include <QString>

namespace loopwright {

/// Lower case, without accents, white space made one blank.
QString foldForSearch(const QString &text);

} // namespace loopwright
