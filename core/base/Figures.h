#pragma once
// Figures as a language writes them. In English, in records and in files the decimal mark is the
// point; German shows a comma and takes either. Nothing that is stored or sent goes through here.

#include <QString>

#include <optional>
#include <utility>

namespace loopwright {

constexpr QChar englishMark = u'.';

/// A number with its unit, a time, a key: no words, so that only the decimal mark can differ from
/// one language to another.
bool isFigure(const QString &text);

/// A figure with the decimal mark of the reader; the thousands of a count that English groups
/// change places with it ("12,345" is "12.345"). Words, keys, dates, versions ("1.2.3") and what
/// has a letter at its digits ("T1.601") stay as they are.
QString figureWith(QChar mark, const QString &english);

/// Whether what stands in this place of a source was typed or is a key, which may look like a
/// figure: in quotation marks, or behind the name of what has keys ("pair %1", "Instrument %1").
bool holdsKey(const QString &source, int place);

/// A number that was typed: the point and the comma are both a decimal mark, and nothing groups
/// thousands. Empty where it is none, or where it can be read two ways.
std::optional<double> typedNumber(const QString &typed, QChar mark);

/// "1,200" is 1.2 or 1200: the two readings of what was typed, empty where there is one. A point is
/// only ever the decimal mark where that is the language's.
std::optional<std::pair<double, double>> twoReadings(const QString &typed, QChar mark);

/// A number in English as it is put into a field: with the reader's mark, and so that it has one
/// reading ("1,2340").
QString asTyped(const QString &english, QChar mark);

} // namespace loopwright
