// Criteria calls and readback: each service out on each channel that has it, each number called in
// for each of its services, and the number that the network announced.

#include "core/acceptance/Judging.h"
#include "core/order/OrderIdentifiers.h"
#include "core/turnup/Cause.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::pair<Channel, Services ServiceOrder::*> channels[] = {
    {Channel::B1, &ServiceOrder::b1},
    {Channel::B2, &ServiceOrder::b2},
    {Channel::D, &ServiceOrder::d}};

Text serviceText(Service service)
{
    for (const auto &[each, word] : EnumCodes<Service>::table)
        if (each == service)
            return Text(word);
    return {};
}

/// A run is a data call as well: nobody is asked twice. At 56 kbit/s it says nothing of the 64
/// kbit/s that were ordered.
bool isDataCall(const RunFact &run, const ServiceOrder &order)
{
    return run.rate.value_or(64000) % 64000 == 0 || order.dataRate != 64000;
}

} // namespace

bool showsCallOut(const RunFact &run, const ServiceOrder &order, Channel channel)
{
    return isDataCall(run, order) && isSelfCall(run, order) && run.channels.front() == channel;
}

bool showsCallIn(const RunFact &run, const ServiceOrder &order, const QString &number)
{
    const NumberKey key(order);
    const bool callsBack = run.path == Path::TestLine && run.toDn && lastedAsCall(run);
    return isDataCall(run, order) && (isSelfCall(run, order) || callsBack) &&
           key(*run.toDn) == key(number);
}

namespace {

Need callNeed(const QString &key, Channel channel, CallDirection direction, Service service)
{
    Need need{key, "calls", StepGroup::Calls, Station::Calls, FactKind::Call};
    need.preset = {{"channel", toText(channel)},
                   {"direction", toText(direction)},
                   {"service", toText(service)}};
    need.fields = {"outcome", "cause", "cause_location"};
    need.optional = {"cause", "cause_location"};
    need.after = {"safety"};
    return need;
}

void needCallOut(std::vector<Need> &needs, const ServiceOrder &order, Channel channel,
                 Service service)
{
    const bool packet = service == Service::Packet;
    Need need = callNeed(QString("call.out.%1.%2").arg(toText(channel), toText(service)), channel,
                         CallDirection::Out, service);
    need.label =
        packet
            ? Text(QT_TRANSLATE_NOOP("core", "packet session on %1")).arg(toText(channel))
            : Text(QT_TRANSLATE_NOOP("core", "%1 call out on %2"))
                  .arg(serviceText(service))
                  .arg(order.kind == LineKind::Analog ? Text(QT_TRANSLATE_NOOP("core", "the line"))
                                                      : Text::verbatim(toText(channel)));
    need.hint = packet ? Text(QT_TRANSLATE_NOOP("core", "one session, whoever sets it up"))
                       : Text(QT_TRANSLATE_NOOP("core", "to any number that answers"));
    need.matches = [order, channel, service, packet](const Fact &fact) {
        if (const auto *run = fact.as<RunFact>())
            return service == Service::Data && showsCallOut(*run, order, channel);
        const auto *call = fact.as<CallFact>();
        return call && call->channel == channel && call->service == service &&
               (packet || call->direction == CallDirection::Out);
    };
    needs.push_back(std::move(need));
}

void needCallIn(std::vector<Need> &needs, const ServiceOrder &order,
                const OrderedTerminal &terminal, Service service)
{
    const NumberKey key(order);
    const Channel channel = order.b1.testFlag(service) ? Channel::B1 : Channel::B2;
    Need need = callNeed(QString("call.in.%1.%2").arg(terminal.number).arg(toText(service)),
                         channel, CallDirection::In, service);
    need.preset.insert("dn", terminal.dn);
    need.label = Text(QT_TRANSLATE_NOOP("core", "%1 call in to %2"))
                     .arg(serviceText(service))
                     .arg(key.shown(terminal.dn));
    need.hint = Text(QT_TRANSLATE_NOOP("core", "from any number"));
    need.matches = [order, key, number = terminal.dn, service](const Fact &fact) {
        if (const auto *run = fact.as<RunFact>())
            return service == Service::Data && showsCallIn(*run, order, number);
        const auto *call = fact.as<CallFact>();
        if (!call || call->service != service || call->direction != CallDirection::In)
            return false;
        return call->dn ? key(*call->dn) == key(number) : order.terminals.size() == 1;
    };
    needs.push_back(std::move(need));
}

} // namespace

