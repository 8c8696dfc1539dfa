#include "core/certificate/CertificateClaims.h"

#include "tests/support/Certificates.h"

#include <QTest>

using namespace loopwright;

class CertificateClaimsTest : public QObject
{
    Q_OBJECT

    const QByteArray m_signature = QByteArray(86, 'A');

    QByteArray signedText() const
    {
        return SignedClaims{CertificateClaims::of(certificates::bri(), "0011"), m_signature}.text();
    }

private slots:
    void aLineForEachClaim()
    {
        const CertificateContent content = certificates::bri();
        const QStringList lines =
            QString::fromUtf8(CertificateClaims::of(content, "0011").text()).split('\n');
        QCOMPARE(lines,
                 (QStringList{"26-K7M4QP-00042-17", "2026-03-04", "accepted", content.circuit,
                              "217-555-0143, 217-555-0144", "", content.digest(), "0011", ""}));
    }
    void exceptionsAreNamed()
    {
        CertificateContent content = certificates::bri();
        content.outcome = OrderOutcome::AcceptedWithException;
        content.criteria[1].excepted = CertificateException{"S1", "the pair is changed", {}};
        const auto claims = CertificateClaims::of(content, "0011");
        QCOMPARE(claims.exceptions, QStringList{content.criteria[1].key});
        QCOMPARE(claims.text().split('\n')[2], QByteArray("accepted_with_exception"));
    }
    void noValueEndsItsLine()
    {
        CertificateContent content = certificates::bri();
        content.circuit = "C-77\n2026-03-05";
        QCOMPARE(CertificateClaims::of(content, "0011").text().count('\n'), 8);
    }
    void theDayIsTheIssuersOwn()
    {
        CertificateContent content = certificates::bri();
        content.issuedAt = certificates::moment("2026-03-04T23:30:00-06:00"); // the 5th in UTC
        QCOMPARE(CertificateClaims::of(content, "0011").date, QDate(2026, 3, 4));
    }
    void readBack()
    {
        const auto read = SignedClaims::parse(signedText(), "square");
        QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
        QCOMPARE(read->claims, CertificateClaims::of(certificates::bri(), "0011"));
        QCOMPARE(read->signature, m_signature);
        QCOMPARE(read->text(), signedText());
    }
    void whatAReaderOfCodesAddsIsPassedOver_data()
    {
        QTest::addColumn<QByteArray>("text");
        const QByteArray crlf = signedText().replace("\n", "\r\n");
        QTest::newRow("a line feed") << signedText() + '\n';
        QTest::newRow("empty lines") << signedText() + "\n\n\n";
        QTest::newRow("carriage returns") << crlf;
        QTest::newRow("carriage returns and empty lines") << crlf + "\r\n\r\n";
        QTest::newRow("a byte-order mark") << "\xef\xbb\xbf" + signedText();
        QTest::newRow("all of it") << "\xef\xbb\xbf" + crlf + "\r\n";
    }
    void whatAReaderOfCodesAddsIsPassedOver()
    {
        QFETCH(QByteArray, text);
        const auto read = SignedClaims::parse(text, "square");
        QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
        QCOMPARE(read->text(), signedText()); // the signature is over what was signed
    }
    void refused_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("place");
        const auto with = [this](int line, const char *value) {
            QByteArrayList lines = signedText().split('\n');
            lines[line - 1] = value;
            return lines.join('\n');
        };
        QTest::newRow("nothing") << QByteArray() << "square";
        QTest::newRow("another number") << with(1, "26-K7M4QP-00043-17") << "square, line 1";
        QTest::newRow("no date") << with(2, "2026-02-30") << "square, line 2";
        QTest::newRow("a longer date") << with(2, "2026-03-04T10:00") << "square";
        QTest::newRow("no outcome") << with(3, "splendid") << "square, line 3";
        QTest::newRow("no digest") << with(7, "abc") << "square, line 7";
        QTest::newRow("no signature") << with(9, "abc") << "square, line 9";
        QTest::newRow("a line more") << signedText() + "\nand more"
                                     << "square";
        QTest::newRow("a list of nothings") << with(6, "loop, ") << "";
        QTest::newRow("carriage returns alone") << signedText().replace("\n", "\r") << "square";
        QTest::newRow("an empty line between") << signedText().replace("\n", "\n\n") << "square";
        QTest::newRow("spaces at the ends of lines")
            << signedText().replace("\n", " \n") << "square, line 3";
        QTest::newRow("two byte-order marks")
            << "\xef\xbb\xbf\xef\xbb\xbf" + signedText() << "square";
        QTest::newRow("bytes that are no UTF-8") << with(4, "C\xff") << "square";
        QTest::newRow("a megabyte") << with(4, QByteArray(1000000, 'C')) << "square";
    }
    void refused()
    {
        QFETCH(QByteArray, text);
        QFETCH(QString, place);
        const auto read = SignedClaims::parse(text, "square");
        if (place.isEmpty()) { // nothing else than what was signed would be read of it
            QVERIFY(!read || read->text() == text);
            return;
        }
        QVERIFY(!read);
        QCOMPARE(read.error().code, ErrorCode::BadInput);
        QCOMPARE(read.error().place, place);
    }
};

QTEST_APPLESS_MAIN(CertificateClaimsTest)
#include "CertificateClaimsTest.moc"
