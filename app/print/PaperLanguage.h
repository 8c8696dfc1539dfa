#pragma once
// The language that papers are laid out in. A paper is put together in English, as its record is,
// and said again when it is laid out; what a person typed stays as it is.

#include <QStringList>

#include <functional>

namespace loopwright {

struct PaperLanguage
{
    QString code = QStringLiteral("en"); ///< BCP 47
    /// A text of a paper, and what was typed and is no text of the program; none: English.
    std::function<QString(const QString &english, const QStringList &typed)> say = {};
};

/// Of every paper that is laid out from now on. Not while one is.
void setPaperLanguage(PaperLanguage language);
const PaperLanguage &paperLanguage();
/// In that language.
QString onPaper(const QString &english, const QStringList &typed = {});

} // namespace loopwright
