// How long the questions take that a person waits for, as the records grow: the check of an order
// that is typed or imported ("is this number, SPID or pair taken?"), opening the records, showing
// an order, and the audit over all of it. Databases of invented circuits are made in FOLDER where
// they are not there yet (a million: some gigabytes, and minutes), and kept for the next time.
//
//   bench.entrycheck FOLDER [CIRCUITS…]      (1000 10000 100000 1000000 unless said)
//
// Prints the median of many rounds, and its ratio to that of the smallest database.

#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "app/actions/Upkeep.h"
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

using namespace loopwright;

namespace {

constexpr int rounds = 2000;

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
    return std::move(*result);
}

std::unique_ptr<Records> opened(const QString &path)
{
    auto records = Records::open(path);
    if (!records)
        stop(records.error());
    return std::move(*records);
}

QString databaseOf(const QDir &folder, int circuits)
{
    const QString path = folder.filePath(QString("circuits-%1.sqlite").arg(circuits));
    if (QFileInfo::exists(path))
        return path;
    const QString unfinished = path + ".unfinished";
    {
        const auto records = opened(unfinished);
        // Nobody misses a bench that a power cut takes; room for all indexes at once.
        const auto eased = records->database().connection().run(
            "PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF; PRAGMA cache_size = -1500000",
            "ease");
        if (!eased)
            stop(eased.error());
        const double seconds = secondsOf([&] {
            if (const auto filled = fillWithInvented(*records, circuits, 1); !filled)
                stop(filled.error());
        });
        std::fprintf(stderr, "%d circuits filled in within %.1f s, %.3f ms each\n", circuits,
                     seconds, seconds * 1e3 / circuits);
    }
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
