#pragma once
// A fact of kind `run`: one error-rate run as it was recorded, either by the totals that the test
// set showed at the end or second by second. Its evaluation is RunEvaluation.h.

#include "core/base/Json.h"
#include "core/errortest/Path.h"
#include "core/errortest/Second.h"
#include "core/order/Channel.h"
#include "core/turnup/LayerFact.h"

#include <QList>

namespace loopwright {

struct RunFact
{
    Path path = Path::SelfCall;
    QList<Channel> channels; ///< at least one, none twice
    std::optional<QString> fromDn;
    std::optional<QString> toDn;
    std::optional<LineInterface> interface;
    std::optional<QString> pattern; ///< a key of Pattern.h or what the test set calls it
    std::optional<qint64> rate;     ///< bit/s; 64000 if it is left out
    Moment started;
    Moment ended;
    std::optional<bool> stoppedEarly;
    // totals as typed
    std::optional<qint64> bitErrors;
    std::optional<qint64> erroredSeconds;
    std::optional<qint64> severelyErroredSeconds;
    std::optional<qint64> syncLosses;
    std::optional<qint64> slips; ///< if the instrument shows them
    std::optional<SecondList> seconds;

    qint64 bitsPerSecond() const { return rate.value_or(64000); }
    double durationSeconds() const { return started.secondsUntil(ended); }
    bool wasStoppedEarly() const { return stoppedEarly.value_or(false); }

    /// Reads its own keys; the caller reads the header of the fact and calls done(). Fails if
    /// the run ends before it starts, a count is negative or more than the length of the run
    /// allows, `bit_errors` and `seconds` are both missing, or totals and seconds contradict.
    static RunFact read(JsonReader &reader);
    /// Keys that were left out stay left out.
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const RunFact &) const = default;
};

} // namespace loopwright
