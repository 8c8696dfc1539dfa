#include "app/actions/Invented.h"

#include <QUuid>

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

constexpr int crewOfOffice = 5;
constexpr int mostLinesAtPremises = 500;
constexpr int daysOfPast = 6 * 365;
constexpr int offsetSeconds = -6 * 3600;
constexpr int pairsInCable = 900;

const QStringList towns{"Ashford",  "Birchley", "Coldwell",  "Dunmere",  "Elmstead", "Fairholt",
                        "Grindale", "Harrow",   "Inglewood", "Kestrel",  "Langmere", "Millbrook",
                        "Northam",  "Oakhurst", "Penfield",  "Quarley",  "Redmoor",  "Stonefield",
                        "Thornby",  "Upwood",   "Vaynor",    "Westbury", "Yarrow",   "Zeal"};
const QStringList sides{"Main", "North", "South"};
const QStringList firstNames{"Ada",  "Ben",  "Cleo", "Dov",  "Edda", "Finn", "Gita", "Hugo",
                             "Ines", "Jona", "Kaja", "Levi", "Mira", "Nils", "Olga", "Pavel",
                             "Rosa", "Sven", "Tess", "Uwe",  "Vera", "Wim",  "Yara", "Zeno"};
const QStringList lastNames{"Amber",  "Birch",   "Cobalt", "Dune",    "Elder",  "Fern",
                            "Garnet", "Heath",   "Ivory",  "Juniper", "Kery",   "Larch",
                            "Maple",  "Nettle",  "Ochre",  "Pebble",  "Quartz", "Rowan",
                            "Sorrel", "Thistle", "Umber",  "Violet",  "Willow", "Yew"};
const QStringList trades{"Bakery", "Clinic",   "Print Works", "Law Office", "Garage",  "Library",
                         "Studio", "Pharmacy", "School",      "Dairy",      "Nursery", "Foundry",
                         "Hotel",  "Mill",     "Bank",        "Surgery",    "Cinema",  "Depot"};
const QStringList streets{"Mill Lane",     "Quay Street",   "Orchard Road",  "Foundry Row",
                          "Station Hill",  "Meadow Way",    "Chapel Street", "Bridge Road",
                          "Market Square", "Canal Bank",    "Ropewalk",      "Church Hill",
                          "Tannery Yard",  "Weaver Street", "Kiln Close",    "Park Avenue"};
const QStringList reasons{"the customer withdrew the order", "ordered twice",
                          "the building is not ready this year"};

/// A different number for every count.
QString number(qint64 count)
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

QString keyOf(const char *letter, int index, int digits)
{
    return QString("%1%2").arg(letter).arg(index + 1, digits, 10, QChar('0'));
}

/// Calibrated each year, so that what was measured in any of them counts.
Instrument instrumentOf(int person, QDate today)
{
    Instrument instrument{
        keyOf("TS", person, 3), QString::number(40000 + person * 7), "test set", {}};
    for (QDate day = today.addDays(-daysOfPast - 400); day <= today; day = day.addDays(365))
        instrument.calibrations.push_back({day, day.addDays(400)});
    return instrument;
}

} // namespace

