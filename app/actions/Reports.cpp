#include "app/actions/Reports.h"

#include "app/actions/ExportFolder.h"
#include "app/actions/LimitChanges.h"
#include "core/acceptance/Fact.h"
#include "core/base/PaperTime.h"

#include <QJsonArray>

#include <algorithm>

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("Reports", text)

constexpr ReportColumn perColumns[] = {{"per", TEXT("Office"), ReportForm::Words},
                                       {"per", TEXT("Installer"), ReportForm::Words},
                                       {"per", TEXT("Cable"), ReportForm::Words},
                                       {"per", TEXT("Variant"), ReportForm::Words},
                                       {"per", TEXT("Month"), ReportForm::Words}};

constexpr ReportColumn firstVisitColumns[] = {
    {"orders", TEXT("Accepted"), ReportForm::Count},
    {"met", TEXT("On one visit"), ReportForm::Count},
    {"no_visit", TEXT("Without visit"), ReportForm::Count},
    {"share", TEXT("Share"), ReportForm::Share}};
constexpr ReportColumn firstVisitBehind[] = {{"accepted_on", TEXT("Accepted"), ReportForm::Day},
                                             {"visits", TEXT("Visits"), ReportForm::Count},
                                             {"met", TEXT("On one"), ReportForm::Yes}};
constexpr ReportColumn failingColumns[] = {{"criterion", TEXT("Criterion"), ReportForm::Words},
                                           {"orders", TEXT("Orders"), ReportForm::Count},
                                           {"not_met", TEXT("Not met"), ReportForm::Count},
                                           {"share", TEXT("Share"), ReportForm::Share}};
constexpr ReportColumn failingBehind[] = {{"criterion", TEXT("Criterion"), ReportForm::Words},
                                          {"due_date", TEXT("Due"), ReportForm::Day},
                                          {"not_met", TEXT("Not met"), ReportForm::Yes}};
constexpr ReportColumn openAgeColumns[] = {{"orders", TEXT("Open"), ReportForm::Count},
                                           {"age", TEXT("Days, mean"), ReportForm::Days},
                                           {"oldest", TEXT("Days, oldest"), ReportForm::Count},
                                           {"late", TEXT("Late"), ReportForm::Count},
                                           {"share", TEXT("Late, share"), ReportForm::Share}};
constexpr ReportColumn openAgeBehind[] = {{"taken_on", TEXT("Taken in"), ReportForm::Day},
                                          {"age", TEXT("Days"), ReportForm::Count},
                                          {"late", TEXT("Late"), ReportForm::Yes}};
constexpr ReportColumn exceptionsColumns[] = {{"order_number", TEXT("Order"), ReportForm::Words},
                                              {"customer", TEXT("Customer"), ReportForm::Words},
                                              {"criteria", TEXT("Excepted"), ReportForm::Words},
                                              {"by", TEXT("By"), ReportForm::Words},
                                              {"at", TEXT("On"), ReportForm::Day},
                                              {"because", TEXT("Because"), ReportForm::Words}};
constexpr ReportColumn exceptionsBehind[] = {{"accepted_on", TEXT("Accepted"), ReportForm::Day}};
constexpr ReportColumn calibrationColumns[] = {
    {"instrument", TEXT("Instrument"), ReportForm::Words},
    {"kind", TEXT("Kind"), ReportForm::Words},
    {"serial", TEXT("Serial"), ReportForm::Words},
    {"calibrated_on", TEXT("Calibrated"), ReportForm::Day},
    {"calibration_due", TEXT("Due"), ReportForm::Day},
    {"overdue", TEXT("Overdue"), ReportForm::Yes},
    {"orders", TEXT("Open orders"), ReportForm::Count}};
constexpr ReportColumn calibrationBehind[] = {{"instrument", TEXT("Instrument"), ReportForm::Words},
                                              {"calibration_due", TEXT("Due"), ReportForm::Day},
                                              {"overdue", TEXT("Overdue"), ReportForm::Yes}};
constexpr ReportColumn troublesColumns[] = {{"troubles", TEXT("Troubles"), ReportForm::Count},
                                            {"repeats", TEXT("Repeats"), ReportForm::Count},
                                            {"share", TEXT("Share"), ReportForm::Share}};
constexpr ReportColumn troublesBehind[] = {{"opened_on", TEXT("Opened"), ReportForm::Day},
                                           {"repeat", TEXT("Repeat"), ReportForm::Yes}};

