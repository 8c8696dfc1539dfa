#include "app/cli/Layout.h"

#include "app/cli/Answer.h"
#include "app/cli/Options.h"

#include <QTest>

using namespace loopwright;

class LayoutTest : public QObject
{
    Q_OBJECT

private slots:
    void tablesAlign()
    {
        ColumnLayout table({"key", ">value"});
        table.add({"a", "1"});
        table.add({"longer", "1000"});
        QCOMPARE(table.text(), QString("key     value\n"
                                       "------  -----\n"
                                       "a           1\n"
                                       "longer   1000\n"));
    }

    void theLastColumnIsWrapped()
    {
        ColumnLayout table({"key", "value"});
        table.add({"a", QString("word ").repeated(40).trimmed()});
        const QStringList lines = table.text().trimmed().split('\n');
        QCOMPARE(lines.size(), 4);
        for (const QString &line : lines)
            QVERIFY(line.size() <= tableWidth());
        QVERIFY(lines[2].startsWith("a    word word"));
        QVERIFY(lines[3].startsWith("     word word"));
        QCOMPARE(table.text().count("word"), 40);
    }

    void labelsAlignAndEmptyValuesAreLeftOut()
    {
        const QString text =
            LabelledLines().add("One", "1").add("None", "").add("Three", "3").text();
        QCOMPARE(text, QString("One    1\nThree  3\n"));
    }

    void longLinesAreWrapped_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("expected");
        QTest::newRow("empty") << ""
                               << "";
        QTest::newRow("short") << "a b"
                               << "a b";
        QTest::newRow("exact") << "aaaa bbbbb"
                               << "aaaa bbbbb";
        QTest::newRow("long") << "aaaa bbbbbb cc"
                              << "aaaa\n  bbbbbb\n  cc";
        QTest::newRow("one long word") << "aaaaaaaaaaaaaa b"
                                       << "aaaaaaaaaaaaaa\n  b";
    }
    void longLinesAreWrapped()
    {
        QFETCH(QString, text);
        QFETCH(QString, expected);
        QCOMPARE(wrapped(text, 2, 10), expected);
    }

    void findingsTellTheirPlace_data()
    {
        QTest::addColumn<int>("row");
        QTest::addColumn<QString>("field");
        QTest::addColumn<QString>("repair");
        QTest::addColumn<QString>("expected");
        QTest::newRow("whole") << 3 << "dn_1"
                               << "555"
                               << "f.csv: row 3, column dn_1: bad (repair: 555)";
        QTest::newRow("row alone") << 3 << ""
                                   << ""
                                   << "f.csv: row 3: bad";
        QTest::newRow("field alone") << 0 << "dn_1"
                                     << ""
                                     << "f.csv: dn_1: bad";
        QTest::newRow("neither") << 0 << ""
                                 << ""
                                 << "f.csv: bad";
    }
    void findingsTellTheirPlace()
    {
        QFETCH(int, row);
        QFETCH(QString, field);
        QFETCH(QString, repair);
        QFETCH(QString, expected);
        QCOMPARE(findingLine({Severity::Error, "code", "bad", repair, field, row}, "f.csv"),
                 expected);
    }

    void oneLineHasNoControls()
    {
        QCOMPARE(oneLine("a\r\nb\tc\x1b[1m\u202e\u2028 d "), QString("a b c [1m d"));
    }

    void timesOfTheCommandLine_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("utc");
        QTest::newRow("complete") << "2026-03-04T09:15:00+01:00"
                                  << "2026-03-04T08:15:00Z";
        QTest::newRow("to the minute") << "2026-03-04T09:15Z"
                                       << "2026-03-04T09:15:00Z";
        QTest::newRow("of this machine") << "2026-03-04T09:15:00"
                                         << "2026-03-04T14:15:00Z";
        QTest::newRow("a day of this machine") << "2026-03-04"
                                               << "2026-03-04T05:00:00Z";
        QTest::newRow("summer time") << "2026-07-04T09:15:00"
                                     << "2026-07-04T13:15:00Z";
        QTest::newRow("no time") << "noon"
                                 << "";
        QTest::newRow("no day") << "2026-02-30"
                                << "";
        QTest::newRow("empty") << ""
                               << "";
    }
    void timesOfTheCommandLine()
    {
        QFETCH(QString, text);
        QFETCH(QString, utc);
        qputenv("TZ", "America/New_York");
        if (QDateTime(QDate(2026, 3, 4), QTime(0, 0)).offsetFromUtc() != -5 * 3600)
            QSKIP("the zones of the world are not installed here");
        const auto moment = momentFromCommandLine(text);
        QCOMPARE(moment ? moment->utcText() : QString(), utc);
    }
};

QTEST_APPLESS_MAIN(LayoutTest)
#include "LayoutTest.moc"
