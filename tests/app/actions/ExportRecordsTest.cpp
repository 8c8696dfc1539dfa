#include "app/actions/ExportRecords.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/Evidence.h"
#include "app/actions/InstrumentLabels.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "db/FactStore.h"
#include "db/InstrumentStore.h"
#include "db/OfficeStore.h"
#include "tests/support/Office.h"

#include <QDir>
#include <QDirIterator>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

void written(const QString &path, const QByteArray &content)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
        qFatal("cannot write %s", qPrintable(path));
}
QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// Sums and rows as another program reads them: every table goes into SQLite through Python's own
/// reader of CSV, every document through its reader of JSON.
const char *const readAll = R"(
import csv, hashlib, json, os, sqlite3, sys
folder = sys.argv[1]
manifest = json.load(open(os.path.join(folder, 'manifest.json'), encoding='utf-8'))
db = sqlite3.connect(':memory:')
named = set()
for entry in manifest['files']:
    path = os.path.join(folder, entry['file'])
    data = open(path, 'rb').read()
    assert hashlib.sha256(data).hexdigest() == entry['sha256'], entry
    assert len(data) == entry['bytes'], entry
    named.add(entry['file'])
    if path.endswith('.json'):
        json.loads(data.decode('utf-8'))
        continue
    rows = list(csv.reader(open(path, encoding='utf-8', newline=''), strict=True))
    table = entry['file'][:-4]
    db.execute('CREATE TABLE "%s" (%s)' % (table, ','.join('"%s"' % c for c in rows[0])))
    for row in rows[1:]:
        assert len(row) == len(rows[0]), (entry, row)
        db.execute('INSERT INTO "%s" VALUES (%s)' % (table, ','.join('?' * len(row))), row)
for root, _, files in os.walk(folder):
    for name in files:
        path = os.path.relpath(os.path.join(root, name), folder)
        assert path in named or path == 'manifest.json', path
print(db.execute('SELECT count(*) FROM orders').fetchone()[0],
      db.execute('SELECT count(*) FROM service_order JOIN orders USING (order_number)').fetchone()[0],
      db.execute('SELECT remarks FROM orders WHERE order_number = ?', ('A-1001',)).fetchone()[0])
)";

/// What is typed of an order to the far end of a spreadsheet's patience.
const QString nastyRemark = QStringLiteral("=1+1, \"quoted\" \u2014 and more");

std::unique_ptr<Records> withJobs()
{
    auto records = office();
    OrderFields bri = briFields();
    bri["remarks"] = nastyRemark;
    QByteArray orders = csv({analogFields()});
    if (!importOrders(*records, orders, {"orders.csv"}) || !putOrder(*records, bri, false))
        qFatal("the orders are not taken in");
    const auto take = [&](const OrderFields &fields, const QList<QJsonObject> &facts) {
        const auto report =
            recordFile(*records, canonicalJson(record(order(fields), facts)), "job.json");
        if (!report)
            qFatal("%s", qPrintable(report.error().text()));
    };
    take(briFields(), briFacts());
    QList<QJsonObject> ofTheOther = analogFacts();
    for (QJsonObject &each : ofTheOther)
        each["id"] = each["id"].toString().replace(0, 8, "00000001");
    take(analogFields(), ofTheOther);
    return records;
}

QJsonObject decisionOf(Records &records, const QString &number)
{
    const auto view = showOrder(records, number);
    if (!view)
        qFatal("%s", qPrintable(view.error().text()));
    return view->decision.toJson();
}

/// Takes an export in, into records that hold nothing.
std::unique_ptr<Records> takenIn(const QString &folder)
{
    auto opened = Records::open(":memory:");
    auto records = std::move(*opened);
    records->actAs("Dana");
    records->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
    if (!bringShippedLimits(*records))
        qFatal("no limits");
    const auto good = [](const Result<ImportReport> &report) {
        if (!report || !report->clean())
            qFatal("%s", report ? report->rejects.constData() : qPrintable(report.error().text()));
    };
    const auto file = [&](const char *name) { return contentOf(folder + '/' + name); };
    good(importOffices(*records, file("offices.csv"), {"offices.csv"}));
    good(importInstruments(*records, file("instruments.csv"), {"instruments.csv"}));
    good(importOrders(*records, file("orders.csv"), {"orders.csv"}));
    for (const char *part : {"records", "records_after"}) {
        const QDir there(folder + '/' + part);
        const QStringList names = there.entryList(QDir::Files, QDir::Name);
        for (const QString &name : names) {
            const auto report = recordFile(*records, contentOf(there.filePath(name)), name);
            if (!report)
                qFatal("%s", qPrintable(report.error().text()));
        }
    }
    good(importInstallers(*records, file("installers.csv"), {"installers.csv"}));
    return records;
}

} // namespace

class ExportRecordsTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;

