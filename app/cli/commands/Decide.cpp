#include "app/cli/commands/Decide.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
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
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto decision, m_again.isEmpty() ? decideOrder(*records, m_number)
                                                                 : decideAgain(*records, m_again));
        if (m_number.isEmpty())
            return answerOf(decision);
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(*records, m_number));
        Answer answer = answerOf(decision, nextSentenceOf(view).english());
        LOOPWRIGHT_ASSIGN(const auto strangers, unregisteredInstallers(*records, m_number));
        for (const QString &installer : strangers)
            answer.note(QString("order %1: installer %2, who recorded facts of it, is not "
                                "registered")
                            .arg(m_number, installer));
        return answer;
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
