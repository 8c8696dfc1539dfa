#include "app/actions/TakeAlong.h"

#include "app/actions/Acting.h"
#include "app/actions/Board.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleHazards.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/BundleParts.h"
#include "app/actions/BundleRegisters.h"
#include "app/actions/Events.h"
#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "app/actions/VanWarnings.h"
#include "db/EventStore.h"
#include "db/ForeignStore.h"
#include "db/KeyStore.h"

#include <QFileInfo>

#include <algorithm>

namespace loopwright {

namespace {

/// The orders that are asked for, each once; NotFound for one that is not there.
Result<std::vector<StoredOrder>> wishedOrders(Records &records, const TakingAlong &wish)
{
    const OrderStore store(records.database());
    std::vector<StoredOrder> orders;
    QStringList numbers = wish.orders;
    numbers.removeDuplicates();
    for (const QString &number : numbers) {
        LOOPWRIGHT_ASSIGN(auto stored, store.get(number));
        orders.push_back(std::move(stored));
    }
    if (wish.installer.isEmpty())
        return orders;
    LOOPWRIGHT_TRY(store.eachOpen([&](const StoredOrder &stored) -> Result<void> {
        const bool due = !wish.dueBy.isValid() || stored.order.dueDate <= wish.dueBy;
        if (stored.order.installer == wish.installer && due &&
            !numbers.contains(stored.order.number))
            orders.push_back(stored);
        return {};
    }));
    return orders;
}

/// Why an order stays; nothing if it goes.
std::optional<Finding> staying(const StoredOrder &stored, const PeerStation &van,
                               const std::vector<CarriedOrder> &carried, bool anyway)
{
    const QString &number = stored.order.number;
    const auto because = [](const char *code, Text reason) {
        return std::optional(Finding{Severity::Error, code, std::move(reason), {}, {}, 0});
    };
    if (stored.status != OrderStatus::Open)
        return because("order_closed",
                       Text(QT_TRANSLATE_NOOP("core", "Order %1 is no longer open.")).arg(number));
    for (const CarriedOrder &each : carried)
        if (!each.back && each.station != van.tag && !anyway)
            return because("order_out",
                           Text(QT_TRANSLATE_NOOP("core", "Order %1 is with station %2 since %3."))
                               .arg(number)
                               .arg(each.shownName())
                               .arg(each.since.localDate().toString(Qt::ISODate)));
    return std::nullopt;
}

/// The names of other stations that have it.
QStringList otherStations(const std::vector<CarriedOrder> &carried, const PeerStation &van)
{
    QStringList names;
    for (const CarriedOrder &each : carried)
        if (each.isOut() && each.station != van.tag)
            names << each.shownName();
    return names;
}

/// What whoever hands the order to the van must know, beside its hazards.
Result<Findings> warningsOf(const StoredOrder &stored, const PeerStation &van,
                            const std::vector<CarriedOrder> &carried, const BundledOrder &entry)
{
    Findings warnings;
    if (entry.undecided.contains(van.tag))
        warnings.push_back(undecidedWarning());
    for (const CarriedOrder &each : carried) {
        if (each.station != van.tag)
            continue;
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(each.content, each.order));
        LOOPWRIGHT_ASSIGN(const auto before, ServiceOrder::fromJson(object, each.order));
        for (Finding &finding : changeWarnings(before, stored.order))
            warnings.push_back(std::move(finding));
    }
    if (!entry.with.isEmpty())
        warnings.push_back(outWarning(entry.with));
    return warnings;
}

struct OrdersGoing
{
    std::vector<BundledOrder> entries;
    QStringList around, offices; ///< hazardsGoing()
};

/// What every part of the bundle says.
Result<Bundle> outline(Records &records, const Signer &signer, const PublicKey &van,
                       const OrdersGoing &going)
{
    Bundle bundle;
    bundle.kind = BundleKind::Out;
    bundle.station = van.holder;
    bundle.issuer = signer.issuer.fingerprint();
    bundle.keys =
        signer.issuer.line(true) + '\n' + signer.key.line(true) + '\n' + van.line(true) + '\n';
    LOOPWRIGHT_ASSIGN(auto registers, registersOf(records.database()));
    bundle.registers = std::move(registers);
    LOOPWRIGHT_ASSIGN(const qint64 changes, EventStore(records.database()).registerChanges());
    bundle.registers.insert("changes", changes);
    LOOPWRIGHT_ASSIGN(const auto hazards,
                      hazardsGoing(records.database(), going.around, going.offices));
    if (!hazards.isEmpty())
        bundle.registers.insert("hazards", hazards);
    return bundle;
}

/// That the orders of the file are out.
Result<std::vector<Event>> carryOut(Records &records, Transaction &transaction,
                                    const BundleFile &file, Steps &steps)
{
    std::vector<Event> events;
    const StationStore stations(transaction.database());
    for (const BundledOrder &entry : file.bundle.orders) {
        LOOPWRIGHT_TRY(steps.next());
        LOOPWRIGHT_ASSIGN(const auto carried, stations.carried(entry.number));
        const bool isOut = std::ranges::any_of(carried, [&](const CarriedOrder &each) {
            return !each.back && each.bundle == file.id;
        });
        if (isOut)
            continue;
        LOOPWRIGHT_TRY(StationStore::carry(
            transaction,
            {entry.number, file.bundle.station, {}, file.id, entry.content, records.now()}));
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(transaction.database()).get(entry.number));
        // What the office hands out it says itself, whichever station it had it from.
        LOOPWRIGHT_ASSIGN(const auto toldBefore, stations.told(entry.number));
        if (!toldBefore.empty()) {
            const OrderFields now = stored.order.fields();
            LOOPWRIGHT_TRY(StationStore::tell(transaction, entry.number,
                                              {officeSide, now, now, false, {}, 0}));
        }
        LOOPWRIGHT_TRY(refreshState(records, transaction, entry.number));
        events.push_back(orderEvent(records, stored.order, takenAlongKind,
                                    {{"station", file.bundle.station}, {"bundle", file.id}}));
    }
    LOOPWRIGHT_TRY(
        StationStore::addBundle(transaction, {file.id, BundleKind::Out, file.bundle.station, {}}));
    return events;
}

} // namespace

