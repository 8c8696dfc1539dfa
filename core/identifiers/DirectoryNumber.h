#pragma once
// Directory numbers: read as people type them, stored as digits with the country code apart, shown
// as the trade writes them. North American numbers are checked against the numbering plan (Nanp.h),
// others only for their length (E.164 6.1: at most 15 digits with the country code). Any text is an
// acceptable input; nothing here fails.

#include "core/base/Finding.h"
#include "core/identifiers/ProtocolVariant.h"

namespace loopwright {

struct DirectoryNumber
{
    QString country; ///< "1", "49"; empty if it is not known
    QString digits;  ///< national number without trunk prefix

    bool isNull() const { return digits.isEmpty(); }
    bool isNanp() const { return country == u"1"; }
    /// 217-555-0143; other countries as international(); without country code the digits.
    QString shown() const;
    /// +1 217 555 0143, +49 301234567 (E.123 style: spaces only). Only the North American plan is
    /// known here: a number of another country is not grouped, since wrong groups mislead.
    QString international() const;
    /// "+" country number: equal for the same number, however it was typed. Without a country code
    /// "+" and the digits: "49 30 1234567" is the same number as "+49 30 1234567", whoever left the
    /// + out, and national numbers are too short to meet another country's by chance.
    QString assignmentKey() const;

    bool operator==(const DirectoryNumber &) const = default;
};

/// What is known around a number that is typed without area or country code.
struct NumberHome
{
    QString areaCode; ///< three digits; completes a North American number of seven digits
    QString country;  ///< for numbers without "+"; empty: the variant's own
};

struct DirectoryNumberCheck
{
    DirectoryNumber number; ///< null if an error was found
    Findings findings;      ///< worst first; their `field` is "dn"

    Severity worst() const { return loopwright::worst(findings); }
    QString verdict() const { return verdictName(worst()); }
    QString repair() const;
};

/// An empty number is an error ("dn_missing"). Variants of North America take North American
/// numbers only; an analog line takes them unless the number begins with "+" and another country
/// code, or with the 0 that other countries dial in front; every other variant takes 3 to 15
/// digits.
DirectoryNumberCheck checkDirectoryNumber(const ProtocolVariant &variant, const QString &typed,
                                          const NumberHome &home = {});

} // namespace loopwright
