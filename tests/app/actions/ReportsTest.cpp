// Reports against counts that are made another way: by hand for a few orders, and from the facts
// and events of every order for invented ones.

#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/Maintenance.h"
#include "app/actions/ReportFiles.h"
#include "core/base/Csv.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/OrderStore.h"
#include "tests/support/Papers.h"
#include "tests/support/Records.h"
#include "tests/support/ReportRecords.h"

#include <QGuiApplication>

using namespace loopwright;
using namespace loopwright::jobs;

class ReportsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    Report report(ReportKind kind, ReportPer per, QDate from = {}, QDate to = {})
    {
        auto made = makeReport(*m_records, {kind, per, from, to});
        if (!made)
            qFatal("%s", qPrintable(made.error().text()));
        return *made;
    }
    /// "key: value value; …" of the columns that are named.
    static QString told(const Report &report, const QStringList &columns)
    {
        QStringList rows;
        for (const ReportRow &row : report.rows) {
            QStringList words;
            for (const QString &column : columns)
                words << row.values.value(column).toVariant().toString();
            rows << row.values["per"].toString() + ": " + words.join(' ');
        }
        return rows.join("; ");
    }
    QStringList behind(const ReportQuery &query, const ReportFigureKey &key = {})
    {
        QStringList numbers;
        const auto orders = ordersBehind(*m_records, query, key);
        for (const ReportOrder &order : *orders)
            numbers << order.order;
        numbers.sort();
        return numbers;
    }

