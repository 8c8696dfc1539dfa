#pragma once
// A fact of kind `visit`: one installer at one premises, from arrival to leaving. A visit without
// access or without result is a visit too.

#include "core/base/Json.h"

namespace loopwright {

enum class VisitResult
{
    Worked,
    NoAccess,
    CustomerNotReady,
    Other,
};
template<>
struct EnumCodes<VisitResult>
{
    static constexpr std::pair<VisitResult, const char *> table[] = {
        {VisitResult::Worked, "worked"},
        {VisitResult::NoAccess, "no_access"},
        {VisitResult::CustomerNotReady, "customer_not_ready"},
        {VisitResult::Other, "other"}};
};

struct VisitFact
{
    std::optional<Moment> arrived;
    std::optional<Moment> left; ///< not before `arrived`
    std::optional<VisitResult> result;

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static VisitFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const VisitFact &) const = default;
};

} // namespace loopwright
