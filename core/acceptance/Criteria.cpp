// The table of criteria, in the order of the job.

#include "core/acceptance/Judging.h"

#include <algorithm>

namespace loopwright {

namespace {

bool full(const Judging &j)
{
    return j.input.scope == OrderScope::Full;
}
bool fullOrMove(const Judging &j)
{
    return full(j) || j.input.scope == OrderScope::MoveWithin;
}
bool numbersToo(const Judging &j)
{
    return fullOrMove(j) || j.input.scope == OrderScope::NumbersOnly;
}
bool anyButNothing(const Judging &j)
{
    return j.input.scope != OrderScope::Nothing;
}
/// On a change of numbers alone the card is needed only where somebody went there.
bool needsSafety(const Judging &j)
{
    if (fullOrMove(j))
        return true;
    return j.input.scope == OrderScope::NumbersOnly &&
           std::any_of(j.evidence.facts().begin(), j.evidence.facts().end(), [](const Fact *fact) {
               return !fact->as<NoteFact>() && !fact->as<ChangedFact>() &&
                      !fact->as<ExceptionFact>();
           });
}
bool digital(const Judging &j)
{
    return fullOrMove(j) && !j.isAnalog();
}
bool hasSpids(const Judging &j)
{
    return numbersToo(j) && !j.isAnalog() &&
           std::any_of(j.order.terminals.begin(), j.order.terminals.end(),
                       [](const OrderedTerminal &t) { return !t.spid.isEmpty(); });
}
bool carriesData(const Judging &j)
{
    return digital(j) && !j.runs.empty();
}
bool analog(const Judging &j)
{
    return fullOrMove(j) && j.isAnalog();
}

QList<FactKind> none()
{
    return {};
}
QList<FactKind> loops()
{
    return {FactKind::Loop};
}
QList<FactKind> layers()
{
    return {FactKind::Layer};
}
QList<FactKind> calls()
{
    return {FactKind::Call, FactKind::Run};
}
QList<FactKind> checks()
{
    return {FactKind::Detector, FactKind::Run};
}
QList<FactKind> quantities()
{
    return {FactKind::Analog};
}
QList<FactKind> tests()
{
    return {FactKind::SelfTest};
}

constexpr Criterion table[] = {
    {"identifiers", "Identifiers", Station::Identifiers, anyButNothing, judgeIdentifiers, none},
    {"loop", "Loop", Station::Loop, full, judgeLoop, loops},
    {"safety", "Safety card", Station::Safety, needsSafety, judgeSafety, none},
    {"layer1", "Layer 1", Station::TurnUp, digital, judgeLayer1, layers},
    {"layer2", "Layer 2", Station::TurnUp, digital, judgeLayer2, layers},
    {"layer3", "Layer 3", Station::TurnUp, hasSpids, judgeLayer3, layers},
    {"loop_current", "Loop current", Station::TurnUp, analog, judgeQuantity, quantities},
    {"loss_1004", "Loss at 1004 Hz", Station::TurnUp, analog, judgeQuantity, quantities},
    {"noise", "Circuit noise", Station::TurnUp, analog, judgeQuantity, quantities},
    {"power_influence", "Power influence", Station::TurnUp, analog, judgeQuantity, quantities},
    {"balance", "Balance", Station::TurnUp, analog, judgeQuantity, quantities},
    {"polarity", "Polarity", Station::TurnUp, analog, judgeQuantity, quantities},
    {"dial_tone", "Dial tone", Station::TurnUp, analog, judgeQuantity, quantities},
    {"ringing", "Ringing", Station::TurnUp, analog, judgeQuantity, quantities},
    {"slope", "Slope", Station::TurnUp, analog, judgeQuantity, quantities},
    {"insulation", "Insulation", Station::TurnUp, analog, judgeQuantity, quantities},
    {"foreign_voltage", "Foreign voltage", Station::TurnUp, analog, judgeQuantity, quantities},
    {"on_hook_voltage", "On-hook voltage", Station::TurnUp, analog, judgeQuantity, quantities},
    {"ringing_voltage", "Ringing voltage", Station::TurnUp, analog, judgeQuantity, quantities},
    {"calls", "Calls", Station::Calls, numbersToo, judgeCalls, calls},
    {"readback", "Announced number", Station::Calls, numbersToo, judgeReadback, calls},
    {"detector", "Detector check", Station::ErrorTest, carriesData, judgeDetector, checks},
    {"run", "Error-rate run", Station::ErrorTest, carriesData, judgeRun, checks},
    {"instrument", "Instrument", Station::Acceptance, numbersToo, judgeInstrument, tests},
};

int rank(CriterionOutcome outcome)
{
    switch (outcome) {
    case CriterionOutcome::NotMet:
        return 3;
    case CriterionOutcome::Missing:
        return 2;
    case CriterionOutcome::Met:
        return 1;
    case CriterionOutcome::NotNeeded:
        return 0;
    }
    return 0;
}

} // namespace

std::span<const Criterion> criteria()
{
    return table;
}

void mergeOutcome(CriterionResult &result, CriterionOutcome outcome, const QString &reason,
                  const QString &next)
{
    // NotNeeded is the start; what is worse takes the place of what was said before.
    if (rank(outcome) < rank(result.outcome))
        return;
    if (rank(outcome) > rank(result.outcome)) {
        result.outcome = outcome;
        result.reason = reason;
        result.next = next;
        return;
    }
    if (result.reason.isEmpty())
        result.reason = reason;
    else if (!reason.isEmpty() && !result.reason.contains(reason))
        result.reason += ' ' + reason;
    if (result.next.isEmpty())
        result.next = next;
}

double roundForRecord(double value)
{
    return QByteArray::number(value, 'g', 9).toDouble();
}

QString figure(double value, int decimals)
{
    QString text = QString::number(value, 'f', decimals);
    while (text.contains('.') && (text.endsWith('0') || text.endsWith('.')))
        text.chop(1);
    return text == "-0" ? QString("0") : text;
}

} // namespace loopwright
