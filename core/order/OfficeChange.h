#pragma once
// What becomes of one order when something happens to all lines of its office at once: the area
// code is split, or the switch is converted to another protocol. Pure: nothing is written here. The
// facts behind it: an area-code split leaves a SPID that holds the old code valid or not as the
// switch has it, so it is never rewritten unasked (National ISDN Council, spid.htm); what a
// provider alone knows of a SPID is not made up.

#include "core/order/Claims.h"

#include <functional>

namespace loopwright {

enum class OfficeChangeKind
{
    AreaCode, ///< numbers of one area code get another
    Variant,  ///< lines of one protocol variant get another
};
template<>
struct EnumCodes<OfficeChangeKind>
{
    static constexpr std::pair<OfficeChangeKind, const char *> table[] = {
        {OfficeChangeKind::AreaCode, "area_code"}, {OfficeChangeKind::Variant, "variant"}};
};

struct OfficeChange
{
    OfficeChangeKind kind = OfficeChangeKind::AreaCode;
    QString office;
    QString from, to;   ///< area codes, or keys of protocol variants
    bool spids = false; ///< SPIDs that hold the old area code are made anew too

    bool operator==(const OfficeChange &) const = default;
    QJsonObject toJson() const;
    static Result<OfficeChange> fromJson(const QJsonObject &object, const QString &place);
};

/// BadInput, at "from" or "to", where it is no area code of the North American plan, no variant, or
/// both are the same.
Result<void> checkOfficeChange(const OfficeChange &change);
/// What is doubtful about it as a whole; empty mostly.
Text doubtAbout(const OfficeChange &change);

/// A value of an order, by its column in the order file.
struct ValueChange
{
    QString what, old, now;

    bool operator==(const ValueChange &) const = default;
};
/// A value that stays as it is though the change concerns it.
struct ValueKept
{
    QString what, old;
    Text because;
};

struct ChangedOrder
{
    ServiceOrder order; ///< as it would be
    std::vector<ValueChange> changes;
    std::vector<ValueKept> cannot;
};

/// What such a change asks of a stored order, and no more, from its content: an office has a
/// hundred thousand of them. Not checked again.
ServiceOrder lineOf(const QJsonObject &content);

/// The order with other texts in columns that such a change may change.
ServiceOrder withValues(ServiceOrder order, const OrderFields &values);

/// The other circuit that holds what would be claimed; empty: none does.
using HolderOf = std::function<QString(ClaimKind kind, const QString &value)>;

/// A number moves if it is of country code 1 and of the old area code, however it was typed;
/// numbers of other countries are not concerned. A terminal whose number cannot move keeps number
/// and SPID, the others of its line move. A conversion changes a whole line or nothing of it: the
/// variant, what of its numbers would be read as another number, and every SPID that has not the
/// shape of the new variant, where that follows from the number. A SPID that does not follow and
/// may stay within the bounds of the new variant is kept and named.
ChangedOrder changedBy(const OfficeChange &change, const ServiceOrder &order,
                       const HolderOf &holderOf);
// The two of them, each in a file of its own.
ChangedOrder splitAreaCode(const OfficeChange &change, const ServiceOrder &order,
                           const HolderOf &holderOf);
ChangedOrder convertSwitch(const OfficeChange &change, const ServiceOrder &order,
                           const HolderOf &holderOf);

/// The columns of a terminal: "dn_2", "spid_2", "tei_2"
struct TerminalColumns
{
    QString dn, spid, tei;
};
/// Of terminals 1 to 8.
const TerminalColumns &columnsOf(int terminal);

} // namespace loopwright
