#pragma once
// What is programmed into the terminal equipment, as blocks: a page of the certificate, and a card
// of its own.

#include "app/print/Document.h"

namespace loopwright {

struct TerminalSettings
{
    LineKind kind = LineKind::Bri;
    QString variantName;
    std::vector<CertificateLine> settings;
    std::vector<CertificateTerminal> terminals;
    std::vector<CertificateLine> about; ///< order, date, issue
};
doc::Blocks settingsBlocks(const TerminalSettings &settings);

} // namespace loopwright
