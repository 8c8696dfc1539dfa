#pragma once
// What a channel may carry, which kinds of line and of order there are, and what became of one.

#include "core/base/EnumCodes.h"

#include <QFlags>
#include <QList>

namespace loopwright {

/// A bearer service as an order grants it: circuit-switched voice, circuit-switched data, or
/// packet.
enum class Service
{
    Voice = 1,
    Data = 2,
    Packet = 4
};
Q_DECLARE_FLAGS(Services, Service)
Q_DECLARE_OPERATORS_FOR_FLAGS(Services)

template<>
struct EnumCodes<Service>
{
    static constexpr std::pair<Service, const char *> table[] = {
        {Service::Voice, "voice"}, {Service::Data, "data"}, {Service::Packet, "packet"}};
};

/// "voice+data"; empty for none.
QString servicesText(Services services);
/// Nothing if a word between the "+" is not a service, or stands there twice.
std::optional<Services> servicesFromText(QStringView text);
/// The services one by one, in the order voice, data, packet.
QList<Service> each(Services services);

enum class LineKind
{
    Bri,
    Analog
};
template<>
struct EnumCodes<LineKind>
{
    static constexpr std::pair<LineKind, const char *> table[] = {{LineKind::Bri, "bri"},
                                                                  {LineKind::Analog, "analog"}};
};

/// How terminals share the line.
enum class LineMode
{
    Multipoint,   ///< a bus of terminals, each with a TEI
    PointToPoint, ///< one link, TEI 0, to one exchange of the customer's
};
template<>
struct EnumCodes<LineMode>
{
    static constexpr std::pair<LineMode, const char *> table[] = {
        {LineMode::Multipoint, "multipoint"}, {LineMode::PointToPoint, "point_to_point"}};
};

enum class OrderType
{
    New,
    Change,
    Move,
    Disconnect,
    RecordOnly,
    Repair ///< a trouble on a circuit in service
};
template<>
struct EnumCodes<OrderType>
{
    static constexpr std::pair<OrderType, const char *> table[] = {
        {OrderType::New, "new"},
        {OrderType::Change, "change"},
        {OrderType::Move, "move"},
        {OrderType::Disconnect, "disconnect"},
        {OrderType::RecordOnly, "record_only"},
        {OrderType::Repair, "repair"}};
};

/// What became of an order.
enum class OrderStatus
{
    Open,
    Completed,
    Cancelled
};
template<>
struct EnumCodes<OrderStatus>
{
    static constexpr std::pair<OrderStatus, const char *> table[] = {
        {OrderStatus::Open, "open"},
        {OrderStatus::Completed, "completed"},
        {OrderStatus::Cancelled, "cancelled"}};
};

} // namespace loopwright
