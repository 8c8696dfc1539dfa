// Speed of the check of the history, against sha256sum over the same file in the same run; and what
// the log and a signature add to the commit of a record; a backup, against SQLite's copy; and the
// digests alone, against Qt's. Usage: bench.history FOLDER [EVENTS]
// (a million takes some minutes and nine gigabytes)

#include "app/actions/History.h"
#include "app/trust/Signing.h"
#include "db/Backup.h"
#include "db/BoardStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/HistoryCheck.h"
#include "db/OfficeStore.h"
#include "db/RowSeals.h"
#include "db/Sha256.h"
#include "db/SqliteConnection.h"
#include "db/SqliteCopy.h"
#include "tests/support/SmallRecords.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QProcess>

#include <cstdio>

using namespace loopwright;

namespace {

template<class T>
void good(const Result<T> &done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
}

double secondsOf(const std::function<void()> &work)
{
    QElapsedTimer timer;
    timer.start();
    work();
    return double(timer.nsecsElapsed()) / 1e9;
}

/// The `i`-th order and its facts, as many bytes as real ones have.
ServiceOrder orderOf(qint64 i)
{
    static const ServiceOrder like = jobs::order(jobs::briFields());
    ServiceOrder order = like;
    order.number = QString("T%1").arg(i, 8, 10, QChar('0'));
    order.circuit = QString("C-%1").arg(i, 8, 10, QChar('0'));
    return order;
}

std::vector<Fact> factsOf(const ServiceOrder &order, qint64 i)
{
    static const std::vector<Fact> like =
        jobs::input(jobs::briFields(), jobs::briFacts().mid(0, 3)).facts;
    std::vector<Fact> facts = like;
    for (std::size_t n = 0; n < facts.size(); ++n) {
        facts[n].order = order.number;
        facts[n].id =
            QString("00000000-0000-4000-8000-%1").arg(8 * i + qint64(n), 12, 16, QChar('0'));
    }
    return facts;
}

Event eventOf(const ServiceOrder &order, const QString &kind)
{
    Event event;
    event.subject = circuitSubject(order.circuit);
    event.order = order.number;
    event.by = "A. Rivera";
    event.at = *Moment::parse(u"2026-03-04T09:15:00-06:00");
    event.kind = kind;
    return event;
}

/// Two events for each circuit, through the same stores as the program's.
void make(const QString &path, qint64 events)
{
    auto database = Database::open(path);
    good(database);
    auto transaction = Transaction::begin(*database);
    good(transaction);
    good(OfficeStore::put(*transaction, {"NORTH", "North exchange", "ni2"}, {}));
    Event first = eventOf(orderOf(0), "office_taken");
    first.subject = registerSubject();
    good(transaction->record(first));
    for (qint64 i = 1; i <= events / 2; ++i) {
        const ServiceOrder order = orderOf(i);
        good(OrderStore::put(*transaction, order, true)); // held: all are on one pair
        good(BoardStore::put(*transaction, order, {}));
        good(transaction->record(eventOf(order, "order_taken")));
        for (const Fact &fact : factsOf(order, i))
            good(FactStore::add(*transaction, fact));
        good(BoardStore::put(*transaction, order, {}));
        good(transaction->record(eventOf(order, "facts_recorded")));
    }
    good(transaction->commit(std::vector<Event>()));
}

double best(const std::function<void()> &work)
{
    double seconds = 1e9;
    for (int round = 0; round < 3; ++round)
        seconds = std::min(seconds, secondsOf(work));
    return seconds;
}

void verify(const QString &path)
{
    const double plain = best([&] {
        if (QProcess::execute("sha256sum", {path}) != 0)
            qFatal("sha256sum failed");
    });
    qint64 events = 0;
    const double checked = best([&] {
        const auto database = Database::open(path, Database::Access::ReadOnly);
        good(database);
        const auto findings = checkHistory(*database);
        good(findings);
        if (!findings->faults.empty())
            qFatal("%s", qPrintable(findings->faults.front().what));
        events = findings->events;
    });
    std::printf("%lld events, %.0f MB: verified in %.2f s, sha256sum in %.2f s: %.2f times\n",
                static_cast<long long>(events), double(QFileInfo(path).size()) / 1e6, checked,
                plain, checked / plain);
}

/// Seconds for so many heads, each with the newest of the log.
double signing(const Database &database, int times)
{
    auto key = SigningKey::make();
    good(key);
    return secondsOf([&] {
        for (int i = 0; i < times; ++i) {
            const auto head = EventStore(database).logHead();
            good(head);
            if (key->sign(head->text()).size() != 86)
                qFatal("not signed");
        }
    });
}

/// What the log does for a commit, done once more beside it: the rows read back, their digests, the
/// digest of the link.
void commits(const QString &path)
{
    constexpr int rounds = 300;
    auto database = Database::open(path);
    good(database);
    double all = 0, log = 0;
    for (int i = 0; i < rounds; ++i) {
        const ServiceOrder order = orderOf(1 + i);
        all += secondsOf([&] {
            auto transaction = Transaction::begin(*database);
            good(transaction);
            for (const Fact &fact : factsOf(order, 10'000'000 + i))
                good(FactStore::add(*transaction, fact));
            good(BoardStore::put(*transaction, order, {}));
            good(transaction->commit(eventOf(order, "facts_recorded")));
        });
        RowWatch rows(database->connection());
        const qint64 last = *database->connection().number("SELECT max(id) FROM fact");
        for (qint64 id = last - 2; id <= last; ++id)
            rows.note("fact", id);
        rows.note("order_state",
                  *database->connection().number("SELECT max(service_order) FROM order_state"));
        log += secondsOf([&] {
            const auto lines = rows.takeLines();
            good(lines);
            QCryptographicHash::hash(QByteArray(*lines + QByteArray(150, ' ')),
                                     QCryptographicHash::Sha256);
            good(EventStore(*database).logHead());
        });
    }
    const double sign = signing(*database, rounds);
    std::printf(
        "a record of three facts: %.0f us to commit, of these %.0f us for the log: %.1f %%; "
        "with a signed head, %.0f us, %.1f %% (of what it takes without both)\n",
        all / rounds * 1e6, log / rounds * 1e6, 100 * log / (all - log), sign / rounds * 1e6,
        100 * (log + sign) / (all - log));
}

/// A backup with all that is verified in it, against SQLite's own copy of the same file to the same
/// disk, waited for as well.
void backups(const QString &path)
{
    const auto database = Database::open(path, Database::Access::ReadOnly);
    good(database);
    const QString bare = path + ".bare", whole = path + ".backup";
    const double plain = best([&] {
        QFile::remove(bare);
        good(copyDatabase(database->file(), bare, applicationId));
    });
    const double verified = best([&] { good(backUp(*database, whole)); });
    QFile::remove(bare);
    QFile::remove(whole);
    std::printf("a backup of %.0f MB, verified: %.2f s, SQLite's copy: %.2f s: %.2f times\n",
                double(QFileInfo(path).size()) / 1e6, verified, plain, verified / plain);
}

/// SHA-256 of short texts and long ones, Qt's and ours.
void digests()
{
    for (const int octets : {100, 1000, 10'000}) {
        const QByteArray text(octets, 'x');
        const int times = 20'000'000 / octets;
        Sha256 sha;
        const double ours = best([&] {
            for (int i = 0; i < times; ++i)
                sha.of(text);
        });
        const double plain = best([&] {
            for (int i = 0; i < times; ++i)
                QCryptographicHash::hash(text, QCryptographicHash::Sha256);
        });
        std::printf("SHA-256 of %d octets: %.0f ns, Qt's %.1f times as long\n", octets,
                    ours / times * 1e9, plain / ours);
    }
}

} // namespace

int main(int argc, char **argv)
{
    const QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    if (words.size() < 2) {
        std::fprintf(stderr, "usage: bench.history FOLDER [EVENTS]\n");
        return 2;
    }
    const QString path = QDir(words[1]).filePath("history.sqlite");
    if (!QFile::exists(path))
        std::printf("made in %.0f s\n",
                    secondsOf([&] { make(path, words.value(2, "1000000").toLongLong()); }));
    digests();
    verify(path);
    commits(path);
    backups(path);
    return 0;
}
