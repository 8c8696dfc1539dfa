#pragma once
// The files of an export that an import or `record` takes.

#include "app/actions/ExportFolder.h"
#include "core/acceptance/Fact.h"
#include "core/office/Office.h"
#include "db/OrderStore.h"

#include <QSet>

namespace loopwright {

Result<void> writeOffices(ExportFolder &folder, Records &records,
                          const std::vector<ServingOffice> &offices);
/// A row for each calibration.
Result<void> writeInstruments(ExportFolder &folder, const QString &name,
                              const std::vector<Instrument> &instruments);

/// The columns that an order file needs, collected from the orders; in the order of the contract.
class UsedColumns
{
public:
    void note(const ServiceOrder &order);
    QStringList columns() const;

private:
    QSet<QString> m_used;
};
QStringList orderCells(const ServiceOrder &order, const QStringList &columns);

/// The facts of one order as `record` takes them, a file for each installer; and what no record
/// holds.
struct OrderRecords
{
    QMap<QString, QJsonObject> files;    ///< by name, with its folder
    std::vector<QStringList> voids;      ///< rows under voidColumns()
    std::vector<QStringList> exceptions; ///< rows under exceptionColumns()
};
OrderRecords recordsOf(const QString &order, const std::vector<Fact> &facts);
const QStringList &voidColumns();
const QStringList &exceptionColumns();

} // namespace loopwright
