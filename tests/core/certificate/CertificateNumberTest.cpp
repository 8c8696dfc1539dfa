#include "core/certificate/CertificateNumber.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

class CertificateNumberTest : public QObject
{
    Q_OBJECT

private slots:
    void checkDigits_data()
    {
        QTest::addColumn<QString>("digits");
        QTest::addColumn<QString>("check");
        // ISO/IEC 7064 clause 8.4, the standard's own example (quoted by public implementations).
        QTest::newRow("the standard") << "794"
                                      << "44";
        // IBAN GB82 WEST 1234 5698 7654 32 with its letters as numbers and GB at the end: the
        // example of the public IBAN articles.
        QTest::newRow("the same with letters") << "WEST12345698765432GB"
                                               << "82";
        QTest::newRow("an IBAN") << "32142829123456987654321611"
                                 << "82";
        // Test rows of the public check-digit library cdigit 2.6.6, algorithm mod97_10: a number
        // that is divisible so that its digits begin with 0.
        QTest::newRow("cdigit 1") << "9005965"
                                  << "01";
        QTest::newRow("cdigit 2") << "94230737687"
                                  << "04";
        QTest::newRow("cdigit 3") << "13787590227487"
                                  << "95";
        QTest::newRow("leading zeros") << "00001055949422872"
                                       << "63";
    }
    void checkDigits()
    {
        QFETCH(QString, digits);
        QTEST(mod97CheckDigits(digits).value_or("none"), "check");
    }

    void noDigitsNoCheck()
    {
        QVERIFY(!mod97CheckDigits(u""));
        QVERIFY(!mod97CheckDigits(u"12a4")); // small letters have no value
        QVERIFY(!mod97CheckDigits(u"１２")); // full-width digits are no ASCII digits
    }

    void textAndBack_data()
    {
        QTest::addColumn<QString>("typed");
        const QString text = CertificateNumber{2026, "K7M4QP", 42}.text();
        QTest::newRow("as printed") << text;
        QTest::newRow("spaces") << QString(text).replace('-', ' ');
        QTest::newRow("nothing between") << QString(text).remove('-');
        QTest::newRow("small letters") << text.toLower();
        QTest::newRow("en dashes") << QString(text).replace('-', QChar(0x2013));
    }
    void textAndBack()
    {
        QFETCH(QString, typed);
        const auto number = CertificateNumber::parse(typed);
        QVERIFY(number);
        QCOMPARE(*number, (CertificateNumber{2026, "K7M4QP", 42}));
        QVERIFY(number->text().startsWith("26-K7M4QP-00042-"));
    }

    void refused_data()
    {
        QTest::addColumn<QString>("typed");
        const QString text = CertificateNumber{2026, "K7M4QP", 42}.text();
        QTest::newRow("empty") << "";
        QTest::newRow("too short") << text.chopped(1);
        QTest::newRow("too long") << text + '0';
        QTest::newRow("letters for the year") << "AB" + text.mid(2);
        QTest::newRow("a letter in the sequence") << QString(text).replace("00042", "0O042");
        QTest::newRow("a sign in the tag") << QString(text).replace("K7M4QP", "K7M4Q_");
        QTest::newRow("sequence 0") << "26-K7M4QP-00000-" + *mod97CheckDigits(u"26K7M4QP00000");
        QTest::newRow("a line between") << QString(text).replace('-', QString(30, '-'));
        QTest::newRow("a megabyte") << QString(1000000, '7');
    }
    void refused()
    {
        QFETCH(QString, typed);
        const auto number = CertificateNumber::parse(typed);
        QVERIFY(!number);
        QCOMPARE(number.error().code, ErrorCode::BadInput);
        QVERIFY(number.error().message.size() < 200);
    }

    void everyMisreadCharacterIsNoticed()
    {
        QVERIFY(rc::check("one character read wrong, or two neighbours exchanged", [] {
            const QString letters = "ABCDEFGHJKMNPQRSTUVWXYZ", alphabet = letters + "23456789";
            QString tag;
            for (int i = 0; i < 6; ++i)
                tag += alphabet[*rc::gen::inRange(0, int(alphabet.size()))];
            const CertificateNumber number{*rc::gen::inRange(2000, 2100), tag,
                                           *rc::gen::inRange(1, 100000)};
            const QString written = number.text().remove('-');
            RC_ASSERT(*CertificateNumber::parse(written) == number);
            const int at = *rc::gen::inRange(0, int(written.size()) - 1);
            QString misread = written;
            misread[at] = written[at].isLetter() ? letters[*rc::gen::inRange(0, 23)]
                                                 : QChar(u'0' + *rc::gen::inRange(0, 10));
            RC_ASSERT(CertificateNumber::parse(misread).has_value() == (misread == written));
            QString exchanged = written;
            std::swap(exchanged[at], exchanged[at + 1]);
            static const QSet<QString> equal{"M2", "2M", "X3", "3X"}; // 222 and 333 either way
            const bool inTag = at >= 2 && at < 7; // elsewhere a letter is out of place
            RC_ASSERT(CertificateNumber::parse(exchanged).has_value() ==
                      (exchanged == written || (inTag && equal.contains(written.mid(at, 2)))));
        }));
    }

    void codes_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<bool>("matches");
        // SHA-256 of the empty text (FIPS 180-4 examples).
        const QString digest = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
        QTest::newRow("as printed") << shortCode(digest) << true;
        QTest::newRow("no gaps") << digest.first(12) << true;
        QTest::newRow("hyphens and capitals") << "E3B0-C442-98FC" << true;
        QTest::newRow("whole digest") << digest << true;
        QTest::newRow("whole, capitals") << digest.toUpper() << true;
        QTest::newRow("eleven digits") << digest.first(11) << false;
        QTest::newRow("thirteen digits") << digest.first(13) << false;
        QTest::newRow("another digit") << "e3b0 c442 98fd" << false;
        QTest::newRow("another end") << digest.chopped(1) + '6' << false;
        QTest::newRow("empty") << "" << false;
    }
    void codes()
    {
        QFETCH(QString, typed);
        QTEST(
            codeMatches(typed, "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"),
            "matches");
    }
    void shortCodeIsGrouped() { QCOMPARE(shortCode("e3b0c44298fc1c14"), "e3b0 c442 98fc"); }
};

QTEST_APPLESS_MAIN(CertificateNumberTest)
#include "CertificateNumberTest.moc"
