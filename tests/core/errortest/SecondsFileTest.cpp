#include "core/errortest/SecondsFile.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

constexpr qint64 rate = 64000;

QString codes(const SecondList &seconds)
{
    QStringList texts;
    for (const Second second : seconds)
        texts << (second.inSync() ? QString::number(second.bitErrors()) : QString("L"));
    return texts.join(' ');
}

} // namespace

class SecondsFileTest : public QObject
{
    Q_OBJECT
private slots:
    void readsForms_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("seconds");
        const auto row = [](const char *name, const char *bytes, const char *seconds) {
            QTest::newRow(name) << QByteArray(bytes) << QString(seconds);
        };
        row("contract", "second,bit_errors\r\n0,0\r\n1,5\r\n2,0\r\n", "0 5 0");
        row("contract, sync", "second,bit_errors,sync_lost\n1,0,0\n2,7,1\n3,,1\n4,2,0\n",
            "0 L L 2");
        row("other order", "sync_lost,bit_errors,second\n0,4,0\nyes,,1\n", "4 L");
        row("byte-order mark", "\xEF\xBB\xBFsecond,bit_errors\n0,1\n", "1");
        row("quoted", "\"second\",\"bit_errors\"\n\"0\",\"12\"\n", "12");
        row("semicolons", "second;bit_errors\n0;0\n1;3\n", "0 3");
        row("tabs", "Time\tErrors\n09:15:00\t0\n09:15:01\t3\n", "0 3");
        row("blanks", "  1   0\n  2  11\n  3   L\n", "0 11 L");
        row("no header", "0,0\n1,2\n", "0 2");
        row("no header, sync first", "0,L\n1,2\n", "L 2");
        row("errors alone", "0\n0\n17\nL\n", "0 0 17 L");
        row("errors alone, header", "bit_errors\n0\n17\nL\n", "0 17 L");
        row("comments", "# a test set\n\n# \"odd, quote\nsecond,bit_errors\n# more\n5,1\n\n6,2\n",
            "1 2");
        row("blanks at the end", "1 0 \n2 0\t\n", "0 0");
        row("hyphens and capitals", "Second;Bit-Errors;Loss of sync\n0;1;no\n1;0;YES\n", "1 L");
        row("past midnight", "23:59:58,0\n23:59:59,1\n00:00:00,2\n00:00:01,3\n", "0 1 2 3");
        row("am and pm", "11:59:59 AM,1\n12:00:00 PM,2\n12:00:01 pm,3\n", "1 2 3");
        row("minutes and seconds", "59:59,1\n60:00,2\n60:01,3\n", "1 2 3");
        row("fractions", "09:15:00.98,1\n09:15:02.01,2\n09:15:02.99,3\n", "1 2 3");
        row("early and late", "0.4,1\n1.0,2\n2.4,3\n3.0,4\n4.4,5\n", "1 2 3 4 5");
        row("carriage returns alone", "second,bit_errors\r0,1\r1,2\r", "1 2");
        row("dates", "2026-03-04T23:59:59-06:00,1\n2026-03-05T06:00:00Z,2\n", "1 2");
        row("dates, blank", "2026-03-04 09:15:00 1\n2026-03-04 09:15:01 2\n", "1 2");
        row("dates, month first", "time,errors\n2/28/2026 11:59:59 PM,1\n3/1/2026 0:00:00,2\n",
            "1 2");
        row("dates, day first", "28.02.2026 23:59:59;1\n01.03.2026 00:00:00;2\n", "1 2");
        row("trailing separators", "second;bit_errors;\n0;1;\n1;2;;\n", "1 2");
        row("no line end", "0,1\n1,2", "1 2");
    }
    void readsForms()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, seconds);
        const auto file = readSecondsFile(bytes, "f.csv", rate);
        QVERIFY2(file, file ? "" : qPrintable(file.error().text()));
        QVERIFY2(file->findings.empty(),
                 file->findings.empty() ? "" : qPrintable(file->findings[0].reason.english()));
        QCOMPARE(codes(file->seconds), seconds);
        QCOMPARE(codes(*file->accepted("f.csv")), seconds);
    }

    void namesOddRows_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("found"); // row:code …
        const auto row = [](const char *name, const char *bytes, const char *found) {
            QTest::newRow(name) << QByteArray(bytes) << QString(found);
        };
        row("gap", "second,bit_errors\n0,0\n1,0\n3,0\n4,0\n", "4:gap");
        row("doubled", "second,bit_errors\n0,0\n1,0\n1,0\n2,0\n", "4:doubled");
        row("back", "0,0\n1,0\n0,0\n2,0\n", "3:back");
        row("rows 1.2 s apart", "0.0,0\n1.2,0\n2.4,0\n3.6,0\n4.8,0\n6.0,0\n", "4:gap");
        row("rows 0.8 s apart", "0.0,0\n0.8,0\n1.6,0\n2.4,0\n3.2,0\n", "4:doubled");
        row("clock gap", "09:15:00,0\n09:15:02,0\n", "2:gap");
        row("negative", "0,0\n1,-1\n2,0\n", "2:bit_errors");
        row("no number", "0,0\n1,many\n2,\n3,1.5\n", "2:bit_errors 3:bit_errors 4:bit_errors");
        row("more errors than bits", "0,64000\n1,64001\n", "2:too_many");
        row("huge", "0,99999999999999999999999\n", "1:bit_errors");
        row("no second", "0,0\nx,0\n2,0\n", "2:second");
        row("other kind of time", "0,0\n00:00:01,0\n2,0\n", "2:second");
        row("too few columns", "second,bit_errors\n0,0\n1\n2,0\n", "3:columns");
        row("too many columns", "0,0\n1,0,0,7\n2,0\n", "2:columns");
        row("odd yes", "second,bit_errors,sync_lost\n0,0,perhaps\n", "2:sync_lost");
        row("comments count as rows", "# one\nsecond,bit_errors\n# two\n0,0\n0,0\n", "5:doubled");
        row("text behind a quote", "0,0\n\"1\"x,0\n2,0\n", "2:columns");
        row("several", "0,0\n0,0\n5,x\n6,0\n", "2:doubled 3:gap 3:bit_errors");
    }
    void namesOddRows()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, found);
        const auto file = readSecondsFile(bytes, "f.csv", rate);
        QVERIFY(file);
        QStringList texts;
        for (const Finding &finding : file->findings) {
            texts << QString("%1:%2").arg(finding.row).arg(finding.code);
            QCOMPARE(finding.severity, Severity::Error);
            QVERIFY(!finding.reason.isEmpty());
        }
        QCOMPARE(texts.join(' '), found);
        const auto accepted = file->accepted("f.csv");
        QVERIFY(!accepted);
        QCOMPARE(accepted.error().code, ErrorCode::BadInput);
        QVERIFY(
            accepted.error().place.startsWith(QString("f.csv: row %1").arg(file->findings[0].row)));
    }

    void refusesWholeFiles_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("message");
        QTest::newRow("empty") << QByteArray() << "holds no second";
        QTest::newRow("comments alone") << QByteArray("# x\n\n") << "holds no second";
        QTest::newRow("header alone") << QByteArray("second,bit_errors\n") << "holds no second";
        QTest::newRow("not UTF-8") << QByteArray("second,bit_errors\n0,\xff\n") << "UTF-8";
        QTest::newRow("UTF-16") << QByteArray("s\0,\0b\0e\0\n\0", 10)
                                << "is UTF-16: save it as UTF-8";
        QTest::newRow("unknown column")
            << QByteArray("second,bit_errors,level\n0,0,0\n") << "\"level\" is not known";
        QTest::newRow("twice") << QByteArray("second,bit_errors,errors\n0,0,0\n")
                               << "\"bit_errors\" is there twice";
        QTest::newRow("no errors")
            << QByteArray("second,sync_lost\n0,0\n") << "\"bit_errors\" is missing";
        QTest::newRow("no second")
            << QByteArray("bit_errors,sync_lost\n0,0\n") << "\"second\" is missing";
        QTest::newRow("column with a control character")
            << QByteArray("second,bit_errors,a\x07\n0,0,0\n") << "\"a\\u0007\" is not known";
    }
    void refusesWholeFiles()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, message);
        const auto file = readSecondsFile(bytes, "f.csv", rate);
        QVERIFY(!file);
        QCOMPARE(file.error().code, ErrorCode::BadInput);
        QVERIFY2(file.error().text().contains(message), qPrintable(file.error().text()));
        QVERIFY(file.error().place.startsWith("f.csv"));
    }

    void letsNamedColumnsPass()
    {
        const auto file = readSecondsFile("level,second,bit_errors\n-12,0,3\n-11,1,4\n", "f.csv",
                                          rate, {"level"});
        QVERIFY(file);
        QCOMPARE(codes(*file->accepted("f.csv")), "3 4");
    }

    void followsAClockThatDrifts()
    {
        QByteArray bytes;
        for (int i = 0; i < 900; ++i)
            bytes += QByteArray::number(1.015 * i, 'f', 3) + ",0\n";
        const auto file = readSecondsFile(bytes, "f.csv", rate);
        QVERIFY(file);
        QVERIFY(file->findings.empty());
        QCOMPARE(file->seconds.size(), 900u);
    }

    void namesItsFileWhateverItIsCalled()
    {
        const auto file = readSecondsFile("0,0\n0,0\n", "%2 of %3.csv", rate);
        QVERIFY(file);
        QCOMPARE(file->accepted("%2 of %3.csv").error().place,
                 "%2 of %3.csv: row 2, column second");
    }

    void limitsItsFindings()
    {
        QByteArray bytes("0,0\n");
        for (int i = 0; i < 50'000; ++i)
            bytes += "0,0\n";
        const auto file = readSecondsFile(bytes, "f.csv", rate);
        QVERIFY(file);
        QCOMPARE(file->findings.size(), 1000u);
        QCOMPARE(file->furtherFindings, 49'000);
        QVERIFY(file->accepted("f").error().message.endsWith("(and 49999 more)"));
        QCOMPARE(file->findingLines(2),
                 (QStringList{"row 2, column second: second \"0\" is there twice",
                              "row 3, column second: second \"0\" is there twice",
                              "49998 more are odd"}));
    }

    void namesEveryOddRow()
    {
        const auto file = readSecondsFile("second,bit_errors\n0,x\n1,y\n2,1\n3,z\n", "f", rate);
        QVERIFY(file);
        QCOMPARE(file->findingLines(10),
                 (QStringList{"row 2, column bit_errors: \"x\" is not a number of bit errors",
                              "row 3, column bit_errors: \"y\" is not a number of bit errors",
                              "row 5, column bit_errors: \"z\" is not a number of bit errors"}));
        QCOMPARE(file->findingLines(2).last(), "1 more is odd");
    }

    void saysWhatIsOdd_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("line");
        QTest::newRow("NUL behind the number")
            << QByteArray("0,1\n1,5\0\n", 9)
            << "row 2, column bit_errors: \"5\\u0000\" is not a number of bit errors";
        QTest::newRow("escape") << QByteArray("0,1\n\x1b[31m,5\n")
                                << "row 2, column second: \"\\u001b[31m\" is neither a count of "
                                   "seconds nor a time";
        QTest::newRow("day first")
            << QByteArray("31/12/2026 09:15:00,0\n")
            << "row 1, column second: \"31/12/2026 09:15:00\" is no date: with strokes the month "
               "stands first (12/31/2026); or write 2026-12-31";
        QTest::newRow("one missing")
            << QByteArray("0,1\n2,1\n") << "row 2, column second: 1 s is missing before \"2\"";
        QTest::newRow("one column")
            << QByteArray("0,1\n1\n") << "row 2, column second: has 1 column, and 2 are wanted";
    }
    void saysWhatIsOdd()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(QString, line);
        const auto file = readSecondsFile(bytes, "f", rate);
        QVERIFY(file);
        QCOMPARE(file->findingLines(10), QStringList{line});
    }

    void readsWhatWasWritten()
    {
        QVERIFY(rc::check("any seconds, any separator", [] {
            const auto counts = *rc::gen::nonEmpty(
                rc::gen::container<std::vector<int>>(rc::gen::inRange(-1, 64001)));
            const char separator = *rc::gen::element(',', ';', '\t', ' ');
            const int start = *rc::gen::inRange(0, 100'000);
            QByteArray bytes;
            SecondList expected;
            for (std::size_t i = 0; i < counts.size(); ++i) {
                bytes += QByteArray::number(start + int(i)) + separator +
                         (counts[i] < 0 ? QByteArray("L") : QByteArray::number(counts[i])) + '\n';
                expected.push_back(counts[i] < 0 ? Second(std::nullopt) : Second(counts[i]));
            }
            const auto file = readSecondsFile(bytes, "f", rate);
            RC_ASSERT(file.has_value());
            RC_ASSERT(file->findings.empty());
            RC_ASSERT(file->seconds == expected);
        }));
    }

    void isReadByAMap()
    {
        const auto map = ColumnMap::read(
            R"({"columns":{"Zeit 1":"second","Fehler":"bit_errors","Takt":"sync_lost"},
                "values":{"sync_lost":{"weg":"1","da":"0"},"bit_errors":{"keine":"0"}},
                "ignore":["Pegel"]})",
            "m.json");
        QVERIFY2(map, map ? "" : qPrintable(map.error().text()));
        const auto file = readSecondsFile("# log\nZeit 1;Pegel;Fehler;Takt\n0;-3;keine;da\n"
                                          "1;-3;7;da\n2;-40;;weg\n",
                                          "f.csv", rate, {}, *map);
        QVERIFY2(file, file ? "" : qPrintable(file.error().text()));
        QVERIFY(file->findings.empty());
        QCOMPARE(file->seconds, (SecondList{0, 7, std::nullopt}));
        // What is odd is told in the file's own words and lines.
        const auto odd =
            readSecondsFile("Zeit 1;Fehler;Takt\n0;0;da\n1;x;da\n", "f.csv", rate, {}, *map);
        QCOMPARE(odd->findingLines(9).first(),
                 "row 3, column Fehler: \"x\" is not a number of bit errors");
    }
    void aMapThatDoesNotFitIsRefused_data()
    {
        QTest::addColumn<QByteArray>("json");
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<QString>("text");
        QTest::newRow("no header") << QByteArray(R"({"columns":{"E":"bit_errors"}})")
                                   << QByteArray("0,1\n1,2\n") << "f.csv: row 1: has no header";
        QTest::newRow("unknown of ours")
            << QByteArray(R"({"columns":{"E":"errors"}})") << QByteArray("second,E\n0,1\n")
            << "m.json: columns.E: column \"errors\" is not one of ours";
        QTest::newRow("not there")
            << QByteArray(R"({"columns":{"E":"bit_errors","X":"second"}})")
            << QByteArray("second,E\n0,1\n") << "m.json: columns.X: f.csv has no column \"X\"";
        QTest::newRow("not named")
            << QByteArray(R"({"columns":{"E":"bit_errors"}})") << QByteArray("second,E,Z\n0,1,2\n")
            << "f.csv: column \"Z\" is not known";
    }
    void aMapThatDoesNotFitIsRefused()
    {
        QFETCH(QByteArray, json);
        QFETCH(QByteArray, bytes);
        QFETCH(QString, text);
        const auto map = ColumnMap::read(json, "m.json");
        QVERIFY(map);
        const auto file = readSecondsFile(bytes, "f.csv", rate, {}, *map);
        QVERIFY(!file);
        QVERIFY2(file.error().text().startsWith(text), qPrintable(file.error().text()));
    }
};

QTEST_APPLESS_MAIN(SecondsFileTest)
#include "SecondsFileTest.moc"
