#pragma once
// What the long runs do to records over and over: evidence, orders, a certificate, a backup, orders
// that go out to a van and come back. Each task consists of several parts, so that a half-done one
// shows.

#include "app/actions/Records.h"
#include "tests/soak/Task.h"

#include <QStringList>

namespace loopwright::soak {

/// What is known of a task when it is acknowledged.
struct Acknowledged
{
    int number = 0;
    qint64 position = 0; ///< the log of its records reaches this far; 0: not told
    qint64 copied = 0;   ///< and in the backup, or the new or restored records, so far
    QString file;        ///< SHA-256 of the certificate, or the bundle; empty: not told
};

/// Records with an order that is accepted, in the place of a new round: with a backup, and with a
/// certificate and vans, unless that is to be the first use of the station's key.
void makeStart(const Place &place, bool certified);

/// `records`: of the van, if it is done there.
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