QJsonObject TakenAlong::toJson() const
{
    QJsonArray findings;
    for (const auto *list : {&stays, &warnings})
        for (const Told &each : *list)
            findings << QJsonObject{{"order", each.order},
                                    {"code", each.finding.code},
                                    {"severity", severityName(each.finding.severity)},
                                    {"reason", each.finding.reason.english()}};
    return {{"bundle", bundle.isEmpty() ? QJsonValue() : QJsonValue(bundle)},
            {"station", station},
            {"tag", tag},
            {"orders", QJsonArray::fromStringList(orders)},
            {"files", QJsonArray::fromStringList(files)},
            {"findings", findings}};
}

namespace {

/// The key of the van, endorsed by who issues now.
Result<PublicKey> endorsedKey(Records &records, Transaction &transaction, const PeerStation &van,
                              const Signer &ours)
{
    LOOPWRIGHT_ASSIGN(const auto known, KeyStore(records.database()).newestOf(van.tag));
    if (!known)
        return failure(ErrorCode::DatabaseTrouble, "the key of the station is not in the records");
    if (known->endorsedBy == ours.issuer.fingerprint())
        return *known;
    LOOPWRIGHT_ASSIGN(const auto key, endorse(records, transaction, *known));
    LOOPWRIGHT_TRY(transaction.record(
        registerEvent(records, "van_endorsed",
                      {{"station", van.name}, {"tag", van.tag}, {"issuer", key.endorsedBy}})));
    return key;
}

Result<OrdersGoing> ordersGoing(Records &records, const PeerStation &van,
                                const std::vector<StoredOrder> &wished, bool anyway,
                                TakenAlong &taken, Steps &steps)
{
    OrdersGoing going;
    for (const StoredOrder &stored : wished) {
        LOOPWRIGHT_TRY(steps.next());
        const QString &number = stored.order.number;
        LOOPWRIGHT_ASSIGN(const auto carried, StationStore(records.database()).carried(number));
        if (auto stays = staying(stored, van, carried, anyway)) {
            taken.stays.push_back({number, std::move(*stays)});
            continue;
        }
        LOOPWRIGHT_ASSIGN(auto entry, orderGoingOut(records, stored));
        entry.with = otherStations(carried, van);
        LOOPWRIGHT_ASSIGN(const auto around, hazardsAround(records, stored));
        LOOPWRIGHT_ASSIGN(const auto others, warningsOf(stored, van, carried, entry));
        for (const Findings &warnings : {hazardWarnings(around.open), others})
            for (const Finding &finding : warnings)
                taken.warnings.push_back({number, finding});
        going.entries.push_back(std::move(entry));
        going.around << around.orders;
        going.offices << stored.order.office;
        taken.orders << number;
    }
    return going;
}

/// Orders that were in the file and are out may be in no file any more.
Result<void> tellWrittenOver(const Database &database, const QString &out,
                             const std::vector<BundleFile> &files, TakenAlong &taken)
{
    for (const QString &order : writtenOver(out, files)) {
        LOOPWRIGHT_ASSIGN(const auto with, StationStore(database).outAt(order));
        if (!with.empty())
            taken.warnings.push_back({order, fileReplacedWarning(order, QFileInfo(out).fileName(),
                                                                 with.front().station)});
    }
    return {};
}

} // namespace

