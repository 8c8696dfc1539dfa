#include "core/identifiers/Spid.h"

#include "core/base/Csv.h"

#include <QFile>
#include <QTest>

using namespace loopwright;

namespace {

const ProtocolVariant &variantOf(const QString &key)
{
    const ProtocolVariant *variant = findVariant(key);
    if (variant == nullptr)
        qFatal("no variant %s", qPrintable(key));
    return *variant;
}

CsvTable workedExamples()
{
    QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/identifiers/worked-spids.csv");
    if (!file.open(QIODevice::ReadOnly))
        qFatal("%s", qPrintable(file.errorString()));
    return readCsv(file.readAll(), "worked-spids.csv",
                   {{"number", "variant", "spid", "dn", "verdict", "code", "repair", "shape_from"},
                    {},
                    {}})
        .value();
}

} // namespace

class SpidTest : public QObject
{
    Q_OBJECT
private slots:
    void judgesTheWorkedExamples_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("repair");
        const CsvTable table = workedExamples();
        for (const CsvRow &row : table.rows)
            QTest::newRow(qPrintable("example " + table.value(row, "number")))
                << table.value(row, "variant") << table.value(row, "spid") << table.value(row, "dn")
                << table.value(row, "verdict") << table.value(row, "code")
                << table.value(row, "repair");
        QCOMPARE(table.rows.size(), 38U);
    }
    void judgesTheWorkedExamples()
    {
        QFETCH(QString, variant);
        QFETCH(QString, spid);
        QFETCH(QString, dn);
        const SpidCheck check = checkSpid(variantOf(variant), spid, dn);
        QTEST(check.verdict(), "verdict");
        QTEST(check.findings.empty() ? QString() : check.findings.front().code, "code");
        QTEST(check.repair(), "repair");
    }

    void judgesEdgesOfTheRules_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("code");
        const auto row = [](const char *name, const char *variant, const char *spid, const char *dn,
                            const char *verdict, const char *code) {
            QTest::newRow(name) << variant << QString::fromUtf8(spid) << dn << verdict << code;
        };
        row("G1 only separators are blank", "ni2", " -.() \xC2\xA0\xE2\x80\x93", "", "ok", "");
        row("G1 only separators, required", "ni1", "--", "", "error", "spid_missing");
        row("G2 plus", "ni2", "+21755501430101", "", "error", "spid_character");
        row("G2 asterisk", "ni2", "2175550143*01", "", "error", "spid_character");
        row("G2 comma", "ni2", "2175550143,01", "", "error", "spid_character");
        row("G2 letter in the middle", "ni-generic", "2175550143010O", "", "error",
            "spid_character");
        row("G2 full width", "ni-generic",
            "\xEF\xBC\x92"
            "1755501430101",
            "", "error", "spid_character");
        row("G2 Arabic-Indic", "ni-generic",
            "\xD9\xA2"
            "1755501430101",
            "", "error", "spid_character");
        row("G2 em dash is no separator", "ni-generic",
            "217\xE2\x80\x94"
            "55501430101",
            "", "error", "spid_character");
        row("G6 20 digits", "ni2", "12345678901234567890", "", "warning", "spid_not_generic");
        row("G6 21 digits", "ni2", "123456789012345678901", "", "error", "spid_too_long");
        row("G7 3 digits", "ni2", "217", "", "warning", "spid_not_generic");
        row("G7 9 digits", "ni1-ewsd", "217555014", "", "warning", "spid_shape");
        row("G7 8 digits", "ni1-ewsd", "21755501", "", "error", "spid_too_short");
        row("G7 9 digits on DMS-100", "custom-dms100", "217555014", "", "error", "spid_too_short");
        row("G7 13 digits generic", "ni-generic", "2175550143010", "", "error", "spid_length");
        row("NUM area code 911", "ni-generic", "91155501430101", "", "error", "spid_area_code");
        row("NUM office code 1xx", "ni-generic", "21715501430101", "", "error", "spid_office_code");
        row("NUM office code N11", "ni-generic", "21741101430101", "", "error", "spid_office_code");
        row("NUM held area code", "ni-generic", "29055501430101", "", "warning",
            "spid_area_code_held");
        row("NUM held area code, ni2", "ni2", "29055501430101", "", "warning",
            "spid_area_code_held");
        row("NUM held area code, ni1", "ni1", "29055501430101", "", "warning", "");
        row("SS 00", "ni-generic", "21755501430001", "", "error", "spid_sharing_id");
        row("SS 32", "ni-generic", "21755501433201", "", "ok", "spid_not_0101");
        row("TT 08", "ni-generic", "21755501430108", "", "ok", "spid_not_0101");
        row("ni2 14 digits, TT 09", "ni2", "21755501430109", "", "warning", "spid_not_generic");
        row("5ESS TT 63", "ni1-5ess", "015550143063", "", "warning", "spid_terminal_id_all");
        row("5ESS TT 64", "ni1-5ess", "015550143064", "", "error", "spid_terminal_id");
        row("5ESS office code", "ni1-5ess", "011550143000", "", "error", "spid_office_code");
        row("5ESS generic", "ni1-5ess", "21755501430101", "", "ok", "");
        row("5ESS 14 digits, not generic", "ni1-5ess", "21755501430109", "", "warning",
            "spid_shape");
        row("5ESS with another DN", "ni1-5ess", "015550143000", "217-555-0144", "warning",
            "spid_dn_mismatch");
        row("5ESS holds no area code", "ni1-5ess", "015550143000", "773-555-0143", "ok", "");
        row("5ESS free form, no DN check", "ni1-5ess", "2175550143", "773-555-0199", "warning",
            "spid_shape");
        row("DMS 12 digits, 63", "ni1-dms100", "217555014363", "", "warning",
            "spid_terminal_id_unusual");
        row("DMS 13 digits, 2", "ni1-dms100", "2175550143262", "", "ok", "");
        row("DMS 14 digits, SS 33", "ni1-dms100", "21755501433300", "", "warning",
            "spid_sharing_id_unusual");
        row("DMS 11 digits", "ni1-dms100", "21755501431", "", "warning", "spid_shape");
        row("DMS 15 digits", "ni1-dms100", "217555014300000", "", "warning", "spid_shape");
        row("DMS warning and DN", "ni1-dms100", "2175550143", "555-0144", "warning",
            "spid_no_terminal_id");
        row("ni1 DMS shape and DN", "ni1", "2175550143100", "217-555-0144", "warning",
            "spid_dn_mismatch");
        row("ni1 no field errors", "ni1", "015550143070", "", "warning", "spid_shape");
        row("ni1 no NUM errors", "ni1", "9115550143", "", "warning", "spid_shape");
        row("custom 5ESS office code", "custom-5ess-multipoint", "0115501430", "", "error",
            "spid_office_code");
        row("custom 5ESS ends in 1", "custom-5ess-multipoint", "0155501431", "", "warning",
            "spid_shape");
        row("custom DMS, 01", "custom-dms100", "0155501430", "", "error", "spid_area_code");
        row("custom DMS, 13 digits", "custom-dms100", "2175550143010", "", "warning", "spid_shape");
        row("2.6 DN of 7 digits", "ni-generic", "21755501430101", "555-0143", "ok", "");
        row("2.6 DN of 11 digits", "ni-generic", "21755501430101", "1 217 555 0143", "ok", "");
        row("2.6 DN of 11 digits, split", "ni-generic", "21755501430101", "17735550143", "warning",
            "spid_area_code_differs");
        row("2.6 DN with +1", "ni-generic", "21755501430101", "+1 217 555 0144", "warning",
            "spid_dn_mismatch");
        row("2.6 DN not well formed", "ni-generic", "21755501430101", "5550199999", "warning",
            "spid_dn_mismatch");
        row("2.6 DN of 8 digits", "ni-generic", "21755501430101", "55501999", "ok", "");
        row("2.6 DN with a letter", "ni-generic", "21755501430101", "217-555-O144", "ok", "");
        row("none, letters", "dss1", "x", "", "error", "spid_not_used");
        row("none, analog", "analog", "1", "", "error", "spid_not_used");
        row("none, blank", "1tr6", " ", "", "ok", "");
    }
    void judgesEdgesOfTheRules()
    {
        QFETCH(QString, variant);
        QFETCH(QString, spid);
        QFETCH(QString, dn);
        QFETCH(QString, code);
        const SpidCheck check = checkSpid(variantOf(variant), spid, dn);
        QTEST(check.verdict(), "verdict");
        if (!code.isEmpty())
            QCOMPARE(check.findings.front().code, code);
        else if (check.verdict() == "ok")
            QVERIFY(check.findings.empty());
        for (const Finding &finding : check.findings) {
            QVERIFY(!finding.reason.isEmpty());
            QVERIFY(!finding.reason.english().contains('%') &&
                    !finding.reason.english().endsWith('.'));
        }
    }

    void repairsWhereOnlyOneIsPossible_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("repair");
        const auto row = [](const char *name, const char *variant, const char *spid, const char *dn,
                            const char *code, const char *repair) {
            QTest::newRow(name) << variant << QString::fromUtf8(spid) << dn << code << repair;
        };
        row("small l and capital I", "ni-generic", "2l7555OI43OlOI", "", "spid_character",
            "21755501430101");
        row("full width", "ni-generic",
            "\xEF\xBC\x92"
            "1755501430101",
            "", "spid_character", "21755501430101");
        row("Arabic-Indic", "ni-generic",
            "\xD9\xA2"
            "1755501430101",
            "", "spid_character", "21755501430101");
        row("unusual dash", "ni-generic",
            "217\xE2\x80\x94"
            "55501430101",
            "", "spid_character", "21755501430101");
        row("S has no one meaning", "ni-generic", "217SS501430101", "", "spid_character", "");
        row("repaired, still wrong", "ni-generic", "2175550143O199", "", "spid_character", "");
        row("repaired, other DN", "ni-generic", "2175550143O101", "555-0144", "spid_character", "");
        row("0 lost, 5ESS", "ni1-5ess", "15550143000", "555-0143", "spid_lost_zero",
            "015550143000");
        row("0 lost, family unknown", "ni1", "15550143000", "", "spid_lost_zero", "015550143000");
        row("0 lost, custom 5ESS", "custom-5ess-multipoint", "155501430", "", "spid_lost_zero",
            "0155501430");
        row("0 lost, other DN", "ni1-5ess", "15550143000", "555-0144", "spid_shape", "");
        row("ending lost, generic", "ni-generic", "2175550143 02", "555-0143",
            "spid_ending_missing", "21755501430201");
        row("ending lost, no DN", "ni-generic", "217555014301", "", "spid_length", "");
        row("both ids lost", "ni-generic", "2175550143", "555-0143", "spid_length", "");
        row("ending lost, custom 5ESS", "custom-5ess-multipoint", "015550143", "555-0143",
            "spid_ending_missing", "0155501430");
        row("terminal id may be any", "ni1-dms100", "2175550143", "555-0143", "spid_no_terminal_id",
            "");
        row("SPID and DN exchanged", "ni-generic", "217-555-0143", "21755501430101",
            "spid_dn_exchanged", "21755501430101");
        row("SPID and DN exchanged, other number", "ni-generic", "217-555-0144", "21755501430101",
            "spid_length", "");
        row("quantity, whole", "ni-generic", "2.1755501430101E+13", "", "spid_scientific",
            "21755501430101");
        row("quantity, rounded", "ni-generic", "2.17556E+13", "", "spid_scientific", "");
        row("decimal", "ni-generic", "21755501430101.0", "", "spid_decimal", "21755501430101");
        row("decimal with comma", "ni2", "21755501430101,00", "", "spid_decimal", "21755501430101");
        row("apostrophe", "ni1-5ess", "'015550143000", "", "spid_apostrophe", "015550143000");
    }
    void repairsWhereOnlyOneIsPossible()
    {
        QFETCH(QString, variant);
        QFETCH(QString, spid);
        QFETCH(QString, dn);
        const SpidCheck check = checkSpid(variantOf(variant), spid, dn);
        QVERIFY(check.worst() > Severity::Note);
        QTEST(check.findings.front().code, "code");
        QTEST(check.repair(), "repair");
    }

    void saysWhatToDo_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("reason");
        QTest::newRow("letter") << "ni1-5ess"
                                << "O15550143000"
                                << ""
                                << "Character 1 is the letter O: type the digit 0";
        QTest::newRow("mismatch")
            << "ni-generic"
            << "21755501430101"
            << "555-0144"
            << "The SPID holds 217-555-0143, the DN is 555-0144: confirm which one is right";
        QTest::newRow("other variant's shape")
            << "ni1-dms100"
            << "015550143000"
            << ""
            << "Area code 015 (digits 1-3) cannot be, it begins with 2 to 9; it has the NI-1 shape "
               "of a 5ESS, check the protocol variant";
        QTest::newRow("no SPID here") << "custom-5ess-p2p"
                                      << "0155501430"
                                      << ""
                                      << "5ESS custom, point-to-point has no SPID: leave it empty; "
                                         "it has the custom multipoint shape of a 5ESS, check the "
                                         "protocol variant";
        QTest::newRow("sharing id") << "ni-generic"
                                    << "21755501433401"
                                    << ""
                                    << "Sharing id 34 (digits 11-12) is outside 01 to 32";
    }
    void saysWhatToDo()
    {
        QFETCH(QString, variant);
        QFETCH(QString, spid);
        QFETCH(QString, dn);
        QTEST(checkSpid(variantOf(variant), spid, dn).findings.front().reason.english(), "reason");
    }

    void takesTheSpidApart_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("words");
        QTest::addColumn<QString>("groups");
        const QString generic =
            QString::fromUtf8("217 area code · 555-0143 number · 01 sharing id · 01 terminal id");
        QTest::newRow("generic") << "ni-generic"
                                 << "21755501430101" << generic << "217 555 0143 01 01";
        QTest::newRow("generic on ni1") << "ni1"
                                        << "21755501430101" << generic << "217 555 0143 01 01";
        QTest::newRow("5ESS") << "ni1-5ess"
                              << "015550143007"
                              << QString::fromUtf8(
                                     "01 prefix · 555-0143 number · 0 suffix · 07 terminal id")
                              << "01 555 0143 0 07";
        QTest::newRow("DMS") << "custom-dms100"
                             << "21755501432"
                             << QString::fromUtf8("217 area code · 555-0143 number · 2 suffix")
                             << "217 555 0143 2";
        QTest::newRow("free form") << "ni2"
                                   << "5550143"
                                   << "5550143 not known"
                                   << "555 014 3";
        QTest::newRow("letters") << "ni2"
                                 << "2x"
                                 << ""
                                 << "";
    }
    void takesTheSpidApart()
    {
        QFETCH(QString, variant);
        QFETCH(QString, spid);
        const SpidCheck check = checkSpid(variantOf(variant), spid);
        QTEST(check.inWords(), "words");
        QTEST(check.grouped(), "groups");
    }
};

QTEST_APPLESS_MAIN(SpidTest)
#include "SpidTest.moc"
