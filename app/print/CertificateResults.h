#pragma once
// What a certificate says of the tests, as blocks of its document.

#include "app/print/Document.h"

namespace loopwright {

/// The mark of a criterion: a disc for met, a diamond for not met, a ring for not shown.
StationState criterionMark(CriterionOutcome outcome, bool excepted);
/// What was accepted by exception, by whom and why; equal reasons once. Empty without one.
doc::Blocks exceptionBlocks(const CertificateContent &content);
/// Each criterion with its plain sentence, and below it every figure that was read.
doc::Blocks resultBlocks(const CertificateContent &content);
/// "N runs were made", each with its times, errors and what became of it.
doc::Blocks runBlocks(const CertificateContent &content);
doc::Blocks instrumentBlocks(const CertificateContent &content);

} // namespace loopwright
