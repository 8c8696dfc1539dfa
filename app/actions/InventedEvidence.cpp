// What was recorded of an invented job, in the order of the work.

#include "app/actions/Invented.h"
#include "core/loop/LoopLoss.h"

#include <cmath>

namespace loopwright {

namespace {

constexpr int runSeconds = 900;

/// The facts of one visit, one after the other.
class Visiting
{
public:
    Visiting(const ServiceOrder &order, QString instrument, const Moment &arrival)
        : m_order(order)
        , m_instrument(std::move(instrument))
        , m_now(arrival)
    {
    }

    void add(QString id, FactBody body, int minutes = 3)
    {
        m_now = m_now.plusSeconds(minutes * 60.0);
        m_facts.push_back({std::move(id), m_now, m_order.number, m_order.installer, m_instrument,
                           m_order.pair, std::move(body)});
    }
    /// It began now and lasts its time.
    void addRun(QString id, RunFact run)
    {
        run.started = m_now.plusSeconds(30);
        run.ended = run.started.plusSeconds(runSeconds);
        add(std::move(id), std::move(run), runSeconds / 60 + 1);
    }
    std::vector<Fact> take() { return std::move(m_facts); }

private:
    const ServiceOrder &m_order;
    QString m_instrument;
    Moment m_now;
    std::vector<Fact> m_facts;
};

SafetyFact card(double acVolts)
{
    return {.officeConnected = false,
            .acV = Voltages{acVolts, acVolts, 0.1},
            .dcV = Voltages{0.1, 0.1, 0.1},
            .confirmed = std::vector{CardKey::ForeignVoltage, CardKey::BondingGround,
                                     CardKey::Storm, CardKey::WorkPosition}};
}

/// With its make-up, and measured as that predicts. `tapFeet` 0: none.
LoopFact loop(int feet, int tapFeet)
{
    LoopMakeup makeup;
    const auto add = [&makeup](auto make, int length) {
        makeup.elements.push_back(make(Wire::awg(26), Length{double(length), LengthUnit::Foot}));
    };
    add(LoopElement::section, feet / 2);
    if (tapFeet > 0)
        add(LoopElement::tap, tapFeet);
    add(LoopElement::section, feet - feet / 2);
    constexpr double hertz = 40000;
    return {std::round(dcResistanceOhm(makeup)),
            std::round(insertionLossDb(makeup, hertz) * 10) / 10, hertz, makeup};
}

LayerFact up(int layer, int terminal)
{
    LayerFact fact{.layer = layer,
                   .interface = {},
                   .terminal = terminal,
                   .outcome = LayerOutcome::Up,
                   .tei = {},
                   .cause = {}};
    if (layer == 2)
        fact.tei = 63 + terminal;
    return fact;
}

LayerFact firstLayer(LineInterface interface, LayerOutcome outcome)
{
    return {.layer = 1,
            .interface = interface,
            .terminal = {},
            .outcome = outcome,
            .tei = {},
            .cause = {}};
}

CallFact call(Channel channel, CallDirection direction, Service service, const QString &dn)
{
    CallFact fact;
    fact.channel = channel;
    fact.direction = direction;
    fact.service = service;
    fact.dn = dn;
    fact.outcome = CallOutcome::Ok;
    return fact;
}

std::vector<CallFact> callsOf(const ServiceOrder &order)
{
    using enum CallDirection;
    const QString &first = order.terminals.front().dn;
    std::vector<CallFact> calls{call(Channel::B1, Out, Service::Voice, first),
                                call(Channel::B1, In, Service::Voice, first)};
    if (order.kind == LineKind::Bri) {
        const QString &second = order.terminals.back().dn;
        calls.push_back(call(Channel::B1, In, Service::Data, first));
        calls.push_back(call(Channel::B2, Out, Service::Data, second));
    }
    return calls;
}

DetectorFact detector()
{
    return {.path = Path::SelfCall,
            .channels = {Channel::B1, Channel::B2},
            .quietSeconds = 12,
            .quietBitErrors = 0,
            .injections = 3,
            .injected = 3,
            .seenBitErrors = 3,
            .seenErroredSeconds = 3,
            .cleared = true};
}

/// `seconds`: those of a log; else the totals alone were typed.
RunFact run(const ServiceOrder &order, qint64 bitErrors, qint64 erroredSeconds, bool seconds)
{
    RunFact fact;
    fact.channels = {Channel::B1, Channel::B2};
    fact.fromDn = order.terminals.front().dn;
    fact.toDn = order.terminals.back().dn;
    fact.interface = LineInterface::St;
    fact.pattern = "prbs11";
    fact.rate = 64000;
    fact.stoppedEarly = false;
    fact.bitErrors = bitErrors;
    fact.erroredSeconds = erroredSeconds;
    fact.severelyErroredSeconds = 0;
    fact.syncLosses = 0;
    if (seconds) {
        SecondList list(runSeconds);
        for (qint64 i = 0; i < erroredSeconds; ++i)
            list[std::size_t(i * 7)] = Second(bitErrors / erroredSeconds);
        fact.seconds = std::move(list);
    }
    return fact;
}

AnalogFact reading(AnalogQuantity quantity, AnalogValue value)
{
    return {quantity, value, {}};
}

} // namespace

std::vector<Fact> Inventor::evidence(const ServiceOrder &order, bool whole)
{
    const qsizetype who = order.installer.mid(1).toInt() - 1;
    const QDate day = whole ? order.dueDate : std::min(order.dueDate, m_today).addDays(-1);
    Visiting visit(order, m_instruments[who].key, inventedMoment(day, 8 * 60 + below(300)));
    // An open job has come to some step, or to none; one in fifty ends at a hazard.
    const int last = whole || oneIn(12) ? 1000 : below(2) ? 0 : below(24);
    if (!whole && last > 0 && oneIn(25)) {
        visit.add(id(), card(120));
        return visit.take();
    }
    visit.add(id(), card(0.2));
    visit.add(id(), SelfTestFact{});
    const int feet = 2000 + below(9000); // one draw after the other, in this order
    visit.add(id(), loop(feet, oneIn(4) ? 200 + below(800) : 0));
    if (order.kind == LineKind::Bri) {
        if (oneIn(8))
            visit.add(id(), firstLayer(LineInterface::U, LayerOutcome::Down));
        visit.add(id(), firstLayer(LineInterface::U, LayerOutcome::Up));
        visit.add(id(), firstLayer(LineInterface::St, LayerOutcome::Up));
        for (const int layer : {2, 3})
            for (const int terminal : {1, 2})
                visit.add(id(), up(layer, terminal), 1);
    } else {
        using enum AnalogQuantity;
        visit.add(id(), reading(LoopCurrent, double(26 + below(20))));
        visit.add(id(), reading(Loss1004, double(40 + below(40)) / 10));
        visit.add(id(), reading(Noise, double(6 + below(12))));
        visit.add(id(), reading(PowerInfluence, double(66 + below(10))));
        for (const AnalogQuantity quantity : {Polarity, DialTone, Ringing})
            visit.add(id(), reading(quantity, true), 1);
    }
    for (const CallFact &made : callsOf(order)) {
        if (oneIn(20)) {
            CallFact failed = made;
            failed.outcome = CallOutcome::Failed;
            failed.cause = 34; // Q.850: no circuit available
            visit.add(id(), failed);
        }
        visit.add(id(), made, 2);
    }
    if (order.kind == LineKind::Bri) {
        visit.add(id(), detector());
        if (oneIn(6)) {
            visit.addRun(id(), run(order, 4800 + below(900), 60 + below(60), oneIn(4)));
            visit.add(id(), ClearedFact{ClearedWhat::Contact, QString("joint re-made")}, 12);
            visit.add(id(), detector());
        }
        visit.addRun(id(), run(order, 0, 0, oneIn(4)));
    }
    std::vector<Fact> facts = visit.take();
    if (int(facts.size()) > last)
        facts.resize(std::size_t(last));
    return facts;
}

std::vector<Fact> Inventor::retests(const ServiceOrder &order, QDate day)
{
    const qsizetype who = order.installer.mid(1).toInt() - 1;
    Visiting visit(order, m_instruments[who].key, inventedMoment(day, 10 * 60 + below(300)));
    visit.add(id(), card(0.2));
    visit.add(id(), LoopFact{double(250 + below(900)), {}, {}, {}});
    if (order.kind == LineKind::Bri) {
        visit.add(id(), detector());
        visit.addRun(id(), run(order, below(3), 1, false));
    }
    return visit.take();
}

} // namespace loopwright
