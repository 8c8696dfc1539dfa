#include "core/errortest/DetectorFact.h"

#include <QTest>

using namespace loopwright;

namespace {

QJsonObject detector(const char *more = "{}")
{
    QJsonObject whole =
        *parseJsonObject(R"({"path":"self_call","channels":["B1","B2"],"quiet_seconds":10,
            "quiet_bit_errors":0,"injections":3,"injected":3,"seen_bit_errors":3,
            "seen_errored_seconds":3,"cleared":true})",
                         "test");
    const QJsonObject part = *parseJsonObject(QByteArray(more).replace('\'', '"'), "test");
    for (auto entry = part.begin(); entry != part.end(); ++entry)
        if (entry.value().isNull())
            whole.remove(entry.key());
        else
            whole[entry.key()] = entry.value();
    return whole;
}

Result<DetectorFact> read(const QJsonObject &json)
{
    JsonReader reader(json, "facts[0]");
    DetectorFact fact = DetectorFact::read(reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return fact;
}

} // namespace

class DetectorFactTest : public QObject
{
    Q_OBJECT
private slots:
    void seesInjections_data()
    {
        QTest::addColumn<QJsonObject>("json");
        QTest::addColumn<bool>("seen");
        QTest::addColumn<QStringList>("missing");
        const auto row = [](const char *name, const char *more, bool seen,
                            const QStringList &missing = {}) {
            QTest::newRow(name) << detector(more) << seen << missing;
        };
        row("all seen", "{}", true);
        row("more seen than sent", "{'seen_bit_errors':9}", true);
        row("bits sent not known", "{'injected':null}", true);
        row("one not seen", "{'seen_bit_errors':2}", false);
        row("fewer bits than sent", "{'injected':30,'seen_bit_errors':29}", false);
        row("no errored second", "{'seen_errored_seconds':0}", false);
        row("nothing sent", "{'injections':0,'injected':0,'seen_bit_errors':0}", false);
        row("nothing known", "{'seen_bit_errors':null}", false, {"seen_bit_errors"});
        row("cleared not told", "{'cleared':null}", true, {"cleared"});
        row("quiet not told", "{'quiet_seconds':null,'quiet_bit_errors':null}", true,
            {"quiet_seconds", "quiet_bit_errors"});
    }
    void seesInjections()
    {
        QFETCH(QJsonObject, json);
        QFETCH(bool, seen);
        QFETCH(QStringList, missing);
        const auto fact = read(json);
        QVERIFY2(fact, fact ? "" : qPrintable(fact.error().text()));
        QCOMPARE(fact->everyInjectionSeen(), seen);
        QCOMPARE(fact->missingKeys(), missing);
        QJsonObject written;
        fact->write(written);
        QCOMPARE(canonicalJson(written), canonicalJson(json));
    }

    void refuses_data()
    {
        QTest::addColumn<QJsonObject>("json");
        QTest::addColumn<QString>("place");
        QTest::newRow("negative") << detector("{'quiet_seconds':-1}") << "facts[0].quiet_seconds";
        QTest::newRow("text") << detector("{'cleared':'yes'}") << "facts[0].cleared";
        QTest::newRow("path") << detector("{'path':'x'}") << "facts[0].path";
        QTest::newRow("no path") << detector("{'path':null}") << "facts[0].path";
        QTest::newRow("channel") << detector("{'channels':['B9']}") << "facts[0].channels[0]";
        QTest::newRow("channels") << detector("{'channels':['B1','B2','B1']}")
                                  << "facts[0].channels[2]";
        QTest::newRow("unknown key") << detector("{'seen':3}") << "facts[0].seen";
    }
    void refuses()
    {
        QFETCH(QJsonObject, json);
        QFETCH(QString, place);
        const auto fact = read(json);
        QVERIFY(!fact);
        QCOMPARE(fact.error().place, place);
    }
};

QTEST_APPLESS_MAIN(DetectorFactTest)
#include "DetectorFactTest.moc"
