#include "app/actions/DayList.h"

#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "tests/support/Papers.h"
#include "tests/support/Premises.h"

using namespace loopwright;
using namespace loopwright::jobs;

class DayListTest : public QObject
{
    Q_OBJECT

private slots:
    void whatNeedsAVisitAndWhatOnlyPaper()
    {
        auto records = office();
        OrderFields other = thirdLine();
        other["premises"] = "3 Quay Street";
        other["appointment"] = "08:00-09:00";
        OrderFields correction = briFields();
        correction["order_number"] = "A-4001";
        correction["order_type"] = "disconnect";
        correction["circuit_number"] = "C-95";
        correction["pair"] = "17-299";
        for (const char *column : {"dn_1", "dn_2", "spid_1", "spid_2", "tei_1", "tei_2",
                                   "dn_1_services", "dn_2_services"})
            correction[column] = "";
        QVERIFY(importOrders(*records, csv({briFields(), secondLine(), other, correction}),
                             {"orders.csv"}));
        take(*records, briFields(), briFacts()); // accepted: only its certificate is left
        const auto jobs = jobsOfDay(*records, {}, QDate(2026, 3, 9));
        QVERIFY(jobs);
        QStringList visits, paper;
        for (const DayJob &job : *jobs)
            (job.needsVisit ? visits : paper) << job.order;
        QCOMPARE(visits, (QStringList{"A-3001", "A-2001"})); // by appointment
        paper.sort();
        QCOMPARE(paper, (QStringList{"A-1001", "A-4001"}));
    }

    void numbersAndHazards()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        take(*records, briFields(), {jobs::safety(1, 5, 214)});
        const auto sheet = daySheet(*records, {}, QDate(2026, 3, 7), Paper::A4);
        QVERIFY(sheet);
        VERIFY_IN_ORDER(papers::textOf(sheet->sheet),
                        {"12 Mill Lane", "Order A-1001", "LATE, due 6 March 2026",
                         "HAZARD open on this pair", "pair 17-204",
                         "1: 217-555-0143, SPID 21755501430101, TEI automatic, voice, data",
                         "2: 217-555-0144", "Next"});
    }
};

QTEST_MAIN(DayListTest)
#include "DayListTest.moc"