Result<TakenAlong> takeAlong(Records &records, const TakingAlong &wish, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::SendVans));
    LOOPWRIGHT_ASSIGN(const auto van, vanNamed(records, wish.station));
    if (van.lost)
        return failure(ErrorCode::Refused,
                       QString("Station %1 was declared lost.").arg(wish.station));
    LOOPWRIGHT_TRY(checkOut(wish.out, FileKind::Json));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto wished, wishedOrders(records, wish));
    Steps steps(progress, 2 * qint64(wished.size())); // each is read, and noted as out
    TakenAlong taken{{}, van.name, van.tag, {}, {}, {}, {}};
    LOOPWRIGHT_ASSIGN(auto going, ordersGoing(records, van, wished, wish.anyway, taken, steps));
    if (going.entries.empty())
        return taken;
    LOOPWRIGHT_ASSIGN(const auto ours, signer(records, transaction));
    LOOPWRIGHT_ASSIGN(const auto vanKey, endorsedKey(records, transaction, van, ours));
    LOOPWRIGHT_ASSIGN(auto bundle, outline(records, ours, vanKey, going));
    LOOPWRIGHT_ASSIGN(const auto lines, testLinesOfAll(records.database()));
    LOOPWRIGHT_ASSIGN(const auto sealed, ours.secret.sealedTo(vanKey.bytes, lines));
    bundle.testLines = QString::fromLatin1(sealed);
    const auto files = signedParts(bundle, std::move(going.entries), wish.split, ours.secret);
    LOOPWRIGHT_TRY(tellWrittenOver(transaction.database(), wish.out, files, taken));
    std::vector<Event> events;
    for (const BundleFile &file : files) {
        LOOPWRIGHT_ASSIGN(const auto told, carryOut(records, transaction, file, steps));
        events.insert(events.end(), told.begin(), told.end());
    }
    if (!events.empty() || transaction.hasEvents())
        LOOPWRIGHT_TRY(transaction.commit(events));
    taken.bundle = files.front().id;
    auto written = writeParts(wish.out, files);
    if (!written)
        return failure(ErrorCode::DiskTrouble,
                       QString("The orders are out at station %1, and the file is missing: %2. The "
                               "same command writes it again.")
                           .arg(van.name, written.error().text()));
    taken.files = std::move(*written);
    return taken;
}

Result<void> recallOrders(Records &records, const QString &station, const QStringList &orders,
                          const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "Say why they did not go along."));
    LOOPWRIGHT_TRY(allow(records, Act::SendVans));
    LOOPWRIGHT_ASSIGN(const auto van, vanNamed(records, station));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    std::vector<Event> events;
    QStringList numbers = orders;
    numbers.removeDuplicates();
    for (const QString &number : std::as_const(numbers)) {
        LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(transaction.database()).get(number));
        LOOPWRIGHT_ASSIGN(const bool was, StationStore::bringHome(transaction, number, van.tag));
        if (!was)
            return failure(ErrorCode::Refused,
                           QString("Order %1 is not out at station %2.").arg(number, station));
        LOOPWRIGHT_TRY(refreshState(records, transaction, number));
        events.push_back(orderEvent(records, stored.order, recalledKind,
                                    {{"station", van.tag}, {"because", because.trimmed()}}));
    }
    return transaction.commit(events);
}

} // namespace loopwright
