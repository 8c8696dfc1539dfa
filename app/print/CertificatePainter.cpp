#include "app/print/CertificatePainter.h"

#include "app/print/CertificateResult.h"
#include "app/print/JobLinePainter.h"
#include "app/print/PdfFile.h"
#include "app/print/QrCode.h"
#include "app/print/SettingsPage.h"
#include "core/certificate/CertificateNumber.h"

namespace loopwright {

namespace {

const QString notIssued = QStringLiteral("Preview, not issued");

constexpr double qrSide = mm(33); ///< quiet zone included

/// From the roomiest to the closest.
constexpr Setting settings[] = {{88, 74, mm(1.5), mm(5.5)},  {88, 74, mm(1.1), mm(4.4)},
                                {86, 73, mm(0.9), mm(3.8)},  {83, 71, mm(0.8), mm(3.4)},
                                {80, 69, mm(0.65), mm(3.0)}, {76, 67, mm(0.5), mm(2.5)}};

/// A decision with the outcomes of the content, for the one function that draws a job line.
Decision decisionOf(const CertificateContent &content)
{
    Decision decision;
    decision.outcome = content.outcome;
    for (const CertificateCriterion &criterion : content.criteria) {
        CriterionResult result;
        result.key = criterion.key;
        result.station = criterion.station;
        result.outcome = criterion.outcome;
        if (criterion.excepted)
            result.excepted = Excepted{};
        decision.criteria.push_back(result);
    }
    return decision;
}

/// A content has its number only once it is issued.
bool isPreview(const CertificateContent &content)
{
    return content.number.isEmpty();
}

void drawQr(SheetBuilder &sheet, const CertificateContent &content)
{
    const auto code = qrCode(certificateQrText(content));
    if (!code)
        return; // a number and a digest always fit
    // The quiet zone may lie in the margin, so that the code itself stands on the right edge.
    const double zone = qrSide * 4 / code->modules;
    const QPainterPath path =
        code->in(QRectF(sheet.right() - qrSide + zone, sheet.top() - zone, qrSide, qrSide));
    sheet.draw([path](QPainter &painter) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        painter.fillPath(path, Qt::black);
    });
}

void drawCopyMark(SheetBuilder &sheet, const IssueMark &mark, double baseline,
                  const CertificateStyle &style)
{
    const QString date = longDate(mark.issuedAt.localDate());
    const QString text = mark.countersigns
                             ? QString("Issue %1, signed on %2").arg(mark.copy + 1).arg(date)
                             : QString("Copy %1, issued on %2").arg(mark.copy).arg(date);
    const TextStyle strong{Face::Strong, 84, style.ink.bad};
    const QRectF frame(sheet.left(), baseline - mm(3.9),
                       SheetBuilder::textWidth(text, strong) + mm(5), mm(5.6));
    sheet.draw([frame, colour = style.ink.bad](QPainter &painter) {
        painter.setPen(QPen(colour, 9));
        painter.drawRect(frame);
    });
    sheet.textAt(sheet.left() + mm(2.5), baseline, text, strong);
}

QString verdictSentence(const CertificateContent &content)
{
    qsizetype excepted = 0;
    for (const CertificateCriterion &criterion : content.criteria)
        excepted += criterion.excepted.has_value();
    if (content.outcome != OrderOutcome::AcceptedWithException)
        return "Every test that this service needs was made, and every result is within its "
               "limit.";
    return QString("Every result is within its limit but for %1, accepted by exception. Who "
                   "authorised it, and why, is stated below.")
        .arg(excepted == 1 ? QString("one point") : QString("%1 points").arg(excepted));
}

constexpr double labelWidth = mm(19);

/// Label and value over the whole width.
void drawWide(SheetBuilder &sheet, const CertificateLine &line, const CertificateStyle &style)
{
    sheet.row({{sheet.left(), labelWidth, line.name, style.label()},
               {sheet.left() + labelWidth, sheet.width() - labelWidth, line.value, style.body()}});
    sheet.y += style.setting.rowGap * 0.8;
}

/// Label and value, two pairs side by side.
void drawPairs(SheetBuilder &sheet, const CertificateLine &one, const CertificateLine &two,
               const CertificateStyle &style)
{
    const double half = (sheet.width() - mm(6)) / 2;
    const double second = sheet.left() + half + mm(6);
    sheet.row({{sheet.left(), labelWidth, one.name, style.label()},
               {sheet.left() + labelWidth, half - labelWidth, one.value, style.body()},
               {second, labelWidth, two.name, style.label()},
               {second + labelWidth, half - labelWidth, two.value, style.body()}});
    sheet.y += style.setting.rowGap * 0.8;
}

QString numbersText(const CertificateContent &content)
{
    QStringList numbers;
    for (const CertificateTerminal &terminal : content.terminals)
        if (!numbers.contains(terminal.dn))
            numbers << terminal.dn;
    return numbers.join(", ");
}

QString footText(const CertificateContent &content, const IssueMark &mark)
{
    if (isPreview(content))
        return notIssued;
    const QString copy =
        mark.copy > 0 && !mark.countersigns ? QString(", copy %1").arg(mark.copy) : QString();
    return QString("Certificate %1  ·  code %2  ·  issue %3%4")
        .arg(content.number, shortCode(content.digest()))
        .arg(mark.copy + 1)
        .arg(copy);
}

/// Number and code, or that there is none yet; below them the mark of a copy.
void drawNumber(SheetBuilder &sheet, const CertificateContent &content, const IssueMark &mark,
                const CertificateStyle &style)
{
    const double baseline = sheet.top() + mm(14.2);
    sheet.y = sheet.top() + mm(17);
    if (isPreview(content)) {
        sheet.textAt(sheet.left(), baseline, notIssued, {Face::Strong, 116, style.ink.doubtful});
        return;
    }
    sheet.textAt(sheet.left(), baseline, content.number,
                 {Face::StrongDigits, 116, style.ink.accent});
    sheet.textAt(sheet.left() + mm(44), baseline, "code " + shortCode(content.digest()),
                 style.digits(92));
    if (mark.copy > 0) {
        drawCopyMark(sheet, mark, sheet.top() + mm(21.4), style);
        sheet.y = sheet.top() + mm(24.5);
    }
    drawQr(sheet, content);
}

/// Mark, word and one sentence.
void drawVerdict(SheetBuilder &sheet, const CertificateContent &content,
                 const CertificateStyle &style)
{
    const bool excepted = content.outcome == OrderOutcome::AcceptedWithException;
    const StationState state{Station::Acceptance, StationMark::Done, excepted, false};
    const double radius = mm(2.3);
    const QPointF centre(sheet.left() + radius, sheet.y + mm(4.2));
    sheet.draw([=, ink = style.ink](QPainter &painter) {
        paintStationMark(painter, centre, radius, state, ink);
    });
    const QString verdict = excepted ? "Accepted by exception" : "Accepted";
    const TextStyle strong{Face::Strong, 124, style.ink.text};
    sheet.textAt(sheet.left() + mm(7), sheet.y + mm(5.6), verdict, strong);
    if (!isPreview(content))
        sheet.textAt(sheet.left() + mm(9.5) + SheetBuilder::textWidth(verdict, strong),
                     sheet.y + mm(5.6), "issued on " + longDate(content.issuedAt.localDate()),
                     style.body());
    sheet.y += mm(7.4);
    sheet.paragraph(verdictSentence(content), style.body(), mm(7), sheet.width() - qrSide - mm(7));
}

/// Every station as the decision left it.
std::vector<StationState> certificateLine(const CertificateContent &content)
{
    return jobLine(decisionOf(content), Stage::Done);
}

/// Title, number and code, the mark of a copy, the QR code, and the verdict in one sentence.
void drawHead(SheetBuilder &sheet, const CertificateContent &content, const IssueMark &mark,
              const CertificateStyle &style)
{
    sheet.textAt(sheet.left(), sheet.top() + mm(7), "Line certificate", style.title());
    drawNumber(sheet, content, mark, style);
    drawVerdict(sheet, content, style);
    sheet.y = std::max(sheet.y, sheet.top() + qrSide - mm(5)) + style.setting.sectionGap * 0.75;
}

void drawJobLine(SheetBuilder &sheet, const CertificateContent &content,
                 const CertificateStyle &style)
{
    const double height = mm(12);
    const QRectF rect(sheet.left(), sheet.y, sheet.width(), height);
    const PictureStyle ink = paperStyle(70);
    sheet.draw([rect, ink, line = certificateLine(content)](QPainter &painter) {
        paintJobLine(painter, rect, line, ink);
    });
    sheet.y += height + style.setting.sectionGap * 0.7;
}

/// Customer, premises, circuit, order, service, numbers, dates.
void drawFacts(SheetBuilder &sheet, const CertificateContent &content,
               const CertificateStyle &style)
{
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
    sheet.y += style.setting.rowGap * 1.6;
    const QString tested =
        content.testedTo.isEmpty() ? QString() : longDates(content.testedFrom, content.testedTo);
    const QString by = content.installers.isEmpty()
                           ? tested
                           : QString(tested + ", by " + content.installers.join(", "));
    drawPairs(sheet, {"Customer", content.customer}, {"Circuit", content.circuit}, style);
    drawPairs(sheet, {"Premises", content.premises},
              {"Order", content.order + ", " + content.orderType}, style);
    drawPairs(sheet, {"Office", content.office}, {"Tested", by}, style);
    drawWide(sheet, {"Service", inOneLine(content.service)}, style);
    drawWide(sheet, {content.terminals.size() > 1 ? "Numbers" : "Number", numbersText(content)},
             style);
    sheet.y += style.setting.rowGap * 2.2;
}

Sheet layOut(const CertificateContent &content, const IssueMark &mark, Paper paper,
             const CertificateStyle &style, std::size_t *resultPages)
{
    SheetBuilder sheet(paper, isPreview(content) ? notIssued : "Certificate " + content.number);
    drawHead(sheet, content, mark, style);
    sheet.setOnNewPage([number = content.number, style](SheetBuilder &next) {
        next.textAt(next.left(), next.top() + mm(3),
                    QString("Line certificate %1, continued").arg(number), style.strong());
        next.y = next.top() + mm(8);
    });
    drawJobLine(sheet, content, style);
    drawFacts(sheet, content, style);
    drawCriteria(sheet, content, style);
    drawRuns(sheet, content, style);
    drawInstruments(sheet, content, style);
    sheet.setOnNewPage({});
    *resultPages = sheet.pageCount();
    sheet.newPage();
    drawSettings(sheet, {content.kind, content.variantName, content.settings, content.terminals},
                 style);
    Signatures signatures = content.signatures;
    signatures.insert(signatures.end(), mark.later.begin(), mark.later.end());
    drawSignatures(sheet, signatures, style);
    if (!isPreview(content))
        drawHowToCheck(sheet, content, style);
    return sheet.finish(footText(content, mark), style.foot());
}

} // namespace

