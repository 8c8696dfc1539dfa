// The commands that need no records, by the fields and statuses of the contract. The figures behind
// them are tested where they are made (tests/core); here a few rows of the same check values go all
// the way through.

#include "core/base/Csv.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString sources = LOOPWRIGHT_SOURCE_DIR;

} // namespace

class DeskCommandsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString file(const QString &name, const QByteArray &content)
    {
        return written(m_folder.filePath(name), content);
    }

private slots:
    void cause()
    {
        const Answered busy = call({"check", "cause", "17", "--json"});
        COMPARE_STATUS(busy, ExitStatus::Yes);
        // Q.850 table 1.
        QCOMPARE(busy.object()["name"].toString(), QString("User busy"));
        QCOMPARE(keysOf(busy.object()), (QSet<QString>{"cause", "name", "class", "check_first"}));
        COMPARE_STATUS(call({"check", "cause", "126", "--json"}), ExitStatus::No);
    }

    void spid_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("repair");
        // Rows of the worked examples in tests/data/identifiers.
        QTest::newRow("in order") << QStringList{"--variant", "ni2", "21755501430101", "--dn",
                                                 "217-555-0143"}
                                  << "ok"
                                  << "";
        QTest::newRow("free form") << QStringList{"--variant", "ni2", "555014300"} << "warning"
                                   << "";
        QTest::newRow("too short") << QStringList{"--variant", "ni2", "21"} << "error"
                                   << "";
        QTest::newRow("blank where one is required")
            << QStringList{"--variant", "ni-generic", ""} << "error"
            << "";
        QTest::newRow("left out where it is optional") << QStringList{"--variant", "ni2"} << "ok"
                                                       << "";
        QTest::newRow("beginning like an option")
            << QStringList{"--variant", "ni2", "--", "-21"} << "error"
            << "";
    }
    void spid()
    {
        QFETCH(QStringList, words);
        QFETCH(QString, verdict);
        const Answered answered = call(QStringList{"check", "spid", "--json"} + words);
        COMPARE_STATUS(answered, verdict == "error" ? ExitStatus::No : ExitStatus::Yes);
        const QJsonObject object = answered.object();
        QCOMPARE(object["verdict"].toString(), verdict);
        QVERIFY(keysOf(object).contains(QSet<QString>{"variant", "spid", "dn", "verdict", "code",
                                                      "reason", "repair", "parts"}));
        if (verdict != "ok")
            QVERIFY(!object["code"].toString().isEmpty() && !object["reason"].toString().isEmpty());
    }

    void oneSpidIsJudgedAsInAList()
    {
        const Result<CsvTable> worked = readCsv(
            contentOf(sources + "/tests/data/identifiers/worked-spids.csv"), "worked",
            {{"variant", "spid", "dn"}, {}, {"number", "verdict", "code", "repair", "shape_from"}});
        QVERIFY2(worked, worked ? "" : qPrintable(worked.error().text()));
        QByteArray list = csvRecord({"variant", "spid", "dn"});
        for (const CsvRow &row : worked->rows)
            list += csvRecord({worked->value(row, "variant"), worked->value(row, "spid"),
                               worked->value(row, "dn")});
        const Answered all =
            call({"check", "identifiers", "--json", "--in", file("worked.csv", list)});
        const QJsonArray results = all.object()["results"].toArray();
        QCOMPARE(results.size(), qsizetype(worked->rows.size()));
        for (const QJsonValue &value : results) {
            const QJsonObject inList = value.toObject();
            if (inList["code"].toString().startsWith("variant"))
                continue; // wrong usage if it is asked alone
            const QJsonObject alone =
                call({"check", "spid", "--json", "--variant", inList["variant"].toString(), "--dn",
                      inList["dn"].toString(), "--", inList["spid"].toString()})
                    .object();
            for (const char *key : {"verdict", "code", "reason", "repair"})
                QCOMPARE(alone[key].toString(), inList[key].toString());
        }
    }

    void identifiersFromFileToFile()
    {
        const QString in = file("in.csv", "spid,dn,variant\r\n21755501430101,217-555-0143,ni2\r\n"
                                          "21,,ni2\r\n555014300,,ni2\r\n");
        const QString out = m_folder.filePath("out.csv");
        const Answered answered =
            call({"check", "identifiers", "--in", in, "--out", out, "--json"});
        COMPARE_STATUS(answered, ExitStatus::No);
        QCOMPARE(answered.object(),
                 (QJsonObject{{"rows", 3}, {"ok", 1}, {"warnings", 1}, {"errors", 1}}));
        const QByteArray written = contentOf(out);
        QVERIFY(written.startsWith("spid,dn,variant,verdict,code,reason,repair\r\n"
                                   "21755501430101,217-555-0143,ni2,ok,"));
        QCOMPARE(written.count("\r\n"), 4);

        const Answered shown = call({"check", "identifiers", "--in", in});
        COMPARE_STATUS(shown, ExitStatus::No);
        QCOMPARE(shown.out, written);

        COMPARE_STATUS(call({"check", "identifiers", "--in",
                             file("good.csv", "variant,spid,dn\nni2,21755501430101,\n")}),
                       ExitStatus::Yes);
    }

    void aListThatIsRefusedLeavesTheOldOutput()
    {
        const QString out = file("kept.csv", "old");
        const Answered answered =
            call({"check", "identifiers", "--in", file("bad.csv", "variant,spid,dn,colour\n"),
                  "--out", out, "--json"});
        COMPARE_STATUS(answered, ExitStatus::BadInput);
        QVERIFY(answered.error()["message"].toString().contains("colour"));
        QCOMPARE(contentOf(out), QByteArray("old"));
    }

    void loop()
    {
        // Row L01 of tests/data/loop/loop-loss.csv: 9000 ft of 26 AWG at 40 and 50 kHz.
        const QString path = file("l.json", R"({"temperature_f":70,"elements":[
            {"type":"section","gauge_awg":26,"length_ft":9000}]})");
        const Answered answered = call({"qualify", "loop", path, "--json"});
        COMPARE_STATUS(answered, ExitStatus::Yes);
        const QJsonObject object = answered.object();
        QVERIFY(keysOf(object).contains(QSet<QString>{"insertion_loss_db", "dc_resistance_ohm",
                                                      "working_length_ft", "bridged_tap_ft",
                                                      "verdict", "reasons"}));
        QVERIFY(std::abs(object["insertion_loss_db"].toDouble() - 23.8641) < 1e-4);
        QCOMPARE(object["verdict"].toString(), QString("suitable"));
        const QJsonObject at50 =
            call({"qualify", "loop", path, "--frequency", "50000", "--ohms", "135,135", "--json"})
                .object();
        QVERIFY(std::abs(at50["insertion_loss_db"].toDouble() - 25.3679) < 1e-4);
        COMPARE_STATUS(call({"qualify", "loop", sources + "/demo/scenario/loop-too-long.json"}),
                       ExitStatus::No);
    }
    void loopByLimitsOfOnesOwn()
    {
        const QString path = file("own-l.json", R"({"elements":[{"type":"section","gauge_awg":26,)"
                                                R"("length_ft":9000}]})");
        QFile shipped(sources + "/resources/limits/2026-1.json");
        QVERIFY(shipped.open(QIODevice::ReadOnly));
        QByteArray set = shipped.readAll();
        set.replace("2026-1", "own-7");
        const QString own = file("own-limits.json", set);
        const QJsonObject same = call({"qualify", "loop", path, "--json"}).object();
        QCOMPARE(same["limit_set"].toString(), QString("2026-1"));
        QCOMPARE(same["verdict"].toString(), QString("suitable"));

        // 9000 ft of 26 AWG have about 750 ohm.
        QVERIFY(set.contains("\"bri_resistance_max\", \"value\": 1300"));
        set.replace("\"bri_resistance_max\", \"value\": 1300",
                    "\"bri_resistance_max\", \"value\": 700");
        file("own-limits.json", set);
        const Answered judged = call({"qualify", "loop", path, "--limits", own, "--json"});
        COMPARE_STATUS(judged, ExitStatus::No);
        QCOMPARE(judged.object()["limit_set"].toString(), QString("own-7"));
        QVERIFY(call({"qualify", "loop", path, "--limits", own}).out.contains("limit set own-7"));

        COMPARE_STATUS(call({"qualify", "loop", path, "--limits", path}), ExitStatus::BadInput);
        COMPARE_STATUS(call({"loop", "curve", path, "--limits", "/no/such.json", "--out",
                             m_folder.filePath("never.svg")}),
                       ExitStatus::BadInput);
        QVERIFY(!QFile::exists(m_folder.filePath("never.svg")));
    }

    // 9000 ft of 24 AWG with a tap of 2000 ft in the middle that is not on record.
    void loopAgainstWhatWasMeasured()
    {
        const QString path =
            file("recorded.json", R"({"elements":[{"type":"section","gauge_awg":24,)"
                                  R"("length_ft":9000}]})");
        const auto told = call({"qualify", "loop", path, "--measured-resistance", "472",
                                "--measured-loss", "20.34", "--json"});
        const QJsonObject comparison = told.object()["comparison"].toObject();
        QCOMPARE(comparison["agrees"].toBool(true), false);
        QCOMPARE(comparison["most_likely"].toString(), QString("hidden_tap"));
        QCOMPARE(comparison["differences"].toArray().size(), 2);
        QVERIFY(call({"qualify", "loop", path, "--measured-resistance", "480"})
                    .out.contains("What was measured agrees with the record."));
        QVERIFY(!call({"qualify", "loop", path, "--json"}).object().contains("comparison"));
    }
    void aBadLoopNamesThePlace_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::addColumn<QString>("place");
        QTest::newRow("negative length")
            << QByteArray(R"({"elements":[{"type":"section","gauge_awg":26,"length_ft":-1}]})")
            << "elements[0].length_ft";
        QTest::newRow("wrong type")
            << QByteArray(R"({"elements":[{"type":"section","gauge_awg":"26","length_ft":1}]})")
            << "elements[0].gauge_awg";
        QTest::newRow("unknown key") << QByteArray(R"({"elements":[],"colour":1})") << "";
        QTest::newRow("truncated") << QByteArray(R"({"elements":[{"type":)") << "line";
        QTest::newRow("not UTF-8") << QByteArray("{\"elements\":\"\xff\"}") << "";
        QTest::newRow("nested") << QByteArray(100'000, '[') << "";
        QTest::newRow("empty") << QByteArray() << "";
    }
    void aBadLoopNamesThePlace()
    {
        QFETCH(QByteArray, content);
        QFETCH(QString, place);
        const Answered answered = call({"qualify", "loop", file("bad.json", content), "--json"});
        COMPARE_STATUS(answered, ExitStatus::BadInput);
        QCOMPARE(answered.errorCode(), QString("bad_input"));
        const QString said = answered.errorPlace() + answered.error()["message"].toString();
        QVERIFY2(said.contains("bad.json") && said.contains(place), qPrintable(said));
    }

    void pictures()
    {
        const QString seconds = sources + "/demo/scenario/run-seconds.csv";
        const QString loop = sources + "/demo/scenario/loop.json";
        COMPARE_STATUS(call({"strip", seconds, "--out", m_folder.filePath("s.png")}),
                       ExitStatus::Yes);
        QVERIFY(contentOf(m_folder.filePath("s.png")).startsWith("\x89PNG"));
        COMPARE_STATUS(call({"strip", seconds, "--out", m_folder.filePath("s.svg")}),
                       ExitStatus::Yes);
        QVERIFY(contentOf(m_folder.filePath("s.svg")).contains("<svg"));
        const Answered curve = call({"loop", "curve", loop, "--out", m_folder.filePath("c.svg"),
                                     "--points", "3", "--json"});
        COMPARE_STATUS(curve, ExitStatus::Yes);
        QCOMPARE(curve.array().size(), 3);
        QVERIFY(contentOf(m_folder.filePath("c.svg")).contains("<svg"));
        COMPARE_STATUS(call({"strip", seconds, "--out", m_folder.filePath("s.pdf")}),
                       ExitStatus::Usage);
        COMPARE_STATUS(call({"strip", seconds, "--out", m_folder.filePath("no/such/s.png")}),
                       ExitStatus::DiskTrouble);
    }

    void paintingNeedsNoDisplay()
    {
        const Answered answered =
            callProgram({"strip", sources + "/demo/scenario/run-seconds.csv", "--out",
                         m_folder.filePath("p.png")},
                        {{"QT_QPA_PLATFORM", "xcb"}, {"XDG_RUNTIME_DIR", ""}});
        COMPARE_STATUS(answered, ExitStatus::Yes);
        QCOMPARE(answered.messages, QByteArray());
    }

    void listsOfTheTables()
    {
        QVERIFY(call({"variants", "--json"}).array().size() > 10);
        QCOMPARE(call({"variants", "ni2", "--json"}).object()["key"].toString(), QString("ni2"));
        const QString db = m_folder.filePath("limits.sqlite");
        QVERIFY(!call({"limits", "show", "--json", "--db", db}).object()["version"].isNull());
        QVERIFY(call({"limits", "show", "--db", db}).out.contains("common practice"));
    }
};

QTEST_MAIN(DeskCommandsTest)
#include "DeskCommandsTest.moc"
