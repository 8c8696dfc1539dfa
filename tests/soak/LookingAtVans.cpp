#include "tests/soak/LookingAtVans.h"

#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/ForeignStore.h"
#include "db/KeyStore.h"
#include "db/OrderStore.h"
#include "db/StationStore.h"
#include "tests/soak/VanTasks.h"
#include "tests/support/Vans.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace loopwright::soak {

namespace {

using jobs::good;

/// A file of the start.
BundleFile bundleAt(const QString &path)
{
    auto read = readBundle(jobs::contentOf(path), path);
    if (!read)
        qFatal("%s", qPrintable(read.error().error.text()));
    return *std::move(read);
}

const BundledOrder &orderOf(const Bundle &bundle, const QString &number)
{
    return *std::ranges::find(bundle.orders, number, &BundledOrder::number);
}

QStringList numbersOf(const Bundle &bundle)
{
    QStringList numbers;
    for (const BundledOrder &order : bundle.orders)
        numbers << order.number;
    return numbers;
}

qsizetype countOfEvents(const Database &database, const QString &order, const QString &kind)
{
    const auto events = good(EventStore(database).ofOrder(order));
    return std::ranges::count(events, kind, &Event::kind);
}

/// The order's taking by this station.
std::optional<CarriedOrder> carriedBy(const Database &database, const QString &order,
                                      const QString &station)
{
    const auto all = good(StationStore(database).carried(order));
    const auto found = std::ranges::find(all, station, &CarriedOrder::station);
    return found == all.end() ? std::nullopt : std::optional(*found);
}

bool isThere(const Database &database, const QString &fact)
{
    return good(FactStore(database).find(fact)).has_value();
}

bool isKnown(const Database &database, BundleKind kind, const QString &id)
{
    return good(StationStore(database).bundles(kind)).contains(id);
}

/// Whether the register says that the bundle was begun.
bool isInRegister(const Database &database, const QString &kind, const QString &id)
{
    const auto events = good(EventStore(database).ofRegister(kind));
    return std::ranges::any_of(
        events, [&](const Event &event) { return event.detail.value("bundle") == id; });
}

} // namespace

void LookingAtVans::atRecords(Database::Access access)
{
    if (std::ranges::none_of(m_begun.tasks, isOfVans, &Task::work))
        return;
    if (const auto office = Records::open(m_place.records(), access))
        atOffice(**office); // else it was told
    if (std::ranges::none_of(m_begun.tasks, isInVan, &Task::work))
        return;
    if (const auto van = openVan(m_place.van(), access))
        atVan(**van);
    else
        m_looking.count(m_tally.lost, "the van cannot be opened: " + van.error().text());
}

void LookingAtVans::atWay()
{
    const auto isBegun = [this](Work work) {
        return std::ranges::count(m_begun.tasks, work, &Task::work) > 0;
    };
    const auto inputOf = [](const QString &path) -> std::vector<BundleInput> {
        return {{QFileInfo(path).fileName(), jobs::contentOf(path)}};
    };
    if (isBegun(Work::Take) && QFile::exists(m_place.handedOut())) {
        const auto van = good(openVan(m_place.van()));
        mustBeTaken(m_place.handedOut(), openBundles(*van, inputOf(m_place.handedOut())));
    }
    if (isBegun(Work::Bring) && QFile::exists(m_place.brought())) {
        const auto office = good(Records::open(m_place.records()));
        office->actAs(whoActs);
        mustBeTaken(m_place.brought(), receiveBundles(*office, inputOf(m_place.brought())));
        m_looking.atWhole(*office, m_begun.position(false));
    }
}

void LookingAtVans::mustBeTaken(const QString &path, const Result<std::vector<TakenBundle>> &files)
{
    if (!files)
        return m_looking.count(m_tally.halfDone, files.error().text());
    const TakenBundle &file = files->front();
    if (!file.refuses())
        return;
    QString why = file.reason;
    for (const JoinedOrder &order : file.orders)
        why += ' ' + order.order + ": " + order.reason;
    m_looking.count(m_tally.halfDone, QFileInfo(path).fileName() + " is refused: " + why);
}

void LookingAtVans::atOffice(Records &office)
{
    for (const Task &task : m_begun.tasks) {
        if (task.work == Work::Take)
            atTaking(office, task);
        if (task.work == Work::Receive)
            atReceiving(office, task);
    }
    atFile(office, Work::Take, m_place.handedOut());
}

void LookingAtVans::atVan(Records &van)
{
    m_looking.atWhole(van, m_begun.position(true));
    for (const Task &task : m_begun.tasks)
        if (task.work == Work::Open)
            atOpening(van, task);
    atFile(van, Work::Bring, m_place.brought());
}

