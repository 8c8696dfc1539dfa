#pragma once
// What a face shows of vans before anything is done. Reads only.

#include "app/actions/BundleAnswer.h"
#include "db/StationStore.h"

namespace loopwright {

/// What these records are to others.
struct VanDesk
{
    QString tag;
    bool isVan = false;                 ///< something of an office was opened here
    QStringList orders = {};            ///< in a van: those that the office handed out
    std::vector<PeerStation> vans = {}; ///< by name, with the tag in use, without those lost
};
Result<VanDesk> vanDesk(Records &records);

/// What a file of a bundle says of itself. Nothing of it is believed yet.
struct BundleOutline
{
    QString file;
    QString code, reason; ///< why it is no bundle; empty if it is one
    QString id;
    BundleKind kind = BundleKind::Out;
    QString forStation;  ///< out: the tag of the van
    QString station;     ///< who made it: the tag of the office, a van as it is called here
    QString otherIssuer; ///< out: fingerprint of one that these records do not work for
    int part = 1, parts = 1;
    QStringList orders = {};
    int facts = 0;
    bool keep = false; ///< back: the orders stay out
};
Result<BundleOutline> outlineOf(Records &records, const BundleInput &input);

} // namespace loopwright
