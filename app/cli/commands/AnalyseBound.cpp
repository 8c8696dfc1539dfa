#include "app/cli/commands/AnalyseBound.h"

#include "app/cli/Layout.h"
#include "core/errortest/Bounds.h"

#include <algorithm>
#include <limits>
#include <optional>

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
        options.number("--target", m_target, 0, 1,
                       "Say too whether this bit error ratio, above 0, is proved, refuted, or not "
                       "proved yet; with a confidence of 0.5 or more");
        options.integer("--rate", m_rate, 1, most,
                        "Bits per second, for the time that is still needed (else 64000)");
    }

    Result<Answer> run(CommandContext &) override
    {
        LOOPWRIGHT_ASSIGN(const auto bounds, upperBounds(m_input));
        if (!m_target)
            return Answer::of(bounds.toJson(), text(bounds));
        LOOPWRIGHT_TRY(checkTarget());
        const ProofVerdict verdict =
            prove(m_input.errors, m_input.bits, double(m_rate), *m_target, m_input.confidence);
        return Answer::of(withVerdict(bounds.toJson(), verdict),
                          text(bounds) + proofText(verdict, *m_target) + ".\n");
    }

private:
    Result<void> checkTarget() const
    {
        if (*m_target <= 0)
            return failure(ErrorCode::Usage, "must be above 0: no run proves a ratio of 0",
                           "--target");
        if (m_input.confidence < 0.5)
            return failure(ErrorCode::Usage,
                           "needs a confidence of 0.5 or more: below it the lower bound is above "
                           "the upper one, and there is no verdict",
                           "--target");
        return {};
    }

    /// A ratio is never above 1, whatever Poisson's formula makes of a handful of bits. JSON has
    /// the formula's value.
    static QString ratio(double bound) { return shortNumber(std::min(bound, 1.0), 10); }

    QString text(const Bounds &bounds) const
    {
        const QString confidence = percentText(m_input.confidence);
        QString text = wrapped(QString("With %1 % confidence the true bit error ratio is at most")
                                   .arg(confidence)) +
                       "\n" +
                       LabelledLines()
                           .add("  Poisson", ratio(bounds.poissonUpper))
                           .add("  Clopper-Pearson", ratio(bounds.clopperPearsonUpper))
                           .text();
        if (m_target)
            text += wrapped(QString("and, with %1 % confidence too, at least").arg(confidence)) +
                    "\n" +
                    LabelledLines()
                        .add("  Poisson", ratio(poissonLower(m_input)))
                        .add("  Clopper-Pearson", ratio(clopperPearsonLower(m_input)))
                        .text();
        return text +
               wrapped("if errors are independent of each other; on a loop they come in bursts, so "
                       "look at the errored seconds too.") +
               "\n";
    }

    QJsonObject withVerdict(QJsonObject answer, const ProofVerdict &verdict) const
    {
        answer.insert("poisson_lower", poissonLower(m_input));
        answer.insert("clopper_pearson_lower", clopperPearsonLower(m_input));
        answer.insert("target", *m_target);
        answer.insert("verdict", toText(verdict.proof));
        answer.insert("further_seconds", verdict.proof == Proof::NotProved
                                             ? QJsonValue(verdict.furtherSeconds)
                                             : QJsonValue());
        return answer;
    }

    BoundInput m_input;
    std::optional<double> m_target;
    qint64 m_rate = 64000;
};

} // namespace

std::unique_ptr<Command> makeAnalyseBound()
{
    return std::make_unique<AnalyseBound>();
}

} // namespace loopwright
