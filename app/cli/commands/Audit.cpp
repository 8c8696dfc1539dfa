#include "app/cli/commands/Audit.h"

#include "app/actions/Audit.h"
#include "app/actions/Register.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class AuditRecords : public Command
{
public:
    void declare(Options &) override {}

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsWritableOrNot());
        LOOPWRIGHT_ASSIGN(const auto findings,
                          auditIdentifiers(*records, context.progress("auditing")));
        LOOPWRIGHT_ASSIGN(const auto broken, auditDerived(*records, context.progress("computing")));
        QJsonArray json, faults;
        QString text;
        for (const DerivedFault &fault : broken) {
            faults.append(fault.toJson());
            text += wrapped(fault.subject + ": " + fault.what, 4) + "\n";
        }
        for (const AuditFinding &finding : findings) {
            json.append(finding.toJson());
            text += wrapped(finding.value + ": " + finding.reason + " (circuits " +
                                finding.circuits.join(", ") + ")",
                            4) +
                    "\n";
        }
        const bool clean = findings.empty() && broken.empty();
        if (clean)
            text = "no identifier is in error, none is held twice, and all that is derived is so\n";
        Answer answer =
            Answer::of(QJsonObject{{"findings", json}, {"broken", faults}}, text, clean);
        if (records->database().access() == Database::Access::ReadOnly)
            answer.note("the index of words was not looked through: SQLite does that only where "
                        "it may write");
        return answer;
    }
};

} // namespace

std::unique_ptr<Command> makeAudit()
{
    return std::make_unique<AuditRecords>();
}

} // namespace loopwright
