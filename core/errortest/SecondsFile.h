#pragma once
// Reads a file of errors per second: the columns `second,bit_errors[,sync_lost]`, and what test
// sets export: comma, semicolon, tab or blanks between the columns; a header or none; counters or
// times; comment lines that begin with #; errors alone, one a line.

#include "core/base/Finding.h"
#include "core/base/Result.h"
#include "core/errortest/Second.h"

#include <QByteArray>
#include <QStringList>

namespace loopwright {

struct SecondsFile
{
    SecondList seconds;
    /// One per odd row, with its row in the file: not a number, more errors than bits, a gap, a
    /// second given twice, time going back. A file with any finding in error is not evaluated.
    Findings findings;

    /// The seconds; BadInput with the first odd row and the number of the others where there are
    /// any.
    Result<SecondList> accepted(const QString &fileName) const;
};

/// BadInput for the whole file where it is not UTF-8, holds no second, lacks a column, or names an
/// unknown one that is not in `ignoredColumns`. `bitsPerSecond` limits the errors of a second.
Result<SecondsFile> readSecondsFile(const QByteArray &bytes, const QString &fileName,
                                    qint64 bitsPerSecond, const QStringList &ignoredColumns = {});

} // namespace loopwright
