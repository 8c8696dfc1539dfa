#include "core/loop/RuleResult.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

/// Lengths that were added up or turned into feet miss a round limit by a digit or two.
double slack(double limit)
{
    return 1e-9 * std::max(1.0, std::abs(limit));
}

int usualDecimals(const QString &unit)
{
    return unit == "dB" ? 2 : 0;
}

QString withDecimals(double value, const QString &unit, int decimals)
{
    const QString number = QString::number(value, 'f', decimals);
    return unit.isEmpty() ? number : QString(number + ' ' + unit);
}

RuleResult compared(const QString &key, const Limit &limit, double measured, bool isMet,
                    Suitability otherwise, const char *met, const char *notMet,
                    const Text &given = {})
{
    // What a limit is named is data of its set; the names of the shipped ones are in the
    // catalogues.
    const Text name = given.isEmpty() ? Text::message(limit.name.section(", at ", 0, 0)) : given;
    return {key,
            name,
            isMet ? Suitability::Suitable : otherwise,
            measured,
            limit.value,
            limit.unit,
            limit.source,
            Text(isMet ? met : notMet)
                .arg(name)
                .arg(isMet ? figureText(measured, limit.unit)
                           : figureApart(measured, limit.value, limit.unit))
                .arg(figureText(limit.value, limit.unit))};
}

} // namespace

QString figureText(double value, const QString &unit)
{
    return withDecimals(value, unit, usualDecimals(unit));
}

QString figureApart(double value, double limit, const QString &unit)
{
    constexpr int most = 6;
    for (int decimals = usualDecimals(unit); decimals <= most; ++decimals) {
        const QString text = withDecimals(value, unit, decimals);
        if (text != withDecimals(limit, unit, decimals))
            return text;
    }
    return figureText(value, unit);
}

RuleResult atMost(const QString &key, const Limit &limit, double measured, Suitability beyond,
                  const Text &name)
{
    return compared(key, limit, measured, measured <= limit.value + slack(limit.value), beyond,
                    QT_TRANSLATE_NOOP("core", "%1: %2, within %3"),
                    QT_TRANSLATE_NOOP("core", "%1: %2, over %3"), name);
}

RuleResult atLeast(const QString &key, const Limit &limit, double measured, Suitability below)
{
    return compared(key, limit, measured, measured >= limit.value - slack(limit.value), below,
                    QT_TRANSLATE_NOOP("core", "%1: %2, not under %3"),
                    QT_TRANSLATE_NOOP("core", "%1: %2, under %3"));
}

Text whenHot(const Text &said, double fahrenheit)
{
    return Text(QT_TRANSLATE_NOOP("core", "%1, with the cable at %2 °F")).arg(said).arg(fahrenheit);
}

Suitability worstOf(const std::vector<RuleResult> &rules)
{
    Suitability worst = Suitability::Suitable;
    for (const RuleResult &rule : rules)
        worst = std::max(worst, rule.verdict);
    return worst;
}

std::vector<Text> reasonsOf(const std::vector<RuleResult> &rules)
{
    std::vector<Text> reasons;
    for (const RuleResult &rule : rules)
        if (rule.verdict != Suitability::Suitable)
            reasons.push_back(rule.reason);
    if (reasons.empty())
        reasons.push_back(QT_TRANSLATE_NOOP("core", "Every rule is met"));
    return reasons;
}

QJsonArray englishJson(const std::vector<Text> &sentences)
{
    QJsonArray list;
    for (const Text &sentence : sentences)
        list << sentence.english();
    return list;
}

QJsonArray rulesJson(const std::vector<RuleResult> &rules)
{
    QJsonArray list;
    for (const RuleResult &rule : rules)
        list << QJsonObject{{"key", rule.key},           {"name", rule.name.english()},
                            {"limit", rule.limit},       {"verdict", toText(rule.verdict)},
                            {"measured", rule.measured}, {"unit", rule.unit},
                            {"source", rule.source},     {"reason", rule.reason.english()}};
    return list;
}

QJsonObject RuleSet::toJson() const
{
    return {{"key", key},
            {"name", name.english()},
            {"verdict", toText(verdict())},
            {"rules", rulesJson(rules)}};
}

} // namespace loopwright
