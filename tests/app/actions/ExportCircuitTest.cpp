#include "app/actions/ExportCircuit.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/VerifyCertificate.h"
#include "app/trust/KeyFolder.h"
#include "core/errortest/SecondsFile.h"
#include "tests/support/Office.h"

#include <QDirIterator>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class ExportCircuitTest : public QObject
{
    Q_OBJECT
    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_records;
    QByteArray m_pdf, m_signedPdf;

    QByteArray issue(Signatures signatures = {})
    {
        QByteArray pdf;
        const auto issued =
            issueCertificate(*m_records, {"A-1001", Paper::Letter, std::move(signatures),
                                          [&pdf](const CertificatePaper &paper) {
                                              pdf = paper.pdf;
                                              return Result<void>();
                                          }});
        if (!issued)
            qFatal("%s", qPrintable(issued.error().text()));
        return pdf;
    }

private slots:
    /// An accepted job with a run second by second, a call to an unpublished number, a certificate,
    /// a copy of it and one that the customer signed later; and a neighbour.
    void init()
    {
        m_records = office();
        QVERIFY(importIssuer(*m_records,
                             "name,address,telephone,trouble_telephone,trouble_hours\n"
                             "Prairie Telephone,4 North Hill,217-555-0170,217-555-0171,always\n",
                             {"issuer.csv"}));
        OrderFields fields = briFields();
        fields["remarks"] = "loopback at " + sentinel;
        QVERIFY(importOrders(*m_records, csv({fields, analogFields()}), {"orders.csv"}));
        QJsonObject seconds = run(80, 300);
        for (const char *key :
             {"bit_errors", "errored_seconds", "severely_errored_seconds", "sync_losses"})
            seconds.remove(key);
        const auto started = Moment::parse(seconds["started"].toString());
        const auto ended = Moment::parse(seconds["ended"].toString());
        QJsonArray list;
        for (int i = 0; i < int(started->secondsUntil(*ended)); ++i)
            list << (i == 5 ? QJsonValue(3) : QJsonValue(0));
        seconds["seconds"] = list;
        QJsonObject dialled = call(81, 310, "B1", "out", "data", "5550199777");
        const auto recorded = recordFile(
            *m_records, recordBytes(briFields(), briFacts() << seconds << dialled), "job.json");
        QVERIFY2(recorded, recorded ? "" : qPrintable(recorded.error().text()));
        QVERIFY(decideOrder(*m_records, "A-1001"));
        m_pdf = issue();
        QVERIFY(issue() != m_pdf); // a copy, which says so
        m_signedPdf =
            issue({{"customer", "Pat Baker", m_records->now(), {{{200, 700}, {900, 250}}}}});
    }

    void holdsAllOfTheCircuitAndNothingElse()
    {
        const QString out = m_folder.filePath("file");
        const auto made = exportCircuit(*m_records, "C-77", out);
        QVERIFY2(made, made ? "" : qPrintable(made.error().text()));
        QCOMPARE(made->orders, 1);
        QCOMPARE(made->certificates, 1);
        QCOMPARE(made->lacking, QStringList());
        QCOMPARE(made->paths.last(), out + "/manifest.json");
        QVERIFY(contentOf(out + "/orders.csv").contains("\r\nA-1001,"));
        QVERIFY(!contentOf(out + "/orders.csv").contains("A-2001"));
        // The papers as they were issued, byte for byte.
        const QStringList papers = QDir(out + "/certificates").entryList(QDir::Files, QDir::Name);
        QCOMPARE(papers.size(), 2);
        QList<QByteArray> bytes;
        for (const QString &paper : papers)
            bytes << contentOf(out + "/certificates/" + paper);
        QVERIFY(bytes.contains(m_pdf));
        QVERIFY(bytes.contains(m_signedPdf));
        // Nothing unpublished, whatever it stood in.
        QDirIterator files(out, QDir::Files, QDirIterator::Subdirectories);
        while (files.hasNext()) {
            const QString path = files.next();
            QVERIFY2(!contentOf(path).contains(sentinel.toUtf8()), qPrintable(path));
        }
        QVERIFY(contentOf(out + "/records/A-1001@K7.json").contains("[number not published]"));
        const auto manifest = *parseJsonObject(contentOf(out + "/manifest.json"), "manifest");
        QCOMPARE(manifest["circuit"], "C-77");
        const QJsonArray listed = manifest["files"].toArray();
        QCOMPARE(listed.size(), made->paths.size() - 1);
        for (const QJsonValue &each : listed)
            QCOMPARE(sha256Hex(contentOf(out + '/' + each["file"].toString())),
                     each["sha256"].toString());
    }
    void itsSecondsAndRecordsAreTakenInElsewhere()
    {
        const QString out = m_folder.filePath("taken");
        QVERIFY(exportCircuit(*m_records, "C-77", out));
        const auto seconds =
            readSecondsFile(contentOf(out + "/runs/" + uuid(80) + ".csv"), "run.csv", 64000);
        QVERIFY(seconds && seconds->findings.empty());
        QCOMPARE(seconds->seconds[5].bitErrors(), 3);
        QVERIFY(contentOf(out + "/runs.csv").contains(QByteArray("A-1001," + uuid(80).toUtf8())));

        auto opened = Records::open(":memory:");
        Records &other = **opened;
        other.setNow(m_records->now());
        QVERIFY(bringShippedLimits(other));
        for (const auto &[name, import] :
             std::initializer_list<std::pair<const char *, decltype(&importOrders)>>{
                 {"offices.csv", importOffices},
                 {"instruments.csv", importInstruments},
                 {"orders.csv", importOrders}}) {
            const auto report = import(other, contentOf(out + '/' + name), {name});
            QVERIFY2(report && report->clean(), name);
        }
        QVERIFY(recordFile(other, contentOf(out + "/records/A-1001@K7.json"), "r.json"));
        QCOMPARE(decideOrder(other, "A-1001")->outcome, decideOrder(*m_records, "A-1001")->outcome);
    }
    void aPaperThatCannotBeMadeAgainIsTold()
    {
        QDir keys(KeyFolder::defaultPath());
        const QString aside = keys.path() + "-aside";
        QVERIFY(QDir().rename(keys.path(), aside));
        const QString out = m_folder.filePath("keyless");
        const auto made = exportCircuit(*m_records, "C-77", out);
        QDir(keys.path()).removeRecursively();
        QVERIFY(QDir().rename(aside, keys.path()));
        QVERIFY2(made, made ? "" : qPrintable(made.error().text()));
        QVERIFY(!made->lacking.isEmpty());
        QVERIFY2(made->lacking.front().contains("key"), qPrintable(made->lacking.front()));
        QVERIFY(!QFile::exists(out + "/certificates"));
        const auto manifest = *parseJsonObject(contentOf(out + "/manifest.json"), "manifest");
        QVERIFY(manifest["certificates"].toArray().first().toObject()["file"].isNull());
    }
    void anUnknownCircuitLeavesNoFolder()
    {
        const QString out = m_folder.filePath("none");
        QCOMPARE(exportCircuit(*m_records, "C-0", out).error().code, ErrorCode::NotFound);
        QVERIFY(!QFile::exists(out));
    }
};

QTEST_MAIN(ExportCircuitTest)
#include "ExportCircuitTest.moc"