Moment inventedMoment(QDate day, int minuteOfDay)
{
    const QDateTime midnight(day, QTime(0, 0), Qt::OffsetFromUTC, offsetSeconds);
    return {midnight.toMSecsSinceEpoch() + minuteOfDay * qint64(60'000), offsetSeconds};
}

Inventor::Inventor(quint64 seed, QDate today, qint64 circuits)
    : m_random(seed)
    , m_calls(~seed)
    , m_today(today)
    , m_largest(int(std::clamp<qint64>(circuits / 20, 1, mostLinesAtPremises)))
{
    inventRegister(today);
}

void Inventor::inventRegister(QDate today)
{
    double sum = 0;
    for (const QString &side : sides)
        for (const QString &town : towns) {
            const auto index = int(m_offices.size());
            m_offices.push_back({keyOf("OFFICE", index, 2), town + ' ' + side, "ni2",
                                 one(streets) + ", " + town, "217-555-0100"});
            sum += 1.0 / (index + 1);
            m_officeShares.push_back(sum);
        }
    for (double &each : m_officeShares)
        each /= sum;
    m_premisesOf.resize(m_officeShares.size());
    m_pairsOf.resize(m_officeShares.size());
    for (int i = 0; i < int(m_offices.size()) * crewOfOffice; ++i) {
        const Role role = i % 20 == 19   ? Role::Supervisor
                          : i % 20 == 18 ? Role::Dispatcher
                                         : Role::Installer;
        m_people.push_back({keyOf("P", i, 3), one(firstNames) + ' ' + one(lastNames), role});
        m_instruments.push_back(instrumentOf(i, today));
    }
}

double Inventor::share()
{
    return double(m_random() >> 11) * 0x1p-53;
}

QString Inventor::idFrom(std::mt19937_64 &random)
{
    quint64 words[2] = {random(), random()};
    auto *bytes = reinterpret_cast<uchar *>(words);
    bytes[6] = uchar((bytes[6] & 0x0f) | 0x40); // RFC 9562: version 4, made by chance
    bytes[8] = uchar((bytes[8] & 0x3f) | 0x80);
    return QUuid::fromRfc4122(QByteArrayView(bytes, 16)).toString(QUuid::WithoutBraces);
}

void Inventor::move()
{
    const auto office = std::ranges::upper_bound(m_officeShares, share());
    m_premises.office = std::min(int(office - m_officeShares.begin()), int(m_offices.size()) - 1);
    // Half of the premises have one line, one in four thousand has hundreds.
    const double lines = std::pow(1 - share(), -1 / 1.2);
    m_premises.left =
        m_circuit == 0 ? m_largest : int(std::min(lines, double(mostLinesAtPremises)));
    const int place = m_premisesOf[std::size_t(m_premises.office)]++;
    const QString town = m_offices[m_premises.office].name.section(u' ', 0, 0);
    m_premises.address = QString("%1 %2, %3 %4")
                             .arg(place / int(streets.size()) + 1)
                             .arg(streets[place % int(streets.size())], town,
                                  m_offices[m_premises.office].name.section(u' ', 1));
    m_premises.customer = one(lastNames) + ' ' + one(trades);
    m_premises.contact = one(firstNames) + ' ' + one(lastNames);
    // The first of a crew does half of the work, the second a quarter.
    int worker = 0;
    while (worker < crewOfOffice - 1 && oneIn(2))
        ++worker;
    m_premises.installer = m_people[m_premises.office * crewOfOffice + worker].key;
    m_premises.built = m_today.addDays(-60 - below(daysOfPast - 60));
}

InventedLife Inventor::life()
{
    const int share = below(100);
    if (share < 5)
        return InventedLife::TurnedUp;
    if (share < 9)
        return InventedLife::Open;
    return share < 10 ? InventedLife::Cancelled : InventedLife::TakenOver;
}

void Inventor::addTerminals(ServiceOrder &order)
{
    const bool bri = order.kind == LineKind::Bri;
    for (int n = 1; n <= (bri ? 2 : 1); ++n) {
        const QString dn = number(m_circuit * 2 + n - 1);
        OrderedTerminal terminal{n, dn, bri ? dn + "0101" : QString(), {}, {}};
        if (bri)
            terminal.dnServices = n == 1 ? Service::Voice | Service::Data : Services(Service::Data);
        order.terminals.push_back(terminal);
    }
}

/// What the desk says of an order that is open.
void Inventor::plan(ServiceOrder &order)
{
    order.dueDate = m_today.addDays(below(3) ? below(45) : -below(40));
    if (oneIn(8))
        order.installer.clear();
    if (oneIn(20)) {
        static constexpr WaitingOn whom[] = {WaitingOn::Office, WaitingOn::Plant,
                                             WaitingOn::Customer, WaitingOn::Permit};
        order.waitingOn = toText(whom[below(4)]);
        order.waitingBecause = "told by telephone";
    }
    if (oneIn(4))
        order.appointment = "08:00-12:00";
}

ServiceOrder Inventor::order(InventedLife life)
{
    const bool takenOver = life == InventedLife::TakenOver;
    ServiceOrder order;
    order.number = QString("T%1").arg(m_circuit + 1, 8, 10, QChar('0'));
    order.circuit =
        QString("%1-%2").arg(m_premises.office + 10).arg(m_circuit + 1, 7, 10, QChar('0'));
    order.office = m_offices[m_premises.office].key;
    order.type = takenOver ? OrderType::RecordOnly : OrderType::New;
    order.dueDate = m_premises.built.addDays(below(40));
    order.customer = m_premises.customer;
    order.premises = m_premises.address;
    order.contact = m_premises.contact;
    order.installer = m_premises.installer;
    order.kind = below(10) < 7 ? LineKind::Bri : LineKind::Analog;
    const bool bri = order.kind == LineKind::Bri;
    order.variant = bri ? "ni2" : "analog";
    order.ntSupplied = bri;
    order.b1 = bri ? Service::Voice | Service::Data : Services(Service::Voice);
    order.b2 = bri ? Services(Service::Data) : Services();
    const int pair = m_pairsOf[std::size_t(m_premises.office)]++;
    // Three digits, so that no two names read alike without what separates them ("11-23", "1-123"):
    // a hazard is of every pair that may be meant.
    order.pair = QString("%1-%2")
                     .arg(pair / pairsInCable + 1)
                     .arg(pair % pairsInCable + 1, 3, 10, QChar('0'));
    addTerminals(order);
    if (life == InventedLife::Open)
        plan(order);
    return order;
}

/// A change of what its channels carry, that is open; or the disconnect that ended it.
void Inventor::addLater(InventedCircuit &circuit)
{
    const bool bri = circuit.order.kind == LineKind::Bri;
    const bool changes = bri && oneIn(80);
    if (!changes && !oneIn(40))
        return;
    ServiceOrder later = circuit.order;
    later.number = QString("U%1").arg(m_circuit + 1, 8, 10, QChar('0'));
    later.type = changes ? OrderType::Change : OrderType::Disconnect;
    if (changes) {
        later.b2 = Service::Voice | Service::Data;
        plan(later);
    } else {
        const int days = int(circuit.order.dueDate.daysTo(m_today)) - 5;
        later.dueDate = circuit.order.dueDate.addDays(1 + below(std::max(1, days)));
    }
    circuit.laterTakenIn = inventedMoment(later.dueDate.addDays(-10), 9 * 60);
    if (changes)
        circuit.laterTakenIn = inventedMoment(m_today.addDays(-1 - below(20)), 9 * 60);
    circuit.later = std::move(later);
}

InventedCircuit Inventor::next()
{
    if (m_premises.left == 0)
        move();
    InventedCircuit made;
    made.life = life();
    made.order = order(made.life);
    const QDate due = made.order.dueDate;
    made.takenIn = inventedMoment(std::min(due, m_today).addDays(-12), 9 * 60 + below(400));
    made.ended = inventedMoment(due, 17 * 60);
    switch (made.life) {
    case InventedLife::TurnedUp:
        made.facts = evidence(made.order, true);
        if (oneIn(10))
            made.retests = retests(made.order, due.addDays(10 + below(10)));
        [[fallthrough]];
    case InventedLife::TakenOver:
        addLater(made);
        if (!made.later)
            made.troubles = troubles(made);
        break;
    case InventedLife::Open:
        if (!made.order.installer.isEmpty())
            made.facts = evidence(made.order, false);
        break;
    case InventedLife::Cancelled:
        break;
    }
    --m_premises.left;
    ++m_circuit;
    return made;
}

} // namespace loopwright