void needCalls(std::vector<Need> &needs, const ServiceOrder &order, OrderScope, const LimitSet &)
{
    for (const auto &[channel, services] : channels)
        for (const Service service : each(order.*services))
            needCallOut(needs, order, channel, service);
    const NumberKey key(order);
    QStringList asked; // a number that several terminals share is called once
    for (const OrderedTerminal &terminal : order.terminals)
        for (const Service service : each(order.servicesOf(terminal))) {
            const QString once = key(terminal.dn) + ' ' + toText(service);
            if (terminal.dn.isEmpty() || service == Service::Packet || asked.contains(once))
                continue;
            asked << once;
            needCallIn(needs, order, terminal, service);
        }
}

namespace {

bool hasPassedSelfCall(const Judging &judging, Channel channel)
{
    for (const ChannelRuns &each : judging.runs)
        for (const JudgedRun &run : each.runs)
            if (each.channel == channel && run.standing == RunStanding::Passed &&
                run.fact->as<RunFact>()->path == Path::SelfCall)
                return true;
    return false;
}

/// In sync for 30 seconds without an error.
bool worksAt56(const Judging &judging, Channel channel)
{
    constexpr double longEnough = 30; // s
    for (const Fact *fact : judging.evidence.of<RunFact>()) {
        const auto *run = fact->as<RunFact>();
        if (!run->channels.contains(channel) || run->rate != 56000 || run->path == Path::NtLoop)
            continue;
        const ErrorSummary sum = evaluateRun(*run, judging.limits.value("run_confidence")).summary;
        if (sum.bitErrors == 0 && sum.erroredSeconds == 0 && sum.syncLosses == 0 &&
            double(sum.seconds) >= longEnough)
            return true;
    }
    return false;
}

void sayFailed(Judging &judging, const Need &need, const CallFact &call, CriterionResult &result)
{
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const auto cause =
        call.cause && variant && usesQ850(*variant) ? causeOf(*call.cause) : std::nullopt;
    Text reason = cause ? Text(QT_TRANSLATE_NOOP("core", "The %1 failed, cause %2 (%3)."))
                              .arg(need.label)
                              .arg(cause->number)
                              .arg(cause->name)
                        : Text(QT_TRANSLATE_NOOP("core", "The %1 failed.")).arg(need.label);
    Text next =
        cause && !cause->checkFirst.isEmpty()
            ? Text(QT_TRANSLATE_NOOP("core", "Check first: %1.")).arg(cause->checkFirst)
            : Text(QT_TRANSLATE_NOOP("core", "Find out why the %1 failed and try it again."))
                  .arg(need.label);
    if (call.causeLocation) {
        const LocationAdvice &place = adviceOf(*call.causeLocation);
        reason += Text(QT_TRANSLATE_NOOP("core", "The cause came %1.")).arg(place.from);
        next += place.check;
    }
    judging.settle(need, result, CriterionOutcome::NotMet, reason, next);
    if (call.service == Service::Data && call.direction == CallDirection::Out &&
        judging.order.dataRate == 64000 && worksAt56(judging, call.channel) &&
        !hasPassedSelfCall(judging, call.channel))
        judging.settle(
            need, result, CriterionOutcome::NotMet,
            Text(QT_TRANSLATE_NOOP(
                     "core", "64 kbit/s fails on %1 and 56 kbit/s works: the path is restricted, "
                             "not the line."))
                .arg(toText(call.channel)),
            Text(QT_TRANSLATE_NOOP("core", "Ask the serving office for an unrestricted path.")));
}

} // namespace

