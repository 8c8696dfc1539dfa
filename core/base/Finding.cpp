#include "core/base/Finding.h"

#include <QJsonObject>

#include <algorithm>

namespace loopwright {

QJsonArray findingsJson(const Findings &findings)
{
    QJsonArray list;
    for (const Finding &finding : findings) {
        QJsonObject object{{"row", finding.row},
                           {"column", finding.field},
                           {"code", finding.code},
                           {"severity", severityName(finding.severity)},
                           {"reason", finding.reason.english()}};
        if (!finding.repair.isEmpty())
            object.insert("repair", finding.repair);
        list << object;
    }
    return list;
}

QString severityName(Severity severity)
{
    switch (severity) {
    case Severity::Note:
        return "note";
    case Severity::Warning:
        return "warning";
    case Severity::Error:
        return "error";
    }
    return {};
}

Severity worst(const Findings &findings)
{
    Severity result = Severity::Note;
    for (const Finding &finding : findings)
        result = std::max(result, finding.severity);
    return result;
}

QString verdictName(Severity worst)
{
    return worst == Severity::Note ? QString("ok") : severityName(worst);
}

} // namespace loopwright
