#include "app/cli/SecondsInput.h"

namespace loopwright {

namespace {

constexpr std::size_t mostLines = 100; ///< what a person scrolls back through

} // namespace

Answer refusedSeconds(const SecondsFile &file, const QString &fileName)
{
    const Error error = file.accepted(fileName).error();
    Answer answer = Answer::of(QJsonObject{{"error", errorJson(error)},
                                           {"findings", findingsJson(file.findings)},
                                           {"further_findings", file.furtherFindings}},
                               {}, false);
    answer.refusedWhole = true;
    for (const QString &line : file.findingLines(mostLines))
        answer.lack(fileName + ": " + line);
    return answer;
}

} // namespace loopwright
