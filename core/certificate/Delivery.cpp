// What was ordered, and beside it what the evidence shows to have been delivered.

#include "core/acceptance/Judging.h"
#include "core/certificate/ContentParts.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>
#include <set>

namespace loopwright {

namespace {

class Delivered
{
public:
    explicit Delivered(const CertificateSources &sources)
        : m_order(sources.input.order)
        , m_key(sources.input.order)
    {
        QStringList counted;
        for (const CriterionResult &criterion : sources.decision.criteria)
            counted << criterion.evidence;
        QStringList failed;
        for (const RunMade &run : sources.decision.runs)
            if (run.outcome == RunOutcome::Failed)
                failed << run.fact;
        for (const Fact &fact : sources.input.facts)
            if (counted.contains(fact.id))
                (failed.contains(fact.id) ? m_failedRuns : m_facts).push_back(&fact);
    }

    /// "voice and data, by calls".
    QString on(Channel channel) const
    {
        std::set<Service> seen;
        for (const Fact *fact : m_facts) {
            const auto *call = fact->as<CallFact>();
            if (call && call->channel == channel && call->outcome == CallOutcome::Ok)
                seen.insert(call->service);
            if (const auto *run = fact->as<RunFact>(); run && run->channels.contains(channel))
                seen.insert(Service::Data);
        }
        for (const Fact *fact : m_failedRuns)
            if (showsCallOut(*fact->as<RunFact>(), m_order, channel))
                seen.insert(Service::Data);
        QStringList words;
        for (const Service service : seen)
            words << toText(service);
        if (words.isEmpty())
            return "not shown";
        return words.join(" and ") + ", shown by calls" + rateOn(channel) + failedRunOn(channel);
    }
    /// "answered when it was called; a call for voice did not go through".
    QString number(const QString &dn) const
    {
        QStringList failed, said{shown(dn)};
        for (const Fact *fact : m_facts)
            if (const CallFact *call = callTo(dn, *fact);
                call && call->outcome == CallOutcome::Failed)
                failed << toText(call->service);
        failed.removeDuplicates();
        if (!failed.isEmpty())
            said << QString("a call for %1 did not go through").arg(failed.join(" and "));
        said.removeAll(QString());
        return said.isEmpty() ? QString("not called") : said.join("; ");
    }
    QString tei(int terminal) const
    {
        QString found = "not shown";
        for (const Fact *fact : m_facts)
            if (const auto *layer = fact->as<LayerFact>();
                layer && layer->layer == 2 && layer->tei &&
                (layer->terminalOrFirst() == terminal || m_order.isPointToPoint()))
                found = QString::number(*layer->tei);
        return found;
    }
    QString pair() const
    {
        QStringList pairs;
        for (const Fact *fact : m_facts)
            if (!fact->pair.isEmpty() && !pairs.contains(fact->pair))
                pairs << fact->pair;
        return pairs.isEmpty() ? QString("the measurements name no pair")
                               : "measured on " + pairs.join(", ");
    }

private:
    const CallFact *callTo(const QString &dn, const Fact &fact) const
    {
        const auto *call = fact.as<CallFact>();
        return call && call->direction == CallDirection::In && call->dn &&
                       m_key(*call->dn) == m_key(dn)
                   ? call
                   : nullptr;
    }
    /// How the number was shown to be the line's; empty if it was not.
    QString shown(const QString &dn) const
    {
        for (const Fact *fact : m_facts) {
            const auto *announced = fact->as<CallFact>();
            if (announced && announced->announcedDn && m_key(*announced->announcedDn) == m_key(dn))
                return "announced by the network";
            if (const CallFact *call = callTo(dn, *fact); call && call->outcome == CallOutcome::Ok)
                return "answered when it was called";
            if (const auto *run = fact->as<RunFact>();
                run && run->toDn && m_key(*run->toDn) == m_key(dn))
                return "answered in the error test";
        }
        for (const Fact *fact : m_failedRuns)
            if (showsCallIn(*fact->as<RunFact>(), m_order, dn))
                return "answered in the error test";
        return {};
    }
    QString failedRunOn(Channel channel) const
    {
        const bool failed = std::ranges::any_of(m_failedRuns, [channel](const Fact *fact) {
            return fact->as<RunFact>()->channels.contains(channel);
        });
        return failed && rateOn(channel).isEmpty() ? QString("; its run failed") : QString();
    }
    QString rateOn(Channel channel) const
    {
        for (const Fact *fact : m_facts)
            if (const auto *run = fact->as<RunFact>(); run && run->channels.contains(channel))
                return QString(" and a run at %1 kbit/s").arg(double(run->bitsPerSecond()) / 1000);
        return {};
    }

    const ServiceOrder &m_order;
    NumberKey m_key;
    std::vector<const Fact *> m_facts;
    /// Evidence of their failure: they show that the call went through, and nothing else.
    std::vector<const Fact *> m_failedRuns;
};

QString ntText(const ServiceOrder &order)
{
    QStringList parts{order.ntMake};
    if (!order.ntSerial.isEmpty())
        parts << "serial " + order.ntSerial;
    parts.removeAll(QString());
    return parts.isEmpty() ? QString("make and serial not recorded") : parts.join(", ");
}

void addTerminals(std::vector<CertificateDelivery> &rows, const CertificateSources &sources,
                  const Delivered &delivered)
{
    const ServiceOrder &order = sources.input.order;
    const std::vector<CertificateTerminal> terminals = terminalLines(order);
    for (std::size_t i = 0; i < terminals.size(); ++i)
        rows.push_back({order.terminals.size() == 1 ? QString("Number")
                                                    : QString("Number %1").arg(terminals[i].number),
                        terminals[i].dn, delivered.number(order.terminals[i].dn)});
    if (order.kind == LineKind::Analog)
        return;
    const bool shared = order.isPointToPoint();
    for (std::size_t i = 0;
         i < (shared ? std::min<std::size_t>(1, terminals.size()) : terminals.size()); ++i)
        rows.push_back({shared || terminals.size() == 1
                            ? QString("TEI")
                            : QString("TEI %1").arg(terminals[i].number),
                        terminals[i].tei, delivered.tei(terminals[i].number)});
}

} // namespace

std::vector<CertificateDelivery> deliveryOf(const CertificateSources &sources)
{
    const ServiceOrder &order = sources.input.order;
    const Delivered delivered(sources);
    std::vector<CertificateDelivery> rows;
    for (const CertificateLine &line : serviceLines(order)) {
        if (line.name == u"NT")
            continue;
        const auto channel = line.name == u"B2"  ? Channel::B2
                             : line.name == u"D" ? Channel::D
                                                 : Channel::B1;
        if (line.value == u"not ordered")
            rows.push_back({line.name, line.value, "–"});
        else
            rows.push_back({line.name, line.value, delivered.on(channel)});
    }
    addTerminals(rows, sources, delivered);
    rows.push_back(
        {"Pair", order.pair.isEmpty() ? QString("not named") : order.pair, delivered.pair()});
    if (!order.terminalLocation.isEmpty())
        rows.push_back({"Jack or terminal", order.terminalLocation, "–"});
    if (order.kind == LineKind::Bri)
        rows.push_back(
            {"NT", order.ntSupplied ? QString("supplied with the line") : QString("customer's own"),
             ntText(order)});
    return rows;
}

} // namespace loopwright
