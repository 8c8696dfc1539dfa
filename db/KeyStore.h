#pragma once
// The public halves of the keys that signed or sign for these records; the secret halves lie
// elsewhere (app/trust/KeyFolder.h). Only ever added: the newest of a holder is in use, and what an
// older one signed can still be checked.

#include "core/history/PublicKey.h"
#include "db/Transaction.h"

#include <QHash>

namespace loopwright {

struct StoredKey
{
    PublicKey key;
    Moment at;
    std::optional<Moment> revokedAt; ///< somebody else may hold its secret since before then
};

class KeyStore
{
public:
    explicit KeyStore(const Database &database)
        : m_database(database)
    {
    }

    Result<std::optional<PublicKey>> newestOf(const QString &holder) const;
    Result<std::optional<PublicKey>> find(const QString &fingerprint) const;
    Result<std::vector<StoredKey>> all() const; ///< oldest first
    /// By fingerprint, since when: of those that a renewal revoked.
    Result<QHash<QString, Moment>> revoked() const;

    /// BadInput if it is known already, with that endorsement.
    static Result<void> add(Transaction &transaction, const PublicKey &key, const Moment &at);

private:
    const Database &m_database;
};

} // namespace loopwright