/// What all lists of orders have, after the key.
constexpr ReportColumn orderColumns[] = {{"order_number", TEXT("Order"), ReportForm::Words},
                                         {"circuit_number", TEXT("Circuit"), ReportForm::Words},
                                         {"customer", TEXT("Customer"), ReportForm::Words},
                                         {"office", TEXT("Office"), ReportForm::Words},
                                         {"installer", TEXT("Installer"), ReportForm::Words}};

constexpr ReportDescription reportTable[] = {
    {ReportKind::FirstVisit, TEXT("Acceptance on the first visit"),
     TEXT("Accepted orders by the day of acceptance, repairs apart, and how many of them have all "
          "their evidence from one visit. What needs no visit counts as accepted."),
     ReportPer::Office, firstVisitColumns, firstVisitBehind, "share"},
    {ReportKind::Failing, TEXT("Failing criteria"),
     TEXT(
         "Open orders by the day they are due, under the first criterion that is open: not met, or "
         "still to be shown. The share is of the orders under the same key."),
     ReportPer::Office, failingColumns, failingBehind, "orders"},
    {ReportKind::OpenAge, TEXT("Age of open orders"),
     TEXT("Open orders, the days since each was taken in, and how many are late."),
     ReportPer::Office, openAgeColumns, openAgeBehind, "age"},
    {ReportKind::Exceptions, TEXT("Exceptions"),
     TEXT("Each exception of the orders that are accepted with one, by the day of acceptance."),
     ReportPer::Office, exceptionsColumns, exceptionsBehind, "orders"},
    {ReportKind::Calibration, TEXT("Calibration due"),
     TEXT("Instruments by the day on which their calibration is due, and how many open orders have "
          "evidence made with them. An instrument belongs to no office, installer, cable or "
          "variant."),
     ReportPer::Month, calibrationColumns, calibrationBehind, "orders"},
    {ReportKind::Troubles, TEXT("Troubles and repeats"),
     TEXT(
         "Troubles by the day they were opened; a repeat comes within 30 days of the last one that "
         "was closed on the circuit."),
     ReportPer::Office, troublesColumns, troublesBehind, "troubles"},
};

#undef TEXT

Result<void> checkDays(const ReportQuery &query)
{
    if (query.from.isValid() && query.to.isValid() && query.to < query.from)
        return failure(ErrorCode::Usage, "The last day is before the first.", "to");
    return {};
}

QJsonValue shareOf(qint64 part, qint64 whole)
{
    return whole > 0 ? QJsonValue(double(part) / double(whole)) : QJsonValue();
}

/// `many` is the catalogue's key; the figure is grouped.
Text countOf(qint64 count, const char *one, const char *many)
{
    return Text::counted(one, many, count).arg(paperCount(count));
}

QString inPercent(qint64 part, qint64 whole)
{
    return whole > 0 ? QString(" (%1 %)").arg(100.0 * double(part) / double(whole), 0, 'f', 1)
                     : QString();
}

QJsonObject valuesOf(ReportKind kind, const ReportFigure &figure, qint64 ofKey)
{
    QJsonObject values{{"per", figure.per}};
    switch (kind) {
    case ReportKind::FirstVisit:
        values.insert("orders", figure.orders);
        values.insert("met", figure.hits);
        values.insert("no_visit", figure.none);
        values.insert("share", shareOf(figure.hits, figure.orders));
        break;
    case ReportKind::Failing:
        values.insert("criterion", figure.detail);
        values.insert("orders", figure.orders);
        values.insert("not_met", figure.hits);
        values.insert("share", shareOf(figure.orders, ofKey));
        break;
    case ReportKind::OpenAge:
        values.insert("orders", figure.orders);
        values.insert("age", figure.mean);
        values.insert("oldest", figure.most);
        values.insert("late", figure.hits);
        values.insert("share", shareOf(figure.hits, figure.orders));
        break;
    default:
        values.insert("orders", figure.orders);
        values.insert("troubles", figure.orders);
        values.insert("repeats", figure.hits);
        values.insert("share", shareOf(figure.hits, figure.orders));
        break;
    }
    return values;
}

