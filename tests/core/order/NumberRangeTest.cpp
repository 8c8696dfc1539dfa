#include "core/order/NumberRange.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class NumberRangeTest : public QObject
{
    Q_OBJECT
private slots:
    void says_data()
    {
        QTest::addColumn<OrderFields>("changes");
        QTest::addColumn<QString>("codes");
        const auto row = [](const char *name, const OrderFields &changes, const char *codes) {
            QTest::newRow(name) << changes << QString(codes);
        };
        const auto block = [](const char *head, const char *range) {
            return OrderFields{{"head_number", head}, {"number_range", range}};
        };
        const auto german = [](const char *head, const char *range, const char *dn) {
            return OrderFields{{"head_number", head},
                               {"number_range", range},
                               {"protocol_variant", "dss1"},
                               {"dn_1", dn},
                               {"dn_2", ""},
                               {"spid_1", ""},
                               {"spid_2", ""}};
        };
        row("none", {}, "");
        row("numbers within", block("217-555-0140", "40-49"), "");
        row("an en dash", block("217-555-0140", "40 – 49"), "");
        row("the head number alone", block("217-555-0140", ""), "");
        row("letters", block("217-555-O14O", "40-49"), "error head_number_character head_number");
        row("a head number too short", block("555-014", "40-49"),
            "error head_number_length head_number");
        row("no head number", block("", "40-49"), "warning head_number_missing head_number");
        for (const char *malformed :
             {"forty to 49", "40", "40-49-50", "4-49", "49-40", "-49", "0000000000-0000000009"})
            row(malformed, block("217-555-0140", malformed),
                "error number_range_malformed number_range");
        row("a head number outside", block("217-555-0150", "40-49"),
            "warning head_number_outside head_number");
        row("numbers outside", block("217-555-0145", "44-49"), "warning dn_outside_range dn_1");
        row("numbers of another block", block("309-555-0140", "40-49"),
            "warning dn_outside_range dn_1 warning dn_outside_range dn_2");
        row("a line for several terminals",
            {{"line", "multipoint"}, {"head_number", "217-555-0140"}, {"number_range", "40-49"}},
            "warning not_point_to_point head_number");
        row("extensions behind the head number", german("+49 30 23125 0", "00-49", "+493023125 12"),
            "");
        row("behind one that ends in no 0", german("+49 30 23125", "00-49", "+49 30 23125 49"), "");
        row("an extension too high", german("+49 30 23125 0", "00-49", "+49 30 23125 50"),
            "warning dn_outside_range dn_1");
        row("the head number as its own", german("+49 30 23125 0", "00-49", "+49 30 23125 0"), "");
    }
    void says()
    {
        QFETCH(OrderFields, changes);
        QFETCH(QString, codes);
        OrderFields fields = briFields();
        fields["line"] = "point_to_point";
        for (auto it = changes.begin(); it != changes.end(); ++it)
            fields[it.key()] = it.value();
        QStringList found;
        for (const Finding &each : checkNumberRange(jobs::order(fields))) {
            found << severityName(each.severity) << each.code << each.field;
            QVERIFY(each.reason.english().size() > 8);
        }
        QCOMPARE(found.join(' '), codes);
    }
};

QTEST_APPLESS_MAIN(NumberRangeTest)
#include "NumberRangeTest.moc"
