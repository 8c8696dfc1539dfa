#include "app/print/WorkSheets.h"

#include "app/print/HandoffDocument.h"
#include "app/print/SettingsDocument.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

using namespace doc;

namespace {

QString joined(QStringList parts, const QString &separator = ", ")
{
    parts.removeAll(QString());
    return parts.join(separator);
}

QString dueText(const DayJob &job, QDate day)
{
    if (!job.due.isValid())
        return {};
    if (job.due < day)
        return "LATE, due " + paperDay(job.due);
    return job.due == day ? QString("due today") : "due " + paperDay(job.due);
}

bool isSamePlace(const DayJob &one, const DayJob &other)
{
    return one.premises == other.premises && one.appointment == other.appointment &&
           one.customer == other.customer;
}

/// What is said once of all lines at one place.
Blocks placeBlocks(const DayJob &job, std::size_t lines)
{
    return {Gap{mm(1)}, Rule{},
            Table{{0.2, 0.65, 0.15},
                  {},
                  {{{{job.appointment.isEmpty() ? "any time" : job.appointment, Tone::Large},
                     {joined({job.premises, job.customer}, "  ·  "), Tone::Large},
                     {lines == 1 ? QString() : QString("%1 lines").arg(lines), Tone::Strong,
                      Align::Right}},
                    {},
                    false}},
                  mm(0.6)},
            Facts{{{"Contact", job.contact}, {"Access", job.accessNotes}}, 1, mm(24)}};
}

Blocks lineBlocks(const DayJob &job, QDate day)
{
    const bool late = job.due.isValid() && job.due < day;
    Blocks blocks{
        Table{{0.5, 0.5},
              {},
              {{{{QString("Order %1, circuit %2").arg(job.order, job.circuit), Tone::Strong},
                 {dueText(job, day), late ? Tone::Bad : Tone::Strong, Align::Right}},
                {},
                false}},
              mm(0.4)}};
    for (const QString &hazard : job.hazards)
        blocks.push_back(Paragraph{hazard, Tone::Bad});
    blocks.push_back(Facts{{{"Line", joined({job.service, job.office, "pair " + job.pair})},
                            {"Numbers", job.numbers.join('\n')},
                            {"Crew", job.crew},
                            {"Place", job.terminalLocation},
                            {"Trouble", job.trouble},
                            {"Remarks", job.remarks},
                            {"Next", job.next}},
                           1,
                           mm(24),
                           false,
                           Tone::Small});
    blocks.push_back(Gap{mm(1.2)});
    return blocks;
}

void addVisits(Document &document, const std::vector<DayJob> &jobs, QDate day)
{
    for (std::size_t i = 0; i < jobs.size();) {
        std::size_t end = i + 1;
        while (end < jobs.size() && isSamePlace(jobs[i], jobs[end]))
            ++end;
        for (std::size_t k = i; k < end; ++k) {
            Together together;
            if (k == i)
                together.inside = placeBlocks(jobs[i], end - i);
            append(together.inside, lineBlocks(jobs[k], day));
            document.blocks.push_back(std::move(together));
        }
        i = end;
    }
}

QString countedText(qsizetype count, const char *one, const char *many)
{
    return QString("%1 %2").arg(count).arg(QLatin1StringView(count == 1 ? one : many));
}

Document emptySlip(const QString &title, const QString &foot)
{
    Document document;
    document.title = title;
    document.continued = title + ", continued";
    document.foot = foot;
    document.end = "End of slip";
    return document;
}

Blocks issuerBlocks(const Issuer &issuer)
{
    if (issuer.name.isEmpty())
        return {};
    return {Paragraph{joined({issuer.name, issuer.address, issuer.telephone}), Tone::Muted}};
}

} // namespace

Document settingsCard(const CardContent &card)
{
    Document document;
    document.typed = {card.circuit, card.order, card.customer, card.premises, card.office};
    document.title = "Settings " + card.circuit;
    document.continued = "Settings for your equipment, continued";
    document.foot = "Keep this card with the terminal equipment.";
    document.end = "End of card";
    document.blocks = settingsBlocks(
        {card.kind,
         card.variantName,
         card.settings,
         card.terminals,
         {{"Circuit", card.circuit},
          {"Order", card.order},
          {"Date", paperTime(card.made)},
          {"Issue", card.certificate.isEmpty() ? QString("card, no certificate")
                                               : "card, beside certificate " + card.certificate}}});
    append(document.blocks, {Gap{mm(4)}, Facts{{{"Customer", card.customer},
                                                {"Premises", card.premises},
                                                {"Serving office", card.office},
                                                {"Service", card.service}},
                                               1,
                                               mm(40),
                                               true}});
    return document;
}

