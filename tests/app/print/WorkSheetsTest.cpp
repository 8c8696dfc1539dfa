#include "app/print/WorkSheets.h"

#include "tests/support/PaperSamples.h"

using namespace loopwright;

using papers::card;
using papers::dayJob;
using papers::today;

class WorkSheetsTest : public QObject
{
    Q_OBJECT

private slots:
    void settingsCardHasEveryNumber()
    {
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const QString text = papers::textOf(layOut(settingsCard(card()), paper));
            VERIFY_IN_ORDER(text, {"Settings for your equipment", "C-77", "A-1001",
                                   "4 March 2026, 09:45 (UTC-06:00)", "National ISDN-2",
                                   "multipoint", "automatic", "217 555 0143", "217 555 0143 01 01",
                                   "key in 2175550143", "key in 21755501430101", "217 555 0144",
                                   "Bright Bakery", "North Hill"});
        }
    }

    void dayListHoldsEveryJobWhole()
    {
        std::vector<DayJob> list;
        for (int i = 100; i < 112; ++i)
            list.push_back(dayJob(i));
        const Sheet sheet = layOut(dayList("Pat Example", today, list), Paper::Letter);
        QVERIFY2(sheet.pages.size() <= 3, "one installer's day fits a few pages");
        const QString text = papers::textOf(sheet);
        QStringList pieces{"Jobs of 4 March 2026", "Pat Example: 12 lines to visit, 0 orders",
                           "prove the meter"};
        for (const DayJob &job : list)
            pieces << job.premises << "Ring at the back door."
                   << "Order " + job.order << "due today"
                   << "SPID 21755501430101"
                   << "two people, bucket truck"
                   << "Bring the long ladder."
                   << "Make the safety card.";
        VERIFY_IN_ORDER(text, pieces);
    }

    /// Lines at one place share its head; what is late, and a hazard, are marked.
    void linesAtOnePlaceStandTogether()
    {
        std::vector<DayJob> list{dayJob(100), dayJob(101), dayJob(102)};
        list[1].premises = list[0].premises;
        list[1].due = today.addDays(-3);
        list[2].hazards = {"HAZARD open on this pair: 72 V AC, tip to ground"};
        list[2].due = today.addDays(2);
        const QString text = papers::textOf(layOut(dayList({}, today, list), Paper::A4));
        QCOMPARE(text.count("100 Mill Lane"), 1);
        QCOMPARE(text.count("Ring at the back door."), 2);
        VERIFY_IN_ORDER(text, {"All installers: 3 lines to visit", "2 lines", "Order A-100",
                               "due today", "Order A-101", "LATE, due 1 March 2026", "Order A-102",
                               "due 6 March 2026", "HAZARD open on this pair"});
    }

    void whatNeedsOnlyPaperStandsApart()
    {
        std::vector<DayJob> list{dayJob(100), dayJob(101)};
        list[0].needsVisit = false;
        list[0].next = "Issue the certificate.";
        const QString text = papers::textOf(layOut(dayList("Pat", today, list), Paper::A4));
        VERIFY_IN_ORDER(text, {"Pat: 1 line to visit, 1 order that need", "A-101",
                               "Only paper is left", "A-100", "Issue the certificate."});
        QVERIFY(!text.contains("100 Mill Lane"));
    }

    void anEmptyDay()
    {
        const QString text = papers::textOf(layOut(dayList({}, today, {}), Paper::A4));
        QVERIFY(text.contains("No job is due on this day."));
        QVERIFY(text.contains("0 lines"));
    }

    void leaveBehindSlip()
    {
        LeaveBehindSlip slip;
        slip.order = "A-1001";
        slip.customer = "Bright Bakery";
        slip.premises = "12 Mill Lane";
        slip.circuit = "C-77";
        slip.visited = "4 March 2026, by Pat Example";
        slip.missing = {"A call did not go through."};
        slip.next = {"No day is fixed yet for the next visit."};
        slip.done = {"The pair was checked for dangerous voltage."};
        slip.call = {"217-555-0171", "every day", "order A-1001"};
        slip.issuer = certificates::issuer();
        QVERIFY(papers::textOf(layOut(leaveBehindDocument(slip), Paper::A4))
                    .contains("Your line is not ready yet"));
        slip.symptom = "no dial tone";
        const QString text = papers::textOf(layOut(leaveBehindDocument(slip), Paper::A4));
        VERIFY_IN_ORDER(
            text, {"Your line is not repaired yet", "Bright Bakery", "12 Mill Lane", "no dial tone",
                   "4 March 2026, by Pat Example", "What is missing", "A call did not go through.",
                   "What happens next", "No day is fixed yet", "Whom to call",
                   "Call 217-555-0171 (every day), and name order A-1001.", "What was done",
                   "The pair was checked", "Prairie Telephone", "This is no certificate."});
    }

    void closeOutSlip()
    {
        CloseOutSlip slip;
        slip.order = "A-1001";
        slip.completionNumber = "4821 7730 44";
        slip.outcome = "Accepted";
        slip.tested = "4 March 2026, by Pat Example";
        slip.office = "North Hill";
        slip.desk = "217-555-0170";
        slip.readings = {
            {"Loop", {"DC resistance", "612 ohm", "at most 1300 ohm", "TS-4", "as read"}},
            {"Loop", {"Loss at 40 kHz", "28.4 dB", "at most 42 dB", "TS-4", "as read"}}};
        slip.delivery = {{"Number 1", "217-555-0143", "answered when it was called"}};
        const Sheet sheet = layOut(closeOutDocument(slip), Paper::A4);
        QCOMPARE(sheet.pages.size(), 1u);
        VERIFY_IN_ORDER(papers::textOf(sheet),
                        {"Close-out", "Completion number", "4821 7730 44", "A-1001", "Accepted",
                         "217-555-0143 answered when it was called", "Loop DC resistance 612 ohm",
                         "Loss at 40 kHz 28.4 dB", "Spoken to", "Their reference"});
    }

    /// Names as long as an order may have them: nothing is cut.
    void longNames()
    {
        std::vector<DayJob> list{dayJob(100)};
        list[0].customer = QString("Cooperative of Bookbinders ").repeated(18).trimmed();
        list[0].remarks = QString("Ladder ").repeated(70).trimmed();
        const QString text = papers::textOf(layOut(dayList({}, today, list), Paper::Letter));
        QCOMPARE(text.count("Bookbinders"), 18);
        QCOMPARE(text.count("Ladder"), 70);
        CardContent long_ = card();
        long_.customer = list[0].customer;
        QCOMPARE(papers::textOf(layOut(settingsCard(long_), Paper::A4)).count("Bookbinders"), 18);
    }
};

QTEST_MAIN(WorkSheetsTest)
#include "WorkSheetsTest.moc"
