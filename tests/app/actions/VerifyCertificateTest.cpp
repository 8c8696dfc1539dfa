// Longer than 400 lines: one certificate, and all that can become of it.

#include "app/actions/VerifyCertificate.h"

#include "app/actions/Acceptance.h"
#include "app/actions/CertificateSet.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/Keys.h"
#include "app/actions/OrderPapers.h"
#include "app/actions/Orders.h"
#include "app/print/PdfFile.h"
#include "core/certificate/CertificateNumber.h"
#include "tests/support/Office.h"
#include "tests/support/Papers.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

std::unique_ptr<Records> acceptedJob(const KeyFolder &keys)
{
    auto records = office();
    records->setKeys(keys);
    if (!importOrders(*records, csv({briFields()}), {"orders.csv"}) ||
        !recordFile(*records, recordBytes(briFields(), briFacts()), "job.json"))
        qFatal("the job cannot be made");
    return records;
}

QByteArray attachment(const QByteArray &pdf, const char *begins)
{
    for (const PdfAttachment &each : readPdf(pdf).attachments)
        if (each.bytes.startsWith(begins))
            return each.bytes;
    return {};
}

} // namespace

class VerifyCertificateTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_records;
    QByteArray m_file;
    std::optional<IssuedCertificate> m_issued;

    KeyFolder keys(const char *name = "keys") const { return KeyFolder(m_folder.filePath(name)); }

    QByteArray issue(Records &records)
    {
        QByteArray file;
        const auto issued = issueCertificate(
            records, {"A-1001", Paper::A4, {}, [&file](const CertificatePaper &made) {
                          file = made.pdf;
                          return Result<void>();
                      }});
        if (!issued)
            qFatal("%s", qPrintable(issued.error().text()));
        m_issued = *issued;
        return file;
    }
    CertificateCheck check() { return *verifyCertificateFile(*m_records, m_file); }
    std::vector<PublicKey> publicKeys(Records &records) const
    {
        return *readPublicKeys(*publicKeyFile(records), "keys");
    }
    QByteArray square() const { return m_issued->mark.proof->claims.text(); }
    /// As another program would save it.
    QByteArray savedAnew() const
    {
        QFile file(m_folder.filePath("issued.pdf"));
        if (!file.open(QIODevice::WriteOnly) || file.write(m_file) < 0)
            qFatal("the temporary folder cannot be written");
        file.close();
        const QString saved = m_folder.filePath("saved.pdf");
        if (certificates::run("qpdf", {file.fileName(), saved}).status != 0)
            qFatal("qpdf does not save it");
        QFile again(saved);
        return again.open(QIODevice::ReadOnly) ? again.readAll() : QByteArray();
    }

