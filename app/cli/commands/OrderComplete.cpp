#include "app/cli/commands/OrderComplete.h"

#include "app/actions/Orders.h"
#include "app/cli/AnywayOption.h"
#include "core/certificate/Slips.h"

namespace loopwright {

namespace {

class CompleteOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        m_anyway.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_TRY(completeOrder(*records, m_number));
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(*records, m_number));
        const QString number = completionNumber(view.decision);
        return Answer::of(
            QJsonObject{
                {"order", m_number}, {"status", "completed"}, {"completion_number", number}},
            QString("order %1 is completed, completion number %2\n").arg(m_number, number));
    }

private:
    QString m_number;
    AnywayOption m_anyway;
};

} // namespace

std::unique_ptr<Command> makeOrderComplete()
{
    return std::make_unique<CompleteOrder>();
}

} // namespace loopwright
