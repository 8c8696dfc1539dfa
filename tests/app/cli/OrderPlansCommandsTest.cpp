// The desk's plans on the command line, by the contract's statuses.

#include "tests/support/CommandRun.h"
#include "tests/support/Office.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class OrderPlansCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    Answered at(const QStringList &words) const
    {
        return call(words + QStringList{"--db", path("records.sqlite"), "--now",
                                        "2026-03-05T12:00:00-06:00", "--by", "D4", "--json"});
    }
    QJsonObject order(const QString &number) const
    {
        return at({"order", "show", number}).object()["order"].toObject();
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        const auto records = office(path("records.sqlite"));
        const OrderFields other =
            otherBriFields("A-1002", "C-78", "17-206", "217-555-0145", "217-555-0146");
        QVERIFY(importOrders(*records, csv({briFields(), other}), {"orders.csv"}));
    }
    void assign()
    {
        const Answered done = at({"order", "assign", "A-1001", "A-1002", "--installer", "K7",
                                  "--on", "2026-03-09", "--because", "customer is away"});
        COMPARE_STATUS(done, ExitStatus::Yes);
        const QJsonArray changed = done.object()["changed"].toArray();
        QCOMPARE(changed.size(), 2);
        QCOMPARE(changed[0]["columns"]["due_date"].toArray(),
                 (QJsonArray{"2026-03-06", "2026-03-09"}));
        QCOMPARE(order("A-1002")["installer"].toString(), "K7");
        QCOMPARE(order("A-1002")["first_due_date"].toString(), "2026-03-06");
        COMPARE_STATUS(at({"order", "assign", "A-1001", "--installer", "X9"}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "assign", "A-9", "--installer", "K7"}), ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "assign", "A-1001", "--installer", "K7", "--because", "x"}),
                       ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "assign", "A-1001"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "set", "A-1001", "installer="}), ExitStatus::Yes);
        QVERIFY(!order("A-1001").contains("installer") ||
                order("A-1001")["installer"].toString().isEmpty());
    }
    void aMissedDateIsAFilter()
    {
        const auto missed = [this](const QString &now) {
            QStringList numbers;
            const Answered listed = call({"order", "list", "--missed", "--json", "--db",
                                          path("records.sqlite"), "--now", now});
            for (const QJsonValue &row : listed.array()) {
                numbers << row["order_number"].toString();
                if (!row["date_missed"].toBool() ||
                    row["first_due_date"].toString() != u"2026-03-06")
                    numbers << "wrong";
            }
            return numbers;
        };
        COMPARE_STATUS(at({"order", "assign", "A-1002", "--installer", "K7", "--on", "2026-03-20",
                           "--because", "customer is away"}),
                       ExitStatus::Yes);
        QCOMPARE(missed("2026-03-06T12:00:00-06:00"), QStringList()); // today it can be kept
        QCOMPARE(missed("2026-03-07T12:00:00-06:00"), (QStringList{"A-1001", "A-1002"}));
        COMPARE_STATUS(at({"order", "cancel", "A-1001", "--because", "moved away"}),
                       ExitStatus::Yes);
        QCOMPARE(missed("2026-03-07T12:00:00-06:00"), QStringList{"A-1002"});
        COMPARE_STATUS(at({"order", "list", "--missed", "--late"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "list", "--missed", "--at-risk"}), ExitStatus::Usage);
    }
    void set()
    {
        COMPARE_STATUS(at({"order", "set", "A-1001", "remarks=side door=left", "contact=Pat"}),
                       ExitStatus::Yes);
        QCOMPARE(order("A-1001")["remarks"].toString(), "side door=left");
        COMPARE_STATUS(at({"order", "set", "A-1001", "colour=red"}), ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "set", "A-9", "remarks=x"}), ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "set", "A-1001", "due_date=soon"}), ExitStatus::No);
        COMPARE_STATUS(at({"order", "set", "A-1001", "remarks"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "set", "A-1001"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "set"}), ExitStatus::Usage);
        // The pair that another line holds: taken in, held, and told.
        const Answered held = at({"order", "set", "A-1002", "pair=17-204"});
        COMPARE_STATUS(held, ExitStatus::No);
        QCOMPARE(held.object()["held"].toArray(), QJsonArray{"A-1002"});
    }
    void setFromAFile()
    {
        const QString file = written(path("plan.csv"), "order_number,column,value\n"
                                                       "A-1001,installer,K7\n"
                                                       "A-1002,colour,red\n");
        COMPARE_STATUS(at({"order", "set", "A-1001", "remarks=x", "--in", file}),
                       ExitStatus::Usage);
        COMPARE_STATUS(at({"order", "set", "--in", file, "--all-or-nothing"}),
                       ExitStatus::BadInput);
        QVERIFY(order("A-1001")["installer"].toString().isEmpty());
        const Answered done = at({"order", "set", "--in", file, "--rejects", path("rejects.csv")});
        COMPARE_STATUS(done, ExitStatus::No);
        QCOMPARE(done.object()["accepted"].toInt(), 1);
        QCOMPARE(done.object()["refused"].toInt(), 1);
        QCOMPARE(order("A-1001")["installer"].toString(), "K7");
        QFile rejects(path("rejects.csv"));
        QVERIFY(rejects.open(QIODevice::ReadOnly) && rejects.readAll().contains("colour"));
    }
    void holdAndResume()
    {
        COMPARE_STATUS(at({"order", "hold", "A-1001", "--waiting-on", "permit"}),
                       ExitStatus::Usage);
        COMPARE_STATUS(
            at({"order", "hold", "A-1001", "--waiting-on", "godot", "--because", "he comes"}),
            ExitStatus::Usage);
        COMPARE_STATUS(
            at({"order", "hold", "A-1001", "--waiting-on", "permit", "--because", "road closed"}),
            ExitStatus::Yes);
        QCOMPARE(order("A-1001")["waiting_on"].toString(), "permit");
        COMPARE_STATUS(at({"order", "resume", "A-1001"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "resume", "A-1001"}), ExitStatus::No);
    }
};

QTEST_MAIN(OrderPlansCommandsTest)
#include "OrderPlansCommandsTest.moc"
