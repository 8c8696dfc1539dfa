// The commands that evaluate an error test, by the fields and statuses of the contract, and what
// they say to a person. The figures behind them are tested where they are made (tests/core).

#include "core/base/Csv.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString sources = LOOPWRIGHT_SOURCE_DIR;

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

class ErrorTestCommandsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString file(const QString &name, const QByteArray &content)
    {
        return written(m_folder.filePath(name), content);
    }

private slots:
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
        QVERIFY(!textOf(7999).contains("Worst")); // of no second
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
};

QTEST_MAIN(ErrorTestCommandsTest)
#include "ErrorTestCommandsTest.moc"
