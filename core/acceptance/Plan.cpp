#include "core/acceptance/Plan.h"

#include "core/acceptance/CheckFaults.h"
#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"

#include <algorithm>

namespace loopwright {

namespace {

StepState stepState(NeedState state)
{
    switch (state) {
    case NeedState::NotNeeded:
        break;
    case NeedState::Done:
        return StepState::Done;
    case NeedState::Open:
        return StepState::Open;
    case NeedState::Failed:
        return StepState::Failed;
    }
    return StepState::NotNeeded;
}

/// Makes the steps of one order in one situation.
class Planning
{
public:
    Planning(const DecisionInput &input, const LimitSet &limits, const Judged &judged,
             const Situation &situation)
        : m_judging(input, limits)
        , m_decision(judged.decision)
        , m_situation(situation)
        , m_visit(m_judging.evidence.visitOf(
              {{}, situation.now, input.order.number, situation.person, {}, {}, NoteFact{}}))
    {
        for (const CriterionResult &result : m_decision.criteria)
            m_decidedBy << result.evidence;
        for (const Need &need : judged.needs) {
            const Standing standing = judged.standings.value(need.key);
            m_steps.push_back({need, stepState(standing.state), standing.why, standing.next,
                               standing.counts, standing.before});
        }
        takeExceptions();
        askForInstruments();
        if (!isAccepted(m_decision.outcome)) {
            doubtReadings();
            askForCard();
            askForChecks();
            closeWhatWaits();
        }
        if (!m_situation.orderIsOpen)
            closeAll(Text(QT_TRANSLATE_NOOP("core", "The order is no longer open.")));
    }

    std::vector<Step> steps() && { return std::move(m_steps); }

private:
    Step *step(const QString &key)
    {
        const auto found = std::ranges::find_if(
            m_steps, [&key](const Step &each) { return each.need.key == key; });
        return found == m_steps.end() ? nullptr : &*found;
    }

    static void set(Step &step, StepState state, const Text &because, const Text &next = {})
    {
        step.state = state;
        step.because = because;
        step.next = next;
    }

    void closeAll(const Text &because)
    {
        for (Step &each : m_steps) {
            each.closedBy = because;
            if (each.isToDo())
                set(each, StepState::Closed, because);
        }
    }

    void takeExceptions()
    {
        for (Step &each : m_steps) {
            const CriterionResult *result = m_decision.criterion(each.need.criterion);
            if (each.isToDo() && result && result->excepted)
                set(each, StepState::NotNeeded,
                    Text(QT_TRANSLATE_NOOP("core", "Excepted by %1: %2"))
                        .arg(result->excepted->by)
                        .arg(result->excepted->because));
        }
    }

    /// Readings that decide and name no instrument: it can still be said.
    void askForInstruments()
    {
        Step *instrument = step("instrument");
        if (!instrument)
            return;
        QJsonArray unnamed;
        for (const Fact *fact : m_judging.evidence.facts())
            if (m_decidedBy.contains(fact->id) && needsInstrument(*fact) &&
                m_judging.evidence.instrumentOf(*fact).isEmpty())
                unnamed << fact->id;
        if (!unnamed.isEmpty())
            instrument->need.preset.insert("facts", unnamed);
    }

    /// A reading that decides and was made with an instrument that does not count is taken again.
    void doubtReadings()
    {
        for (const Fact *fact : m_judging.evidence.facts()) {
            if (!m_decidedBy.contains(fact->id) || fact->as<SafetyFact>() ||
                fact->as<HazardClosedFact>())
                continue;
            const Text trouble = instrumentTrouble(m_judging, *fact);
            if (trouble.isEmpty())
                continue;
            for (Step &each : m_steps)
                if (each.state == StepState::Done && !each.need.isOffer() &&
                    each.need.matches(*fact))
                    set(each, StepState::Failed, trouble,
                        Text(QT_TRANSLATE_NOOP(
                                 "core", "Measure again with a registered instrument within its "
                                         "calibration: %1."))
                            .arg(each.need.label));
        }
    }

