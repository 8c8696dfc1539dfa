#include "app/actions/RecordReport.h"

#include <QJsonArray>

namespace loopwright {

QJsonObject RecordReport::toJson() const
{
    QJsonArray list;
    for (const RecordFinding &finding : told)
        list << QJsonObject{{"code", finding.code},
                            {"severity", severityName(finding.severity)},
                            {"reason", finding.reason.english()},
                            {"fact", finding.fact.isEmpty() ? QJsonValue() : finding.fact}};
    return {{"added", QJsonArray::fromStringList(added)},
            {"already_there", QJsonArray::fromStringList(alreadyThere)},
            {"findings", list}};
}

} // namespace loopwright
