#pragma once
// A list of SPIDs as CSV with the columns variant, spid and dn in any order, checked row by row in
// one pass: the bytes may be a mapped file, and memory does not grow with the rows. Each row is
// judged alone. Of several findings the worst gives the code; the further reasons follow it after
// "; ".

#include "core/base/Csv.h"
#include "core/base/Finding.h"
#include "core/base/Result.h"

#include <QByteArrayView>

#include <functional>
#include <string_view>

namespace loopwright {

struct IdentifierListCount
{
    qint64 rows = 0;
    qint64 ok = 0;
    qint64 warnings = 0;
    qint64 errors = 0;

    void add(Severity worst)
    {
        ++rows;
        ++(worst == Severity::Error ? errors : worst == Severity::Warning ? warnings : ok);
    }
};

/// One row and what was found. The texts are UTF-8 and valid only during the call.
struct IdentifierListRow
{
    int line = 0; ///< of the file, the header being 1
    std::string_view variant;
    std::string_view spid;
    std::string_view dn;
    Severity worst = Severity::Note;
    std::string_view verdict;
    std::string_view code; ///< empty if there is nothing to say
    std::string_view reason;
    std::string_view repair;
};

/// Told every few thousand rows, and at the end, how many octets of how many are read; answers
/// false to stop.
using IdentifierListProgress = std::function<bool(qint64 done, qint64 total)>;

/// Calls `row` for each row. BadInput if the file is not UTF-8, is empty, or its header lacks a
/// column or has an unknown one; a row of the wrong form is a row in error ("row_form"). Refused if
/// it was stopped.
Result<IdentifierListCount>
checkIdentifierRows(QByteArrayView csv, const QString &fileName,
                    const std::function<void(const IdentifierListRow &)> &row,
                    const IdentifierListProgress &progress = {});

/// Takes the next piece of the output; what it refuses ends the check.
using ByteSink = std::function<Result<void>(QByteArrayView)>;

/// Writes the input's columns in the input's order with `verdict,code,reason,repair` after them
/// (RFC 4180, CR LF), in pieces of about 64 KiB.
Result<IdentifierListCount> checkIdentifierList(QByteArrayView csv, const QString &fileName,
                                                const ByteSink &write,
                                                const IdentifierListProgress &progress = {});

/// The columns of such a list.
CsvLayout identifierListLayout();

} // namespace loopwright
