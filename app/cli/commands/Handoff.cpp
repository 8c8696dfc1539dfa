#include "app/cli/commands/Handoff.h"

#include "app/actions/Orders.h"
#include "app/cli/Files.h"
#include "app/cli/Layout.h"
#include "app/print/PdfFile.h"
#include "app/print/WorkSheets.h"

namespace loopwright {

namespace {

QJsonObject json(const Handoff &handoff)
{
    QJsonArray readings;
    for (const HandoffReading &reading : handoff.readings)
        readings.append(QJsonObject{{"name", reading.name},
                                    {"value", reading.value},
                                    {"limit", reading.limit},
                                    {"outcome", reading.word()}});
    return {{"order", handoff.order},
            {"circuit", handoff.circuit},
            {"criterion", handoff.criterion},
            {"where", handoff.where},
            {"reason", handoff.reason},
            {"cause", handoff.cause},
            {"meaning", handoff.meaning},
            {"part", handoff.part},
            {"call", handoff.call},
            {"check", QJsonArray::fromStringList(handoff.check)},
            {"next", handoff.next},
            {"readings", readings},
            {"done", QJsonArray::fromStringList(handoff.done)},
            {"also_open", QJsonArray::fromStringList(handoff.alsoOpen)}};
}

QString text(const Handoff &handoff)
{
    LabelledLines lines;
    lines.add("Customer", handoff.customer)
        .add("Contact", handoff.contact)
        .add("Premises", handoff.premises)
        .add("Circuit", handoff.circuit)
        .add("Serving office", handoff.office)
        .add("Pair", handoff.pair)
        .add("Variant", handoff.variant)
        .add("Failed", handoff.whatFailed())
        .add("Reason", handoff.reason)
        .add("Cause", handoff.cause)
        .add("It means", handoff.meaning)
        .add("Whose part", handoff.part)
        .add("Call", handoff.call);
    for (const QString &check : handoff.check)
        lines.add("Check", check);
    lines.add("Next", handoff.next);
    for (const QString &done : handoff.done)
        lines.add("Done already", done);
    for (const QString &open : handoff.alsoOpen)
        lines.add("Also open", open);
    ColumnLayout table({"reading", "value", "limit", "outcome"});
    for (const HandoffReading &reading : handoff.readings)
        table.add({reading.name, reading.value, reading.limit, reading.word()});
    return heading("Order " + handoff.order + " is handed on") + lines.text() +
           (table.isEmpty() ? QString() : "\n" + table.text());
}

class HandOn : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "An order that is not accepted", Given::Always);
        options.text("--out", m_out, "The page as PDF");
        options.word("--paper", m_paper, allWords<Paper>(), "a4 (else) or letter");
    }

    Result<Answer> run(CommandContext &context) override
    {
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(*records, m_number));
        const auto handoff =
            makeHandoff(view.input, view.decision, stepsOf(view, {view.now, {}}), view.office.name);
        if (!handoff)
            return failure(
                ErrorCode::Refused,
                QString("order %1 has nothing to hand on: no criterion is open").arg(m_number));
        if (!m_out.isEmpty())
            LOOPWRIGHT_TRY(print(*handoff, records->now()));
        return Answer::of(json(*handoff), text(*handoff));
    }

private:
    Result<void> print(const Handoff &handoff, const Moment &now) const
    {
        const Sheet sheet = handoffPage(handoff, fromText<Paper>(m_paper).value_or(Paper::A4));
        const auto pdf = sheetPdf(sheet, {sheet.title, {}, now});
        if (!pdf)
            return failure(pdf.error());
        return writeFile(m_out, *pdf);
    }

    QString m_number, m_out, m_paper;
};

} // namespace

std::unique_ptr<Command> makeHandoffCommand()
{
    return std::make_unique<HandOn>();
}

} // namespace loopwright
