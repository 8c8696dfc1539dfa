#pragma once
// Figures over all orders, and the orders behind them. A report is one statement over what the
// board keeps of each order.

#include "core/acceptance/ReportQuery.h"
#include "db/Database.h"

namespace loopwright {

/// The orders that are counted under one key.
struct ReportFigure
{
    QString per;
    QString detail; ///< of the report of failing criteria: which
    qint64 orders = 0;
    qint64 hits = 0; ///< those with what the report asks for: one visit, not met, late, a repeat
    qint64 none = 0; ///< those whose number is 0
    double mean = 0; ///< of their numbers: days open, visits
    qint64 most = 0;
};

struct ReportOrder
{
    QString per;
    QString detail; ///< criterion, instrument, or the exception (JSON)
    QString order, circuit, customer, office, installer;
    QDate day; ///< that the report goes by
    qint64 value = 0;
    bool hit = false;
};

struct DueInstrument
{
    QString per, instrument, serial, kind;
    QDate calibratedOn, due;
    bool overdue = false;
    qint64 orders = 0; ///< open ones whose evidence names it
};

class ReportStore
{
public:
    ReportStore(const Database &database, QDate today)
        : m_database(database)
        , m_today(today)
    {
    }

    /// By key; of one key the most frequent detail first.
    Result<std::vector<ReportFigure>> figures(const ReportQuery &query) const;
    /// `limit` -1: all.
    Result<std::vector<ReportOrder>>
    orders(const ReportQuery &query, const ReportFigureKey &behind = {}, int limit = -1) const;
    /// Those with a day on which a calibration is due, by that day.
    Result<std::vector<DueInstrument>> instruments(const ReportQuery &query) const;

private:
    const Database &m_database;
    QDate m_today;
};

} // namespace loopwright
