#pragma once
// How the error test is made: path, channels, numbers, interface, pattern and rate. What is chosen
// here stands in the calls, the detector check and the run of one sequence alike.

#include "app/desktop/form/FieldSpec.h"
#include "app/desktop/job/JobSession.h"

namespace loopwright {

/// The questions for this order. A self-call is asked for only where the order has two channels
/// that carry data and two numbers.
std::vector<FieldSpec> setupAsks(const ServiceOrder &order, const LimitSet &limits);
/// What is chosen before anybody chose: the ordered rate, the first channel, a self-call where the
/// order has one.
QJsonObject setupDefaults(const ServiceOrder &order, const LimitSet &limits);
/// Why the path is the test line or the far end; empty where a self-call is possible.
QString whyNoSelfCall(const ServiceOrder &order);

/// `path` and `channels` of the answers, as they stand in a fact.
QJsonObject pathAndChannels(const ServiceOrder &order, const QJsonObject &answers);
/// Everything of a run but its times and counts.
QJsonObject runHead(const ServiceOrder &order, const QJsonObject &answers);
/// The calls that are up when the test begins: out on the one channel and, where it comes back on
/// the line, in to the number. One failed call where it did not come up.
FactObjects setupCalls(const ServiceOrder &order, const QJsonObject &answers);
qint64 rateOf(const ServiceOrder &order, const QJsonObject &answers);
qint64 plannedSeconds(const QJsonObject &answers, const LimitSet &limits);

} // namespace loopwright
