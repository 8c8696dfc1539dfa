#include "core/acceptance/Review.h"

#include "core/acceptance/CheckFaults.h"
#include "core/acceptance/Contradiction.h"
#include "core/acceptance/Doubt.h"
#include "core/acceptance/Judging.h"
#include "core/acceptance/LoopState.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/loop/VoiceBand.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

#include <cmath>
#include <limits>

namespace loopwright {

namespace {

Finding finding(Severity severity, const char *code, const QString &field, const Text &sentence)
{
    return {severity, QString::fromLatin1(code), sentence, {}, field, 0};
}

std::optional<double> numberIn(const QJsonObject &typed, const QString &key)
{
    const QJsonValue value = typed.value(key);
    return value.isDouble() ? std::optional(value.toDouble()) : std::nullopt;
}

Voltages voltagesIn(const QJsonObject &typed)
{
    return {numberIn(typed, toText(WirePair::TipGround)),
            numberIn(typed, toText(WirePair::RingGround)),
            numberIn(typed, toText(WirePair::TipRing))};
}

/// The newest card at the same place: readings that do not fit are believed when they come again.
const SafetyFact *cardBefore(const QJsonObject &typed, const DecisionInput &input)
{
    const QString place = typed.value("place").toString().trimmed();
    const SafetyFact *before = nullptr;
    for (const Fact *fact : standingFacts(input.facts))
        if (const auto *card = fact->as<SafetyFact>();
            card && card->place.value_or(QString()) == place)
            before = card;
    return before;
}

/// A slip in one field must not hide a hazard in another.
Findings reviewCard(const QJsonObject &typed, const DecisionInput &input, const LimitSet &limits)
{
    SafetyFact card;
    if (const QJsonValue office = typed.value("office_connected"); office.isBool())
        card.officeConnected = office.toBool();
    card.acV = voltagesIn(typed.value("ac_v").toObject());
    card.dcV = voltagesIn(typed.value("dc_v").toObject());
    Findings found;
    if (const QJsonValue wet = typed.value("wet"); wet.isBool())
        card.wet = wet.toBool();
    const SafetyVerdict verdict = judge(card, limits, cardBefore(typed, input));
    const auto say = [&found](const VoltageFinding &each, Severity severity, const char *code) {
        found.push_back(
            finding(severity, code,
                    QString("%1.%2").arg(each.alternating ? "ac_v" : "dc_v", toText(each.pair)),
                    Text(QT_TRANSLATE_NOOP("core", "%1. %2")).arg(each.reason).arg(each.toDo)));
    };
    for (const VoltageFinding &hazard : verdict.hazards)
        say(hazard, Severity::Error, "hazard");
    for (const VoltageFinding &battery : verdict.batteries)
        say(battery, Severity::Error, "foreign_battery");
    for (const VoltageFinding &trouble : verdict.troubles)
        say(trouble, Severity::Warning, "trouble");
    for (const VoltageMisfit &misfit : verdict.misfits)
        found.push_back(finding(verdict.readTwice ? Severity::Warning : Severity::Error,
                                "contradiction",
                                QString("%1.tip_ring").arg(misfit.alternating ? "ac_v" : "dc_v"),
                                Text(QT_TRANSLATE_NOOP("core", "%1.")).arg(misfit.reason)));
    return found;
}

void holdAgainst(Findings &found, const QJsonObject &typed, const QString &key, const Limit &limit)
{
    const auto value = numberIn(typed, key);
    if (value && *value > limit.value)
        found.push_back(
            finding(Severity::Error, "over_limit", key,
                    Text(QT_TRANSLATE_NOOP("core", "%1 %2 is above the limit of %3 %2."))
                        .arg(*value)
                        .arg(limit.unit)
                        .arg(limit.value)));
}

/// The same words that record and decision say.
void addContradiction(Findings &found, const std::optional<Contradiction> &contradiction)
{
    if (contradiction)
        found.push_back(finding(Severity::Error, "contradiction", contradiction->field,
                                contradiction->sentence()));
}

Findings reviewLoop(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                    const LimitSet &limits)
{
    Findings found;
    const bool analog = input.order.kind == LineKind::Analog;
    LoopFact loop;
    loop.dcResistanceOhm = numberIn(typed, "dc_resistance_ohm");
    loop.lossDb = numberIn(typed, "loss_db");
    // Left empty, the frequency is the one that the step names.
    loop.frequencyHz = numberIn(typed, "frequency_hz");
    if (!loop.frequencyHz)
        loop.frequencyHz = numberIn(need.preset, "frequency_hz");
    addContradiction(found, contradictionIn(loop));
    LoopState known = loopState(input, limits);
    const auto makeup = analog ? known.makeup : std::nullopt;
    holdAgainst(found, typed, "dc_resistance_ohm",
                makeup   ? voiceResistanceLimit(*makeup, limits)
                : analog ? limits.limit("rd_resistance_max")
                         : limits.limit("bri_resistance_max"));
    const double limited = limits.value("bri_loss_frequency");
    if (!analog && std::abs(loop.frequencyHz.value_or(0) - limited) <= 0.01 * limited)
        holdAgainst(found, typed, "loss_db", limits.limit("bri_loss_max"));
    // What is typed takes the place of what was measured before.
    if (loop.dcResistanceOhm)
        known.measured.dcResistanceOhm = loop.dcResistanceOhm;
    if (loop.lossDb && loop.frequencyHz)
        known.measured.losses = {{*loop.frequencyHz, *loop.lossDb, {}}};
    if ((loop.dcResistanceOhm || loop.lossDb) && isRecordWrong(known, input.order.kind, limits))
        found.push_back(finding(Severity::Warning, "record_wrong",
                                loop.lossDb ? "loss_db" : "dc_resistance_ohm",
                                Text(recordIsWrongText)));
    return found;
}

/// Beside what counts so far.
std::optional<Contradiction> quantityContradiction(AnalogQuantity quantity, const QJsonValue &value,
                                                   const DecisionInput &input,
                                                   const LimitSet &limits)
{
    const Evidence evidence(input, limits);
    Fact typed;
    typed.body = AnalogFact{quantity, value.toDouble(), {}};
    return value.isDouble() ? Contradictions(evidence.counting()).in(typed) : std::nullopt;
}

/// What is typed shows that the office feeds the pair, and the newest card says otherwise.
void addOfficeDoubt(Findings &found, const FactBody &body, const char *field,
                    const DecisionInput &input, const LimitSet &limits)
{
    if (!showsOffice(body))
        return;
    const Evidence evidence(input, limits);
    const auto &cards = evidence.cards().cards();
    if (cards.empty())
        return;
    const Moment last{std::numeric_limits<qint64>::max(), 0};
    const Card *holding = evidence.cards().holdingAt(last, cards.back().visit);
    if (const auto doubt = officeDoubt(body, holding))
        found.push_back(finding(Severity::Warning, doubt->code, field, doubt->sentence));
}

Findings reviewQuantity(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                        const LimitSet &limits)
{
    const auto quantity = fromText<AnalogQuantity>(need.preset.value("quantity").toString());
    const QJsonValue value = typed.value("value");
    if (!quantity || !(value.isDouble() || value.isBool()))
        return {};
    if (const auto contradiction = quantityContradiction(*quantity, value, input, limits)) {
        Findings found;
        addContradiction(found, contradiction);
        return found;
    }
    const AnalogValue read =
        value.isBool() ? AnalogValue(value.toBool()) : AnalogValue(value.toDouble());
    const QuantityClass grade = classify(*quantity, read, limits);
    const Severity severity = grade == QuantityClass::Poor       ? Severity::Error
                              : grade == QuantityClass::Marginal ? Severity::Warning
                                                                 : Severity::Note;
    Findings found{finding(severity, toText(grade).toLatin1().constData(), "value",
                           Text(QT_TRANSLATE_NOOP("core", "%1: %2; %3."))
                               .arg(valueText(*quantity, read))
                               .arg(Text::message(toText(grade)))
                               .arg(limitText(*quantity, limits)))};
    addOfficeDoubt(found, AnalogFact{*quantity, read, {}}, "value", input, limits);
    return found;
}

std::optional<int> causeIn(const QJsonObject &typed)
{
    const auto cause = numberIn(typed, "cause");
    return cause ? std::optional(int(*cause)) : std::nullopt;
}

Findings reviewCauseNumber(std::optional<int> number, const DecisionInput &input)
{
    const ProtocolVariant *variant = findVariant(input.order.variant);
    if (!number || !variant)
        return {};
    if (!usesQ850(*variant))
        return {finding(Severity::Note, "cause", "cause",
                        Text(QT_TRANSLATE_NOOP("core", "Cause %1: %2"))
                            .arg(*number)
                            .arg(whyNoCauseNames(*variant)))};
    const auto cause = causeOf(*number);
    if (!cause)
        return {};
    return {finding(Severity::Note, "cause", "cause",
                    Text(QT_TRANSLATE_NOOP("core", "Cause %1, %2 (%3). Check first: %4."))
                        .arg(*number)
                        .arg(cause->name)
                        .arg(cause->classText)
                        .arg(cause->checkFirst))};
}

/// What the cause says, by the list of the order's variant, and where it came from.
Findings reviewCause(const QJsonObject &typed, const DecisionInput &input)
{
    Findings found = reviewCauseNumber(causeIn(typed), input);
    if (const auto location = fromText<CauseLocation>(typed.value("cause_location").toString())) {
        const LocationAdvice &place = adviceOf(*location);
        found.push_back(finding(Severity::Note, "cause_location", "cause_location", place.check));
    }
    return found;
}

std::optional<qint64> countIn(const QJsonObject &typed, const char *key)
{
    const auto number = numberIn(typed, key);
    return number ? std::optional(qint64(*number)) : std::nullopt;
}

Findings reviewCheck(const QJsonObject &typed, const LimitSet &limits)
{
    DetectorFact check;
    check.quietSeconds = countIn(typed, "quiet_seconds");
    check.quietBitErrors = countIn(typed, "quiet_bit_errors");
    check.injections = countIn(typed, "injections");
    check.injected = countIn(typed, "injected");
    check.seenBitErrors = countIn(typed, "seen_bit_errors");
    check.seenErroredSeconds = countIn(typed, "seen_errored_seconds");
    if (const QJsonValue cleared = typed.value("cleared"); cleared.isBool())
        check.cleared = cleared.toBool();
    Findings found;
    for (const CheckFault &fault : faultsOf(check, limits))
        found.push_back(finding(Severity::Error,
                                fault.kind == CheckFaultKind::NotSeen      ? "not_seen"
                                : fault.kind == CheckFaultKind::NotCleared ? "not_cleared"
                                                                           : "over_limit",
                                fault.field, fault.sentence));
    return found;
}

/// The field beside which it is said that a run is over its limits.
QString overKey(const RunFact &run)
{
    if (run.slips.value_or(0) > 0 && run.bitErrors.value_or(0) == 0)
        return "slips";
    return run.bitErrors.value_or(0) > 0 ? "bit_errors" : "errored_seconds";
}

/// The test set still shows what was read wrong; and what is over the limits is told at once.
Findings reviewRun(const Need &need, const QJsonObject &typed, const LimitSet &limits)
{
    QJsonObject fact = need.preset;
    for (auto it = typed.begin(); it != typed.end(); ++it)
        fact.insert(it.key(), it.value());
    JsonReader reader(fact, {});
    const RunFact run = RunFact::read(reader);
    if (reader.failed())
        return {};
    if (const auto doubt = doubtIn(run))
        return {finding(Severity::Error, doubt->code, doubt->field, doubt->sentence)};
    const Text over = overLimits(run, evaluateRun(run, limits.value("run_confidence")), limits);
    if (over.isEmpty())
        return {};
    return {finding(Severity::Error, "over_limit", overKey(run),
                    Text(QT_TRANSLATE_NOOP("core", "The run is over its limits: %1.")).arg(over))};
}

/// Who may say so.
Findings reviewClosing(const QJsonObject &typed)
{
    if (typed.value("source").toString() != toText(HazardSource::Power) ||
        namesReference(typed.value("reference").toString()))
        return {};
    return {finding(Severity::Warning, "supervisor", "reference",
                    Text(QT_TRANSLATE_NOOP(
                        "core", "A contact with power is closed with the utility's reference; "
                                "without one, by a registered supervisor alone.")))};
}

Findings reviewCleared(const QJsonObject &typed)
{
    ClearedFact cleared;
    const auto what = fromText<ClearedWhat>(typed.value("what").toString());
    cleared.text = typed.value("text").toString().trimmed();
    if (what != ClearedWhat::NothingFound)
        return {};
    const auto doubt = doubtIn(cleared);
    return doubt ? Findings{finding(Severity::Warning, doubt->code, doubt->field, doubt->sentence)}
                 : Findings();
}

Findings reviewLayer(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                     const LimitSet &limits)
{
    const auto outcome = fromText<LayerOutcome>(typed.value("outcome").toString());
    Findings found;
    LayerFact up;
    up.outcome = LayerOutcome::Up;
    if (outcome == LayerOutcome::Up)
        addOfficeDoubt(found, up, "outcome", input, limits);
    if (outcome != LayerOutcome::Down)
        return found;
    found = reviewCause(typed, input);
    LayerFact layer;
    layer.layer = need.preset.value("layer").toInt(1);
    layer.interface = fromText<LineInterface>(need.preset.value("interface").toString());
    layer.outcome = LayerOutcome::Down;
    layer.cause = causeIn(typed);
    const FirstCheck check = firstCheck(layer);
    found.push_back(finding(Severity::Note, "first_check", "outcome",
                            Text(QT_TRANSLATE_NOOP("core", "%1 Check first (%2): %3 Then: %4"))
                                .arg(check.meaning)
                                .arg(partName(check.part))
                                .arg(check.check)
                                .arg(check.then)));
    return found;
}

Findings reviewCall(const QJsonObject &typed, const DecisionInput &input, const LimitSet &limits)
{
    const auto outcome = fromText<CallOutcome>(typed.value("outcome").toString());
    Findings found = outcome == CallOutcome::Failed ? reviewCause(typed, input) : Findings();
    CallFact call;
    call.outcome = outcome.value_or(CallOutcome::Failed);
    addOfficeDoubt(found, call, "outcome", input, limits);
    return found;
}

} // namespace

Findings review(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                const LimitSet &limits)
{
    if (!need.kind)
        return {};
    switch (*need.kind) {
    case FactKind::Safety:
        return reviewCard(typed, input, limits);
    case FactKind::HazardClosed:
        return reviewClosing(typed);
    case FactKind::Loop:
        return reviewLoop(need, typed, input, limits);
    case FactKind::Analog:
        return reviewQuantity(need, typed, input, limits);
    case FactKind::Layer:
        return reviewLayer(need, typed, input, limits);
    case FactKind::Call:
        return reviewCall(typed, input, limits);
    case FactKind::Cleared:
        return reviewCleared(typed);
    case FactKind::Detector:
        return reviewCheck(typed, limits);
    case FactKind::Run:
        return reviewRun(need, typed, limits);
    default:
        return {};
    }
}

} // namespace loopwright
