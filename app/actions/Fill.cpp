// Invented records of realistic shape for trials. The same seed gives the same records. Numbers are
// of the block that is kept free for fiction (555-0100 to 555-0199) as far as it reaches; a trial
// of many circuits needs more numbers than there are, and goes on in offices that no numbering plan
// has (area codes beginning with N9, which are not given out).

#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/Maintenance.h"
#include "app/actions/OrderIntake.h"
#include "db/AssignmentStore.h"
#include "db/FactStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"

#include <QUuid>

#include <random>

namespace loopwright {

namespace {

constexpr int officeCount = 12;
constexpr int personCount = 40;
constexpr int circuitsBetweenReports = 500;

const QStringList firstNames{"Ada",  "Ben",  "Cleo", "Dov",  "Edda", "Finn",
                             "Gita", "Hugo", "Ines", "Jona", "Kaja", "Levi"};
const QStringList lastNames{"Amber", "Birch",  "Cobalt", "Dune",  "Elder",
                            "Fern",  "Garnet", "Heath",  "Ivory", "Juniper"};
const QStringList trades{"Bakery",  "Clinic", "Print Works", "Law Office", "Garage",
                         "Library", "Studio", "Pharmacy",    "School"};
const QStringList streets{"Mill Lane",   "Quay Street",  "Orchard Road",
                          "Foundry Row", "Station Hill", "Meadow Way"};

class Inventor
{
public:
    explicit Inventor(quint64 seed)
        : m_random(seed)
    {
    }

    int below(int limit) { return int(m_random() % quint64(limit)); }
    QString one(const QStringList &list) { return list[below(int(list.size()))]; }
    /// A different number for every count.
    static QString number(qint64 count)
    {
        // 100 numbers in each of 720 area codes that are given out, then office codes under N9X
        // area codes.
        if (count < 72000) {
            const qint64 area = count / 100; // 0 to 719: 200 to 289, 300 to 389, …
            const qint64 code = (2 + area / 90) * 100 + area % 90;
            // A code of the form N11 is a service code; its place is taken by one of the range that
            // is not used above.
            const qint64 given = code % 100 == 11 ? code + 80 : code;
            return QString::number(given) + "555" +
                   QString::number(count % 100 + 100).rightJustified(4, '0');
        }
        const qint64 rest = count - 72000;
        const qint64 code = 200 + rest / 10000 % 700; // the same care for N11 among office codes
        return QString::number(290 + rest / 7'000'000) +
               QString::number(code % 100 == 11 ? 900 + code / 100 : code) +
               QString::number(rest % 10000).rightJustified(4, '0');
    }

    ServiceOrder order(qint64 circuit)
    {
        ServiceOrder order;
        const int office = below(officeCount);
        order.number = QString("T%1").arg(circuit + 1, 8, 10, QChar('0'));
        order.circuit = QString("%1-%2").arg(office + 10).arg(circuit + 1, 7, 10, QChar('0'));
        order.office = QString("OFFICE%1").arg(office + 1, 2, 10, QChar('0'));
        order.type = OrderType::New;
        order.dueDate = QDate(2026, 1, 5).addDays(below(360));
        order.customer = one(lastNames) + ' ' + one(trades);
        order.premises = QString("%1 %2").arg(1 + below(240)).arg(one(streets));
        order.kind = below(10) < 7 ? LineKind::Bri : LineKind::Analog;
        order.variant = order.kind == LineKind::Bri ? "ni2" : "analog";
        order.pair = QString("%1-%2").arg(circuit / 1200 + 1).arg(circuit % 1200 + 1);
        order.b1 =
            order.kind == LineKind::Bri ? Service::Voice | Service::Data : Services(Service::Voice);
        order.b2 = order.kind == LineKind::Bri ? Services(Service::Data) : Services();
        order.installer = QString("P%1").arg(below(personCount) + 1, 2, 10, QChar('0'));
        for (int n = 1; n <= (order.kind == LineKind::Bri ? 2 : 1); ++n) {
            const QString dn = number(circuit * 2 + n - 1);
            order.terminals.push_back(
                {n, dn, order.kind == LineKind::Bri ? dn + "0101" : QString(), {}, {}});
        }
        return order;
    }

