#include "core/acceptance/RunWords.h"

#include "core/errortest/Bounds.h"
#include "core/errortest/CountText.h"

#include <QStringList>

namespace loopwright {

QString channelsText(const QList<Channel> &channels)
{
    return channelsSaid(channels).english();
}

Text channelsSaid(const QList<Channel> &channels)
{
    QStringList words;
    for (const Channel channel : channels)
        words << toText(channel);
    words.sort();
    Text said;
    for (const QString &word : std::as_const(words))
        said = said.isEmpty() ? Text::verbatim(word)
                              : Text(QT_TRANSLATE_NOOP("core", "%1 and %2")).arg(said).arg(word);
    return said;
}

QString pathText(Path path)
{
    switch (path) {
    case Path::SelfCall:
        return "self-call";
    case Path::TestLine:
        return "test line";
    case Path::FarEnd:
        return "far end";
    case Path::NtLoop:
        return "loopback at the NT";
    }
    return {};
}

Text countsText(const ErrorSummary &summary)
{
    return Text::joined({countText(summary.bitErrors, Counted::BitError),
                         countText(summary.erroredSeconds, Counted::ErroredSecond),
                         countText(summary.severelyErroredSeconds, Counted::SeverelyErroredSecond)},
                        ", ");
}

Text countsText(const RunFact &run, const ErrorSummary &summary)
{
    Text text = countsText(summary);
    text += severelyErroredToo(run, summary);
    return text;
}

Text severelyErroredToo(const RunFact &run, const ErrorSummary &summary)
{
    if (run.seconds || !run.erroredSeconds || *run.erroredSeconds >= summary.erroredSeconds)
        return {};
    return Text(QT_TRANSLATE_NOOP("core", "(%1 errored typed; each severely errored one counts)"))
        .arg(*run.erroredSeconds);
}

} // namespace loopwright
