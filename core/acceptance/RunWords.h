#pragma once
// Words that criteria and the list of runs have in common.

#include "core/base/Text.h"
#include "core/errortest/G821.h"
#include "core/errortest/Path.h"
#include "core/errortest/RunFact.h"
#include "core/order/Channel.h"

#include <QList>
#include <QString>

namespace loopwright {

/// "B1 and B2"
QString channelsText(const QList<Channel> &channels);
/// The same within a sentence.
Text channelsSaid(const QList<Channel> &channels);
/// "self-call"
QString pathText(Path path);
/// "1 bit error, 1 errored second, 0 severely errored seconds"
Text countsText(const ErrorSummary &summary);
/// The same of a run; if fewer errored seconds were typed than are counted it says so.
Text countsText(const RunFact &run, const ErrorSummary &summary);
/// "(0 typed; each severely errored one is counted)"; empty if those that were typed are counted.
Text severelyErroredToo(const RunFact &run, const ErrorSummary &summary);

} // namespace loopwright
