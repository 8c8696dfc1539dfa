#include "core/calls/CallFact.h"

#include "core/base/FieldCodec.h"

namespace loopwright {

namespace {

constexpr int longestDn = 40;

constexpr auto callFields = std::tuple{bound("channel", &CallFact::channel),
                                       bound("dn", &CallFact::dn, longestDn),
                                       bound("direction", &CallFact::direction),
                                       bound("service", &CallFact::service),
                                       bound("outcome", &CallFact::outcome),
                                       bound("cause", &CallFact::cause, "", 1, 127),
                                       bound("cause_location", &CallFact::causeLocation),
                                       bound("announced_dn", &CallFact::announcedDn, longestDn),
                                       bound("announced_service", &CallFact::announcedService)};

} // namespace

CallFact CallFact::read(JsonReader &reader)
{
    CallFact fact;
    readFields(reader, fact, callFields);
    return fact;
}

void CallFact::write(QJsonObject &object) const
{
    writeFields(object, *this, callFields);
}

std::span<const FactField> CallFact::fields()
{
    static constexpr auto rows = fieldsIn(callFields);
    return rows;
}

} // namespace loopwright
