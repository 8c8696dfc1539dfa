#include "app/actions/BringBack.h"

#include "app/actions/Acting.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/BundleParts.h"
#include "app/actions/BundleRegisters.h"
#include "app/actions/Events.h"
#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "db/EventStore.h"
#include "db/InstrumentStore.h"
#include "db/StationStore.h"

#include <QJsonDocument>

#include <algorithm>

namespace loopwright {

namespace {

/// How far each chain was told with an earlier bundle.
Result<QJsonObject> toldBy(const Database &database, const QString &bundle)
{
    if (bundle.isEmpty())
        return QJsonObject();
    LOOPWRIGHT_ASSIGN(auto brought, StationStore(database).bundles(BundleKind::Back));
    brought.removeIf([&bundle](const QString &id) { return !id.startsWith(bundle); });
    if (brought.size() != 1)
        return failure(brought.empty() ? ErrorCode::NotFound : ErrorCode::Usage,
                       QString(brought.empty()
                                   ? "No bundle \"%1\" was brought from here."
                                   : "Several bundles that were brought begin with \"%1\": give "
                                     "more of its digits.")
                           .arg(bundle.left(64)),
                       "since");
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(database).bundle(brought.front()));
    return known->chains;
}

Result<std::vector<BundledOrder>> ordersToBring(Records &records, const QJsonObject &told,
                                                const Progress &progress)
{
    std::vector<BundledOrder> entries;
    std::vector<StoredOrder> orders;
    LOOPWRIGHT_TRY(
        OrderStore(records.database()).each([&](const StoredOrder &stored) -> Result<void> {
            orders.push_back(stored);
            return {};
        }));
    Steps steps(progress, qint64(orders.size()));
    for (const StoredOrder &stored : orders) {
        LOOPWRIGHT_TRY(steps.next());
        const auto before = qint64(told.value(circuitSubject(stored.order.circuit)).toDouble());
        LOOPWRIGHT_ASSIGN(auto entry, orderComingBack(records, stored, before));
        const bool isNews = std::ranges::any_of(entry.events, [&](const ForeignEvent &each) {
            return each.event.order == entry.number;
        });
        if (isNews)
            entries.push_back(std::move(entry));
    }
    return entries;
}

/// The log up to the last event that is told, from the last one that was told before.
Result<ToldLog> logOf(const Database &database, const std::vector<BundledOrder> &entries,
                      const QJsonObject &told)
{
    ToldLog log;
    qint64 last = 0;
    for (const BundledOrder &entry : entries)
        for (const ForeignEvent &each : entry.events)
            last = std::max(last, each.event.logPosition);
    for (auto chain = told.begin(); chain != told.end(); ++chain) {
        LOOPWRIGHT_ASSIGN(const qint64 place, EventStore(database).placeInLog(
                                                  chain.key(), qint64(chain.value().toDouble())));
        log.from = std::max(log.from, place);
    }
    LOOPWRIGHT_ASSIGN(log.digests,
                      EventStore(database).logDigests(log.from, last, ToldLog::digits));
    return log;
}

Result<QJsonObject> newInstruments(const Database &database)
{
    QJsonArray instruments;
    LOOPWRIGHT_ASSIGN(const auto all, InstrumentStore(database).all());
    for (const Instrument &instrument : all)
        if (instrument.asLabelled)
            instruments << instrument.toJson();
    return QJsonObject{{"instruments", instruments}};
}

bool isVoid(const BundledFact &fact)
{
    return QJsonDocument::fromJson(fact.content).object().value("kind").toString() ==
           toText(FactKind::Void);
}

QJsonObject chainsOf(const Bundle &bundle, QJsonObject told)
{
    for (const BundledOrder &entry : bundle.orders)
        if (!entry.events.empty())
            told.insert(circuitSubject(entry.circuit), entry.events.back().event.sequence);
    return told;
}

Result<void> noteBrought(Records &records, Transaction &transaction, const BundleFile &file,
                         const QJsonObject &told)
{
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(records.database()).bundle(file.id));
    if (known)
        return {};
    LOOPWRIGHT_TRY(
        StationStore::addBundle(transaction, {file.id, BundleKind::Back, file.bundle.station,
                                              chainsOf(file.bundle, told)}));
    QJsonArray orders;
    for (const BundledOrder &entry : file.bundle.orders) {
        orders << entry.number;
        if (!file.bundle.keep)
            LOOPWRIGHT_TRY(StationStore::bringHome(transaction, entry.number, file.bundle.station));
    }
    return transaction.record(
        registerEvent(records, "brought_back", {{"bundle", file.id}, {"orders", orders}}));
}

} // namespace

QJsonObject BroughtBack::toJson() const
{
    return {{"bundle", bundle.isEmpty() ? QJsonValue() : QJsonValue(bundle)},
            {"station", station},
            {"answers", QJsonArray::fromStringList(answers)},
            {"orders", QJsonArray::fromStringList(orders)},
            {"facts", facts},
            {"files", QJsonArray::fromStringList(files)}};
}

Result<BroughtBack> bringBack(Records &records, const BringingBack &wish, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::WorkApart));
    LOOPWRIGHT_TRY(checkOut(wish.out, FileKind::Json));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const Database &database = records.database();
    LOOPWRIGHT_ASSIGN(const auto told, toldBy(database, wish.since));
    LOOPWRIGHT_ASSIGN(auto entries, ordersToBring(records, told, progress));
    LOOPWRIGHT_ASSIGN(const auto ours, signer(records, transaction));
    BroughtBack brought;
    brought.station = ours.key.holder;
    LOOPWRIGHT_ASSIGN(const auto answers, StationStore(database).bundles(BundleKind::Out));
    brought.answers = answers;
    if (entries.empty()) {
        if (transaction.hasEvents())
            LOOPWRIGHT_TRY(transaction.commit(std::vector<Event>()));
        return brought;
    }
    Bundle outline;
    outline.kind = BundleKind::Back;
    outline.station = ours.key.holder;
    LOOPWRIGHT_ASSIGN(const auto stations, StationStore(database).all());
    outline.issuer = stations.empty() ? QString() : ours.issuer.fingerprint();
    outline.answers = answers;
    outline.keep = wish.keep;
    LOOPWRIGHT_ASSIGN(outline.registers, newInstruments(database));
    LOOPWRIGHT_ASSIGN(outline.log, logOf(database, entries, told));
    for (const BundledOrder &entry : entries) {
        brought.orders << entry.number;
        brought.facts += int(std::ranges::count_if(entry.facts, std::not_fn(isVoid)));
    }
    const auto files = signedParts(outline, std::move(entries), wish.split, ours.secret);
    for (const BundleFile &file : files)
        LOOPWRIGHT_TRY(noteBrought(records, transaction, file, told));
    if (transaction.hasEvents())
        LOOPWRIGHT_TRY(transaction.commit(std::vector<Event>()));
    brought.bundle = files.front().id;
    auto written = writeParts(wish.out, files);
    if (!written)
        return failure(ErrorCode::DiskTrouble,
                       QString("It is noted what goes back, and the file is missing: %1. The same "
                               "command writes it again.")
                           .arg(written.error().text()));
    brought.files = std::move(*written);
    return brought;
}

} // namespace loopwright
