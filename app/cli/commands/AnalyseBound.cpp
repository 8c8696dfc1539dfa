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
        options.number(
            "--target", m_target, 0, 1,
            "Say too whether this bit error ratio is proved, refuted, or not proved yet");
        options.integer("--rate", m_rate, 1, most,
                        "Bits per second, for the time that is still needed (else 64000)");
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
        if (m_target == 0)
            return Answer::of(bounds->toJson(), text);
        const ProofVerdict verdict =
            prove(m_input.errors, m_input.bits, double(m_rate), m_target, m_input.confidence);
        return Answer::of(withVerdict(bounds->toJson(), verdict),
                          text + proofText(verdict, m_target) + ".\n");
    }

private:
    QJsonObject withVerdict(QJsonObject answer, const ProofVerdict &verdict) const
    {
        answer.insert("poisson_lower", poissonLower(m_input));
        answer.insert("clopper_pearson_lower", clopperPearsonLower(m_input));
        answer.insert("target", m_target);
        answer.insert("verdict", toText(verdict.proof));
        answer.insert("further_seconds", verdict.proof == Proof::NotProved
                                             ? QJsonValue(verdict.furtherSeconds)
                                             : QJsonValue());
        return answer;
    }

    BoundInput m_input;
    double m_target = 0; ///< 0: none is asked for
    qint64 m_rate = 64000;
};

} // namespace

std::unique_ptr<Command> makeAnalyseBound()
{
    return std::make_unique<AnalyseBound>();
}

} // namespace loopwright