    /// On the pair and at the place where the hazard was read.
    static void askForClearCard(Step &card, const Fact &read, const Text &make)
    {
        Text because = Text(QT_TRANSLATE_NOOP(
            "core", "The hazard is said to be closed; no clear card was made since."));
        if (!read.pair.isEmpty()) {
            card.need.preset.insert("pair", read.pair);
            because += Text(QT_TRANSLATE_NOOP("core", "It was read on pair %1.")).arg(read.pair);
        }
        if (const auto place = read.as<SafetyFact>()->place; place && !place->trimmed().isEmpty()) {
            card.need.preset.insert("place", *place);
            because += Text(QT_TRANSLATE_NOOP("core", "It was read at: %1.")).arg(*place);
        }
        set(card, StepState::Open, because, make);
    }

    void askForCard()
    {
        Step *card = step("safety"), *closing = step("hazard_closed");
        const SafetyCards &cards = m_judging.evidence.cards();
        if (!card || !(m_judging.evidence.needsCard(m_visit) || cards.unexplained()))
            return;
        if (const Hazard *hazard = cards.unexplained()) {
            closing->need.preset.insert("hazard", hazard->card->id);
            set(*closing, StepState::Open, closing->because, closing->next);
            set(*card, StepState::Open,
                Text(QT_TRANSLATE_NOOP("core", "A hazard is open on this pair.")));
            return; // closed by what stands before it
        }
        const Text make =
            Text(QT_TRANSLATE_NOOP("core", "Make the safety card before the pair is touched."));
        const Card *holding = cards.holdingAt(m_situation.now, m_visit);
        if (cards.isClearAt(m_situation.now, m_visit))
            set(*card, StepState::Done, holding->verdict.text(holding->fact->at.localClock()));
        else if (cards.awaitingCard())
            askForClearCard(*card, *cards.awaitingCard()->card, make);
        else if (holding)
            set(*card, StepState::Open, holding->verdict.text(),
                holding->verdict.batteries.empty()
                    ? Text(QT_TRANSLATE_NOOP(
                          "core", "Complete the safety card before the first measurement."))
                    : holding->verdict.batteries.front().toDo);
        else
            set(*card, StepState::Open,
                Text(QT_TRANSLATE_NOOP(
                    "core",
                    "No safety card holds for this pair, this visit and this state of the feed.")),
                make);
    }

    /// A check that the coming run over the channel may rest on: of this visit, this path and this
    /// instrument, good, and not used up.
    const Fact *freshCheck(const ChannelRuns &channel, const QJsonObject &preset) const
    {
        const Fact *fresh = nullptr;
        for (const Fact *fact : m_judging.evidence.of<DetectorFact>()) {
            const auto *check = fact->as<DetectorFact>();
            const QString instrument = m_judging.evidence.instrumentOf(*fact);
            const bool asChosen = toText(check->path) == preset["path"].toString() &&
                                  channelsText(check->channels) == channelsOf(preset) &&
                                  m_judging.evidence.visitOf(*fact) == m_visit &&
                                  m_situation.instrument.value_or(instrument) == instrument;
            if (asChosen && !isUsedUp(channel, *fact) &&
                instrumentTrouble(m_judging, *fact).isEmpty() &&
                checkOutcome(*fact, m_judging.limits).first == CriterionOutcome::Met)
                fresh = fact;
        }
        return fresh;
    }

    static QString channelsOf(const QJsonObject &preset)
    {
        QList<Channel> channels;
        for (const QJsonValue &each : preset["channels"].toArray())
            channels << fromText<Channel>(each.toString()).value_or(Channel::B1);
        return channelsText(channels);
    }

    /// A run was made with it, but for one that was stopped early and is not over, if the line has
    /// stayed as it was since.
    bool isUsedUp(const ChannelRuns &channel, const Fact &check) const
    {
        return std::ranges::any_of(channel.runs, [&](const JudgedRun &run) {
            const Moment started = timeOf(*run.fact);
            if (started < check.at)
                return false;
            return run.standing != RunStanding::NoResult || wasDisturbedSince(started);
        });
    }

    bool wasDisturbedSince(const Moment &moment) const
    {
        return std::ranges::any_of(m_judging.evidence.facts(), [&](const Fact *fact) {
            const auto *layer = fact->as<LayerFact>();
            return fact->at > moment &&
                   (fact->as<CallFact>() || (layer && layer->outcome == LayerOutcome::Down));
        });
    }

