#include "app/actions/Issuing.h"

#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "db/Connection.h"
#include "tests/support/Office.h"
#include "tests/support/Papers.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

const QByteArray issuerCsv =
    "name,address,telephone,trouble_telephone,trouble_hours\n"
    "Prairie Telephone Cooperative,4 North Hill,217-555-0170,217-555-0171,every day\n";

void take(Records &records, const OrderFields &fields, const QList<QJsonObject> &facts)
{
    const auto report =
        recordFile(records, canonicalJson(record(order(fields), facts)), "job.json");
    if (!report)
        qFatal("%s", qPrintable(report.error().text()));
}

std::unique_ptr<Records> accepted(OrderFields fields = briFields())
{
    auto records = office();
    if (!importIssuer(*records, issuerCsv, {"issuer.csv"}))
        qFatal("the issuer is not taken in");
    if (!importOrders(*records, csv({fields}), {"orders.csv"}))
        qFatal("the order is not taken in");
    take(*records, fields, briFacts());
    return records;
}

struct Issued
{
    QByteArray pdf;
    std::optional<IssuedCertificate> issued;
    QString trouble;

    QString text() const { return papers::textOfPdf(pdf); }
};
Issued issue(Records &records, Signatures signatures = {})
{
    Issued made;
    const auto issued = issueCertificate(records, {"A-1001", Paper::A4, std::move(signatures),
                                                   [&made](const CertificatePaper &paper) {
                                                       made.pdf = paper.pdf;
                                                       return Result<void>();
                                                   }});
    if (issued)
        made.issued = *issued;
    else
        made.trouble = issued.error().message;
    return made;
}

Signature drawn(const char *role, const char *name)
{
    return {role, name, *Moment::parse(u"2026-03-05T12:30:00-06:00"), {{{200, 700}, {900, 250}}}};
}

} // namespace

class IssuingTest : public QObject
{
    Q_OBJECT

private slots:
    void namesIssuerAndWhomToCall()
    {
        auto records = accepted();
        VERIFY_IN_ORDER(issue(*records).text(),
                        {"When the line fails",
                         "call 217-555-0171 (every day), and name circuit C-77", "Issued by",
                         "Prairie Telephone Cooperative", "4 North Hill", "217-555-0170"});
        // The office's own desk goes before the issuer's.
        ImportOptions update{"offices.csv"};
        update.update = true;
        QVERIFY(importOffices(*records,
                              "office,name,protocol_variant,test_lines,trouble_telephone\n"
                              "NORTH,North Street,ni2,loopback=5550199777,217-555-0182\n",
                              update));
        const Issued copy = issue(*records);
        QVERIFY2(copy.issued && copy.issued->copy, "whom to call changes no certificate");
    }

    void refusedWithoutWhatEveryPaperNames_data()
    {
        QTest::addColumn<QString>("column");
        QTest::newRow("customer") << "customer";
        QTest::newRow("premises") << "premises";
    }
    void refusedWithoutWhatEveryPaperNames()
    {
        QFETCH(QString, column);
        OrderFields fields = briFields();
        fields[column] = "";
        auto records = accepted(fields);
        const Issued refused = issue(*records);
        QVERIFY(!refused.issued);
        QVERIFY(refused.pdf.isEmpty());
        QVERIFY2(refused.trouble.contains("names no " + column), qPrintable(refused.trouble));
        QVERIFY(showOrder(*records, "A-1001")->certificates.empty());
    }

    void refusedWithoutAFont()
    {
        OrderFields fields = briFields();
        fields["customer"] = QString::fromUcs4(U"\U00012000") + " Bakery";
        auto records = accepted(fields);
        const Issued refused = issue(*records);
        QVERIFY2(refused.trouble.contains("U+12000"), qPrintable(refused.trouble));
        QVERIFY(showOrder(*records, "A-1001")->certificates.empty());
    }

    /// Issued unsigned, signed later: a further issue of the same certificate.
    void countersigned()
    {
        auto records = accepted();
        const Issued first = issue(*records);
        QVERIFY(first.text().contains("Customer: not signed when this was issued"));
        const Issued second = issue(*records, {drawn("customer", "Alex Customer")});
        QVERIFY(!second.issued->copy && second.issued->mark.countersigns);
        QCOMPARE(second.issued->number, first.issued->number);
        QCOMPARE(second.issued->digest, first.issued->digest);
        QVERIFY(second.text().contains("Issue 2, signed on 5 March 2026"));
        QVERIFY(
            second.text().contains("Customer: Alex Customer, signed after the first issue, on"));
        QVERIFY(second.text().contains("Installer: not signed when this was issued"));
        // The signature stays; nobody signs over it.
        const Issued third =
            issue(*records, {drawn("installer", "Kim Carver"), drawn("customer", "Somebody Else")});
        QVERIFY(third.issued->mark.countersigns);
        QVERIFY(third.text().contains("Alex Customer") && third.text().contains("Kim Carver"));
        QVERIFY(!third.text().contains("Somebody Else"));
        const Issued copy = issue(*records);
        QVERIFY(copy.issued->copy && !copy.issued->mark.countersigns);
        QVERIFY(copy.text().contains("Alex Customer"));
        for (const Issued *each : {&first, &second, &third, &copy})
            QCOMPARE(toText(verifyCertificateFile(*records, each->pdf)->verdict), "genuine");
        QVERIFY(verifyHistory(*records)->broken.empty());
    }

