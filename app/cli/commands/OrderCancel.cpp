#include "app/cli/commands/OrderCancel.h"

#include "app/actions/Orders.h"
#include "app/cli/AnywayOption.h"

namespace loopwright {

namespace {

class CancelOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.text("--because", m_because, "Why", Given::Always);
        m_anyway.declare(options);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        m_anyway.tell(*records);
        LOOPWRIGHT_TRY(cancelOrder(*records, m_number, m_because));
        return Answer::of(QJsonObject{{"order", m_number}, {"status", "cancelled"}},
                          QString("order %1 is cancelled\n").arg(m_number));
    }

private:
    QString m_number, m_because;
    AnywayOption m_anyway;
};

} // namespace

std::unique_ptr<Command> makeOrderCancel()
{
    return std::make_unique<CancelOrder>();
}

} // namespace loopwright
