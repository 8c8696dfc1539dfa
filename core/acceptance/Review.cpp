#include "core/acceptance/Review.h"

#include "core/errortest/RunTotals.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

#include <cmath>

namespace loopwright {

namespace {

Finding finding(Severity severity, const char *code, const QString &field, const Text &sentence)
{
    return {severity, QString::fromLatin1(code), sentence.english(), {}, field, 0};
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

/// A slip in one field must not hide a hazard in another.
Findings reviewCard(const QJsonObject &typed, const LimitSet &limits)
{
    SafetyFact card;
    if (const QJsonValue office = typed.value("office_connected"); office.isBool())
        card.officeConnected = office.toBool();
    card.acV = voltagesIn(typed.value("ac_v").toObject());
    card.dcV = voltagesIn(typed.value("dc_v").toObject());
    Findings found;
    for (const VoltageFinding &hazard : judge(card, limits).hazards)
        found.push_back(
            finding(Severity::Error, "hazard",
                    QString("%1.%2").arg(hazard.alternating ? "ac_v" : "dc_v", toText(hazard.pair)),
                    Text(QT_TRANSLATE_NOOP("core", "%1. %2")).arg(hazard.reason).arg(hazard.toDo)));
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

Findings reviewLoop(const QJsonObject &typed, const DecisionInput &input, const LimitSet &limits)
{
    Findings found;
    const bool analog = input.order.kind == LineKind::Analog;
    holdAgainst(found, typed, "dc_resistance_ohm",
                limits.limit(analog ? "rrd_long_resistance_max" : "bri_resistance_max"));
    const double limited = limits.value("bri_loss_frequency");
    const double at = numberIn(typed, "frequency_hz").value_or(limited);
    if (!analog && std::abs(at - limited) <= 0.01 * limited)
        holdAgainst(found, typed, "loss_db", limits.limit("bri_loss_max"));
    return found;
}

Findings reviewQuantity(const Need &need, const QJsonObject &typed, const LimitSet &limits)
{
    const auto quantity = fromText<AnalogQuantity>(need.preset.value("quantity").toString());
    const QJsonValue value = typed.value("value");
    if (!quantity || !(value.isDouble() || value.isBool()))
        return {};
    const AnalogValue read =
        value.isBool() ? AnalogValue(value.toBool()) : AnalogValue(value.toDouble());
    const QuantityClass grade = classify(*quantity, read, limits);
    const Severity severity = grade == QuantityClass::Poor       ? Severity::Error
                              : grade == QuantityClass::Marginal ? Severity::Warning
                                                                 : Severity::Note;
    return {finding(severity, toText(grade).toLatin1().constData(), "value",
                    Text(QT_TRANSLATE_NOOP("core", "%1: %2; %3."))
                        .arg(valueText(*quantity, read))
                        .arg(toText(grade))
                        .arg(limitText(*quantity, limits)))};
}

std::optional<int> causeIn(const QJsonObject &typed)
{
    const auto cause = numberIn(typed, "cause");
    return cause ? std::optional(int(*cause)) : std::nullopt;
}

/// What the cause says, by the list of the order's variant.
Findings reviewCause(std::optional<int> number, const DecisionInput &input)
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

Findings reviewLayer(const Need &need, const QJsonObject &typed, const DecisionInput &input)
{
    if (typed.value("outcome").toString() != toText(LayerOutcome::Down))
        return {};
    Findings found = reviewCause(causeIn(typed), input);
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

Findings reviewCheck(const QJsonObject &typed, const LimitSet &limits)
{
    Findings found;
    const double quiet = limits.value("detector_quiet_seconds_min");
    if (const auto seconds = numberIn(typed, "quiet_seconds"); seconds && *seconds < quiet)
        found.push_back(finding(Severity::Error, "over_limit", "quiet_seconds",
                                Text(QT_TRANSLATE_NOOP("core", "%1 s; at least %2 s are needed."))
                                    .arg(*seconds)
                                    .arg(quiet)));
    if (numberIn(typed, "quiet_bit_errors").value_or(0) > 0)
        found.push_back(
            finding(Severity::Error, "over_limit", "quiet_bit_errors",
                    Text(QT_TRANSLATE_NOOP(
                        "core", "Errors in the quiet seconds: the line makes them itself."))));
    const auto seen = numberIn(typed, "seen_bit_errors");
    const double sent = std::max(numberIn(typed, "injections").value_or(0),
                                 numberIn(typed, "injected").value_or(0));
    if (seen && *seen < sent)
        found.push_back(finding(
            Severity::Error, "not_seen", "seen_bit_errors",
            Text(QT_TRANSLATE_NOOP("core", "%1 were sent and %2 seen: not every one was seen."))
                .arg(sent)
                .arg(*seen)));
    return found;
}

/// The test set still shows what was read wrong.
Findings reviewRun(const Need &need, const QJsonObject &typed)
{
    QJsonObject fact = need.preset;
    for (auto it = typed.begin(); it != typed.end(); ++it)
        fact.insert(it.key(), it.value());
    JsonReader reader(fact, {});
    const RunFact run = RunFact::read(reader);
    const auto contradiction = reader.failed() ? std::nullopt : contradictionIn(run);
    if (!contradiction)
        return {};
    return {finding(Severity::Error, "contradiction", contradiction->key,
                    Text(QT_TRANSLATE_NOOP("core", "The totals contradict each other: %1; read the "
                                                   "test set again."))
                        .arg(contradiction->what))};
}

} // namespace

Findings review(const Need &need, const QJsonObject &typed, const DecisionInput &input,
                const LimitSet &limits)
{
    if (!need.kind)
        return {};
    switch (*need.kind) {
    case FactKind::Safety:
        return reviewCard(typed, limits);
    case FactKind::Loop:
        return reviewLoop(typed, input, limits);
    case FactKind::Analog:
        return reviewQuantity(need, typed, limits);
    case FactKind::Layer:
        return reviewLayer(need, typed, input);
    case FactKind::Call:
        return typed.value("outcome").toString() == toText(CallOutcome::Failed)
                   ? reviewCause(causeIn(typed), input)
                   : Findings();
    case FactKind::Detector:
        return reviewCheck(typed, limits);
    case FactKind::Run:
        return reviewRun(need, typed);
    default:
        return {};
    }
}

} // namespace loopwright
