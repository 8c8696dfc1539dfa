#pragma once
// The protocol variants of the switches, one row of one table each. Everything that differs from
// one variant to the next stands in its row: a new variant is a row (and a SpidRule with its
// function in SpidRules.cpp if its SPID has a shape that is new) with its test rows, and nothing
// else. Rates in bit/s, lengths in digits.

#include "core/base/EnumCodes.h"

#include <QString>
#include <QStringList>

#include <span>
#include <vector>

namespace loopwright {

enum class SpidRequirement
{
    Required, ///< each terminal sends one
    Optional,
    None, ///< must be blank
};

enum class TeiRule
{
    Automatic,            ///< given by the network; a fixed one of 1 to 63 is possible
    FixedZero,            ///< point-to-point, TEI 0 set in the terminal
    AutomaticOrFixedZero, ///< multipoint automatic, point-to-point 0
    None,                 ///< no layer 2
};

/// The rule by which the shape of a SPID is judged (SpidRules.cpp).
enum class SpidRule
{
    None,
    Generic,
    Ni2,
    Ni1,
    Ni1FiveEss,
    Ni1Dms100,
    Ni1Ewsd,
    CustomFiveEss,
    CustomDms100,
};

/// How the SPID of a terminal with a profile of its own follows from its number, where the rule of
/// the variant leaves one shape for a line that is assigned newly.
enum class SpidMaking
{
    Unknown, ///< several shapes, or ids that the provider alone knows: his order paper says it
    Generic, ///< number 10, sharing id 01, terminal id 01
    FiveEss, ///< 01, number 7, 0
};

/// One thing that a terminal must be set to, in the words of its menu.
struct TerminalSetting
{
    QString name = {};
    QString value;

    bool operator==(const TerminalSetting &) const = default;
};

/// One bearer service as a call asks for it (Q.931 4.5.5).
struct BearerService
{
    QString service;    ///< what an order calls it: "voice", "data" or "packet"
    QString name = {};  ///< e.g. "circuit-switched data 64 kbit/s"
    QString capability; ///< usual octets of the bearer capability in hexadecimal; may be empty
};

struct ProtocolVariant
{
    QString key = {}; ///< stored and exchanged, e.g. "ni1-5ess"
    QString name = {};
    QString region = {};

    SpidRequirement spid = SpidRequirement::None;
    int usualSpidsFrom = 0;      ///< usual number of SPIDs on one line, from
    int usualSpidsTo = 0;        ///< … to
    int doubtfulAboveSpids = 8;  ///< more than this is a warning
    int maxSpids = 0;            ///< more than this is an error; 0 if there are none
    bool spidPerChannel = false; ///< fewer than two are doubtful when both B channels are ordered
    int minDigits = 0;           ///< fewer digits in a SPID are an error
    int maxDigits = 0;           ///< more digits in a SPID are an error
    QString spidShapes = {};     ///< in words, for a person
    QString soleEnding = {}; ///< last digits that are the same in the SPID of every terminal with
                             ///< a profile of its own; empty if they vary
    SpidRule spidRule = SpidRule::None;
    SpidMaking spidMaking = SpidMaking::Unknown;

    TeiRule tei = TeiRule::Automatic;
    QString teiWords = {};

    std::vector<BearerService> bearers = {};
    QString rateHabit = {}; ///< what to know about 64 and 56 kbit/s on such lines

    QString homeCountry = {}; ///< country code of its region if there is only one, else empty
    QString internationalPrefix =
        {}; ///< dialled there before a country code; empty: not looked for
    bool northAmerican = false;
    bool isAnalog = false;
    bool ownCauseList = false; ///< its causes are not those of Q.850
    bool pointToPoint = false; ///< exactly one terminal, whatever its count of numbers

    std::vector<TerminalSetting> settings = {}; ///< what every terminal must be programmed with

    bool hasSpid() const { return spid != SpidRequirement::None; }
    bool hasLayer2() const { return tei != TeiRule::None; }
};

/// Null if no variant has this key. Keys are exact.
const ProtocolVariant *findVariant(QStringView key);
/// Every variant, in the order in which they are offered.
std::span<const ProtocolVariant> allVariants();
/// The key that was probably meant ("NI1_5ESS" -> "ni1-5ess"); empty if none is near.
QString nearestVariantKey(QStringView key);

template<>
struct EnumCodes<SpidRequirement>
{
    static constexpr std::pair<SpidRequirement, const char *> table[] = {
        {SpidRequirement::Required, "required"},
        {SpidRequirement::Optional, "optional"},
        {SpidRequirement::None, "none"}};
};

template<>
struct EnumCodes<TeiRule>
{
    static constexpr std::pair<TeiRule, const char *> table[] = {
        {TeiRule::Automatic, "automatic"},
        {TeiRule::FixedZero, "fixed_zero"},
        {TeiRule::AutomaticOrFixedZero, "automatic_or_fixed_zero"},
        {TeiRule::None, "none"}};
};

} // namespace loopwright
