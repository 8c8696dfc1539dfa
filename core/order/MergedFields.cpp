#include "core/order/MergedFields.h"

namespace loopwright {

OrderFields mergedFields(const OrderFields &own, const std::vector<ToldFields> &told)
{
    QStringList columns;
    for (const ToldFields &each : told)
        columns << each.base.keys() << each.now.keys();
    columns.removeDuplicates();
    OrderFields merged = own;
    for (const QString &column : std::as_const(columns)) {
        QStringList values; // that somebody put in the place of what the office has
        bool changedHere = false;
        for (const ToldFields &each : told) {
            const QString value = each.now.value(column), was = each.base.value(column);
            if (value == was || value == own.value(column))
                continue;
            changedHere = changedHere || was != own.value(column);
            if (!values.contains(value))
                values << value;
        }
        if (values.size() != 1 || changedHere)
            continue;
        if (values.first().isEmpty())
            merged.remove(column);
        else
            merged.insert(column, values.first());
    }
    return merged;
}

} // namespace loopwright
