#pragma once
// The SPID rules themselves, on plain digits and without allocating: one rule function for each
// shape that a variant's row names. Spid.h and IdentifierList.h put what is found here into words.
//
// An error cannot be right: a character that is no digit, a length outside the variant's bounds, a
// SPID where none belongs, a field out of range in a shape whose literals and length fix the
// field. A warning is a SPID in no documented shape of its variant, or one that does not agree with
// the DN: published shapes are habits of providers, and refusing a SPID that works is worse than
// asking.
//
// Sources of the shapes and bounds: National ISDN Council, spid.htm (generic format, terminal id 01
// to 08, numeric string of 3 to 20 digits); Allied Telesis ISDN adapter manual 613-10787-00,
// section 3.6 (sharing id 01 to 32, 5ESS and DMS-100); Ascend gateway user's guide, November 1998,
// page B-5 (DMS-100, terminal id 00 to 62); PBX administrator's guide 555-233-506, April 2000, page
// 588 (nine digits at least on NI-1). Where they disagree about the DMS-100, the first two are
// followed.

#include "core/identifiers/Digits.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/identifiers/SpidFault.h"
#include "core/identifiers/SpidPart.h"

#include <span>

namespace loopwright {

/// Digits of a DN that can be compared with a SPID: 7, or 10 with area code; empty if it is not
/// well formed (7 digits, 10, or 11 of which the first is 1).
std::string_view comparableDn(const DigitText &dn);

/// One SPID under the rules of one variant. Judges when it is made; the texts must outlive it.
class SpidJudge
{
public:
    SpidJudge(const ProtocolVariant &variant, std::string_view spid, std::string_view dn);
    SpidJudge(const SpidJudge &) = delete; // embedded() looks into its own digits
    SpidJudge &operator=(const SpidJudge &) = delete;

    const ProtocolVariant &variant() const { return m_variant; }
    std::string_view typed() const { return m_typed; }
    std::string_view typedDn() const { return m_typedDn; }
    const DigitText &spid() const { return m_spid; }
    const DigitText &dn() const { return m_dn; }

    std::span<const SpidFaultFound> faults() const { return {m_faults.data(), m_faultCount}; }
    std::span<const SpidSpan> parts() const { return {m_parts.data(), m_partCount}; }
    Severity worst() const;
    /// The number inside the SPID under the rule that accepted it: 7 or 10 digits, or empty.
    std::string_view embedded() const { return m_embedded; }
    bool comparedWithDn() const { return m_compared; }

    // For the rule functions:
    std::string_view digits() const { return m_spid.view(); }
    int length() const { return m_spid.count; }
    int value(int from, int length) const;
    void report(SpidFault what, int from = 0, int length = 0);
    /// Marks parts from left to right; what is left over belongs to no known part.
    void part(SpidPartKind kind, int length);
    /// Reports NUM over 7 or 10 digits; true if it has no error. Marks the parts.
    bool number(int from, int length);
    /// True if the rule of another variant finds nothing above a note; takes over its parts.
    bool acceptedBy(SpidRule rule);
    void setEmbedded(int from, int length) { m_embedded = digits().substr(from, length); }

private:
    SpidJudge(const SpidJudge &other, SpidRule rule);
    bool passesBounds();
    void compareWithDn();

    const ProtocolVariant &m_variant;
    std::string_view m_typed;
    std::string_view m_typedDn;
    DigitText m_spid;
    DigitText m_dn;
    std::array<SpidFaultFound, 8> m_faults{};
    std::size_t m_faultCount = 0;
    std::array<SpidSpan, 6> m_parts{};
    std::size_t m_partCount = 0;
    std::string_view m_embedded;
    bool m_compared = false;
};

/// Documented shapes that can be told from the digits alone.
enum class SpidShape
{
    None,
    Generic,       ///< DN10 + SS 01-32 + TT 01-08
    FiveEss,       ///< 01 + DN7 + 0 + TT 00-62
    FiveEssCustom, ///< 01 + DN7 + 0
};
SpidShape shapeOf(std::string_view digits);

} // namespace loopwright
