// What the import of orders costs with all its checks, verdicts and history, against the same rows
// into all tables by statements that are written by hand, in one transaction, into a copy of the
// same records with the same settings.
//
//   bench.import DATABASE [ORDERS]      records with the office OFFICE01, as bench.records makes
//                                       them; copies of it are worked in; 1000 orders unless said

#include "app/actions/Import.h"
#include "tests/bench/InventedOrders.h"
#include "tests/bench/Measured.h"

#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QTemporaryDir>

using namespace loopwright;

namespace {

/// Those that an import adds rows to, each after what it refers to. The triggers fill the rest.
constexpr const char *tables[] = {"circuit",    "service_order", "order_terminal",
                                  "assignment", "event",         "order_state"};
constexpr int rounds = 3;

std::unique_ptr<Records> copyOf(const QString &path, const QString &to)
{
    QFile::remove(to);
    if (!QFile::copy(path, to))
        stop({ErrorCode::DiskTrouble, "cannot be copied", path});
    return good(Records::open(to));
}

class Prepared
{
public:
    Prepared(SqliteConnection &connection, const QByteArray &sql)
    {
        if (sqlite3_prepare_v2(connection.handle(), sql.constData(), -1, &m_handle, nullptr) !=
            SQLITE_OK)
            stop(connection.lastError(QString::fromUtf8(sql)));
    }
    ~Prepared() { sqlite3_finalize(m_handle); }
    Prepared(const Prepared &) = delete;
    Prepared &operator=(const Prepared &) = delete;
    sqlite3_stmt *handle() const { return m_handle; }

private:
    sqlite3_stmt *m_handle = nullptr;
};

/// A row as it is bound again.
using Row = std::vector<sqlite3_value *>;

std::vector<Row> newRows(SqliteConnection &connection, const QByteArray &table, qint64 after)
{
    const Prepared select(connection, "SELECT * FROM " + table + " WHERE rowid > " +
                                          QByteArray::number(after) + " ORDER BY rowid");
    std::vector<Row> rows;
    while (sqlite3_step(select.handle()) == SQLITE_ROW) {
        Row row;
        for (int i = 0; i < sqlite3_column_count(select.handle()); ++i)
            row.push_back(sqlite3_value_dup(sqlite3_column_value(select.handle(), i)));
        rows.push_back(std::move(row));
    }
    return rows;
}

void insert(SqliteConnection &connection, const QByteArray &table, const std::vector<Row> &rows)
{
    if (rows.empty())
        return;
    QByteArray places = "?";
    for (std::size_t i = 1; i < rows.front().size(); ++i)
        places += ",?";
    const Prepared add(connection, "INSERT INTO " + table + " VALUES (" + places + ")");
    for (const Row &row : rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            sqlite3_bind_value(add.handle(), int(i) + 1, row[i]);
        if (sqlite3_step(add.handle()) != SQLITE_DONE)
            stop(connection.lastError(QString::fromUtf8(table)));
        sqlite3_reset(add.handle());
    }
}

struct Times
{
    double ours = 0, byHand = 0;
};

Times measure(const QString &path, const QString &folder, const QByteArray &csv, int orders)
{
    Times times;
    const auto imported = copyOf(path, folder + "/imported.sqlite");
    imported->actAs("P020"); // a supervisor among those that are invented
    imported->setNow(Moment::parse(u"2026-12-01T07:30:00-06:00"));
    SqliteConnection &there = imported->database().file();
    std::vector<qint64> last;
    for (const char *table : tables)
        last.push_back(good(there.number(QByteArray("SELECT max(rowid) FROM ") + table)));
    times.ours = msOf([&] {
        const ImportReport report = good(importOrders(*imported, csv, {}));
        if (report.accepted != orders || report.held > 0)
            stop({ErrorCode::Refused, QString::fromUtf8(report.rejects), {}});
    });
    const auto byHand = copyOf(path, folder + "/by-hand.sqlite");
    SqliteConnection &here = byHand->database().file();
    std::vector<std::vector<Row>> rows;
    for (std::size_t i = 0; i < std::size(tables); ++i)
        rows.push_back(newRows(there, tables[i], last[i]));
    times.byHand = msOf([&] {
        good(here.run("BEGIN IMMEDIATE", "bench"));
        for (std::size_t i = 0; i < std::size(tables); ++i)
            insert(here, tables[i], rows[i]);
        good(here.run("COMMIT", "bench"));
    });
    for (const std::vector<Row> &table : rows)
        for (const Row &row : table)
            for (sqlite3_value *value : row)
                sqlite3_value_free(value);
    return times;
}

} // namespace

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const QStringList words = QGuiApplication::arguments();
    const int orders = words.value(2, "1000").toInt();
    if (words.size() < 2 || orders < 1 || orders > 5000) {
        std::fprintf(stderr, "usage: bench.import DATABASE [ORDERS, at most 5000]\n");
        return 2;
    }
    static const QTemporaryDir folder(QFileInfo(words[1]).absolutePath() + "/import-XXXXXX");
    const QByteArray csv = inventedOrders("OFFICE01", 0, orders);
    std::vector<double> ours, byHand;
    for (int round = 0; round < rounds; ++round) {
        const Times times = measure(words[1], folder.path(), csv, orders);
        ours.push_back(times.ours);
        byHand.push_back(times.byHand);
    }
    std::printf("import of %d orders: %.0f ms, the same rows by hand %.0f ms: %.1f times\n", orders,
                median(ours), median(byHand), median(ours) / median(byHand));
    return 0;
}
