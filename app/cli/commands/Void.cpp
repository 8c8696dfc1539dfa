#include "app/cli/commands/Void.h"

#include "app/actions/Evidence.h"

namespace loopwright {

namespace {

class VoidOneFact : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("fact", m_fact, "Id of the fact that no longer counts", Given::Always);
        options.text("--because", m_because, "Why", Given::Always);
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto id, voidFact(*records, m_fact, m_because));
        return Answer::of(QJsonObject{{"voided", m_fact}, {"by_fact", id}},
                          QString("%1 no longer counts (%2)\n").arg(m_fact, id));
    }

private:
    QString m_fact, m_because;
};

} // namespace

std::unique_ptr<Command> makeVoid()
{
    return std::make_unique<VoidOneFact>();
}

} // namespace loopwright