void judgeCalls(Judging &judging, CriterionResult &result)
{
    const auto needs = judging.needsFor(result.key);
    const int needed = int(needs.size());
    int made = 0;
    for (const Need *need : needs) {
        const Fact *fact = judging.newest(*need);
        if (!fact) {
            judging.settle(
                *need, result, CriterionOutcome::Missing,
                Text(judging.hasDiscounted(*need)
                         ? QT_TRANSLATE_NOOP("core", "No %1 counts.")
                         : QT_TRANSLATE_NOOP("core", "No %1 was recorded."))
                    .arg(need->label),
                Text(QT_TRANSLATE_NOOP("core", "Make a %1 and record it.")).arg(need->label));
            continue;
        }
        result.evidence << fact->id;
        const auto *call = fact->as<CallFact>();
        if (call && call->outcome != CallOutcome::Ok) {
            sayFailed(judging, *need, *call, result);
            continue;
        }
        ++made;
        judging.settle(*need, result, CriterionOutcome::Met, {});
    }
    result.measured = made;
    result.limit = needed;
    result.unit = "calls";
    result.measuredText =
        Text(QT_TRANSLATE_NOOP("core", "%1 of %2 calls made")).arg(made).arg(needed);
    result.limitText =
        QT_TRANSLATE_NOOP("core", "each service out on each channel, each number called in");
    result.source = "the order";
    if (needed == 0)
        mergeOutcome(
            result, CriterionOutcome::Met,
            Text(QT_TRANSLATE_NOOP("core", "The order grants no service that a call could show.")));
    else if (result.outcome == CriterionOutcome::Met)
        mergeOutcome(result, CriterionOutcome::Met,
                     Text(QT_TRANSLATE_NOOP("core", "All %1 calls went through.")).arg(needed));
}

void needReadback(std::vector<Need> &needs, const ServiceOrder &order, OrderScope, const LimitSet &)
{
    const NumberKey key(order);
    const Service service =
        order.bServices().testFlag(Service::Voice) ? Service::Voice : Service::Data;
    const Channel channel = order.b1.testFlag(service) || !order.b2 ? Channel::B1 : Channel::B2;
    const QStringList numbers = ownNumbers(order);
    QStringList own;
    for (const QString &number : numbers)
        own << key(number);
    for (const QString &number : numbers) {
        Need need{QString("readback.%1").arg(numbers.indexOf(number) + 1), "readback",
                  StepGroup::Calls, Station::Calls, FactKind::Call};
        need.preset = {{"channel", toText(channel)},
                       {"direction", toText(CallDirection::Out)},
                       {"service", toText(service)},
                       {"outcome", toText(CallOutcome::Ok)},
                       {"dn", number}};
        need.fields = {"announced_dn"};
        need.after = {"safety"};
        need.label =
            Text(QT_TRANSLATE_NOOP("core", "number announced for %1")).arg(key.shown(number));
        need.hint = Text(QT_TRANSLATE_NOOP(
            "core", "must be the order's: a wrong one is another customer's line"));
        // What does not say for which of the numbers it was heard speaks of the one that it names,
        // and of every number if it names a stranger's.
        need.matches = [key, own, wanted = key(number)](const Fact &fact) {
            const auto *call = fact.as<CallFact>();
            if (!call || !call->announcedDn)
                return false;
            const QString expected = call->dn ? key(*call->dn) : QString();
            if (own.contains(expected))
                return expected == wanted;
            const QString heard = key(*call->announcedDn);
            return heard == wanted || !own.contains(heard);
        };
        needs.push_back(std::move(need));
    }
}

