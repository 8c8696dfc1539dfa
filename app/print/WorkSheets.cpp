#include "app/print/WorkSheets.h"

#include "app/print/JobLinePainter.h"
#include "app/print/SettingsPage.h"
#include "core/identifiers/ProtocolVariant.h"

namespace loopwright {

namespace {

/// Title, and what it is about, on the first page; the title alone on further ones.
void drawTitle(SheetBuilder &sheet, const QString &title, const QString &subtitle,
               const CertificateStyle &style)
{
    sheet.textAt(sheet.left(), sheet.top() + mm(7), title, style.title());
    sheet.y = sheet.top() + mm(10.5);
    sheet.paragraph(subtitle, style.body());
    sheet.y += mm(4);
    sheet.setOnNewPage([title, style](SheetBuilder &next) {
        next.textAt(next.left(), next.top() + mm(3), title, style.strong());
        next.y = next.top() + mm(7);
    });
}

/// A label with its text, below a hairline; nothing for an empty text.
void drawLine(SheetBuilder &sheet, const QString &name, const QString &value, const TextStyle &text,
              const CertificateStyle &style)
{
    if (value.isEmpty())
        return;
    const double indent = mm(36);
    const double width = sheet.width() - indent;
    sheet.ensure(SheetBuilder::paragraphHeight(value, text, width) + mm(2.4));
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
    sheet.y += mm(1.3);
    sheet.row({{sheet.left(), indent - mm(3), name, style.label()},
               {sheet.left() + indent, width, value, text}});
    sheet.y += mm(1.1);
}

void drawHeading(SheetBuilder &sheet, const QString &text, const CertificateStyle &style)
{
    sheet.y += mm(4);
    sheet.ensure(mm(14));
    sheet.paragraph(text, style.heading());
    sheet.y += mm(1.2);
}

QString joined(const QStringList &parts, const QString &separator = ", ")
{
    QStringList present;
    for (const QString &part : parts)
        if (!part.isEmpty())
            present << part;
    return present.join(separator);
}

constexpr double jobLineHeight = mm(11);

double dayJobHeight(const SheetBuilder &sheet, const DayJob &job, const CertificateStyle &style)
{
    double height = mm(11) + jobLineHeight;
    const double width = sheet.width() - mm(36);
    for (const QString &text :
         {job.premises, job.contact, job.circuit, job.service, job.accessNotes, job.remarks})
        if (!text.isEmpty())
            height += SheetBuilder::paragraphHeight(text, style.body(), width) + mm(2.4);
    return height + SheetBuilder::paragraphHeight(job.next, style.strong(), sheet.width());
}

void drawDayJob(SheetBuilder &sheet, const DayJob &job, const CertificateStyle &style)
{
    sheet.ensure(dayJobHeight(sheet, job, style));
    sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.text, 9);
    sheet.y += mm(1.6);
    const double when = mm(36);
    sheet.row({{sheet.left(),
                when - mm(3),
                job.appointment.isEmpty() ? "any time" : job.appointment,
                {Face::Strong, 108, style.ink.accent}},
               {sheet.left() + when,
                sheet.width() - when - mm(34),
                job.customer,
                {Face::Strong, 108, style.ink.text}},
               {sheet.right() - mm(34), mm(34), job.order, style.digits(90), Align::Right}});
    sheet.y += mm(1.4);
    drawLine(sheet, "Premises", joined({job.premises, job.terminalLocation}, "; "), style.body(),
             style);
    drawLine(sheet, "Contact", job.contact, style.body(), style);
    drawLine(sheet, "Circuit", joined({job.circuit, job.office, job.pair}), style.body(), style);
    drawLine(sheet, "Service", job.service, style.body(), style);
    drawLine(sheet, "Access", job.accessNotes, style.body(), style);
    drawLine(sheet, "Remarks", job.remarks, style.body(), style);
    sheet.y += mm(2.5);
    const QRectF rect(sheet.left(), sheet.y, sheet.width(), jobLineHeight);
    sheet.draw([rect, line = job.line, ink = paperStyle(64)](QPainter &painter) {
        paintJobLine(painter, rect, line, ink);
    });
    sheet.y += jobLineHeight;
    sheet.paragraph(job.next, style.strong());
    sheet.y += mm(6);
}

void drawReadings(SheetBuilder &sheet, const Handoff &handoff, const CertificateStyle &style)
{
    if (handoff.readings.empty())
        return;
    drawHeading(sheet, "Readings", style);
    const double measured = sheet.left() + sheet.width() * 0.24;
    const double limit = sheet.left() + sheet.width() * 0.56;
    const double word = sheet.left() + sheet.width() * 0.88;
    for (const HandoffReading &reading : handoff.readings) {
        const TextStyle text =
            reading.outcome == CriterionOutcome::Met ? style.body() : style.strong();
        const std::vector<Cell> cells{
            {sheet.left(), measured - sheet.left() - mm(3), reading.name, text},
            {measured, limit - measured - mm(3), reading.value, text},
            {limit, word - limit - mm(3), reading.limit, style.body()},
            {word, sheet.right() - word, reading.word(), text, Align::Right}};
        sheet.ensure(SheetBuilder::rowHeight(cells) + mm(2));
        sheet.rule(sheet.left(), sheet.right(), sheet.y, style.ink.line);
        sheet.y += mm(1);
        sheet.row(cells);
        sheet.y += mm(1);
    }
}

void drawList(SheetBuilder &sheet, const QString &heading, const QStringList &lines,
              const CertificateStyle &style)
{
    if (lines.isEmpty())
        return;
    drawHeading(sheet, heading, style);
    for (const QString &line : lines) {
        sheet.ensure(SheetBuilder::paragraphHeight(line, style.body(), sheet.width()) + mm(1));
        sheet.paragraph(line, style.body());
        sheet.y += mm(1);
    }
}

} // namespace

