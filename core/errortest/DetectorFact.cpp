#include "core/errortest/DetectorFact.h"

#include "core/errortest/FactKeys.h"

namespace loopwright {

namespace {

struct CountKey
{
    const char *key;
    std::optional<qint64> DetectorFact::*member;
    bool needed;
};

constexpr CountKey countKeys[] = {
    {"quiet_seconds", &DetectorFact::quietSeconds, true},
    {"quiet_bit_errors", &DetectorFact::quietBitErrors, true},
    {"injections", &DetectorFact::injections, true},
    {"injected", &DetectorFact::injected, false},
    {"seen_bit_errors", &DetectorFact::seenBitErrors, true},
    {"seen_errored_seconds", &DetectorFact::seenErroredSeconds, true},
};

} // namespace

bool DetectorFact::everyInjectionSeen() const
{
    const qint64 seen = seenBitErrors.value_or(0);
    return injections.value_or(0) >= 1 && seen >= *injections && seen >= injected.value_or(0) &&
           seenErroredSeconds.value_or(0) >= 1;
}

QStringList DetectorFact::missingKeys() const
{
    QStringList missing;
    for (const CountKey &count : countKeys)
        if (count.needed && !(this->*count.member))
            missing << count.key;
    if (!cleared)
        missing << "cleared";
    return missing;
}

DetectorFact DetectorFact::read(JsonReader &reader)
{
    DetectorFact fact;
    fact.path = reader.word<Path>("path");
    fact.channels = readChannels(reader, "channels");
    for (const CountKey &count : countKeys)
        fact.*count.member = reader.optionalInteger(count.key, 0, maxCount);
    fact.cleared = reader.optionalBoolean("cleared");
    return fact;
}

void DetectorFact::write(QJsonObject &object) const
{
    object["path"] = toText(path);
    object["channels"] = writeChannels(channels);
    for (const CountKey &count : countKeys)
        writeOptional(object, count.key, this->*count.member);
    writeOptional(object, "cleared", cleared);
}

} // namespace loopwright
