#include "core/acceptance/RunWords.h"

#include <QStringList>

namespace loopwright {

QString channelsText(const QList<Channel> &channels)
{
    QStringList words;
    for (const Channel channel : channels)
        words << toText(channel);
    words.sort();
    return words.join(" and ");
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

QString countsText(const ErrorSummary &summary)
{
    const auto many = [](qint64 count, const char *one) {
        return QString("%1 %2%3").arg(count).arg(one, count == 1 ? "" : "s");
    };
    return QStringList{many(summary.bitErrors, "bit error"),
                       many(summary.erroredSeconds, "errored second"),
                       many(summary.severelyErroredSeconds, "severely errored second")}
        .join(", ");
}

} // namespace loopwright
