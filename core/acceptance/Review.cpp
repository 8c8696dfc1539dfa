#include "core/acceptance/Review.h"

#include "core/errortest/RunTotals.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

namespace loopwright {

namespace {

Finding remark(Severity severity, const QString &code, const QString &reason,
               const QString &field = {})
{
    return {severity, code, reason, {}, field, 0};
}

/// Nothing if the keys make no T yet.
template<class T>
std::optional<T> readAs(const QJsonObject &typed)
{
    JsonReader reader(typed, {});
    T read = T::read(reader);
    return reader.failed() ? std::nullopt : std::optional<T>(std::move(read));
}

Voltages voltagesOf(const QJsonObject &typed)
{
    const auto at = [&typed](WirePair pair) {
        const QJsonValue value = typed.value(toText(pair));
        return value.isDouble() ? std::optional(value.toDouble()) : std::nullopt;
    };
    return {at(WirePair::TipGround), at(WirePair::RingGround), at(WirePair::TipRing)};
}

Findings reviewCard(const QJsonObject &typed, const LimitSet &limits)
{
    SafetyFact card;
    if (const QJsonValue office = typed.value("office_connected"); office.isBool())
        card.officeConnected = office.toBool();
    card.acV = voltagesOf(typed.value("ac_v").toObject());
    card.dcV = voltagesOf(typed.value("dc_v").toObject());
    Findings said;
    for (const VoltageFinding &hazard : judge(card, limits).hazards)
        said.push_back(remark(
            Severity::Error, "hazard", QString("HAZARD. %1. %2").arg(hazard.reason, hazard.toDo),
            QString("%1.%2").arg(hazard.alternating ? "ac_v" : "dc_v", toText(hazard.pair))));
    return said;
}

/// "Cause 58, bearer capability … (class). "; on a line with a list of its own, why it has no name.
QString causeWords(int number, const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    if (variant && !usesQ850(*variant))
        return QString("Cause %1: %2 ").arg(number).arg(whyNoCauseNames(*variant));
    const auto cause = causeOf(number);
    return cause ? QString("Cause %1, %2 (%3). ").arg(number).arg(cause->name, cause->classText)
                 : QString();
}

Findings reviewLayer(const QJsonObject &typed, const ServiceOrder &order)
{
    const auto layer = readAs<LayerFact>(typed);
    if (!layer || layer->outcome != LayerOutcome::Down)
        return {};
    const FirstCheck check = firstCheck(*layer);
    return {remark(Severity::Warning, "first_check",
                   (layer->cause ? causeWords(*layer->cause, order) : QString()) +
                       QString("%1 Check first (%2): %3 Then: %4")
                           .arg(check.meaning, partName(check.part), check.check, check.then))};
}

Findings reviewCall(const QJsonObject &typed, const ServiceOrder &order)
{
    const auto call = readAs<CallFact>(typed);
    if (!call || !call->cause)
        return {};
    const ProtocolVariant *variant = findVariant(order.variant);
    if (variant && !usesQ850(*variant))
        return {remark(Severity::Note, "cause", whyNoCauseNames(*variant))};
    const auto cause = causeOf(*call->cause);
    if (!cause)
        return {};
    return {remark(
        Severity::Warning, "cause",
        QString("%1, %2. Check first: %3").arg(cause->name, cause->classText, cause->checkFirst))};
}

Findings reviewRun(const QJsonObject &typed)
{
    const auto run = readAs<RunFact>(typed);
    const auto contradiction = run ? contradictionIn(*run) : std::nullopt;
    if (!contradiction)
        return {};
    return {remark(Severity::Error, "contradiction",
                   QString("The totals contradict each other: %1; read the test set again.")
                       .arg(contradiction->what),
                   contradiction->key)};
}

Findings reviewQuantity(const QJsonObject &typed, const LimitSet &limits)
{
    const auto analog = readAs<AnalogFact>(typed);
    if (!analog || classify(analog->quantity, analog->value(), limits) != QuantityClass::Poor)
        return {};
    const AnalogQuantityInfo &about = info(analog->quantity);
    return {remark(Severity::Warning, "outside",
                   about.yesOrNo ? QString("Not as it should be.")
                                 : QString("Outside: %1.").arg(limitText(analog->quantity, limits)),
                   "value")};
}

Findings reviewLoop(const QJsonObject &typed, const ServiceOrder &order, const LimitSet &limits)
{
    if (order.kind != LineKind::Bri)
        return {};
    Findings said;
    for (const auto &[key, limit] : {std::pair("dc_resistance_ohm", "bri_resistance_max"),
                                     std::pair("loss_db", "bri_loss_max")})
        if (const QJsonValue value = typed.value(QLatin1StringView(key));
            value.isDouble() && value.toDouble() > limits.value(limit))
            said.push_back(remark(Severity::Warning, "outside",
                                  QString("Above the limit of %1.").arg(limits.value(limit)), key));
    return said;
}

} // namespace

Findings review(FactKind kind, const QJsonObject &typed, const ServiceOrder &order,
                const LimitSet &limits)
{
    switch (kind) {
    case FactKind::Safety:
        return reviewCard(typed, limits);
    case FactKind::Layer:
        return reviewLayer(typed, order);
    case FactKind::Call:
        return reviewCall(typed, order);
    case FactKind::Run:
        return reviewRun(typed);
    case FactKind::Analog:
        return reviewQuantity(typed, limits);
    case FactKind::Loop:
        return reviewLoop(typed, order, limits);
    default:
        return {};
    }
}

} // namespace loopwright
