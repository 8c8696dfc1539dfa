#pragma once
// Files in: offices, people, instruments and orders from CSV (the contract's columns). Good rows go
// in, bad rows are named and can be written out again. One transaction for a file.

#include "app/actions/Records.h"
#include "core/base/Csv.h"
#include "core/base/Finding.h"

#include <QJsonObject>
#include <QStringList>

namespace loopwright {

struct ImportOptions
{
    QString fileName;                  ///< for messages
    bool allOrNothing = false;         ///< one refused row refuses the file
    bool update = false;               ///< a row that is there with other values changes it
    QStringList ignoredColumns = {};   ///< unknown columns that the user lets pass
    std::optional<ColumnMap> map = {}; ///< if the file's columns are somebody else's
    Progress progress = {};
};

struct ImportReport
{
    int accepted = 0; ///< rows taken in, the held ones among them
    int held = 0;     ///< taken in, but their identifiers are in error or taken
    int refused = 0;
    int unchanged = 0; ///< there already with the same values
    bool refusedWhole =
        false;          ///< all or nothing was asked for and a row was refused: nothing was changed
    Findings findings;  ///< with row and column (Finding::field), as the file calls it
    QByteArray rejects; ///< CSV of the refused rows, the file's columns plus `reason`

    bool clean() const { return refused == 0 && held == 0; }
    QJsonObject toJson() const;
};

/// The columns that each kind of file must and may have.
CsvLayout ordersLayout();
CsvLayout officesLayout();
CsvLayout issuerLayout();
CsvLayout installersLayout();
CsvLayout instrumentsLayout();
CsvLayout plansLayout();

/// BadInput if the file is refused whole; nothing is changed then.
Result<ImportReport> importOrders(Records &records, const QByteArray &csv,
                                  const ImportOptions &options);
Result<ImportReport> importOffices(Records &records, const QByteArray &csv,
                                   const ImportOptions &options);
/// Who issues the certificates: one row.
Result<ImportReport> importIssuer(Records &records, const QByteArray &csv,
                                  const ImportOptions &options);
Result<ImportReport> importInstallers(Records &records, const QByteArray &csv,
                                      const ImportOptions &options);
Result<ImportReport> importInstruments(Records &records, const QByteArray &csv,
                                       const ImportOptions &options);

/// `order_number,column,value`: a row changes one column of an order (app/actions/Plans.h); an
/// empty value clears it.
Result<ImportReport> importPlans(Records &records, const QByteArray &csv,
                                 const ImportOptions &options);

} // namespace loopwright
