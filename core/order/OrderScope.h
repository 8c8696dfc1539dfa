#pragma once
// What an order changes on a circuit that works already: how much of the acceptance it needs, and
// what a later change of the order itself retires of the evidence.

#include "core/order/JobFacts.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

/// How much of the acceptance an order needs, by its type and by what it changes on the working
/// circuit.
enum class OrderScope
{
    Full,        ///< new; move to other premises; change of pair, variant or service
    MoveWithin,  ///< move within the premises: all but the loop
    NumbersOnly, ///< change of numbers alone
    RecordOnly,
    Repair,  ///< what a new line of the kind needs, but its numbers are assigned already
    Nothing, ///< disconnect
};
template<>
struct EnumCodes<OrderScope>
{
    static constexpr std::pair<OrderScope, const char *> table[] = {
        {OrderScope::Full, "full"},
        {OrderScope::MoveWithin, "move_within"},
        {OrderScope::NumbersOnly, "numbers_only"},
        {OrderScope::RecordOnly, "record_only"},
        {OrderScope::Repair, "repair"},
        {OrderScope::Nothing, "nothing"}};
};

/// `working` is the order by which the circuit works today, if there is one. Without it a move
/// or a change needs everything, because nothing shows what stayed as it was.
OrderScope scopeOf(const ServiceOrder &order, const std::optional<ServiceOrder> &working);

/// Whether it ends with a certificate, or is completed without one.
constexpr bool getsCertificate(OrderScope scope)
{
    return scope != OrderScope::Nothing && scope != OrderScope::RecordOnly &&
           scope != OrderScope::Repair;
}

/// What a changed order retires of the evidence, by the columns that differ: another office or kind
/// of line is another line equipment. `sameWires`: the pair bears another name and is the same.
std::vector<ChangedWhat> whatChanged(const ServiceOrder &before, const ServiceOrder &after,
                                     bool sameWires = false);

} // namespace loopwright
