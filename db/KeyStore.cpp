#include "db/KeyStore.h"

#include "core/base/Json.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

PublicKey readKey(const Statement &row)
{
    return {row.text("holder"), QByteArray::fromHex(row.text("public_key").toLatin1()),
            row.text("endorsed_by"), row.text("endorsement").toLatin1()};
}

} // namespace

Result<std::optional<PublicKey>> KeyStore::newestOf(const QString &holder) const
{
    Statement statement(m_database, "key.newest_of");
    statement.bind("holder", holder);
    return firstRow(statement, readKey);
}

Result<std::optional<PublicKey>> KeyStore::find(const QString &fingerprint) const
{
    Statement statement(m_database, "key.find");
    statement.bind("fingerprint", fingerprint);
    return firstRow(statement, readKey);
}

Result<std::vector<StoredKey>> KeyStore::all() const
{
    LOOPWRIGHT_ASSIGN(const auto revokedSince, revoked());
    Statement statement(m_database, "key.all");
    return rows(statement, [&revokedSince](const Statement &row) {
        StoredKey stored{readKey(row), row.moment("at"), {}};
        const auto since = revokedSince.find(stored.key.fingerprint());
        if (since != revokedSince.end())
            stored.revokedAt = *since;
        return stored;
    });
}

Result<QHash<QString, Moment>> KeyStore::revoked() const
{
    Statement statement(m_database, "key.renewals");
    statement.bind("subject", registerSubject());
    LOOPWRIGHT_ASSIGN(const auto renewals, rows(statement, [](const Statement &row) {
                          return std::pair(row.text("detail"), row.moment("recorded"));
                      }));
    QHash<QString, Moment> since;
    for (const auto &[detail, at] : renewals) {
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(detail.toUtf8(), "keys_renewed"));
        for (const QJsonValue &fingerprint : object.value("revoked").toArray())
            since.insert(fingerprint.toString(), at);
    }
    return since;
}

Result<void> KeyStore::add(Transaction &transaction, const PublicKey &key, const Moment &at)
{
    LOOPWRIGHT_ASSIGN(const auto before, KeyStore(transaction.database()).find(key.fingerprint()));
    if (before && before->endorsedBy == key.endorsedBy)
        return failure(ErrorCode::BadInput, "is known already", key.fingerprint());
    const QString digest = digestOf(key.toJson());
    Statement add(transaction, "key.add");
    add.bind("holder", key.holder)
        .bind("fingerprint", key.fingerprint())
        .bind("public_key", QString::fromLatin1(key.bytes.toHex()))
        .bind("endorsed_by", key.endorsedBy)
        .bind("endorsement", QString::fromLatin1(key.endorsement))
        .bindMoment("at", at)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(registerSubject(), {"public_key", key.fingerprint(), digest});
    return {};
}

} // namespace loopwright
