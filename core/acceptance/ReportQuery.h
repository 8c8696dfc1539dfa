#pragma once
// What is asked of the records as a whole: which report, over which days, counted by what.

#include "core/base/EnumCodes.h"

#include <QDate>

namespace loopwright {

enum class ReportKind
{
    FirstVisit,
    Failing,
    OpenAge,
    Exceptions,
    Calibration,
    Troubles
};
template<>
struct EnumCodes<ReportKind>
{
    static constexpr std::pair<ReportKind, const char *> table[] = {
        {ReportKind::FirstVisit, "first_visit"},  {ReportKind::Failing, "failing"},
        {ReportKind::OpenAge, "open_age"},        {ReportKind::Exceptions, "exceptions"},
        {ReportKind::Calibration, "calibration"}, {ReportKind::Troubles, "troubles"}};
};

enum class ReportPer
{
    Office,
    Installer, ///< who is assigned
    Cable,     ///< of the pair
    Variant,
    Month ///< of the day that the report goes by
};
template<>
struct EnumCodes<ReportPer>
{
    static constexpr std::pair<ReportPer, const char *> table[] = {
        {ReportPer::Office, "office"},
        {ReportPer::Installer, "installer"},
        {ReportPer::Cable, "cable"},
        {ReportPer::Variant, "variant"},
        {ReportPer::Month, "month"}};
};

struct ReportQuery
{
    ReportKind kind = ReportKind::FirstVisit;
    ReportPer per = ReportPer::Office;
    QDate from{}, to{}; ///< both belong to it; invalid: any
};

/// The orders behind a figure, or behind all of the report.
struct ReportFigureKey
{
    std::optional<QString> per = {};
    std::optional<QString> detail = {}; ///< a criterion or an instrument
};

} // namespace loopwright