private slots:
    void exportIsWholeAndHidesTheUnpublished()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        QTemporaryDir folder;
        const auto files = exportRecords(*records, {folder.filePath("out"), false});
        QVERIFY(files);
        bool found = false;
        for (const QString &path : *files) {
            QFile file(path);
            QVERIFY(file.open(QIODevice::ReadOnly));
            const QByteArray bytes = file.readAll();
            QVERIFY2(!bytes.contains(sentinel.toUtf8()), qPrintable(path));
            found = found || bytes.contains("Bright Bakery");
        }
        QVERIFY(found);
        const auto all = exportRecords(*records, {folder.filePath("all"), true});
        QCOMPARE(all->size(), files->size() + 1);
        QVERIFY(contentOf(folder.filePath("all/offices.csv"))
                    .contains(QByteArray("loopback=" + sentinel.toUtf8())));
    }
    void exportHidesTheUnpublishedWhereTheyWereDialled()
    {
        auto records = office();
        OrderFields order = briFields();
        order["remarks"] = "the loopback is at " + sentinel;
        QVERIFY(importOrders(*records, csv({order}), {"orders.csv"}));
        const QString record = QString(R"({"order":"%1","facts":[
            {"kind":"call","at":"2026-03-05T10:00:00-06:00","channel":"B1","direction":"out",
             "service":"data","outcome":"ok","dn":"%2"},
            {"kind":"note","at":"2026-03-05T10:01:00-06:00","text":"called %2 twice"}]})")
                                   .arg(order["order_number"], sentinel);
        QVERIFY(recordFile(*records, record.toUtf8(), "job.json"));
        QVERIFY(decideOrder(*records, order["order_number"]));
        QTemporaryDir folder;
        for (const bool internal : {false, true}) {
            const auto files = exportRecords(*records, {folder.filePath("out"), internal});
            QVERIFY(files);
            int told = 0;
            for (const QString &path : *files) {
                QFile file(path);
                QVERIFY(file.open(QIODevice::ReadOnly));
                told += file.readAll().contains(sentinel.toUtf8()) ? 1 : 0;
            }
            QVERIFY2(internal ? told >= 4 : told == 0, qPrintable(QString::number(told)));
        }
    }

    void comesBackAsTheSameOrdersAndDecisions()
    {
        auto records = withJobs();
        // A further calibration, and an entry that was wrong and was struck out.
        ImportOptions update{"instruments.csv"};
        update.update = true;
        QVERIFY(importInstruments(*records,
                                  "instrument,serial,kind,calibrated_on,calibration_due\n"
                                  "TS-4,S-1021,basic-rate test set,2026-02-01,not_required\n",
                                  update));
        QJsonObject wrong = fact(90, "note", 200, {{"text", "wrong line"}});
        QVERIFY(recordFile(*records, recordBytes(briFields(), {wrong}), "w.json"));
        QVERIFY(voidFact(*records, uuid(90), "it was the other line"));
        const QString out = m_folder.filePath("whole");
        const auto files = exportRecords(*records, {out, true});
        QVERIFY2(files, files ? "" : qPrintable(files.error().text()));
        QCOMPARE(files->last(), out + "/manifest.json");

        auto again = takenIn(out);
        const auto before = boardRows(*records, {}), after = boardRows(*again, {});
        QCOMPARE(after->size(), 2u);
        for (std::size_t i = 0; i < before->size(); ++i) {
            const QString number = (*before)[i].order;
            QCOMPARE((*after)[i].toJson({}), (*before)[i].toJson({}));
            QCOMPARE(showOrder(*again, number)->order.fields(),
                     showOrder(*records, number)->order.fields());
            QJsonObject was = decisionOf(*records, number), is = decisionOf(*again, number);
            QCOMPARE(was["outcome"], "accepted");
            for (QJsonObject *each : {&was, &is})
                each->remove("id"), each->remove("decision");
            QCOMPARE(is["criteria"], was["criteria"]);
            QCOMPARE(is["outcome"], was["outcome"]);
        }
        QCOMPARE(InstrumentStore(again->database()).find("TS-4")->value().calibrations.size(), 2);
        QCOMPARE(OfficeStore(again->database()).testLines("NORTH")->size(), 1);
        QVERIFY(!FactStore(again->database()).find(uuid(90))->has_value());
        QVERIFY(contentOf(out + "/voids.csv").contains(QByteArray(uuid(90).toUtf8() + ",A-1001,")));
        QCOMPARE(QDir(out + "/records_voided").entryList(QDir::Files),
                 QStringList{"A-1001@K7.json"});
    }
    void anotherProgramReadsIt()
    {
        auto records = withJobs();
        const QString out = m_folder.filePath("read");
        QVERIFY(exportRecords(*records, {out, false}));
        QProcess python;
        python.start("python3", {"-c", readAll, out});
        QVERIFY(python.waitForFinished(60'000));
        QCOMPARE(python.readAllStandardError(), QByteArray());
        QCOMPARE(QString::fromUtf8(python.readAllStandardOutput()), "2 2 " + nastyRemark + '\n');
    }
    void cellsAreSafeForASpreadsheetOnlyIfAsked()
    {
        auto records = withJobs();
        const QString plain = m_folder.filePath("plain"), safe = m_folder.filePath("safe");
        QVERIFY(exportRecords(*records, {plain, false, false}));
        QVERIFY(exportRecords(*records, {safe, false, true}));
        QVERIFY(contentOf(plain + "/orders.csv").contains("\"=1+1, \"\"quoted"));
        QVERIFY(contentOf(safe + "/orders.csv").contains("\"'=1+1, \"\"quoted"));
    }
    /// Whoever imports the file must not confirm by it what nobody looked at.
    void anInstrumentAsLabelledStandsApart()
    {
        auto records = office();
        QVERIFY(labelInstrument(*records, {"TS-9", "S-77", "handset", "2025-09-01", "2026-09-01"}));
        const QString out = m_folder.filePath("labelled");
        QVERIFY(exportRecords(*records, {out, false}));
        QVERIFY(!contentOf(out + "/instruments.csv").contains("TS-9"));
        QCOMPARE(contentOf(out + "/instruments_as_labelled.csv"),
                 QByteArray("instrument,serial,kind,calibrated_on,calibration_due\r\n"
                            "TS-9,S-77,handset,2025-09-01,2026-09-01\r\n"));
        // Taken in again where it came from, it changes nothing.
        const auto report =
            importInstruments(*records, contentOf(out + "/instruments.csv"), {"instruments.csv"});
        QCOMPARE(report->unchanged, 1);
        QVERIFY(InstrumentStore(records->database()).find("TS-9")->value().asLabelled);
    }
    /// The circuit that holds a number keeps it: a cancelled order may have had it first.
    void whoHoldsANumberStandsFirst()
    {
        auto records = office();
        OrderFields first = briFields(), second = briFields();
        first["order_number"] = "A-1";
        first["circuit_number"] = "C-1";
        QVERIFY(importOrders(*records, csv({first}), {"orders.csv"})->clean());
        QVERIFY(cancelOrder(*records, "A-1", "the customer moved"));
        QVERIFY(importOrders(*records, csv({second}), {"orders.csv"})->clean());
        const QString out = m_folder.filePath("held");
        QVERIFY(exportRecords(*records, {out, true}));
        const QByteArray orders = contentOf(out + "/orders.csv");
        QVERIFY(orders.indexOf("\nA-1001,") < orders.indexOf("\nA-1,"));
    }
    /// A file without the column of test lines takes none away.
    void withoutItsTestLinesAnOfficeStaysAsItIs()
    {
        auto records = office();
        const QString out = m_folder.filePath("open");
        QVERIFY(exportRecords(*records, {out, false}));
        const QByteArray offices = contentOf(out + "/offices.csv");
        QVERIFY(!offices.contains("test_lines"));
        QCOMPARE(importOffices(*records, offices, {"offices.csv"})->unchanged, 1);
        QCOMPARE(OfficeStore(records->database()).testLines("NORTH")->size(), 1);
    }
    /// Nothing of an earlier one is handed out with it, least of all the unpublished numbers.
    void anEarlierExportGoesAndNothingElse()
    {
        auto records = withJobs();
        const QString out = m_folder.filePath("again");
        QVERIFY(exportRecords(*records, {out, true}));
        QVERIFY(QFile::exists(out + "/office_test_line.csv"));
        QVERIFY(exportRecords(*records, {out, false}));
        QVERIFY(!QFile::exists(out + "/office_test_line.csv"));
        for (QDirIterator file(out, QDir::Files, QDirIterator::Subdirectories); file.hasNext();)
            QVERIFY2(!contentOf(file.next()).contains(sentinel.toUtf8()),
                     qPrintable(file.filePath()));
        const QString other = m_folder.filePath("other");
        QVERIFY(QDir().mkpath(other));
        written(other + "/mine.txt", "mine");
        const auto refused = exportRecords(*records, {other, false});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Usage);
        QCOMPARE(QDir(other).entryList(QDir::Files), QStringList{"mine.txt"});
        written(other + "/manifest.json",
                R"({"form":1,"files":[{"file":"../again/manifest.json"}]})");
        QFile::remove(other + "/mine.txt");
        QVERIFY(exportRecords(*records, {other, false}));
        QVERIFY(QFile::exists(out + "/manifest.json")); // no name leads out of the folder
    }
    void stoppedItHasNoManifest()
    {
        auto records = withJobs();
        const QString out = m_folder.filePath("stopped");
        const auto files =
            exportRecords(*records, {out, false, false, [](qint64, qint64) { return false; }});
        QVERIFY(!files);
        QCOMPARE(files.error().code, ErrorCode::Refused);
        QVERIFY(!QFile::exists(out));
        // What was there before stays whole.
        QVERIFY(exportRecords(*records, {out, false}));
        const QByteArray before = contentOf(out + "/manifest.json");
        QVERIFY(
            !exportRecords(*records, {out, false, false, [](qint64, qint64) { return false; }}));
        QCOMPARE(contentOf(out + "/manifest.json"), before);
        QCOMPARE(QDir(out).entryList({".export-*"}, QDir::Dirs | QDir::Hidden), QStringList());
    }
};

QTEST_MAIN(ExportRecordsTest)
#include "ExportRecordsTest.moc"
