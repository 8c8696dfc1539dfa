#pragma once
// How the error test is made: path, channel, numbers, interface, pattern, rate and length. What the
// plan presets is asked for once and may be answered otherwise; it stands in the detector check and
// the run alike.

#include "app/desktop/form/FieldSpec.h"
#include "app/desktop/job/JobSession.h"

namespace loopwright {

/// The questions for this order.
std::vector<FieldSpec> setupSpecs(const ServiceOrder &order, const LimitSet &limits);
/// What stands there before anybody chose, by what the plan presets of a run.
QJsonObject setupDefaults(const QJsonObject &preset, const LimitSet &limits);
/// Why the path is the test line or the far end; empty where a self-call is possible.
QString whyNoSelfCall(const ServiceOrder &order);
/// The preset of a run with what was answered otherwise: everything of it but times and counts.
QJsonObject runHead(const QJsonObject &preset, const QJsonObject &answers);
qint64 rateOf(const ServiceOrder &order, const QJsonObject &answers);
/// What of the answers is no number though it must be one.
Findings findingsOf(const QJsonObject &answers);
qint64 plannedSeconds(const QJsonObject &answers, const LimitSet &limits);

} // namespace loopwright
