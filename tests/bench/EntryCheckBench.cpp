// How long the questions take that a person waits for, as the records grow: the check of an order
// that is typed or imported ("is this number, SPID or pair taken?"), opening the records, showing
// an order, and the audit over all of it. Databases of invented circuits are made in FOLDER if
// they are not there yet (a million: some gigabytes, and minutes), and kept for the next time. Up
// to 10000 circuits are taken in one by one as the program does it; larger databases are copies of
// these with other numbers, made in the tables themselves: without the index of the text search,
// and with a history that does not verify.
//
//   bench.entrycheck FOLDER [CIRCUITS…]      (1000 10000 100000 1000000 unless said)
//
// Prints the median of many rounds, and its ratio to that of the smallest database.

#include "app/actions/LimitChanges.h"
#include "app/actions/Maintenance.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "db/OrderStore.h"
#include "db/SqliteConnection.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <random>
#include <sqlite3.h>

using namespace loopwright;

namespace {

constexpr int rounds = 2000;
constexpr int mostTakenIn = 10000;

// Copies 1 to `last` of the circuits, orders and all that belongs to them. %1 is `last`, %2 the
// count of circuits. Copy k has the office code 555 + k (611 is a service code) and other cables.
const char copies[] = R"sql(
CREATE TEMP TABLE copy AS
    WITH RECURSIVE c (k) AS (SELECT 1 UNION ALL SELECT k + 1 FROM c WHERE k < %1)
    SELECT k, %2 * k AS shift, printf('%03d', CASE k WHEN 56 THEN 700 ELSE 555 + k END) AS code,
           printf('%08x', k) AS mark
    FROM c;
BEGIN;
INSERT INTO circuit
    SELECT c.id + p.shift, substr(c.uuid, 1, 28) || p.mark,
           substr(c.circuit_number, 1, 3) || printf('%07d', c.id + p.shift)
    FROM copy AS p CROSS JOIN circuit AS c WHERE c.id <= %2;
INSERT INTO service_order
    SELECT o.id + p.shift, substr(o.uuid, 1, 28) || p.mark, printf('T%08d', o.id + p.shift),
           o.circuit + p.shift, o.office, o.order_type, o.due_date, o.installer, o.premises_key,
           (o.pair_key + 9 * p.k) || substr(o.pair_key, instr(o.pair_key, '-')), o.status,
           o.completed_rank, o.held,
           json_replace(o.content, '$.order_number', printf('T%08d', o.id + p.shift),
               '$.circuit_number', substr(o.content ->> '$.circuit_number', 1, 3)
                                       || printf('%07d', o.circuit + p.shift),
               '$.pair', (o.pair_key + 9 * p.k) || substr(o.pair_key, instr(o.pair_key, '-')),
               '$.dn_1', substr(o.content ->> '$.dn_1', 1, 3) || p.code
                             || substr(o.content ->> '$.dn_1', 7),
               '$.dn_2', substr(o.content ->> '$.dn_2', 1, 3) || p.code
                             || substr(o.content ->> '$.dn_2', 7),
               '$.spid_1', substr(o.content ->> '$.spid_1', 1, 3) || p.code
                               || substr(o.content ->> '$.spid_1', 7),
               '$.spid_2', substr(o.content ->> '$.spid_2', 1, 3) || p.code
                               || substr(o.content ->> '$.spid_2', 7)),
           o.digest
    FROM copy AS p CROSS JOIN service_order AS o WHERE o.id <= %2;
INSERT INTO order_terminal (service_order, number, dn, dn_key, spid, tei)
    SELECT t.service_order + p.shift, t.number, substr(t.dn, 1, 3) || p.code || substr(t.dn, 7),
           substr(t.dn_key, 1, 5) || p.code || substr(t.dn_key, 9),
           CASE t.spid WHEN '' THEN '' ELSE substr(t.spid, 1, 3) || p.code || substr(t.spid, 7) END,
           t.tei
    FROM copy AS p CROSS JOIN order_terminal AS t WHERE t.service_order <= %2;
INSERT INTO assignment (kind, scope, value, circuit, service_order, state)
    SELECT a.kind, a.scope,
           CASE a.kind WHEN 'pair' THEN (a.value + 9 * p.k) || substr(a.value, instr(a.value, '-'))
                       WHEN 'dn' THEN substr(a.value, 1, 5) || p.code || substr(a.value, 9)
                       ELSE substr(a.value, 1, 3) || p.code || substr(a.value, 7) END,
           a.circuit + p.shift, a.service_order + p.shift, a.state
    FROM copy AS p CROSS JOIN assignment AS a WHERE a.circuit <= %2;
INSERT INTO fact (uuid, service_order, kind, at_utc, at_offset, installer, instrument, voids,
                  content, digest)
    SELECT substr(f.uuid, 1, 28) || p.mark, f.service_order + p.shift, f.kind, f.at_utc,
           f.at_offset, f.installer, f.instrument, f.voids,
           json_replace(f.content, '$.id', substr(f.uuid, 1, 28) || p.mark,
                        '$.order', printf('T%08d', f.service_order + p.shift)), f.digest
    FROM copy AS p CROSS JOIN fact AS f WHERE f.service_order <= %2;
INSERT INTO event (subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
                   recorded_offset, kind, detail, previous, digest, log_position, station,
                   sealed, log_digest)
    SELECT substr(e.subject, 1, 11) || printf('%07d', substr(e.subject, 12) + p.shift), e.sequence,
           printf('T%08d', substr(e.order_number, 2) + p.shift), e.actor, e.at_utc, e.at_offset,
           e.recorded_utc, e.recorded_offset, e.kind, e.detail, e.previous, e.digest,
           (SELECT max(log_position) FROM event) + row_number() OVER (), e.station, '', e.log_digest
    FROM copy AS p CROSS JOIN (SELECT * FROM event WHERE subject GLOB 'circuit:*') AS e;
INSERT INTO chain_head
    SELECT substr(h.subject, 1, 11) || printf('%07d', substr(h.subject, 12) + p.shift), h.events,
           h.digest
    FROM copy AS p CROSS JOIN (SELECT * FROM chain_head WHERE subject GLOB 'circuit:*') AS h;
INSERT INTO order_state
    SELECT s.service_order + p.shift, printf('T%08d', s.service_order + p.shift), s.stage,
           s.outcome, s.reason, s.hazard, s.due_date, s.office, s.installer,
           substr(s.circuit_number, 1, 3) || printf('%07d', s.service_order + p.shift), s.kind,
           s.customer, s.premises, s.facts, s.runs, s.search
    FROM copy AS p CROSS JOIN order_state AS s WHERE s.service_order <= %2;
COMMIT;
DROP TABLE copy;
)sql";

