#include "app/actions/Vans.h"

#include "app/actions/Acting.h"
#include "app/actions/Events.h"
#include "app/actions/Keys.h"
#include "core/acceptance/StationConflict.h"
#include "core/base/TextForm.h"
#include "db/KeyStore.h"
#include "db/MetaStore.h"

#include <algorithm>

namespace loopwright {

namespace {

Result<PublicKey> stationKeyIn(const QByteArray &keyFile, const QString &fileName)
{
    LOOPWRIGHT_ASSIGN(const auto keys, readPublicKeys(keyFile, fileName));
    const auto last = std::find_if(keys.rbegin(), keys.rend(),
                                   [](const PublicKey &key) { return !key.isIssuers(); });
    if (last == keys.rend())
        return failure(ErrorCode::BadInput,
                       "holds no key of a station: it is written in the van by key export",
                       fileName);
    return PublicKey{last->holder, last->bytes, {}, {}};
}

Result<void> checkName(const QString &station)
{
    const Text trouble = identifierTrouble(station);
    if (station == officeSide || station == bothSides || !trouble.isEmpty() || station.isEmpty())
        return failure(ErrorCode::Usage,
                       station == officeSide || station == bothSides
                           ? QString("\"%1\" means something else where conflicts are settled; "
                                     "give the van another name.")
                                 .arg(station)
                           : QString("This is no name for a van: it %1.")
                                 .arg(station.isEmpty() ? "is empty" : trouble.english()),
                       "station");
    return {};
}

/// Refused if the name or the tag is taken by something else.
Result<void> checkIsNew(const Database &database, const QString &station, const PublicKey &key,
                        bool renew)
{
    LOOPWRIGHT_ASSIGN(const auto ours, MetaStore(database).station());
    if (key.holder == ours)
        return failure(ErrorCode::Refused,
                       QString("%1 is the tag of these records themselves.").arg(key.holder));
    LOOPWRIGHT_ASSIGN(const auto ofTag, StationStore(database).ofTag(key.holder));
    if (ofTag && ofTag->name != station)
        return failure(ErrorCode::Refused,
                       QString("The tag %1 is that of station %2.").arg(key.holder, ofTag->name));
    LOOPWRIGHT_ASSIGN(const auto known, KeyStore(database).newestOf(key.holder));
    if (known && known->bytes != key.bytes && !(ofTag && renew))
        return failure(ErrorCode::Refused,
                       QString("The tag %1 is known under another key (%2). If the van has a "
                               "new key, say so; if not, find out who wrote this file.")
                           .arg(key.holder, groupedFingerprint(known->fingerprint())));
    LOOPWRIGHT_ASSIGN(const auto before, StationStore(database).find(station));
    if (before && before->tag != key.holder && !renew)
        return failure(ErrorCode::Refused,
                       QString("Station %1 has the tag %2, and the file says %3. If it "
                               "was restored, say so.")
                           .arg(station, before->tag, key.holder));
    return {};
}

} // namespace

QJsonObject AddedVan::toJson() const
{
    return {{"station", station}, {"tag", tag}, {"fingerprint", fingerprint}, {"added", added}};
}

Result<AddedVan> addVan(Records &records, const QString &station, const QByteArray &keyFile,
                        const QString &fileName, bool renew)
{
    LOOPWRIGHT_TRY(checkName(station));
    LOOPWRIGHT_TRY(allow(records, Act::SendVans));
    LOOPWRIGHT_ASSIGN(const auto key, stationKeyIn(keyFile, fileName));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const Database &database = transaction.database();
    LOOPWRIGHT_TRY(checkIsNew(database, station, key, renew));
    AddedVan added{station, key.holder, key.fingerprint(), false, {}};
    LOOPWRIGHT_ASSIGN(const auto before, StationStore(database).find(station));
    if (before) {
        LOOPWRIGHT_ASSIGN(const auto old, KeyStore(database).newestOf(before->tag));
        if (old && old->fingerprint() != added.fingerprint)
            added.before = old->fingerprint();
    }
    LOOPWRIGHT_ASSIGN(const auto ofTag, StationStore(database).ofTag(key.holder));
    LOOPWRIGHT_ASSIGN(const auto known, KeyStore(database).find(key.fingerprint()));
    if (ofTag && known && !ofTag->lost)
        return added;
    if (ofTag && ofTag->lost)
        return failure(ErrorCode::Refused,
                       QString("Station %1 was declared lost: its records must be restored, which "
                               "gives them a new tag, before it is added again.")
                           .arg(station));
    LOOPWRIGHT_TRY(endorse(records, transaction, key));
    if (!ofTag)
        LOOPWRIGHT_TRY(StationStore::add(transaction, {station, key.holder}));
    LOOPWRIGHT_TRY(transaction.commit(
        registerEvent(records, "van_added",
                      {{"station", station}, {"tag", key.holder}, {"key", key.fingerprint()}})));
    added.added = true;
    return added;
}

Result<void> loseVan(Records &records, const QString &station, const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "Say why the van is believed no longer."));
    LOOPWRIGHT_TRY(allow(records, Act::LoseVan));
    LOOPWRIGHT_ASSIGN(const auto van, vanNamed(records, station));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(StationStore::lose(transaction, station));
    return transaction.commit(registerEvent(
        records, "van_lost", {{"station", station}, {"tag", van.tag}, {"because", because}}));
}

Result<PeerStation> vanNamed(Records &records, const QString &station)
{
    LOOPWRIGHT_ASSIGN(const auto found, StationStore(records.database()).find(station));
    if (!found)
        return failure(
            ErrorCode::NotFound,
            QString("There is no station \"%1\"; van add makes it known.").arg(station.left(60)));
    return *found;
}

Result<std::vector<CarriedOrder>> carriedOrders(Records &records)
{
    return StationStore(records.database()).carried();
}

QJsonObject KnownStation::toJson() const
{
    return {{"station", station.name},
            {"tag", station.tag},
            {"fingerprint", fingerprint},
            {"state", state()},
            {"orders", QJsonArray::fromStringList(orders)}};
}

Result<std::vector<KnownStation>> knownStations(Records &records)
{
    const StationStore stations(records.database());
    LOOPWRIGHT_ASSIGN(const auto all, stations.all());
    LOOPWRIGHT_ASSIGN(const auto carried, stations.carried());
    std::vector<KnownStation> known;
    for (const PeerStation &each : all) {
        LOOPWRIGHT_ASSIGN(const auto key, KeyStore(records.database()).newestOf(each.tag));
        LOOPWRIGHT_ASSIGN(const auto newest, stations.find(each.name));
        KnownStation station{each, key ? key->fingerprint() : QString(), {}, newest == each};
        for (const CarriedOrder &order : carried)
            if (order.station == each.tag && !order.back)
                station.orders << order.order;
        known.push_back(std::move(station));
    }
    return known;
}

QJsonObject toJson(const CarriedOrder &order)
{
    return {{"station", order.shownName()}, {"tag", order.station},
            {"order", order.order},         {"bundle", order.bundle},
            {"since", order.since.text()},  {"state", order.back ? "back" : "out"}};
}

} // namespace loopwright
