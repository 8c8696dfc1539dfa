#pragma once
// One service order: what a customer ordered and what the office assigned. Its text form is a map
// of column to text under the names of orders.csv; the file, the desktop form, the stored document
// and the digest all use that one form.

#include "core/base/Finding.h"
#include "core/base/Json.h"
#include "core/order/Services.h"

#include <QDate>
#include <QMap>
#include <QStringList>

#include <functional>
#include <span>
#include <vector>

namespace loopwright {

struct OrderedTerminal
{
    int number = 1; ///< 1 to 8, as in dn_1
    QString dn;     ///< as ordered; digits and separators
    QString spid;
    QString tei; ///< "auto", a number, or empty (automatic)
    std::optional<Services>
        dnServices; ///< services this number answers; unset: every service granted on a B channel

    bool operator==(const OrderedTerminal &) const = default;
};

/// Characters that a field of an order may have, and the names of order and circuit, by which
/// records and facts refer to them. What quotes one must take as many.
inline constexpr int longestOrderText = 500;
inline constexpr int longestOrderName = 200;

/// Column name of orders.csv to trimmed text; columns without text are left out.
using OrderFields = QMap<QString, QString>;

/// Columns of an order name so many terminals at most.
inline constexpr int mostTerminals = 8;

struct ServiceOrder
{
    QString number;
    OrderType type = OrderType::New;
    QDate dueDate;
    QString customer, premises, circuit;
    LineKind kind = LineKind::Bri;
    QString office;
    QString variant; ///< key of a protocol variant; "analog" on an analog line
    QString pair;
    Services b1, b2, d;
    int dataRate = 64000; ///< bit/s, 64000 or 56000
    std::vector<OrderedTerminal> terminals;
    bool ntSupplied = false;
    QString installer, remarks;
    QString symptom,
        deskTest; ///< of a repair: what the customer says, what a test from the desk showed
    QString crew; ///< what the work takes: two people, a ladder, a bucket truck
    QString contact, accessNotes, appointment, terminalLocation, feederPair, dialPrefix,
        relatedOrder;
    QString headNumber, numberRange; ///< of a point-to-point line: "217-555-0140", "00-49"
    QString ntMake, ntSerial;
    QString ntPower; ///< what feeds the NT, in words
    // Of the plan that the desk makes: on whom an order that is on hold waits (a WaitingOn) and
    // why; the first day that the customer was told, once there is another, and why there is.
    QString waitingOn, waitingBecause, firstDueDate, dueBecause;
    std::optional<LineMode> line; ///< unset: as the protocol variant has it

    bool operator==(const ServiceOrder &) const = default;

    OrderFields fields() const;
    QJsonObject toJson() const;
    /// Reads what toJson wrote; any other text is BadInput.
    static Result<ServiceOrder> fromJson(const QJsonObject &object, const QString &place);

    const OrderedTerminal *terminal(int number) const;
    /// The services that B1 and B2 carry together.
    Services bServices() const { return b1 | b2; }
    /// The services that calls to this number must show.
    Services servicesOf(const OrderedTerminal &terminal) const;
    bool bothChannelsOrdered() const { return b1 != Services() && b2 != Services(); }
    /// One link for all numbers: as ordered, or as the variant is.
    bool isPointToPoint() const;
    bool isOnHold() const { return !waitingOn.isEmpty(); }
    /// Takes over what the desk planned, as far as this order does not say it: an order that comes
    /// in once more, from a file or a form, knows nothing of it.
    void keepPlan(const ServiceOrder &before);
};

/// What the customer says of a repair, and what a test from the desk showed, in one line; empty for
/// an order without a symptom.
QString troubleText(const ServiceOrder &order);

/// Where a field stands on the form of an order.
enum class OrderPart
{
    Own,      ///< a field made for it alone
    Order,    ///< of the order itself
    Customer, ///< customer and premises
    Line,     ///< circuit and pair
    Plan,     ///< made by the desk afterwards; on no form
};

/// A text of the order that may be left out. A further one is a member of ServiceOrder and a row of
/// the table: file, form, stored document and digest follow.
struct OrderText
{
    const char *column;
    QString ServiceOrder::*member;
    OrderPart part;         ///< no default: what stands on no form is lost when the form is saved
    const char *label = ""; ///< for the form
    const char *hint = "";
    bool isLong = false; ///< of several lines
};
std::span<const OrderText> orderTexts();

/// Names of the columns that an order has, required and optional, in the order of the contract; "#"
/// stands for 1 to 8.
const QStringList &requiredOrderColumns();
const QStringList &optionalOrderColumns();

/// An order read from its fields: if `malformed` holds an error the order cannot be taken in.
struct OrderReading
{
    ServiceOrder order;
    Findings malformed; ///< each with the column in `field`
};

/// Checks the form of every field. `officeVariant` answers with the protocol variant of a serving
/// office, or nothing if there is no such office.
OrderReading readOrder(const OrderFields &fields,
                       const std::function<std::optional<QString>(const QString &)> &officeVariant);

} // namespace loopwright