    /// What has been recorded of the job so far: from nothing to a layer that does not come up.
    std::vector<Fact> facts(const ServiceOrder &order)
    {
        std::vector<Fact> list;
        const Moment start{
            QDateTime(order.dueDate, QTime(8 + below(8), below(60)), Qt::UTC).toMSecsSinceEpoch(),
            0};
        const auto add = [&](int minutes, FactBody body) {
            list.push_back({id(),
                            start.plusSeconds(minutes * 60.0),
                            order.number,
                            order.installer,
                            {},
                            order.pair,
                            std::move(body)});
        };
        const int reached = below(4);
        if (reached >= 1)
            add(0, LoopFact{double(200 + below(1000)), {}, {}, {}});
        if (order.kind == LineKind::Bri && reached >= 2)
            add(10, LayerFact{1,
                              LineInterface::U,
                              {},
                              below(8) ? LayerOutcome::Up : LayerOutcome::Down,
                              {},
                              {}});
        return list;
    }

private:
    QString id()
    {
        quint64 words[2] = {m_random(), m_random()};
        return QUuid::fromRfc4122(QByteArrayView(reinterpret_cast<const char *>(words), 16))
            .toString(QUuid::WithoutBraces);
    }

    std::mt19937_64 m_random;
};

Result<void> fillRegister(Records &records, Transaction &transaction, Inventor &inventor)
{
    for (int i = 1; i <= officeCount; ++i) {
        const ServingOffice office{QString("OFFICE%1").arg(i, 2, 10, QChar('0')),
                                   inventor.one(streets) + " office", "ni2"};
        LOOPWRIGHT_TRY(OfficeStore::put(transaction, office, {}));
    }
    for (int i = 1; i <= personCount; ++i)
        LOOPWRIGHT_TRY(
            PersonStore::put(transaction, {QString("P%1").arg(i, 2, 10, QChar('0')),
                                           inventor.one(firstNames) + ' ' + inventor.one(lastNames),
                                           i % 20 ? Role::Installer : Role::Supervisor}));
    return transaction.record(registerEvent(records, "register_invented",
                                            {{"offices", officeCount}, {"people", personCount}}));
}

Result<void> fillCircuit(Records &records, Transaction &transaction, Inventor &inventor,
                         qint64 circuit)
{
    const ServiceOrder order = inventor.order(circuit);
    LOOPWRIGHT_ASSIGN(const auto taken, takeOrder(records, transaction, order, std::nullopt));
    LOOPWRIGHT_TRY(transaction.record(taken.event));
    const std::vector<Fact> facts = inventor.facts(order);
    for (const Fact &fact : facts)
        LOOPWRIGHT_TRY(FactStore::add(transaction, fact));
    if (facts.empty())
        return {};
    LOOPWRIGHT_TRY(refreshState(records, transaction, order.number));
    return transaction.record(orderEvent(records, order, "facts_recorded", {{"invented", true}}));
}

} // namespace

Result<void> fillWithInvented(Records &records, int circuits, quint64 seed,
                              const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    const auto there = OrderStore(records.database()).count();
    const auto offices = OfficeStore(records.database()).all();
    if (!there)
        return failure(there.error());
    if (!offices)
        return failure(offices.error());
    if (*there > 0 || !offices->empty())
        return failure(ErrorCode::Refused, "Invented records go into an empty database only.");
    Inventor inventor(seed);
    LOOPWRIGHT_TRY(fillRegister(records, transaction, inventor));
    for (qint64 circuit = 0; circuit < circuits; ++circuit) {
        LOOPWRIGHT_TRY(fillCircuit(records, transaction, inventor, circuit));
        if (circuit % circuitsBetweenReports == 0 && progress && !progress(circuit, circuits))
            return failure(ErrorCode::Refused, "The filling was stopped; nothing was changed.");
    }
    return transaction.commit(std::vector<Event>());
}

} // namespace loopwright
