#pragma once
// Numbers in the fields of the window. What is typed stays as it was typed, in drafts too; only
// what the program itself puts into a field is written for the reader.

#include <QString>

namespace loopwright {

/// A number as the program puts it into a field.
QString numberAsTyped(double value);
QString numberAsTyped(const QString &english);

/// Why a text that is typed into a field of numbers cannot be taken: it has two readings, and both
/// are said. Empty where it has one or is none.
QString whyUnclear(const QString &typed);

} // namespace loopwright
