#include "app/actions/IssuedCertificate.h"

namespace loopwright {

QJsonObject IssuedCertificate::toJson() const
{
    return {{"certificate", number},  {"digest", digest},
            {"code", code},           {"pages", pages},
            {"copy", copy},           {"countersigned", mark.countersigns},
            {"order", content.order}, {"stands", because.isEmpty()},
            {"because", because}};
}

} // namespace loopwright
