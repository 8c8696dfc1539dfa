#include "app/actions/Keys.h"

#include "app/actions/Acting.h"
#include "app/actions/Events.h"
#include "db/KeyStore.h"
#include "db/MetaStore.h"

#include <algorithm>

namespace loopwright {

namespace {

/// A key whose secret is on this machine.
struct HeldKey
{
    PublicKey key;
    SigningKey secret;
};

Result<std::optional<HeldKey>> newestHere(Records &records, const QString &holder)
{
    LOOPWRIGHT_ASSIGN(const auto newest, KeyStore(records.database()).newestOf(holder));
    if (!newest)
        return std::optional<HeldKey>();
    LOOPWRIGHT_ASSIGN(auto secret, records.keys().find(newest->fingerprint()));
    return secret ? std::optional(HeldKey{*newest, std::move(*secret)}) : std::nullopt;
}

Result<Signer> signerOf(Records &records, HeldKey station)
{
    LOOPWRIGHT_ASSIGN(auto issuer, KeyStore(records.database()).find(station.key.endorsedBy));
    if (!issuer)
        return failure(ErrorCode::DatabaseTrouble,
                       "The issuer's key that endorsed the station's is not in the records; verify "
                       "the history.");
    return Signer{std::move(station.secret), std::move(station.key), std::move(*issuer)};
}

/// Makes keys within a transaction. If that is not committed a secret without use stays in the
/// folder: another program may have made one meanwhile, so nothing is taken away from there.
class KeyMaking
{
public:
    KeyMaking(Records &records, Transaction &transaction)
        : m_records(records)
        , m_transaction(transaction)
    {
    }

    Result<HeldKey> issuer() { return make(issuerHolder, nullptr); }
    Result<HeldKey> station(const QString &tag, const HeldKey &issuer)
    {
        return make(tag, &issuer);
    }
    /// One event for all that was made.
    Result<void> record(const QString &kind, QJsonObject detail)
    {
        QJsonArray made;
        for (const PublicKey &key : m_made)
            made << key.toJson();
        detail.insert("keys", made);
        return m_transaction.record(registerEvent(m_records, kind, detail));
    }
    const std::vector<PublicKey> &made() const { return m_made; }

private:
    Result<HeldKey> make(const QString &holder, const HeldKey *issuer)
    {
        LOOPWRIGHT_ASSIGN(auto secret, SigningKey::make());
        HeldKey held{{holder, secret.publicKey(), {}, {}}, std::move(secret)};
        if (issuer) {
            held.key.endorsedBy = issuer->key.fingerprint();
            held.key.endorsement = issuer->secret.sign(held.key.endorsedText());
        }
        // First the secret: a public key whose secret was never kept would sign nothing.
        LOOPWRIGHT_TRY(m_records.keys().put(held.secret, holder));
        LOOPWRIGHT_TRY(KeyStore::add(m_transaction, held.key, m_records.now()));
        m_made.push_back(held.key);
        return held;
    }

    Records &m_records;
    Transaction &m_transaction;
    std::vector<PublicKey> m_made;
};

tl::unexpected<Error> notHere(const Records &records, const PublicKey &key)
{
    const QString whose =
        key.isIssuers() ? QString("the issuer") : QString("station %1").arg(key.holder);
    return failure(ErrorCode::Refused,
                   QString("The key of %1 (%2) is not on this machine. Put its file back into %3, "
                           "or have a supervisor make a new one: key renew.")
                       .arg(whose, groupedFingerprint(key.fingerprint()), records.keys().path()));
}

} // namespace

Result<std::optional<Signer>> signerAtHand(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(auto station, newestHere(records, tag));
    if (!station)
        return std::optional<Signer>();
    LOOPWRIGHT_ASSIGN(auto signer, signerOf(records, std::move(*station)));
    return std::optional(std::move(signer));
}

Result<std::vector<Signer>> signersAtHand(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto all, KeyStore(records.database()).all());
    std::vector<Signer> signers;
    for (auto stored = all.rbegin(); stored != all.rend(); ++stored) {
        if (stored->key.holder != tag || stored->revokedAt)
            continue;
        auto secret = records.keys().find(stored->key.fingerprint());
        if (!secret || !*secret)
            continue; // what cannot be read signs nothing
        LOOPWRIGHT_ASSIGN(auto signer, signerOf(records, {stored->key, std::move(**secret)}));
        signers.push_back(std::move(signer));
    }
    return signers;
}

Result<Signer> signer(Records &records, Transaction &transaction)
{
    LOOPWRIGHT_ASSIGN(auto there, signerAtHand(records));
    if (there)
        return std::move(*there);
    const KeyStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto lost, store.newestOf(tag));
    if (lost)
        return notHere(records, *lost);
    LOOPWRIGHT_ASSIGN(auto issuer, newestHere(records, issuerHolder));
    KeyMaking making(records, transaction);
    if (!issuer) {
        LOOPWRIGHT_ASSIGN(const auto elsewhere, store.newestOf(issuerHolder));
        if (elsewhere)
            return notHere(records, *elsewhere);
        LOOPWRIGHT_ASSIGN(issuer, making.issuer());
    }
    LOOPWRIGHT_ASSIGN(auto station, making.station(tag, *issuer));
    LOOPWRIGHT_TRY(making.record("keys_made", {}));
    return Signer{std::move(station.secret), std::move(station.key), issuer->key};
}

