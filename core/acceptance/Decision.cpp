#include "core/acceptance/Decision.h"

#include <algorithm>

namespace loopwright {

namespace {

QJsonObject criterionJson(const CriterionResult &result)
{
    QJsonObject object{{"key", result.key},
                       {"name", result.name},
                       {"station", toText(result.station)},
                       {"outcome", toText(result.outcome)},
                       {"measured", result.measured},
                       {"measured_text", result.measuredText},
                       {"limit", result.limit},
                       {"limit_text", result.limitText},
                       {"unit", result.unit},
                       {"source", result.source},
                       {"reason", result.reason},
                       {"next", result.next},
                       {"evidence", QJsonArray::fromStringList(result.evidence)}};
    if (result.excepted)
        object.insert("excepted", QJsonObject{{"by", result.excepted->by},
                                              {"because", result.excepted->because},
                                              {"at", result.excepted->at.text()}});
    return object;
}

} // namespace

const CriterionResult *Decision::criterion(const QString &key) const
{
    const auto found =
        std::find_if(criteria.begin(), criteria.end(),
                     [&key](const CriterionResult &result) { return result.key == key; });
    return found == criteria.end() ? nullptr : &*found;
}

const CriterionResult *Decision::firstOpen() const
{
    const CriterionResult *first = nullptr;
    for (const CriterionResult &result : criteria)
        if (result.open() && (!first || result.station < first->station))
            first = &result;
    return first;
}

QJsonObject Decision::toJson() const
{
    QJsonArray list, made;
    for (const CriterionResult &result : criteria)
        list << criterionJson(result);
    for (const RunMade &run : runs)
        made << QJsonObject{{"fact", run.fact}, {"text", run.text}, {"result", run.result}};
    return {
        {"decision", id},        {"order", order},   {"outcome", toText(outcome)},
        {"limit_set", limitSet}, {"criteria", list}, {"runs", made},
        {"proves", proves},      {"proven", proven}, {"notes", QJsonArray::fromStringList(notes)}};
}

} // namespace loopwright
