#include "app/cli/commands/AnalyseBound.h"

#include "app/cli/Layout.h"
#include "core/errortest/Bounds.h"

#include <limits>

namespace loopwright {

namespace {

constexpr qint64 most = std::numeric_limits<qint64>::max();

class AnalyseBound : public Command
{
public:
    void declare(Options &options) override
    {
        options.integer("--errors", m_input.errors, 0, most, "Bit errors counted", Given::Always);
        options.integer("--bits", m_input.bits, 1, most, "Bits compared", Given::Always);
        options.number("--confidence", m_input.confidence, 0, 1,
                       "Between 0 and 1, both excluded (else 0.95)");
    }

    Result<Answer> run(CommandContext &) override
    {
        const auto bounds = upperBounds(m_input);
        if (!bounds)
            return failure(bounds.error());
        const QString confidence = QString::number(m_input.confidence * 100) + " %";
        const QString text =
            wrapped(
                QString("With %1 confidence the true bit error ratio is at most").arg(confidence)) +
            "\n" +
            LabelledLines()
                .add("  Poisson", shortNumber(bounds->poissonUpper, 10))
                .add("  Clopper-Pearson", shortNumber(bounds->clopperPearsonUpper, 10))
                .text() +
            wrapped("if errors are independent of each other; on a loop they come in bursts, so "
                    "look at the errored seconds too.") +
            "\n";
        return Answer::of(bounds->toJson(), text);
    }

private:
    BoundInput m_input;
};

} // namespace

std::unique_ptr<Command> makeAnalyseBound()
{
    return std::make_unique<AnalyseBound>();
}

} // namespace loopwright
