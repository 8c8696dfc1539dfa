#include "core/identifiers/DirectoryNumber.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

class DirectoryNumberTest : public QObject
{
    Q_OBJECT
private slots:
    void readsAndShows_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("shown");
        QTest::addColumn<QString>("international");
        QTest::addColumn<QString>("key");
        const auto row = [](const char *variant, const char *typed, const char *shown,
                            const char *international, const char *key) {
            QTest::addRow("%s %s", variant, typed)
                << variant << QString::fromUtf8(typed) << shown << international << key;
        };
        for (const char *typed :
             {"2175550143", "217-555-0143", "(217) 555-0143", "217.555.0143", "217 555 0143",
              "12175550143", "+1 217 555 0143", "1-217-555-0143",
              "217\xC2\xA0"
              "555\xE2\x80\x93"
              "0143"})
            row("ni1", typed, "217-555-0143", "+1 217 555 0143", "+12175550143");
        row("analog", "217-555-0143", "217-555-0143", "+1 217 555 0143", "+12175550143");
        row("analog", "+49 30 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("dss1", "+49 30 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("dss1", "0049 30 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("dss1", "+49 (0)30 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("1tr6", "030 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("dss1", "1234567", "1234567", "1234567", "+1234567");
        row("dss1", "112", "112", "112", "+112");
        row("dss1", "49 30 1234567", "49301234567", "49301234567", "+49301234567");
        row("1tr6", "49 30 1234567", "+49 301234567", "+49 301234567", "+49301234567");
        row("1tr6", "49 123456", "+49 49123456", "+49 49123456", "+4949123456");
        row("1tr6", "04931 123456", "+49 4931123456", "+49 4931123456", "+494931123456");
        row("vn", "33 1 55 50 01 43", "+33 155500143", "+33 155500143", "+33155500143");
        row("dss1", "+1 217 555 0143", "217-555-0143", "+1 217 555 0143", "+12175550143");
        row("ins64", "03-1234-5678", "+81 312345678", "+81 312345678", "+81312345678");
        row("ts013", "(02) 5550 0100", "+61 255500100", "+61 255500100", "+61255500100");
        row("dss1", "+39 06 1234567", "+39 061234567", "+39 061234567", "+39061234567");
        row("dss1", "+352 123456", "+352 123456", "+352 123456", "+352123456");
    }
    void readsAndShows()
    {
        QFETCH(QString, variant);
        QFETCH(QString, typed);
        const DirectoryNumberCheck check = checkDirectoryNumber(*findVariant(variant), typed);
        QCOMPARE(check.verdict(), QString("ok"));
        QTEST(check.number.shown(), "shown");
        QTEST(check.number.international(), "international");
        QTEST(check.number.assignmentKey(), "key");
    }

    // Limits of the plan: public articles on the NANP and E.164.
    void findsWhatIsWrong_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("repair");
        const auto row = [](const char *variant, const char *typed, const char *verdict,
                            const char *code, const char *repair = "") {
            QTest::addRow("%s %s", variant, typed)
                << variant << QString::fromUtf8(typed) << verdict << code << repair;
        };
        row("ni1", "", "error", "dn_missing");
        row("ni1", " - ", "error", "dn_missing");
        row("ni1", "117-555-0143", "error", "dn_area_code");
        row("ni1", "911-555-0143", "error", "dn_area_code");
        row("ni1", "290-555-0143", "warning", "dn_area_code_held");
        row("ni1", "800-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "855-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "700-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "500-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "373-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "961-555-0143", "warning", "dn_area_code_set_aside");
        row("ni1", "810-555-0143", "ok", "");
        row("ni1", "217-958-0143", "warning", "dn_office_code_set_aside");
        row("ni1", "217-959-0143", "warning", "dn_office_code_set_aside");
        row("ni1", "217-950-0143", "warning", "dn_office_code_set_aside");
        row("ni1", "217-976-0143", "warning", "dn_office_code_set_aside");
        row("ni1", "217-555-1212", "warning", "dn_office_code_set_aside");
        row("ni1", "217-555-0200", "warning", "dn_office_code_set_aside");
        row("ni1", "217-155-0143", "error", "dn_office_code");
        row("ni1", "217-411-0143", "error", "dn_office_code");
        row("ni1", "217-555-014", "error", "dn_length");
        row("ni1", "217-555-01431", "error", "dn_length");
        row("ni1", "+217 555 0143", "error", "dn_country");
        row("ni1", "+1 217 555 014", "error", "dn_length");
        row("ni1", "+49 30 1234567", "error", "dn_country");
        row("ni1", "555-0143", "warning", "dn_area_code_missing");
        row("ni1", "217-555-O143", "error", "dn_character", "2175550143");
        row("ni1", "217-555-0l43", "error", "dn_character", "2175550143");
        row("ni1", "217-555-X143", "error", "dn_character");
        row("ni1", "217-555-0143#", "error", "dn_character");
        row("ni1",
            "\xEF\xBC\x92"
            "17-555-0143",
            "error", "dn_character", "2175550143");
        row("ni1", "2.17555E+09", "error", "dn_scientific");
        row("ni1", "2.175550143E+09", "error", "dn_scientific", "2175550143");
        row("ni1", "2175550143.0", "error", "dn_decimal", "2175550143");
        row("ni1", "'2175550143", "error", "dn_apostrophe", "2175550143");
        row("dss1", "12", "error", "dn_length");
        row("dss1", "1234567890123456", "error", "dn_length");
        row("dss1", "+491234567890123", "ok", "");
        row("dss1", "+4912345678901234", "error", "dn_length");
        row("dss1", "+0301234567", "error", "dn_country");
        row("dss1", "+49", "error", "dn_length");
        row("dss1", "+353", "error", "dn_country");
        row("dss1", "1234567890123456789012345", "error", "dn_length");
        row("analog", "030 1234567", "warning", "dn_outside");
        row("analog", "217-555-014", "error", "dn_length");
        row("analog", "+1 217 555 014", "error", "dn_length");
        row("vn", "01 55 50 01 43", "ok", "dn_trunk_zero");
        row("vn", "33 1 55 50 01 43", "ok", "dn_country_read");
        row("dss1", "030 1234567", "ok", "dn_country_unknown");
        row("dss1", "+49 30 1234567", "ok", "");
        row("1tr6", "30 1234567", "ok", "");
    }
    void findsWhatIsWrong()
    {
        QFETCH(QString, variant);
        QFETCH(QString, typed);
        const DirectoryNumberCheck check = checkDirectoryNumber(*findVariant(variant), typed);
        QTEST(check.verdict(), "verdict");
        QTEST(check.findings.empty() ? QString() : check.findings.front().code, "code");
        QTEST(check.repair(), "repair");
        QCOMPARE(check.number.isNull(), check.worst() == Severity::Error);
    }

    void completesSevenDigits()
    {
        const auto check = checkDirectoryNumber(*findVariant(u"ni2"), "555-0143", {"217", ""});
        QCOMPARE(check.verdict(), QString("ok"));
        QCOMPARE(check.number.assignmentKey(), QString("+12175550143"));
        QCOMPARE(check.findings.front().code, QString("dn_completed"));
        QCOMPARE(check.findings.front().reason.english(),
                 QString("Completed with the line's area code to 217-555-0143"));
    }

    void takesTheHomeCountry()
    {
        const auto check = checkDirectoryNumber(*findVariant(u"dss1"), "030 1234567", {"", "49"});
        QCOMPARE(check.number.assignmentKey(), QString("+49301234567"));
        const auto analog =
            checkDirectoryNumber(*findVariant(u"analog"), "030 1234567", {"", "49"});
        QCOMPARE(analog.verdict(), QString("ok"));
    }

    /// As libphonenumber has 0066185403 of Japan: only one 0 in front is that of the trunk.
    void twoZerosAreTheNumbers()
    {
        QCOMPARE(checkDirectoryNumber(*findVariant(u"ins64"), "0066185403").number.digits,
                 QString("0066185403"));
        QCOMPARE(checkDirectoryNumber(*findVariant(u"vn"), "003").number.digits, QString("003"));
        QCOMPARE(checkDirectoryNumber(*findVariant(u"vn"), "0 140 200 100").number.shown(),
                 QString("+33 140200100"));
    }

    /// ITU-T E.164 6.1: 15 digits, the country code among them.
    void theCountryCodeCountsInTheLength()
    {
        const ProtocolVariant &variant = *findVariant(u"vn"); // at home in country 33
        QCOMPARE(checkDirectoryNumber(variant, "7103396314340").number.digits.size(), 13);
        const auto check = checkDirectoryNumber(variant, "71033963143406");
        QCOMPARE(check.findings.back().code, QString("dn_length"));
        QVERIFY(check.findings.back().reason.english().startsWith("16 digits"));
    }

    void anythingIsReadAndShownNumbersReadAgain()
    {
        QVERIFY(rc::check("what is shown reads as the same number", [] {
            const auto all = allVariants();
            const ProtocolVariant &variant = all[*rc::gen::inRange<std::size_t>(0, all.size())];
            const auto text = *rc::gen::oneOf(
                rc::gen::arbitrary<std::string>(),
                rc::gen::container<std::string>(rc::gen::elementOf(std::string("+0123456789-. "))));
            const auto check = checkDirectoryNumber(variant, QString::fromStdString(text));
            if (check.worst() == Severity::Error)
                return;
            // North America is shown as it is dialled there; read elsewhere it needs its country.
            const bool abroad =
                check.number.isNanp() && !variant.northAmerican && check.number.digits.size() == 10;
            const auto again = checkDirectoryNumber(variant, abroad ? check.number.international()
                                                                    : check.number.shown());
            RC_ASSERT(again.number == check.number);
        }));
    }
};

QTEST_APPLESS_MAIN(DirectoryNumberTest)
#include "DirectoryNumberTest.moc"
