#include "core/base/Finding.h"

#include <algorithm>

namespace loopwright {

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
