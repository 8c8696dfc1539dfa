#pragma once
// All identifiers of one line judged together: each terminal's DN, SPID and TEI, and the rules
// across them. Errors: equal SPIDs (3Com bridge/router hardware guide, June 1998, p. 78), more than
// eight of them (I.430 8.2.1), equal fixed TEIs. Warnings: more than two on a DMS-100, one if
// both B channels are ordered and the variant takes one per number, a terminal id above 01 whose
// sharing id has no 01 (National ISDN Council, spid.htm). What is held on another line is not known
// here; the records' assignments answer that.

#include "core/identifiers/DirectoryNumber.h"
#include "core/identifiers/Spid.h"
#include "core/identifiers/Tei.h"

namespace loopwright {

struct TerminalIdentifiers
{
    int number = 1; ///< 1 to 8; the n of dn_n, spid_n, tei_n
    QString dn;     ///< as typed
    QString spid;
    QString tei;

    bool isEmpty() const;
    bool operator==(const TerminalIdentifiers &) const = default;
};

/// Findings of the whole line; `field` is "dn_1", "spid_1", "tei_1" …, worst first within a field.
/// A terminal with nothing in it does not count. Our own judgement:
/// - Each terminal needs a DN and may repeat another's: SPIDs tell such terminals apart, and
///   without SPIDs both ring.
/// - On a point-to-point variant several entries are several numbers of the one terminal: they
///   share its TEI, and a blank TEI after the first is the same.
/// - A number of seven digits is completed with the area code of another DN or of a SPID of the
///   line.
Findings checkTerminals(const ProtocolVariant &variant,
                        const std::vector<TerminalIdentifiers> &terminals,
                        bool bothChannelsOrdered);

/// The area code that completes a number of seven digits on this line; empty if none is known.
NumberHome homeOf(const ProtocolVariant &variant,
                  const std::vector<TerminalIdentifiers> &terminals);

/// What to program into the terminal equipment of a line: the variant's own settings, then DN, SPID
/// and TEI of each terminal, grouped for reading aloud. `dataRate` in bit/s, 0 without data.
std::vector<TerminalSetting> settingsToProgram(const ProtocolVariant &variant,
                                               const std::vector<TerminalIdentifiers> &terminals,
                                               int dataRate);

} // namespace loopwright
