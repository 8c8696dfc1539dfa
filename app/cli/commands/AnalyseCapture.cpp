#include "app/cli/commands/AnalyseCapture.h"

#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "app/cli/SummaryText.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/Capture.h"
#include "core/errortest/CountText.h"

namespace loopwright {

namespace {

constexpr qint64 pieceOctets = 1 << 20;
const QString anyPattern = QStringLiteral("auto");

class AnalyseCapture : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("file", m_file, "Raw octets of one B channel", Given::Always);
        options.word("--pattern", m_pattern, allWords<PatternKey>() + QStringList(anyPattern),
                     "The pattern that was sent: prbs9, prbs11, prbs15, prbs20, qrss20, prbs23; "
                     "auto finds it, and the rate and the order of the bits unless they are said");
        options.integer("--rate", m_rate, 1, 1'000'000,
                        "56000, 64000 (else), 112000 or 128000 bit/s");
        options.flag("--lsb-first", m_lsbFirst, "The first bit sent is the least significant one");
        options.flag("--find", m_find, "Find out the rate and the order of the bits");
    }

    Result<Answer> run(CommandContext &context) override
    {
        if (m_pattern.isEmpty() && !m_find)
            return failure(ErrorCode::Usage, "say which pattern was sent, or auto to have it found",
                           "--pattern");
        m_find = m_find || m_pattern == anyPattern;
        LOOPWRIGHT_ASSIGN(auto analyser, CaptureAnalyser::make(captureOptions()));
        LOOPWRIGHT_ASSIGN(const auto octets, feed(analyser, context.progress("analysing")));
        const CaptureResult result = analyser.finish();
        return Answer::of(result.toJson(), text(result) + shortness(octets, result),
                          result.found.has_value());
    }

private:
    CaptureOptions captureOptions() const
    {
        CaptureOptions options;
        options.pattern = fromText<PatternKey>(m_pattern);
        if (m_rate != 0)
            options.rate = m_rate;
        else if (!m_find)
            options.rate = 64000;
        if (m_lsbFirst)
            options.order = BitOrder::LsbFirst;
        else if (!m_find)
            options.order = BitOrder::MsbFirst;
        return options;
    }

    /// Returns how many octets the file holds.
    Result<qint64> feed(CaptureAnalyser &analyser, const Progress &progress) const
    {
        QFile file;
        LOOPWRIGHT_TRY(openInput(file, m_file));
        QByteArray piece(pieceOctets, Qt::Uninitialized);
        qint64 done = 0;
        for (;;) {
            const qint64 got = file.read(piece.data(), piece.size());
            if (got < 0)
                return failure(ErrorCode::BadInput, "cannot be read: " + file.errorString(),
                               m_file);
            if (got == 0)
                return done;
            analyser.feed(QByteArrayView(piece.constData(), got));
            done += got;
            if (progress && !progress(done, file.size()))
                return failure(ErrorCode::Refused, "The analysis was stopped.");
        }
    }

    static QString text(const CaptureResult &result)
    {
        QString text = wrapped(result.sentence()) + "\n";
        if (!result.found)
            return text;
        text += QString("Synchronised at bit %1\n").arg(*result.synchronisedAtBit);
        text += summaryText(result.summary);
        for (const SyncLoss &loss : result.losses)
            text += wrapped(result.lossSentence(loss)) + "\n";
        for (const Slip &slip : result.slips)
            text += QString("Slip in second %1: %2 %3\n")
                        .arg(slip.second)
                        .arg(countText(std::abs(slip.bits), Counted::Bit).english())
                        .arg(slip.bits > 0 ? "lost" : "put in");
        if (!result.slips.empty())
            text += "A slip is told apart: it makes no bit error and no errored second above.\n";
        return text;
    }

    /// Why there is no second to count; empty if there is one.
    QString shortness(qint64 octets, const CaptureResult &result) const
    {
        const qint64 rate = result.found ? result.found->rate : m_rate;
        const qint64 octetsOfSecond = rate > 64000 ? 16000 : 8000; // two B channels together
        if (octets == 0 || octets >= octetsOfSecond)
            return {};
        return wrapped(QString("The file is shorter than one second: %1, and a second has %2. Only "
                               "whole seconds are counted.")
                           .arg(countText(octets, Counted::Octet).english())
                           .arg(octetsOfSecond)) +
               "\n";
    }

    QString m_file, m_pattern;
    qint64 m_rate = 0;
    bool m_lsbFirst = false;
    bool m_find = false;
};

} // namespace

std::unique_ptr<Command> makeAnalyseCapture()
{
    return std::make_unique<AnalyseCapture>();
}

} // namespace loopwright
