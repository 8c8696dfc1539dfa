#pragma once
// The fields of an order as a form asks for them, under the names of orders.csv, and what of the
// form depends on the kind of line, the variant and the office.

#include "app/desktop/form/Form.h"
#include "core/order/ServiceOrder.h"

#include <QMap>

namespace loopwright {

class SpidParts;

/// The part of the form's object names, and of its draft.
inline constexpr char orderPart[] = "order";

/// What the form needs to know beside its own answers.
struct OrderFormState
{
    QMap<QString, QString> variantOfOffice;
    int terminals = 1;            ///< shown, 1 to 8
    QList<SpidParts *> spidParts; ///< below the SPID of each terminal
};

/// The form, one card for each group and each terminal; `state` must live as long as it does.
Form *makeOrderForm(OrderFormState &state, FormUse use);

/// Replaces what the form shows; shows as many terminals as there are.
void showOrderFields(Form &form, OrderFormState &state, const OrderFields &fields, bool touched);
OrderFields orderFieldsOf(const Form &form);
/// Labels, hints and SPID parts as they follow from what is typed; after each change of it.
void adaptOrderForm(Form &form, OrderFormState &state);
/// Shows one terminal more and goes there.
void addTerminal(Form &form, OrderFormState &state);
/// Moves the keyboard to a column's field, and shows its terminal where that is hidden yet.
void goToColumn(Form &form, OrderFormState &state, const QString &column);
/// "Terminal 2, SPID": what the form calls a column.
QString nameOfColumn(const Form &form, const QString &column);

} // namespace loopwright
