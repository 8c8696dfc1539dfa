#pragma once
// What papers are made of, for tests of their painters and of their languages.

#include "app/print/CoverSheet.h"
#include "app/print/WorkSheets.h"
#include "tests/support/Papers.h"

namespace loopwright::papers {

inline const QDate today(2026, 3, 4);

inline DayJob dayJob(int number)
{
    DayJob job;
    job.appointment = "09:00-11:00";
    job.order = QString("A-%1").arg(number);
    job.customer = "Bright Bakery";
    job.premises = QString("%1 Mill Lane").arg(number);
    job.circuit = "C-77";
    job.pair = "17-204";
    job.crew = "two people, bucket truck";
    job.accessNotes = "Ring at the back door.";
    job.remarks = "Bring the long ladder.";
    job.numbers = {"1: 217-555-0143, SPID 21755501430101, TEI automatic",
                   "2: 217-555-0144, SPID 21755501440101, TEI automatic"};
    job.due = today;
    job.next = "Make the safety card.";
    return job;
}

inline CardContent card()
{
    const ServiceOrder order = jobs::order(jobs::briFields());
    CardContent card;
    card.order = order.number;
    card.customer = order.customer;
    card.premises = order.premises;
    card.circuit = order.circuit;
    card.office = "North Hill";
    card.variantName = findVariant(u"ni2")->name;
    card.settings = terminalSettings(order);
    card.terminals = terminalLines(order);
    card.made = *Moment::parse(u"2026-03-04T09:45:00-06:00");
    return card;
}

inline CoverContent cover()
{
    CoverContent content;
    content.customer = "Bright Bakery";
    content.premises = "12 Mill Lane";
    content.visits = {"3 March 2026, 10:00 to 10:05 (UTC-06:00), Kim Carver: no access",
                      "4 March 2026, 08:02 to 09:40 (UTC-06:00), Kim Carver: worked"};
    content.made = *Moment::parse(u"2026-03-04T09:45:00-06:00");
    CoverLine accepted;
    accepted.order = "A-1001";
    accepted.circuit = "C-77";
    accepted.kind = "ISDN basic-rate line";
    accepted.numbers = "217-555-0143, 217-555-0144";
    accepted.outcome = OrderOutcome::Accepted;
    accepted.certificate = "26-K7M4QP-00001-43";
    accepted.code = "4f2a";
    accepted.tested = "4 March 2026";
    accepted.pages = 2;
    CoverLine open;
    open.order = "A-3001";
    open.circuit = "C-91";
    open.kind = "Analog line";
    open.numbers = "217-555-0151";
    open.stage = "Safety";
    open.reason = "Safety card: No safety card was made for this pair.";
    content.lines = {accepted, open};
    return content;
}

/// Terminal 2 does not come up on layer 3, and the job was handed on.
inline QList<QJsonObject> factsOfATerminalThatIsDown()
{
    QList<QJsonObject> facts = jobs::briFacts();
    facts[8] = jobs::fact(9, "layer", 20,
                          {{"layer", 3},
                           {"terminal", 2},
                           {"outcome", "down"},
                           {"cause", 100},
                           {"cause_location", "public_local"}});
    return facts << jobs::fact(
               40, "referred", 60,
               {{"to", "switch desk"}, {"reference", "S-9"}, {"waiting_on", "office"}});
}

} // namespace loopwright::papers
