#include "core/order/OrderColumns.h"

#include "core/order/ServiceOrder.h"

#include <algorithm>
#include <iterator>

namespace loopwright {

namespace {

struct ColumnName
{
    QLatin1StringView column;
    const char *name;
};

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr ColumnName names[] = {
    {QLatin1StringView("order_number"), TEXT("Order number")},
    {QLatin1StringView("order_type"), TEXT("Order type")},
    {QLatin1StringView("due_date"), TEXT("Due date")},
    {QLatin1StringView("customer"), TEXT("Customer")},
    {QLatin1StringView("premises"), TEXT("Premises")},
    {QLatin1StringView("circuit_number"), TEXT("Circuit number")},
    {QLatin1StringView("kind"), TEXT("Kind of line")},
    {QLatin1StringView("office"), TEXT("Serving office")},
    {QLatin1StringView("protocol_variant"), TEXT("Protocol variant")},
    {QLatin1StringView("pair"), TEXT("Pair")},
    {QLatin1StringView("line"), TEXT("Line")},
    {QLatin1StringView("nt_supplied"), TEXT("NT supplied")},
    {QLatin1StringView("data_rate"), TEXT("Data rate")},
    {QLatin1StringView("b1_services"), TEXT("Channel B1")},
    {QLatin1StringView("b2_services"), TEXT("Channel B2")},
    {QLatin1StringView("d_services"), TEXT("Channel D")},
    {QLatin1StringView("installer"), TEXT("Installer")},
};

/// What a terminal has, behind "dn_2" and its like.
constexpr ColumnName ofTerminals[] = {
    {QLatin1StringView("dn_"), TEXT("Directory number")},
    {QLatin1StringView("spid_"), "SPID"},
    {QLatin1StringView("tei_"), TEXT("TEI")},
};

} // namespace

Text nameOfColumn(const QString &column)
{
    const auto own = std::ranges::find(names, column, &ColumnName::column);
    if (own != std::end(names))
        return own->name;
    const auto texts = orderTexts();
    const auto text = std::ranges::find_if(
        texts, [&](const OrderText &each) { return column == QLatin1StringView(each.column); });
    if (text != texts.end() && *text->label)
        return text->label;
    for (const auto &[prefix, name] : ofTerminals) {
        if (!column.startsWith(prefix))
            continue;
        const QString rest = column.mid(prefix.size());
        const QString number = rest.section(u'_', 0, 0);
        const Text what = rest == number ? Text(name) : Text(TEXT("Answers"));
        return Text(TEXT("Terminal %1, %2")).arg(number).arg(what);
    }
    return Text::verbatim(column);
}

} // namespace loopwright
