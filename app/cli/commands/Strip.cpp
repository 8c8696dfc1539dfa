#include "app/cli/commands/Strip.h"

#include "app/cli/Files.h"
#include "app/cli/Picture.h"
#include "app/cli/SecondsInput.h"
#include "app/print/SecondsStrip.h"

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
        options.integer("--rate", m_rate, 1, 1'000'000'000, "Bits per second (else 64000)");
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
        const StripData data{seconds, marks, m_rate, m_planned, running};
        LOOPWRIGHT_TRY(writePicture(
            m_out, {[&data] { return stripPng(data); }, [&data] { return stripSvg(data); }}));
        return Answer::of(QJsonObject{{"picture", m_out}, {"seconds", qint64(seconds.size())}},
                          m_out + "\n");
    }

private:
    QString m_file, m_out;
    qint64 m_rate = 64000;
    qint64 m_planned = 0;
};

} // namespace

std::unique_ptr<Command> makeStrip()
{
    return std::make_unique<StripPicture>();
}

} // namespace loopwright
