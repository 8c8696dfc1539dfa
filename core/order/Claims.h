#pragma once
// What an order claims for its circuit and no other circuit may hold at the same time: each
// directory number (one everywhere), each SPID and the pair (one within the serving office). The
// value of a claim is a key: equal for the same number, SPID or pair however it was typed.

#include "core/order/ServiceOrder.h"

namespace loopwright {

enum class ClaimKind
{
    Dn,
    Spid,
    Pair
};
template<>
struct EnumCodes<ClaimKind>
{
    static constexpr std::pair<ClaimKind, const char *> table[] = {
        {ClaimKind::Dn, "dn"}, {ClaimKind::Spid, "spid"}, {ClaimKind::Pair, "pair"}};
};

struct Claim
{
    ClaimKind kind = ClaimKind::Dn;
    QString scope; ///< empty for a number, else the key of the serving office
    QString value;
    QString field; ///< column of the order, e.g. "dn_1"; the first one if two hold the same
    QString shown; ///< as it was typed

    bool operator==(const Claim &) const = default;
};

/// Each claim once, in the order of the columns. A number or SPID that cannot be read claims
/// nothing; a disconnect claims nothing, nor does a repair.
std::vector<Claim> claimsOf(const ServiceOrder &order);

/// Upper case, white space, dashes and separators made one, as word processors and telephones make
/// many of them: "101 / 22" is "101/22", "17–204" is "17-204".
QString pairKey(const QString &pair);
/// The cable of a pair: its key before the last dash; empty if it has none.
QString cableOf(const QString &pair);
/// The number at the end of a pair's name: how near two pairs of a cable are; 0 without one.
qint64 pairNumber(const QString &pair);
/// The name of a pair without what it is written with: letters and digits alone, in upper case.
QString pairIdentity(const QString &pair);
/// Folded case and white space.
QString premisesKey(const QString &premises);

} // namespace loopwright
