#pragma once
// The cover of a certificate set: which lines there are at a premises, what became of each,
// and the number of its certificate. It is no certificate itself; it says so.

#include "app/print/Sheet.h"
#include "core/acceptance/Decision.h"
#include "core/base/Moment.h"

namespace loopwright {

struct PdfContents;

struct CoverLine
{
    QString order, circuit;
    QString kind;    ///< "ISDN basic-rate line", "analog line"
    QString numbers; ///< joined by commas
    OrderOutcome outcome = OrderOutcome::Incomplete;
    QString certificate, code; ///< empty if none was issued
    QString tested;            ///< "4 March 2026"
    int pages = 0;
    bool copy = false;
    QString stage;  ///< where it stands, "Error test"; if there is no certificate
    QString reason; ///< why there is none
};

struct CoverContent
{
    QString customer, premises;
    /// Each as it was: "4 March 2026, 08:02 to 09:40 (UTC-06:00), Kim Carver: worked"; none if
    /// nobody was there.
    QStringList visits;
    Moment made;
    std::vector<CoverLine> lines;
};

Sheet coverSheet(const CoverContent &content, Paper paper);
/// Of a sheet that coverSheet() made.
Result<QByteArray> coverPdf(const Sheet &cover, const Moment &made);
/// Whether what was read is a cover of ours, so that nobody takes it for a damaged certificate.
bool isCover(const PdfContents &contents);

} // namespace loopwright
