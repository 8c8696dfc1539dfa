// The schemas in resources/schemas say of each file what the program says of it, as far as a schema
// can: each row is read by the program and validated against the schema, and both must agree.

#include "core/acceptance/Fact.h"

#include <QJsonDocument>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

namespace {

constexpr int notInstalled = 77;

/// What the schema says of a key beside what its row in the table can say.
const QMap<QString, QList<const char *>> beyondTheTable{{"run.rate", {"anyOf"}},
                                                        {"changed.to", {"pattern"}}};

const QJsonObject jobRecordDefinitions()
{
    QFile file(LOOPWRIGHT_SOURCE_DIR "/resources/schemas/job-record.schema.json");
    if (!file.open(QIODevice::ReadOnly))
        qFatal("cannot read");
    return QJsonDocument::fromJson(file.readAll()).object()["$defs"].toObject();
}

bool programTakesRecord(const QByteArray &json)
{
    const auto object = parseJsonObject(json, "record.json");
    return object && readJobRecord(*object, "record.json", [] { return QString("x"); });
}

bool programTakesLoop(const QByteArray &json)
{
    const auto object = parseJsonObject(json, "loop.json");
    return object && LoopMakeup::fromJson(*object, "loop.json");
}

/// A schema with what it refers to within the file put in its place; what stands beside a reference
/// stays. Descriptions are left out.
QJsonObject resolved(const QJsonObject &definitions, QJsonObject schema)
{
    const QString reference = schema.value("$ref").toString();
    if (reference.startsWith("#/$defs/")) {
        schema.remove("$ref");
        QJsonObject whole = resolved(definitions, definitions[reference.mid(8)].toObject());
        for (auto at = schema.begin(); at != schema.end(); ++at)
            whole.insert(at.key(), at.value());
        schema = whole;
    }
    schema.remove("description");
    if (schema.value("items").isObject())
        schema["items"] = resolved(definitions, schema["items"].toObject());
    return schema;
}

/// The schema of each key of a kind, those of objects within it as "ac_v.tip_ground"; `required`
/// has the keys that an object must have.
void collect(const QJsonObject &definitions, const QJsonObject &object, const QString &before,
             QMap<QString, QJsonObject> &keys, QStringList &required)
{
    for (const QJsonValue &key : object["required"].toArray())
        required << before + key.toString();
    const QJsonObject properties = object["properties"].toObject();
    for (auto at = properties.begin(); at != properties.end(); ++at) {
        const QJsonObject schema = resolved(definitions, at.value().toObject());
        if (schema["properties"].isObject()) {
            QCOMPARE(schema["type"].toString(), "object");
            QCOMPARE(schema["additionalProperties"], QJsonValue(false));
            collect(definitions, schema, before + at.key() + '.', keys, required);
        } else if (at.key() != "kind") {
            keys.insert(before + at.key(), schema);
        }
    }
}

QJsonObject listOf(const FactField &field, const QJsonObject &item)
{
    QJsonObject schema{{"type", "array"}, {"items", item}};
    if (field.required)
        schema["minItems"] = 1;
    if (field.maxLength > 0)
        schema["maxItems"] = field.maxLength;
    if (field.type != FieldType::Seconds)
        schema["uniqueItems"] = true;
    return schema;
}

/// What the schema must say of a field.
QJsonObject schemaOf(const QJsonObject &definitions, const FactField &field)
{
    const auto defined = [&definitions](const char *name) {
        return resolved(definitions, definitions[QLatin1StringView(name)].toObject());
    };
    QJsonObject schema;
    switch (field.type) {
    case FieldType::Number:
        return {{"type", "number"}, {"minimum", field.minimum}, {"maximum", field.maximum}};
    case FieldType::Whole:
        return {{"type", "integer"}, {"minimum", field.minimum}, {"maximum", field.maximum}};
    case FieldType::YesNo:
        return {{"type", "boolean"}};
    case FieldType::Word:
        return {{"enum", QJsonArray::fromStringList(field.words())}};
    case FieldType::Words:
        return listOf(field, {{"enum", QJsonArray::fromStringList(field.words())}});
    case FieldType::Text:
        schema = {{"type", "string"}, {"maxLength", field.maxLength}};
        if (field.required)
            schema["pattern"] = "\\S";
        return schema;
    case FieldType::Moment:
        return defined("moment");
    case FieldType::Uuid:
        return defined("uuid");
    case FieldType::Uuids:
        return listOf(field, defined("uuid"));
    case FieldType::Seconds:
        return listOf(field, {{"anyOf", QJsonArray{QJsonObject{{"type", "integer"},
                                                               {"minimum", field.minimum},
                                                               {"maximum", field.maximum}},
                                                   QJsonObject{{"type", "null"}}}}});
    case FieldType::Makeup:
        return {{"$ref", "loop.schema.json"}};
    case FieldType::Value:
        return {{"type", QJsonArray{"number", "boolean"}}};
    }
    return {};
}

} // namespace

class SchemasTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    /// What the validator says of each text.
    QStringList validated(const QString &schema, const QList<QByteArray> &texts)
    {
        QStringList words{LOOPWRIGHT_SOURCE_DIR "/resources/schemas/" + schema};
        for (qsizetype i = 0; i < texts.size(); ++i) {
            QFile file(m_folder.filePath(QString::number(i)));
            if (!file.open(QIODevice::WriteOnly) || file.write(texts[i]) != texts[i].size())
                qFatal("cannot write");
            words << file.fileName();
        }
        QProcess program;
        program.start(LOOPWRIGHT_SOURCE_DIR "/tests/validate-json", words);
        if (!program.waitForFinished() || program.exitCode() == notInstalled)
            return {};
        return QString(program.readAllStandardOutput()).split('\n', Qt::SkipEmptyParts);
    }

    void compare(const QString &schema, bool (*programTakes)(const QByteArray &),
                 const QList<QByteArray> &texts, bool expected)
    {
        const QStringList verdicts = validated(schema, texts);
        if (verdicts.isEmpty())
            QSKIP("python3-jsonschema is not installed");
        QCOMPARE(verdicts.size(), texts.size());
        for (qsizetype i = 0; i < texts.size(); ++i) {
            QVERIFY2(programTakes(texts[i]) == expected, texts[i].constData());
            QVERIFY2((verdicts[i] == "valid") == expected, texts[i].constData());
        }
    }

    static QList<QByteArray> inRecords(const QList<QByteArray> &facts)
    {
        QList<QByteArray> records;
        for (const QByteArray &fact : facts)
            records << R"({"order":"1","facts":[{"at":"2026-03-10T09:00:00-06:00",)" + fact + "}]}";
        return records;
    }
    static QByteArray run(const QByteArray &more)
    {
        return R"("kind":"run","path":"self_call","channels":["B1","B2"],)"
               R"("started":"2026-03-10T09:00:00Z","ended":"2026-03-10T09:15:00Z",)" +
               more;
    }

