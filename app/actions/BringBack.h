#pragma once
// In the van: what was done there goes back to the office.

#include "app/actions/Records.h"

#include <QStringList>

namespace loopwright {

struct BringingBack
{
    QString out;
    QString since = {}; ///< a bundle that was brought before: only what is newer; empty: all
    int split = 0;      ///< orders in one file at most; 0: all in one
    bool keep = false;  ///< the orders stay out
};
struct BroughtBack
{
    QString bundle; ///< of the first file; empty if there was nothing to bring
    QString station;
    QStringList answers, orders, files;
    int facts = 0; ///< without voids

    QJsonObject toJson() const;
};
/// First the records, then the files. NotFound if `since` is no bundle that was brought from here.
/// Refused when it is stopped: then nothing is noted and no file written. DiskTrouble may say that
/// the same command writes the files again.
Result<BroughtBack> bringBack(Records &records, const BringingBack &wish,
                              const Progress &progress = {});

} // namespace loopwright
