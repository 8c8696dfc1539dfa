#pragma once
// How an order goes into a bundle, and what of it is put into the records that it comes to.

#include "app/actions/Records.h"
#include "core/acceptance/StationConflict.h"
#include "core/history/Bundle.h"
#include "db/OrderStore.h"

namespace loopwright {

/// For a van: the order with all evidence and what is told of it, whoever recorded it.
Result<BundledOrder> orderGoingOut(Records &records, const StoredOrder &stored);
/// From a van: what was recorded in it, of the events after `told` of the circuit's chain.
Result<BundledOrder> orderComingBack(Records &records, const StoredOrder &stored, qint64 told);

/// BadInput, with the place, if the content is no order, or not the one that the entry names.
Result<ServiceOrder> orderIn(const BundledOrder &entry, const QByteArray &content,
                             const QString &place);

/// One number of two certificates: the one that is there, and one that stays out.
struct CertificateTwice
{
    QString number;
    QString order, digest;           ///< of the one that is there
    QString otherOrder, otherDigest; ///< of the one that stays out

    /// The same one whichever of the two is there.
    QJsonObject toJson() const;
    Text sentence() const;
};

/// What of an entry is in the records now.
struct AddedParts
{
    QStringList added, alreadyThere, certificates;
    std::vector<Fact> facts; ///< those that were added
    std::vector<CertificateTwice> twice;
    bool ahead = false;                     ///< one was more than a day ahead of the clock
    std::vector<StationConflict> elsewhere; ///< that were drawn on other orders
};
/// The facts of an entry, in its order; BadInput with its place if one is none, or another order's.
Result<std::vector<Fact>> factsIn(const BundledOrder &entry, const QString &place);
/// Adds `facts` (factsIn()), decisions and certificates that are not there yet. `sender`: the tag
/// of the station whose work it is. A fact that is there with another content is not taken.
Result<AddedParts> addParts(Records &records, Transaction &transaction, const BundledOrder &entry,
                            const std::vector<Fact> &facts, const QString &sender,
                            const QString &place);
/// What other stations told of the order; "forked" in the error's place if one of them told it
/// otherwise before. How many are new.
Result<int> addForeignEvents(Records &records, Transaction &transaction, const BundledOrder &entry);

} // namespace loopwright
