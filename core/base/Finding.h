#pragma once
// A Finding says that the user's data is wrong or doubtful: which field, a stable code, one
// sentence, and the repair if only one is possible. Findings are collected, never thrown, and
// never stop the others.

#include "core/base/Text.h"

#include <QJsonArray>

#include <vector>

namespace loopwright {

enum class Severity
{
    Note,    ///< worth knowing; changes no verdict
    Warning, ///< doubtful: confirm with the provider
    Error,   ///< cannot be right
};

struct Finding
{
    Severity severity = Severity::Error;
    QString code;   ///< stable, snake_case, e.g. "spid_length"
    Text reason;    ///< one sentence for a person; the same on the desktop and on the command line
    QString repair; ///< the whole repaired value, only if exactly one repair is possible
    QString field;  ///< the column or field it belongs to, e.g. "spid_1"; empty for the whole row
    int row = 0;    ///< line of the file, the header being 1; 0 if there is no file

    bool operator==(const Finding &) const = default;
};

using Findings = std::vector<Finding>;

/// [{"row","column","code","severity","reason"}], with "repair" if there is one.
QJsonArray findingsJson(const Findings &findings);
/// "note", "warning" or "error".
QString severityName(Severity severity);
/// Note for an empty list.
Severity worst(const Findings &findings);
/// "ok" (nothing worse than a note), "warning" or "error".
QString verdictName(Severity worst);

} // namespace loopwright
