#pragma once
// A fact of kind `call`: one call that was tried on a channel, how it ended, and the number that
// the network announced on it.

#include "core/base/Json.h"
#include "core/order/Channel.h"
#include "core/order/Services.h"
#include "core/turnup/Cause.h"

namespace loopwright {

enum class CallDirection
{
    Out,
    In,
};
template<>
struct EnumCodes<CallDirection>
{
    static constexpr std::pair<CallDirection, const char *> table[] = {{CallDirection::Out, "out"},
                                                                       {CallDirection::In, "in"}};
};

enum class CallOutcome
{
    Ok,
    Failed,
};
template<>
struct EnumCodes<CallOutcome>
{
    static constexpr std::pair<CallOutcome, const char *> table[] = {
        {CallOutcome::Ok, "ok"}, {CallOutcome::Failed, "failed"}};
};

struct CallFact
{
    Channel channel = Channel::B1;
    std::optional<QString> dn; ///< of this line, as it was written
    CallDirection direction = CallDirection::Out;
    Service service = Service::Voice;
    CallOutcome outcome = CallOutcome::Failed;
    std::optional<int> cause; ///< Q.850, 1 to 127
    std::optional<CauseLocation> causeLocation;
    std::optional<QString> announcedDn; ///< number announced by the network, as it was written
    std::optional<Service> announcedService;

    /// Reads its own keys; the caller reads the header of the fact and calls done(). Channel,
    /// direction, service and outcome are required.
    static CallFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const CallFact &) const = default;
};

} // namespace loopwright
