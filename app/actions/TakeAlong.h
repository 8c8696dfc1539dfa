#pragma once
// Orders go along with a van: into a bundle that it opens without a network.

#include "app/actions/Vans.h"
#include "core/base/Finding.h"

namespace loopwright {

struct TakingAlong
{
    QStringList orders;
    QString installer = {}; ///< or all open orders of this person,
    QDate dueBy = {};       ///< due up to this day; invalid: any
    QString station;
    QString out;
    int split = 0;       ///< orders in one file at most; 0: all in one
    bool anyway = false; ///< also what another van has
};
struct TakenAlong
{
    QString bundle; ///< of the first file; empty if none went
    QString station, tag;
    QStringList orders, files;
    struct Told
    {
        QString order;
        Finding finding;
    };
    std::vector<Told> stays;    ///< why an order did not go
    std::vector<Told> warnings; ///< of those that went: VanWarnings.h

    QJsonObject toJson() const;
};
/// First the records, then the files. NotFound for an unknown order or station; nothing goes then.
/// Refused when it is stopped: then nothing is out and no file written. DiskTrouble says that the
/// orders are out and the same command writes the files again.
Result<TakenAlong> takeAlong(Records &records, const TakingAlong &wish,
                             const Progress &progress = {});

/// They did not go after all: the file never reached the van. Nothing is lost if it did: what it
/// brings back is taken in as before. Refused, and nothing changed, if one is not out at the
/// station; NotFound for an unknown order or station; Usage without a reason.
Result<void> recallOrders(Records &records, const QString &station, const QStringList &orders,
                          const QString &because);

} // namespace loopwright
