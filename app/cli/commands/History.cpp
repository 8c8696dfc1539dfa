#include "app/cli/commands/History.h"

#include "app/actions/History.h"
#include "app/cli/DecisionText.h"
#include "app/cli/Layout.h"

namespace loopwright {

namespace {

class ShowHistory : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "An order, or the word verify: recompute every chain",
                     Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        return m_number == "verify" ? verify(*records, context) : show(*records);
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

    static Result<Answer> verify(Records &records, CommandContext &context)
    {
        LOOPWRIGHT_ASSIGN(const auto verdict,
                          verifyHistory(records, context.progress("verifying")));
        QString text = QString("%1 events: %2\n")
                           .arg(verdict.events)
                           .arg(verdict.broken.empty() ? "whole" : "broken");
        for (const BrokenLink &link : verdict.broken)
            text +=
                wrapped(
                    QString("%1, event %2: %3").arg(link.subject).arg(link.event).arg(link.what),
                    4) +
                "\n";
        return Answer::of(verdict.toJson(), text, verdict.broken.empty());
    }

    QString m_number;
};

} // namespace

std::unique_ptr<Command> makeHistory()
{
    return std::make_unique<ShowHistory>();
}

} // namespace loopwright
