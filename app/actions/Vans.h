#pragma once
// The vans of an office: sets of records with a tag and a key of their own, which the office's
// issuer endorses, and the orders that each of them has.

#include "app/actions/Records.h"
#include "db/StationStore.h"

namespace loopwright {

struct AddedVan
{
    QString station, tag, fingerprint;
    bool added = false; ///< else it was known so already
    QString before;     ///< fingerprint of the key that it had; empty if it is new

    QJsonObject toJson() const;
};
/// `keyFile`: what `key export` wrote in the van; its last station is the one. Refused if the
/// station has another tag or key and `renew` is not said, or the tag is another station's.
Result<AddedVan> addVan(Records &records, const QString &station, const QByteArray &keyFile,
                        const QString &fileName, bool renew);

/// What it signs from now on is believed no longer, nor what it signed and has not brought yet.
Result<void> loseVan(Records &records, const QString &station, const QString &because);

/// NotFound, in a sentence, if there is none of this name.
Result<PeerStation> vanNamed(Records &records, const QString &station);

/// Every order that a van took along, out or back.
Result<std::vector<CarriedOrder>> carriedOrders(Records &records);

/// A station by each tag that it had.
struct KnownStation
{
    PeerStation station;
    QString fingerprint; ///< of its newest key
    QStringList orders;  ///< that are out with it
    bool inUse = true;   ///< else it has another tag since

    const char *state() const { return station.lost ? "lost" : inUse ? "in_use" : "replaced"; }
    QJsonObject toJson() const;
};
Result<std::vector<KnownStation>> knownStations(Records &records); ///< by name
QJsonObject toJson(const CarriedOrder &order);

} // namespace loopwright
