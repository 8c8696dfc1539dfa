#include "core/history/StationLog.h"

#include "core/base/Json.h"

#include <limits>

namespace loopwright {

namespace {

constexpr int digestLength = 64;

} // namespace

QByteArray LogHead::text() const
{
    return QString("Loopwright log\nstation %1\nposition %2\ndigest %3\ntime %4\n")
        .arg(station, QString::number(position), digest, at.storedText())
        .toUtf8();
}

QString LogHead::paperText() const
{
    return QString("Log of station %1 at event %2: %3")
        .arg(station, QString::number(position), digest);
}

QJsonObject LogHead::toJson() const
{
    return {{"station", station},
            {"position", position},
            {"digest", digest},
            {"time", at.storedText()}};
}

Result<LogHead> LogHead::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    LogHead head{reader.text("station"),
                 reader.integer("position", 0, std::numeric_limits<int>::max()),
                 reader.text("digest", digestLength), reader.moment("time")};
    if (!reader.failed() && head.position > 0 && head.digest.size() != digestLength)
        reader.fail("digest", "must have 64 hexadecimal digits");
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return head;
}

void LogLink::appendTo(QByteArray &bytes) const
{
    bytes += station;
    bytes += ' ' + QByteArray::number(position) + '\n';
    bytes += before;
    bytes += '\n';
    bytes += digest;
    bytes += '\n';
    bytes += sealed;
}

} // namespace loopwright
