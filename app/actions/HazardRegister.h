#pragma once
// Every dangerous voltage that was read, and how it was closed: over all orders, open ones first.

#include "app/actions/Records.h"
#include "core/base/Moment.h"

#include <QJsonObject>
#include <QStringList>

#include <vector>

namespace loopwright {

struct RegisteredHazard
{
    QString card; ///< id of the safety card that read it
    QString order, circuit, office, premises, customer;
    QString pair;      ///< on which it was read
    QString place;     ///< where on it; empty if nobody said
    QString wet;       ///< "wet", "dry", or empty if nobody said
    QStringList volts; ///< "88 V AC, tip to ground"
    Moment readAt;
    QString readBy;        ///< name
    QString told;          ///< to whom the job was handed on with it; empty if to nobody
    QString toldReference; ///< that they gave it; may be empty
    QString toldBy;        ///< name
    std::optional<Moment> toldAt = {};
    QString state; ///< one sentence: open, waits for a clear card, how it was closed
    bool isOpen = true;

    QJsonObject toJson() const;
};

/// Open ones first, then the newest first. `progress` counts orders.
Result<std::vector<RegisteredHazard>> hazardRegister(Records &records, bool openOnly,
                                                     const Progress &progress = {});

} // namespace loopwright
