#include "core/errortest/RunFact.h"

#include <QTest>

using namespace loopwright;

namespace {

QJsonObject object(const char *json)
{
    return *parseJsonObject(QByteArray(json).replace('\'', '"'), "test");
}

/// A good run; `more` is merged in, a null takes a key away.
QJsonObject run(const char *more = "{}", const char *result = "{'bit_errors':0}")
{
    QJsonObject whole = object("{'path':'self_call','channels':['B1','B2'],"
                               "'started':'2026-03-04T09:15:00-06:00',"
                               "'ended':'2026-03-04T09:30:00-06:00'}");
    for (const QJsonObject &part : {object(result), object(more)})
        for (auto entry = part.begin(); entry != part.end(); ++entry)
            whole[entry.key()] = entry.value();
    return whole;
}

Result<RunFact> read(const QJsonObject &json)
{
    JsonReader reader(json, "facts[0]");
    RunFact fact = RunFact::read(reader);
    reader.done();
    LOOPWRIGHT_TRY(reader.result());
    return fact;
}

} // namespace

class RunFactTest : public QObject
{
    Q_OBJECT
private slots:
    void writesWhatItRead_data()
    {
        QTest::addColumn<QJsonObject>("json");
        QTest::newRow("totals") << run();
        QTest::newRow("all totals")
            << run("{'from_dn':'555-0100','to_dn':'555-0101','interface':'u','pattern':'prbs11',"
                   "'rate':64000,'stopped_early':false,'errored_seconds':2,"
                   "'severely_errored_seconds':1,'sync_losses':0,'bit_errors':70}");
        QTest::newRow("seconds") << run("{'rate':56000,'stopped_early':true}",
                                        "{'seconds':[0,1,null,56000]}");
        QTest::newRow("both") << run("{'bit_errors':3,'errored_seconds':3,"
                                     "'severely_errored_seconds':1,'sync_losses':2}",
                                     "{'seconds':[0,1,null,2]}");
        QTest::newRow("no second") << run("{}", "{'seconds':[]}");
        QTest::newRow("bonded") << run("{'rate':128000,'path':'nt_loop','channels':['B2']}");
    }
    void writesWhatItRead()
    {
        QFETCH(QJsonObject, json);
        const auto fact = read(json);
        QVERIFY2(fact, fact ? "" : qPrintable(fact.error().text()));
        QJsonObject written;
        fact->write(written);
        QCOMPARE(canonicalJson(written), canonicalJson(json));
        QCOMPARE(*read(written), *fact);
    }

    void readsValues()
    {
        const auto fact =
            read(run("{'interface':'st','stopped_early':true}", "{'seconds':[0,7,null]}"));
        QVERIFY(fact);
        QCOMPARE(fact->path, Path::SelfCall);
        QCOMPARE(fact->channels, (QList<Channel>{Channel::B1, Channel::B2}));
        QCOMPARE(*fact->interface, LineInterface::St);
        QCOMPARE(fact->bitsPerSecond(), 64000);
        QCOMPARE(fact->durationSeconds(), 900.0);
        QVERIFY(fact->wasStoppedEarly());
        QCOMPARE(*fact->seconds, (SecondList{0, 7, std::nullopt}));
    }

    void refuses_data()
    {
        QTest::addColumn<QJsonObject>("json");
        QTest::addColumn<QString>("place");
        const auto row = [](const char *name, const char *place, const char *more,
                            const char *result = "{'bit_errors':0}") {
            QTest::newRow(name) << run(more, result) << QString("facts[0].") + place;
        };
        row("ends before it starts", "ended", "{'ended':'2026-03-04T09:14:59-06:00'}");
        row("no offset", "started", "{'started':'2026-03-04T09:15:00'}");
        row("unknown path", "path", "{'path':'loop'}");
        row("unknown channel", "channels[1]", "{'channels':['B1','B3']}");
        row("D channel", "channels[0]", "{'channels':['D']}");
        row("channel twice", "channels[1]", "{'channels':['B1','B1']}");
        row("no channel", "channels", "{'channels':[]}");
        row("channels no list", "channels", "{'channels':'B1'}");
        row("negative", "bit_errors", "{'bit_errors':-1}");
        row("a half", "bit_errors", "{'bit_errors':0.5}");
        row("text", "bit_errors", "{'bit_errors':'0'}");
        row("rate", "rate", "{'rate':9600}");
        row("more errors than bits", "bit_errors", "{'bit_errors':57664001}");
        row("more errored seconds than seconds", "errored_seconds", "{'errored_seconds':902}");
        row("nothing counted", "bit_errors", "{}", "{}");
        row("totals without bit errors", "bit_errors", "{'errored_seconds':0}", "{}");
        row("errors above the rate", "seconds[1]", "{}", "{'seconds':[0,64001]}");
        row("errors above 56000", "seconds[0]", "{'rate':56000}", "{'seconds':[56001]}");
        row("odd second", "seconds[0]", "{}", "{'seconds':['0']}");
        row("negative second", "seconds[0]", "{}", "{'seconds':[-1]}");
        row("too many seconds", "seconds", "{'ended':'2026-03-04T09:15:02-06:00'}",
            "{'seconds':[0,0,0,0]}");
        row("unknown key", "ber", "{'ber':0}");
        row("interface", "interface", "{'interface':'S'}");
    }
    void refuses()
    {
        QFETCH(QJsonObject, json);
        QFETCH(QString, place);
        const auto fact = read(json);
        QVERIFY(!fact);
        QCOMPARE(fact.error().code, ErrorCode::BadInput);
        QCOMPARE(fact.error().place, place);
    }

    /// They are kept, and count for nothing (RunTotals.h).
    void takesTotalsThatContradictEachOther()
    {
        QVERIFY(read(run("{'errored_seconds':1,'severely_errored_seconds':2}")));
        QVERIFY(read(run("{'bit_errors':5}", "{'seconds':[0,1,2]}")));
    }

    void takesOneSecondMoreThanTheClock()
    {
        // 900.0 s by the clock can touch 901 seconds of the test set's.
        QJsonObject json = run("{'ended':'2026-03-04T09:15:02-06:00'}", "{'seconds':[0,0,0]}");
        QVERIFY(read(json));
    }
};

QTEST_APPLESS_MAIN(RunFactTest)
#include "RunFactTest.moc"