/// Whether it is there, all that belongs together.
bool LookingAtVans::together(const QString &what, const QList<bool> &signs)
{
    if (signs.contains(true) && signs.contains(false)) {
        QString which;
        for (const bool sign : signs)
            which += sign ? '1' : '0';
        m_looking.count(m_tally.halfDone, what + " is half done: " + which);
    }
    return signs.contains(true);
}

void LookingAtVans::judge(const Task &task, qsizetype found, qsizetype all)
{
    bool told = false, saidNothing = true; // by all that have the lot
    for (const Task &other : m_begun.tasks) {
        if (other.work != task.work || lotOf(other) != lotOf(task))
            continue;
        told = told || m_begun.isAcknowledged(other.number);
        saidNothing = saidNothing && m_begun.saidNothingChanged(other.number);
    }
    if (told && found < all)
        m_looking.count(m_tally.lost, QString("task %1 is lost").arg(task.number));
    if (!told && found > 0 && saidNothing)
        m_looking.count(m_tally.untrue, QString("task %1 changed something").arg(task.number));
}

/// A bundle is begun before the first of its orders, and known once the last is in.
void LookingAtVans::inTurn(const QString &order, bool begun, bool in, bool whole)
{
    if (in && !begun)
        m_looking.count(m_tally.halfDone, order + " came before its bundle was begun");
    if (whole && !in)
        m_looking.count(m_tally.halfDone, order + " did not come, and its bundle is known");
}

/// All orders of the lot went, once, with one bundle; or none of them.
void LookingAtVans::atTaking(Records &office, const Task &task)
{
    const Database &database = office.database();
    QList<bool> signs;
    QStringList bundles;
    const QStringList orders = ordersToTake(lotOf(task));
    for (const QString &order : orders) {
        const auto carried = good(StationStore(database).carried(order));
        signs << (carried.size() == 1 && !carried.front().back)
              << (countOfEvents(database, order, takenAlongKind) == 1);
        for (const CarriedOrder &each : carried)
            bundles << each.bundle;
    }
    bundles.removeDuplicates();
    signs << (bundles.size() == 1 && isKnown(database, BundleKind::Out, bundles.front()));
    const bool went = together(QString("task %1").arg(task.number), signs);
    judge(task, went, 1);
    for (const Acknowledged &each : m_begun.acknowledged())
        if (each.number == task.number && !each.file.isEmpty() && !bundles.contains(each.file))
            m_looking.count(m_tally.lost,
                            QString("the bundle of task %1 is lost").arg(each.number));
}

/// Each order of the lot is in the van with what was recorded and told of it, once; or nothing of
/// it is.
void LookingAtVans::atOpening(Records &van, const Task &task)
{
    const Database &database = van.database();
    const BundleFile file = bundleAt(m_place.toOpen(lotOf(task)));
    const bool whole = isKnown(database, BundleKind::Out, file.id);
    const bool begun = isInRegister(database, "bundle_opened", file.id);
    qsizetype found = begun;
    const auto orders = ordersOut(lotOf(task));
    for (const OrderOut &order : orders) {
        const auto carried = carriedBy(database, order.number, file.bundle.station);
        const auto told = good(ForeignStore(database).eventsOfOrder(order.number));
        const bool in = together(
            order.number, {good(OrderStore(database).find(order.number)).has_value(),
                           isThere(database, order.said), carried && carried->bundle == file.id,
                           told.size() == orderOf(file.bundle, order.number).events.size(),
                           countOfEvents(database, order.number, "opened") == 1});
        inTurn(order.number, begun, in, whole);
        found += in;
    }
    judge(task, found + whole, 2 + qsizetype(orders.size()));
}

/// Each order of the lot is home with the facts of the other van and the chain that seals them,
/// once; or nothing of it is.
void LookingAtVans::atReceiving(Records &office, const Task &task)
{
    const Database &database = office.database();
    const BundleFile file = bundleAt(m_place.toReceive(lotOf(task)));
    const QString &station = file.bundle.station;
    const bool whole = isKnown(database, BundleKind::Back, file.id);
    const bool begun = isInRegister(database, "bundle_received", file.id);
    qsizetype found = begun;
    const auto orders = ordersOut(lotOf(task));
    for (const OrderOut &order : orders) {
        const auto carried = carriedBy(database, order.number, station);
        const auto chain =
            good(ForeignStore(database).chainOf(station, circuitSubject(order.circuit)));
        const auto &told = orderOf(file.bundle, order.number).events;
        const auto origins = good(ForeignStore(database).originsOf(order.number));
        QList<bool> signs{
            carried && carried->back, countOfEvents(database, order.number, joinedKind) == 1,
            chain.size() == told.size() && chain.back().digest == told.back().event.digest};
        for (const QString &fact : order.done)
            signs << isThere(database, fact)
                  << std::ranges::any_of(origins, [&](const FactOrigin &origin) {
                         return origin.fact == fact && origin.station == station;
                     });
        const bool in = together(order.number, signs);
        inTurn(order.number, begun, in, whole);
        found += in;
    }
    judge(task, found + whole, 2 + qsizetype(orders.size()));
}

