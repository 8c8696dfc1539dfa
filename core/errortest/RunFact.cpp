#include "core/errortest/RunFact.h"

#include "core/errortest/FactKeys.h"

#include <cmath>

namespace loopwright {

namespace {

constexpr int maxSeconds = 1'000'000;  ///< eleven days and a half
constexpr qint64 maxRate = 30 * 64000; ///< N x 64 kbit/s below the primary rate
constexpr int longestDn = 40;

struct TotalKey
{
    const char *key;
    std::optional<qint64> RunFact::*typed;
};

constexpr TotalKey secondsKeys[] = {
    {"errored_seconds", &RunFact::erroredSeconds},
    {"severely_errored_seconds", &RunFact::severelyErroredSeconds},
};

constexpr auto runFields = std::tuple{bound("path", &RunFact::path),
                                      among(bearerChannels, bound("channels", &RunFact::channels)),
                                      bound("from_dn", &RunFact::fromDn, longestDn),
                                      bound("to_dn", &RunFact::toDn, longestDn),
                                      bound("interface", &RunFact::interface),
                                      bound("pattern", &RunFact::pattern, 40),
                                      bound("rate", &RunFact::rate, "bit/s", 1, maxRate),
                                      bound("started", &RunFact::started),
                                      bound("ended", &RunFact::ended),
                                      bound("stopped_early", &RunFact::stoppedEarly),
                                      countField("bit_errors", &RunFact::bitErrors),
                                      countField(secondsKeys[0].key, secondsKeys[0].typed, "s"),
                                      countField(secondsKeys[1].key, secondsKeys[1].typed, "s"),
                                      countField("sync_losses", &RunFact::syncLosses),
                                      countField("slips", &RunFact::slips),
                                      apart({.key = "seconds",
                                             .type = FieldType::Seconds,
                                             .maximum = maxRate,
                                             .maxLength = maxSeconds})};

/// A run of 900 s by the clock can touch 901 seconds of the test set's.
qint64 secondsAllowed(const RunFact &run)
{
    return qint64(std::floor(run.durationSeconds())) + 1;
}

Second readSecond(JsonReader &reader, const QJsonValue &value, int index, qint64 bitsPerSecond)
{
    const double errors = value.toDouble(-1);
    if (value.isNull())
        return std::nullopt;
    if (!value.isDouble() || errors != std::floor(errors) || errors < 0 ||
        errors > double(bitsPerSecond)) {
        reader.fail(QString("seconds[%1]").arg(index),
                    QString("must be a whole number from 0 to %1, or null").arg(bitsPerSecond));
        return {};
    }
    return qint64(errors);
}

void readSeconds(JsonReader &reader, RunFact &run)
{
    if (!reader.has("seconds"))
        return;
    const QJsonArray array = reader.array("seconds", maxSeconds);
    if (!reader.failed() && array.size() > secondsAllowed(run))
        reader.fail("seconds", QString("has %1 entries, and the run lasts %2 s")
                                   .arg(array.size())
                                   .arg(run.durationSeconds()));
    if (reader.failed())
        return;
    SecondList seconds;
    seconds.reserve(std::size_t(array.size()));
    for (int i = 0; i < int(array.size()); ++i)
        seconds.push_back(readSecond(reader, array[i], i, run.bitsPerSecond()));
    run.seconds = std::move(seconds);
}

void checkTotals(JsonReader &reader, const RunFact &run)
{
    const qint64 seconds = secondsAllowed(run);
    const auto atMost = [&](const char *key, std::optional<qint64> value, qint64 limit) {
        if (value.value_or(0) > limit)
            reader.fail(key, QString("is more than the length of the run allows (%1)").arg(limit));
    };
    atMost("bit_errors", run.bitErrors, seconds * run.bitsPerSecond());
    for (const TotalKey &total : secondsKeys)
        atMost(total.key, run.*total.typed, seconds);
}

} // namespace

RunFact RunFact::read(JsonReader &reader)
{
    RunFact run;
    readFields(reader, run, runFields);
    if (run.rate && *run.rate % 64000 != 0 && *run.rate % 56000 != 0)
        reader.fail("rate", "must be 64000 or 56000 bit/s or a multiple of one of them");
    if (run.ended < run.started)
        reader.fail("ended", "lies before the start of the run");
    readSeconds(reader, run);
    if (!run.seconds && !run.bitErrors)
        reader.fail("bit_errors", "is required where the run has no seconds");
    if (!reader.failed())
        checkTotals(reader, run);
    return run;
}

void RunFact::write(QJsonObject &object) const
{
    writeFields(object, *this, runFields);
    if (!seconds)
        return;
    QJsonArray array;
    for (const Second second : *seconds)
        array << (second.inSync() ? QJsonValue(second.bitErrors()) : QJsonValue());
    object["seconds"] = array;
}

std::span<const FactField> RunFact::fields()
{
    static constexpr auto rows = fieldsIn(runFields);
    return rows;
}

} // namespace loopwright
