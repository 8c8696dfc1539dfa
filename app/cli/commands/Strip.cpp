#include "app/cli/commands/Strip.h"

#include "app/cli/Files.h"
#include "app/cli/LimitsFile.h"
#include "app/cli/Picture.h"
#include "app/cli/SecondsInput.h"
#include "app/print/SecondsStrip.h"
#include "core/acceptance/Judging.h"
#include "core/acceptance/RunWords.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

class StripPicture : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file,
                     "CSV with the columns second, bit_errors and, if wanted, sync_lost",
                     Given::Always);
        options.text("--out", m_out, "The picture: F.svg or F.png", Given::Always);
        options.word("--format", m_format, pictureFormats(),
                     "png or svg (else as the name of the picture ends)");
        options.integer("--rate", m_rate, 1, 1'000'000'000, "Bits per second (else 64000)");
        options.text("--order", m_order, "The order that stands in the title");
        options.moment("--started", m_started, "When the run began; stands in the title");
        options.text("--limits", m_limits,
                     "Judges by the set in this file (else by the program's newest)");
        options.integer("--planned", m_planned, 1, 1'000'000, "Seconds that the run was to last");
    }

    Result<Answer> run(CommandContext &) override
    {
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(m_file));
        LOOPWRIGHT_ASSIGN(const auto file, readSecondsFile(bytes, fileNameOf(m_file), m_rate));
        if (!file.findings.empty())
            return refusedSeconds(file, fileNameOf(m_file));
        const SecondList &seconds = file.seconds;
        const auto marks = classify(seconds, m_rate);
        const bool running = m_planned > qint64(seconds.size());
        StripData data{seconds, marks, m_rate, m_planned, running};
        data.title = title(qint64(seconds.size()));
        LOOPWRIGHT_ASSIGN(data.verdict, verdict(seconds));
        LOOPWRIGHT_TRY(
            writePicture(m_out, m_format,
                         {[&data] { return stripPng(data); }, [&data] { return stripSvg(data); }}));
        return Answer::of(QJsonObject{{"picture", m_out}, {"seconds", qint64(seconds.size())}},
                          m_out + "\n");
    }

private:
    QString title(qint64 seconds) const
    {
        // A file does not say whose it is: who gives the order does.
        QStringList parts{"Error test, data of " + fileNameOf(m_file)};
        if (!m_order.isEmpty())
            parts << QString("order %1 as given").arg(m_order);
        if (m_started)
            parts << paperTimes(*m_started, m_started->plusSeconds(double(seconds)));
        return parts.join(", ");
    }

    /// What the limits say of these seconds alone.
    Result<QString> verdict(const SecondList &seconds) const
    {
        LOOPWRIGHT_ASSIGN(const auto limits, limitsToJudgeBy(m_limits));
        RunFact run;
        run.rate = m_rate;
        RunEvaluation evaluation;
        evaluation.summary = evaluateSeconds(seconds, m_rate);
        const QString over = overLimits(run, evaluation, limits).english();
        if (!over.isEmpty())
            return "Over its error limits: " + over;
        if (double(seconds.size()) < limits.value("run_seconds_min"))
            return QString("Within its error limits so far; a run lasts at least %1 s")
                .arg(limits.value("run_seconds_min"));
        return "Within its error limits: " + countsText(evaluation.summary).english();
    }

    QString m_file, m_out, m_format, m_order, m_limits;
    std::optional<Moment> m_started;
    qint64 m_rate = 64000;
    qint64 m_planned = 0;
};

} // namespace

std::unique_ptr<Command> makeStrip()
{
    return std::make_unique<StripPicture>();
}

} // namespace loopwright
