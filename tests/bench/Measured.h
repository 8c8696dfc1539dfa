#pragma once
// What benches of the records share: times, SQL that is written by hand, and the table of figures.

#include "app/actions/Records.h"
#include "db/SqliteConnection.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <map>
#include <sqlite3.h>

namespace loopwright {

constexpr int pageRows = 400; // as the window asks for them

[[noreturn]] inline void stop(const Error &error)
{
    std::fprintf(stderr, "%s\n", qPrintable(error.text()));
    std::exit(1);
}

template<class T>
T good(Result<T> result)
{
    if (!result)
        stop(result.error());
    if constexpr (!std::is_void_v<T>)
        return std::move(*result);
}

inline double msOf(const std::function<void()> &work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

inline double median(std::vector<double> values)
{
    const auto middle = values.begin() + std::ptrdiff_t(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// SQL as a person would write it, with the columns that the board shows; every text is read.
class ByHand
{
public:
    ByHand(Records &records, const QByteArray &where, const QByteArray &order, int limit = pageRows)
    {
        const QByteArray sql = "SELECT s.*, o.held, i.name FROM order_state AS s"
                               " JOIN service_order AS o ON o.id = s.service_order"
                               " LEFT JOIN installer AS i ON i.installer = s.installer" +
                               where + " ORDER BY " + order + " LIMIT " + QByteArray::number(limit);
        if (sqlite3_prepare_v2(records.database().file().handle(), sql.constData(), -1,
                               &m_statement, nullptr) != SQLITE_OK)
            stop({ErrorCode::Usage, QString::fromUtf8(sql), {}});
    }
    ~ByHand() { sqlite3_finalize(m_statement); }
    ByHand(const ByHand &) = delete;
    ByHand &operator=(const ByHand &) = delete;

    int rows() const
    {
        int rows = 0;
        for (; sqlite3_step(m_statement) == SQLITE_ROW; ++rows)
            for (int column = 0; column < sqlite3_column_count(m_statement); ++column)
                m_bytes += sqlite3_column_bytes(m_statement, column);
        sqlite3_reset(m_statement);
        return rows;
    }

private:
    sqlite3_stmt *m_statement = nullptr;
    mutable qint64 m_bytes = 0;
};

/// What was measured under one name, over all sizes.
class Figures
{
public:
    void add(const QString &what, int circuits, double ms, double byHandMs = 0)
    {
        const QString size = QString::number(circuits);
        double &first = m_first[what];
        if (first == 0)
            first = ms;
        const QString ratio = byHandMs > 0 ? QString::number(ms / byHandMs, 'f', 2) : QString("-");
        std::printf("%-44s %9s %10.2f ms  by hand %6s  growth %6.2f\n", qPrintable(what),
                    qPrintable(size), ms, qPrintable(ratio), ms / first);
        std::fflush(stdout);
    }

    /// Many questions of one kind.
    struct Asked
    {
        QString name;
        double ms = 0, byHandMs = 0;
        int rows = 0; ///< growth is told of those that have as many in each size
    };
    void addAll(const QString &what, int circuits, const std::vector<Asked> &asked)
    {
        std::vector<double> times, ratios, growths;
        const Asked *slowest = nullptr, *worst = nullptr;
        QString grown;
        double mostGrown = 0;
        for (const Asked &each : asked) {
            const auto [first, isNew] = m_firstOf.try_emplace(what + each.name, each);
            const double growth = each.ms / first->second.ms;
            times.push_back(each.ms);
            if (each.rows == first->second.rows)
                growths.push_back(growth);
            // What takes no millisecond is noise.
            if (each.ms > 1 && each.rows == first->second.rows && growth > mostGrown) {
                mostGrown = growth;
                grown = each.name;
            }
            if (!slowest || each.ms > slowest->ms)
                slowest = &each;
            if (each.byHandMs <= 0)
                continue;
            ratios.push_back(each.ms / each.byHandMs);
            if (each.ms > 1 && (!worst || each.ms / each.byHandMs > worst->ms / worst->byHandMs))
                worst = &each;
        }
        std::printf("%-44s %9d %10.2f ms  by hand %6s  growth %6.2f  (medians of %zu)\n",
                    qPrintable(what), circuits, median(times),
                    ratios.empty() ? "-" : qPrintable(QString::number(median(ratios), 'f', 2)),
                    median(growths), asked.size());
        std::printf("%54s %10.2f ms: %s\n", "slowest", slowest->ms, qPrintable(slowest->name));
        if (worst)
            std::printf("%54s %10.2f by hand: %s, %.2f ms\n", "worst", worst->ms / worst->byHandMs,
                        qPrintable(worst->name), worst->ms);
        if (mostGrown > 0)
            std::printf("%54s %10.2f growth: %s\n", "most grown", mostGrown, qPrintable(grown));
        std::fflush(stdout);
    }

private:
    QMap<QString, double> m_first;
    std::map<QString, Asked> m_firstOf;
};

} // namespace loopwright