private slots:
    void initTestCase() { m_records = reportRecords(); }

    void firstVisits()
    {
        const QStringList columns{"orders", "met", "no_visit", "share"};
        QCOMPARE(told(report(ReportKind::FirstVisit, ReportPer::Office), columns),
                 "NORTH: 5 3 1 0.6");
        QCOMPARE(told(report(ReportKind::FirstVisit, ReportPer::Installer), columns),
                 ": 4 3 1 0.75; K7: 1 0 0 0");
        QCOMPARE(told(report(ReportKind::FirstVisit, ReportPer::Cable), columns),
                 "17: 3 2 0 0.6666666666666666; 18: 2 1 1 0.5");
        QCOMPARE(told(report(ReportKind::FirstVisit, ReportPer::Variant), {"orders"}),
                 "analog: 1; ni2: 4");
        QCOMPARE(told(report(ReportKind::FirstVisit, ReportPer::Month), {"orders"}), "2026-03: 5");
    }
    void theFirstAndTheLastDayBelongToIt()
    {
        const auto orders = [this](int from, int to) {
            return behind({ReportKind::FirstVisit, ReportPer::Office, QDate(2026, 3, from),
                           QDate(2026, 3, to)});
        };
        QCOMPARE(orders(1, 3), QStringList());
        QCOMPARE(orders(4, 4), (QStringList{"A-1001", "A-2001"}));
        QCOMPARE(orders(5, 5), QStringList{"A-3001"}); // the day on which it was taken in
        QCOMPARE(orders(6, 6), (QStringList{"A-1002", "A-1003"})); // of the exception
        QCOMPARE(orders(4, 6).size(), 5);
        const auto wrong = makeReport(*m_records, {ReportKind::FirstVisit, ReportPer::Office,
                                                   QDate(2026, 3, 5), QDate(2026, 3, 4)});
        QCOMPARE(wrong.error().code, ErrorCode::Usage);
    }
    void failingCriteria()
    {
        const Report failing = report(ReportKind::Failing, ReportPer::Cable);
        const QString told =
            ReportsTest::told(failing, {"criterion", "orders", "not_met", "share"});
        BoardFilter open; // the board says the same of each
        open.facets = {{BoardFacet::Open, "1"}};
        const auto rows = boardRows(*m_records, open);
        QMap<std::pair<QString, QString>, int> counted;
        for (const BoardRow &row : *rows)
            if (!row.criterion.isEmpty())
                ++counted[{row.pair.section('-', 0, -2), row.criterion}];
        QCOMPARE(failing.rows.size(), std::size_t(counted.size()));
        for (const ReportRow &row : failing.rows) {
            const std::pair key{row.values["per"].toString(), row.values["criterion"].toString()};
            QCOMPARE(row.values["orders"].toInt(), counted.value(key));
        }
        QVERIFY2(told.contains("18: run 1 1 0.5"), qPrintable(told));
        QCOMPARE(behind({ReportKind::Failing, ReportPer::Cable}, {"18", "run"}),
                 QStringList{"A-1005"});
        QCOMPARE(behind({ReportKind::Failing, ReportPer::Cable, QDate(2026, 3, 7), {}}),
                 QStringList{"C-77-R3"}); // the others were due before
    }
    void agesOfOpenOrders()
    {
        // A-1001 and A-1006 have ended. The others were taken in on 5 March, the trouble on 12 May.
        const Report ages = report(ReportKind::OpenAge, ReportPer::Month);
        QCOMPARE(told(ages, {"orders", "age", "oldest", "late"}),
                 "2026-03: 6 72 72 2; 2026-05: 1 4 4 1");
        QCOMPARE(QDate(2026, 3, 5).daysTo(QDate(2026, 5, 16)), 72);
    }
    void exceptions()
    {
        const Report exceptions = report(ReportKind::Exceptions, ReportPer::Office);
        QCOMPARE(exceptions.rows.size(), 1u);
        const QJsonObject row = exceptions.rows.front().values;
        QCOMPARE(row["order_number"].toString(), "A-1003");
        QCOMPARE(row["criteria"].toArray(), QJsonArray{"run"});
        QCOMPARE(row["because"].toString(), "the customer takes it as it is");
        QCOMPARE(row["by"].toString(), "Dana");
        QCOMPARE(
            behind({ReportKind::Exceptions, ReportPer::Office}, exceptions.rows.front().behind),
            QStringList{"A-1003"});
        QVERIFY(report(ReportKind::Exceptions, ReportPer::Office, QDate(2026, 3, 7)).rows.empty());
    }
    void calibrationsDue()
    {
        // One without a due day is none; the newest of several counts.
        QVERIFY_RESULT(importInstruments(*m_records,
                                         "instrument,serial,kind,calibrated_on,calibration_due\n"
                                         "LP-1,77,handset,2025-01-01,not_required\n"
                                         "TS-9,78,test set,2024-01-01,2025-01-01\n",
                                         {"i.csv"}));
        QVERIFY_RESULT(importInstruments(*m_records,
                                         "instrument,serial,kind,calibrated_on,calibration_due\n"
                                         "TS-9,78,test set,2025-01-01,2026-01-01\n",
                                         {"i.csv", false, true}));
        QCOMPARE(told(report(ReportKind::Calibration, ReportPer::Month),
                      {"instrument", "calibration_due", "overdue", "orders"}),
                 "2026-01: TS-9 2026-01-01 true 0; 2026-09: TS-4 2026-09-01 false 4");
        QCOMPARE(behind({ReportKind::Calibration, ReportPer::Month}, {{}, "TS-4"}),
                 (QStringList{"A-1002", "A-1003", "A-1005", "A-2001"}));
        QCOMPARE(told(report(ReportKind::Calibration, ReportPer::Office, QDate(2026, 9, 1),
                             QDate(2026, 9, 1)),
                      {"instrument"}),
                 ": TS-4");
    }
    void troublesAndRepeats()
    {
        QCOMPARE(told(report(ReportKind::Troubles, ReportPer::Month), {"troubles", "repeats"}),
                 "2026-03: 1 0; 2026-04: 1 1; 2026-05: 1 0");
        QCOMPARE(told(report(ReportKind::Troubles, ReportPer::Office), {"troubles", "repeats"}),
                 "NORTH: 3 1");
        const auto list = troubles(*m_records, false);
        for (const Trouble &trouble : *list)
            QCOMPARE(trouble.previous.isEmpty(), trouble.order != "C-77-R2");
    }

    void figuresAddUpAndTheirOrdersAreThere_data()
    {
        QTest::addColumn<QString>("kind");
        for (const QString &word : allWords<ReportKind>())
            QTest::newRow(qPrintable(word)) << word;
    }
    void figuresAddUpAndTheirOrdersAreThere()
    {
        QFETCH(QString, kind);
        qint64 all = -1;
        for (const QString &per : allWords<ReportPer>()) {
            const ReportQuery query{*fromText<ReportKind>(kind), *fromText<ReportPer>(per)};
            const auto made = makeReport(*m_records, query);
            QVERIFY(made);
            qint64 sum = 0;
            for (const ReportRow &row : made->rows) {
                const qint64 orders = row.values["orders"].toInteger();
                QCOMPARE(qint64(behind(query, row.behind).size()), orders);
                sum += orders;
            }
            QCOMPARE(qint64(behind(query).size()), sum);
            QVERIFY(all < 0 || all == sum);
            all = sum;
        }
    }

    void asFiles()
    {
        QTemporaryDir folder;
        const Report made = report(ReportKind::FirstVisit, ReportPer::Installer);
        for (const QString &form : reportFormats())
            QVERIFY_RESULT(
                writeReport(*m_records, made, folder.filePath("r." + form), {}, Paper::A4));
        QFile csv(folder.filePath("r.csv"));
        QVERIFY(csv.open(QIODevice::ReadOnly));
        QCOMPARE(csv.readAll(), "per,orders,met,no_visit,share\r\n,4,3,1,0.75\r\nK7,1,0,0,0\r\n");
        QFile svg(folder.filePath("r.svg"));
        QVERIFY(svg.open(QIODevice::ReadOnly));
        const QByteArray drawn = svg.readAll();
        QVERIFY(drawn.contains("75.0 %") && drawn.contains("K7"));
        QFile pdf(folder.filePath("r.pdf"));
        QVERIFY(pdf.open(QIODevice::ReadOnly));
        const QString text = papers::textOfPdf(pdf.readAll());
        QCOMPARE(papers::notInOrder(text, {"Acceptance on the first visit per installer",
                                           "5 orders were accepted", "none", "4", "75.0 %", "K7"}),
                 QString());
        QCOMPARE(
            writeReport(*m_records, made, folder.filePath("r.doc"), {}, Paper::A4).error().code,
            ErrorCode::Usage);
    }
    void aFormulaStaysATextWhereASpreadsheetOpensIt()
    {
        ReportOrder order;
        order.customer = "=1+1";
        QVERIFY(ordersCsv({order}, ReportKind::FirstVisit).contains(",=1+1,"));
        QVERIFY(ordersCsv({order}, ReportKind::FirstVisit, true).contains(",'=1+1,"));
        Report made = report(ReportKind::Exceptions, ReportPer::Office);
        made.rows.front().values.insert("customer", "+1 Main Street");
        QVERIFY(reportCsv(made).contains(",+1 Main Street,"));
        QVERIFY(reportCsv(made, true).contains(",'+1 Main Street,"));
    }

    /// Every order's facts and events, read one by one.
    void inventedOrdersCountedAnew()
    {
        auto records = std::move(*Records::open(":memory:"));
        records->actAs("Dana");
        records->setNow(Moment::parse(u"2026-11-20T12:00:00-06:00"));
        QVERIFY_RESULT(bringShippedLimits(*records));
        QVERIFY_RESULT(fillWithInvented(*records, 150, 3));
        const QSet<QString> onSite{"safety", "self_test", "loop", "layer",
                                   "call",   "detector",  "run",  "analog"};
        QMap<QString, std::pair<int, int>> first, open;
        const auto rows = boardRows(*records, {});
        for (const BoardRow &row : *rows) {
            const auto stored = OrderStore(records->database()).get(row.order);
            const auto events = EventStore(records->database()).ofOrder(row.order);
            const auto taken = std::ranges::find(*events, "order_taken", &Event::kind);
            QVERIFY(taken != events->end());
            if (row.status == OrderStatus::Open) {
                auto &[orders, days] = open[row.office];
                ++orders;
                days += int(taken->at.localDate().daysTo(QDate(2026, 11, 20)));
            }
            if (!isAccepted(row.outcome) || row.status == OrderStatus::Cancelled ||
                stored->order.type == OrderType::Repair)
                continue;
            QSet<QString> retests;
            for (const Event &event : *events)
                for (const QJsonValue &id : event.detail["after_end"].toArray())
                    retests.insert(id.toString());
            QSet<QDate> visits; // nobody was there twice on a day
            const auto facts = FactStore(records->database()).ofOrder(row.order);
            for (const Fact &fact : *facts)
                if (onSite.contains(toText(fact.kind())) && !retests.contains(fact.id))
                    visits.insert(fact.at.localDate());
            const QDate day =
                visits.isEmpty() ? taken->at.localDate() : *std::ranges::max_element(visits);
            auto &[orders, met] = first[day.toString("yyyy-MM")];
            ++orders;
            met += visits.size() == 1;
        }
        std::swap(records, m_records);
        const Report months = report(ReportKind::FirstVisit, ReportPer::Month);
        const Report ages = report(ReportKind::OpenAge, ReportPer::Office);
        const auto faults = auditDerived(*m_records);
        std::swap(records, m_records);
        QCOMPARE(faults->size(), 0u);
        QCOMPARE(months.rows.size(), std::size_t(first.size()));
        for (const ReportRow &row : months.rows) {
            const auto &[orders, met] = first[row.values["per"].toString()];
            QCOMPARE(row.values["orders"].toInt(), orders);
            QCOMPARE(row.values["met"].toInt(), met);
        }
        QVERIFY(std::ranges::any_of(first, [](const auto &month) { return month.second > 0; }));
        QCOMPARE(ages.rows.size(), std::size_t(open.size()));
        for (const ReportRow &row : ages.rows) {
            const auto &[orders, days] = open[row.values["per"].toString()];
            QCOMPARE(row.values["orders"].toInt(), orders);
            QCOMPARE(row.values["age"].toDouble(), double(days) / orders);
        }
    }
};

QTEST_MAIN(ReportsTest)
#include "ReportsTest.moc"
