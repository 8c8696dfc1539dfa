#include "app/cli/ExitStatus.h"

namespace loopwright {

namespace {

constexpr ExitStatusMeaning statusMeanings[] = {
    {ExitStatus::Yes, "Done, and the answer is yes."},
    {ExitStatus::No, "Done, and the answer is no; or it was refused."},
    {ExitStatus::Usage, "Wrong usage."},
    {ExitStatus::BadInput, "An input cannot be read, is malformed, or is refused whole; or what "
                           "was named is not known."},
    {ExitStatus::DatabaseTrouble, "The database cannot be opened, is locked or damaged, or was "
                                  "written by a newer version."},
    {ExitStatus::DiskTrouble, "The disk refused a write."},
    {ExitStatus::Interrupted, "Ctrl-C or SIGTERM stopped long work; nothing is half done."},
};

} // namespace

std::span<const ExitStatusMeaning> exitStatuses()
{
    return statusMeanings;
}

ExitStatus exitStatusOf(ErrorCode code)
{
    switch (code) {
    case ErrorCode::Usage:
        return ExitStatus::Usage;
    case ErrorCode::BadInput:
    case ErrorCode::NotFound:
        return ExitStatus::BadInput;
    case ErrorCode::Refused:
    case ErrorCode::OrderOut:
        return ExitStatus::No;
    case ErrorCode::DatabaseTrouble:
    case ErrorCode::Busy:
    case ErrorCode::ConnectionLost:
    case ErrorCode::OutcomeUnknown:
        return ExitStatus::DatabaseTrouble;
    case ErrorCode::DiskTrouble:
        return ExitStatus::DiskTrouble;
    }
    return ExitStatus::BadInput;
}

} // namespace loopwright
