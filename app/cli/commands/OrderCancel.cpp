#include "app/cli/commands/OrderCancel.h"

#include "app/actions/Orders.h"

namespace loopwright {

namespace {

class CancelOrder : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.text("--because", m_because, "Why", Given::Always);
        options.flag("--anyway", m_anyway,
                     "Also what a van has, which will not know of it until it is home");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        records->changeWhatIsOut(m_anyway);
        LOOPWRIGHT_TRY(cancelOrder(*records, m_number, m_because));
        return Answer::of(QJsonObject{{"order", m_number}, {"status", "cancelled"}},
                          QString("order %1 is cancelled\n").arg(m_number));
    }

private:
    QString m_number, m_because;
    bool m_anyway = false;
};

} // namespace

std::unique_ptr<Command> makeOrderCancel()
{
    return std::make_unique<CancelOrder>();
}

} // namespace loopwright
