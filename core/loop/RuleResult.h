#pragma once
// The outcome of one rule about a loop, with figure, limit and source, and what all rule books
// share in making and wording it.

#include "core/base/LimitSet.h"
#include "core/base/Text.h"

#include <QJsonArray>

#include <vector>

namespace loopwright {

enum class Suitability
{
    Suitable,
    Marginal,
    NotSuitable,
};
template<>
struct EnumCodes<Suitability>
{
    static constexpr std::pair<Suitability, const char *> table[] = {
        {Suitability::Suitable, "suitable"},
        {Suitability::Marginal, "marginal"},
        {Suitability::NotSuitable, "not_suitable"}};
};

struct RuleResult
{
    QString key; ///< stable, e.g. "bri_loss"
    Text name;   ///< for a person
    Suitability verdict = Suitability::Suitable;
    double measured = 0; ///< the computed or counted figure
    double limit = 0;
    QString unit;
    QString source;
    Text reason; ///< one sentence with the figure and the limit
};

/// Met if `measured` is at most the limit (the last binary digit is forgiven), else `beyond`.
/// The key is `key`; unit and source are the limit's, and the name if none is given.
RuleResult atMost(const QString &key, const Limit &limit, double measured, Suitability beyond,
                  const Text &name = {});
/// The same for a limit that must be reached.
RuleResult atLeast(const QString &key, const Limit &limit, double measured, Suitability below);

/// "…, with the cable at 140 °F": said of what grows with the temperature.
Text whenHot(const Text &said, double fahrenheit);

/// Suitable for no rules.
Suitability worstOf(const std::vector<RuleResult> &rules);
/// Reasons of the rules that are not met, or one sentence that all are.
std::vector<Text> reasonsOf(const std::vector<RuleResult> &rules);
/// Sentences as a document keeps them.
QJsonArray englishJson(const std::vector<Text> &sentences);
QJsonArray rulesJson(const std::vector<RuleResult> &rules);
/// "41.70 dB", "1300 ohm".
QString figureText(double value, const QString &unit);
/// The same with as many decimals more as tell the value from a limit that it misses: "1300.04
/// ohm".
QString figureApart(double value, double limit, const QString &unit);

/// A set of rules under one name; its verdict is the worst of its results.
struct RuleSet
{
    QString key; ///< "resistance_design", "revised_resistance_design", "carrier_serving_area"
    Text name;   ///< for a person
    std::vector<RuleResult> rules;

    Suitability verdict() const { return worstOf(rules); }
    QJsonObject toJson() const;
};

} // namespace loopwright
