// What a certificate tells the customer besides the tests: what is not covered, power and emergency
// calls, whom to call, what was dangerous, what was recorded late, what is different from an
// earlier certificate.

#include "core/acceptance/Evidence.h"
#include "core/base/PaperTime.h"
#include "core/certificate/ContentParts.h"

#include <QMap>
#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

constexpr double secondsOfADay = 86400;

bool isNorthAmerican(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    if (variant && variant->northAmerican)
        return true;
    return order.kind == LineKind::Analog && !order.terminals.empty() &&
           !order.terminals.front().dn.startsWith(u'+') &&
           !order.terminals.front().dn.startsWith(u'0');
}

/// A run that counts was made at U, where the NT is not part of it.
bool isRunBeforeNt(const CertificateSources &sources)
{
    return std::ranges::any_of(sources.decision.runs, [&sources](const RunMade &made) {
        const Fact *fact = factOf(sources, made.fact);
        const auto *run = fact ? fact->as<RunFact>() : nullptr;
        return run && made.outcome == RunOutcome::Counted &&
               run->interface.value_or(LineInterface::St) == LineInterface::U;
    });
}

QStringList namesOf(const std::vector<CertificateCriterion> &criteria, const QStringList &keys)
{
    QStringList names;
    for (const CertificateCriterion &criterion : criteria)
        if (keys.contains(criterion.key))
            names << criterion.name;
    return names;
}

} // namespace

QString inPlainWords(QString text)
{
    static constexpr std::pair<const char *, const char *> words[] = {
        {"A self-call", "A call from one channel of this line to the other"},
        {"a self-call", "a call from one channel of this line to the other"},
        {"self-call", "call from one channel of this line to the other"},
        {"The run was made at the U interface",
         "The run was made on the pair itself, before the NT (at U)"},
        {"The run was made at the S/T interface, through the NT",
         "The run was made behind the NT (at S/T)"},
        {"The run was made at the S/T interface", "The run was made behind the NT (at S/T)"}};
    for (const auto &[ours, theirs] : words)
        text.replace(QLatin1StringView(ours), QLatin1StringView(theirs));
    static const QRegularExpression ratio("BER at most ([0-9.]+e-?[0-9]+)");
    if (const auto match = ratio.match(text); match.hasMatch())
        text.replace(match.captured(),
                     "bits in error at most " + paperRatio(match.captured(1).toDouble()));
    return text;
}

QStringList hazardLines(const CertificateSources &sources, const NumberGuard &guard)
{
    const Evidence evidence(sources.input, sources.limits);
    QStringList lines;
    for (const Hazard &hazard : evidence.cards().hazards()) {
        const auto *closed = hazard.closing ? hazard.closing->as<HazardClosedFact>() : nullptr;
        lines << hazardStory(hazard, closed ? guard.coverTyped(closed->by) : QString(),
                             closed ? guard.coverTyped(closed->reference.value_or(QString()))
                                    : QString());
    }
    return lines;
}

QStringList lateLines(const CertificateSources &sources)
{
    QMap<std::pair<QDate, QDate>, int> late;
    for (const Fact &fact : sources.input.facts) {
        const auto recorded = sources.recordedAt.find(fact.id);
        if (recorded != sources.recordedAt.end() &&
            std::abs(fact.at.secondsUntil(*recorded)) > secondsOfADay)
            ++late[{fact.at.localDate(), recorded->localDate()}];
    }
    QStringList lines;
    for (auto it = late.begin(); it != late.end(); ++it)
        lines << QString("%1 dated %2 %3 recorded on %4.")
                     .arg(it.value() == 1 ? QString("One entry")
                                          : QString("%1 entries").arg(it.value()),
                          paperDay(it.key().first), it.value() == 1 ? "was" : "were",
                          paperDay(it.key().second));
    return lines;
}

QStringList notCoveredLines(const CertificateSources &sources)
{
    const ServiceOrder &order = sources.input.order;
    const QString point = order.kind == LineKind::Bri
                              ? QString("the network termination (NT)")
                              : QString("the jack or terminal where the line ends");
    QStringList lines{
        QString("Wiring and equipment on your side of %1: the point of demarcation.").arg(point),
        "What lies beyond the serving switch: other networks, and the lines of those you call."};
    if (order.ntSupplied && isRunBeforeNt(sources))
        lines << "The network termination (NT) in the error test: it was made on the pair itself.";
    return lines;
}

QStringList mustKnowLines(const ServiceOrder &order)
{
    QStringList lines;
    if (order.kind == LineKind::Bri)
        lines << QString("When the network termination (NT) has no power, this line is dead: no "
                         "call, no emergency call and no alarm goes out over it. %1")
                     .arg(order.ntPower.isEmpty()
                              ? QString("What feeds the NT was not recorded; usually it is a mains "
                                        "socket at the premises.")
                              : QString("The NT is fed by: %1.").arg(order.ntPower));
    const QString calls = isNorthAmerican(order) ? "Emergency calls (911)" : "Emergency calls";
    lines << QString("%1 are answered for the service address as it was ordered: %2. Tell the "
                     "issuer if that is wrong, or if you move.")
                 .arg(calls, order.premises)
          << "No emergency call is tested without arrangement with the emergency service.";
    return lines;
}

CertificateCall callOf(const ServiceOrder &order, const ServingOffice &office,
                       const std::optional<Issuer> &issuer)
{
    CertificateCall call{office.troubleTelephone, {}, "circuit " + order.circuit};
    if (call.telephone.isEmpty() && issuer)
        call.telephone = issuer->troubleTelephone;
    if (issuer && (call.telephone == issuer->troubleTelephone || office.troubleTelephone.isEmpty()))
        call.hours = issuer->troubleHours;
    return call;
}

QStringList changesBetween(const CertificateContent &before, const CertificateContent &now)
{
    QStringList changes;
    if (before.outcome != now.outcome)
        changes << QString("the verdict was “%1”").arg(before.verdict());
    const auto say = [&changes](bool differs, const QString &text) {
        if (differs)
            changes << text;
    };
    say(before.customer != now.customer, "the customer's name was changed");
    say(before.premises != now.premises, "the premises were changed");
    say(before.terminals != now.terminals, "numbers or identifiers were changed");
    say(before.service != now.service, "the services were changed");
    QStringList keys;
    for (const CertificateCriterion &criterion : now.criteria) {
        const auto old =
            std::ranges::find(before.criteria, criterion.key, &CertificateCriterion::key);
        if (old == before.criteria.end() || *old != criterion)
            keys << criterion.key;
    }
    if (!keys.isEmpty())
        changes << "new evidence for: " + namesOf(now.criteria, keys).join(", ");
    const auto more = qsizetype(now.runs.size()) - qsizetype(before.runs.size());
    say(more > 0, more == 1 ? QString("a further run was made")
                            : QString("%1 further runs were made").arg(more));
    if (changes.isEmpty())
        changes << "what it says was changed";
    return changes;
}

} // namespace loopwright
