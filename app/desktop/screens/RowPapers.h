#pragma once
// The papers of the orders that are selected on the board, into a file, a folder or to a printer.

#include "app/actions/OrderPapers.h"
#include "app/desktop/screens/RowDeed.h"

namespace loopwright {

/// Saves them.
Deed savingPapers(const DeedGround &ground);
/// What was asked for, for a printer with that paper.
PapersRequest papersRequest(const DeedGround &ground, const QJsonObject &values, Paper paper);
/// Which orders have none, and why, and which copies stand no longer; empty if there is none.
QString papersLacking(const OrderPapers &papers);
/// "3 settings cards saved: …", "3 settings cards printed."
QString papersSentence(const OrderPapers &papers, const QJsonObject &values, const QString &where);

} // namespace loopwright
