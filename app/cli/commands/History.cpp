#include "app/cli/commands/History.h"

#include "app/actions/History.h"
#include "app/actions/OutFile.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class ShowHistory : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number,
                     "An order; or verify: hold all that is stored against the log; or head: "
                     "where the log stands",
                     Given::Always);
        options.text(
            "--head", m_head,
            "With verify: a file of heads, a certificate or a backup, which the log must contain");
        options.text("--out", m_out, "With head: where it is written, as JSON");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (!m_head.isEmpty() && m_number != "verify")
            return failure(ErrorCode::Usage, "goes with history verify", "--head");
        if (!m_out.isEmpty() && m_number != "head")
            return failure(ErrorCode::Usage, "goes with history head", "--out");
        LOOPWRIGHT_ASSIGN(const auto records, context.recordsAsTheyAre());
        return m_number == "verify" ? verify(*records, context)
               : m_number == "head" ? head(*records)
                                    : show(*records);
    }

private:
    Result<Answer> show(Records &records) const
    {
        LOOPWRIGHT_ASSIGN(const auto events, orderHistory(records, m_number));
        QJsonArray json;
        for (const Event &event : events)
            json.append(event.toJson());
        return Answer::of(json, eventsText(events));
    }

    Result<Answer> head(Records &records) const
    {
        LOOPWRIGHT_ASSIGN(const auto head, logHead(records));
        if (!m_out.isEmpty())
            LOOPWRIGHT_TRY(writeOut(m_out, FileKind::Json, canonicalJson(head.toJson()) + '\n'));
        return Answer::of(head.toJson(), QString::fromUtf8(head.head.text()));
    }

    Result<Answer> verify(Records &records, CommandContext &context) const
    {
        Witnesses witnesses;
        if (!m_head.isEmpty()) {
            LOOPWRIGHT_ASSIGN(witnesses, witnessesOf(m_head));
        }
        LOOPWRIGHT_ASSIGN(const auto verdict, verifyHistory(records, context.progress("verifying"),
                                                            std::move(witnesses)));
        QString text = QString("%1 events: %2\n")
                           .arg(verdict.events)
                           .arg(verdict.broken.empty() ? "whole" : "broken");
        for (const BrokenLink &link : verdict.broken)
            text +=
                wrapped(
                    QString("%1, event %2: %3").arg(link.subject).arg(link.event).arg(link.what),
                    4) +
                "\n";
        for (const Witnessed &each : verdict.witnessed)
            text += wrapped("Witnessed: " + each.what +
                                (each.signedBy.isEmpty()
                                     ? QString(", signed by nobody whose key is known here")
                                     : ", signed by " + each.signedBy),
                            4) +
                    "\n";
        return Answer::of(verdict.toJson(), text, verdict.broken.empty());
    }

    QString m_number, m_head, m_out;
};

} // namespace

std::unique_ptr<Command> makeHistory()
{
    return std::make_unique<ShowHistory>();
}

} // namespace loopwright
