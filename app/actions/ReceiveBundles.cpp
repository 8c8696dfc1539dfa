#include "app/actions/ReceiveBundles.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleRegisters.h"
#include "app/actions/Events.h"
#include "app/actions/JoinOrder.h"
#include "db/KeyStore.h"
#include "db/StationStore.h"

#include <algorithm>

namespace loopwright {

namespace {

struct Sender
{
    PeerStation station;
    QString code, because; ///< why it is not believed; empty if it is
};

/// By the keys that the records know, never by what the file brings along.
Result<Sender> senderOf(const Database &database, const BundleFile &file)
{
    const auto unknown = [](const QString &why) { return Sender{{}, "stranger", why}; };
    LOOPWRIGHT_ASSIGN(const auto key, KeyStore(database).find(file.key));
    if (!key || key->isIssuers() || key->holder != file.bundle.station)
        return unknown(
            QString("Nobody here knows the key %1 of station %2; van add makes it known.")
                .arg(groupedFingerprint(file.key), file.bundle.station));
    LOOPWRIGHT_ASSIGN(const auto station, StationStore(database).ofTag(key->holder));
    if (!station)
        return unknown(QString("%1 is no van of this office.").arg(key->holder));
    if (station->lost)
        return unknown(QString("Station %1 was declared lost.").arg(station->name));
    LOOPWRIGHT_ASSIGN(const auto newest, KeyStore(database).newestOf(key->holder));
    LOOPWRIGHT_ASSIGN(const auto revoked, KeyStore(database).revoked());
    if (!newest || newest->bytes != key->bytes || revoked.contains(file.key))
        return unknown(QString("Station %1 has another key since.").arg(station->name));
    if (!file.isSignedBy(key->bytes))
        return Sender{{}, "signature", "Its signature is not that of the key that it names."};
    if (!file.bundle.issuer.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto issuer, KeyStore(database).find(file.bundle.issuer));
        if (!issuer || !issuer->isIssuers())
            return Sender{{},
                          "other_issuer",
                          QString("It was made for the issuer with the key %1.")
                              .arg(groupedFingerprint(file.bundle.issuer))};
    }
    return Sender{*station, {}, {}};
}

/// Where the van's log parts from what it told before; empty if nowhere.
Result<QJsonObject> forkOf(const Database &database, const BundleFile &file)
{
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(database).logOf(file.bundle.station));
    const qint64 place = file.bundle.log.partsFrom(known);
    return place == 0 ? QJsonObject() : QJsonObject{{"event", place}};
}

/// Instruments that were entered from their label, and that the bundle was here.
Result<void> noteReceived(Records &records, const BundleFile &file, const PeerStation &station,
                          const QString &place, bool isFork)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto instruments,
                      takeNewInstruments(transaction, file.bundle.registers, place));
    for (const QString &instrument : instruments)
        LOOPWRIGHT_TRY(refreshOrdersUsing(records, transaction, instrument));
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(records.database()).logOf(station.tag));
    const QString log = isFork ? known : file.bundle.log.continuing(known);
    if (log != known)
        LOOPWRIGHT_TRY(StationStore::putLog(transaction, station.tag, log));
    return transaction.commit(
        registerEvent(records, "bundle_received",
                      {{"bundle", file.id},
                       {"station", station.tag},
                       {"instruments", QJsonArray::fromStringList(instruments)}}));
}

Result<void> receiveBundle(Records &records, const BundleInput &input, TakenBundle &taken,
                           BundleSteps &steps)
{
    auto file = readBundleInput(input, BundleKind::Back);
    if (!file) {
        taken = std::move(file.error());
        return {};
    }
    LOOPWRIGHT_ASSIGN(const auto sender, senderOf(records.database(), *file));
    if (!sender.code.isEmpty()) {
        taken = refusedBundle(input.name, sender.code, sender.because);
        taken.bundle = file->id;
        return {};
    }
    taken.file = input.name;
    taken.bundle = file->id;
    taken.station = sender.station.name;
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(records.database()).bundle(file->id));
    LOOPWRIGHT_ASSIGN(const auto tags, tagsOf(records.database(), sender.station));
    LOOPWRIGHT_ASSIGN(const auto fork, forkOf(records.database(), *file));
    if (!known)
        LOOPWRIGHT_TRY(noteReceived(records, *file, sender.station, input.name, !fork.isEmpty()));
    taken.begun = !known;
    LOOPWRIGHT_TRY(
        takeOrders(taken, *file, steps, [&](const BundledOrder &entry, const QString &place) {
            return joinOrder(
                records, {entry, sender.station, tags, file->id, file->bundle.keep, fork, place});
        }));
    // One that came before its time is looked at again when what it stands on is here.
    const bool early = std::ranges::any_of(
        taken.orders, [](const JoinedOrder &each) { return each.code == u"earlier_missing"; });
    if (known || early || steps.isStopped())
        return {};
    return noteWhole(records, {file->id, BundleKind::Back, file->bundle.station, {}});
}

} // namespace

Result<std::vector<TakenBundle>>
receiveBundles(Records &records, const std::vector<BundleInput> &files, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::SendVans));
    return eachBundle(files, progress,
                      [&](const BundleInput &input, TakenBundle &taken, BundleSteps &steps) {
                          return receiveBundle(records, input, taken, steps);
                      });
}

} // namespace loopwright