    /// What is due is not sealed: whoever edits it changes which paper is made next, and none.
    void whatIsDueChangesNoPaper()
    {
        auto records = accepted();
        const Database &database = records->database();
        const auto due = [&connection = database.connection()] {
            return connection.number("SELECT count(*) FROM paper_due").value_or(-1);
        };
        QByteArray lost;
        QVERIFY(!issueCertificate(
            *records,
            {"A-1001", Paper::A4, {}, [&lost](const CertificatePaper &made) -> Result<void> {
                 lost = made.pdf;
                 return failure(ErrorCode::DiskTrouble, "no space is left");
             }}));
        QVERIFY(!lost.isEmpty());
        QCOMPARE(due(), 1);
        QVERIFY(editPast(database, "DELETE FROM paper_due"));
        const Issued copy = issue(*records);
        QVERIFY2(copy.issued && copy.issued->copy, qPrintable(copy.trouble));
        QVERIFY(copy.pdf != lost);
        QCOMPARE(due(), 0);
        QVERIFY(editPast(database, "INSERT INTO paper_due SELECT min(id) FROM certificate_issue"));
        const Issued again = issue(*records);
        QVERIFY2(again.issued && !again.issued->copy, qPrintable(again.trouble));
        QCOMPARE(again.pdf, lost);
        QCOMPARE(due(), 0);
        for (const Issued *each : {&copy, &again})
            QCOMPARE(toText(verifyCertificateFile(*records, each->pdf)->verdict), "genuine");
        QVERIFY(verifyHistory(*records)->broken.empty());
    }

    /// What was signed stays in the certificate that it was issued with.
    void signedAtOnce()
    {
        auto records = accepted();
        const Issued first = issue(*records, {drawn("installer", "Kim Carver")});
        QVERIFY(first.text().contains("Installer: Kim Carver, 5 March 2026, 12:30 (UTC-06:00)"));
        QVERIFY(!issue(*records).text().contains("signed after the first issue"));
    }

    void aReplacementSaysWhatAndWhy()
    {
        auto records = accepted();
        const Issued first = issue(*records);
        QVERIFY(voidFact(*records, uuid(3), "wrong pair was measured"));
        take(*records, briFields(),
             {fact(60, "loop", 70,
                   {{"dc_resistance_ohm", 640}, {"loss_db", 30.1}, {"frequency_hz", 40000}})});
        const Issued second = issue(*records);
        QVERIFY2(second.issued, qPrintable(second.trouble));
        QVERIFY(second.issued->number != first.issued->number);
        VERIFY_IN_ORDER(second.text(),
                        {"It takes the place of certificate " + first.issued->number,
                         "because:", "wrong pair was measured", "new evidence for:", "Loop"});
        QVERIFY(!issue(*records).text().contains("takes the place of certificate " +
                                                 second.issued->number));
    }

    /// The records were written long after what they tell of.
    void lateRecordingIsTold()
    {
        auto records = accepted();
        VERIFY_IN_ORDER(issue(*records).text(),
                        {"Recorded later", "dated 4 March 2026 were recorded"});
    }

    /// In whatever digits it was typed.
    void noUnpublishedNumberInAnyDigits()
    {
        OrderFields fields = briFields();
        fields["customer"] = QString::fromUtf8("Bakery ５５５ ０１９ ９７７７");
        fields["contact"] = "Kim, 555-O19-9777";
        fields["remarks"] = sentinel;
        fields["nt_power"] = "socket by 555 019 9777";
        auto records = accepted(fields);
        const Issued made = issue(*records);
        // No font for full-width digits may be there: they are covered before they are printed.
        QVERIFY2(made.issued, qPrintable(made.trouble));
        QString plain = made.text() + QString::fromUtf8(made.issued->content.record());
        plain.remove(' ').remove('-');
        QVERIFY(!plain.contains(sentinel));
        QVERIFY(!plain.contains("O19"));
        QVERIFY(!plain.contains(QString::fromUtf8("５５５")));
        QVERIFY(made.text().contains(NumberGuard::covered()));
    }
};

QTEST_MAIN(IssuingTest)
#include "IssuingTest.moc"
