#include "app/cli/commands/OrderComplete.h"

#include "app/actions/Orders.h"

namespace loopwright {

namespace {

class CompleteOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_TRY(completeOrder(*records, m_number));
        return Answer::of(QJsonObject{{"order", m_number}, {"status", "completed"}},
                          QString("order %1 is completed\n").arg(m_number));
    }

private:
    QString m_number;
};

} // namespace

std::unique_ptr<Command> makeOrderComplete()
{
    return std::make_unique<CompleteOrder>();
}

} // namespace loopwright
