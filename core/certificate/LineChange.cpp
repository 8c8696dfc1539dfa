#include "core/certificate/LineChange.h"

#include "core/certificate/SettingsLines.h"

namespace loopwright {

namespace {

struct Told
{
    QString ServiceOrder::*member;
    const char *name;
};
constexpr Told toldTexts[] = {{&ServiceOrder::pair, "pair"},
                              {&ServiceOrder::feederPair, "feeder pair"},
                              {&ServiceOrder::premises, "address of the premises"},
                              {&ServiceOrder::customer, "customer"},
                              {&ServiceOrder::ntMake, "make of the NT"},
                              {&ServiceOrder::ntSerial, "serial number of the NT"}};

} // namespace

QString lineChange(const ServiceOrder &then, const ServiceOrder &now)
{
    if (then.circuit != now.circuit)
        return QString("the circuit was changed from %1 to %2").arg(then.circuit, now.circuit);
    if (then.kind != now.kind)
        return "the kind of line was changed";
    for (const Told &told : toldTexts)
        if (const auto &[before, after] = std::tie(then.*told.member, now.*told.member);
            !after.isEmpty() && before != after)
            return before.isEmpty()
                       ? QString("the %1 was set to %2").arg(told.name, after)
                       : QString("the %1 was changed from %2 to %3").arg(told.name, before, after);
    if (then.variant != now.variant || terminalLines(then) != terminalLines(now) ||
        terminalSettings(then) != terminalSettings(now))
        return "the identifiers of the line were changed";
    return serviceLines(then) == serviceLines(now) ? QString() : "the services were changed";
}

} // namespace loopwright
