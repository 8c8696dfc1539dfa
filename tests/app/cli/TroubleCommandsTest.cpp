// Troubles on the command line, by the contract's statuses and fields.

#include "tests/support/CommandRun.h"
#include "tests/support/SmallRecords.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class TroubleCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;
    QString m_now;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    Answered at(const QStringList &words, const QString &by = "D4") const
    {
        return call(words + QStringList{"--db", path("records.sqlite"), "--now", m_now, "--by", by,
                                        "--json"});
    }
    Answered open(const QString &circuit = "C-77") const
    {
        return at({"trouble", "open", circuit, "--symptom", "no dial tone"});
    }
    Answered close(const QString &trouble, const QString &cause = "contact") const
    {
        return at({"trouble", "close", trouble, "--found", "wet splice", "--cleared",
                   "splice made anew", "--cause", cause});
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        m_now = "2026-04-01T12:00:00-06:00";
        makeSmallRecords(path("records.sqlite"));
    }

    void openCloseAndList()
    {
        const Answered opened = open();
        COMPARE_STATUS(opened, ExitStatus::Yes);
        QCOMPARE(opened.object()["trouble"].toString(), "C-77-R1");
        QCOMPARE(opened.object()["circuit"].toString(), "C-77");
        QCOMPARE(opened.object()["repeat"], QJsonValue(false));
        QVERIFY(opened.object()["previous"].isNull());
        QCOMPARE(at({"trouble", "list", "--open"}).array().size(), 1);
        COMPARE_STATUS(at({"order", "complete", "C-77-R1"}), ExitStatus::No);
        const Answered closed = close("C-77-R1");
        COMPARE_STATUS(closed, ExitStatus::Yes);
        QVERIFY(!closed.object()["lacks"].toArray().isEmpty());
        COMPARE_STATUS(close("C-77-R1"), ExitStatus::No);
        QCOMPARE(at({"trouble", "list", "--open"}).array(), QJsonArray());
        QCOMPARE(at({"trouble", "list"}).array().size(), 1);
        QCOMPARE(at({"trouble", "list", "--circuit", "C-77"}).array().size(), 1);
        QCOMPARE(at({"trouble", "list", "--circuit", "C-77", "--open"}).array().size(), 0);
        QCOMPARE(at({"trouble", "list", "--circuit", "C-66"}).array().size(), 0);
        COMPARE_STATUS(at({"trouble", "list", "--circuit", "C-0"}), ExitStatus::BadInput);
        m_now = "2026-05-01T12:00:00-06:00"; // the thirtieth day after
        const Answered repeat = open();
        QCOMPARE(repeat.object()["repeat"], QJsonValue(true));
        QCOMPARE(repeat.object()["previous"].toString(), "C-77-R1");
    }

    void whatIsRefused()
    {
        COMPARE_STATUS(open("C-66"), ExitStatus::No);      // not in service
        COMPARE_STATUS(open("C-0"), ExitStatus::BadInput); // unknown
        COMPARE_STATUS(at({"trouble", "open", "C-77"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"trouble", "open", "C-77", "--symptom", ""}), ExitStatus::Usage);
        COMPARE_STATUS(close("C-77-R1"), ExitStatus::BadInput);
        COMPARE_STATUS(close("A-0999"), ExitStatus::No); // no repair
        COMPARE_STATUS(open(), ExitStatus::Yes);
        COMPARE_STATUS(close("C-77-R1", "gremlins"), ExitStatus::Usage);
        COMPARE_STATUS(at({"trouble", "close", "C-77-R1", "--found", "wet splice", "--cleared",
                           "mended", "--cause", "contact"}),
                       ExitStatus::Usage);
        QCOMPARE(at({"trouble", "list", "--open"}).array().size(), 1);
    }

    /// A repair from an order file is a trouble too, and gets no certificate.
    void aRepairFromAFile()
    {
        OrderFields repair = briFields();
        repair["order_number"] = "A-1777";
        repair["order_type"] = "repair";
        QFile file(path("orders.csv"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(csv({repair}));
        file.close();
        COMPARE_STATUS(at({"order", "import", file.fileName()}), ExitStatus::Yes);
        QCOMPARE(at({"trouble", "list"}).array().first().toObject()["trouble"].toString(),
                 "A-1777");
        COMPARE_STATUS(at({"certificate", "issue", "A-1777", "--out", path("c.pdf")}),
                       ExitStatus::No);
        QVERIFY(!QFile::exists(path("c.pdf")));
    }
};

QTEST_MAIN(TroubleCommandsTest)
#include "TroubleCommandsTest.moc"
