#pragma once
// The parts of a certificate, each drawn at the cursor of a SheetBuilder.

#include "app/print/CertificatePainter.h"
#include "app/print/SheetBuilder.h"

namespace loopwright {

/// Sizes of one way to set a certificate: the first that fits on a page is taken.
struct Setting
{
    int body = 88;
    int small = 74;
    double rowGap = mm(1.5);     ///< above and below a row
    double sectionGap = mm(5.5); ///< between parts
};

/// Colours and text styles of one setting.
struct CertificateStyle
{
    Setting setting;
    PictureStyle ink = paperStyle(setting.small);

    TextStyle body() const { return {Face::Text, setting.body, ink.text}; }
    TextStyle strong() const { return {Face::Strong, setting.body, ink.text}; }
    TextStyle small() const { return {Face::Text, setting.small, ink.muted}; }
    TextStyle label() const { return {Face::Text, setting.small, ink.muted}; }
    TextStyle heading() const { return {Face::Strong, setting.body, ink.accent}; }
    TextStyle title() const { return {Face::Title, 230, ink.text}; }
    TextStyle digits(int size) const { return {Face::Digits, size, ink.text}; }
    TextStyle foot() const { return {Face::Text, 66, ink.muted}; }
};

/// Title, number and code, the mark of a copy, the QR code, and the verdict in one sentence.
void drawHead(SheetBuilder &sheet, const CertificateContent &content, const IssueMark &mark,
              const CertificateStyle &style);
/// The job line of the certificate: every station as the decision left it.
void drawJobLine(SheetBuilder &sheet, const CertificateContent &content,
                 const CertificateStyle &style);
/// Customer, premises, circuit, order, service, numbers, dates.
void drawFacts(SheetBuilder &sheet, const CertificateContent &content,
               const CertificateStyle &style);
/// The criteria row by row, with exceptions where they belong.
void drawCriteria(SheetBuilder &sheet, const CertificateContent &content,
                  const CertificateStyle &style);
/// "N runs were made", which of them failed, what the counted one proves, and the notes.
void drawRuns(SheetBuilder &sheet, const CertificateContent &content,
              const CertificateStyle &style);
void drawInstruments(SheetBuilder &sheet, const CertificateContent &content,
                     const CertificateStyle &style);

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
void drawSignatures(SheetBuilder &sheet, const CertificateContent &content,
                    const CertificateStyle &style);
/// How the certificate can be checked later, with the whole digest.
void drawHowToCheck(SheetBuilder &sheet, const CertificateContent &content,
                    const CertificateStyle &style);

/// The job line of a certificate's content.
std::vector<StationState> certificateLine(const CertificateContent &content);

} // namespace loopwright
