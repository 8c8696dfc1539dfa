// The quantities of an analog line: always asked, or judged if they were recorded.

#include "core/acceptance/Judging.h"

namespace loopwright {

namespace {

QString needKey(AnalogQuantity quantity)
{
    return "analog." + toText(quantity);
}

QString capital(QString text)
{
    text[0] = text[0].toUpper();
    return text;
}

std::optional<double> numberOf(const Fact *fact)
{
    return fact ? fact->as<AnalogFact>()->number() : std::nullopt;
}

/// The recorded value, or for balance the subtraction if both sides were recorded.
std::optional<AnalogValue> valueOf(const Judging &judging, AnalogQuantity quantity,
                                   CriterionResult &result)
{
    const auto newest = [&judging](AnalogQuantity of) {
        return judging.newest(*judging.need(needKey(of)));
    };
    if (const Fact *fact = newest(quantity)) {
        result.evidence << fact->id;
        return fact->as<AnalogFact>()->value();
    }
    if (quantity != AnalogQuantity::Balance)
        return std::nullopt;
    const Fact *influence = newest(AnalogQuantity::PowerInfluence);
    const Fact *noise = newest(AnalogQuantity::Noise);
    const auto a = numberOf(influence), b = numberOf(noise);
    if (!a || !b)
        return std::nullopt;
    result.evidence << influence->id << noise->id;
    return balanceDb(*a, *b);
}

/// The subtraction means something only if there is noise, or much that could make it: power
/// influence above the bound of good (S.C. Code Regs. 103-663.3 judges it always; common practice).
bool isBalanceNeeded(const Judging &judging)
{
    const auto newest = [&judging](AnalogQuantity of) {
        return numberOf(judging.newest(*judging.need(needKey(of))));
    };
    const auto noise = newest(AnalogQuantity::Noise),
               influence = newest(AnalogQuantity::PowerInfluence);
    return !noise || !influence ||
           classify(AnalogQuantity::Noise, *noise, judging.limits) != QuantityClass::Good ||
           *influence > judging.limits.value("power_influence_good_max");
}

Text hintOf(const AnalogQuantityInfo &about, const LimitSet &limits)
{
    if (about.yesOrNo)
        return Text(about.definition);
    const Text bounds = Text(QT_TRANSLATE_NOOP("core", "%1; %2"))
                            .arg(QString::fromUtf8(about.unit))
                            .arg(limitText(about.quantity, limits));
    if (about.quantity == AnalogQuantity::Balance)
        return Text(QT_TRANSLATE_NOOP("core", "%1; left empty: computed")).arg(bounds);
    return about.always ? bounds
                        : Text(QT_TRANSLATE_NOOP("core", "%1; if it is measured")).arg(bounds);
}

} // namespace

void needQuantities(std::vector<Need> &needs, const ServiceOrder &, OrderScope,
                    const LimitSet &limits)
{
    for (const AnalogQuantityInfo &about : analogQuantities()) {
        const QString key = toText(about.quantity);
        Need need{needKey(about.quantity), key, StepGroup::Analog, Station::TurnUp,
                  FactKind::Analog};
        need.preset.insert("quantity", key);
        if (!about.yesOrNo)
            need.preset.insert("unit", QString::fromUtf8(about.unit));
        need.fields = {"value"};
        need.after = about.yesOrNo ? QStringList{"safety"} : QStringList{"safety", "instrument"};
        need.label = Text::message(capital(QString::fromUtf8(about.name)));
        need.hint = hintOf(about, limits);
        need.matches = [quantity = about.quantity](const Fact &fact) {
            return fact.as<AnalogFact>() && fact.as<AnalogFact>()->quantity == quantity;
        };
        needs.push_back(std::move(need));
    }
}

void judgeQuantity(Judging &judging, CriterionResult &result)
{
    const AnalogQuantity quantity = *fromText<AnalogQuantity>(result.key);
    const AnalogQuantityInfo &about = info(quantity);
    result.unit = QString::fromUtf8(about.unit);
    result.limitText = limitText(quantity, judging.limits);
    const Need &need = *judging.need(needKey(quantity));
    if (quantity == AnalogQuantity::Balance && !isBalanceNeeded(judging)) {
        judging.settle(need, result, CriterionOutcome::NotNeeded,
                       Text(QT_TRANSLATE_NOOP(
                           "core", "The line is quiet and little disturbs it: the balance says "
                                   "nothing of it.")));
        return;
    }
    const auto value = valueOf(judging, quantity, result);
    const Text name(about.name);
    if (!value) {
        judging.settle(
            need, result, about.always ? CriterionOutcome::Missing : CriterionOutcome::NotNeeded,
            Text(judging.hasDiscounted(need)
                     ? QT_TRANSLATE_NOOP("core", "The %1 that was recorded does not count.")
                     : QT_TRANSLATE_NOOP("core", "The %1 was not recorded."))
                .arg(name),
            about.always ? Text(QT_TRANSLATE_NOOP("core", "Record the %1.")).arg(name) : Text());
        return;
    }
    const QuantityClass grade = classify(quantity, *value, judging.limits);
    result.source = limitSource(quantity, *value, judging.limits);
    result.grade = grade;
    const Text shown = valueText(quantity, *value);
    result.measuredText = shown;
    if (const auto *number = std::get_if<double>(&*value)) {
        result.measured = *number;
        result.limit = goodLimit(quantity, *number, judging.limits);
    } else {
        result.measured = std::get<bool>(*value);
        result.limit = true;
    }
    // Marginal counts as met and is named.
    const bool poor = grade == QuantityClass::Poor;
    judging.settle(
        need, result, poor ? CriterionOutcome::NotMet : CriterionOutcome::Met,
        (std::holds_alternative<bool>(*value)
             ? Text(QT_TRANSLATE_NOOP("core", "The %1 is %3 (%2)."))
             : Text(QT_TRANSLATE_NOOP("core", "The %1 of %2 is %3.")))
            .arg(name)
            .arg(shown)
            .arg(Text::message(toText(grade))),
        poor ? Text(QT_TRANSLATE_NOOP("core", "Clear the trouble and record the %1 again."))
                   .arg(name)
             : Text());
}

} // namespace loopwright
