#include "core/history/Event.h"

#include "core/base/Json.h"

#include <charconv>

namespace loopwright {

QJsonObject Event::toJson() const
{
    return {{"subject", subject},
            {"order", order},
            {"by", by},
            {"at", at.text()},
            {"kind", kind},
            {"recorded_at", recordedAt.text()},
            {"detail", detail},
            {"sequence", sequence},
            {"previous", previous},
            {"digest", digest},
            {"log_digest", logDigest},
            {"log_position", logPosition}};
}

QJsonObject Event::chainJson() const
{
    QJsonObject object = toJson();
    object.remove("log_digest");
    object.remove("log_position");
    return object;
}

Event Event::readChain(JsonReader &reader)
{
    Event event;
    event.subject = reader.filledText("subject", 300);
    event.order = reader.text("order");
    event.by = reader.filledText("by");
    event.at = reader.moment("at");
    event.recordedAt = reader.moment("recorded_at");
    event.kind = reader.filledText("kind");
    event.detail = reader.raw("detail").toObject();
    event.sequence = reader.integer("sequence", 1, 1'000'000'000);
    event.previous = reader.text("previous");
    event.digest = reader.filledText("digest");
    return event;
}

QString Event::computedDigest() const
{
    const QByteArray texts[] = {subject.toUtf8(),
                                order.toUtf8(),
                                by.toUtf8(),
                                at.storedText().toUtf8(),
                                recordedAt.storedText().toUtf8(),
                                kind.toUtf8(),
                                canonicalJson(detail),
                                previous.toUtf8()};
    QByteArray bytes;
    EventBytes{texts[0], texts[1], texts[2], texts[3],         texts[4],
               texts[5], texts[6], texts[7], at.offsetSeconds, recordedAt.offsetSeconds,
               sequence}
        .appendTo(bytes);
    return sha256Hex(bytes);
}

void EventBytes::appendTo(QByteArray &bytes) const
{
    const auto text = [&bytes](const char *key, QByteArrayView value) {
        bytes += key;
        appendCanonicalText(bytes, value);
    };
    const auto number = [&bytes](const char *key, qint64 value) {
        char digits[24];
        const auto end = std::to_chars(digits, digits + sizeof digits, value).ptr;
        bytes += key;
        bytes.append(digits, end - digits);
    };
    text("{\"at\":", atUtc);
    number(",\"at_offset\":", atOffset);
    text(",\"by\":", by);
    bytes += ",\"detail\":";
    bytes += detail;
    text(",\"kind\":", kind);
    text(",\"order\":", order);
    text(",\"previous\":", previous);
    text(",\"recorded_at\":", recordedUtc);
    number(",\"recorded_offset\":", recordedOffset);
    number(",\"sequence\":", sequence);
    text(",\"subject\":", subject);
    bytes += '}';
}

void Event::addSeals(const std::vector<Seal> &seals)
{
    if (seals.empty())
        return;
    QJsonArray list = detail.value("seals").toArray();
    for (const Seal &seal : seals)
        list << QJsonObject{{"row", seal.row}, {"id", seal.id}, {"digest", seal.digest}};
    detail.insert("seals", list);
}

std::vector<Seal> Event::seals() const
{
    std::vector<Seal> found;
    for (const QJsonValue value : detail.value("seals").toArray())
        found.push_back(
            {value["row"].toString(), value["id"].toString(), value["digest"].toString()});
    return found;
}

QString circuitSubject(const QString &circuitNumber)
{
    return "circuit:" + circuitNumber;
}

QString registerSubject()
{
    return QStringLiteral("register");
}

} // namespace loopwright
