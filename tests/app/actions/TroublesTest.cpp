// A trouble from its symptom to the restored line.

#include "app/actions/Troubles.h"

#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/CertificateSetLines.h"
#include "app/actions/Circuits.h"
#include "app/actions/History.h"
#include "app/actions/Plans.h"
#include "app/actions/VerifyCertificate.h"
#include "tests/support/SmallRecords.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class TroublesTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_records;
    QByteArray m_certificate;

    void at(const char *time) { m_records->setNow(Moment::parse(QString(time))); }
    OpenedTrouble open(const QString &circuit = "C-77")
    {
        auto opened = openTrouble(*m_records, {circuit, "no dial tone in the evening"});
        if (!opened)
            qFatal("%s", qPrintable(opened.error().text()));
        return *opened;
    }
    ClosedTrouble close(const QString &order, ClearedWhat cause = ClearedWhat::Contact)
    {
        auto closed =
            closeTrouble(*m_records, {order, "corroded splice", "splice made anew", cause});
        if (!closed)
            qFatal("%s", qPrintable(closed.error().text()));
        return *closed;
    }
    BoardRow row(const QString &order)
    {
        const auto rows = boardRows(*m_records, {});
        const auto found = std::ranges::find(*rows, order, &BoardRow::order);
        if (found == rows->end())
            qFatal("no such order");
        return *found;
    }

