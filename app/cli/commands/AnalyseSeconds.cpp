#include "app/cli/commands/AnalyseSeconds.h"

#include "app/cli/Files.h"
#include "app/cli/MapFile.h"
#include "app/cli/SecondsInput.h"
#include "app/cli/SummaryText.h"

namespace loopwright {

namespace {

class AnalyseSeconds : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file,
                     "CSV with the columns second, bit_errors and, if wanted, sync_lost",
                     Given::Always);
        options.integer("--rate", m_rate, 1, 1'000'000'000, "Bits per second", Given::Always);
        options.texts("--ignore", m_ignored, "An unknown column that may stand in the file");
        options.text("--map", m_map, mapHelp);
    }

    Result<Answer> run(CommandContext &) override
    {
        LOOPWRIGHT_ASSIGN(const auto map, readMapFile(m_map, m_file));
        LOOPWRIGHT_ASSIGN(const auto bytes, readFile(m_file));
        LOOPWRIGHT_ASSIGN(const auto file,
                          readSecondsFile(bytes, fileNameOf(m_file), m_rate, m_ignored, map));
        if (!file.findings.empty())
            return refusedSeconds(file, fileNameOf(m_file));
        const ErrorSummary summary = evaluateSeconds(file.seconds, m_rate);
        return Answer::of(summary.toJson(), summaryText(summary));
    }

private:
    QString m_file, m_map;
    qint64 m_rate = 64000;
    QStringList m_ignored;
};

} // namespace

std::unique_ptr<Command> makeAnalyseSeconds()
{
    return std::make_unique<AnalyseSeconds>();
}

} // namespace loopwright
