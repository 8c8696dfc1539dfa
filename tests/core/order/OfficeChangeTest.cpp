// What becomes of a line when the area code of its office is split or its switch is converted. The
// SPIDs are those of the collected facts on protocols (section 3, numbers 555-0100 to 555-0199);
// that a split leaves a SPID alone is section 4.4 there, that SPIDs are made from the number and
// the ids 01 where nobody shares a profile is 2.5 and 2.7.

#include "core/order/OfficeChange.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

namespace {

OfficeChange split(bool spids = false)
{
    return {OfficeChangeKind::AreaCode, "NORTH", "217", "447", spids};
}
OfficeChange conversion(const QString &from, const QString &to)
{
    return {OfficeChangeKind::Variant, "NORTH", from, to};
}

/// A line of one terminal, or with the rest of the fields.
ServiceOrder line(const QString &variant, const QString &dn, const QString &spid,
                  const OrderFields &more = {})
{
    OrderFields fields = jobs::briFields();
    for (const char *left : {"dn_2", "spid_2", "tei_2", "dn_1_services", "dn_2_services"})
        fields.remove(left);
    fields["b2_services"] = {};
    fields["protocol_variant"] = variant;
    fields["dn_1"] = dn;
    fields["spid_1"] = spid;
    for (auto it = more.begin(); it != more.end(); ++it)
        fields[it.key()] = it.value();
    return jobs::order(fields);
}

QStringList told(const ChangedOrder &changed)
{
    QStringList list;
    for (const ValueChange &change : changed.changes)
        list << change.what + ": " + change.old + " -> " + change.now;
    for (const ValueKept &kept : changed.cannot)
        list << kept.what + " cannot: " + kept.old;
    return list;
}

QString nobody(ClaimKind, const QString &)
{
    return {};
}

} // namespace

