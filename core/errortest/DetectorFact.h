#pragma once
// A fact of kind `detector`: before a clean run is believed, the test set's error detector is
// watched for some seconds in quiet, errors are sent on purpose and must be seen, and the counters
// are cleared. How many quiet seconds are enough is a limit and not judged here.

#include "core/base/Json.h"
#include "core/errortest/Path.h"
#include "core/order/Channel.h"

#include <QList>

namespace loopwright {

struct DetectorFact
{
    Path path = Path::SelfCall;
    QList<Channel> channels; ///< at least one, none twice
    std::optional<qint64> quietSeconds;
    std::optional<qint64> quietBitErrors;
    std::optional<qint64> injections; ///< how often errors were sent
    std::optional<qint64> injected;   ///< bits in all, if known
    std::optional<qint64> seenBitErrors;
    std::optional<qint64> seenErroredSeconds;
    std::optional<bool> cleared;

    /// Everything that was sent was seen: at least one injection, as many bit errors seen as
    /// injections and as bits sent if that is known, and an errored second.
    bool everyInjectionSeen() const;
    /// Keys whose value was left out and without which the check proves nothing.
    QStringList missingKeys() const;

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static DetectorFact read(JsonReader &reader);
    /// Keys that were left out stay left out.
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const DetectorFact &) const = default;
};

} // namespace loopwright