/// The tasks whose file stands there if all went well: the last one that was acknowledged, of two
/// at once either.
std::vector<Acknowledged> LookingAtVans::lastWriters(Work work) const
{
    std::vector<Acknowledged> last;
    for (std::size_t i = 0; i < m_begun.told.size(); ++i) {
        std::vector<Acknowledged> done = m_begun.told[i].done;
        std::erase_if(done, [this, work](const Acknowledged &each) {
            return m_begun.taskOf(each).work != work;
        });
        if (done.empty())
            continue;
        if (!(m_begun.atOnce && i == 1))
            last.clear();
        last.push_back(done.back());
    }
    return last;
}

bool LookingAtVans::mayBeOf(const Acknowledged &each, const BundleFile &file) const
{
    if (!each.file.isEmpty())
        return each.file == file.id;
    const Task &task = m_begun.taskOf(each); // the program told no bundle
    return task.work == Work::Take ? numbersOf(file.bundle) == ordersToTake(lotOf(task))
                                   : file.bundle.keep == keepsOrders(task);
}

/// The records come first: a file that is there is whole, and they know it.
void LookingAtVans::atFile(Records &records, Work work, const QString &path)
{
    if (std::ranges::count(m_begun.tasks, work, &Task::work) == 0)
        return;
    const QString name = QFileInfo(path).fileName();
    auto writers = lastWriters(work);
    if (!QFile::exists(path))
        return writers.empty() ? void() : m_looking.count(m_tally.lost, name + " is lost");
    const auto file = readBundle(jobs::contentOf(path), name);
    if (!file)
        return m_looking.count(m_tally.halfDone, file.error().error.text());
    const auto key = good(KeyStore(records.database()).find(file->key));
    if (!key || !file->isSignedBy(key->bytes))
        m_looking.count(m_tally.halfDone, name + " is not signed");
    const auto kind = work == Work::Take ? BundleKind::Out : BundleKind::Back;
    if (!isKnown(records.database(), kind, file->id))
        m_looking.count(m_tally.halfDone, name + " is none that the records know");
    const bool must = !writers.empty();
    for (const Task &task : m_begun.tasks)
        if (task.work == work && !m_begun.isAcknowledged(task.number))
            writers.push_back({task.number, 0, 0, {}});
    if (must && std::ranges::none_of(
                    writers, [&](const Acknowledged &each) { return mayBeOf(each, *file); }))
        m_looking.count(m_tally.lost, name + " is an older one");
    if (work == Work::Take)
        atOrdersOut(records, *file);
    else
        atOrdersBrought(records, *file);
}

void LookingAtVans::atOrdersOut(Records &office, const BundleFile &file)
{
    for (const BundledOrder &order : file.bundle.orders) {
        const auto carried = carriedBy(office.database(), order.number, file.bundle.station);
        if (!carried || carried->back || carried->bundle != file.id)
            m_looking.count(m_tally.halfDone, order.number + " is in the file, and at home");
    }
}

/// What the file tells is in the van, as it tells it.
void LookingAtVans::atOrdersBrought(Records &van, const BundleFile &file)
{
    const Database &database = van.database();
    for (const BundledOrder &order : file.bundle.orders) {
        const auto events = good(EventStore(database).ofCircuit(order.circuit));
        const bool tells = std::equal(
            order.events.begin(), order.events.end(), events.begin(),
            events.begin() + std::ptrdiff_t(std::min(events.size(), order.events.size())),
            [](const ForeignEvent &told, const Event &event) {
                return told.event.digest == event.digest;
            });
        if (!tells)
            m_looking.count(m_tally.halfDone, order.number + " has another history in the file");
        for (const BundledFact &fact : order.facts) {
            const QString id = good(parseJsonObject(fact.content, "fact")).value("id").toString();
            if (!isThere(database, id))
                m_looking.count(m_tally.halfDone, "fact " + id + " is in the file alone");
        }
    }
}

} // namespace loopwright::soak
