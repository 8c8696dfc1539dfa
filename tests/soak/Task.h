#pragma once
// A task of the long runs, and the files of a round.

#include "core/base/Moment.h"

#include <QDir>

namespace loopwright::soak {

/// The files of one round, in a folder of their own.
struct Place
{
    QDir folder;

    QString records() const { return folder.filePath("records.sqlite"); }
    /// What is given out lies on a disk of its own where that may be full.
    QDir stick() const { return QDir(folder.filePath("stick")); }
    QString certificate() const { return stick().filePath("certificate.pdf"); }
    QString backup() const { return folder.filePath("backup.sqlite"); }
    QString fresh() const { return folder.filePath("fresh.sqlite"); }
    QString restored() const { return folder.filePath("restored.sqlite"); }
    QString van() const { return folder.filePath("van.sqlite"); }
    QString handedOut() const { return stick().filePath("for-van.json"); }
    QString brought() const { return stick().filePath("from-van.json"); }
    /// Bundles that are there from the beginning.
    QString toOpen(int lot) const { return folder.filePath(QString("to-open-%1.json").arg(lot)); }
    QString toReceive(int lot) const
    {
        return folder.filePath(QString("to-receive-%1.json").arg(lot));
    }
    /// What a command reads.
    QString input(int number) const { return folder.filePath(QString("input-%1").arg(number)); }
};

enum class Work
{
    Record,  ///< two notes in one file
    Import,  ///< three orders in one file
    Issue,   ///< the certificate, onto the one before
    BackUp,  ///< onto the one before
    Create,  ///< new records, if they are not there
    Restore, ///< the backup, onto the records that were restored before
    Take,    ///< two orders go out to the van, in a file onto the one before
    Open,    ///< the van takes in two orders
    Bring,   ///< all that was done in the van, in a file onto the one before
    Receive  ///< what another van brings back of two orders
};
constexpr int works = 10;
constexpr int worksWithoutVans = 6; ///< the first ones
constexpr int followUp = 900;       ///< tasks after a failure have numbers above

struct Task
{
    Work work = Work::Record;
    int number = 1; ///< 1 to 999; no two of one round have the same
    Moment now = *Moment::parse(u"2026-03-05T12:00:00-06:00"); ///< as who does it says
    int clockDaysBack = 0; ///< so far is the clock of the machine set back meanwhile
};

inline const QString whoActs = QStringLiteral("Dana"); // a supervisor of jobs::office()

} // namespace loopwright::soak
