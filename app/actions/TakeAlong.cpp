#include "app/actions/TakeAlong.h"

#include "app/actions/Acting.h"
#include "app/actions/Board.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/BundleParts.h"
#include "app/actions/BundleRegisters.h"
#include "app/actions/Events.h"
#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "db/ForeignStore.h"
#include "db/KeyStore.h"

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
Result<std::optional<TakenAlong::Stays>>
staying(const Database &database, const StoredOrder &stored, const PeerStation &van, bool anyway)
{
    const QString &number = stored.order.number;
    if (stored.status != OrderStatus::Open)
        return std::optional(TakenAlong::Stays{
            number, "order_closed",
            Text(QT_TRANSLATE_NOOP("core", "Order %1 is no longer open.")).arg(number)});
    LOOPWRIGHT_ASSIGN(const auto carried, StationStore(database).carried(number));
    for (const CarriedOrder &each : carried)
        if (!each.back && each.station != van.tag && !anyway)
            return std::optional(TakenAlong::Stays{
                number, "order_out",
                Text(QT_TRANSLATE_NOOP("core", "Order %1 is with station %2 since %3."))
                    .arg(number)
                    .arg(each.shownName())
                    .arg(each.since.localDate().toString(Qt::ISODate))});
    return std::optional<TakenAlong::Stays>();
}

/// What every part of the bundle says.
Result<Bundle> outline(Records &records, const Signer &signer, const PublicKey &van)
{
    Bundle bundle;
    bundle.kind = BundleKind::Out;
    bundle.station = van.holder;
    bundle.issuer = signer.issuer.fingerprint();
    bundle.keys =
        signer.issuer.line(true) + '\n' + signer.key.line(true) + '\n' + van.line(true) + '\n';
    LOOPWRIGHT_ASSIGN(auto registers, registersOf(records.database()));
    bundle.registers = std::move(registers);
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
    for (const Stays &each : stays)
        findings << QJsonObject{{"order", each.order},
                                {"code", each.code},
                                {"severity", severityName(Severity::Error)},
                                {"reason", each.reason.english()}};
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

Result<std::vector<BundledOrder>> ordersGoing(Records &records, const PeerStation &van,
                                              const std::vector<StoredOrder> &wished, bool anyway,
                                              TakenAlong &taken, Steps &steps)
{
    std::vector<BundledOrder> going;
    for (const StoredOrder &stored : wished) {
        LOOPWRIGHT_TRY(steps.next());
        LOOPWRIGHT_ASSIGN(auto stays, staying(records.database(), stored, van, anyway));
        if (stays) {
            taken.stays.push_back(std::move(*stays));
            continue;
        }
        LOOPWRIGHT_ASSIGN(auto entry, orderGoingOut(records, stored));
        going.push_back(std::move(entry));
        taken.orders << stored.order.number;
    }
    return going;
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
    TakenAlong taken{{}, van.name, van.tag, {}, {}, {}};
    LOOPWRIGHT_ASSIGN(auto going, ordersGoing(records, van, wished, wish.anyway, taken, steps));
    if (going.empty())
        return taken;
    LOOPWRIGHT_ASSIGN(const auto ours, signer(records, transaction));
    LOOPWRIGHT_ASSIGN(const auto vanKey, endorsedKey(records, transaction, van, ours));
    LOOPWRIGHT_ASSIGN(auto bundle, outline(records, ours, vanKey));
    LOOPWRIGHT_ASSIGN(const auto lines, testLinesOfAll(records.database()));
    LOOPWRIGHT_ASSIGN(const auto sealed, ours.secret.sealedTo(vanKey.bytes, lines));
    bundle.testLines = QString::fromLatin1(sealed);
    const auto files = signedParts(bundle, std::move(going), wish.split, ours.secret);
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

} // namespace loopwright
