#include "app/cli/commands/Handoff.h"

#include "app/actions/HandOn.h"
#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/cli/Layout.h"
#include "app/cli/PaperOptions.h"
#include "app/print/HandoffDocument.h"
#include "core/base/PaperTime.h"

namespace loopwright {

namespace {

QJsonValue json(const std::optional<HandoffReferral> &referred)
{
    if (!referred)
        return {};
    return QJsonObject{{"to", referred->to},
                       {"reference", referred->reference},
                       {"waiting_on", referred->waitingOn},
                       {"by", referred->by},
                       {"at", referred->at.text()}};
}

QJsonObject json(const Handoff &handoff)
{
    QJsonArray readings;
    for (const HandoffReading &reading : handoff.readings)
        readings.append(QJsonObject{{"name", reading.name},
                                    {"value", reading.value},
                                    {"limit", reading.limit},
                                    {"outcome", reading.word()}});
    QJsonArray hazards, layers;
    for (const HandoffHazard &hazard : handoff.hazards)
        hazards.append(QJsonObject{{"volts", QJsonArray::fromStringList(hazard.volts)},
                                   {"place", hazard.place},
                                   {"wet", hazard.wet},
                                   {"at", hazard.at.text()},
                                   {"state", hazard.state},
                                   {"told", json(hazard.told)}});
    for (const HandoffLayer &layer : handoff.layers)
        layers.append(QJsonObject{{"where", layer.where},
                                  {"state", layer.state},
                                  {"cause", layer.cause},
                                  {"at", layer.at.text()}});
    return {{"order", handoff.order},
            {"hazards", hazards},
            {"layers", layers},
            {"referred", json(handoff.referred)},
            {"cause_location", handoff.causeWhere},
            {"telephone", handoff.telephone},
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
            {"also_failed", QJsonArray::fromStringList(handoff.alsoFailed)},
            {"closed_hazards", QJsonArray::fromStringList(handoff.closedHazards)},
            {"to_mend", QJsonArray::fromStringList(handoff.toMend)},
            {"not_tried", QJsonArray::fromStringList(handoff.notTried)}};
}

QString text(const Handoff &handoff)
{
    LabelledLines lines;
    for (const HandoffHazard &hazard : handoff.hazards)
        lines.add("HAZARD", hazard.volts.join("; ") + ", " + paperTime(hazard.at));
    lines.add("Customer", handoff.customer)
        .add("Contact", handoff.contact)
        .add("Premises", handoff.premises)
        .add("Circuit", handoff.circuit)
        .add("Serving office", handoff.office)
        .add("Pair", handoff.pair)
        .add("Variant", handoff.variant)
        .add(handoff.isMissing ? "Missing" : "Failed", handoff.whatFailed())
        .add("Reason", handoff.reason)
        .add("Cause", handoff.cause)
        .add("Cause came", handoff.causeWhere)
        .add("It means", handoff.meaning)
        .add("Whose part", handoff.part)
        .add("Call", handoff.call)
        .add("Telephone", handoff.telephone);
    for (const QString &check : handoff.check)
        lines.add("Check", check);
    lines.add("Next", handoff.next);
    for (const QString &failed : handoff.alsoFailed)
        lines.add("Failed too", failed);
    for (const QString &done : handoff.done)
        lines.add("Done already", done);
    for (const QString &closed : handoff.closedHazards)
        lines.add("Hazard, closed", closed);
    for (const QString &remark : handoff.toMend)
        lines.add("To be mended", remark);
    for (const QString &open : handoff.notTried)
        lines.add("Not tried", open);
    if (handoff.referred)
        lines.add("Handed on to", handoff.referred->to)
            .add("Reference", handoff.referred->reference)
            .add("Waiting on", handoff.referred->waitingOn);
    ColumnLayout table({"reading", "value", "limit", "outcome"});
    for (const HandoffReading &reading : handoff.readings)
        table.add({reading.name, reading.value, reading.limit, reading.word()});
    const QString head = handoff.referred ? QString("Order %1 is handed on").arg(handoff.order)
                                          : QString("Handoff of order %1").arg(handoff.order);
    return heading(head) + lines.text() + (table.isEmpty() ? QString() : "\n" + table.text());
}

class HandOn : public Command
{
public:
    void declare(Options &options) override
    {
        options.text("number", m_number, "The order", Given::Always);
        options.text("--out", m_out, "The page as PDF", Given::NeverEmpty);
        m_paper.declare(options);
        options.text("--to", m_to, "Records that it is handed on, and to whom", Given::NeverEmpty);
        options.text("--reference", m_reference, "With --to: the number that they gave it",
                     Given::NeverEmpty);
        options.word("--waiting-on", m_waitingOn, allWords<WaitingOn>(),
                     "With --to: what the order waits for");
    }

    Result<Answer> run(CommandContext &context) override
    {
        context.setReadsOnly(m_to.isEmpty());
        LOOPWRIGHT_ASSIGN(const auto records, context.records());
        if (m_to.isEmpty() && !(m_reference.isEmpty() && m_waitingOn.isEmpty()))
            return failure(ErrorCode::Usage, "stands with --to",
                           m_reference.isEmpty() ? "--waiting-on" : "--reference");
        LOOPWRIGHT_TRY(
            checkOut(m_out, FileKind::Pdf)); // before a record stands whose page cannot be made
        if (!m_to.isEmpty()) {
            ReferredFact referred{m_to, {}, fromText<WaitingOn>(m_waitingOn)};
            if (!m_reference.isEmpty())
                referred.reference = m_reference;
            LOOPWRIGHT_TRY(refer(*records, m_number, referred));
        }
        LOOPWRIGHT_ASSIGN(const auto handoff, handoffOf(*records, m_number));
        if (const auto printed = print(handoff, records->now()); !printed)
            return failure(printed.error().code,
                           m_to.isEmpty() ? printed.error().message
                                          : "the referral is recorded and stands, and only its "
                                            "page is missing: repeat the command; " +
                                                printed.error().message,
                           printed.error().place);
        return Answer::of(json(handoff), text(handoff));
    }

private:
    Result<void> print(const Handoff &handoff, const Moment &now) const
    {
        if (m_out.isEmpty())
            return {};
        const PaperLanguageHere speaking = m_paper.speaking();
        const Sheet sheet = handoffPage(handoff, m_paper.paper());
        return writeSheet(sheet, m_out, now);
    }

    QString m_to, m_reference, m_waitingOn;
    QString m_number, m_out;
    PaperOptions m_paper;
};

} // namespace

std::unique_ptr<Command> makeHandoffCommand()
{
    return std::make_unique<HandOn>();
}

} // namespace loopwright
