#include "db/ReportStore.h"

#include "core/order/JobFacts.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

/// The orders that each report counts.
constexpr const char *linesOf(ReportKind kind)
{
    switch (kind) {
    case ReportKind::FirstVisit:
        return "report.first_visit";
    case ReportKind::Failing:
        return "report.failing";
    case ReportKind::OpenAge:
        return "report.open_age";
    case ReportKind::Exceptions:
        return "report.exceptions";
    case ReportKind::Calibration:
        return "report.calibration";
    case ReportKind::Troubles:
        return "report.troubles";
    }
    return "";
}

void bindQuery(Statement &statement, const ReportQuery &query, QDate today)
{
    const auto text = [](QDate day, const char *any) {
        return day.isValid() ? day.toString(Qt::ISODate) : QString(any);
    };
    statement.bind("per", query.per)
        .bind("from", text(query.from, ""))
        .bind("to", text(query.to, "9999-12-31"));
    if (query.kind == ReportKind::OpenAge || query.kind == ReportKind::Calibration)
        statement.bind("today", today.toString(Qt::ISODate));
    if (query.kind == ReportKind::Troubles)
        statement.bind("repeat_from", QString("-%1 days").arg(repeatDays));
}

ReportOrder readReportOrder(const Statement &row)
{
    return {row.text("per"),          row.text("detail"),
            row.text("order_number"), row.text("circuit_number"),
            row.text("customer"),     row.text("office"),
            row.text("installer"),    QDate::fromString(row.text("day"), Qt::ISODate),
            row.integer("value"),     row.boolean("hit")};
}

} // namespace

Result<std::vector<ReportFigure>> ReportStore::figures(const ReportQuery &query) const
{
    Statement statement(m_database, "report.figures", {linesOf(query.kind), "report.by_key"});
    bindQuery(statement, query, m_today);
    return rows(statement, [](const Statement &row) {
        return ReportFigure{row.text("per"),     row.text("detail"),  row.integer("orders"),
                            row.integer("hits"), row.integer("none"), row.real("mean"),
                            row.integer("most")};
    });
}

Result<std::vector<ReportOrder>> ReportStore::orders(const ReportQuery &query,
                                                     const ReportFigureKey &behind, int limit) const
{
    Statement statement(m_database, "report.orders", {linesOf(query.kind), "report.behind"});
    bindQuery(statement, query, m_today);
    statement.bind("key", behind.per).bind("detail", behind.detail).bind("limit", limitOf(limit));
    return rows(statement, readReportOrder);
}

Result<std::vector<DueInstrument>> ReportStore::instruments(const ReportQuery &query) const
{
    Statement statement(m_database, "report.instruments");
    bindQuery(statement, query, m_today);
    return rows(statement, [](const Statement &row) {
        const auto day = [&row](const char *column) {
            return QDate::fromString(row.text(column), Qt::ISODate);
        };
        return DueInstrument{row.text("per"),        row.text("instrument"), row.text("serial"),
                             row.text("kind"),       day("calibrated_on"),   day("due"),
                             row.boolean("overdue"), row.integer("orders")};
    });
}

} // namespace loopwright
