// Limits over time: what was completed is judged by those of its own day, the rest by those in
// force.

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Orders.h"
#include "tests/support/Office.h"

#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

/// The shipped limits, as a set of the office's own that no loop meets.
LimitSet strictLimits(const QString &validFrom = "2026-03-01")
{
    QJsonObject set = limits().toJson();
    set["version"] = "own-1";
    QJsonArray list = set["limits"].toArray();
    for (QJsonValueRef each : list)
        if (QJsonObject limit = each.toObject(); limit["key"] == "bri_loss_max") {
            limit["value"] = 1;
            each = limit;
        }
    set["limits"] = list;
    set["valid_from"] = validFrom;
    return *LimitSet::fromJson(set, "own.json");
}

std::unique_ptr<Records> officeWithJob()
{
    auto records = office();
    if (!importOrders(*records, csv({briFields()}), {"orders.csv"}) ||
        !recordFile(*records, canonicalJson(jobs::record(jobs::order(briFields()), briFacts())),
                    "job.json"))
        qFatal("the job was not taken in");
    return records;
}

} // namespace

class LimitsOverTimeTest : public QObject
{
    Q_OBJECT
private slots:
    void laterLimitsDoNotUndoIt()
    {
        auto records = officeWithJob();
        const IssueRequest request{"A-1001", Paper::A4};
        QVERIFY(issueCertificate(*records, request));
        QVERIFY(completeOrder(*records, "A-1001"));
        const auto before = decisionNow(*records, "A-1001");
        QVERIFY(before && before->outcome == OrderOutcome::Accepted);
        QVERIFY(addLimitSet(*records, strictLimits()));

        const auto after = decisionNow(*records, "A-1001");
        QVERIFY(after);
        QCOMPARE(canonicalJson(after->toJson()), canonicalJson(before->toJson()));
        QCOMPARE(boardRows(*records, {})->front().outcome, OrderOutcome::Accepted);
        const auto copy = issueCertificate(*records, request);
        QVERIFY2(copy, copy ? "" : qPrintable(copy.error().text()));
        QVERIFY(copy->copy);
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
    void itsDecisionIsKeptThoughNobodyAskedForIt()
    {
        auto records = officeWithJob();
        QVERIFY(completeOrder(*records, "A-1001"));
        QVERIFY(addLimitSet(*records, strictLimits()));
        QCOMPARE(decisionNow(*records, "A-1001")->limitSet, "2026-1");
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
    void anOpenOrderFollowsTheLimitsInForce()
    {
        auto records = officeWithJob();
        QVERIFY(decideOrder(*records, "A-1001"));
        QVERIFY(addLimitSet(*records, strictLimits()));
        QCOMPARE(decisionNow(*records, "A-1001")->outcome, OrderOutcome::NotAccepted);
        QVERIFY(!completeOrder(*records, "A-1001"));
        QCOMPARE(boardRows(*records, {})->front().outcome, OrderOutcome::NotAccepted);
    }
    void theBoardFollowsTheDayOfALimitSet()
    {
        auto records = officeWithJob();
        QVERIFY(addLimitSet(*records, strictLimits("2026-04-01")));
        QCOMPARE(boardRows(*records, {})->front().outcome, OrderOutcome::Accepted);
        const qint64 events = verifyHistory(*records)->events;
        records->setNow(Moment::parse(u"2026-04-01T12:00:00-06:00"));
        for (int twice = 0; twice < 2; ++twice) {
            QCOMPARE(boardRows(*records, {})->front().outcome, OrderOutcome::NotAccepted);
            QCOMPARE(decisionNow(*records, "A-1001")->outcome, OrderOutcome::NotAccepted);
            QCOMPARE(verifyHistory(*records)->events, events + 1);
        }
        QCOMPARE(verifyHistory(*records)->broken.size(), 0U);
    }
};

QTEST_MAIN(LimitsOverTimeTest)
#include "LimitsOverTimeTest.moc"
