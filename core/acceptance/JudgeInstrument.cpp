// Criterion instrument: of every reading that the other criteria rest on.

#include "core/acceptance/Judging.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

bool needsInstrument(const Fact &fact)
{
    if (const auto *loop = fact.as<LoopFact>())
        return loop->dcResistanceOhm || loop->lossDb;
    return fact.as<DetectorFact>() || fact.as<RunFact>() ||
           (fact.as<AnalogFact>() && !info(fact.as<AnalogFact>()->quantity).yesOrNo);
}

Text instrumentTrouble(const Judging &judging, const Fact &fact)
{
    const QString key = judging.evidence.instrumentOf(fact);
    if (key.isEmpty())
        return {};
    const QDate day = timeOf(fact).localDate();
    const auto found = std::ranges::find(judging.input.instruments, key, &Instrument::key);
    if (found == judging.input.instruments.end())
        return Text(QT_TRANSLATE_NOOP("core", "Instrument %1 is not registered.")).arg(key);
    if (!found->calibratedOn(day))
        return Text(
                   QT_TRANSLATE_NOOP("core", "Instrument %1 was not within its calibration on %2."))
            .arg(key)
            .arg(Text::message(paperDay(day)));
    return {};
}

namespace {

bool needsNone(const Instrument &instrument)
{
    return std::ranges::any_of(instrument.calibrations,
                               [](const Calibration &calibration) { return !calibration.due; });
}

QStringList labelledOf(const Judging &judging, const QStringList &used)
{
    QStringList labelled;
    for (const Instrument &instrument : judging.input.instruments)
        if (instrument.asLabelled && used.contains(instrument.key))
            labelled << instrument.key;
    return labelled;
}

/// What the words of the row would say too much of: test sets that need no calibration, those that
/// the office does not know yet, and the meter of a safety card, which nobody judges by its own.
void sayWhatIsNotCalibrated(const Judging &judging, const QStringList &used,
                            CriterionResult &result)
{
    if (result.outcome != CriterionOutcome::Met)
        return;
    const bool anyWithout =
        std::ranges::any_of(judging.input.instruments, [&used](const Instrument &instrument) {
            return used.contains(instrument.key) && needsNone(instrument);
        });
    const QStringList labelled = labelledOf(judging, used);
    const bool isMeterInDoubt =
        std::ranges::any_of(judging.evidence.facts(), [&judging](const Fact *fact) {
            return fact->as<SafetyFact>() && judging.decidedBy.contains(fact->id) &&
                   !instrumentTrouble(judging, *fact).isEmpty();
        });
    if (!anyWithout && !isMeterInDoubt && labelled.isEmpty())
        return;
    Text words(anyWithout ? QT_TRANSLATE_NOOP("core", "The test sets are known, and were within "
                                                      "their calibration, or need none.")
                          : QT_TRANSLATE_NOOP("core", "The test sets are known, and were within "
                                                      "their calibration."));
    if (isMeterInDoubt)
        words += Text(QT_TRANSLATE_NOOP(
            "core", "The meter of the safety card is not judged by its calibration."));
    if (!labelled.isEmpty())
        words += Text(QT_TRANSLATE_NOOP("core", "As labelled, until the office confirms it: %1."))
                     .arg(labelled.join(", "));
    explainPlainly(result, CriterionOutcome::Met, words);
}

} // namespace

void needInstrument(std::vector<Need> &needs, const ServiceOrder &, OrderScope, const LimitSet &)
{
    Need need{"instrument", "instrument", StepGroup::Instrument, Station::Acceptance,
              FactKind::MadeWith};
    need.fields = {"instrument"};
    need.label = Text(QT_TRANSLATE_NOOP("core", "Instrument that the readings are made with"));
    need.hint = Text(QT_TRANSLATE_NOOP("core", "as it stands in the register"));
    need.matches = [](const Fact &fact) { return fact.as<MadeWithFact>() != nullptr; };
    needs.push_back(std::move(need));
}

namespace {

/// Whether a reading that an instrument makes is still to come.
bool isReadingOpen(const Judging &judging)
{
    return std::ranges::any_of(judging.needs, [&judging](const Need &need) {
        return need.after.contains("instrument") &&
               judging.standings.value(need.key).state == NeedState::Open;
    });
}

} // namespace

// Judged last: of what the other criteria rest on. The meter of a safety card is not judged: it was
// proved on a known source.
void judgeInstrument(Judging &judging, CriterionResult &result)
{
    const Need &need = *judging.need("instrument");
    result.limitText = QT_TRANSLATE_NOOP(
        "core", "registered, within its calibration on the day, no failed self-test");
    result.source = "common practice";
    QStringList used;
    bool measured = false;
    for (const Fact *fact : judging.evidence.facts()) {
        if (!judging.decidedBy.contains(fact->id) || fact->as<SafetyFact>() ||
            fact->as<HazardClosedFact>())
            continue;
        const QString instrument = judging.evidence.instrumentOf(*fact);
        measured = measured || needsInstrument(*fact) || !instrument.isEmpty();
        if (instrument.isEmpty()) {
            if (needsInstrument(*fact))
                judging.settle(
                    need, result, CriterionOutcome::Missing,
                    Text(QT_TRANSLATE_NOOP("core", "%1 was recorded without an instrument."))
                        .arg(Text(factName(fact->kind()))),
                    Text(QT_TRANSLATE_NOOP("core",
                                           "Say with which instrument the readings were made.")));
            continue;
        }
        if (!used.contains(instrument))
            used << instrument;
        result.evidence << fact->id;
        const Text trouble = instrumentTrouble(judging, *fact);
        // What is wrong with the instrument is mended by another reading: that need stands open.
        if (trouble.isEmpty())
            judging.settle(
                need, result, CriterionOutcome::Met,
                Text(QT_TRANSLATE_NOOP("core", "Instrument %1 was within its calibration on %2."))
                    .arg(instrument)
                    .arg(Text::message(paperDay(timeOf(*fact).localDate()))));
        else
            mergeOutcome(result, CriterionOutcome::NotMet, trouble,
                         Text(QT_TRANSLATE_NOOP(
                             "core", "Measure again with a registered instrument within its "
                                     "calibration, or record its later calibration.")));
    }
    if (!measured && isReadingOpen(judging))
        mergeOutcome(
            result, CriterionOutcome::Missing,
            Text(QT_TRANSLATE_NOOP("core", "Nothing was measured yet.")),
            Text(QT_TRANSLATE_NOOP("core", "Record the measurements with their instrument.")));
    else if (!measured)
        mergeOutcome(result, CriterionOutcome::NotNeeded,
                     Text(QT_TRANSLATE_NOOP("core", "Nothing was measured with an instrument.")));
    sayWhatIsNotCalibrated(judging, used, result);
    if (!used.isEmpty())
        result.setMeasured(Text::verbatim(used.join(", ")));
}

} // namespace loopwright