Text sumOf(ReportKind kind, const std::vector<ReportFigure> &figures)
{
    qint64 orders = 0, hits = 0, none = 0, most = 0;
    double days = 0;
    for (const ReportFigure &figure : figures) {
        orders += figure.orders;
        hits += figure.hits;
        none += figure.none;
        most = std::max(most, figure.most);
        days += figure.mean * double(figure.orders);
    }
    switch (kind) {
    case ReportKind::FirstVisit:
        return Text(QT_TRANSLATE_NOOP("core",
                                      "%1 accepted, %2 of them on one visit%3; %4 needed none."))
            .arg(countOf(orders, "%1 order was", QT_TRANSLATE_N_NOOP("core", "%1 orders were")))
            .arg(paperCount(hits))
            .arg(inPercent(hits, orders))
            .arg(paperCount(none));
    case ReportKind::Failing:
        return Text(QT_TRANSLATE_NOOP("core", "%1 not accepted; a criterion is not met in %2%3."))
            .arg(countOf(orders, "%1 open order is",
                         QT_TRANSLATE_N_NOOP("core", "%1 open orders are")))
            .arg(paperCount(hits))
            .arg(inPercent(hits, orders));
    case ReportKind::OpenAge:
        return orders == 0
                   ? Text(QT_TRANSLATE_NOOP("core", "No order is open."))
                   : Text(QT_TRANSLATE_NOOP(
                              "core", "%1, %2 days old in the mean, the oldest %3; %4 late%5."))
                         .arg(countOf(orders, "%1 open order",
                                      QT_TRANSLATE_N_NOOP("core", "%1 open orders")))
                         .arg(QString::number(days / double(orders), 'f', 1))
                         .arg(most)
                         .arg(paperCount(hits))
                         .arg(inPercent(hits, orders));
    default:
        return Text(QT_TRANSLATE_NOOP("core", "%1, %2%3."))
            .arg(countOf(orders, "%1 trouble", QT_TRANSLATE_N_NOOP("core", "%1 troubles")))
            .arg(countOf(hits, "%1 repeat", QT_TRANSLATE_N_NOOP("core", "%1 repeats")))
            .arg(inPercent(hits, orders));
    }
}

Result<void> addFigures(const ReportStore &store, Report &report)
{
    LOOPWRIGHT_ASSIGN(const auto figures, store.figures(report.query));
    QMap<QString, qint64> ofKey;
    for (const ReportFigure &figure : figures)
        ofKey[figure.per] += figure.orders;
    const bool detailed = report.query.kind == ReportKind::Failing;
    for (const ReportFigure &figure : figures)
        report.rows.push_back(
            {valuesOf(report.query.kind, figure, ofKey.value(figure.per)),
             {figure.per, detailed ? std::optional(figure.detail) : std::nullopt}});
    report.sum = sumOf(report.query.kind, figures);
    return {};
}

Result<void> addExceptions(const ReportStore &store, Report &report)
{
    LOOPWRIGHT_ASSIGN(const auto orders, store.orders(report.query));
    for (const ReportOrder &order : orders) {
        const QString place = "exception of order " + order.order;
        LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(order.detail.toUtf8(), place));
        LOOPWRIGHT_ASSIGN(const auto fact, Fact::fromJson(object, place));
        const auto *exception = fact.as<ExceptionFact>();
        if (!exception)
            return failure(ErrorCode::BadInput, "is no exception", place);
        report.rows.push_back({{{"per", order.per},
                                {"orders", 1},
                                {"order_number", order.order},
                                {"customer", order.customer},
                                {"criteria", QJsonArray::fromStringList(exception->criteria)},
                                {"by", exception->by},
                                {"at", fact.at.localDate().toString(Qt::ISODate)},
                                {"because", exception->because}},
                               {order.per, order.detail}});
    }
    report.sum = countOf(qint64(orders.size()), "%1 exception.",
                         QT_TRANSLATE_N_NOOP("core", "%1 exceptions."));
    return {};
}

Result<void> addInstruments(const ReportStore &store, Report &report)
{
    LOOPWRIGHT_ASSIGN(const auto instruments, store.instruments(report.query));
    qint64 overdue = 0;
    for (const DueInstrument &each : instruments) {
        overdue += each.overdue;
        report.rows.push_back({{{"per", each.per},
                                {"instrument", each.instrument},
                                {"kind", each.kind},
                                {"serial", each.serial},
                                {"calibrated_on", each.calibratedOn.toString(Qt::ISODate)},
                                {"calibration_due", each.due.toString(Qt::ISODate)},
                                {"overdue", each.overdue},
                                {"orders", each.orders}},
                               {each.per, each.instrument}});
    }
    report.sum = Text(QT_TRANSLATE_NOOP("core", "%1 to be calibrated, %2 overdue."))
                     .arg(countOf(qint64(instruments.size()), "%1 instrument is",
                                  QT_TRANSLATE_N_NOOP("core", "%1 instruments are")))
                     .arg(paperCount(overdue));
    return {};
}

} // namespace

