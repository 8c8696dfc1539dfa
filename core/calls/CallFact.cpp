#include "core/calls/CallFact.h"

namespace loopwright {

CallFact CallFact::read(JsonReader &reader)
{
    CallFact fact;
    fact.channel = reader.word<Channel>("channel");
    fact.dn = reader.optionalText("dn", 40);
    fact.direction = reader.word<CallDirection>("direction");
    fact.service = reader.word<Service>("service");
    fact.outcome = reader.word<CallOutcome>("outcome");
    if (const auto cause = reader.optionalInteger("cause", 1, 127))
        fact.cause = int(*cause);
    fact.causeLocation = reader.optionalWord<CauseLocation>("cause_location");
    fact.announcedDn = reader.optionalText("announced_dn", 40);
    fact.announcedService = reader.optionalWord<Service>("announced_service");
    return fact;
}

void CallFact::write(QJsonObject &object) const
{
    object.insert("channel", toText(channel));
    object.insert("direction", toText(direction));
    object.insert("service", toText(service));
    object.insert("outcome", toText(outcome));
    if (dn)
        object.insert("dn", *dn);
    if (cause)
        object.insert("cause", *cause);
    if (causeLocation)
        object.insert("cause_location", toText(*causeLocation));
    if (announcedDn)
        object.insert("announced_dn", *announcedDn);
    if (announcedService)
        object.insert("announced_service", toText(*announcedService));
}

} // namespace loopwright
