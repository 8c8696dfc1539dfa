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

RuleResult compared(const QString &key, const Limit &limit, double measured, bool isMet,
                    Suitability otherwise, const char *met, const char *notMet)
{
    const QString name = limit.name.section(", at ", 0, 0);
    return {key,
            name,
            isMet ? Suitability::Suitable : otherwise,
            measured,
            limit.value,
            limit.unit,
            limit.source,
            QString("%1: %2, %3 %4")
                .arg(name, figureText(measured, limit.unit),
                     QString::fromLatin1(isMet ? met : notMet),
                     figureText(limit.value, limit.unit))};
}

} // namespace

QString figureText(double value, const QString &unit)
{
    const QString number = QString::number(value, 'f', unit == "dB" ? 2 : 0);
    return unit.isEmpty() ? number : QString(number + ' ' + unit);
}

RuleResult atMost(const QString &key, const Limit &limit, double measured, Suitability beyond)
{
    return compared(key, limit, measured, measured <= limit.value + slack(limit.value), beyond,
                    "within", "over");
}

RuleResult atLeast(const QString &key, const Limit &limit, double measured, Suitability below)
{
    return compared(key, limit, measured, measured >= limit.value - slack(limit.value), below,
                    "not under", "under");
}

Suitability worstOf(const std::vector<RuleResult> &rules)
{
    Suitability worst = Suitability::Suitable;
    for (const RuleResult &rule : rules)
        worst = std::max(worst, rule.verdict);
    return worst;
}

QStringList reasonsOf(const std::vector<RuleResult> &rules)
{
    QStringList reasons;
    for (const RuleResult &rule : rules)
        if (rule.verdict != Suitability::Suitable)
            reasons << rule.reason;
    if (reasons.isEmpty())
        reasons << "Every rule is met";
    return reasons;
}

QJsonArray rulesJson(const std::vector<RuleResult> &rules)
{
    QJsonArray list;
    for (const RuleResult &rule : rules)
        list << QJsonObject{{"key", rule.key},           {"name", rule.name},
                            {"limit", rule.limit},       {"verdict", toText(rule.verdict)},
                            {"measured", rule.measured}, {"unit", rule.unit},
                            {"source", rule.source},     {"reason", rule.reason}};
    return list;
}

QJsonObject RuleSet::toJson() const
{
    return {
        {"key", key}, {"name", name}, {"verdict", toText(verdict())}, {"rules", rulesJson(rules)}};
}

} // namespace loopwright