private slots:
    void init()
    {
        const QString path = m_folder.filePath(QTest::currentTestFunction() + QString(".sqlite"));
        m_certificate = makeSmallRecords(path);
        m_records = std::move(*Records::open(path));
        m_records->actAs("Dana");
        at("2026-04-01T09:00:00-06:00");
    }

    void aRepairIsLikeTheWorkingOrder()
    {
        const OpenedTrouble opened = open();
        QCOMPARE(opened.trouble.order, QString("C-77-R1"));
        QCOMPARE(opened.trouble.symptom, QString("no dial tone in the evening"));
        QVERIFY(opened.findings.empty());
        const auto view = showOrder(*m_records, "C-77-R1");
        QCOMPARE(view->order.type, OrderType::Repair);
        QCOMPARE(view->order.pair, QString("17-204"));
        QCOMPARE(view->order.terminals, jobs::order(briFields()).terminals);
        QCOMPARE(view->order.dueDate, QDate(2026, 4, 1));
        QVERIFY(!view->held);
        QCOMPARE(view->input.scope, OrderScope::Repair);
        // As a new line, without identifiers and readback.
        for (const CriterionResult &criterion : view->decision.criteria) {
            const bool assigned = criterion.key == u"identifiers" || criterion.key == u"readback";
            QCOMPARE(criterion.outcome == CriterionOutcome::NotNeeded, assigned);
        }
    }

    /// Who and what was needed for the first installation says nothing of a repair.
    void aRepairHasACrewOfItsOwn()
    {
        auto records = office();
        OrderFields fields = briFields();
        fields["crew"] = "bucket truck";
        QVERIFY(importOrders(*records, csv({fields}), {"o.csv"}));
        QVERIFY(recordFile(*records, recordBytes(briFields(), briFacts()), "job.json"));
        QVERIFY(completeOrder(*records, "A-1001"));
        QCOMPARE(showOrder(*records, "A-1001")->order.crew, QString("bucket truck"));
        QVERIFY(openTrouble(*records, {"C-77", "no dial tone in the evening"}));
        QCOMPARE(showOrder(*records, "C-77-R1")->order.crew, QString());
    }

    void onlyACircuitInServiceHasTroubles()
    {
        const auto unknown = openTrouble(*m_records, {"C-0", "dead"});
        QCOMPARE(unknown.error().code, ErrorCode::NotFound);
        const auto planned = openTrouble(*m_records, {"C-66", "dead"}); // its order is open
        QCOMPARE(planned.error().code, ErrorCode::Refused);
        const auto silent = openTrouble(*m_records, {"C-77", " "});
        QCOMPARE(silent.error().code, ErrorCode::Usage);
        QVERIFY(troubles(*m_records, false)->empty());
    }

    /// Whatever the decision is, the trouble is over, and what was not shown is told.
    void closingCompletesTheRepair()
    {
        open();
        const auto refused = completeOrder(*m_records, "C-77-R1");
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("trouble"), qPrintable(refused.error().message));
        at("2026-04-01T15:00:00-06:00");
        const ClosedTrouble closed = close("C-77-R1");
        QVERIFY(!closed.lacks.isEmpty());
        QVERIFY2(closed.lacks.join(' ').contains("Safety card: "),
                 qPrintable(closed.lacks.join(' ')));
        QCOMPARE(*closed.trouble.cause, ClearedWhat::Contact);
        QCOMPARE(closed.trouble.found, QString("corroded splice"));
        QCOMPARE(row("C-77-R1").status, OrderStatus::Completed);
        QVERIFY(!row("C-77-R1").paper);
        const auto again = closeTrouble(*m_records, {"C-77-R1", "x y", "x y", ClearedWhat::Other});
        QCOMPARE(again.error().code, ErrorCode::Refused);
        QVERIFY(verifyHistory(*m_records)->broken.empty());
        QVERIFY(auditDerived(*m_records)->empty());
    }

    void whatIsClosedSaysWhatWasDone()
    {
        open();
        const auto terse =
            closeTrouble(*m_records, {"C-77-R1", "a splice", "mended", ClearedWhat::Contact});
        QCOMPARE(terse.error().code, ErrorCode::Usage);
        const auto silent =
            closeTrouble(*m_records, {"C-77-R1", "", "splice made anew", ClearedWhat::Contact});
        QCOMPARE(silent.error().code, ErrorCode::Usage);
        const auto other = closeTrouble(
            *m_records, {"A-0999", "a splice", "splice made anew", ClearedWhat::Contact});
        QCOMPARE(other.error().code, ErrorCode::Refused);
        QVERIFY(troubles(*m_records, true)->front().isOpen());
        const auto nothing =
            closeTrouble(*m_records, {"C-77-R1", "tests well", "", ClearedWhat::NothingFound});
        QVERIFY(nothing.has_value());
    }

    /// Whatever became of the circuit meanwhile: a closed trouble does not bring the old line back.
    void closingLeavesTheCircuitAsItIs()
    {
        open();
        OrderFields away = briFields();
        away["order_number"] = "A-1900";
        away["order_type"] = "disconnect";
        QVERIFY(importOrders(*m_records, csv({away}), {"o.csv"})->clean());
        QVERIFY(completeOrder(*m_records, "A-1900").has_value());
        close("C-77-R1", ClearedWhat::NothingFound);
        QVERIFY(!showCircuit(*m_records, "C-77")->inService);
        QCOMPARE(openTrouble(*m_records, {"C-77", "dead"}).error().code, ErrorCode::Refused);
        // Its pair and numbers are free.
        OrderFields other =
            otherBriFields("A-1901", "C-99", "17-204", "217-555-0143", "217-555-0144");
        QCOMPARE(importOrders(*m_records, csv({other}), {"o.csv"})->held, 0);
        QVERIFY(auditDerived(*m_records)->empty());
    }
    void aRepairChangesNothingOfTheLine()
    {
        open();
        const auto set = [this](const QString &column, const QString &value) {
            const auto report = changePlans(*m_records, {{"C-77-R1", {{column, value}}}});
            return report ? ErrorCode::Usage : report.error().code;
        };
        for (const auto &[column, value] :
             {std::pair("pair", "17-601"), std::pair("spid_1", "217"), std::pair("kind", "analog"),
              std::pair("circuit_number", "C-66"), std::pair("order_type", "record_only"),
              std::pair("symptom", "")})
            QCOMPARE(set(column, value), ErrorCode::Refused);
        QVERIFY(changePlans(*m_records, {{"C-77-R1", {{"due_date", "2026-04-03"}}}}).has_value());
        const auto made = changePlans(*m_records, {{"A-0999", {{"order_type", "repair"}}}});
        QCOMPARE(made.error().code, ErrorCode::Refused);
    }
    /// What was done on site is not lost: the records follow it first.
    void aPairSwappedOnSiteIsTakenIntoTheRecordsFirst()
    {
        open();
        OrderFields repair = briFields();
        repair["order_number"] = "C-77-R1";
        QVERIFY(recordFile(*m_records,
                           recordBytes(repair, {fact(80, "changed", 60,
                                                     {{"what", "pair"},
                                                      {"to", "17-601"},
                                                      {"text", "the old one is open"}})}),
                           "job.json"));
        const auto refused =
            closeTrouble(*m_records, {"C-77-R1", "pair open", "put on 17-601", ClearedWhat::Pair});
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("17-601") &&
                     refused.error().message.contains("17-204"),
                 qPrintable(refused.error().message));
        QVERIFY(troubles(*m_records, true)->front().isOpen());
    }
    void aFileBringsNoRepairOfALineThatIsNotThere()
    {
        for (const auto &[circuit, kind] :
             {std::pair("C-66", "bri"), std::pair("C-500", "bri"), std::pair("C-77", "analog")}) {
            OrderFields repair = QString(kind) == "bri" ? briFields() : analogFields();
            repair["order_number"] = "A-1950";
            repair["order_type"] = "repair";
            repair["circuit_number"] = circuit;
            const auto report = importOrders(*m_records, csv({repair}), {"o.csv"});
            QCOMPARE(report->refused, 1);
            QCOMPARE(putOrder(*m_records, repair, false).error().code, ErrorCode::Refused);
        }
        QVERIFY(troubles(*m_records, false)->empty());
    }
    /// Though the clock stands still.
    void noTwoRepeatEachOther()
    {
        open();
        open();
        close("C-77-R1");
        close("C-77-R2");
        const auto both = troubles(*m_records, false);
        for (const Trouble &trouble : *both)
            QVERIFY(trouble.previous.isEmpty());
        QCOMPARE(open().trouble.previous, QString("C-77-R2"));
        at("2026-03-31T09:00:00-06:00");
        const auto early = closeTrouble(
            *m_records, {"C-77-R3", "a splice", "splice made anew", ClearedWhat::Contact});
        QCOMPARE(early.error().code, ErrorCode::Refused);
    }
    void whoGoesThereIsKnown()
    {
        const auto nobody = openTrouble(*m_records, {"C-77", "dead", {}, "nobody"});
        QCOMPARE(nobody.error().code, ErrorCode::NotFound);
        QCOMPARE(openTrouble(*m_records, {"C-77", "dead", {}, "K7"})->trouble.installer,
                 QString("K7"));
    }

    /// 30 days from the closing, the last one counts.
    void aRepeatIsMarked()
    {
        open();
        close("C-77-R1");
        at("2026-05-01T09:00:00-06:00");
        const OpenedTrouble repeat = open();
        QCOMPARE(repeat.trouble.previous, QString("C-77-R1"));
        close("C-77-R2");
        at("2026-05-31T09:00:01-06:00");
        QVERIFY(open().trouble.previous.isEmpty());
        const auto list = troubles(*m_records, false);
        QCOMPARE(list->size(), 3u);
        QCOMPARE((*list)[1].toJson()["repeat"], QJsonValue(true));
        QCOMPARE((*list)[2].toJson()["previous"], QJsonValue());
        QCOMPARE(troubles(*m_records, true)->size(), 1u);
    }

    void standsInTheLifeOfItsCircuit()
    {
        open();
        close("C-77-R1");
        const auto view = showCircuit(*m_records, "C-77");
        QStringList texts;
        for (const LifeEntry &entry : view->life)
            if (entry.kind == LifeKind::Trouble)
                texts << entry.text;
        QCOMPARE(texts,
                 QStringList({"Trouble: no dial tone in the evening",
                              "Trouble closed: contact; corroded splice; splice made anew"}));
        QCOMPARE(view->turnUp, QString("A-1001"));
        QVERIFY(view->inService);
    }

    void aSecondOpenOneIsTold()
    {
        open();
        const OpenedTrouble second = open();
        QCOMPARE(second.trouble.order, QString("C-77-R2"));
        QVERIFY(second.trouble.previous.isEmpty()); // none was closed
        QCOMPARE(second.findings.size(), 1u);
        QVERIFY(second.findings.front().reason.english().contains("C-77-R1"));
    }

    /// It stands beside the certificate and unmakes nothing.
    void theCertificateStands()
    {
        open();
        close("C-77-R1");
        const auto check = verifyCertificateFile(*m_records, m_certificate);
        QCOMPARE(check->verdict, CertificateVerdict::Genuine);
        QCOMPARE(check->stands, std::optional(true));
        QCOMPARE(check->troubles.size(), 1u);
        QVERIFY2(check->troubles.front().sentence().contains("contact, splice made anew"),
                 qPrintable(check->troubles.front().sentence()));
        QCOMPARE(check->toJson()["troubles"].toArray().size(), 1);
    }

    /// Nor is it a line without a certificate on the cover of its premises.
    void isNoLineOfItsPremises()
    {
        open();
        const auto lines = linesOfSet(*m_records, "A-1001");
        QStringList orders;
        for (const SetLine &line : *lines)
            orders << line.order;
        QVERIFY2(!orders.contains("C-77-R1"), qPrintable(orders.join(' ')));
        QVERIFY(orders.contains("A-1001"));
    }

    void onlyWhoKeepsOrdersClosesOne()
    {
        m_records->actAs("K7"); // an installer
        open();
        const auto closed = closeTrouble(
            *m_records, {"C-77-R1", "a splice", "splice made anew", ClearedWhat::Pair});
        QCOMPARE(closed.error().code, ErrorCode::Refused);
    }
};

QTEST_MAIN(TroublesTest)
#include "TroublesTest.moc"
