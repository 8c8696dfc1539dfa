#include "core/base/Result.h"

namespace loopwright {

QString errorName(ErrorCode code)
{
    switch (code) {
    case ErrorCode::Usage:
        return "usage";
    case ErrorCode::BadInput:
        return "bad_input";
    case ErrorCode::NotFound:
        return "not_found";
    case ErrorCode::Refused:
        return "refused";
    case ErrorCode::OrderOut:
        return "order_out";
    case ErrorCode::DatabaseTrouble:
        return "database";
    case ErrorCode::Busy:
        return "busy";
    case ErrorCode::ConnectionLost:
        return "connection_lost";
    case ErrorCode::OutcomeUnknown:
        return "outcome_unknown";
    case ErrorCode::DiskTrouble:
        return "disk";
    }
    return {};
}

QString Error::text() const
{
    return place.isEmpty() ? message : QString(place + ": " + message);
}

} // namespace loopwright
