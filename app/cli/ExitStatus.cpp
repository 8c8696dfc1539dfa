#include "app/cli/ExitStatus.h"

namespace loopwright {

ExitStatus exitStatusOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::Usage:
        return ExitStatus::Usage;
    case ErrorCode::BadInput:
    case ErrorCode::NotFound:
        return ExitStatus::BadInput;
    case ErrorCode::Refused:
        return ExitStatus::No;
    case ErrorCode::DatabaseTrouble:
        return ExitStatus::DatabaseTrouble;
    case ErrorCode::DiskTrouble:
        return ExitStatus::DiskTrouble;
    }
    return ExitStatus::BadInput;
}

} // namespace loopwright
