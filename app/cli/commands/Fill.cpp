#include "app/cli/commands/Fill.h"

#include "app/actions/Maintenance.h"

#include <limits>

namespace loopwright {

namespace {

class FillRecords : public Command
{
public:
    void declare(Options &options) override
    {
        options.integer("--circuits", m_circuits, 1, 10'000'000, "How many circuits",
                        Given::Always);
        options.integer("--seed", m_seed, 0, std::numeric_limits<qint64>::max(),
                        "The same number gives the same records on the same day (else 1)");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_TRY(fillWithInvented(*records, int(m_circuits), quint64(m_seed),
                                        context.progress("inventing")));
        return Answer::of(QJsonObject{{"circuits", m_circuits}, {"seed", m_seed}},
                          QString("%1 invented circuits\n").arg(m_circuits));
    }

private:
    qint64 m_circuits = 0;
    qint64 m_seed = 1;
};

} // namespace

std::unique_ptr<Command> makeFill()
{
    return std::make_unique<FillRecords>();
}

} // namespace loopwright
