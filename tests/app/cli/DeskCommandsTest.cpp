// The commands that need no records, by the fields and statuses of the contract. The figures behind
// them are tested where they are made (tests/core); here a few rows of the same check values go all
// the way through.

#include "core/base/Csv.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString sources = LOOPWRIGHT_SOURCE_DIR;

QSet<QString> keysOf(const QJsonObject &object)
{
    const QStringList keys = object.keys();
    return {keys.begin(), keys.end()};
}

const QSet<QString> secondsFields{"seconds",
                                  "available_seconds",
                                  "unavailable_seconds",
                                  "errored_seconds",
                                  "severely_errored_seconds",
                                  "error_free_seconds",
                                  "esr",
                                  "sesr",
                                  "bits",
                                  "bit_errors",
                                  "ber",
                                  "ber_upper_95"};

} // namespace

class DeskCommandsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString file(const QString &name, const QByteArray &content)
    {
        QFile file(m_folder.filePath(name));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
            qFatal("cannot write %s", qPrintable(name));
        return file.fileName();
    }
    QByteArray contentOf(const QString &path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
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
                continue; // wrong usage where it is asked alone
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

    void bounds()
    {
        const Result<CsvTable> rows = readCsv(
            contentOf(sources + "/tests/data/check-values/ber-bounds.csv"), "bounds",
            {{"errors", "bits", "confidence", "poisson_upper", "clopper_pearson_upper"}, {}, {}});
        QVERIFY(rows);
        for (const CsvRow &row : rows->rows) {
            const Answered answered = call(
                {"analyse", "bound", "--json", "--errors", rows->value(row, "errors"), "--bits",
                 rows->value(row, "bits"), "--confidence", rows->value(row, "confidence")});
            COMPARE_STATUS(answered, ExitStatus::Yes);
            for (const char *key : {"poisson_upper", "clopper_pearson_upper"}) {
                const double expected = rows->value(row, key).toDouble();
                const double found = answered.object()[key].toDouble();
                QVERIFY2(std::abs(found / expected - 1) < 1e-9,
                         qPrintable(QString("%1 %2 %3").arg(key).arg(found).arg(expected)));
            }
        }
    }

    void whatIsProven()
    {
        const QStringList words{"analyse", "bound", "--json", "--target", "1e-7", "--errors"};
        // -ln(0.05) / (1e-7 x 64000) = 468.1 s without an error: transmission reference, b.2.
        const auto proved = call(words + QStringList{"0", "--bits", "57600000"}).object();
        QCOMPARE(proved["verdict"].toString(), "proved");
        QVERIFY(proved["further_seconds"].isNull());
        const auto open = call(words + QStringList{"0", "--bits", "6400000"}).object();
        QCOMPARE(open["verdict"].toString(), "not_proved");
        QVERIFY(std::abs(open["further_seconds"].toDouble() - 368.1) < 0.1);
        const auto refuted = call(words + QStringList{"100", "--bits", "57600000"}).object();
        QCOMPARE(refuted["verdict"].toString(), "refuted");
        QVERIFY(refuted["poisson_lower"].toDouble() > 1e-7);
        QVERIFY(call({"analyse", "bound", "--errors", "0", "--bits", "6400000", "--target", "1e-7"})
                    .out.contains("1e-7 is not proved yet: 6:09 more without an error."));
    }

    void boundsInWords()
    {
        const auto said = [](const QStringList &words) {
            return call(QStringList{"analyse", "bound", "--errors"} + words).out.simplified();
        };
        // The formula gives 2.9957 (check values, row 0,1,0.95); a ratio is at most 1.
        QVERIFY(said({"0", "--bits", "1"}).contains("is at most Poisson 1 Clopper-Pearson 0.95 "));
        QVERIFY(said({"0", "--bits", "1000", "--confidence", "0.999999999"})
                    .startsWith("With 99.9999999 % confidence"));
        const QStringList hundred{"100", "--bits", "57600000"};
        QVERIFY(!said(hundred).contains("at least"));
        const QByteArray both = said(hundred + QStringList{"--target", "1e-7"});
        const QJsonObject json = call(QStringList{"analyse", "bound", "--errors"} + hundred +
                                      QStringList{"--target", "1e-7", "--json"})
                                     .object();
        const QByteArray lower =
            "at least Poisson " + QByteArray::number(json["poisson_lower"].toDouble(), 'g', 10) +
            " Clopper-Pearson " +
            QByteArray::number(json["clopper_pearson_lower"].toDouble(), 'g', 10) + " if";
        QVERIFY2(both.contains(lower), both);
    }

    void refusesATargetWithoutAVerdict()
    {
        const QStringList words{"analyse", "bound", "--errors", "5", "--bits", "1000"};
        for (const QStringList &more : {QStringList{"--target", "0"}, QStringList{"--target", "-1"},
                                        QStringList{"--target", "0.01", "--confidence", "0.49"}}) {
            const Answered answered = call(words + more);
            COMPARE_STATUS(answered, ExitStatus::Usage);
            QVERIFY2(answered.messages.contains("--target"), answered.messages);
        }
        COMPARE_STATUS(call(words + QStringList{"--target", "0.01", "--confidence", "0.5"}),
                       ExitStatus::Yes);
        COMPARE_STATUS(call(words + QStringList{"--confidence", "0.49"}), ExitStatus::Yes);
    }

    void seconds()
    {
        QByteArray csv = "second,bit_errors,sync_lost\n";
        for (int n = 0; n < 20; ++n)
            csv += QByteArray::number(n) + (n == 3 ? ",7,\n" : ",0,\n");
        const Answered answered =
            call({"analyse", "seconds", file("s.csv", csv), "--rate", "64000", "--json"});
        COMPARE_STATUS(answered, ExitStatus::Yes);
        const QJsonObject object = answered.object();
        QVERIFY(keysOf(object).contains(secondsFields));
        QCOMPARE(object["errored_seconds"].toInt(), 1);
        QCOMPARE(object["esr"].toDouble(), 1.0 / 20); // not rounded
        QCOMPARE(object["bits"].toInt(), 20 * 64000);
    }

    void everyOddRowOfSecondsIsNamed()
    {
        const QString odd = file("odd.csv", "second,bit_errors\n0,x\n1,0\n3,0\n4,y\n");
        const QList<QStringList> commands{
            {"analyse", "seconds", odd, "--rate", "64000"},
            {"strip", odd, "--out", m_folder.filePath("odd.png")},
        };
        for (const QStringList &words : commands) {
            const Answered told = call(words);
            COMPARE_STATUS(told, ExitStatus::BadInput);
            QCOMPARE(told.out, QByteArray());
            QCOMPARE(told.messages,
                     QByteArray("loopwright-cli: odd.csv: row 2, column bit_errors: \"x\" is not a "
                                "number of bit errors\n"
                                "loopwright-cli: odd.csv: row 4, column second: 1 s is missing "
                                "before \"3\"\n"
                                "loopwright-cli: odd.csv: row 5, column bit_errors: \"y\" is not a "
                                "number of bit errors\n"));
            const Answered json = call(words + QStringList{"--json"});
            COMPARE_STATUS(json, ExitStatus::BadInput);
            QCOMPARE(json.errorCode(), QString("bad_input"));
            QCOMPARE(json.errorPlace(), QString("odd.csv: row 2, column bit_errors"));
            const QJsonArray findings = json.object()["findings"].toArray();
            QCOMPARE(findings.size(), 3);
            QCOMPARE(findings[1].toObject()["row"].toInt(), 4);
            QCOMPARE(findings[1].toObject()["code"].toString(), QString("gap"));
            QVERIFY(!QFile::exists(m_folder.filePath("odd.png")));
        }
        QByteArray csv = "0,0\n";
        for (int n = 0; n < 150; ++n)
            csv += "0,0\n";
        const Answered many = call({"analyse", "seconds", file("m.csv", csv), "--rate", "64000"});
        QCOMPARE(many.messages.count('\n'), 101);
        QVERIFY(many.messages.endsWith("m.csv: 50 more are odd\n"));
    }

    void theTextHasTheBurstsToo()
    {
        const QByteArray out =
            call({"analyse", "seconds", file("b.csv", "0,0\n1,4\n2,0\n3,0\n4,1\n5,L\n6,0\n"),
                  "--rate", "64000"})
                .out.simplified();
        QVERIFY2(out.contains("Longest error-free 0:02 Worst second 4 bit errors Errors together "
                              "2.5 in a second with bit errors Losses of sync 1, in all 1 s"),
                 out);
        const QByteArray one =
            call({"analyse", "seconds", file("o.csv", "0,0\n1,1\n"), "--rate", "64000"})
                .out.simplified();
        QVERIFY2(one.contains("Worst second 1 bit error Errors together 1 in") &&
                     one.contains("Bit errors 1 in 128000 bits"),
                 one);
    }

    void anUndefinedRatioIsNull()
    {
        QByteArray csv = "second,bit_errors\n";
        for (int n = 0; n < 12; ++n)
            csv += QByteArray::number(n) + ",64000\n";
        const QJsonObject object =
            call({"analyse", "seconds", file("u.csv", csv), "--rate", "64000", "--json"}).object();
        QCOMPARE(object["unavailable_seconds"].toInt(), 12);
        QVERIFY(object["esr"].isNull() && object.contains("esr"));
        QVERIFY(object["sesr"].isNull() && object.contains("sesr"));
    }

    void capture()
    {
        const QString raw = sources + "/demo/scenario/capture.raw";
        const Answered answered =
            call({"analyse", "capture", raw, "--pattern", "prbs11", "--json"});
        COMPARE_STATUS(answered, ExitStatus::Yes);
        const QJsonObject object = answered.object();
        QVERIFY(keysOf(object).contains(secondsFields +
                                        QSet<QString>{"pattern", "inverted", "synchronised_at_bit",
                                                      "slips", "sync_losses", "per_second"}));
        // As demo/make-scenario made it: eleven bits in error in the first two seconds, an octet
        // lost in the third, of four.
        QCOMPARE(object["pattern"].toString(), QString("prbs11"));
        QCOMPARE(object["bit_errors"].toInt(), 11);
        QCOMPARE(object["per_second"].toArray().size(), 4);
        QCOMPARE(object["slips"].toArray(), (QJsonArray{QJsonObject{{"second", 2}, {"bits", 8}}}));

        const Answered wrong = call({"analyse", "capture", raw, "--pattern", "prbs15", "--json"});
        COMPARE_STATUS(wrong, ExitStatus::No);
        QVERIFY(wrong.object()["pattern"].isNull() && wrong.object().contains("pattern"));
        const Answered found = call({"analyse", "capture", raw, "--pattern", "auto", "--json"});
        QCOMPARE(found.object(), object);
        QCOMPARE(call({"analyse", "capture", raw, "--find", "--json"}).object(), object);
        COMPARE_STATUS(call({"analyse", "capture", raw}), ExitStatus::Usage);
        COMPARE_STATUS(
            call({"analyse", "capture", m_folder.filePath("none.raw"), "--pattern", "prbs11"}),
            ExitStatus::BadInput);
    }

    void aCaptureShorterThanASecondSaysSo()
    {
        const QByteArray whole = contentOf(sources + "/demo/scenario/capture.raw");
        const auto textOf = [&](qsizetype octets) {
            return call({"analyse", "capture", file("c.raw", whole.first(octets)), "--pattern",
                         "prbs11"})
                .out.simplified();
        };
        QVERIFY(textOf(7999).endsWith("The file is shorter than one second: 7999 octets, and a "
                                      "second has 8000. Only whole seconds are counted."));
        QVERIFY(textOf(1).contains("shorter than one second: 1 octet, and"));
        QVERIFY(!textOf(8000).contains("shorter"));
        QVERIFY(!textOf(0).contains("shorter")); // it is empty, and that is said
    }

    void aFolderIsNoCapture()
    {
        const Answered answered =
            call({"analyse", "capture", m_folder.path(), "--pattern", "prbs11"});
        COMPARE_STATUS(answered, ExitStatus::BadInput);
        QVERIFY2(answered.messages.contains("is a folder, not a file"), answered.messages);
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
