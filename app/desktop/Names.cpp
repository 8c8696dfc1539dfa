#include "app/desktop/Names.h"

#include "app/desktop/Language.h"
#include "core/identifiers/ProtocolVariant.h"

#include <QCoreApplication>
#include <QLocale>

namespace loopwright {

namespace {

/// "order_taken" as "Order taken", "dn_twice" as "DN twice".
QString spelled(const QString &code)
{
    QStringList words = code.split(u'_');
    for (QString &word : words)
        if (word == u"dn" || word == u"spid" || word == u"tei")
            word = word.toUpper();
    QString text = words.join(u' ');
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return localizedWord(text);
}

} // namespace

QString waitingOnName(const QString &word)
{
    return spelled(word);
}

QString outcomeName(OrderOutcome outcome)
{
    switch (outcome) {
    case OrderOutcome::Accepted:
        return QCoreApplication::translate("Names", "Accepted");
    case OrderOutcome::AcceptedWithException:
        return QCoreApplication::translate("Names", "Accepted with exception");
    case OrderOutcome::NotAccepted:
        return QCoreApplication::translate("Names", "Not accepted");
    case OrderOutcome::Incomplete:
        return QCoreApplication::translate("Names", "Incomplete");
    }
    return {};
}

Status outcomeSign(OrderOutcome outcome)
{
    switch (outcome) {
    case OrderOutcome::Accepted:
    case OrderOutcome::AcceptedWithException:
        return Status::Done;
    case OrderOutcome::NotAccepted:
        return Status::Failed;
    case OrderOutcome::Incomplete:
        return Status::Open;
    }
    return Status::None;
}

QString statusName(OrderStatus status)
{
    switch (status) {
    case OrderStatus::Open:
        return QCoreApplication::translate("Names", "open");
    case OrderStatus::Completed:
        return QCoreApplication::translate("Names", "completed");
    case OrderStatus::Cancelled:
        return QCoreApplication::translate("Names", "cancelled");
    }
    return {};
}

QString kindName(LineKind kind)
{
    return kind == LineKind::Bri ? QCoreApplication::translate("Names", "basic rate")
                                 : QCoreApplication::translate("Names", "analog");
}

QString variantName(const QString &key)
{
    const ProtocolVariant *variant = findVariant(key);
    return variant ? localizedWord(variant->name) : key;
}

QString officeName(const ServingOffice &office)
{
    return office.name.isEmpty() ? office.key
                                 : QStringLiteral("%1 — %2").arg(office.key, office.name);
}

QString suitabilityName(Suitability verdict)
{
    switch (verdict) {
    case Suitability::Suitable:
        return QCoreApplication::translate("Names", "suitable");
    case Suitability::Marginal:
        return QCoreApplication::translate("Names", "marginal");
    case Suitability::NotSuitable:
        break;
    }
    return QCoreApplication::translate("Names", "not suitable");
}

Status suitabilitySign(Suitability verdict)
{
    return verdict == Suitability::Suitable   ? Status::Done
           : verdict == Suitability::Marginal ? Status::Doubtful
                                              : Status::Failed;
}

QString reasonSentences(const std::vector<Text> &reasons)
{
    return reasons.empty() ? QString() : localized(Text::joined(reasons, ". ")) + '.';
}

QString eventName(const QString &kind)
{
    return spelled(kind);
}

QString searchedColumnName(const QString &column)
{
    static constexpr std::pair<const char *, const char *> names[] = {
        {"order_number", QT_TRANSLATE_NOOP("Names", "Order number")},
        {"circuit_number", QT_TRANSLATE_NOOP("Names", "Circuit number")},
        {"pair", QT_TRANSLATE_NOOP("Names", "Pair")},
        {"related_order", QT_TRANSLATE_NOOP("Names", "Related order")},
        {"feeder_pair", QT_TRANSLATE_NOOP("Names", "Feeder pair")},
        {"customer", QT_TRANSLATE_NOOP("Names", "Customer")},
        {"premises", QT_TRANSLATE_NOOP("Names", "Premises")},
        {"office", QT_TRANSLATE_NOOP("Names", "Office")},
        {"installer", QT_TRANSLATE_NOOP("Names", "Installer")},
        {"contact", QT_TRANSLATE_NOOP("Names", "Contact")},
        {"crew", QT_TRANSLATE_NOOP("Names", "Crew and vehicle")},
        {"remarks", QT_TRANSLATE_NOOP("Names", "Remarks")}};
    for (const auto &[key, name] : names)
        if (column == QLatin1StringView(key))
            return QCoreApplication::translate("Names", name);
    const QString number = column.section(u'_', 1);
    return column.startsWith(u"dn_") ? QCoreApplication::translate("Names", "DN %1").arg(number)
                                     : QCoreApplication::translate("Names", "SPID %1").arg(number);
}

QString foundText(const QStringList &columns)
{
    QStringList names;
    for (const QString &column : columns)
        names << searchedColumnName(column);
    return names.isEmpty() ? QString()
                           : QCoreApplication::translate("Names", "Found in: %1.")
                                 .arg(names.join(QStringLiteral(", ")));
}

QString dayText(QDate day, QDate today)
{
    if (!day.isValid())
        return {};
    const bool near = today.isValid() && day.year() == today.year();
    return QLocale().toString(day, near ? QCoreApplication::translate("Names", "d MMM")
                                        : QCoreApplication::translate("Names", "d MMM yyyy"));
}

QString planText(const ServiceOrder &order)
{
    QStringList parts;
    if (order.isOnHold())
        parts << QCoreApplication::translate("Names", "On hold, waits on %1: %2.")
                     .arg(localizedWord(order.waitingOn), order.waitingBecause);
    const QString first = dayText(QDate::fromString(order.firstDueDate, Qt::ISODate));
    if (!first.isEmpty())
        parts << (order.dueBecause.isEmpty()
                      ? QCoreApplication::translate("Names", "The first day was %1.").arg(first)
                      : QCoreApplication::translate("Names",
                                                    "The first day was %1; moved because: %2.")
                            .arg(first, order.dueBecause));
    return parts.join(u' ');
}

QString outText(const std::vector<OutAt> &out, QDate today)
{
    QStringList lines;
    for (const OutAt &each : out)
        lines << QCoreApplication::translate("Names", "With %1 since %2")
                     .arg(each.station, dayText(each.since.localDate(), today));
    return lines.join(u'\n');
}

QString conflictsText(int conflicts)
{
    if (conflicts == 0)
        return {};
    return conflicts == 1
               ? QCoreApplication::translate("Names", "1 thing to settle between stations")
               : QCoreApplication::translate("Names", "%1 things to settle between stations")
                     .arg(QLocale().toString(conflicts));
}

QStringList stationLines(const std::vector<OutAt> &out, int conflicts, QDate today)
{
    QStringList lines{conflictsText(conflicts), outText(out, today)};
    lines.removeAll(QString());
    return lines;
}

QString hazardAge(std::optional<qint64> days)
{
    if (!days)
        return {};
    if (*days == 0)
        return QCoreApplication::translate("Names", "Open since today.");
    return *days == 1 ? QCoreApplication::translate("Names", "Open for 1 day.")
                      : QCoreApplication::translate("Names", "Open for %1 days.")
                            .arg(QLocale().toString(*days));
}

QString dueWords(QDate due, QDate today, bool finished)
{
    if (!due.isValid() || finished)
        return {};
    const qint64 days = today.daysTo(due);
    if (days == 0)
        return QCoreApplication::translate("Names", "today");
    if (days == 1)
        return QCoreApplication::translate("Names", "tomorrow");
    if (days == -1)
        return QCoreApplication::translate("Names", "1 day late");
    if (days < 0)
        return QCoreApplication::translate("Names", "%1 days late").arg(-days);
    return {};
}

} // namespace loopwright
