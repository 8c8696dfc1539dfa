#include "db/LimitSetStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

LimitSet readSet(const Statement &row)
{
    const auto set = LimitSet::fromJson(row.json("content"), "limit set " + row.text("version"));
    if (!set)
        row.refuse("content", set.error().text());
    return set.value_or(LimitSet());
}

} // namespace

Result<std::optional<LimitSet>> LimitSetStore::find(const QString &version) const
{
    Statement statement(m_database, "limits.find");
    statement.bind("version", version);
    return firstRow(statement, readSet);
}

Result<std::optional<LimitSet>> LimitSetStore::inForceOn(QDate day) const
{
    ReadLimitSet none;
    return inForceOn(day, none);
}

Result<std::optional<LimitSet>> LimitSetStore::inForceOn(QDate day, ReadLimitSet &last) const
{
    Statement statement(m_database, "limits.in_force");
    statement.bind("day", day.toString("yyyy-MM-dd"));
    return firstRow(statement, [&last](const Statement &row) {
        if (const QByteArray content = row.bytes("content"); content != last.content) {
            last.set = readSet(row);
            last.content = row.trouble() ? QByteArray() : content;
        }
        return last.set;
    });
}

Result<std::vector<LimitSet>> LimitSetStore::all() const
{
    Statement statement(m_database, "limits.all");
    return rows(statement, readSet);
}

Result<bool> LimitSetStore::add(Transaction &transaction, const LimitSet &set)
{
    const QByteArray content = canonicalJson(set.toJson());
    LOOPWRIGHT_ASSIGN(const auto before, LimitSetStore(transaction.database()).find(set.version()));
    if (before && canonicalJson(before->toJson()) != content)
        return failure(ErrorCode::BadInput, "is there already with other limits", set.version());
    if (before)
        return false;
    const QString digest = sha256Hex(content);
    Statement add(transaction, "limits.add");
    add.bind("version", set.version())
        .bind("valid_from", set.validFrom().toString("yyyy-MM-dd"))
        .bindBytes("content", content)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(registerSubject(), {"limit_set", set.version(), digest});
    return true;
}

} // namespace loopwright
