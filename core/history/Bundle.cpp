#include "core/history/Bundle.h"

#include "core/base/Json.h"

#include <algorithm>

namespace loopwright {

namespace {

// Far above what any order has, and below what would fill the memory.
constexpr int mostOrders = 10'000;
constexpr int mostOfAnOrder = 100'000;

QString textOf(const QByteArray &utf8)
{
    return QString::fromUtf8(utf8);
}

QJsonObject toJson(const BundledFact &fact)
{
    return {{"content", textOf(fact.content)}, {"station", fact.station}, {"pair", fact.pair}};
}

QJsonObject toJson(const BundledDecision &decision)
{
    return {{"decision", decision.id},         {"outcome", decision.outcome},
            {"limit_set", decision.limitSet},  {"at", decision.at.text()},
            {"input", textOf(decision.input)}, {"result", textOf(decision.result)}};
}

QJsonObject toJson(const BundledCertificate &certificate)
{
    QJsonArray issues;
    for (const BundledIssue &issue : certificate.issues)
        issues << QJsonObject{
            {"file_sha256", issue.fileSha256}, {"paper", issue.paper}, {"at", issue.at.text()}};
    return {{"number", certificate.number},         {"decision", certificate.decision},
            {"at", certificate.at.text()},          {"content", textOf(certificate.content)},
            {"claims", textOf(certificate.claims)}, {"issues", issues}};
}

QJsonObject toJson(const ForeignEvent &foreign)
{
    QJsonObject object = foreign.event.chainJson();
    object.insert("station", foreign.station);
    return object;
}

QJsonObject toJson(const BundledOrder &order);

template<class Items>
QJsonArray listOf(const Items &items)
{
    QJsonArray list;
    for (const auto &item : items)
        list << toJson(item);
    return list;
}

QJsonObject toJson(const BundledOrder &order)
{
    return {{"order", order.number},
            {"uuid", order.uuid},
            {"circuit", order.circuit},
            {"circuit_uuid", order.circuitUuid},
            {"status", order.status},
            {"content", textOf(order.content)},
            {"base", textOf(order.base)},
            {"events", listOf(order.events)},
            {"facts", listOf(order.facts)},
            {"decisions", listOf(order.decisions)},
            {"certificates", listOf(order.certificates)},
            {"seen", QJsonArray::fromStringList(order.seen)},
            {"with", QJsonArray::fromStringList(order.with)},
            {"undecided", QJsonArray::fromStringList(order.undecided)}};
}

/// Stored content: read again, with its own bounds, by whoever takes it in.
QByteArray content(JsonReader &reader, const QString &key)
{
    const QJsonValue value = reader.raw(key);
    if (!value.isString())
        reader.fail(key, "is no text");
    return value.toString().toUtf8();
}

template<class Read>
auto readList(JsonReader &reader, const QString &key, int most, const Read &read)
{
    std::vector<decltype(read(reader))> list;
    const QJsonArray items = reader.array(key, most);
    for (int i = 0; i < items.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item(key, i, items[i]);
        list.push_back(read(item));
        item.done();
    }
    return list;
}

QStringList readTexts(JsonReader &reader, const QString &key)
{
    QStringList texts;
    for (const QJsonValue &value : reader.array(key, mostOfAnOrder)) {
        if (!value.isString() || value.toString().size() > 100)
            reader.fail(key, "holds something that is no name");
        texts << value.toString();
    }
    return texts;
}

ForeignEvent readEvent(JsonReader &reader)
{
    const QString station = reader.filledText("station", 6);
    return {station, Event::readChain(reader)};
}

BundledFact readFact(JsonReader &reader)
{
    return {content(reader, "content"), reader.text("station"), reader.text("pair")};
}

BundledDecision readDecision(JsonReader &reader)
{
    return {reader.filledText("decision"),  reader.filledText("outcome"),
            reader.filledText("limit_set"), reader.moment("at"),
            content(reader, "input"),       content(reader, "result")};
}

BundledIssue readIssue(JsonReader &reader)
{
    return {reader.filledText("file_sha256"), reader.filledText("paper"), reader.moment("at")};
}

BundledCertificate readCertificate(JsonReader &reader)
{
    return {reader.filledText("number"), reader.filledText("decision"),
            reader.moment("at"),         content(reader, "content"),
            content(reader, "claims"),   readList(reader, "issues", 1000, readIssue)};
}

/// As programs write it, or the bundle would be another one when it is written again.
QString plainUuid(JsonReader &reader, const QString &key)
{
    const QString id = reader.uuid(key);
    if (!id.isEmpty() && reader.raw(key).toString() != id)
        reader.fail(key, "is not in small letters");
    return id;
}

BundledOrder readOrder(JsonReader &reader)
{
    BundledOrder order;
    order.number = reader.filledText("order");
    order.uuid = plainUuid(reader, "uuid");
    order.circuit = reader.filledText("circuit");
    order.circuitUuid = plainUuid(reader, "circuit_uuid");
    order.status = reader.filledText("status");
    order.content = content(reader, "content");
    order.base = content(reader, "base");
    order.events = readList(reader, "events", mostOfAnOrder, readEvent);
    order.facts = readList(reader, "facts", mostOfAnOrder, readFact);
    order.decisions = readList(reader, "decisions", mostOfAnOrder, readDecision);
    order.certificates = readList(reader, "certificates", 1000, readCertificate);
    order.seen = readTexts(reader, "seen");
    order.with = readTexts(reader, "with");
    order.undecided = readTexts(reader, "undecided");
    return order;
}

ToldLog readLog(JsonReader &reader)
{
    JsonReader child = reader.child("log");
    const ToldLog log{child.integer("from", 1, 1'000'000'000),
                      QString::fromUtf8(content(child, "digests"))};
    if (log.digests.size() % ToldLog::digits != 0)
        child.fail("digests", "is cut");
    child.done();
    return log;
}

} // namespace

qint64 ToldLog::partsFrom(const QString &known) const
{
    const qint64 end = std::min<qint64>(last(), known.size() / digits);
    for (qint64 place = from; place <= end; ++place)
        if (QStringView(known).mid((place - 1) * digits, digits) !=
            QStringView(digests).mid((place - from) * digits, digits))
            return place;
    return 0;
}

QString ToldLog::continuing(const QString &known) const
{
    const qint64 here = known.size() / digits;
    return from > here + 1 || last() <= here ? known : known.left((from - 1) * digits) + digests;
}

QJsonObject Bundle::toJson() const
{
    QJsonObject object{{"form", form},
                       {"kind", toText(kind)},
                       {"station", station},
                       {"issuer", issuer},
                       {"part", part},
                       {"parts", parts},
                       {"orders", listOf(orders)},
                       {"answers", QJsonArray::fromStringList(answers)},
                       {"keep", keep},
                       {"keys", keys},
                       {"registers", registers},
                       {"test_lines", testLines}};
    if (!log.digests.isEmpty())
        object.insert("log", QJsonObject{{"from", log.from}, {"digests", log.digests}});
    return object;
}

Result<Bundle> Bundle::fromJson(const QJsonObject &object, const QString &place)
{
    JsonReader reader(object, place);
    Bundle bundle;
    if (reader.integer("form", 0, 1'000'000) != form && !reader.failed())
        reader.fail("form", "is a form of bundle that this program does not know");
    bundle.kind = reader.word<BundleKind>("kind");
    bundle.station = reader.filledText("station", 6);
    bundle.issuer = reader.text("issuer");
    bundle.part = int(reader.integer("part", 1, mostOrders));
    bundle.parts = int(reader.integer("parts", 1, mostOrders));
    bundle.orders = readList(reader, "orders", mostOrders, readOrder);
    bundle.answers = readTexts(reader, "answers");
    bundle.keep = reader.boolean("keep");
    bundle.keys = QString::fromUtf8(content(reader, "keys"));
    bundle.registers = reader.raw("registers").toObject();
    bundle.testLines = QString::fromUtf8(content(reader, "test_lines"));
    if (reader.has("log"))
        bundle.log = readLog(reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return bundle;
}

} // namespace loopwright
