#include "app/cli/commands/Decide.h"

#include "app/actions/Acceptance.h"
#include "app/cli/DecisionText.h"

namespace loopwright {

namespace {

class DecideOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order");
        options.text("--again", m_again, "Repeats this decision from its stored input instead");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_number.isEmpty() == m_again.isEmpty())
            return failure(ErrorCode::Usage, "give the number of an order, or --again DECISION-ID");
        const auto records = context.records();
        if (!records)
            return failure(records.error());
        const auto decision =
            m_again.isEmpty() ? decideOrder(**records, m_number) : decideAgain(**records, m_again);
        if (!decision)
            return failure(decision.error());
        return answerOf(*decision);
    }

private:
    QString m_number, m_again;
};

} // namespace

std::unique_ptr<Command> makeDecide()
{
    return std::make_unique<DecideOrder>();
}

} // namespace loopwright