Result<PublicKey> endorse(Records &records, Transaction &transaction, PublicKey key)
{
    LOOPWRIGHT_ASSIGN(const auto ours, signer(records, transaction));
    LOOPWRIGHT_ASSIGN(const auto secret, records.keys().find(ours.issuer.fingerprint()));
    if (!secret)
        return notHere(records, ours.issuer);
    key.endorsedBy = ours.issuer.fingerprint();
    key.endorsement = secret->sign(key.endorsedText());
    LOOPWRIGHT_ASSIGN(const auto known, KeyStore(records.database()).find(key.fingerprint()));
    if (!known || *known != key)
        LOOPWRIGHT_TRY(KeyStore::add(transaction, key, records.now()));
    return key;
}

Result<std::vector<KnownKey>> knownKeys(Records &records)
{
    const KeyStore store(records.database());
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto all, store.all());
    std::vector<KnownKey> known;
    for (const StoredKey &stored : all) {
        const QString &holder = stored.key.holder;
        LOOPWRIGHT_ASSIGN(const auto newest, store.newestOf(holder));
        // A file that cannot be used is as none: the public half is good all the same.
        const auto secret = records.keys().find(stored.key.fingerprint());
        const bool ours = stored.key.isIssuers() || holder == tag;
        known.push_back({stored.key, stored.at, ours && newest == stored.key, secret && *secret,
                         stored.revokedAt});
    }
    return known;
}

Result<QByteArray> publicKeyFile(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto there, signerAtHand(records));
    LOOPWRIGHT_ASSIGN(auto known, knownKeys(records));
    if (!there && known.empty()) {
        LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
        LOOPWRIGHT_ASSIGN(const auto meanwhile, signerAtHand(records)); // by another program
        if (!meanwhile) {
            LOOPWRIGHT_TRY(signer(records, transaction));
            LOOPWRIGHT_TRY(transaction.commit(std::vector<Event>()));
        }
        LOOPWRIGHT_ASSIGN(known, knownKeys(records));
    }
    std::erase_if(known, [](const KnownKey &each) { return each.revokedAt.has_value(); });
    std::ranges::stable_sort(known, {}, [](const KnownKey &each) {
        return std::pair(!each.key.isIssuers(), each.inUse);
    });
    QByteArray lines;
    for (const KnownKey &each : known)
        lines += each.key.line(false).toUtf8() + '\n';
    return lines;
}

namespace {

/// Fingerprints of the keys that a renewal revokes: all that it takes the place of.
Result<QJsonArray> keysBefore(const Database &database, const QString &station,
                              const Renewal &renewal)
{
    QJsonArray fingerprints;
    if (!renewal.revokeOld)
        return fingerprints;
    LOOPWRIGHT_ASSIGN(const auto all, KeyStore(database).all());
    for (const StoredKey &stored : all)
        if (!stored.revokedAt &&
            (stored.key.isIssuers() ? renewal.issuersToo : stored.key.holder == station))
            fingerprints << stored.key.fingerprint();
    return fingerprints;
}

} // namespace

Result<Renewed> renewKeys(Records &records, const Renewal &renewal)
{
    LOOPWRIGHT_TRY(checkReason(renewal.because, "Say why the key is made anew."));
    LOOPWRIGHT_TRY(allow(records, Act::KeepKeys));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const MetaStore meta(records.database());
    LOOPWRIGHT_ASSIGN(const auto before, meta.station());
    LOOPWRIGHT_ASSIGN(const auto newest, KeyStore(records.database()).newestOf(before));
    const auto here = newestHere(records, before); // what cannot be used is what is renewed
    if (newest && !(here && *here))
        LOOPWRIGHT_TRY(MetaStore::drawStation(transaction));
    LOOPWRIGHT_ASSIGN(const auto tag, meta.station());
    auto held = newestHere(records, issuerHolder);
    if (!held && !renewal.issuersToo)
        return failure(ErrorCode::Refused,
                       QString("The issuer's key cannot be read: %1 Mend that; or make a new "
                               "issuer's key too, which whoever checks certificates must be "
                               "given.")
                           .arg(held.error().text()));
    auto issuer = held.value_or(std::nullopt);
    LOOPWRIGHT_ASSIGN(const auto old, keysBefore(records.database(), before, renewal));
    KeyMaking making(records, transaction);
    if (!issuer || renewal.issuersToo) {
        LOOPWRIGHT_ASSIGN(issuer, making.issuer());
    }
    LOOPWRIGHT_TRY(making.station(tag, *issuer));
    LOOPWRIGHT_TRY(making.record(
        "keys_renewed",
        {{"because", renewal.because}, {"station", tag}, {"before", before}, {"revoked", old}}));
    LOOPWRIGHT_TRY(transaction.commit(std::vector<Event>()));
    return Renewed{making.made(), tag};
}

SignedHead signedHead(const LogHead &head, const Signer &signer)
{
    return {head, signer.key.fingerprint(), signer.secret.sign(head.text())};
}

QJsonObject KnownKey::toJson() const
{
    QJsonObject object = key.toJson();
    object.insert("since", since.storedText());
    object.insert("in_use", inUse);
    object.insert("secret_here", here);
    object.insert("revoked", revokedAt ? QJsonValue(revokedAt->storedText()) : QJsonValue());
    return object;
}

QJsonObject Renewed::toJson() const
{
    QJsonArray keys;
    for (const PublicKey &key : made)
        keys << key.toJson();
    return {{"made", keys}, {"station", station}};
}

} // namespace loopwright
