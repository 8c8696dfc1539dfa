#include "app/actions/DayList.h"

#include "app/actions/Evidence.h"
#include "app/actions/HandOn.h"
#include "app/actions/Orders.h"
#include "app/actions/SheetFile.h"
#include "db/EventStore.h"
#include "tests/support/Papers.h"
#include "tests/support/Premises.h"

#include <QDir>
#include <QTemporaryDir>

#include <algorithm>

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
        other["crew"] = "bucket truck";
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
        QCOMPARE(std::ranges::find(*jobs, "A-3001", &DayJob::order)->crew, "bucket truck");
        paper.sort();
        QCOMPARE(paper, (QStringList{"A-1001", "A-4001"}));
    }

    void byHouseNumberAndWhatWaitsLast()
    {
        auto records = office();
        QList<OrderFields> orders;
        const char *places[] = {"12 Quay Street", "3 Quay Street", "3 Alder Road", "Quay Street 7",
                                "1 Alder Road"};
        for (int i = 0; i < 5; ++i) {
            OrderFields fields = analogFields();
            fields["order_number"] = QString("A-%1").arg(i + 1);
            fields["circuit_number"] = QString("C-%1").arg(i + 1);
            fields["pair"] = QString("18-%1").arg(i + 1);
            fields["dn_1"] = QString("217-555-010%1").arg(i);
            fields["premises"] = places[i];
            orders << fields;
        }
        QVERIFY(importOrders(*records, csv(orders), {"orders.csv"}));
        records->actAs("K7");
        QVERIFY(refer(*records, "A-3", {"cable desk", "T-44", WaitingOn::Plant}));
        const auto jobs = jobsOfDay(*records, {}, QDate(2026, 3, 9));
        QVERIFY(jobs);
        QStringList numbers;
        for (const DayJob &job : *jobs)
            numbers << job.order;
        QCOMPARE(numbers, (QStringList{"A-5", "A-2", "A-4", "A-1", "A-3"}));
        QVERIFY2(
            jobs->back().next.startsWith("WAITS on plant. Handed on to cable desk, reference T-44"),
            qPrintable(jobs->back().next));
    }

    /// Not every hazard at the premises is on the pair of the line.
    void saysOnWhichPairAHazardIs()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields(), secondLine()}), {"orders.csv"}));
        take(*records, briFields(), {safety(1, 5, 72)});
        const auto jobs = jobsOfDay(*records, {}, QDate(2026, 3, 9));
        QVERIFY(jobs);
        QCOMPARE(jobs->size(), std::size_t(2));
        for (const DayJob &job : *jobs) {
            QCOMPARE(job.hazards.size(), 1);
            QVERIFY2(job.hazards.front().contains("72 V AC, tip to ground"),
                     qPrintable(job.hazards.front()));
            QCOMPARE(job.hazards.front().startsWith("HAZARD open on this pair: "),
                     job.order == u"A-1001");
        }
        const auto other = std::ranges::find(*jobs, QString("A-2001"), &DayJob::order);
        QVERIFY(other != jobs->end());
        QVERIFY2(other->hazards.front().startsWith("HAZARD open on ") &&
                     other->hazards.front().contains("at these premises (order A-1001)"),
                 qPrintable(other->hazards.front()));
    }

    /// An instrument that was out of its calibration is mended by reading again.
    void measuringAgainNeedsAVisit()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        QList<QJsonObject> facts = briFacts();
        for (QJsonObject &fact : facts)
            fact["instrument"] = "TS-9";
        take(*records, briFields(), facts);
        const auto jobs = jobsOfDay(*records, {}, QDate(2026, 3, 9));
        QVERIFY(jobs && jobs->size() == 1);
        QVERIFY(jobs->front().next.startsWith("Make the safety card before the pair is "
                                              "touched. Then: measure again"));
        QVERIFY(jobs->front().needsVisit);
    }

    void tellsHowFarItIsAndStopsWhenItIsTold()
    {
        auto records = office();
        OrderFields second =
            otherBriFields("A-1002", "C-78", "17-206", "217-555-0145", "217-555-0146");
        QVERIFY(importOrders(*records, csv({briFields(), second}), {"orders.csv"}));
        QList<std::pair<qint64, qint64>> told;
        const auto upTo = [&told](int most) {
            return [&told, most](qint64 done, qint64 total) {
                told << std::pair(done, total);
                return done < most;
            };
        };
        const QDate day(2026, 3, 9);
        const auto list = daySheet(*records, {}, day, Paper::A4, upTo(9));
        QVERIFY(list && list->orders.size() == 2);
        QCOMPARE(told, (QList<std::pair<qint64, qint64>>{{1, 2}, {2, 2}}));
        told.clear();
        const auto stopped = daySheet(*records, {}, day, Paper::A4, upTo(1));
        QCOMPARE(told.size(), 1);
        QVERIFY(!stopped && stopped.error().code == ErrorCode::Refused);
        QVERIFY(stopped.error().message.contains("nothing was written"));
        // And while its pages are painted.
        QTemporaryDir folder;
        const QString path = folder.filePath("day.pdf");
        const auto unwritten = writeSheet(list->sheet, path, records->now(), upTo(1));
        QVERIFY(!unwritten && unwritten.error().code == ErrorCode::Refused);
        QVERIFY(
            QDir(folder.path()).isEmpty(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden));
        QVERIFY(writeSheet(list->sheet, path, records->now(), upTo(9)));
        QVERIFY(QFile::exists(path));
    }

    void numbersAndHazards()
    {
        auto records = office();
        QVERIFY(importOrders(*records, csv({briFields()}), {"orders.csv"}));
        take(*records, briFields(), {jobs::safety(1, 5, 214)});
        const auto sheet = daySheet(*records, {}, QDate(2026, 3, 7), Paper::A4);
        QVERIFY(sheet);
        VERIFY_IN_ORDER(
            papers::textOf(sheet->sheet),
            {"12 Mill Lane", "Order A-1001", "LATE, due 6 March 2026", "HAZARD open on this pair",
             "pair 17-204", "1: 217-555-0143, SPID 21755501430101, TEI automatic, voice, data",
             "2: 217-555-0144", "Next", EventStore(records->database()).logHead()->paperText()});
    }
};

QTEST_MAIN(DayListTest)
#include "DayListTest.moc"
