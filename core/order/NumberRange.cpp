#include "core/order/NumberRange.h"

#include "core/order/OrderIdentifiers.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

Finding rangeFinding(Severity severity, const char *code, const QString &field, Text reason)
{
    return {severity, QString::fromLatin1(code), std::move(reason), {}, field, 0};
}

struct Extensions
{
    QString first, last; ///< of one length, ascending

    bool holds(const QString &digits) const
    {
        return digits.size() == first.size() && digits >= first && digits <= last;
    }
};

std::optional<Extensions> extensionsIn(const QString &typed)
{
    static const QRegularExpression form(
        QRegularExpression::anchoredPattern(QStringLiteral("([0-9]+)\\s*[-\u2013]\\s*([0-9]+)")));
    const auto match = form.match(typed);
    const Extensions found{match.captured(1), match.captured(2)};
    const bool good =
        match.hasMatch() && found.first.size() == found.last.size() && found.first <= found.last;
    return good ? std::optional(found) : std::nullopt;
}

/// What the extensions may stand behind, by either habit.
QStringList stemsOf(const DirectoryNumber &head, qsizetype width)
{
    QStringList stems{head.digits.chopped(width)};
    if (!head.isNanp())
        stems << head.digits;
    if (!head.isNanp() && head.digits.endsWith('0'))
        stems << head.digits.chopped(1);
    return stems;
}

bool isWithin(const DirectoryNumber &number, const DirectoryNumber &head, const Extensions &range)
{
    for (const QString &stem : stemsOf(head, range.first.size()))
        if (number.digits.startsWith(stem) && range.holds(number.digits.mid(stem.size())))
            return true;
    return false;
}

/// By the second habit the head number itself is not among the extensions.
bool holdsHead(const DirectoryNumber &head, const Extensions &range)
{
    return range.holds(head.digits.right(range.first.size())) || !head.isNanp();
}

Findings checkHead(const ServiceOrder &order, const NumberKey &key)
{
    Findings found;
    if (order.headNumber.isEmpty()) {
        found.push_back(rangeFinding(
            Severity::Warning, "head_number_missing", "head_number",
            Text(QT_TRANSLATE_NOOP(
                "core", "The range belongs to a head number, and the order has none."))));
        return found;
    }
    for (Finding each : key.check(order.headNumber).findings) {
        if (each.severity != Severity::Error)
            continue;
        each.code = "head_number_" + each.code.mid(each.code.indexOf('_') + 1);
        each.field = "head_number";
        found.push_back(each);
    }
    return found;
}

} // namespace

Findings checkNumberRange(const ServiceOrder &order)
{
    const bool any = !order.headNumber.isEmpty() || !order.numberRange.isEmpty();
    if (!any)
        return {};
    if (!order.isPointToPoint())
        return {rangeFinding(
            Severity::Warning, "not_point_to_point",
            order.headNumber.isEmpty() ? "number_range" : "head_number",
            Text(QT_TRANSLATE_NOOP("core", "Head number and range are of a point-to-point line, "
                                           "and this order is for another.")))};
    const NumberKey key(order);
    Findings found = checkHead(order, key);
    if (order.numberRange.isEmpty())
        return found;
    const DirectoryNumber head = key.numberOf(order.headNumber);
    const auto range = extensionsIn(order.numberRange);
    if (!range || (!head.isNull() && range->first.size() >= head.digits.size())) {
        found.push_back(rangeFinding(
            Severity::Error, "number_range_malformed", "number_range",
            Text(QT_TRANSLATE_NOOP(
                     "core",
                     "\"%1\" is no range: two groups of digits of one length, the lower first, "
                     "shorter than the head number, e.g. 00-49."))
                .arg(order.numberRange.left(40))));
        return found;
    }
    if (head.isNull())
        return found;
    if (!holdsHead(head, *range))
        found.push_back(rangeFinding(
            Severity::Warning, "head_number_outside", "head_number",
            Text(QT_TRANSLATE_NOOP("core", "The range %1 does not hold the head number %2."))
                .arg(order.numberRange)
                .arg(head.shown())));
    for (const OrderedTerminal &terminal : order.terminals) {
        const DirectoryNumber number = key.numberOf(terminal.dn);
        if (!number.isNull() && number != head && !isWithin(number, head, *range))
            found.push_back(rangeFinding(
                Severity::Warning, "dn_outside_range", QString("dn_%1").arg(terminal.number),
                Text(QT_TRANSLATE_NOOP("core", "%1 does not lie in the range %2 of %3."))
                    .arg(number.shown())
                    .arg(order.numberRange)
                    .arg(head.shown())));
    }
    return found;
}

} // namespace loopwright
