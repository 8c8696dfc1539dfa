#include "core/identifiers/TerminalIdentifiers.h"

#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

using Terminals = std::vector<TerminalIdentifiers>;

QStringList codesOf(const Findings &findings)
{
    QStringList codes;
    for (const Finding &finding : findings)
        codes << finding.field + ' ' + severityName(finding.severity) + ' ' + finding.code;
    return codes;
}

} // namespace

class TerminalIdentifiersTest : public QObject
{
    Q_OBJECT
private slots:
    void findsAcrossTerminals_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<Terminals>("terminals");
        QTest::addColumn<QStringList>("codes");
        const auto row = [](const char *name, const char *variant, const Terminals &terminals,
                            const QStringList &codes) {
            QTest::newRow(name) << variant << terminals << codes;
        };
        const TerminalIdentifiers good1{1, "217-555-0143", "21755501430101", "auto"};
        const TerminalIdentifiers good2{2, "217-555-0144", "21755501440101", "auto"};
        row("good", "ni1", {good1, good2}, {});
        row("an empty terminal does not count", "ni1", {good1, good2, {3, "", " ", ""}}, {});
        row("nothing at all", "ni1", {}, {"dn_1 error dn_missing", "spid_1 error spid_missing"});
        row("nothing at all, no SPIDs", "dss1", {}, {"dn_1 error dn_missing"});
        row("equal SPIDs", "ni1", {good1, {2, "217-555-0143", "217-5550143 0101", ""}},
            {"dn_2 note dn_shared", "spid_2 error spid_duplicate"});
        row("one DN, two SPIDs", "ni1", {good1, {2, "2175550143", "21755501430102", ""}},
            {"dn_2 note dn_shared"});
        row("first terminal id missing", "ni1", {good2, {2, "217-555-0143", "21755501430102", ""}},
            {"spid_2 warning spid_first_terminal_missing"});
        row("one SPID for two channels", "ni1", {good1}, {"spid_1 warning spid_count"});
        row("one SPID is enough", "ni2", {good1}, {});
        row("three on DMS-100", "custom-dms100",
            {{1, "217-555-0143", "2175550143", ""},
             {2, "217-555-0144", "2175550144", ""},
             {3, "217-555-0145", "2175550145", ""}},
            {"spid_3 warning spid_count"});
        Terminals nine;
        for (int n = 1; n <= 9; ++n)
            nine.push_back(
                {n, QString("217-555-014%1").arg(n), "01555014" + QString::number(n) + "001", ""});
        row("nine terminals", "ni1-5ess", nine, {"spid_9 error spid_count"});
        row("swapped", "ni1",
            {{1, "217-555-0143", "21755501440101", ""}, {2, "217-555-0144", "21755501430101", ""}},
            {"spid_1 warning spid_swapped", "spid_2 warning spid_swapped"});
        row("one mismatch is no swap", "ni1",
            {{1, "217-555-0143", "21755501440101", ""}, {2, "217-555-0144", "21755501450101", ""}},
            {"spid_1 warning spid_dn_mismatch", "spid_2 warning spid_dn_mismatch"});
        row("equal fixed TEIs", "ni1",
            {{1, "217-555-0143", "21755501430101", "5"},
             {2, "217-555-0144", "21755501440101", "5"}},
            {"tei_2 error tei_duplicate"});
        row("two numbers of one point-to-point terminal", "dss1-p2p",
            {{1, "+49301234567", "", "0"},
             {2, "+49301234568", "", "0"},
             {3, "+49301234569", "", ""}},
            {});
        row("point-to-point, automatic", "dss1-p2p", {{1, "+49301234567", "", ""}},
            {"tei_1 warning tei_not_zero"});
        row("point-to-point, number twice", "dss1-p2p",
            {{1, "0301234567", "", "0"}, {2, "030 1234567", "", "0"}},
            {"dn_1 note dn_country_unknown", "dn_2 warning dn_repeated",
             "dn_2 note dn_country_unknown"});
        row("DN missing", "ni1", {good1, {2, "", "21755501440101", ""}}, {"dn_2 error dn_missing"});
        row("SPID missing", "ni1", {good1, {2, "217-555-0144", "", ""}},
            {"spid_1 warning spid_count", "spid_2 error spid_missing"});
        row("seven digits, completed by the SPID", "ni-generic",
            {{1, "555-0143", "21755501430101", ""}}, {"dn_1 note dn_completed"});
        row("seven digits, completed by the other DN", "ni1",
            {good1, {2, "555-0144", "015550144000", ""}}, {"dn_2 note dn_completed"});
        row("seven digits, area codes differ", "ni1",
            {good1, {2, "773-555-0144", "77355501440101", ""}, {3, "555-0145", "015550145000", ""}},
            {"dn_3 warning dn_area_code_missing"});
        row("SPID and DN in each other's place", "ni-generic",
            {{1, "21755501430101", "217-555-0143", ""}},
            {"dn_1 error dn_length", "spid_1 error spid_dn_exchanged"});
        row("analog", "analog", {{1, "217-555-0143", "", ""}}, {});
        row("analog, all wrong", "analog",
            {{1, "217-555-0143", "21755501430101", "0"}, {2, "217-555-0144", "", ""}},
            {"spid_1 error spid_not_used", "tei_1 error tei_not_used", "dn_2 error dn_count"});
        row("one country for the line", "dss1",
            {{1, "+49 30 1234567", "", ""}, {2, "030 1234567", "", ""}},
            {"dn_2 note dn_trunk_zero", "dn_2 note dn_shared"});
    }
    void findsAcrossTerminals()
    {
        QFETCH(QString, variant);
        QFETCH(Terminals, terminals);
        QTEST(codesOf(checkTerminals(*findVariant(variant), terminals, true)), "codes");
    }

    void namesBothRepairsOfASwap()
    {
        const Findings findings = checkTerminals(
            *findVariant(u"ni1-5ess"),
            {{1, "217-555-0143", "015550144000", ""}, {2, "217-555-0144", "015550143000", ""}},
            true);
        QCOMPARE(findings.size(), 2U);
        QCOMPARE(findings[0].repair, QString("015550143000"));
        QCOMPARE(findings[1].repair, QString("015550144000"));
        QVERIFY(findings[0].reason.contains("terminal 2"));
    }

    void offersNoNumberThatCannotBe_data()
    {
        QTest::addColumn<QString>("number");
        QTest::addColumn<QString>("repair");
        QTest::newRow("good") << "217-555-0143"
                              << "217-555-0143";
        QTest::newRow("service number as area code") << "911-555-0143"
                                                     << "";
    }
    void offersNoNumberThatCannotBe()
    {
        QFETCH(QString, number);
        const Findings findings =
            checkTerminals(*findVariant(u"ni1-5ess"), {{1, "015550143001", number, ""}}, false);
        QCOMPARE(findings.front().field, QString("dn_1"));
        QTEST(findings.front().repair, "repair");
    }

    void withdrawsARepairThatIsTaken()
    {
        const Findings findings = checkTerminals(
            *findVariant(u"ni-generic"),
            {{1, "217-555-0143", "21755501430101", ""}, {2, "217-555-0143", "217555014301", ""}},
            true);
        for (const Finding &finding : findings)
            QVERIFY(finding.repair.isEmpty());
    }

    void fewerThanTwoMattersWithBothChannelsOnly()
    {
        const Terminals one{{1, "217-555-0143", "2175550143", ""}};
        QVERIFY(checkTerminals(*findVariant(u"custom-dms100"), one, false).empty());
    }

    void saysWhatToProgram()
    {
        const auto settings = settingsToProgram(
            *findVariant(u"ni1"),
            {{1, "2175550143", "21755501430101", "auto"}, {2, "2175550144", "21755501440101", "7"}},
            64000);
        const std::vector<TerminalSetting> expected{
            {"Switch protocol", "National ISDN-1 (NI-1)"},
            {"Line", "multipoint"},
            {"SPID entry", "one for each directory number, all digits without separators"},
            {"Data rate", "64 kbit/s"},
            {"Directory number 1", "217-555-0143"},
            {"SPID 1", "217 555 0143 01 01"},
            {"TEI 1", "automatic"},
            {"Directory number 2", "217-555-0144"},
            {"SPID 2", "217 555 0144 01 01"},
            {"TEI 2", "7"}};
        QCOMPARE(settings, expected);
    }

    void nothingCrashes()
    {
        QVERIFY(rc::check("every line has findings of known fields", [] {
            const auto all = allVariants();
            const ProtocolVariant &variant = all[*rc::gen::inRange<std::size_t>(0, all.size())];
            Terminals terminals;
            const auto text = [] {
                return QString::fromStdString(*rc::gen::oneOf(
                    rc::gen::arbitrary<std::string>(),
                    rc::gen::element<std::string>("", "217-555-0143", "21755501430101", "0", "7")));
            };
            for (int n = *rc::gen::inRange(0, 5); n > 0; --n)
                terminals.push_back({n, text(), text(), text()});
            for (const Finding &finding : checkTerminals(variant, terminals, true))
                RC_ASSERT(finding.field.contains('_') && !finding.reason.isEmpty());
            settingsToProgram(variant, terminals, 56000);
        }));
    }
};

QTEST_APPLESS_MAIN(TerminalIdentifiersTest)
#include "TerminalIdentifiersTest.moc"
