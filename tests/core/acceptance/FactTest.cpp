#include "core/acceptance/Fact.h"

#include "tests/support/Jobs.h"

#include <QTest>

#include <random>

using namespace loopwright;
using namespace loopwright::jobs;

class FactTest : public QObject
{
    Q_OBJECT

    static Result<JobRecord> read(const QJsonObject &object)
    {
        return readJobRecord(object, "job.json", [] { return uuid(999); });
    }

private slots:
    void everyKindGoesRoundUnchanged()
    {
        const QList<QJsonObject> facts = briFacts() + analogFacts() + seldomFacts();
        for (const QJsonObject &object : facts) {
            const auto record = read(jobs::record(jobs::order(briFields()), {object}));
            QVERIFY2(record, record ? "" : qPrintable(record.error().text()));
            const Fact &fact = record->facts.front();
            const auto again = Fact::fromJson(fact.toJson(), "fact");
            QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
            QCOMPARE(again->digest(), fact.digest());
            // Nothing that was written is lost: every key of the file stands in the stored form.
            for (const QString &key : object.keys())
                QVERIFY2(fact.toJson().contains(key), qPrintable(toText(fact.kind()) + "." + key));
        }
    }
    void namesThePlace_data()
    {
        QTest::addColumn<QJsonObject>("fact");
        QTest::addColumn<QString>("text");
        QJsonObject wrong = safety(1, 1);
        wrong["office_connected"] = "yes";
        QTest::newRow("wrong type")
            << wrong << "job.json.facts[0].office_connected: must be true or false";
        wrong = safety(1, 1);
        wrong["weather"] = "fine";
        QTest::newRow("unknown key") << wrong << "job.json.facts[0].weather: is not a known key";
        for (const char *key : {"pair", "installer", "instrument"}) {
            wrong = safety(1, 1);
            wrong[key] = QString::fromUtf8("17-\u200b204");
            QTest::addRow("a %s with an invisible character", key)
                << wrong
                << QString("job.json.facts[0].%1: holds a character that is not seen").arg(key);
        }
        wrong = safety(1, 1);
        wrong["kind"] = "void";
        QTest::newRow("a void in a file")
            << wrong << "job.json.facts[0].kind: \"void\" is not one of";
        wrong = safety(1, 1);
        wrong["id"] = "17";
        QTest::newRow("no UUID") << wrong << "job.json.facts[0].id: is not a UUID";
        wrong = safety(1, 1);
        wrong["id"] = QString("{%1}").arg(uuid(1));
        QTest::newRow("UUID in braces") << wrong << "job.json.facts[0].id: is not a UUID";
        wrong = safety(1, 1);
        wrong["at"] = "2026-03-04T09:15:00";
        QTest::newRow("no offset") << wrong << "job.json.facts[0].at: must be a time in ISO 8601";
        wrong = run(1, 1);
        wrong["ended"] = "2026-03-04T01:00:00-06:00";
        QTest::newRow("ends before it starts") << wrong << "job.json.facts[0].ended";
        wrong = run(1, 1);
        wrong["bit_errors"] = -1;
        QTest::newRow("negative count") << wrong << "job.json.facts[0].bit_errors: must be from 0";
        wrong = run(1, 1);
        wrong["channels"] = QJsonArray{"B3"};
        QTest::newRow("no such channel") << wrong << "job.json.facts[0].channels";
        wrong = call(1, 1, "B1", "sideways", "voice", "2175550143");
        QTest::newRow("no such word")
            << wrong << "job.json.facts[0].direction: \"sideways\" is not one of out, in";
    }
    void namesThePlace()
    {
        QFETCH(QJsonObject, fact);
        QFETCH(QString, text);
        const auto record = read(jobs::record(jobs::order(briFields()), {fact}));
        QVERIFY(!record);
        QVERIFY2(record.error().text().startsWith(text), qPrintable(record.error().text()));
        QCOMPARE(record.error().code, ErrorCode::BadInput);
    }
    void namesThePair()
    {
        QJsonObject own = safety(1, 1);
        own["pair"] = "17-206";
        QJsonObject record = jobs::record(jobs::order(briFields()), {own, safety(2, 2)});
        QCOMPARE(read(record)->facts.back().pair, "");
        QVERIFY(!read(record)->facts.back().toJson().contains("pair"));
        record["pair"] = "17-204";
        const auto both = read(record);
        QCOMPARE(both->facts.front().pair, "17-206");
        QCOMPARE(both->facts.back().pair, "17-204");
        QCOMPARE(both->facts.back().toJson()["pair"].toString(), "17-204");
    }
    void instrumentOfEarlierReadingsIsNamedByTheFact()
    {
        QJsonObject made =
            fact(1, "made_with", 1, {{"facts", QJsonArray{uuid(2)}}, {"instrument", "TS-9"}});
        const ServiceOrder order = jobs::order(briFields());
        QCOMPARE(read(jobs::record(order, {made}))->facts.front().instrument, "TS-9");
        made.remove("instrument");
        QCOMPARE(read(jobs::record(order, {made})).error().text(),
                 "job.json.facts[0].instrument: is required and missing");
    }
    void knowsWhatTheOrderHas()
    {
        OrderFields fields = briFields();
        fields.remove("b2_services");
        const ServiceOrder order = jobs::order(fields);
        const auto fits = [&order](const QJsonObject &object) {
            return checkFits(read(jobs::record(order, {object}))->facts.front(), order, "facts[0]");
        };
        QVERIFY(fits(call(1, 1, "B1", "out", "voice", "2175550143")));
        QCOMPARE(fits(call(1, 1, "B2", "out", "data", "2175550143")).error().text(),
                 "facts[0].channel: order A-1001 has no channel B2");
        QCOMPARE(fits(run(1, 1)).error().text(),
                 "facts[0].channels: order A-1001 has no channel B2");
        QCOMPARE(fits(fact(1, "layer", 1, {{"layer", 3}, {"terminal", 3}, {"outcome", "up"}}))
                     .error()
                     .text(),
                 "facts[0].terminal: order A-1001 has no terminal 3");
    }
    void anyChangeOfARecordIsReadOrRefused()
    {
        // Random damage: never a crash, and what is taken goes round.
        const QByteArray good = canonicalJson(jobs::record(jobs::order(briFields()), briFacts()));
        std::mt19937 random(11);
        for (int i = 0; i < 3000; ++i) {
            QByteArray bytes = good;
            for (int n = 0; n < 3; ++n)
                bytes[random() % bytes.size()] = char(random() % 96 + 32);
            const auto object = parseJsonObject(bytes, "job.json");
            if (!object)
                continue;
            const auto record = read(*object);
            if (record)
                for (const Fact &fact : record->facts)
                    QVERIFY(Fact::fromJson(fact.toJson(), "fact"));
        }
    }
};

QTEST_APPLESS_MAIN(FactTest)
#include "FactTest.moc"
