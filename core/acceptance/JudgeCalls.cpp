// Criteria calls and readback: each service out on each channel that has it, each number called in
// for each of its services, and the number that the network announced.

#include "core/acceptance/Judging.h"
#include "core/order/OrderIdentifiers.h"
#include "core/turnup/Cause.h"

#include <QMap>

namespace loopwright {

namespace {

/// One trial that counts: newest wins.
struct Trial
{
    const Fact *fact = nullptr;
    bool ok = false;
    std::optional<int> cause;
};

struct Trials
{
    QMap<QString, Trial> out; ///< by "B1 voice"
    QMap<QString, Trial> in;  ///< by "number-key voice"
};

QString slot(const QString &where, Service service)
{
    return where + ' ' + toText(service);
}

void addRun(Trials &trials, const NumberKey &key, const ServiceOrder &order, const Fact *fact)
{
    const auto *run = fact->as<RunFact>();
    // At 56 kbit/s it says nothing of the 64 kbit/s that were ordered.
    if (run->rate.value_or(64000) % 64000 != 0 && order.dataRate == 64000)
        return;
    const Trial ok{fact, true, {}};
    const bool selfCall = run->path == Path::SelfCall && run->fromDn && run->toDn &&
                          selfCallTrouble(*run, order).isEmpty();
    if (selfCall && !run->channels.empty())
        trials.out.insert(slot(toText(run->channels.front()), Service::Data), ok);
    // A loopback that calls back rings the number as a data call.
    const bool callsBack = run->path == Path::TestLine && run->toDn;
    if (selfCall || callsBack)
        for (const OrderedTerminal &terminal : order.terminals)
            if (key(terminal.dn) == key(*run->toDn))
                trials.in.insert(slot(key(terminal.dn), Service::Data), ok);
}

Trials gatherTrials(const Judging &judging, const NumberKey &key)
{
    Trials trials;
    for (const Fact *fact : judging.evidence.facts()) {
        if (!judging.evidence.counts(*fact, Proves::Upper))
            continue;
        if (fact->as<RunFact>())
            addRun(trials, key, judging.order, fact);
        const auto *call = fact->as<CallFact>();
        if (!call)
            continue;
        const Trial trial{fact, call->outcome == CallOutcome::Ok, call->cause};
        // A packet session is one session, whoever set it up.
        if (call->direction == CallDirection::Out || call->service == Service::Packet)
            trials.out.insert(slot(toText(call->channel), call->service), trial);
        if (call->direction == CallDirection::In && call->dn)
            trials.in.insert(slot(key(*call->dn), call->service), trial);
        else if (call->direction == CallDirection::In && judging.order.terminals.size() == 1)
            trials.in.insert(slot(key(judging.order.terminals.front().dn), call->service), trial);
    }
    return trials;
}

bool worksAt56(const Judging &judging, Channel channel)
{
    for (const Fact *fact : judging.evidence.of<RunFact>(Proves::Upper)) {
        const auto *run = fact->as<RunFact>();
        const bool covers =
            std::find(run->channels.begin(), run->channels.end(), channel) != run->channels.end();
        if (covers && run->rate == 56000 && run->path != Path::NtLoop &&
            evaluateRun(*run, judging.limits.value("run_confidence")).summary.bitErrors == 0)
            return true;
    }
    return false;
}

void judgeTrial(const Judging &judging, CriterionResult &result, const QMap<QString, Trial> &trials,
                const QString &at, const QString &what, int &made)
{
    const auto found = trials.constFind(at);
    if (found == trials.constEnd()) {
        mergeOutcome(result, CriterionOutcome::Missing, QString("No %1 was recorded.").arg(what),
                     QString("Make a %1 and record it.").arg(what));
        return;
    }
    result.evidence << found->fact->id;
    if (found->ok) {
        ++made;
        mergeOutcome(result, CriterionOutcome::Met, {});
        return;
    }
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const auto cause =
        found->cause && variant && usesQ850(*variant) ? causeOf(*found->cause) : std::nullopt;
    mergeOutcome(result, CriterionOutcome::NotMet,
                 QString("The %1 failed%2.")
                     .arg(what, cause
                                    ? QString(", cause %1 (%2)").arg(cause->number).arg(cause->name)
                                    : QString()),
                 cause && !cause->checkFirst.isEmpty()
                     ? "Check first: " + cause->checkFirst + "."
                     : QString("Find out why the %1 failed and try it again.").arg(what));
}

void judgeChannel(const Judging &judging, CriterionResult &result, const Trials &trials,
                  Channel channel, Services services, int &made)
{
    for (const Service service : each(services)) {
        const QString what =
            service == Service::Packet
                ? QString("packet session on %1").arg(toText(channel))
                : QString("%1 call out on %2")
                      .arg(toText(service), judging.isAnalog() ? "the line" : toText(channel));
        const QString at = slot(toText(channel), service);
        judgeTrial(judging, result, trials.out, at, what, made);
        const auto found = trials.out.constFind(at);
        if (service == Service::Data && found != trials.out.constEnd() && !found->ok &&
            judging.order.dataRate == 64000 && worksAt56(judging, channel))
            mergeOutcome(
                result, CriterionOutcome::NotMet,
                QString("64 kbit/s fails on %1 and 56 kbit/s works: the path is restricted, not "
                        "the line.")
                    .arg(toText(channel)),
                "Ask the serving office for an unrestricted path.");
    }
}

} // namespace

void judgeCalls(const Judging &judging, CriterionResult &result)
{
    const ServiceOrder &order = judging.order;
    const NumberKey key(order);
    const Trials trials = gatherTrials(judging, key);
    int made = 0, needed = 0;
    const std::pair<Channel, Services> channels[] = {
        {Channel::B1, order.b1}, {Channel::B2, order.b2}, {Channel::D, order.d}};
    for (const auto &[channel, services] : channels) {
        judgeChannel(judging, result, trials, channel, services, made);
        needed += int(each(services).size());
    }
    QStringList asked; // a number that several terminals share is called once
    for (const OrderedTerminal &terminal : order.terminals) {
        if (terminal.dn.isEmpty())
            continue;
        for (const Service service : each(order.servicesOf(terminal))) {
            const QString at = slot(key(terminal.dn), service);
            if (service == Service::Packet || asked.contains(at))
                continue;
            asked << at;
            judgeTrial(judging, result, trials.in, at,
                       QString("%1 call in to %2").arg(toText(service), key.shown(terminal.dn)),
                       made);
        }
    }
    needed += int(asked.size());
    result.measured = made;
    result.limit = needed;
    result.unit = "calls";
    result.measuredText = QString("%1 of %2 calls made").arg(made).arg(needed);
    result.limitText = "each service out on each channel, each number called in";
    result.source = "the order";
    if (needed == 0)
        mergeOutcome(result, CriterionOutcome::Met,
                     "The order grants no service that a call could show.");
    else if (result.outcome == CriterionOutcome::Met)
        mergeOutcome(result, CriterionOutcome::Met,
                     QString("All %1 calls went through.").arg(needed));
}

namespace {

/// `right`: the number is one of the order's, and the one that was expected.
void judgeAnnounced(const Judging &judging, const CallFact &call, bool right,
                    CriterionResult &result)
{
    const Services granted = judging.order.bServices() | judging.order.d;
    if (!right)
        mergeOutcome(result, CriterionOutcome::NotMet,
                     QString("The network announced %1, which is not the number of this pair.")
                         .arg(*call.announcedDn),
                     "Have the office check pair and number: this may be another customer's line.");
    else if (call.announcedService && !granted.testFlag(*call.announcedService))
        mergeOutcome(
            result, CriterionOutcome::NotMet,
            QString("The network announced the service %1, which the order does not grant.")
                .arg(toText(*call.announcedService)),
            "Have the office check the services of the line.");
    else
        mergeOutcome(result, CriterionOutcome::Met,
                     QString("The network announced %1.").arg(*call.announcedDn));
}

} // namespace

void judgeReadback(const Judging &judging, CriterionResult &result)
{
    const NumberKey key(judging.order);
    QStringList ordered;
    for (const OrderedTerminal &terminal : judging.order.terminals)
        if (!terminal.dn.isEmpty())
            ordered << key(terminal.dn);
    QMap<QString, const Fact *> newest; // by the number that was expected
    for (const Fact *fact : judging.evidence.of<CallFact>(Proves::Upper))
        if (const auto *call = fact->as<CallFact>(); call->announcedDn)
            newest.insert(call->dn ? key(*call->dn) : QString(), fact);
    result.limitText = "the announced number is the order's";
    result.source = "common practice";
    if (newest.isEmpty()) {
        const bool asked = judging.limits.value("readback_required") != 0;
        mergeOutcome(result, asked ? CriterionOutcome::Missing : CriterionOutcome::NotNeeded,
                     "No announced number was recorded.",
                     asked ? "Have the network announce the number of this pair." : "");
        return;
    }
    QStringList announced;
    for (auto it = newest.begin(); it != newest.end(); ++it) {
        const auto *call = it.value()->as<CallFact>();
        const QString heard = key(*call->announcedDn);
        announced << *call->announcedDn;
        result.evidence << it.value()->id;
        const bool right = ordered.contains(heard) &&
                           (it.key().isEmpty() || !ordered.contains(it.key()) || it.key() == heard);
        judgeAnnounced(judging, *call, right, result);
    }
    result.measured = result.measuredText = announced.join(", ");
}

} // namespace loopwright
