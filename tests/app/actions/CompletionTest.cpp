// A completion number told by telephone, after the line became another's.

#include "app/actions/Completion.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "core/certificate/Slips.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

using namespace loopwright;
using namespace loopwright::jobs;

class CompletionTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;
    QString m_number;

    SpokenNumber told() const
    {
        const auto answer = checkCompletion(*m_records, "A-1001", m_number);
        if (!answer)
            qFatal("%s", qPrintable(answer.error().text()));
        return *answer;
    }
    void later(const char *number, const char *type, const QString &pair)
    {
        OrderFields fields = briFields();
        fields["order_number"] = number;
        fields["order_type"] = type;
        fields["pair"] = pair;
        QVERIFY_RESULT(putOrder(*m_records, fields, false, false));
        if (fields["order_type"] != "disconnect") {
            QList<QJsonObject> facts;
            for (QJsonObject fact : briFacts()) {
                fact["id"] = fact["id"].toString().replace(0, 1, "b");
                facts << fact;
            }
            QVERIFY_RESULT(recordFile(*m_records, recordBytes(fields, facts), "later.json"));
        }
        QVERIFY_RESULT(completeOrder(*m_records, number));
    }

private slots:
    void init()
    {
        m_records = office();
        QVERIFY_RESULT(importOrders(*m_records, csv({briFields()}), {"orders.csv"}));
        QVERIFY_RESULT(recordFile(*m_records, recordBytes(briFields(), briFacts()), "job.json"));
        m_number = completionNumber(*decideOrder(*m_records, "A-1001"));
        QVERIFY_RESULT(completeOrder(*m_records, "A-1001"));
        QCOMPARE(told(), SpokenNumber::Stands);
    }
    void aDisconnectedLine()
    {
        later("A-1001-D", "disconnect", briFields()["pair"]);
        QCOMPARE(told(), SpokenNumber::Superseded);
    }
    void aLineOnAnotherPair()
    {
        later("A-1001-C", "change", "17-299");
        QCOMPARE(told(), SpokenNumber::Superseded);
    }
    void aChangeThatLeavesTheLine()
    {
        later("A-1001-C", "change", briFields()["pair"]);
        QCOMPARE(told(), SpokenNumber::Stands);
    }
};

QTEST_GUILESS_MAIN(CompletionTest)
#include "CompletionTest.moc"
