#include "app/actions/IssuedCertificate.h"

namespace loopwright {

QString IssuedCertificate::doubt() const
{
    return because.isEmpty() ? QString()
                             : QString("Certificate %1 stands no longer: %2").arg(number, because);
}

QJsonObject IssuedCertificate::toJson() const
{
    return {{"certificate", number},  {"digest", digest},
            {"code", code},           {"pages", pages},
            {"copy", copy},           {"countersigned", mark.countersigns},
            {"order", content.order}, {"stands", because.isEmpty()},
            {"because", because}};
}

} // namespace loopwright
