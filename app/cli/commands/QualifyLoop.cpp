#include "app/cli/commands/QualifyLoop.h"

#include "app/cli/Layout.h"
#include "app/cli/LimitsFile.h"
#include "app/cli/LoopFile.h"
#include "core/loop/LoopComparison.h"
#include "core/loop/Remedies.h"

#include <cmath>

namespace loopwright {

namespace {

QJsonArray mendsJson(const std::vector<Remedy> &mends)
{
    QJsonArray array;
    for (const Remedy &mend : mends)
        array.append(QJsonObject{{"text", mend.text.english()},
                                 {"loss_after_db", mend.lossAfterDb},
                                 {"loss_gain_db", mend.lossGainDb},
                                 {"dc_resistance_after_ohm", mend.dcResistanceAfterOhm},
                                 {"verdict_after", toText(mend.verdictAfter)}});
    return array;
}

class QualifyLoop : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "The make-up: a loop.json, or CSV", Given::Always);
        options.number("--frequency", m_frequencyHz, 20, 1e7,
                       "Where the loss is told, in Hz (else where the limit set judges it)");
        options.text("--ohms", m_ohms, "Between which resistances: R, or SOURCE,LOAD (else 135)");
        options.number("--measured-resistance", m_measuredOhm, 0, 1e6,
                       "DC resistance that was measured, in ohm: tells whether the make-up agrees");
        options.number("--measured-loss", m_measuredLossDb, -50, 1000,
                       "Loss that was measured there, in dB: tells whether the make-up agrees");
        options.text("--limits", m_limits,
                     "Judges by the limit set in this file (else by the newest of the program)");
    }

    Result<Answer> run(CommandContext &) override
    {
        LOOPWRIGHT_ASSIGN(const auto between, terminationsFromText(m_ohms));
        LOOPWRIGHT_ASSIGN(const auto makeup, readLoopFile(m_file));
        LOOPWRIGHT_ASSIGN(const auto limits, limitsToJudgeBy(m_limits));
        const LoopQualification judged = qualify(makeup, limits);
        LoopResponse asked{m_frequencyHz > 0 ? m_frequencyHz : judged.frequencyHz, 0, 0, 0};
        asked.lossDb = insertionLossDb(makeup, asked.frequencyHz, between);
        const auto better = remedies(makeup, limits);

        // The verdict is always that of the loss where it is judged; what was asked for is shown.
        QJsonObject json = judged.toJson();
        json.insert("insertion_loss_db", asked.lossDb);
        json.insert("frequency_hz", asked.frequencyHz);
        json.insert("source_ohm", between.sourceOhm);
        json.insert("load_ohm", between.loadOhm);
        json.insert("judged_loss_db", judged.insertionLossDb);
        json.insert("judged_frequency_hz", judged.frequencyHz);
        json.insert("limit_set", limits.version());
        json.insert("mends", mendsJson(better));
        QString against;
        if (const MeasuredLoop seen = measured(asked.frequencyHz, between);
            seen.dcResistanceOhm || !seen.losses.empty()) {
            const LoopComparison comparison = compareLoop(makeup, seen, limits);
            json.insert("comparison", comparison.toJson());
            against = comparison.why.english();
        }
        return Answer::of(json, text(judged, asked, between, better, against, limits.version()),
                          judged.verdict != Suitability::NotSuitable);
    }

private:
    MeasuredLoop measured(double frequencyHz, const Terminations &between) const
    {
        MeasuredLoop seen;
        if (!std::isnan(m_measuredOhm))
            seen.dcResistanceOhm = m_measuredOhm;
        if (!std::isnan(m_measuredLossDb))
            seen.losses.push_back({frequencyHz, m_measuredLossDb, between});
        return seen;
    }
    static QString text(const LoopQualification &judged, const LoopResponse &asked,
                        const Terminations &between, const std::vector<Remedy> &mends,
                        const QString &against, const QString &limitSet)
    {
        LabelledLines lines;
        lines.add("Verdict", toText(judged.verdict).replace('_', ' '))
            .add("Insertion loss", QString("%1 dB at %2 kHz between %3 and %4 ohm")
                                       .arg(asked.lossDb, 0, 'f', 2)
                                       .arg(asked.frequencyHz / 1000)
                                       .arg(between.sourceOhm)
                                       .arg(between.loadOhm))
            .add("DC resistance", QString("%1 ohm").arg(judged.dcResistanceOhm, 0, 'f', 1))
            .add("Working length", QString("%1 ft").arg(judged.workingLengthFt, 0, 'f', 0))
            .add("Bridged taps", QString("%1 ft").arg(judged.bridgedTapFt, 0, 'f', 0))
            .add("Load coils", QString::number(judged.loadCoils));
        for (const Text &reason : judged.reasons)
            lines.add("Reason", reason.english());
        for (const Remedy &mend : mends)
            lines.add("Would help", QString("%1: then %2 dB, %3")
                                        .arg(mend.text.english())
                                        .arg(mend.lossAfterDb, 0, 'f', 2)
                                        .arg(toText(mend.verdictAfter).replace('_', ' ')));
        lines.add("Against the make-up", against).add("Judged by", "limit set " + limitSet);
        return lines.text();
    }

    QString m_file, m_ohms, m_limits;
    double m_frequencyHz = 0;
    double m_measuredOhm = std::nan(""); // not given
    double m_measuredLossDb = std::nan("");
};

} // namespace

std::unique_ptr<Command> makeQualifyLoop()
{
    return std::make_unique<QualifyLoop>();
}

} // namespace loopwright
