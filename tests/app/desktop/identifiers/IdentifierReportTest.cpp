#include "app/desktop/identifiers/IdentifierReport.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class IdentifierReportTest : public QObject
{
    Q_OBJECT

private slots:
    void linesAreTakenAsTyped()
    {
        const IdentifierInput input =
            identifierInput("21755501430101, 217-555-0143\n\n217 555 0144 01 01\n", "ni2");
        const auto report = checkIdentifiers(input, "list");
        QVERIFY(report);
        QCOMPARE(report->count.rows, 2);
        QCOMPARE(report->rows[0].line, 1);
        QCOMPARE(report->rows[0].variant, "ni2");
        QCOMPARE(report->rows[0].spid, "21755501430101");
        QCOMPARE(report->rows[0].dn, "217-555-0143");
        QCOMPARE(report->rows[1].line, 3); // the blank line keeps its place
        QCOMPARE(report->rows[1].dn, "");
    }

    void aHeaderMakesItAFile_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("plain") << QByteArray("variant,spid,dn\nni2,21755501430101,\n");
        QTest::newRow("other order") << QByteArray("dn,spid,variant\n,21755501430101,ni2\n");
        QTest::newRow("byte-order mark")
            << QByteArray("\xef\xbb\xbfvariant,spid,dn\nni2,21755501430101,\n");
        QTest::newRow("CR LF") << QByteArray("variant,spid,dn\r\nni2,21755501430101,\r\n");
    }
    void aHeaderMakesItAFile()
    {
        QFETCH(QByteArray, text);
        const auto report = checkIdentifiers(identifierInput(text, "dss1"), "list");
        QVERIFY(report);
        QCOMPARE(report->count.rows, 1);
        QCOMPARE(report->count.ok, 1);
        QCOMPARE(report->rows[0].variant, "ni2");
        QCOMPARE(report->rows[0].line, 2); // lines of the file, the header being 1
    }

    void anyBytesAreSurvived_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("blank") << QByteArray("\n\n \n");
        QTest::newRow("not UTF-8") << QByteArray("\xff\xfe\x00\x01", 4);
        QTest::newRow("open quote") << QByteArray("\"217555");
        QTest::newRow("half a header") << QByteArray("variant,spid\n1,2\n");
        QTest::newRow("header alone") << QByteArray("variant,spid,dn");
    }
    void anyBytesAreSurvived()
    {
        QFETCH(QByteArray, text);
        const auto report = checkIdentifiers(identifierInput(text, "ni2"), "list");
        QVERIFY(report || !report.error().message.isEmpty());
    }

    void savesWhatTheCommandLineWrites()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("verdicts.csv");
        const IdentifierInput input = identifierInput("2175550143O101\n", "ni2");
        const auto saved = saveVerdicts(input, "list", path);
        QVERIFY(saved);
        QCOMPARE(*saved, 1);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        QByteArray expected;
        QVERIFY(checkIdentifierList(input.csv, "list", [&](QByteArrayView piece) -> Result<void> {
            expected.append(piece);
            return {};
        }));
        QCOMPARE(bytes, expected);
        QVERIFY(bytes.startsWith("variant,spid,dn,verdict,code,reason,repair\r\n"));
        QVERIFY2(bytes.contains("21755501430101"), bytes.constData()); // the repair
    }

    void aFolderThatIsNotThereIsTold()
    {
        const auto saved =
            saveVerdicts(identifierInput("1\n", "ni2"), "list", "/no/such/folder/v.csv");
        QVERIFY(!saved);
        QCOMPARE(saved.error().code, ErrorCode::DiskTrouble);
    }
};

QTEST_MAIN(IdentifierReportTest)
#include "IdentifierReportTest.moc"
