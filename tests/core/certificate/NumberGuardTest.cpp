#include "core/certificate/NumberGuard.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

NumberGuard guard(const QString &lines)
{
    return NumberGuard(*testLinesFromText(lines));
}

} // namespace

class NumberGuardTest : public QObject
{
    Q_OBJECT

private slots:
    void covers_data()
    {
        QTest::addColumn<QString>("lines");
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("covered");
        const QString ten = "loopback=217-555-0199";
        QTest::newRow("as kept") << ten << "called 217-555-0199 twice" << true;
        QTest::newRow("digits alone") << ten << "called 2175550199" << true;
        QTest::newRow("other marks") << ten << "called (217) 555.0199" << true;
        QTest::newRow("no-break spaces") << ten << QString("217\u00a0555\u00a00199") << true;
        QTest::newRow("en dashes") << ten << QString("217\u2013555\u20130199") << true;
        QTest::newRow("prefix") << ten << "9 1 217 555 0199" << true;
        QTest::newRow("prefix without gap") << ten << "912175550199" << true;
        QTest::newRow("without area code") << ten << "dial 555-0199" << true;
        QTest::newRow("over a line's end") << ten << "217-555-\n0199" << true;
        QTest::newRow("another number") << ten << "217-555-0143" << false;
        QTest::newRow("one digit more") << ten << "21755501990" << false;
        QTest::newRow("seven digits") << "loopback=555-0199"
                                      << "dial 217 555 0199" << true;
        QTest::newRow("another area code") << ten << "call 309-555-0199" << false;
        QTest::newRow("full width") << ten << QString::fromUtf8("２１７－５５５－０１９９") << true;
        QTest::newRow("Arabic digits") << ten << QString::fromUtf8("٢١٧ ٥٥٥ ٠١٩٩") << true;
        QTest::newRow("mathematical digits") << ten << QString::fromUtf8("𝟐𝟏𝟕𝟓𝟓𝟓𝟎𝟏𝟗𝟗") << true;
        QTest::newRow("letter O for zero") << ten << "217-555-O199" << true;
        QTest::newRow("letter l for one") << ten << "2l7 555 0l99" << true;
        QTest::newRow("a letter behind") << ten << "217-555-0199I" << true;
        QTest::newRow("an unseen character between") << ten << QString("217555\u200b0199") << true;
        QTest::newRow("letters alone") << "x=555-0111"
                                       << "dial 555-OIll" << true;
        QTest::newRow("ordinary words") << ten << "Oil Lamp Cooperative, 217 Ill Road" << false;
        QTest::newRow("with letters") << "loopback=LOOP-NORTH"
                                      << "ask for loop-north" << true;
        QTest::newRow("figures") << "loopback=5760000"
                                 << "57600000 bits" << false;
        QTest::newRow("short, not in figures") << "milliwatt=102"
                                               << "102 ohm" << false;
        const QString abroad = "loopback=+1 217 555 0199";
        QTest::newRow("kept with the country code") << abroad << "call 217-555-0199" << true;
        QTest::newRow("the same, digits alone") << abroad << "2175550199" << true;
        QTest::newRow("the same, whole") << abroad << "+12175550199" << true;
        QTest::newRow("nothing to cover") << ""
                                          << "217-555-0199" << false;
    }
    void covers()
    {
        QFETCH(QString, lines);
        QFETCH(QString, text);
        const QString safe = guard(lines).cover(text);
        QTEST(safe != text, "covered");
        QCOMPARE(safe.contains(NumberGuard::covered()), safe != text);
    }

    void shortNumbersAreCoveredInTypedText_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("covered");
        QTest::newRow("alone") << "looped at 102" << true;
        QTest::newRow("with gaps") << "looped at 1-0-2" << true;
        QTest::newRow("within a figure") << "1024 errors" << false;
        QTest::newRow("behind a figure") << "5102" << false;
        QTest::newRow("letter O for zero") << "looped at 1O2" << true;
        QTest::newRow("full width") << QString::fromUtf8("１０２") << true;
        QTest::newRow("ordinary words") << "Io 2 Ill" << false;
    }
    void shortNumbersAreCoveredInTypedText()
    {
        QFETCH(QString, text);
        QTEST(guard("milliwatt=102").coverTyped(text) != text, "covered");
    }

    void storedColumnsAreCovered_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("covered");
        QTest::newRow("dialled") << R"({"dn":"2175550199"})" << true;
        QTest::newRow("in a remark") << "loop is at (217) 555-0199" << true;
        QTest::newRow("without area code") << "loop is at 555-0199" << true;
        QTest::newRow("key of a number") << "+12175550199" << true;
        QTest::newRow("another area code") << R"({"dn":"309-555-0199"})" << false;
        QTest::newRow("another area code in brackets") << "(309) 555-0199" << false;
        QTest::newRow("short, dialled") << R"({"to_dn":"102"})" << true;
        QTest::newRow("short, a figure") << R"({"dc_resistance_ohm":102})" << false;
        QTest::newRow("short, a key of a row") << "102" << false;
        QTest::newRow("seconds") << R"({"seconds":[0,5,5,5,0,1,9,9]})" << false;
    }
    void storedColumnsAreCovered()
    {
        QFETCH(QString, text);
        QTEST(guard("loopback=217-555-0199;milliwatt=102").coverStored(text) != text, "covered");
    }

    void noNumberComesThrough()
    {
        QVERIFY(rc::check("any number of 5 to 15 digits, any separators", [] {
            const int length = *rc::gen::inRange(5, 16);
            QString digits;
            for (int i = 0; i < length; ++i)
                digits += QChar(u'0' + *rc::gen::inRange(0, 10));
            QString written;
            for (const QChar digit : digits) {
                written += digit;
                if (*rc::gen::inRange(0, 3) == 0)
                    written += *rc::gen::element(' ', '-', '.', ')');
            }
            QString plain = guard("x=" + digits).cover("before " + written + " behind");
            plain.remove(' ').remove('-').remove('.').remove(')');
            RC_ASSERT(!plain.contains(digits));
        }));
    }
};

QTEST_APPLESS_MAIN(NumberGuardTest)
#include "NumberGuardTest.moc"
