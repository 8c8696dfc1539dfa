#include "core/order/Services.h"

namespace loopwright {

QString servicesText(Services services)
{
    QStringList words;
    for (const Service service : each(services))
        words << toText(service);
    return words.join('+');
}

std::optional<Services> servicesFromText(QStringView text)
{
    Services services;
    if (text.isEmpty())
        return services;
    for (const QStringView word : text.split('+')) {
        const auto service = fromText<Service>(word.trimmed());
        if (!service || services.testFlag(*service))
            return std::nullopt;
        services |= *service;
    }
    return services;
}

QList<Service> each(Services services)
{
    QList<Service> list;
    for (const Service service : {Service::Voice, Service::Data, Service::Packet})
        if (services.testFlag(service))
            list << service;
    return list;
}

} // namespace loopwright
