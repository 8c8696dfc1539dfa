#pragma once
// The small papers of an order: the settings card, and the slips that stay behind.

#include "app/actions/Records.h"
#include "app/print/WorkSheets.h"

namespace loopwright {

enum class CardKind
{
    Settings,    ///< what is programmed into the terminal equipment
    LeaveBehind, ///< for the customer of a line that was not accepted
    CloseOut,    ///< for the desk that an accepted order is closed with
};
template<>
struct EnumCodes<CardKind>
{
    static constexpr std::pair<CardKind, const char *> table[] = {
        {CardKind::Settings, "settings"},
        {CardKind::LeaveBehind, "leave_behind"},
        {CardKind::CloseOut, "close_out"}};
};

/// Refused if the order lacks customer, premises or installer, if it does not stand as the card
/// says, or if no font at hand has one of its characters. Unpublished numbers are covered.
Result<Sheet> cardOf(Records &records, const QString &order, CardKind kind, Paper paper);

} // namespace loopwright
