#pragma once
// Work of an office and its vans: orders go out in a file, come into the records of a van, and what
// was done in one comes back in a file and joins the records of the office. An order does each of
// it once; so what the tasks of a round need is prepared in the start, in a few lots.

#include "app/actions/Records.h"
#include "tests/soak/Task.h"

#include <QStringList>

namespace loopwright::soak {

bool isOfVans(Work work);
/// Whether it is done in the records of the van, with the keys of its machine.
bool isInVan(Work work);

constexpr int lots = 3;
/// Two tasks of a round may have the same: then one of them finds done what it is to do. The first
/// after a failure has its own.
int lotOf(const Task &task);

/// The orders of a lot that Take hands out.
QStringList ordersToTake(int lot);
/// An order that went out at the start: the van is to open it, and another van that did is to bring
/// it back.
struct OrderOut
{
    QString number, circuit;
    QString said;     ///< a fact that the office recorded before
    QStringList done; ///< facts that the other van recorded
};
std::vector<OrderOut> ordersOut(int lot);
/// Whether this Bring leaves the orders out, which makes another bundle of it.
bool keepsOrders(const Task &task);

/// Vans that are known in the office, the records of one in which something was opened and done,
/// and the bundles of each lot.
void makeVans(Records &office, const Place &place);
Result<std::unique_ptr<Records>> openVan(const QString &path,
                                         Database::Access access = Database::Access::ReadWrite);
/// Where programs in the van keep their data, and that of it which is keys.
QString vanHome();
KeyFolder vanKeys();

/// The id of the bundle.
Result<QString> doVanTask(Records &records, const Place &place, const Task &task);
/// The end of its words on the command line.
QStringList vanWords(const Place &place, const Task &task);

} // namespace loopwright::soak