double secondsOf(const std::function<void()> &work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

[[noreturn]] void stop(const Error &error)
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

std::unique_ptr<Records> opened(const QString &path)
{
    auto records = Records::open(path);
    if (!records)
        stop(records.error());
    if (const auto brought = bringShippedLimits(**records); !brought)
        stop(brought.error());
    return std::move(*records);
}

/// Fills with `circuits` circuits: some taken in, the rest copies of them.
void fill(Records &records, int circuits)
{
    const int takenIn = std::min(circuits, mostTakenIn);
    SqliteConnection &connection = records.database().connection();
    // Nobody misses a bench that a power cut takes; room for all indexes at once.
    good(connection.run(
        "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -1500000",
        "ease"));
    const double seconds = secondsOf([&] { good(fillWithInvented(records, takenIn, 1)); });
    std::fprintf(stderr, "%d circuits taken in within %.1f s, %.3f ms each\n", takenIn, seconds,
                 seconds * 1e3 / takenIn);
    if (circuits == takenIn)
        return;
    // What the triggers watch over is so by itself here.
    sqlite3_db_config(connection.handle(), SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    QByteArray sql(copies);
    sql.replace("%1", QByteArray::number(circuits / takenIn - 1));
    sql.replace("%2", QByteArray::number(takenIn));
    const double copying = secondsOf([&] { good(connection.run(sql, "copy")); });
    std::fprintf(stderr, "copied to %d circuits within %.1f s\n", circuits, copying);
}

QString databaseOf(const QDir &folder, int circuits)
{
    const QString path = folder.filePath(QString("circuits-%1.sqlite").arg(circuits));
    if (QFileInfo::exists(path))
        return path;
    const QString unfinished = path + ".unfinished";
    fill(*opened(unfinished), circuits);
    if (!QFile::rename(unfinished, path))
        stop({ErrorCode::DiskTrouble, "cannot be renamed", unfinished});
    return path;
}

/// The median, in microseconds, of `ask` over orders all over the database.
double medianMicroseconds(int circuits, const std::function<void(int circuit)> &ask)
{
    std::mt19937 random(1);
    std::vector<double> times;
    for (int round = 0; round < rounds; ++round) {
        const int circuit = int(random() % unsigned(circuits));
        times.push_back(secondsOf([&] { ask(circuit); }) * 1e6);
    }
    std::nth_element(times.begin(), times.begin() + rounds / 2, times.end());
    return times[rounds / 2];
}

QString orderNumber(int circuit)
{
    return QString("T%1").arg(circuit + 1, 8, 10, QChar('0'));
}

/// The fields of a stored order as a new one of another circuit, so that all of it is taken.
OrderFields taken(Records &records, int circuit)
{
    const auto stored = good(OrderStore(records.database()).find(orderNumber(circuit)));
    OrderFields fields = stored->order.fields();
    fields["order_number"] = "NEW-1";
    fields["circuit_number"] = "NEW-1";
    return fields;
}

/// The same with numbers, SPIDs and pair that nobody has.
OrderFields freed(OrderFields fields)
{
    for (auto it = fields.begin(); it != fields.end(); ++it)
        if (it.key().startsWith("dn_") || it.key().startsWith("spid_"))
            it.value().replace(0, 6, "298555");
    fields["pair"] = "0-" + fields["pair"];
    return fields;
}

struct Figures
{
    double openingMs = 0, freeUs = 0, takenUs = 0, showUs = 0, auditSeconds = 0;
};

Figures measure(const QString &path, int circuits)
{
    Figures figures;
    std::unique_ptr<Records> records;
    records = opened(path); // the first time may bring the file into its form
    records.reset();
    figures.openingMs = secondsOf([&] { records = opened(path); }) * 1e3;
    int held = 0;
    const auto check = [&](const OrderFields &fields) {
        held += good(checkOrder(*records, fields)).held;
    };
    // Taking the fields is no part of the question; the pages that it reads are.
    std::vector<OrderFields> all;
    std::mt19937 random(2);
    for (int i = 0; i < rounds; ++i)
        all.push_back(taken(*records, int(random() % unsigned(circuits))));
    std::size_t next = 0;
    figures.takenUs = medianMicroseconds(circuits, [&](int) { check(all[next++]); });
    if (held != rounds)
        stop({ErrorCode::Refused, "a number that is taken was not found", path});
    for (OrderFields &fields : all)
        fields = freed(fields);
    next = 0;
    held = 0;
    figures.freeUs = medianMicroseconds(circuits, [&](int) { check(all[next++]); });
    if (held != 0)
        stop({ErrorCode::Refused, "a number that is free was found", path});
    figures.showUs = medianMicroseconds(
        circuits, [&](int circuit) { good(showOrder(*records, orderNumber(circuit))); });
    figures.auditSeconds = secondsOf([&] { good(auditIdentifiers(*records)); });
    return figures;
}

} // namespace

int main(int argc, char *argv[])
{
    const QCoreApplication application(argc, argv);
    QStringList words = application.arguments().mid(1);
    if (words.isEmpty()) {
        std::fprintf(stderr, "usage: %s FOLDER [CIRCUITS...]\n", argv[0]);
        return 2;
    }
    const QDir folder(words.takeFirst());
    if (!folder.mkpath("."))
        stop({ErrorCode::DiskTrouble, "cannot be made", folder.path()});
    if (words.isEmpty())
        words = {"1000", "10000", "100000", "1000000"};
    std::printf("%9s %8s %14s %14s %14s %9s %12s\n", "circuits", "open_ms", "free_us", "taken_us",
                "show_us", "audit_s", "audit_us/row");
    Figures first;
    for (const QString &word : words) {
        const int circuits = std::max(1, word.toInt());
        const Figures now = measure(databaseOf(folder, circuits), circuits);
        if (word == words.first())
            first = now;
        const auto with = [](double value, double smallest) {
            return QString("%1 (x%2)")
                .arg(value, 0, 'f', 0)
                .arg(value / smallest, 0, 'f', 2)
                .toLatin1();
        };
        std::printf("%9d %8.1f %14s %14s %14s %9.2f %12.2f\n", circuits, now.openingMs,
                    with(now.freeUs, first.freeUs).constData(),
                    with(now.takenUs, first.takenUs).constData(),
                    with(now.showUs, first.showUs).constData(), now.auditSeconds,
                    now.auditSeconds * 1e6 / circuits);
        std::fflush(stdout);
    }
    return 0;
}