    void askForChecks()
    {
        for (const ChannelRuns &channel : m_judging.runs) {
            const QString name = toText(channel.channel);
            Step *check = step("detector." + name), *run = step("run." + name);
            if (!check || !run)
                continue;
            takePath(*check, *run, channel.channel);
            if (!run->isToDo())
                continue;
            if (const Fact *fresh = freshCheck(channel, check->need.preset)) {
                check->counts = fresh;
                set(*check, StepState::Done, checkOutcome(*fresh, m_judging.limits).second);
            } else if (check->state != StepState::Failed) {
                set(*check, StepState::Open,
                    check->state == StepState::Open
                        ? check->because
                        : Text(QT_TRANSLATE_NOOP(
                              "core",
                              "A run needs a detector check of this visit, over its channels and "
                              "path and with its instrument, that no other run has used up.")),
                    Text(QT_TRANSLATE_NOOP("core",
                                           "Inject errors on %1 and record what the test set saw."))
                        .arg(channelsOf(check->need.preset)));
            }
        }
    }

    void takePath(Step &check, Step &run, Channel channel) const
    {
        if (!m_situation.path)
            return;
        const QJsonObject preset = testPreset(m_judging.order, channel, m_situation.path);
        for (const char *key : {"from_dn", "to_dn"})
            run.need.preset.remove(QLatin1StringView(key));
        for (auto it = preset.begin(); it != preset.end(); ++it) {
            run.need.preset.insert(it.key(), it.value());
            if (check.need.preset.contains(it.key()))
                check.need.preset.insert(it.key(), it.value());
        }
    }

    /// Why the next reading would not count with the instrument that was chosen; empty if it would,
    /// or if it is named with each record.
    Text whyNoReading() const
    {
        if (!m_situation.instrument)
            return {};
        if (m_situation.instrument->isEmpty())
            return Text(QT_TRANSLATE_NOOP("core", "No instrument is said yet."));
        const Fact reading{{},
                           m_situation.now,
                           m_judging.order.number,
                           m_situation.person,
                           *m_situation.instrument,
                           {},
                           NoteFact{}};
        if (m_judging.evidence.selfTestFailed(reading))
            return Text(QT_TRANSLATE_NOOP("core", "%1 failed its self-test on this visit."))
                .arg(*m_situation.instrument);
        return {};
    }

    /// What must stand before a step and does not closes it. What was measured without an
    /// instrument closes nothing; that none is said for the next reading does.
    void closeWhatWaits()
    {
        Step *instrument = step("instrument");
        const Text why = whyNoReading();
        const bool unsaid = !why.isEmpty();
        const bool waits = std::ranges::any_of(m_steps, [](const Step &each) {
            return each.isToDo() && each.need.after.contains("instrument");
        });
        if (instrument && unsaid && waits && !instrument->isToDo())
            set(*instrument, StepState::Open, why,
                Text(QT_TRANSLATE_NOOP("core", "Say with which instrument you measure.")));
        for (Step &each : m_steps)
            for (const QString &key : each.need.after) {
                const Step *before = step(key);
                const bool blocks =
                    before && (before->isToDo() || before->state == StepState::Closed);
                if (!blocks || (before == instrument && !unsaid))
                    continue;
                each.closedBy = Text(QT_TRANSLATE_NOOP("core", "%1 comes first. %2"))
                                    .arg(before->need.label)
                                    .arg(before->because);
                if (each.isToDo())
                    set(each, StepState::Closed, each.closedBy);
                break;
            }
    }

    const Judging m_judging;
    const Decision &m_decision;
    const Situation &m_situation;
    QString m_visit; ///< the one that is going on
    QStringList m_decidedBy;
    std::vector<Step> m_steps;
};

} // namespace

std::vector<Step> plan(const DecisionInput &input, const LimitSet &limits, const Judged &judged,
                       const Situation &situation)
{
    return Planning(input, limits, judged, situation).steps();
}

const Step *nextStep(const std::vector<Step> &steps)
{
    // A hazard stands before everything else.
    if (const Step *hazard = findStep(steps, "hazard_closed"); hazard && hazard->isToDo())
        return hazard;
    const auto found = std::ranges::find_if(steps, &Step::isToDo);
    return found == steps.end() ? nullptr : &*found;
}

const Step *findStep(const std::vector<Step> &steps, const QString &key)
{
    const auto found =
        std::ranges::find_if(steps, [&key](const Step &each) { return each.need.key == key; });
    return found == steps.end() ? nullptr : &*found;
}

} // namespace loopwright
