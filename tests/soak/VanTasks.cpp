#include "tests/soak/VanTasks.h"

#include "tests/support/Vans.h"

#include <algorithm>

namespace loopwright::soak {

namespace {

using jobs::good;

const QString vanName = QStringLiteral("van-7"), otherVanName = QStringLiteral("van-8");
const QString atHand = QStringLiteral("P-0"); // the order that the van has at the start

OrderFields fieldsOf(const QString &number, int n)
{
    OrderFields fields = jobs::analogFields();
    fields["order_number"] = number;
    fields["circuit_number"] = "C" + number;
    fields["premises"] = QString("%1 Lock Road").arg(n + 1); // no visit for two of them
    fields["pair"] = QString("60-%1").arg(n);
    fields["dn_1"] = QString("217-557-%1").arg(n, 4, 10, QChar('0'));
    return fields;
}

QJsonObject noteAt(const QString &id, const char *time)
{
    return {{"id", id}, {"kind", "note"}, {"at", time}, {"text", "wet cable"}};
}

/// A safety card, so that the decision changes, and a note.
QList<QJsonObject> doneIn(const OrderOut &order)
{
    const char *time = "2026-03-05T13:00:00-06:00";
    QJsonObject card = jobs::safety(0, 0);
    card["id"] = order.done[0];
    card["at"] = time;
    return {card, noteAt(order.done[1], time)};
}

void record(Records &records, const QString &order, const QList<QJsonObject> &facts)
{
    OrderFields fields = jobs::analogFields();
    fields["order_number"] = order;
    good(recordFile(records, jobs::recordBytes(fields, facts), "job.json"));
}

void importForVans(Records &office)
{
    QStringList numbers{atHand};
    for (int lot = 0; lot < lots; ++lot) {
        numbers += ordersToTake(lot);
        for (const OrderOut &order : ordersOut(lot))
            numbers << order.number;
    }
    QList<OrderFields> orders;
    for (const QString &number : numbers)
        orders << fieldsOf(number, int(orders.size()));
    if (!good(importOrders(office, jobs::csv(orders), {"vans.csv"})).clean())
        qFatal("the orders of the vans are not taken in");
}

/// New records in a van that the office knows.
std::unique_ptr<Records> addedVan(Records &office, const QString &path, const QString &name)
{
    auto van = good(openVan(path));
    good(addVan(office, name, good(publicKeyFile(*van)), "van.key", false));
    return van;
}

void handOut(Records &office, const QStringList &orders, const QString &station, const QString &to)
{
    TakingAlong wish;
    wish.orders = orders;
    wish.station = station;
    wish.out = to;
    wish.anyway = true;
    if (good(takeAlong(office, wish)).orders != orders)
        qFatal("an order stays");
}

/// All of it was taken in, or was there.
Result<QString> takenIn(const Result<std::vector<TakenBundle>> &files)
{
    LOOPWRIGHT_TRY(files.map([](const auto &) {}));
    const TakenBundle &file = files->front();
    if (file.verdict == BundleVerdict::Refused)
        return failure(ErrorCode::Refused, file.reason, file.code);
    for (const JoinedOrder &order : file.orders)
        if (order.verdict == BundleVerdict::Refused || !order.conflicts.isEmpty())
            return failure(ErrorCode::Refused, order.order + ": " + order.reason, order.code);
    return file.bundle;
}

void openIn(Records &van, const QString &path)
{
    good(takenIn(openBundles(van, {{"out.json", jobs::contentOf(path)}})));
}

Result<QString> take(Records &office, const Place &place, int lot)
{
    TakingAlong wish;
    wish.orders = ordersToTake(lot);
    wish.station = vanName;
    wish.out = place.handedOut();
    LOOPWRIGHT_ASSIGN(const auto taken, takeAlong(office, wish));
    return taken.orders == wish.orders ? Result<QString>(taken.bundle)
                                       : failure(ErrorCode::Refused, "an order stays");
}

} // namespace

bool isOfVans(Work work)
{
    return int(work) >= worksWithoutVans;
}

bool isInVan(Work work)
{
    return work == Work::Open || work == Work::Bring;
}

int lotOf(const Task &task)
{
    return task.number > followUp ? lots - 1 : (task.number - 1) % (lots - 1);
}

QStringList ordersToTake(int lot)
{
    const QString stem = QString("T-%1").arg(lot + 1);
    return {stem + "-1", stem + "-2"};
}

std::vector<OrderOut> ordersOut(int lot)
{
    std::vector<OrderOut> orders;
    for (const int which : {1, 2}) {
        const QString number = QString("P-%1-%2").arg(lot + 1).arg(which);
        const int id = 5000 + lot * 20 + which * 5;
        orders.push_back(
            {number, "C" + number, jobs::uuid(id), {jobs::uuid(id + 1), jobs::uuid(id + 2)}});
    }
    return orders;
}

bool keepsOrders(const Task &task)
{
    return task.number % 2 == 0;
}

QString vanHome()
{
    return qEnvironmentVariable("XDG_DATA_HOME") + "/van";
}

KeyFolder vanKeys()
{
    return KeyFolder(vanHome() + "/loopwright/keys");
}

Result<std::unique_ptr<Records>> openVan(const QString &path, Database::Access access)
{
    LOOPWRIGHT_ASSIGN(auto records, Records::open(path, access));
    records->setKeys(vanKeys());
    records->actAs(whoActs);
    records->setNow(Moment::parse(u"2026-03-05T13:30:00-06:00"));
    return records;
}

void makeVans(Records &office, const Place &place)
{
    importForVans(office);
    const QString otherPath = place.folder.filePath("other.sqlite");
    const QString passing = place.folder.filePath("passing.json");
    const auto van = addedVan(office, place.van(), vanName);
    auto other = addedVan(office, otherPath, otherVanName);
    QString last;
    for (int lot = 0; lot < lots; ++lot) {
        const auto orders = ordersOut(lot);
        const QStringList numbers{orders[0].number, orders[1].number};
        for (const OrderOut &order : orders)
            record(office, order.number, {noteAt(order.said, "2026-03-05T11:00:00-06:00")});
        handOut(office, numbers, vanName, place.toOpen(lot));
        handOut(office, numbers, otherVanName, passing);
        openIn(*other, passing);
        for (const OrderOut &order : orders)
            record(*other, order.number, doneIn(order));
        last = good(bringBack(*other, {place.toReceive(lot), last, 0, false})).bundle;
    }
    other.reset();
    handOut(office, {atHand}, vanName, place.handedOut());
    openIn(*van, place.handedOut());
    record(*van, atHand, doneIn({atHand, "C" + atHand, {}, {jobs::uuid(5000), jobs::uuid(5001)}}));
    if (!QFile::remove(otherPath) || !QFile::remove(passing))
        qFatal("cannot remove the other van");
}

Result<QString> doVanTask(Records &records, const Place &place, const Task &task)
{
    const int lot = lotOf(task);
    if (task.work == Work::Take)
        return take(records, place, lot);
    if (task.work == Work::Open)
        return takenIn(
            openBundles(records, {{"to-open.json", jobs::contentOf(place.toOpen(lot))}}));
    if (task.work == Work::Receive)
        return takenIn(
            receiveBundles(records, {{"to-receive.json", jobs::contentOf(place.toReceive(lot))}}));
    LOOPWRIGHT_ASSIGN(const auto brought,
                      bringBack(records, {place.brought(), {}, 0, keepsOrders(task)}));
    return brought.bundle;
}

QStringList vanWords(const Place &place, const Task &task)
{
    const int lot = lotOf(task);
    if (task.work == Work::Take)
        return QStringList{"van", "take"} + ordersToTake(lot) +
               QStringList{"--to", vanName, "--out", place.handedOut()};
    if (task.work == Work::Open)
        return {"van", "open", place.toOpen(lot)};
    if (task.work == Work::Receive)
        return {"van", "receive", place.toReceive(lot)};
    const QStringList bring{"van", "bring", "--out", place.brought()};
    return keepsOrders(task) ? bring + QStringList{"--keep"} : bring;
}

} // namespace loopwright::soak
