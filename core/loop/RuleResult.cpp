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
                .arg(name,
                     isMet ? figureText(measured, limit.unit)
                           : figureApart(measured, limit.value, limit.unit),
                     QString::fromLatin1(isMet ? met : notMet),
                     figureText(limit.value, limit.unit))};
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

QString whenHot(double fahrenheit)
{
    return QString(", with the cable at %1 °F").arg(fahrenheit);
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
