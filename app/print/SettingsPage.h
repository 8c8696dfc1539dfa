#pragma once
// The settings to program into the terminal equipment, and what stands below them on a certificate,
// each drawn at the cursor of a SheetBuilder.

#include "app/print/CertificateStyle.h"
#include "core/certificate/CertificateContent.h"

namespace loopwright {

/// What is programmed into the terminal equipment.
struct TerminalSettings
{
    LineKind kind = LineKind::Bri;
    QString variantName;
    std::vector<CertificateLine> settings;
    std::vector<CertificateTerminal> terminals;
};
void drawSettings(SheetBuilder &sheet, const TerminalSettings &settings,
                  const CertificateStyle &style);
/// Both signatures, as drawn on the screen or as lines to sign on.
void drawSignatures(SheetBuilder &sheet, const Signatures &signatures,
                    const CertificateStyle &style);
/// How the certificate can be checked later, with the whole digest.
void drawHowToCheck(SheetBuilder &sheet, const CertificateContent &content,
                    const CertificateStyle &style);

} // namespace loopwright
