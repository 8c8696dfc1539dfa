#pragma once
// Keeps unpublished numbers out of a customer's document and of an export. It knows the numbers of
// an office's test lines and gives none of them out again: a text goes in and comes back with every
// such number covered, in whatever digits it was typed: of another script, full-width, a letter O
// for a zero. Letters are judged word by word, so that ordinary words are not covered.

#include "core/office/Office.h"

#include <QRegularExpression>

namespace loopwright {

class NumberGuard
{
public:
    NumberGuard() = default; ///< an office without test lines
    explicit NumberGuard(const QList<TestLine> &lines);

    /// Covers numbers of five digits and more, with any separators between their digits, a prefix
    /// before them, or their area code left out; for texts that hold measured figures too.
    QString cover(const QString &text) const;
    /// Covers the short ones as well; for texts that a person typed.
    QString coverTyped(const QString &text) const;
    /// Covers, in a stored column, the long ones but leaves a number of another area code, and the
    /// short ones if they are the whole of a number that was dialled or announced; for the export.
    QString coverStored(const QString &text) const;

    /// What replaces a number.
    static QString covered() { return QStringLiteral("[number not published]"); }

private:
    QList<QRegularExpression> m_long;
    QList<QRegularExpression> m_short;
    QList<QRegularExpression> m_stored;
};

} // namespace loopwright
