#include "core/acceptance/Judging.h"

#include <algorithm>

namespace loopwright {

namespace {

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
        break;
    }
    return 0;
}

NeedState stateFor(CriterionOutcome outcome)
{
    switch (outcome) {
    case CriterionOutcome::NotMet:
        return NeedState::Failed;
    case CriterionOutcome::Missing:
        return NeedState::Open;
    case CriterionOutcome::Met:
        return NeedState::Done;
    case CriterionOutcome::NotNeeded:
        break;
    }
    return NeedState::NotNeeded;
}

/// Who speaks of the need, before it is judged: the newest that counts, and why the others do not.
Standing standingOf(const Need &need, const Evidence &evidence)
{
    Standing standing;
    const auto &facts = evidence.facts();
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        if (!need.matches(**fact))
            continue;
        if (const Discounted *why = evidence.whyNot(**fact))
            standing.before.push_back(*why);
        else if (!standing.counts)
            standing.counts = *fact;
        else
            standing.before.push_back(
                {*fact, Discount::Newer, Text(QT_TRANSLATE_NOOP("core", "a newer one counts"))});
    }
    for (const Discounted &struck : evidence.struckOut())
        if (need.matches(*struck.fact))
            standing.before.push_back(struck);
    std::stable_sort(standing.before.begin(), standing.before.end(),
                     [](const auto &a, const auto &b) { return isEarlier(*b.fact, *a.fact); });
    return standing;
}

} // namespace

Judging::Judging(const DecisionInput &decisionInput, const LimitSet &limitSet)
    : input(decisionInput)
    , order(decisionInput.order)
    , limits(limitSet)
    , evidence(decisionInput, limitSet)
    , needs(needsOf(decisionInput.order, decisionInput.scope, limitSet))
{
    for (const Need &each : needs)
        standings.insert(each.key, standingOf(each, evidence));
    runs = judgeRuns(*this);
}

std::vector<const Need *> Judging::needsFor(const QString &criterion) const
{
    std::vector<const Need *> list;
    for (const Need &each : needs)
        if (each.criterion == criterion)
            list.push_back(&each);
    return list;
}

const Need *Judging::need(const QString &key) const
{
    const auto found = std::ranges::find(needs, key, &Need::key);
    return found == needs.end() ? nullptr : &*found;
}

const Fact *Judging::newest(const Need &need) const
{
    return standings.value(need.key).counts;
}

bool Judging::hasDiscounted(const Need &need) const
{
    return !standings.value(need.key).before.empty();
}

void Judging::settle(const Need &need, CriterionResult &result, CriterionOutcome outcome,
                     const Text &reason, const Text &next)
{
    mergeOutcome(result, outcome, reason, next);
    Standing &standing = standings[need.key];
    const NeedState state = stateFor(outcome);
    if (state < standing.state)
        return;
    if (state > standing.state) {
        standing.state = state;
        standing.why = reason;
        standing.next = next;
        return;
    }
    if (!reason.isEmpty() && !standing.why.contains(reason))
        standing.why += reason;
    if (standing.next.isEmpty())
        standing.next = next;
}

void mergeOutcome(CriterionResult &result, CriterionOutcome outcome, const Text &reason,
                  const Text &next)
{
    // NotNeeded is the start; what is worse takes the place of what was said before.
    if (rank(outcome) < rank(result.outcome))
        return;
    if (rank(outcome) > rank(result.outcome)) {
        result.outcome = outcome;
        result.reason = reason;
        result.next = next;
        result.plain = {};
        result.part.reset();
        return;
    }
    if (result.reason.isEmpty())
        result.reason = reason;
    else if (!reason.isEmpty() && !result.reason.contains(reason))
        result.reason += reason;
    if (result.next.isEmpty())
        result.next = next;
}

void explainPlainly(CriterionResult &result, CriterionOutcome outcome, const Text &plain)
{
    if (result.outcome != outcome || plain.isEmpty() || result.plain.contains(plain))
        return;
    result.plain += plain;
}

void addRemark(CriterionResult &result, const Remark &remark)
{
    if (std::ranges::find(result.remarks, remark) == result.remarks.end())
        result.remarks.push_back(remark);
}

void mergeGrade(CriterionResult &result, QuantityClass grade)
{
    result.grade = std::max(result.grade.value_or(grade), grade);
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
