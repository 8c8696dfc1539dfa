#include "app/print/SettingsPage.h"

#include "core/certificate/CertificateNumber.h"

#include <QPainterPath>

#include <algorithm>

namespace loopwright {

namespace {

/// Columns of the table of terminals. The columns of what the line does not have are left out.
struct TerminalColumns
{
    double number, dn, spid, tei, end;
    bool hasSpid = false;
    bool hasTei = false;
    QString first; ///< what stands in the first column

    TerminalColumns(const SheetBuilder &sheet, const TerminalSettings &settings)
        : end(sheet.right())
        , first(settings.kind == LineKind::Analog ? "Line" : "Terminal")
    {
        for (const CertificateTerminal &terminal : settings.terminals) {
            hasSpid |= !terminal.spid.isEmpty();
            hasTei |= !terminal.tei.isEmpty();
        }
        number = sheet.left();
        dn = sheet.left() + mm(20);
        spid = dn + sheet.width() * (hasSpid ? 0.315 : 0.60);
        tei = end - (hasTei ? mm(21) : 0);
    }
};

void drawTerminalHead(SheetBuilder &sheet, const TerminalColumns &columns,
                      const CertificateStyle &style)
{
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.text, 7);
    sheet.y += mm(1.4);
    std::vector<Cell> cells{
        {columns.number, columns.dn - columns.number, columns.first, style.heading()},
        {columns.dn, columns.spid - columns.dn, "Number (DN)", style.heading()}};
    if (columns.hasSpid)
        cells.push_back(
            {columns.spid, columns.tei - columns.spid, "Identifier (SPID)", style.heading()});
    if (columns.hasTei)
        cells.push_back(
            {columns.tei, columns.end - columns.tei, "TEI", style.heading(), Align::Right});
    sheet.row(cells);
    sheet.y += mm(1.2);
}

QString withoutGaps(const QString &grouped)
{
    return QString(grouped).remove(u' ').remove(u'-');
}

/// Large digits in groups; below them what is keyed in, without gaps.
void drawTerminal(SheetBuilder &sheet, const TerminalColumns &columns,
                  const CertificateTerminal &terminal, int size, double gap,
                  const CertificateStyle &style)
{
    const double dnWidth = columns.spid - columns.dn - mm(4);
    const double spidWidth = columns.tei - columns.spid - mm(3);
    const TextStyle digits{Face::StrongDigits, size, style.ink.text};
    const TextStyle small = style.small();
    const double lineStep = SheetBuilder::lineHeight(small);
    if (sheet.ensure(size * 1.2 + lineStep + 2 * gap))
        drawTerminalHead(sheet, columns, style);
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
    const double baseline = sheet.y + gap + size * 0.8;
    const double below = baseline + lineStep + mm(0.4);
    sheet.textAt(columns.number + mm(1), baseline, QString::number(terminal.number),
                 {Face::Title, size, style.ink.accent});
    sheet.textAt(columns.dn, baseline, terminal.dnGrouped,
                 SheetBuilder::fitted(digits, terminal.dnGrouped, dnWidth));
    if (!terminal.spid.isEmpty())
        sheet.textAt(columns.spid, baseline, terminal.spidGrouped,
                     SheetBuilder::fitted(digits, terminal.spidGrouped, spidWidth));
    if (!terminal.tei.isEmpty())
        sheet.textAt(columns.end, baseline, terminal.tei, style.body(), Align::Right);
    const QString services = terminal.services.isEmpty() ? QString() : "  " + terminal.services;
    sheet.textAt(columns.dn, below, withoutGaps(terminal.dn) + services, small);
    if (!terminal.spid.isEmpty())
        sheet.textAt(columns.spid, below, terminal.spid + "  to key in", small);
    sheet.y = below + gap;
}

QPainterPath strokesIn(const Signature &signature, const QRectF &field)
{
    QPainterPath path;
    const double scale = std::min(field.width() / signatureWidth, field.height() / signatureHeight);
    const auto placed = [&](QPoint point) {
        return QPointF(field.left() + point.x() * scale,
                       field.bottom() - (signatureHeight - point.y()) * scale);
    };
    for (const std::vector<QPoint> &stroke : signature.strokes) {
        if (stroke.empty())
            continue;
        path.moveTo(placed(stroke.front()));
        for (const QPoint point : stroke)
            path.lineTo(placed(point));
    }
    return path;
}

void drawSignatureField(SheetBuilder &sheet, const QRectF &field, const QString &caption,
                        const Signature *signature, const CertificateStyle &style)
{
    if (signature) {
        const QPainterPath path = strokesIn(*signature, field.adjusted(mm(2), 0, -mm(2), -mm(1)));
        sheet.draw([path, colour = style.ink.text](QPainter &painter) {
            painter.setPen(QPen(colour, 11, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
            painter.drawPath(path);
        });
    }
    sheet.rule(field.left(), field.right(), field.bottom(), style.ink.text);
    const QString text =
        signature ? QString("%1: %2, %3")
                        .arg(caption, signature->name, longDate(signature->at.localDate()))
                  : QString("%1: name, date and signature").arg(caption);
    sheet.textAt(field.left(), field.bottom() + mm(4), text,
                 SheetBuilder::fitted(style.small(), text, field.width()));
}

} // namespace

void drawSettings(SheetBuilder &sheet, const TerminalSettings &settings,
                  const CertificateStyle &style)
{
    sheet.textAt(sheet.left(), sheet.top() + mm(7), "Settings for your equipment", style.title());
    sheet.y = sheet.top() + mm(12.5);
    sheet.paragraph(settings.kind == LineKind::Analog
                        ? QString("The number of your line, as it is dialled.")
                        : QString("To be programmed into each terminal. Digits are grouped for "
                                  "reading aloud; key them in without gaps."),
                    style.body());
    sheet.y += mm(5);
    const double indent = mm(44);
    const auto line = [&](const QString &name, const QString &value, const TextStyle &text) {
        sheet.ensure(SheetBuilder::paragraphHeight(value, text, sheet.width() - indent));
        sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
        sheet.y += mm(1.5);
        sheet.row({{sheet.left(), indent - mm(3), name, style.label()},
                   {sheet.left() + indent, sheet.width() - indent, value, text}});
        sheet.y += mm(1.3);
    };
    if (settings.kind != LineKind::Analog)
        line("Protocol variant", settings.variantName, {Face::Strong, 108, style.ink.text});
    for (const CertificateLine &setting : settings.settings)
        line(setting.name, setting.value, style.body());
    sheet.y += mm(5);

    const TerminalColumns columns(sheet, settings);
    drawTerminalHead(sheet, columns, style);
    const std::size_t count = settings.terminals.size();
    const int size = count <= 2 ? 190 : count <= 4 ? 165 : 140;
    const double gap = mm(count <= 2 ? 3.4 : count <= 4 ? 2.4 : 1.3);
    for (const CertificateTerminal &terminal : settings.terminals)
        drawTerminal(sheet, columns, terminal, size, gap, style);
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
}

void drawSignatures(SheetBuilder &sheet, const Signatures &signatures,
                    const CertificateStyle &style)
{
    const double fieldHeight = mm(17);
    const double below = mm(34); // how to check, if there is room for both
    sheet.y += mm(7);
    sheet.ensure(fieldHeight + mm(8));
    sheet.y = std::max(sheet.y, sheet.bottom() - below - fieldHeight - mm(8));
    const double half = (sheet.width() - mm(10)) / 2;
    const QRectF left(sheet.left(), sheet.y, half, fieldHeight);
    const QRectF right(sheet.left() + half + mm(10), sheet.y, half, fieldHeight);
    drawSignatureField(sheet, left, "Installer", signatureOf(signatures, "installer"), style);
    drawSignatureField(sheet, right, "Customer", signatureOf(signatures, "customer"), style);
    sheet.y += fieldHeight + mm(6);
}

void drawHowToCheck(SheetBuilder &sheet, const CertificateContent &content,
                    const CertificateStyle &style)
{
    const QString text =
        QString("Keep this certificate. Whoever issued it can tell at any time whether it is "
                "genuine and still stands: give the number %1 and the code %2, or have the square "
                "on page 1 read. The file of this certificate holds its record; the code is the "
                "beginning of the record's SHA-256:")
            .arg(content.number, shortCode(content.digest()));
    const TextStyle digest =
        SheetBuilder::fitted({Face::Digits, 72, style.ink.text}, content.digest(), sheet.width());
    const double height =
        SheetBuilder::paragraphHeight(text, style.small(), sheet.width()) + mm(13);
    sheet.y += mm(3);
    sheet.ensure(height);
    sheet.y = std::max(sheet.y, sheet.bottom() - height);
    sheet.row({{sheet.left(), sheet.width(), "To check this certificate", style.heading()}});
    sheet.y += mm(0.8);
    sheet.paragraph(text, style.small());
    sheet.y += mm(1.2);
    sheet.paragraph(content.digest(), digest);
}

} // namespace loopwright