private slots:
    void init()
    {
        m_records = acceptedJob(keys());
        m_file = issue(*m_records);
    }

    void itStands()
    {
        const auto now = check();
        QCOMPARE(toText(now.verdict), "genuine");
        QCOMPARE(now.stands, true);
        QVERIFY2(now.because.isEmpty(), qPrintable(now.because));
        QVERIFY(now.isGood());
        QCOMPARE(toText(now.record), "genuine");
        QVERIFY(now.claims);
        QCOMPARE(now.claims->number, m_issued->number);
        QCOMPARE(now.claims->numbers, (QStringList{"217-555-0143", "217-555-0144"}));
        QVERIFY2(now.signedBy.startsWith("station "), qPrintable(now.signedBy));
    }
    void completedItStandsToo()
    {
        QVERIFY(completeOrder(*m_records, "A-1001"));
        const auto now = check();
        QVERIFY2(now.isGood() && now.stands == true, qPrintable(now.because));
    }

    void whatLeavesTheLineAsItWas()
    {
        QVERIFY(completeOrder(*m_records, "A-1001"));
        OrderFields fields = briFields();
        fields["order_number"] = "A-1002";
        fields["order_type"] = "record_only";
        fields["dn_1"] = "2175550143"; // the same number, written otherwise
        fields["remarks"] = "key at the bakery next door";
        QVERIFY(putOrder(*m_records, fields, false));
        QVERIFY(check().stands == true); // it is only planned
        QVERIFY(completeOrder(*m_records, "A-1002"));
        const auto now = check();
        QVERIFY2(now.isGood() && now.stands == true, qPrintable(now.because));
    }

    void whyItStandsNoLonger_data()
    {
        QTest::addColumn<std::function<void(Records &)>>("happens");
        QTest::addColumn<QString>("because");
        const auto good = [](const auto &done) {
            if (!done)
                qFatal("%s", qPrintable(done.error().text()));
        };
        const auto row = [](const char *name, const std::function<void(Records &)> &happens,
                            const char *because) {
            QTest::newRow(name) << happens << QString(because);
        };
        row(
            "cancelled", [=](Records &r) { good(cancelOrder(r, "A-1001", "not wanted")); },
            "Order A-1001 was cancelled.");
        row(
            "voided", [=](Records &r) { good(voidFact(r, uuid(4), "wrong pair was measured")); },
            "wrong pair was measured");
        row(
            "another pair",
            [=](Records &r) {
                OrderFields fields = briFields();
                fields["pair"] = "77";
                good(putOrder(r, fields, true));
            },
            "Since then the pair was changed from 17-204 to 77.");
        row(
            "another number",
            [=](Records &r) {
                OrderFields fields = briFields();
                fields["dn_2"] = "217-555-0149";
                fields["spid_2"] = "21755501490101";
                good(putOrder(r, fields, true));
            },
            "Since then the identifiers of the line were changed.");
        row(
            "a failed run",
            [=](Records &r) {
                QJsonObject bad = run(60, 90);
                bad["bit_errors"] = 100000;
                bad["errored_seconds"] = 600;
                good(recordFile(r, recordBytes(briFields(), {bad}), "later.json"));
            },
            "Order A-1001 is not accepted now");
        // By another order for the circuit, after this one or while it was open still.
        using Fields = std::map<QString, QString>;
        const auto later = [=](Records &r, const char *number, const Fields &changed) {
            OrderFields fields = briFields();
            fields["order_number"] = number;
            for (const auto &[column, text] : changed)
                fields[column] = text;
            good(putOrder(r, fields, false));
            good(completeOrder(r, number));
        };
        row(
            "disconnected",
            [=](Records &r) {
                good(completeOrder(r, "A-1001"));
                later(r, "A-1002", {{"order_type", "disconnect"}});
            },
            "The circuit was disconnected by order A-1002.");
        row(
            "disconnected before it was completed",
            [=](Records &r) {
                later(r, "A-1002", {{"order_type", "disconnect"}});
            },
            "The circuit was disconnected by order A-1002.");
        row(
            "disconnected, and the same line again",
            [=](Records &r) {
                good(completeOrder(r, "A-1001"));
                later(r, "A-1002", {{"order_type", "disconnect"}});
                later(r, "A-1003", {{"order_type", "record_only"}});
            },
            "The circuit was disconnected by order A-1002.");
        const std::pair<Fields, const char *> changes[] = {
            {{{"pair", "78"}},
             "Since then the pair was changed from 17-204 to 78 by order A-1002."},
            {{{"premises", "9 Quay Street"}},
             "Since then the address of the premises was changed from 12 Mill Lane to 9 Quay "
             "Street by order "
             "A-1002."},
            {{{"customer", "Dark Bakery"}}, "Since then the customer was changed from Bright "},
            {{{"tei_2", "70"}}, "Since then the identifiers of the line were changed by"},
            {{{"b2_services", "voice+data"}},
             "Since then the services were changed by order A-1002."}};
        for (const auto &[fields, because] : changes)
            row(
                because,
                [=, changed = fields](Records &r) {
                    Fields both = changed;
                    both["order_type"] = "record_only";
                    good(completeOrder(r, "A-1001"));
                    later(r, "A-1002", both);
                },
                because);
        row(
            "changed by an update of the order",
            [=](Records &r) {
                OrderFields fields = briFields();
                fields["premises"] = "9 Quay Street";
                good(putOrder(r, fields, true));
            },
            "Since then the address of the premises was changed from 12 Mill Lane to 9 Quay "
            "Street.");
        row(
            "another type",
            [=](Records &r) {
                OrderFields fields = briFields();
                fields["order_type"] = "change";
                good(putOrder(r, fields, true));
            },
            "Since then the type of the order was changed.");
    }
    void whyItStandsNoLonger()
    {
        QFETCH(std::function<void(Records &)>, happens);
        QFETCH(QString, because);
        happens(*m_records);
        for (const auto &told :
             {verifyCertificateFile(*m_records, m_file),
              verifyCertificateNumber(*m_records, m_issued->number, m_issued->code),
              verifyCertificateFile(*m_records, square())}) {
            QVERIFY2(told, told ? "" : qPrintable(told.error().text()));
            const CertificateCheck &now = *told;
            QCOMPARE(toText(now.verdict), "genuine"); // the paper is what it was
            QCOMPARE(now.stands, false);
            QVERIFY2(now.because.contains(because), qPrintable(now.because));
            QVERIFY(!now.isGood());
        }
        const auto again = issueCertificate(*m_records, {"A-1001"});
        const bool copied = again && again->copy;
        QVERIFY(copied || !QString(QTest::currentDataTag()).startsWith("disconnected"));
        if (!copied)
            return;
        QVERIFY2(again->because.contains(because), qPrintable(again->because));
        // Wherever it is given out again the same is told.
        QCOMPARE(
            again->doubt(),
            QString("Certificate %1 stands no longer: %2").arg(m_issued->number, again->because));
        const auto set = issueCertificateSet(*m_records, {"A-1001"});
        QVERIFY2(set, set ? "" : qPrintable(set.error().text()));
        QCOMPARE(set->doubts(), QStringList{again->doubt()});
        const auto papers = papersOf(*m_records, {{"A-1001"}, OrderPaper::Certificates});
        QVERIFY2(papers, papers ? "" : qPrintable(papers.error().text()));
        QCOMPARE(papers->doubts, QStringList{again->doubt()});
    }

    void byNumberTheClaimsAreTold()
    {
        const auto now = verifyCertificateNumber(*m_records, m_issued->number, m_issued->code);
        QVERIFY(now && now->isGood());
        QCOMPARE(*now->claims, m_issued->mark.proof->claims.claims);
        const auto wrong = verifyCertificateNumber(*m_records, m_issued->number, "000000000000");
        QCOMPARE(toText(wrong->verdict), "altered");
        QVERIFY(!wrong->isGood());
    }

    void theSquareAlone()
    {
        const auto now = *verifyCertificateFile(*m_records, square() + '\n');
        QVERIFY(now.isGood());
        QCOMPARE(now.stands, true);
        QCOMPARE(*now.claims, m_issued->mark.proof->claims.claims);
        // A true signature under other figures.
        QByteArray forged = square();
        QVERIFY(forged.contains("217-555-0143"));
        forged.replace("217-555-0143", "217-555-0149");
        const auto altered = *verifyCertificateFile(*m_records, forged);
        QCOMPARE(toText(altered.verdict), "altered");
        QVERIFY(!verifyByKeys(forged, publicKeys(*m_records)).isGood());
        QVERIFY(verifyByKeys(square(), publicKeys(*m_records)).isGood());
    }

    /// What the station's key signed, and these records never gave: the key was copied, or they
    /// are older than the paper.
    void aNumberThatWasNeverGiven()
    {
        const auto signer = signerAtHand(*m_records);
        QVERIFY(signer && *signer);
        CertificateClaims claims = m_issued->mark.proof->claims.claims;
        const auto told = [&](const QString &station) {
            claims.number = CertificateNumber{2026, station, 900}.text();
            const SignedClaims signedOnes{claims, (*signer)->secret.sign(claims.text())};
            return *verifyCertificateFile(*m_records, signedOnes.text());
        };
        const auto never = told((*signer)->key.holder);
        QCOMPARE(toText(never.verdict), "unknown");
        QVERIFY2(never.reason.contains("they never gave it"), qPrintable(never.reason));
        QCOMPARE(toText(told("ABC234").verdict), "altered"); // another's number
    }

    void savedAnewItsRecordIsTrue()
    {
        const QByteArray saved = savedAnew();
        QVERIFY(saved != m_file);
        for (const auto &now : {*verifyCertificateFile(*m_records, saved),
                                verifyByKeys(saved, publicKeys(*m_records))}) {
            QCOMPARE(toText(now.verdict), "altered");
            QCOMPARE(toText(now.record), "genuine");
            QVERIFY2(now.reason.contains("do not trust its pages"), qPrintable(now.reason));
            QVERIFY(now.claims);
        }
    }

    void byTheIssuersKeyAlone()
    {
        const auto all = publicKeys(*m_records);
        const auto now = verifyByKeys(m_file, all);
        QVERIFY2(now.isGood(), qPrintable(now.reason));
        QCOMPARE(now.stands, std::nullopt);
        QVERIFY(!now.because.isEmpty());
        QCOMPARE(toText(now.record), "genuine");
        QCOMPARE(now.order, "A-1001");
        // The endorsement in the file leads from the issuer's key to the station's.
        QVERIFY(verifyByKeys(m_file, {all[0]}).isGood());
        QVERIFY(verifyByKeys(m_file, {all[1]}).isGood());
        const auto strangers = acceptedJob(keys("strangers"));
        const auto others = publicKeys(*strangers);
        const auto unknown = verifyByKeys(m_file, others);
        QCOMPARE(toText(unknown.verdict), "unknown");
        QVERIFY(!unknown.claims); // nothing is told as certified that nobody known signed
    }
    void everyByteOfItCounts()
    {
        const auto all = publicKeys(*m_records);
        for (qsizetype at = 8; at < m_file.size(); at += 211) { // without "%PDF-" it is none
            QByteArray changed = m_file;
            changed[at] = char(changed[at] ^ 1);
            QVERIFY2(verifyByKeys(changed, all).verdict == CertificateVerdict::Altered,
                     qPrintable(QString::number(at)));
        }
        // What names the key and holds its signature counts too.
        const qsizetype seal = m_file.lastIndexOf("startxref") - 200;
        for (qsizetype at = seal; at < m_file.size(); ++at) {
            QByteArray changed = m_file;
            changed[at] = char(changed[at] ^ 1);
            QVERIFY2(verifyByKeys(changed, all).verdict == CertificateVerdict::Altered,
                     qPrintable(QString::number(at)));
        }
        QVERIFY(!verifyByKeys({}, all).isGood());
        QVERIFY(!verifyByKeys("%PDF-1.6 hello", all).isGood());
    }
    /// A certificate of somebody who has keys too, and calls himself this station.
    void aForgersOwnKeyHelpsNobody()
    {
        const auto forger = acceptedJob(keys("forger"));
        const QByteArray forged = issue(*forger);
        QVERIFY(verifyByKeys(forged, publicKeys(*forger)).isGood());
        QCOMPARE(toText(verifyByKeys(forged, publicKeys(*m_records)).verdict), "unknown");
        QCOMPARE(toText(verifyCertificateFile(*m_records, forged)->verdict), "unknown");
        // True claims within his file.
        QVERIFY(!attachment(forged, "station ").isEmpty());
    }
    /// Records that do not hold the order, of the same issuer: an office before the van is home.
    void anotherStationOfTheIssuer()
    {
        const auto all = publicKeys(*m_records);
        auto desk = office();
        desk->setKeys(keys("desk"));
        QCOMPARE(toText(verifyCertificateFile(*desk, m_file)->verdict), "unknown");
    }
    void renewedKeysStillProve()
    {
        const QByteArray first = m_file;
        QVERIFY(renewKeys(*m_records, {true, "in use for a year"}));
        m_file = issue(*m_records); // a copy: the claims signed by the old key, the file by the new
        const auto all = publicKeys(*m_records);
        for (const QByteArray &each : {first, m_file}) {
            const auto now = verifyByKeys(each, all);
            QVERIFY2(now.isGood(), qPrintable(now.reason));
            QVERIFY(verifyCertificateFile(*m_records, each)->isGood());
        }
    }
    /// The file of the copy is signed with a key that who checks does not know yet.
    void aCopyCheckedWithTheOldKeysOnly()
    {
        const auto old = publicKeys(*m_records);
        QVERIFY(renewKeys(*m_records, {true, "in use for a year"}));
        const QByteArray copy = issue(*m_records);
        const auto now = verifyByKeys(copy, old);
        QCOMPARE(toText(now.verdict), "unknown");
        QCOMPARE(toText(now.record), "genuine");
        QVERIFY(!now.isGood());
        const auto newest = knownKeys(*m_records)->back().key;
        QVERIFY2(now.reason.contains(groupedFingerprint(newest.fingerprint())),
                 qPrintable(now.reason));
        QByteArray changed = copy;
        changed[copy.size() / 2] = char(changed[copy.size() / 2] ^ 1);
        QCOMPARE(toText(verifyByKeys(changed, old).verdict), "altered");
    }
    void asJson()
    {
        const QJsonObject json = check().toJson();
        QCOMPARE(json["verdict"], "genuine");
        QCOMPARE(json["stands"], true);
        QCOMPARE(json["record"], "genuine");
        QCOMPARE(json["claims"].toObject()["circuit"], "C-77");
        QVERIFY(verifyByKeys(m_file, publicKeys(*m_records)).toJson()["stands"].isNull());
        QVERIFY(CertificateCheck::unknown("x").toJson()["claims"].isNull());
    }
};

QTEST_MAIN(VerifyCertificateTest)
#include "VerifyCertificateTest.moc"