class OfficeChangeTest : public QObject
{
    Q_OBJECT

private slots:
    void aSplit_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<bool>("spids");
        QTest::addColumn<QStringList>("expected");
        const auto row = [](const char *name, const char *variant, const char *dn, const char *spid,
                            bool spids, const QStringList &expected) {
            QTest::newRow(name) << variant << dn << spid << spids << expected;
        };
        const QString moved = "dn_1: 217-555-0143 -> 447-555-0143";
        row("the SPID is kept and named", "ni-generic", "217-555-0143", "21755501430101", false,
            {moved, "spid_1 cannot: 21755501430101"});
        row("the SPID goes along if asked", "ni-generic", "217-555-0143", "21755501430101", true,
            {moved, "spid_1: 21755501430101 -> 44755501430101"});
        row("its ids stay", "ni1-dms100", "217-555-0143", "2175550143100", true,
            {moved, "spid_1: 2175550143100 -> 4475550143100"});
        row("as it is written", "ni-generic", "(217) 555.0143", "217-555-0143 01 01", true,
            {"dn_1: (217) 555.0143 -> (447) 555.0143",
             "spid_1: 217-555-0143 01 01 -> 447-555-0143 01 01"});
        row("with a 1 in front", "ni2", "1 217 555 0143", "", false,
            {"dn_1: 1 217 555 0143 -> 1 447 555 0143"});
        row("with the country code", "ni2", "+12175550143", "", false,
            {"dn_1: +12175550143 -> +14475550143"});
        row("seven digits are written out", "ni2", "555-0143", "21755501430101", false,
            {"dn_1: 555-0143 -> 447-555-0143", "spid_1 cannot: 21755501430101"});
        row("seven digits of no known area", "ni2", "555-0143", "", false,
            {"dn_1 cannot: 555-0143"});
        row("a SPID of seven digits is not concerned", "ni1-5ess", "217-555-0143", "015550143000",
            true, {moved});
        row("a free form that holds the number", "ni2", "217-555-0143", "2175550143", true,
            {moved, "spid_1 cannot: 2175550143"});
        row("the number of another line", "ni2", "217-555-0143", "21755501990101", true,
            {moved, "spid_1 cannot: 21755501990101"});
        row("a SPID left from an earlier split", "ni2", "447-555-0143", "21755501430101", true,
            {"spid_1: 21755501430101 -> 44755501430101"});
        row("another area code", "ni2", "309-555-0143", "30955501430101", true, {});
        row("point to point", "custom-5ess-p2p", "217-555-0143", "", false, {moved});
        row("digits of another country", "dss1", "+49 217 5550143", "", false, {});
        row("a country that is not known", "dss1", "2175550143", "", false, {});
        row("what is no number", "ni2", "217-555-014", "", false, {"dn_1 cannot: 217-555-014"});
    }
    void aSplit()
    {
        QFETCH(QString, variant);
        QFETCH(QString, dn);
        QFETCH(QString, spid);
        QFETCH(bool, spids);
        QFETCH(QStringList, expected);
        const ServiceOrder before = line(variant, dn, spid);
        const ChangedOrder changed = changedBy(split(spids), before, nobody);
        QCOMPARE(told(changed), expected);
        QCOMPARE(changed.order == before, changed.changes.empty());
    }

    void numbersThatAreTaken()
    {
        const auto taken = [](ClaimKind kind, const QString &value) {
            return kind == ClaimKind::Dn && value == "+14475550143" ? QString("C-12") : QString();
        };
        const ServiceOrder order = jobs::order(jobs::briFields());
        const ChangedOrder changed = changedBy(split(true), order, taken);
        // The other terminal moves; number and SPID of this one stay together.
        QCOMPARE(told(changed),
                 (QStringList{"dn_2: 217-555-0144 -> 447-555-0144",
                              "spid_2: 21755501440101 -> 44755501440101",
                              "dn_1 cannot: 217-555-0143", "spid_1 cannot: 21755501430101"}));
        QCOMPARE(changed.cannot.front().because.english(),
                 QString("447-555-0143 is held by circuit C-12."));
        QCOMPARE(changed.order.terminals[0].dn, QString("217-555-0143"));
        const ChangedOrder spidTaken =
            changedBy(split(true), order, [](ClaimKind kind, const QString &value) {
                return kind == ClaimKind::Spid && value == "44755501440101" ? QString("C-13")
                                                                            : QString();
            });
        QCOMPARE(told(spidTaken).last(), QString("spid_2 cannot: 21755501440101"));
        QCOMPARE(spidTaken.changes.size(), std::size_t(3));
    }

    void headNumbersAndAnalogLines()
    {
        const ServiceOrder order =
            line("custom-5ess-p2p", "217-555-0140", {},
                 {{"head_number", "217-555-0140"}, {"number_range", "40-49"}});
        QCOMPARE(told(changedBy(split(), order, nobody)),
                 (QStringList{"dn_1: 217-555-0140 -> 447-555-0140",
                              "head_number: 217-555-0140 -> 447-555-0140"}));
        QCOMPARE(told(changedBy(split(), jobs::order(jobs::analogFields()), nobody)),
                 (QStringList{"dn_1: 217-555-0150 -> 447-555-0150"}));
    }

    void aConversion_data()
    {
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::addColumn<QString>("dn");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QStringList>("expected");
        const auto row =
            [](const char *name, const char *from, const char *to, const char *dn, const char *spid,
               const QStringList &expected) {
                QTest::newRow(name)
                    << from << to << dn << spid
                    << QStringList{QString("protocol_variant: %1 -> %2").arg(from, to)} + expected;
            };
        const char dn[] = "217-555-0143";
        row("made in the generic format", "ni1-5ess", "ni2", dn, "015550143000",
            {"spid_1: 015550143000 -> 21755501430101"});
        row("likewise", "custom-5ess-multipoint", "ni-generic", dn, "0155501430",
            {"spid_1: 0155501430 -> 21755501430101"});
        row("likewise on the EWSD", "custom-dms100", "ni1-ewsd", dn, "21755501431",
            {"spid_1: 21755501431 -> 21755501430101"});
        row("the one shape of the custom 5ESS", "ni2", "custom-5ess-multipoint", dn,
            "21755501430101", {"spid_1: 21755501430101 -> 0155501430"});
        row("what has a shape of the new variant stays", "ni-generic", "ni1-dms100", dn,
            "21755501430101", {});
        row("with its ids", "ni1-5ess", "ni2", dn, "21755501430203", {});
        row("none where the new variant has none", "ni2", "custom-5ess-p2p", dn, "21755501430101",
            {"spid_1: 21755501430101 -> "});
        row("none where none was needed", "ni2", "ni1-ewsd", dn, "",
            {"spid_1:  -> 21755501430101"});
        row("optional ones are not made up", "custom-5ess-p2p", "ni2", dn, "", {});
        row("of several shapes the provider knows the one; the old may stay", "ni1-dms100", "ni1",
            dn, "2175550143000", {"spid_1 cannot: 2175550143000"});
        row("a number of a country", "1tr6", "dss1", "030 1234567", "",
            {"dn_1: 030 1234567 -> +49 301234567"});
        row("seven digits whose area code stood in the SPID", "ni2", "custom-5ess-p2p", "555-0143",
            "21755501430101", {"spid_1: 21755501430101 -> ", "dn_1: 555-0143 -> 217-555-0143"});
    }
    void aConversion()
    {
        QFETCH(QString, from);
        QFETCH(QString, to);
        QFETCH(QString, dn);
        QFETCH(QString, spid);
        QFETCH(QStringList, expected);
        const ServiceOrder before = line(from, dn, spid);
        const ChangedOrder changed = changedBy(conversion(from, to), before, nobody);
        QCOMPARE(told(changed), expected);
        QCOMPARE(changed.order.variant, to);
        // The numbers are the same ones, whatever they are written like.
        const auto numbersOf = [](const ServiceOrder &order) {
            QStringList numbers;
            for (const Claim &claim : claimsOf(order))
                if (claim.kind == ClaimKind::Dn)
                    numbers << claim.value;
            return numbers;
        };
        QCOMPARE(numbersOf(changed.order), numbersOf(before));
    }

    void linesThatCannotBeConverted_data()
    {
        QTest::addColumn<QString>("to");
        QTest::addColumn<QString>("spid");
        QTest::addColumn<QString>("what");
        // A SPID of the 5ESS is in error on a DMS-100 (no area code), and nothing says the new one.
        QTest::newRow("shape") << "ni1-dms100"
                               << "015550143000"
                               << "spid_1";
        QTest::newRow("none") << "custom-dms100"
                              << ""
                              << "spid_1";
    }
    void linesThatCannotBeConverted()
    {
        QFETCH(QString, to);
        QFETCH(QString, spid);
        QFETCH(QString, what);
        const ServiceOrder before = line("ni1-5ess", "217-555-0143", spid);
        const ChangedOrder changed = changedBy(conversion("ni1-5ess", to), before, nobody);
        QCOMPARE(told(changed),
                 (QStringList{what + " cannot: " + spid, "protocol_variant cannot: ni1-5ess"}));
        QCOMPARE(changed.order, before);
    }

    void terminalsThatShareANumber()
    {
        const ServiceOrder order = line("ni1-5ess", "217-555-0143", "015550143000",
                                        {{"dn_2", "217-555-0143"}, {"spid_2", "015550143001"}});
        const ChangedOrder changed = changedBy(conversion("ni1-5ess", "ni2"), order, nobody);
        QCOMPARE(told(changed),
                 (QStringList{"protocol_variant: ni1-5ess -> ni2", "spid_1 cannot: 015550143000",
                              "spid_2 cannot: 015550143001"}));
        // Two equal SPIDs would be in error: the line stays.
        const ChangedOrder custom =
            changedBy(conversion("ni1-5ess", "custom-dms100"), order, nobody);
        QVERIFY(custom.changes.empty());
    }

    void aMadeSpidThatIsTaken()
    {
        const ServiceOrder order = line("ni1-5ess", "217-555-0143", "015550143000");
        const auto taken = [](ClaimKind kind, const QString &value) {
            return kind == ClaimKind::Spid && value == "21755501430101" ? QString("C-9")
                                                                        : QString();
        };
        QCOMPARE(told(changedBy(conversion("ni1-5ess", "ni-generic"), order, taken)),
                 (QStringList{"spid_1 cannot: 015550143000", "protocol_variant cannot: ni1-5ess"}));
    }

    void linesWithTheirOwnVariantStay()
    {
        const ServiceOrder order = line("ni2", "217-555-0143", "21755501430101");
        QVERIFY(told(changedBy(conversion("ni1-5ess", "ni-generic"), order, nobody)).isEmpty());
    }

    void aLineSaysWhatItsOrderDoes()
    {
        OrderFields shared = jobs::briFields();
        shared["dn_2"] = "555-0143";
        shared["head_number"] = "217-555-0140";
        for (const OrderFields &fields : {jobs::briFields(), jobs::analogFields(), shared}) {
            const ServiceOrder order = jobs::order(fields);
            const ServiceOrder line = lineOf(order.toJson());
            for (const OfficeChange &change :
                 {split(), split(true), conversion("ni2", "custom-5ess-multipoint"),
                  conversion("ni2", "custom-dms100"), conversion("ni2", "dss1")})
                QCOMPARE(told(changedBy(change, line, nobody)),
                         told(changedBy(change, order, nobody)));
        }
    }

    void whatIsNoChange_data()
    {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("to");
        QTest::addColumn<QString>("place"); // empty: it is one
        const auto row = [](const char *kind, const char *from, const char *to, const char *place) {
            QTest::addRow("%s %s %s", kind, from, to) << kind << from << to << place;
        };
        row("area_code", "217", "447", "");
        row("area_code", "217", "297", ""); // held for expansion: doubtful
        row("area_code", "117", "447", "from");
        row("area_code", "217", "411", "to");
        row("area_code", "217", "44", "to");
        row("area_code", "217", "٤٤٧", "to");
        row("area_code", "217", "4470", "to");
        row("area_code", "217", "217", "to");
        row("variant", "ni2", "ni1-5ess", "");
        row("variant", "ni2", "ni3", "to");
        row("variant", "ni2", "analog", "to");
        row("variant", "ni2", "ni2", "to");
    }
    void whatIsNoChange()
    {
        QFETCH(QString, kind);
        QFETCH(QString, from);
        QFETCH(QString, to);
        QFETCH(QString, place);
        const OfficeChange change{*fromText<OfficeChangeKind>(kind), "NORTH", from, to};
        const auto checked = checkOfficeChange(change);
        QCOMPARE(bool(checked), place.isEmpty());
        if (!checked) {
            QCOMPARE(checked.error().code, ErrorCode::BadInput);
            QCOMPARE(checked.error().place, place);
        }
        QCOMPARE(doubtAbout(change).isEmpty(), to != "297");
        const auto again = OfficeChange::fromJson(change.toJson(), "change");
        QVERIFY(again);
        QCOMPARE(*again == change, true);
    }
};

QTEST_APPLESS_MAIN(OfficeChangeTest)
#include "OfficeChangeTest.moc"
