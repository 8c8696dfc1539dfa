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
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto findings,
                          auditIdentifiers(*records, context.progress("auditing")));
        QJsonArray json;
        QString text;
        for (const AuditFinding &finding : findings) {
            json.append(finding.toJson());
            text += wrapped(finding.value + ": " + finding.reason + " (circuits " +
                                finding.circuits.join(", ") + ")",
                            4) +
                    "\n";
        }
        if (findings.empty())
            text = "no identifier is in error, and none is held twice\n";
        return Answer::of(json, text, findings.empty());
    }
};

} // namespace

std::unique_ptr<Command> makeAudit()
{
    return std::make_unique<AuditIdentifiers>();
}

} // namespace loopwright
