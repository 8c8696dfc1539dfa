#include "core/certificate/CertificateContent.h"

namespace loopwright {

namespace {

constexpr int longText = 4000;
constexpr int maxItems = 1000;
constexpr auto format = "loopwright certificate 1";

/// Each row of a list through `write`.
template<class T>
QJsonArray list(const std::vector<T> &rows, QJsonObject (*write)(const T &))
{
    QJsonArray array;
    for (const T &row : rows)
        array << write(row);
    return array;
}

template<class T>
std::vector<T> readList(JsonReader &reader, const QString &key, T (*read)(JsonReader &))
{
    std::vector<T> rows;
    const QJsonArray array = reader.array(key, maxItems);
    for (int i = 0; i < array.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item(key, i, array[i]);
        rows.push_back(read(item));
        item.done();
    }
    return rows;
}

QStringList readTexts(JsonReader &reader, const QString &key)
{
    QStringList texts;
    const QJsonArray array = reader.array(key, maxItems);
    for (int i = 0; i < array.size(); ++i) {
        if (!array[i].isString())
            reader.fail(QString("%1[%2]").arg(key).arg(i), "must be a text");
        texts << array[i].toString();
    }
    return texts;
}

QJsonObject writeLine(const CertificateLine &line)
{
    return {{"name", line.name}, {"value", line.value}};
}

CertificateLine readLine(JsonReader &reader)
{
    return {reader.text("name", longText), reader.text("value", longText)};
}

QJsonObject writeTerminal(const CertificateTerminal &terminal)
{
    return {{"terminal", terminal.number},
            {"dn", terminal.dn},
            {"dn_grouped", terminal.dnGrouped},
            {"to_key", terminal.toKey},
            {"spid", terminal.spid},
            {"spid_grouped", terminal.spidGrouped},
            {"tei", terminal.tei},
            {"services", terminal.services}};
}

CertificateTerminal readTerminal(JsonReader &reader)
{
    return {int(reader.integer("terminal", 1, 8)), reader.text("dn", longText),
            reader.text("dn_grouped", longText),   reader.text("to_key", longText),
            reader.text("spid", longText),         reader.text("spid_grouped", longText),
            reader.text("tei", longText),          reader.text("services", longText)};
}

QJsonObject writeReading(const CertificateReading &reading)
{
    return {{"what", reading.what},
            {"value", reading.value},
            {"limit", reading.limit},
            {"instrument", reading.instrument},
            {"sure", reading.sure}};
}

CertificateReading readReading(JsonReader &reader)
{
    return {reader.text("what", longText), reader.text("value", longText),
            reader.text("limit", longText), reader.text("instrument", longText),
            reader.text("sure", longText)};
}

QJsonObject writeDelivery(const CertificateDelivery &row)
{
    return {{"name", row.name}, {"ordered", row.ordered}, {"delivered", row.delivered}};
}

CertificateDelivery readDelivery(JsonReader &reader)
{
    return {reader.text("name", longText), reader.text("ordered", longText),
            reader.text("delivered", longText)};
}

QJsonObject writeCriterion(const CertificateCriterion &criterion)
{
    QJsonObject object{{"key", criterion.key},
                       {"name", criterion.name},
                       {"station", toText(criterion.station)},
                       {"outcome", toText(criterion.outcome)},
                       {"measured", criterion.measured},
                       {"limit", criterion.limit},
                       {"source", criterion.source},
                       {"meaning", criterion.meaning},
                       {"reason", criterion.reason},
                       {"class", criterion.grade},
                       {"readings", list(criterion.readings, writeReading)}};
    if (criterion.excepted)
        object.insert("excepted", QJsonObject{{"by", criterion.excepted->by},
                                              {"because", criterion.excepted->because},
                                              {"at", criterion.excepted->at.text()}});
    return object;
}

CertificateCriterion readCriterion(JsonReader &reader)
{
    CertificateCriterion criterion;
    criterion.key = reader.text("key", longText);
    criterion.name = reader.text("name", longText);
    criterion.station = reader.word<Station>("station");
    criterion.outcome = reader.word<CriterionOutcome>("outcome");
    criterion.measured = reader.text("measured", longText);
    criterion.limit = reader.text("limit", longText);
    criterion.source = reader.text("source", longText);
    criterion.meaning = reader.text("meaning", longText);
    criterion.reason = reader.text("reason", longText);
    criterion.grade = reader.text("class", longText);
    criterion.readings = readList(reader, "readings", readReading);
    if (reader.has("excepted")) {
        JsonReader child = reader.child("excepted");
        criterion.excepted = CertificateException{
            child.text("by", longText), child.text("because", longText), child.moment("at")};
        child.done();
    }
    return criterion;
}

QJsonObject writeRun(const CertificateRun &run)
{
    return {{"when", run.when},
            {"text", run.text},
            {"counts", run.counts},
            {"result", run.result},
            {"struck_out", run.struckOut},
            {"outcome", toText(run.outcome)}};
}

CertificateRun readRun(JsonReader &reader)
{
    return {reader.text("when", longText),   reader.text("text", longText),
            reader.text("counts", longText), reader.text("result", longText),
            reader.boolean("struck_out"),    reader.word<RunOutcome>("outcome")};
}

QJsonObject writeInstrument(const CertificateInstrument &instrument)
{
    QJsonObject object{
        {"instrument", instrument.key}, {"kind", instrument.kind}, {"serial", instrument.serial}};
    if (instrument.calibration)
        object.insert("calibration", instrument.calibration->toJson());
    object.insert("held", instrument.held);
    object.insert("as_labelled", instrument.asLabelled);
    return object;
}

CertificateInstrument readInstrument(JsonReader &reader)
{
    CertificateInstrument instrument{reader.text("instrument", longText),
                                     reader.text("kind", longText),
                                     reader.text("serial", longText),
                                     {},
                                     reader.boolean("held"),
                                     reader.boolean("as_labelled")};
    if (reader.has("calibration")) {
        JsonReader child = reader.child("calibration");
        instrument.calibration = Calibration::read(child);
        child.done();
    }
    return instrument;
}

/// A stroke is a flat list x, y, x, y, …
QJsonObject writeSignature(const Signature &signature)
{
    QJsonArray strokes;
    for (const std::vector<QPoint> &stroke : signature.strokes) {
        QJsonArray flat;
        for (const QPoint &point : stroke)
            flat << point.x() << point.y();
        strokes << flat;
    }
    return {{"role", signature.role},
            {"name", signature.name},
            {"at", signature.at.text()},
            {"strokes", strokes}};
}

std::vector<QPoint> readStroke(JsonReader &reader, const QString &place, const QJsonArray &flat)
{
    std::vector<QPoint> stroke;
    if (flat.size() % 2 != 0)
        reader.fail(place, "has an odd number of coordinates");
    for (int i = 0; i + 1 < flat.size(); i += 2) {
        const QPoint point(flat[i].toInt(-1), flat[i + 1].toInt(-1));
        if (point.x() < 0 || point.x() > signatureWidth || point.y() < 0 ||
            point.y() > signatureHeight)
            reader.fail(place, "has a point outside the field");
        stroke.push_back(point);
    }
    return stroke;
}

Signature readSignature(JsonReader &reader)
{
    Signature signature{
        reader.text("role", longText), reader.text("name", longText), reader.moment("at"), {}};
    const QJsonArray strokes = reader.array("strokes", 2000);
    for (int i = 0; i < strokes.size() && !reader.failed(); ++i)
        signature.strokes.push_back(
            readStroke(reader, QString("strokes[%1]").arg(i), strokes[i].toArray()));
    return signature;
}

QJsonObject writeOrder(const CertificateContent &content)
{
    return {{"order_number", content.order},
            {"order_type", content.orderType},
            {"customer", content.customer},
            {"premises", content.premises},
            {"contact", content.contact},
            {"circuit_number", content.circuit},
            {"office", content.office},
            {"kind", toText(content.kind)},
            {"protocol_variant", content.variant},
            {"protocol_variant_name", content.variantName}};
}

void readOrder(JsonReader reader, CertificateContent &content)
{
    content.order = reader.text("order_number", longText);
    content.orderType = reader.text("order_type", longText);
    content.customer = reader.text("customer", longText);
    content.premises = reader.text("premises", longText);
    content.contact = reader.text("contact", longText);
    content.circuit = reader.text("circuit_number", longText);
    content.office = reader.text("office", longText);
    content.kind = reader.word<LineKind>("kind");
    content.variant = reader.text("protocol_variant", longText);
    content.variantName = reader.text("protocol_variant_name", longText);
    reader.done();
}

QJsonObject writeCall(const CertificateCall &call)
{
    return {{"telephone", call.telephone}, {"hours", call.hours}, {"name", call.name}};
}

CertificateCall readCall(JsonReader reader)
{
    CertificateCall call{reader.text("telephone", longText), reader.text("hours", longText),
                         reader.text("name", longText)};
    reader.done();
    return call;
}

Issuer readIssuer(JsonReader reader)
{
    Issuer issuer{reader.text("name", longText), reader.text("address", longText),
                  reader.text("telephone", longText), reader.text("trouble_telephone", longText),
                  reader.text("trouble_hours", longText)};
    reader.done();
    return issuer;
}

CertificateReplaced readReplaced(JsonReader reader)
{
    CertificateReplaced replaced{reader.text("certificate", longText), reader.moment("issued_at"),
                                 readTexts(reader, "because")};
    reader.done();
    return replaced;
}

void readEvidence(JsonReader &reader, CertificateContent &content)
{
    content.criteria = readList(reader, "criteria", readCriterion);
    content.runNeeded = reader.boolean("run_needed");
    content.runs = readList(reader, "runs", readRun);
    content.decisionRule = reader.text("decision_rule", longText);
    content.proves = reader.text("proves", longText);
    content.provesPlainly = reader.text("proves_plainly", longText);
    const QJsonValue proven = reader.raw("proven");
    if (!proven.isObject())
        reader.fail("proven", "must be an object");
    content.proven = proven.toObject();
    content.notes = readTexts(reader, "notes");
    content.hazards = readTexts(reader, "hazards");
    content.late = readTexts(reader, "late");
    content.notCovered = readTexts(reader, "not_covered");
    content.mustKnow = readTexts(reader, "must_know");
    content.testedFrom = reader.text("tested_from", longText);
    content.testedTo = reader.text("tested_to", longText);
    content.installers = readTexts(reader, "installers");
    content.instruments = readList(reader, "instruments", readInstrument);
    content.signatures = readList(reader, "signatures", readSignature);
}

} // namespace

QJsonArray toJson(const Signatures &signatures)
{
    return list(signatures, writeSignature);
}

Result<Signatures> readSignatures(const QJsonArray &list, const QString &place)
{
    JsonReader reader({{"signatures", list}}, place);
    Signatures signatures = readList(reader, "signatures", readSignature);
    LOOPWRIGHT_TRY(reader.result());
    return signatures;
}

QJsonObject CertificateContent::toJson() const
{
    QJsonObject object{{"format", format},
                       {"certificate", number},
                       {"issued_at", issuedAt.text()},
                       {"outcome", toText(outcome)},
                       {"decision", decision},
                       {"limit_set", limitSet},
                       {"order", writeOrder(*this)},
                       {"service", list(service, writeLine)},
                       {"terminals", list(terminals, writeTerminal)},
                       {"settings", list(settings, writeLine)},
                       {"criteria", list(criteria, writeCriterion)},
                       {"run_needed", runNeeded},
                       {"runs", list(runs, writeRun)},
                       {"proves", proves},
                       {"proves_plainly", provesPlainly},
                       {"proven", proven},
                       {"notes", QJsonArray::fromStringList(notes)},
                       {"hazards", QJsonArray::fromStringList(hazards)},
                       {"late", QJsonArray::fromStringList(late)},
                       {"not_covered", QJsonArray::fromStringList(notCovered)},
                       {"must_know", QJsonArray::fromStringList(mustKnow)},
                       {"issuer", issuer.toJson()},
                       {"call", writeCall(call)},
                       {"delivery", list(delivery, writeDelivery)},
                       {"decision_rule", decisionRule},
                       {"tested_from", testedFrom},
                       {"tested_to", testedTo},
                       {"installers", QJsonArray::fromStringList(installers)},
                       {"instruments", list(instruments, writeInstrument)},
                       {"signatures", loopwright::toJson(signatures)}};
    if (replaces)
        object.insert("replaces",
                      QJsonObject{{"certificate", replaces->number},
                                  {"issued_at", replaces->issuedAt.text()},
                                  {"because", QJsonArray::fromStringList(replaces->because)}});
    return object;
}

Result<CertificateContent> CertificateContent::fromJson(const QJsonObject &object,
                                                        const QString &place)
{
    JsonReader reader(object, place);
    CertificateContent content;
    if (reader.text("format", longText) != QLatin1StringView(format))
        reader.fail("format", "is not a certificate that this program can read");
    content.number = reader.text("certificate", longText);
    content.issuedAt = reader.moment("issued_at");
    content.outcome = reader.word<OrderOutcome>("outcome");
    content.decision = reader.text("decision", longText);
    content.limitSet = reader.text("limit_set", longText);
    readOrder(reader.child("order"), content);
    content.service = readList(reader, "service", readLine);
    content.terminals = readList(reader, "terminals", readTerminal);
    content.settings = readList(reader, "settings", readLine);
    content.delivery = readList(reader, "delivery", readDelivery);
    content.issuer = readIssuer(reader.child("issuer"));
    content.call = readCall(reader.child("call"));
    if (reader.has("replaces"))
        content.replaces = readReplaced(reader.child("replaces"));
    readEvidence(reader, content);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    // Its digest is signed: what says the same otherwise (a time without seconds) is another one.
    if (content.record() != canonicalJson(object))
        return failure(ErrorCode::BadInput, "is not written as a certificate is", place);
    return content;
}

} // namespace loopwright
