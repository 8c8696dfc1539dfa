#pragma once
// A circuit's whole file, for whoever takes the circuit over: what an import and `record` take, and
// beside it what was decided, done and certified. The unpublished numbers are never in it.

#include "app/actions/Records.h"

#include <QStringList>

namespace loopwright {

struct CircuitExport
{
    QStringList paths; ///< of all that was written, the manifest last
    int orders = 0, certificates = 0;
    /// One sentence for each certificate whose paper could not be made again as it was issued.
    QStringList lacking;
};

/// offices.csv, instruments.csv (as labelled ones apart), orders.csv, the job records, voids.csv
/// and exceptions.csv as exportRecords() writes them; runs.csv with the seconds of each run in
/// runs/ as `analyse seconds` takes them; decisions.json; events.json; certificates/ with each
/// paper byte for byte as it was issued. NotFound if there is no such circuit.
Result<CircuitExport> exportCircuit(Records &records, const QString &circuit, const QString &folder,
                                    const Progress &progress = {});

} // namespace loopwright