std::span<const ReportDescription> allReports()
{
    return reportTable;
}

const ReportDescription &describe(ReportKind kind)
{
    return *std::ranges::find(reportTable, kind, &ReportDescription::kind);
}

QString Report::title() const
{
    QString title = QString("%1 per %2").arg(QString(what().name), toText(query.per));
    if (query.from.isValid() && query.to.isValid())
        return title + ", " + paperDays(query.from, query.to);
    if (query.from.isValid())
        return title + ", from " + paperDay(query.from);
    return query.to.isValid() ? title + ", until " + paperDay(query.to) : title;
}

std::vector<ReportColumn> Report::columns() const
{
    std::vector<ReportColumn> list{perColumns[std::size_t(query.per)]};
    list.insert(list.end(), what().columns.begin(), what().columns.end());
    return list;
}

Result<Report> makeReport(Records &records, const ReportQuery &query)
{
    LOOPWRIGHT_TRY(checkDays(query));
    LOOPWRIGHT_TRY(followLimits(records));
    Report report{query, records.now().localDate(), {}, {}};
    const ReportStore store(records.database(), report.made);
    const auto added = query.kind == ReportKind::Exceptions    ? addExceptions(store, report)
                       : query.kind == ReportKind::Calibration ? addInstruments(store, report)
                                                               : addFigures(store, report);
    if (!added)
        return failure(added.error());
    LOOPWRIGHT_ASSIGN(const auto guard, guardOfAllOffices(records));
    for (ReportRow &row : report.rows)
        for (const char *typed : {"customer", "by", "because"})
            if (const QJsonValue text = row.values.value(typed); text.isString())
                row.values.insert(typed, guard.coverStored(text.toString()));
    return report;
}

Result<std::vector<ReportOrder>> ordersBehind(Records &records, const ReportQuery &query,
                                              const ReportFigureKey &behind, int limit)
{
    LOOPWRIGHT_TRY(checkDays(query));
    LOOPWRIGHT_TRY(followLimits(records));
    LOOPWRIGHT_ASSIGN(const auto guard, guardOfAllOffices(records));
    auto orders =
        ReportStore(records.database(), records.now().localDate()).orders(query, behind, limit);
    if (orders)
        for (ReportOrder &order : *orders)
            order.customer = guard.coverStored(order.customer);
    return orders;
}

std::vector<ReportColumn> columnsBehind(ReportKind kind)
{
    const ReportDescription &what = describe(kind);
    std::vector<ReportColumn> list(std::begin(orderColumns), std::end(orderColumns));
    list.insert(list.end(), what.behind.begin(), what.behind.end());
    return list;
}

QJsonObject toJson(const ReportOrder &order, ReportKind kind)
{
    const QString day = order.day.toString(Qt::ISODate);
    QJsonObject values{{"per", order.per},
                       {"order_number", order.order},
                       {"circuit_number", order.circuit},
                       {"customer", order.customer},
                       {"office", order.office},
                       {"installer", order.installer}};
    // Which of an order's values the report has stands in the table; each fits one key alone.
    for (const ReportColumn &column : describe(kind).behind) {
        const QString key = column.key;
        if (column.form == ReportForm::Yes)
            values.insert(key, order.hit);
        else if (column.form == ReportForm::Count)
            values.insert(key, order.value);
        else if (key == "criterion" || key == "instrument")
            values.insert(key, order.detail);
        else
            values.insert(key, day);
    }
    return values;
}

QString cellText(const ReportColumn &column, const QJsonObject &values)
{
    const QJsonValue value = values.value(QLatin1StringView(column.key));
    switch (column.form) {
    case ReportForm::Count:
        return paperCount(value.toInteger());
    case ReportForm::Share:
        return value.isNull() ? QString() : QString("%1 %").arg(100 * value.toDouble(), 0, 'f', 1);
    case ReportForm::Days:
        return QString::number(value.toDouble(), 'f', 1);
    case ReportForm::Yes:
        return value.toBool() ? QString("yes") : QString();
    case ReportForm::Words:
    case ReportForm::Day:
        break;
    }
    QStringList words;
    for (const QJsonValue &each : value.toArray())
        words << each.toString();
    if (value.isArray())
        return words.join(", ");
    return value.toString().isEmpty() ? QString("none") : value.toString();
}

} // namespace loopwright
