#include "db/SqlScript.h"

#include <sqlite3.h>

namespace loopwright {

namespace {

/// Whether nothing but white space and comments stands there.
bool isEmptySql(const QByteArray &sql)
{
    qsizetype at = 0;
    while (at >= 0 && at < sql.size()) {
        if (isspace(static_cast<unsigned char>(sql[at])))
            ++at;
        else if (sql.mid(at, 2) == "--")
            at = sql.indexOf('\n', at);
        else
            return false;
    }
    return true;
}

} // namespace

Result<std::vector<SqlPiece>> splitSqlScript(const QByteArray &script, const QString &name)
{
    std::vector<SqlPiece> pieces;
    qsizetype start = 0;
    int line = 1;
    const auto take = [&](qsizetype end) {
        QByteArray sql = script.mid(start, end - start);
        qsizetype skipped = 0;
        while (skipped < sql.size() && isspace(static_cast<unsigned char>(sql[skipped])))
            ++skipped;
        const int lead = int(sql.left(skipped).count('\n'));
        pieces.push_back({sql.trimmed(), line + lead});
        line += int(sql.count('\n'));
        start = end;
    };
    for (qsizetype at = script.indexOf(';'); at >= 0; at = script.indexOf(';', at + 1))
        if (sqlite3_complete(script.mid(start, at + 1 - start).constData()))
            take(at + 1);
    const QByteArray rest = script.mid(start);
    if (!isEmptySql(rest))
        return failure(ErrorCode::BadInput, "the statement that starts here has no end",
                       QString("%1 line %2").arg(name).arg(line));
    return pieces;
}

} // namespace loopwright
