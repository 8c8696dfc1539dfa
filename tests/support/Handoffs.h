#pragma once
// The handoff of a job, as its serving office, an installer and an issuer are registered.

#include "core/acceptance/Handoff.h"
#include "tests/support/Jobs.h"

namespace loopwright::jobs {

inline Handoff handoffOf(const OrderFields &fields, const QList<QJsonObject> &facts,
                         const Issuer &issuer)
{
    const DecisionInput asked = input(fields, facts);
    const LimitSet limitSet = limits();
    const Judged judged = judge(asked, limitSet);
    const Moment now = *Moment::parse(u"2026-03-04T15:00:00-06:00");
    return makeHandoff({asked,
                        judged.decision,
                        limitSet,
                        plan(asked, limitSet, judged, {now, "K7"}),
                        {"NORTH", "North Hill", "ni2", {}, "217-555-0170", "217-555-0171"},
                        issuer,
                        {{"K7", "Pat Example", Role::Installer}}});
}

} // namespace loopwright::jobs
