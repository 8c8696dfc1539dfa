#include "app/cli/commands/Audit.h"

#include "app/actions/Register.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class AuditIdentifiers : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        const auto records = context.records();
        if (!records)
            return failure(records.error());
        const auto findings = auditIdentifiers(**records, context.progress("auditing"));
        if (!findings)
            return failure(findings.error());
        QJsonArray json;
        QString text;
        for (const AuditFinding &finding : *findings) {
            json.append(finding.toJson());
            text += wrapped(finding.value + ": " + finding.reason + " (circuits " +
                                finding.circuits.join(", ") + ")",
                            4) +
                    "\n";
        }
        if (findings->empty())
            text = "no identifier is in error, and none is held twice\n";
        return Answer::of(json, text, findings->empty());
    }
};

} // namespace

std::unique_ptr<Command> makeAudit()
{
    return std::make_unique<AuditIdentifiers>();
}

} // namespace loopwright
