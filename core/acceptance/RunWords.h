#pragma once
// Words that criteria and the list of runs have in common.

#include "core/base/Text.h"
#include "core/errortest/G821.h"
#include "core/errortest/Path.h"
#include "core/order/Channel.h"

#include <QList>
#include <QString>

namespace loopwright {

/// "B1 and B2"
QString channelsText(const QList<Channel> &channels);
/// "self-call"
QString pathText(Path path);
/// "1 bit error, 1 errored second, 0 severely errored seconds"
Text countsText(const ErrorSummary &summary);

} // namespace loopwright