Sheet certificateSheet(const CertificateContent &content, const IssueMark &mark, Paper paper)
{
    std::optional<Sheet> roomiest;
    for (const Setting &setting : settings) {
        std::size_t resultPages = 0;
        Sheet sheet = layOut(content, mark, paper, CertificateStyle{setting}, &resultPages);
        if (resultPages == 1)
            return sheet;
        if (!roomiest)
            roomiest = std::move(sheet);
    }
    return *roomiest; // continues on a further page, and then there is no need to squeeze
}

QString certificateQrText(const CertificateContent &content)
{
    return content.number + " sha256:" + content.digest();
}

Result<CertificatePaper> certificatePaper(const CertificateContent &content, const IssueMark &mark,
                                          Paper paper)
{
    if (!fontsAreThere())
        return failure(ErrorCode::BadInput,
                       "no font is installed; the package fonts-dejavu-core has those of the "
                       "certificate",
                       "fonts");
    PdfInfo info{"Certificate " + content.number,
                 QString("Circuit %1, order %2").arg(content.circuit, content.order),
                 mark.issuedAt,
                 "en",
                 {{"record.json", content.record(), "application/json"}}};
    Sheet sheet = certificateSheet(content, mark, paper);
    LOOPWRIGHT_ASSIGN(auto pdf, sheetPdf(sheet, info));
    return CertificatePaper{std::move(sheet), std::move(pdf)};
}

} // namespace loopwright