Sheet settingsCard(const ServiceOrder &order, const QString &officeName, Paper paper)
{
    const CertificateStyle style;
    SheetBuilder sheet(paper, "Settings " + order.circuit);
    const ProtocolVariant *variant = findVariant(order.variant);
    drawSettings(sheet,
                 {order.kind, variant ? variant->name : order.variant, terminalSettings(order),
                  terminalLines(order)},
                 style);
    sheet.y += mm(8);
    drawLine(sheet, "Customer", order.customer, style.body(), style);
    drawLine(sheet, "Premises", joined({order.premises, order.terminalLocation}, "; "),
             style.body(), style);
    drawLine(sheet, "Circuit", order.circuit, style.body(), style);
    drawLine(sheet, "Serving office", officeName, style.body(), style);
    drawLine(sheet, "Service", inOneLine(serviceLines(order)), style.body(), style);
    return sheet.finish("Keep this card with the terminal equipment.", style.foot());
}

Sheet dayList(const QString &installer, QDate day, const std::vector<DayJob> &jobs, Paper paper)
{
    const CertificateStyle style;
    const QString title = "Jobs of " + longDate(day);
    SheetBuilder sheet(paper, title);
    drawTitle(sheet, title,
              QString("%1, %2 job%3")
                  .arg(installer.isEmpty() ? QString("All installers") : installer,
                       QString::number(jobs.size()), jobs.size() == 1 ? QString() : QString("s")),
              style);
    for (const DayJob &job : jobs)
        drawDayJob(sheet, job, style);
    if (jobs.empty())
        sheet.paragraph("No job is due on this day.", style.body());
    return sheet.finish("For installers; not for customers.", style.foot());
}

Sheet handoffPage(const Handoff &handoff, Paper paper)
{
    const CertificateStyle style;
    SheetBuilder sheet(paper, "Handoff " + handoff.order);
    drawTitle(sheet, "Handoff",
              QString("Order %1 is not accepted. To read aloud, or to hand on.").arg(handoff.order),
              style);
    const TextStyle large{Face::Strong, 108, style.ink.text};
    drawLine(sheet, "What failed", handoff.whatFailed(), large, style);
    drawLine(sheet, "Cause", handoff.cause, large, style);
    drawLine(sheet, "Whose part", handoff.part, large, style);
    drawLine(sheet, "Call", handoff.call, large, style);
    drawLine(sheet, "Reason", handoff.reason, style.body(), style);
    if (!handoff.reason.contains(handoff.meaning))
        drawLine(sheet, "What it means", handoff.meaning, style.body(), style);
    for (const QString &check : handoff.check)
        drawLine(sheet, check == handoff.check.front() ? "Check first" : "Then", check,
                 style.body(), style);
    drawLine(sheet, "Next", handoff.next, style.body(), style);
    drawHeading(sheet, "The line", style);
    drawLine(sheet, "Circuit", joined({handoff.circuit, handoff.pair}), style.body(), style);
    drawLine(sheet, "Serving office", handoff.office, style.body(), style);
    drawLine(sheet, "Protocol variant", handoff.variant, style.body(), style);
    drawLine(sheet, "Customer", joined({handoff.customer, handoff.contact}), style.body(), style);
    drawLine(sheet, "Premises", handoff.premises, style.body(), style);
    drawReadings(sheet, handoff, style);
    drawList(sheet, "Done so far", handoff.done, style);
    drawList(sheet, "Also open", handoff.alsoOpen, style);
    const QString last =
        handoff.lastFact
            ? QString("Last entry %1%2")
                  .arg(handoff.lastFact->text().left(16).replace(u'T', u' '),
                       handoff.recordedBy.isEmpty() ? QString() : " by " + handoff.recordedBy)
            : QString("Nothing was recorded yet");
    return sheet.finish(last, style.foot());
}

} // namespace loopwright
