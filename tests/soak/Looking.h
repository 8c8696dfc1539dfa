#pragma once
// What is found after a failure, held against what was acknowledged: whether anything is lost, half
// done or left over.

#include "tests/soak/Worker.h"

#include <QSet>

namespace loopwright::soak {

/// All that was begun in one round, and what was told of it.
struct Begun
{
    std::vector<Task> tasks;
    std::vector<Told> told;
    bool atOnce = false; ///< the first two were told by processes that worked at once

    std::vector<Acknowledged> acknowledged() const;
    bool isAcknowledged(int number) const;
    /// So far must the log of the office, or of the van, reach.
    qint64 position(bool inVan) const;
    /// Whether that was said of a task that failed.
    bool saidNothingChanged(int number) const;
    const Task &taskOf(const Acknowledged &each) const;
};

struct Tally
{
    QString kind;
    int rounds = 0;
    int struck = 0; ///< rounds in which the failure hit some work
    int acknowledged = 0;
    int lost = 0;     ///< acknowledged, and not there
    int halfDone = 0; ///< a task, a file, or records that do not hold together
    int leftOver = 0; ///< files that the next command of their kind did not take away
    int untrue = 0;   ///< "nothing was changed" was said, and something was
    int wrong = 0;    ///< ended otherwise than it should
    QString skipped = {};

    int faults() const { return lost + halfDone + leftOver + untrue + wrong; }
    QString line() const;
};

/// The papers of the order that is certified.
struct Papers
{
    QStringList sums;   ///< SHA-256 of the papers in the records, oldest first
    QString file;       ///< of the file; empty if there is none
    bool isDue = false; ///< the last one is not known to be written
};

/// Tells each fault on standard error, and counts it.
class Looking
{
public:
    Looking(Tally &tally, const Place &place, const QString &round)
        : m_tally(tally)
        , m_place(place)
        , m_round(round)
    {
    }

    /// Opens the records as the next command would, for reading alone or for writing.
    void atRecords(const Begun &begun, Database::Access access);
    void atLeftOvers();
    /// Nothing if the records cannot be opened.
    std::optional<Papers> papers() const;
    void count(int &faults, const QString &what);
    /// The pages, the history and what is derived; the log must reach `position`.
    void atWhole(Records &records, qint64 position);

private:
    void atHistory(Records &records);
    void atTask(Records &records, const Begun &begun, const Task &task);
    void atCertificate(Records &records, const Begun &begun);
    void atOther(const Begun &begun, Work work, const QString &path);

    Tally &m_tally;
    const Place &m_place;
    QString m_round;
};

} // namespace loopwright::soak
