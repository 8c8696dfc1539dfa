#pragma once
// What the long runs do to records over and over: evidence, orders, a certificate, a backup. Each
// task consists of several parts, so that a half-done one shows.

#include "app/actions/Records.h"

#include <QDir>
#include <QStringList>

namespace loopwright::soak {

/// The files of one round, in a folder of their own.
struct Place
{
    QDir folder;

    QString records() const { return folder.filePath("records.sqlite"); }
    QString certificate() const { return folder.filePath("certificate.pdf"); }
    QString backup() const { return folder.filePath("backup.sqlite"); }
    QString fresh() const { return folder.filePath("fresh.sqlite"); }
    QString restored() const { return folder.filePath("restored.sqlite"); }
    /// What a command reads.
    QString input(int number) const { return folder.filePath(QString("input-%1").arg(number)); }
};

enum class Work
{
    Record, ///< two notes in one file
    Import, ///< three orders in one file
    Issue,  ///< the certificate, onto the one before
    BackUp, ///< onto the one before
    Create, ///< new records, if they are not there
    Restore ///< the backup, onto the records that were restored before
};
constexpr int works = 6;

struct Task
{
    Work work = Work::Record;
    int number = 1; ///< 1 to 999; no two of one round have the same
    Moment now = *Moment::parse(u"2026-03-05T12:00:00-06:00"); ///< as who does it says
    int clockDaysBack = 0; ///< so far is the clock of the machine set back meanwhile
};

/// What is known of a task when it is acknowledged.
struct Acknowledged
{
    int number = 0;
    qint64 position = 0; ///< the log reaches this far; 0: not told
    qint64 copied = 0;   ///< and in the backup, or the new or restored records, so far
    QString file;        ///< SHA-256 of the certificate; empty: not told
};

/// Records with an order that is accepted, in the place of a new round: with a backup, and with a
/// certificate unless it is to be the first one of the station.
void makeStart(const Place &place, bool certified);

Result<Acknowledged> doTask(Records &records, const Place &place, const Task &task);
/// The same by the command line: its words. Writes the input.
QStringList wordsFor(const Place &place, const Task &task);

/// What a task enters.
QStringList factsOf(const Task &task);
QStringList ordersOf(const Task &task);
/// Whether it calls for a new certificate.
bool concernsCertified(const Task &task);
/// The order that is certified.
inline const QString certifiedOrder = QStringLiteral("A-1001");

} // namespace loopwright::soak