namespace {

/// `right`: the number is one of the order's, and the one that was expected.
void judgeAnnounced(Judging &judging, const Need &need, const CallFact &call, bool right,
                    CriterionResult &result)
{
    const Services granted = judging.order.bServices() | judging.order.d;
    const QString shown = NumberKey(judging.order).shown(*call.announcedDn);
    if (!right)
        judging.settle(
            need, result, CriterionOutcome::NotMet,
            Text(QT_TRANSLATE_NOOP(
                     "core", "The network announced %1, which is not the number of this pair."))
                .arg(shown),
            Text(QT_TRANSLATE_NOOP("core",
                                   "Have the office check pair and number: this may be another "
                                   "customer's line.")));
    else if (call.announcedService && !granted.testFlag(*call.announcedService))
        judging.settle(
            need, result, CriterionOutcome::NotMet,
            Text(QT_TRANSLATE_NOOP("core",
                                   "The network announced the service %1, which the order does not "
                                   "grant."))
                .arg(Text::message(toText(*call.announcedService))),
            Text(QT_TRANSLATE_NOOP("core", "Have the office check the services of the line.")));
    else
        judging.settle(need, result, CriterionOutcome::Met,
                       Text(QT_TRANSLATE_NOOP("core", "The network announced %1.")).arg(shown));
}

/// A stranger's number that was heard for none of the order's own speaks of the pair, until a later
/// one on the pair is the order's.
void passOverRefutedStrangers(Judging &judging, const std::vector<const Need *> &needs)
{
    const auto calls = judging.evidence.of<CallFact>();
    if (calls.empty())
        return;
    const NumberKey key(judging.order);
    QStringList own;
    for (const QString &number : ownNumbers(judging.order))
        own << key(number);
    const Fact *right = nullptr; // the newest
    for (const Fact *fact : calls)
        if (const auto *call = fact->as<CallFact>();
            call->announcedDn && own.contains(key(*call->announcedDn)))
            right = fact;
    const auto isRefuted = [&](const Fact &fact) {
        const auto *call = fact.as<CallFact>();
        return right && isEarlier(fact, *right) && !own.contains(key(*call->announcedDn)) &&
               !(call->dn && own.contains(key(*call->dn)));
    };
    for (const Need *need : needs) {
        Standing &standing = judging.standings[need->key];
        if (!standing.counts || !isRefuted(*standing.counts))
            continue;
        standing.before.insert(
            standing.before.begin(),
            {standing.counts, Discount::Newer,
             Text(QT_TRANSLATE_NOOP("core",
                                    "a number of the order was announced on the pair since"))});
        const auto next = std::ranges::find_if(standing.before, [&](const Discounted &each) {
            return each.why == Discount::Newer && !isRefuted(*each.fact);
        });
        standing.counts = next == standing.before.end() ? nullptr : next->fact;
        if (standing.counts)
            standing.before.erase(next);
    }
}

} // namespace

void judgeReadback(Judging &judging, CriterionResult &result)
{
    const NumberKey key(judging.order);
    const auto needs = judging.needsFor(result.key);
    passOverRefutedStrangers(judging, needs);
    const bool any = std::ranges::any_of(
        needs, [&judging](const Need *need) { return judging.newest(*need) != nullptr; });
    const bool asked = judging.limits.value("readback_required") != 0 && !any;
    QStringList announced;
    for (const Need *need : needs) {
        const Fact *fact = judging.newest(*need);
        if (!fact) {
            judging.settle(
                *need, result, asked ? CriterionOutcome::Missing : CriterionOutcome::NotNeeded,
                any ? Text() : Text(QT_TRANSLATE_NOOP("core", "No announced number was recorded.")),
                asked ? Text(QT_TRANSLATE_NOOP(
                            "core", "Have the network announce the number of this pair."))
                      : Text());
            continue;
        }
        const auto *call = fact->as<CallFact>();
        const bool right = key(*call->announcedDn) == key(need->preset["dn"].toString());
        judgeAnnounced(judging, *need, *call, right, result);
        result.evidence << fact->id;
        if (!announced.contains(*call->announcedDn))
            announced << *call->announcedDn;
    }
    result.limitText = QT_TRANSLATE_NOOP("core", "the announced number is the order's");
    result.source = "common practice";
    if (!announced.isEmpty())
        result.setMeasured(Text::verbatim(announced.join(", ")));
}

} // namespace loopwright
