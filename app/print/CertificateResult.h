#pragma once
// What a certificate says of the tests: criteria, runs, instruments, each drawn at the cursor of a
// SheetBuilder.

#include "app/print/CertificateStyle.h"
#include "core/certificate/CertificateContent.h"

namespace loopwright {

/// The criteria row by row, with exceptions where they belong.
void drawCriteria(SheetBuilder &sheet, const CertificateContent &content,
                  const CertificateStyle &style);
/// "N runs were made", which of them failed, what the counted one proves, and the notes.
void drawRuns(SheetBuilder &sheet, const CertificateContent &content,
              const CertificateStyle &style);
void drawInstruments(SheetBuilder &sheet, const CertificateContent &content,
                     const CertificateStyle &style);

} // namespace loopwright
