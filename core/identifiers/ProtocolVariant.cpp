#include "core/identifiers/ProtocolVariant.h"

namespace loopwright {

namespace {

// Usual octets of the bearer capability (libpri; Q.931 4.5.5). Mu-law in North America and (from
// memory) Japan, A-law elsewhere.
std::vector<BearerService> bearers(const char *speech, const char *audio)
{
    return {{"voice", "speech", speech},
            {"voice", "3.1 kHz audio", audio},
            {"data", "unrestricted digital 64 kbit/s", "88 90"},
            {"data", "unrestricted digital, adapted to 56 kbit/s", "88 90 21 8F"},
            {"packet", "packet mode on the D channel", ""}};
}

const char multipoint[] = "multipoint";
const char pointToPoint[] = "point-to-point";
const char automatic[] = "automatic";
const char noSpid[] = "none, leave it empty";
const char spidPerTerminal[] = "one for each terminal, all digits without separators";
const char spidPerNumber[] = "one for each directory number, all digits without separators";

std::vector<TerminalSetting> program(const char *protocol, const char *line, const char *tei,
                                     const char *spids)
{
    const char *spid = spids == noSpid ? "SPID" : "SPID entry";
    return {{"Switch protocol", protocol}, {"Line", line}, {"TEI", tei}, {spid, spids}};
}

// For which a SPID can be made from the number: those whose documented shape is the generic one
// alone, or that prefer it, and the custom one of the 5ESS. A terminal that shares no profile has
// sharing id and terminal id 01 (National ISDN Council, spid.htm).
const char generic[] = "14 digits: number 10, sharing id 01-32, terminal id 01-08";

// One row for one variant. Sources of the SPID columns: SpidRules.h; that two per line are usual on
// NI-1 and DMS-100: Cabletron CSX5500 manual p. 123; eight terminals at most on a bus: I.430 8.2.1;
// TEI 0 on INS-64 point-to-point: the same Cabletron manual; vn, 1tr6, ts013: from memory.
std::vector<ProtocolVariant> rows()
{
    const std::vector<BearerService> muLaw = bearers("80 90 A2", "90 90 A2");
    const std::vector<BearerService> aLaw = bearers("80 90 A3", "90 90 A3");
    // 56 kbit/s is needed if a trunk on the path robs bits for its signalling (common
    // practice, no source).
    const QString mixedRates =
        "64 kbit/s; 56 kbit/s where a trunk on the path uses robbed-bit signalling";
    const QString fullRate = "64 kbit/s; V.110 where a slower rate is adapted";
    return {
        {.key = "ni-generic",
         .name = "National ISDN, generic SPID format",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 1,
         .usualSpidsTo = 2,
         .maxSpids = 8,
         .minDigits = 14,
         .maxDigits = 14,
         .spidShapes = generic,
         .soleEnding = "01",
         .spidRule = SpidRule::Generic,
         .spidMaking = SpidMaking::Generic,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("National ISDN", multipoint, automatic, spidPerTerminal)},
        {.key = "ni2",
         .name = "National ISDN-2",
         .region = "North America",
         .spid = SpidRequirement::Optional,
         .usualSpidsFrom = 1,
         .usualSpidsTo = 2,
         .maxSpids = 8,
         .minDigits = 3,
         .maxDigits = 20,
         .spidShapes = "14 digits in the generic format preferred, any 3 to 20 digits allowed",
         .spidRule = SpidRule::Ni2,
         .spidMaking = SpidMaking::Generic,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("National ISDN-2 (NI-2)", multipoint, automatic,
                             "where one is given: all digits without separators")},
        {.key = "ni1",
         .name = "National ISDN-1",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 2,
         .usualSpidsTo = 2,
         .maxSpids = 8,
         .spidPerChannel = true,
         .minDigits = 9,
         .maxDigits = 20,
         .spidShapes = "any NI-1 shape: the switch family is not known",
         .spidRule = SpidRule::Ni1,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("National ISDN-1 (NI-1)", multipoint, automatic, spidPerNumber)},
        {.key = "ni1-5ess",
         .name = "National ISDN-1 on 5ESS",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 2,
         .usualSpidsTo = 2,
         .maxSpids = 8,
         .spidPerChannel = true,
         .minDigits = 9,
         .maxDigits = 20,
         .spidShapes = "12 digits: 01, number 7, 0, terminal id 00-62; or the generic format",
         .spidRule = SpidRule::Ni1FiveEss,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings =
             program("National ISDN-1 (NI-1), switch 5ESS", multipoint, automatic, spidPerNumber)},
        {.key = "ni1-dms100",
         .name = "National ISDN-1 on DMS-100",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 2,
         .usualSpidsTo = 2,
         .doubtfulAboveSpids = 2,
         .maxSpids = 8,
         .spidPerChannel = true,
         .minDigits = 10,
         .maxDigits = 20,
         .spidShapes =
             "12 to 14 digits: number 10, suffix, terminal id 00-62; or the generic format",
         .spidRule = SpidRule::Ni1Dms100,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("National ISDN-1 (NI-1), switch DMS-100", multipoint, automatic,
                             spidPerNumber)},
        {.key = "ni1-ewsd",
         .name = "National ISDN-1 on EWSD",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 2,
         .usualSpidsTo = 2,
         .maxSpids = 8,
         .spidPerChannel = true,
         .minDigits = 9,
         .maxDigits = 20,
         .spidShapes = generic,
         .spidRule = SpidRule::Ni1Ewsd,
         .spidMaking = SpidMaking::Generic,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings =
             program("National ISDN-1 (NI-1), switch EWSD", multipoint, automatic, spidPerNumber)},
        {.key = "custom-5ess-multipoint",
         .name = "5ESS custom, multipoint",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 1,
         .usualSpidsTo = 8,
         .maxSpids = 8,
         .minDigits = 9,
         .maxDigits = 20,
         .spidShapes = "10 digits: 01, number 7, 0",
         .soleEnding = "0",
         .spidRule = SpidRule::CustomFiveEss,
         .spidMaking = SpidMaking::FiveEss,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("5ESS custom", multipoint, automatic, spidPerTerminal)},
        {.key = "custom-5ess-p2p",
         .name = "5ESS custom, point-to-point",
         .region = "North America",
         .tei = TeiRule::FixedZero,
         .teiWords = "fixed, 0 usual",
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .pointToPoint = true,
         .settings = program("5ESS custom", pointToPoint, "fixed, 0", noSpid)},
        {.key = "custom-dms100",
         .name = "DMS-100 custom",
         .region = "North America",
         .spid = SpidRequirement::Required,
         .usualSpidsFrom = 2,
         .usualSpidsTo = 2,
         .doubtfulAboveSpids = 2,
         .maxSpids = 8,
         .spidPerChannel = true,
         .minDigits = 10,
         .maxDigits = 20,
         .spidShapes = "10 to 12 digits: number 10, suffix of 0 to 2 digits",
         .spidRule = SpidRule::CustomDms100,
         .teiWords = automatic,
         .bearers = muLaw,
         .rateHabit = mixedRates,
         .homeCountry = "1",
         .northAmerican = true,
         .settings = program("DMS-100 custom", multipoint, automatic, spidPerNumber)},
        {.key = "dss1",
         .name = "ETSI DSS1, point-to-multipoint",
         .region = "Europe and many others",
         .teiWords = automatic,
         .bearers = aLaw,
         .rateHabit = fullRate,
         .internationalPrefix = "00",
         .settings = program("DSS1 (ETSI, \"Euro-ISDN\")", multipoint, automatic, noSpid)},
        {.key = "dss1-p2p",
         .name = "ETSI DSS1, point-to-point",
         .region = "Europe and many others",
         .tei = TeiRule::FixedZero,
         .teiWords = "fixed 0",
         .bearers = aLaw,
         .rateHabit = fullRate,
         .internationalPrefix = "00",
         .pointToPoint = true,
         .settings = program("DSS1 (ETSI, \"Euro-ISDN\")", pointToPoint, "fixed, 0", noSpid)},
        {.key = "vn",
         .name = "VN series",
         .region = "France",
         .teiWords = automatic,
         .bearers = aLaw,
         .rateHabit = fullRate,
         .homeCountry = "33",
         .internationalPrefix = "00",
         .settings = program("VN (French national)", multipoint, automatic, noSpid)},
        {.key = "1tr6",
         .name = "1TR6",
         .region = "Germany",
         .teiWords = automatic,
         .bearers = aLaw,
         .rateHabit = fullRate,
         .homeCountry = "49",
         .internationalPrefix = "00",
         .ownCauseList = true,
         .settings = {{"Switch protocol", "1TR6 (German national)"},
                      {"Line", multipoint},
                      {"TEI", automatic},
                      {"SPID", noSpid},
                      {"EAZ", "one digit for each terminal, 1 to 8; often the number's last"}}},
        {.key = "ins64",
         .name = "INS-64",
         .region = "Japan",
         .tei = TeiRule::AutomaticOrFixedZero,
         .teiWords = "automatic, or fixed 0 on a point-to-point line",
         .bearers = muLaw,
         .rateHabit = fullRate,
         .homeCountry = "81",
         .internationalPrefix = "010",
         .settings = program("INS-64", "as ordered: multipoint or point-to-point",
                             "automatic; fixed 0 on a point-to-point line", noSpid)},
        {.key = "ts013",
         .name = "TS013",
         .region = "Australia",
         .teiWords = automatic,
         .bearers = aLaw,
         .rateHabit = fullRate,
         .homeCountry = "61",
         .internationalPrefix = "0011",
         .settings = program("TS013", multipoint, automatic, noSpid)},
        {.key = "analog",
         .name = "Ordinary analog line",
         .region = "any",
         .tei = TeiRule::None,
         .teiWords = "none, no layer 2",
         .bearers = {{"voice", "speech and modem", ""}},
         .rateHabit = "",
         .isAnalog = true,
         .settings = {{"Line", "analog, two wires"}}},
    };
}

const std::vector<ProtocolVariant> &table()
{
    static const std::vector<ProtocolVariant> all = rows();
    return all;
}

} // namespace

const ProtocolVariant *findVariant(QStringView key)
{
    for (const ProtocolVariant &variant : table())
        if (variant.key == key)
            return &variant;
    return nullptr;
}

std::span<const ProtocolVariant> allVariants()
{
    return table();
}

QString nearestVariantKey(QStringView key)
{
    const auto plain = [](QStringView text) {
        QString letters;
        for (const QChar c : text)
            if (c.isLetterOrNumber())
                letters += c.toLower();
        return letters;
    };
    const QString wanted = plain(key);
    for (const ProtocolVariant &variant : table())
        if (plain(variant.key) == wanted || plain(variant.name) == wanted)
            return variant.key;
    return {};
}

} // namespace loopwright
