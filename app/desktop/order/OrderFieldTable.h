#pragma once
// The fields of the order form, one row each, under the names of orders.csv. (The terminals have a
// table of their own: TerminalEdit.h.)

#include <QtGlobal>

#include <span>

namespace loopwright {

enum class OrderPart
{
    Order,
    Customer,
    Line,
    Channels
};

enum class OrderEditor
{
    Line,
    Lines,
    Date,
    Type,
    Kind,
    Office,
    Variant,
    Rate,
    YesNo,
    Installer,
    BServices,
    DServices
};

struct OrderFieldRow
{
    const char *column;
    const char *label;
    const char *hint;
    OrderPart part;
    OrderEditor editor;
    int span = 1;             ///< columns of the form; 0: a row of its own
    bool digitalOnly = false; ///< an analog line does not have it
};

std::span<const OrderFieldRow> orderFieldRows();

struct OrderPartRow
{
    OrderPart part;
    const char *name;
};
std::span<const OrderPartRow> orderParts();

} // namespace loopwright