private slots:
    void fieldsAreThoseOfTheTables_data()
    {
        QTest::addColumn<FactKind>("kind");
        for (const FactKind kind : recordedKinds())
            QTest::newRow(qPrintable(toText(kind))) << kind;
    }
    void fieldsAreThoseOfTheTables()
    {
        QFETCH(FactKind, kind);
        const QJsonObject definitions = jobRecordDefinitions();
        const QJsonObject schema = definitions[toText(kind)].toObject();
        QCOMPARE(schema["properties"]["kind"]["const"].toString(), toText(kind));
        QMap<QString, QJsonObject> keys;
        QStringList required, tableRequires, tableKeys;
        collect(definitions, schema, {}, keys, required);
        for (const FactField &field : fieldsOf(kind)) {
            const QString key = QString::fromLatin1(field.key);
            tableKeys << key;
            if (field.required)
                tableRequires << key;
            QJsonObject said = keys[key];
            for (const char *more : beyondTheTable.value(toText(kind) + '.' + key))
                QVERIFY2(!said.take(QLatin1StringView(more)).isUndefined(), qPrintable(key));
            QCOMPARE(canonicalJson(said), canonicalJson(schemaOf(definitions, field)));
        }
        required.sort();
        tableRequires.sort();
        tableKeys.sort();
        QCOMPARE(keys.keys(), tableKeys);
        QCOMPARE(required, tableRequires);
    }
    void kindsAreThoseOfTheProgram()
    {
        const QJsonObject fact = jobRecordDefinitions()["fact"].toObject();
        QJsonArray kinds, schemas;
        for (const FactKind kind : recordedKinds()) {
            kinds << toText(kind);
            schemas << QJsonObject{{"$ref", QString("#/$defs/" + toText(kind))}};
        }
        QCOMPARE(fact["properties"]["kind"]["enum"].toArray(), kinds);
        QCOMPARE(fact["oneOf"].toArray(), schemas);
    }
    void yesOrNoIsSaidOfTheSameQuantities()
    {
        const QJsonObject analog = jobRecordDefinitions()["analog"].toObject();
        QJsonArray yesOrNo;
        for (const auto &[quantity, word] : EnumCodes<AnalogQuantity>::table)
            if (valueFieldOf(quantity).type == FieldType::YesNo)
                yesOrNo << word;
        QCOMPARE(analog["if"]["properties"]["quantity"]["enum"].toArray(), yesOrNo);
    }

    void goodLoops()
    {
        compare(
            "loop.schema.json", programTakesLoop,
            {R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9000}]})",
             R"({"temperature_c":20,"elements":[{"type":"section","diameter_mm":0.4,"length_m":3000},
                    {"type":"bridged_tap","diameter_mm":0.32,"length_m":10,"capacitance_nf_per_km":45}]})",
             R"({"capacitance_nf_per_km":50,"elements":[{"type":"load_coil","millihenry":88},
                    {"type":"load_coil","millihenry":66,"ohms":7}]})"},
            true);
    }
    void badLoops()
    {
        compare(
            "loop.schema.json", programTakesLoop,
            {"{}", R"({"elements":[]})",
             R"({"elements":[{"type":"section","gauge_awg":25,"length_ft":9000}]})",
             R"({"elements":[{"type":"section","gauge_awg":26,"diameter_mm":0.4,"length_ft":9000}]})",
             R"({"elements":[{"type":"section","length_ft":9000}]})",
             R"({"elements":[{"type":"section","gauge_awg":26}]})",
             R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":0}]})",
             R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":"9000"}]})",
             R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":9,"millihenry":88}]})",
             R"({"elements":[{"type":"load_coil"}]})", R"({"elements":[{"type":"splice"}]})",
             R"({"elements":[{"type":"load_coil","millihenry":88,"gauge_awg":26}]})",
             R"({"temperature_f":70,"temperature_c":20,"elements":[{"type":"load_coil","millihenry":88}]})",
             R"({"colour":1,"elements":[{"type":"load_coil","millihenry":88}]})"},
            false);
    }

    void goodRecords()
    {
        compare(
            "job-record.schema.json", programTakesRecord,
            inRecords(
                {R"("kind":"visit")",
                 R"("kind":"visit","result":"no_access")",
                 R"("kind":"safety")",
                 R"("kind":"safety","ac_v":{"tip_ring":0.1},"confirmed":["storm"])",
                 R"("kind":"changed","what":"nt","text":"replaced")",
                 R"("kind":"self_test","outcome":"failed")",
                 R"("kind":"loop","loss_db":30,"frequency_hz":40000)",
                 R"("kind":"loop","makeup":{"elements":[{"type":"load_coil","millihenry":88}]})",
                 R"("kind":"layer","layer":3,"terminal":2,"outcome":"down","cause":98)",
                 R"("kind":"call","channel":"B1","direction":"out","service":"data","outcome":"ok")",
                 R"("kind":"detector","path":"far_end","channels":["B2"],"injections":3)",
                 run(R"("bit_errors":0)"),
                 run(R"("seconds":[0,1,null],"rate":56000)"),
                 R"("kind":"analog","quantity":"noise","value":12.5,"unit":"dBrnC")",
                 R"("kind":"analog","quantity":"dial_tone","value":true)",
                 R"("kind":"note","text":"x","id":"496FF731-a7ef-5e12-bb32-797ea0088083")",
                 R"("kind":"note","text":"x","installer":"a","instrument":"b","pair":"C7-101")",
                 R"("kind":"safety","place":"terminal 4","meter_proved":true,"wet":false,"named_by_office":{"by":"Lee","what":"span power","volts":130})",
                 R"("kind":"changed","what":"pair","to":"C7-990")",
                 R"("kind":"changed","what":"feed")",
                 R"("kind":"loop","from":"office","dc_resistance_ohm":600)",
                 R"("kind":"layer","layer":1,"outcome":"down","cause":1,"cause_location":"public_local")",
                 run(R"("bit_errors":0,"slips":2)"),
                 R"("kind":"cleared","what":"contact","text":"joint remade")",
                 R"("kind":"cleared","what":"nothing_found")",
                 R"("kind":"cleared","what":"nothing_found","text":"nothing")",
                 R"("kind":"hazard_closed","hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"power","by":"Lee","reference":"7")",
                 R"("kind":"referred","to":"cable desk","reference":"7","waiting_on":"plant")",
                 R"("kind":"made_with","facts":["496FF731-a7ef-5e12-bb32-797ea0088083"],"instrument":"TS-4")",
                 R"("kind":"desk","what":"jumper_run","by":"Lee","text":"frame 3")"}),
            true);
    }
    void badRecords()
    {
        QList<QByteArray> records = inRecords(
            {R"("kind":"tea")",
             R"("text":"x")",
             R"("kind":"note")",
             R"("kind":"note","text":" ")",
             R"("kind":"note","text":7)",
             R"("kind":"note","text":"x","colour":1)",
             R"("kind":"note","text":"x","id":"7")",
             R"("kind":"visit","result":"tea")",
             R"("kind":"visit","arrived":"09:00")",
             R"("kind":"safety","office_connected":"yes")",
             R"("kind":"safety","ac_v":{"ring":1})",
             R"("kind":"safety","confirmed":["tea"])",
             R"("kind":"safety","confirmed":["storm","storm"])",
             R"("kind":"changed")",
             R"("kind":"changed","what":"weather")",
             R"("kind":"changed","what":"nt","to":"C7-990")",
             R"("kind":"changed","what":"pair","to":" ")",
             R"("kind":"safety","named_by_office":{"by":"Lee"})",
             R"("kind":"safety","named_by_office":{"by":"Lee","what":"ringing","hertz":20})",
             R"("kind":"safety","wet":"no")",
             R"("kind":"loop","from":"attic","dc_resistance_ohm":600)",
             R"("kind":"layer","layer":1,"outcome":"down","cause_location":"here")",
             run(R"("bit_errors":0,"slips":-1)"),
             R"("kind":"cleared")",
             R"("kind":"cleared","what":"contact")",
             R"("kind":"cleared","what":"contact","text":"remade ")",
             R"("kind":"hazard_closed","source":"power","by":"Lee")",
             R"("kind":"hazard_closed","hazard":"7","source":"power","by":"Lee")",
             R"("kind":"hazard_closed","hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"tea","by":"Lee")",
             R"("kind":"hazard_closed","hazard":"496ff731-a7ef-5e12-bb32-797ea0088083","source":"power","by":"")",
             R"("kind":"referred","reference":"7")",
             R"("kind":"referred","to":"cable desk","waiting_on":"tea")",
             R"("kind":"made_with","facts":["496ff731-a7ef-5e12-bb32-797ea0088083"])",
             R"("kind":"made_with","facts":[],"instrument":"TS-4")",
             R"("kind":"made_with","facts":["x"],"instrument":"TS-4")",
             R"("kind":"made_with","facts":["496ff731-a7ef-5e12-bb32-797ea0088083"],"instrument":" ")",
             R"("kind":"desk")",
             R"("kind":"desk","what":"tea")",
             R"("kind":"note","text":"x","pair":7)",
             R"("kind":"self_test")",
             R"("kind":"loop")",
             R"("kind":"loop","makeup":{"elements":[]})",
             R"("kind":"loop","loss_db":1e9)",
             R"("kind":"layer","layer":4,"outcome":"up")",
             R"("kind":"layer","layer":1)",
             R"("kind":"layer","layer":2,"outcome":"up","tei":128)",
             R"("kind":"layer","layer":3,"outcome":"down","cause":0)",
             R"("kind":"call","channel":"B3","direction":"out","service":"data","outcome":"ok")",
             R"("kind":"call","channel":"B1","direction":"up","service":"data","outcome":"ok")",
             R"("kind":"detector","path":"far_end")",
             R"("kind":"detector","path":"far_end","channels":[])",
             R"("kind":"detector","path":"far_end","channels":["B1","B1"])",
             R"("kind":"detector","path":"far_end","channels":["B1"],"injections":-1)",
             run(R"("rate":64000)"),
             run(R"("bit_errors":-1)"),
             run(R"("bit_errors":0.5)"),
             run(R"("seconds":[-1])"),
             run(R"("seconds":["1"])"),
             run(R"("bit_errors":0,"rate":9600)"),
             R"("kind":"analog","quantity":"tea","value":1)",
             R"("kind":"analog","quantity":"noise")",
             R"("kind":"analog","quantity":"noise","value":true)",
             R"("kind":"analog","quantity":"polarity","value":1)"});
        records
            << "{}"
            << R"({"order":"1"})"
            << R"({"facts":[]})"
            << R"({"order":1,"facts":[]})"
            << R"({"order":"1","facts":{}})"
            << R"({"order":"1","facts":[7]})"
            << R"({"order":"1","facts":[],"colour":1})"
            << R"({"order":"1","facts":[],"pair":7})"
            << R"({"order":"1","instrument":"TS-4","facts":[{"kind":"made_with","at":"2026-03-10T09:00:00Z",
                  "facts":["496ff731-a7ef-5e12-bb32-797ea0088083"]}]})"
            << R"({"order":"1","facts":[{"kind":"note","text":"x"}]})"
            << R"({"order":"1","facts":[{"kind":"note","text":"x","at":"2026-03-10T09:00:00"}]})";
        compare("job-record.schema.json", programTakesRecord, records, false);
    }
};

QTEST_GUILESS_MAIN(SchemasTest)
#include "SchemasTest.moc"
