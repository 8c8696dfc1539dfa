#include "core/acceptance/JobLine.h"

#include "core/acceptance/Criteria.h"

#include <algorithm>

namespace loopwright {

namespace {

/// Work that a certificate attests.
bool isOnSite(Station station)
{
    return station >= Station::Loop && station <= Station::ErrorTest;
}

Station usualStation(const CriterionResult &criterion)
{
    const Criterion *row = findCriterion(criterion.key);
    return row ? row->station : criterion.station;
}

StationState stateOf(const Decision &decision, Station station)
{
    StationState state{station, StationMark::NotNeeded, false, false};
    for (const CriterionResult &criterion : decision.criteria) {
        if (criterion.outcome == CriterionOutcome::NotNeeded)
            continue;
        // The loop without a make-up is measured at turn-up, and is needed all the same.
        const bool isMoved = criterion.station != station && usualStation(criterion) == station;
        if (criterion.station != station && !isMoved)
            continue;
        state.onSite |= isMoved;
        if (criterion.open() && criterion.outcome == CriterionOutcome::NotMet)
            state.mark = StationMark::Failed;
        else if (criterion.open() && state.mark != StationMark::Failed)
            state.mark = StationMark::Open;
        else if (state.mark == StationMark::NotNeeded)
            state.mark = StationMark::Done;
        state.excepted |= criterion.excepted.has_value() && !criterion.open() &&
                          criterion.outcome != CriterionOutcome::Met;
    }
    return state;
}

/// The whole: an accepted order has nothing open, whatever station it stood at.
StationMark acceptanceMark(const Decision &decision)
{
    switch (decision.outcome) {
    case OrderOutcome::Accepted:
    case OrderOutcome::AcceptedWithException:
        return StationMark::Done;
    case OrderOutcome::NotAccepted:
        return StationMark::Failed;
    case OrderOutcome::Incomplete:
        break;
    }
    return StationMark::Open;
}

/// An order without work on site (record only, disconnect) is completed without a certificate.
bool needsCertificate(const std::vector<StationState> &line)
{
    return std::any_of(line.begin(), line.end(), [](const StationState &state) {
        return isOnSite(state.station) && state.mark != StationMark::NotNeeded;
    });
}

Text next(const Text &sentence)
{
    return Text(QT_TRANSLATE_NOOP("core", "Next: %1")).arg(sentence.continued());
}

} // namespace

QString StationState::name() const
{
    return stationName(station);
}

QString StationState::word() const
{
    if (onSite && mark == StationMark::Open)
        return "on site";
    return excepted && mark == StationMark::Done ? QString("excepted") : toText(mark);
}

std::vector<StationState> jobLine(const Decision &decision, Stage stage)
{
    std::vector<StationState> line;
    for (const auto &[station, code] : EnumCodes<Station>::table)
        line.push_back(stateOf(decision, station));
    line[std::size_t(Station::Order)].mark = StationMark::Done;
    StationState &acceptance = line[std::size_t(Station::Acceptance)];
    acceptance.mark = acceptanceMark(decision);
    acceptance.excepted = decision.outcome == OrderOutcome::AcceptedWithException;
    StationState &certificate = line[std::size_t(Station::Certificate)];
    if (needsCertificate(line))
        certificate.mark = stage == Stage::Done ? StationMark::Done : StationMark::Open;
    for (StationState &state : line)
        state.next = stageAt(state.station) == stage && state.mark != StationMark::Done;
    return line;
}

Text nextSentence(const Decision &decision, Stage stage)
{
    if (const CriterionResult *open = decision.firstOpen())
        return next(open->next.isEmpty() ? open->reason : open->next);
    const std::vector<StationState> line = jobLine(decision, stage);
    return line[std::size_t(Station::Certificate)].mark == StationMark::Open
               ? QT_TRANSLATE_NOOP("core", "Next: issue the certificate.")
               : QT_TRANSLATE_NOOP("core", "Nothing is left but to complete the order.");
}

Text nextSentence(const std::vector<Step> &steps, const Decision &decision, Stage stage)
{
    const Step *open = nextStep(steps);
    return open ? next(open->next.isEmpty() ? open->because : open->next)
                : nextSentence(decision, stage);
}

} // namespace loopwright
