#include "core/errortest/DetectorFact.h"

#include "core/errortest/FactKeys.h"

namespace loopwright {

namespace {

constexpr auto detectorFields =
    std::tuple{bound("path", &DetectorFact::path),
               among(bearerChannels, bound("channels", &DetectorFact::channels)),
               countField("quiet_seconds", &DetectorFact::quietSeconds, "s"),
               countField("quiet_bit_errors", &DetectorFact::quietBitErrors),
               countField("injections", &DetectorFact::injections),
               countField("injected", &DetectorFact::injected),
               countField("seen_bit_errors", &DetectorFact::seenBitErrors),
               countField("seen_errored_seconds", &DetectorFact::seenErroredSeconds, "s"),
               bound("cleared", &DetectorFact::cleared)};

} // namespace

bool DetectorFact::everyInjectionSeen() const
{
    const qint64 seen = seenBitErrors.value_or(0);
    return injections.value_or(0) >= 1 && seen >= *injections && seen >= injected.value_or(0) &&
           seenErroredSeconds.value_or(0) >= 1;
}

QStringList DetectorFact::missingKeys() const
{
    QJsonObject written;
    write(written);
    QStringList missing;
    for (const FactField &field : fields())
        if (!written.contains(field.ownKey()) && field.ownKey() != u"injected")
            missing << field.ownKey();
    return missing;
}

DetectorFact DetectorFact::read(JsonReader &reader)
{
    DetectorFact fact;
    readFields(reader, fact, detectorFields);
    return fact;
}

void DetectorFact::write(QJsonObject &object) const
{
    writeFields(object, *this, detectorFields);
}

std::span<const FactField> DetectorFact::fields()
{
    static constexpr auto rows = fieldsIn(detectorFields);
    return rows;
}

} // namespace loopwright