Document dayList(const QString &installer, QDate day, const std::vector<DayJob> &jobs,
                 const QString &log)
{
    std::vector<DayJob> visits, paper;
    for (const DayJob &job : jobs)
        (job.needsVisit ? visits : paper).push_back(job);
    Document document;
    document.typed << installer;
    for (const DayJob &job : jobs)
        document.typed << job.customer << job.premises << job.contact << job.accessNotes << job.crew
                       << job.terminalLocation << job.trouble << job.remarks << job.office
                       << job.pair;
    document.title = "Jobs of " + paperDay(day);
    document.continued = document.title + ", continued";
    document.foot = "For installers; not for customers.";
    document.end = "End of list";
    Blocks &blocks = document.blocks;
    append(
        blocks,
        {Paragraph{document.title, Tone::Title, mm(1)},
         Paragraph{QString("%1: %2 to visit, %3 only paper.")
                       .arg(installer.isEmpty() ? QString("All installers") : installer,
                            countedText(qsizetype(visits.size()), "line", "lines"),
                            countedText(qsizetype(paper.size()), "order that needs",
                                        "orders that need"))},
         Paragraph{"At each pair: prove the meter, measure to ground and across before you touch "
                   "it, and treat it as live whatever it read. Thunder near: stop.",
                   Tone::Strong, mm(2)}});
    if (jobs.empty())
        blocks.push_back(Paragraph{"No job is due on this day."});
    addVisits(document, visits, day);
    if (!paper.empty()) {
        Table table{{0.15, 0.29, 0.16, 0.4}, {}, {}, mm(0.7)};
        for (const DayJob &job : paper)
            table.rows.push_back({{{job.order, Tone::Small},
                                   {job.customer, Tone::Small},
                                   {dueText(job, day), Tone::Small},
                                   {job.next, Tone::Small}}});
        append(blocks, section("Only paper is left", {std::move(table)}));
    }
    if (!log.isEmpty())
        append(blocks, {Gap{mm(2)}, Paragraph{log, Tone::Muted}});
    spellMissingCharacters(document);
    return document;
}

Document leaveBehindDocument(const LeaveBehindSlip &slip)
{
    Document document = emptySlip("Your line, order " + slip.order, "This is no certificate.");
    document.typed = {slip.customer, slip.premises, slip.circuit, slip.order, slip.symptom};
    Blocks &blocks = document.blocks;
    append(blocks, {Paragraph{slip.symptom.isEmpty() ? "Your line is not ready yet"
                                                     : "Your line is not repaired yet",
                              Tone::Title, mm(2)},
                    Facts{{{"Customer", slip.customer},
                           {"Premises", slip.premises},
                           {"Circuit", slip.circuit},
                           {"Order", slip.order},
                           {"You told us", slip.symptom},
                           {"We were there", slip.visited}},
                          1,
                          mm(30)}});
    const QString call =
        slip.call.telephone.isEmpty()
            ? QString("Call whoever supplies your line, and name %1.").arg(slip.call.name)
            : QString("Call %1%2, and name %3.")
                  .arg(slip.call.telephone,
                       slip.call.hours.isEmpty() ? QString() : " (" + slip.call.hours + ")",
                       slip.call.name);
    append(blocks, section("What is missing", paragraphs(slip.missing)));
    append(blocks, section("Dangerous voltage", paragraphs(slip.hazards)));
    append(blocks, section("What happens next", paragraphs(slip.next)));
    append(blocks, section("Whom to call", {Paragraph{call, Tone::Large}}));
    append(blocks, section("What was done", paragraphs(slip.done)));
    append(blocks, {Gap{mm(3)}});
    append(blocks, issuerBlocks(slip.issuer));
    return document;
}

Document closeOutDocument(const CloseOutSlip &slip)
{
    Document document =
        emptySlip("Close-out, order " + slip.order, "For the desk; not for customers.");
    document.typed = {slip.customer, slip.premises, slip.circuit, slip.order, slip.office};
    Blocks &blocks = document.blocks;
    append(blocks, {Paragraph{"Close-out", Tone::Title, mm(2)},
                    Paragraph{"Completion number, to read back to the desk", Tone::Muted, mm(0.5)},
                    Paragraph{slip.completionNumber, Tone::BigDigits, mm(2)},
                    Facts{{{"Order", slip.order},
                           {"Result", slip.outcome},
                           {"Circuit", slip.circuit},
                           {"Serving office", joined({slip.office, slip.desk})},
                           {"Customer", slip.customer},
                           {"Premises", slip.premises},
                           {"Tested", slip.tested}},
                          2}});
    append(blocks, section("Accepted by exception", paragraphs(slip.exceptions)));
    append(blocks, section("Dangerous voltage", paragraphs(slip.hazards)));
    Table numbers{{0.2, 0.4, 0.4},
                  {{"", Tone::Muted}, {"Ordered", Tone::Muted}, {"As tested", Tone::Muted}},
                  {},
                  mm(0.8)};
    for (const CertificateDelivery &row : slip.delivery)
        numbers.rows.push_back({{{row.name, Tone::Muted}, {row.ordered}, {row.delivered}}});
    append(blocks, section("Numbers and line, as tested", {std::move(numbers)}));
    Table readings{{0.2, 0.24, 0.3, 0.26},
                   {{"Point", Tone::Muted},
                    {"Figure", Tone::Muted},
                    {"Read", Tone::Muted},
                    {"Limit", Tone::Muted}},
                   {},
                   mm(0.5)};
    QString before;
    for (const auto &[name, reading] : slip.readings) {
        readings.rows.push_back({{{name == before ? QString() : name, Tone::Small},
                                  {reading.what, Tone::Small},
                                  {reading.value, Tone::Small},
                                  {reading.limit, Tone::Small}},
                                 {},
                                 name != before});
        before = name;
    }
    append(blocks, section("Readings", {std::move(readings)}));
    append(blocks, section("At the desk", {FillIn{"Spoken to"}, FillIn{"Their reference"},
                                           FillIn{"Date and time"}}));
    return document;
}

} // namespace loopwright
