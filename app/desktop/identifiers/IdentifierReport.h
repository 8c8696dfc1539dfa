#pragma once
// A list of identifiers as a person hands it in (typed, pasted or dropped), brought into the form
// that the check reads, and the verdicts that came back.

#include "core/identifiers/IdentifierList.h"

#include <QString>

#include <vector>

namespace loopwright {

/// Rows of the report that are kept to be shown; all are counted, and saved.
inline constexpr std::size_t identifierRowsShown = 100'000;

struct IdentifierVerdict
{
    int line = 0; ///< of what was handed in, from 1
    QString variant, spid, dn, code, reason, repair;
    Severity worst = Severity::Note;
};

struct IdentifierReport
{
    IdentifierListCount count;
    std::vector<IdentifierVerdict> rows; ///< the first identifierRowsShown
};

/// A list in the columns variant, spid, dn. A text whose first line names the columns is taken as
/// it is; otherwise each line is a SPID of `variant`, with its DN behind a comma, semicolon or tab
/// where there is one.
struct IdentifierInput
{
    QByteArray csv;
    int linesBefore = 0; ///< lines that were put in front
};
IdentifierInput identifierInput(const QByteArray &text, const QString &variant);

Result<IdentifierReport> checkIdentifiers(const IdentifierInput &input, const QString &name);
/// Writes every row with its verdict. The number of rows.
Result<qint64> saveVerdicts(const IdentifierInput &input, const QString &name, const QString &path);

} // namespace loopwright
