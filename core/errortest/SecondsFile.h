#pragma once
// Reads a file of errors per second: the columns `second,bit_errors[,sync_lost]`, and what test
// sets export: comma, semicolon, tab or blanks between the columns; a header or none; counters or
// times; comment lines that begin with #; errors alone, one a line, with a header or without.

#include "core/base/Csv.h"
#include "core/base/Finding.h"
#include "core/base/Result.h"
#include "core/errortest/Second.h"

#include <QByteArray>
#include <QStringList>

#include <optional>

namespace loopwright {

struct SecondsFile
{
    SecondList seconds;
    /// What is odd, with its row in the file: not a number, more errors than bits, a gap, a second
    /// given twice, time going back. All are errors, and a file with any is not evaluated. The
    /// first thousand; of the others only the number is kept.
    Findings findings;
    qint64 furtherFindings = 0;

    /// The seconds; BadInput with the first finding and the number of the others if there are
    /// any.
    Result<SecondList> accepted(const QString &fileName) const;
    /// "row 2, column bit_errors: …" for each of the first `most` findings, and a line that says
    /// how many more there are.
    QStringList findingLines(std::size_t most) const;
};

/// BadInput for the whole file if it is not UTF-8, holds no second, lacks a column, or names an
/// unknown one that is not in `ignoredColumns`. `bitsPerSecond` limits the errors of a second.
/// `map`: the columns and values are an instrument's own; then there must be a header.
Result<SecondsFile> readSecondsFile(const QByteArray &bytes, const QString &fileName,
                                    qint64 bitsPerSecond, const QStringList &ignoredColumns = {},
                                    const std::optional<ColumnMap> &map = {});
/// The columns that a map of such a file can lead to.
CsvLayout secondsLayout();

} // namespace loopwright
