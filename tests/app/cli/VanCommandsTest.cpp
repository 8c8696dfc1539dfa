// Vans on the command line, by the contract's statuses and fields.

#include "app/actions/Keys.h"
#include "app/actions/Records.h"
#include "tests/support/CommandRun.h"
#include "tests/support/SmallRecords.h"

#include <QTemporaryDir>

#include <csignal>

using namespace loopwright;
using namespace loopwright::jobs;

class VanCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    /// Each machine has keys of its own.
    Answered at(const char *place, const QStringList &words, const QString &by) const
    {
        const QByteArray before = qgetenv("XDG_DATA_HOME");
        qputenv("XDG_DATA_HOME", path(QString(place) + "-home").toUtf8());
        const Answered answered =
            call(words + QStringList{"--db", path(QString(place) + ".sqlite"), "--now",
                                     "2026-03-05T12:00:00-06:00", "--by", by, "--json"});
        qputenv("XDG_DATA_HOME", before);
        return answered;
    }
    Answered office(const QStringList &words, const QString &by = "D4") const
    {
        return at("office", words, by);
    }
    Answered van(const QStringList &words) const { return at("van", words, "K7"); }
    Answered take(const QStringList &orders) const
    {
        return office(QStringList{"van", "take"} + orders +
                      QStringList{"--to", "van-7", "--out", path("out.json")});
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        makeSmallRecords(path("office.sqlite"));
        COMPARE_STATUS(van({"key", "export", "--out", path("van.key")}), ExitStatus::Yes);
        COMPARE_STATUS(office({"key", "renew", "--because", "of this machine"}, "Dana"),
                       ExitStatus::Yes);
        COMPARE_STATUS(office({"van", "add", "van-7", "--key", path("van.key")}), ExitStatus::Yes);
    }

    void anOrderGoesOutAndComesHome()
    {
        const Answered taken = take({"A-2001"});
        COMPARE_STATUS(taken, ExitStatus::Yes);
        QCOMPARE(taken.object()["orders"].toArray(), QJsonArray{"A-2001"});
        QCOMPARE(taken.object()["files"].toArray(), QJsonArray{path("out.json")});
        QCOMPARE(office({"order", "list", "--out"}).array().size(), 1);
        QCOMPARE(office({"order", "list", "--out"})
                     .array()
                     .first()["out"]
                     .toArray()
                     .first()["station"]
                     .toString(),
                 "van-7");
        COMPARE_STATUS(office({"export", "view", "--out", path("view.csv"), "--with-van"}),
                       ExitStatus::Yes);
        const QByteArray view = contentOf(path("view.csv"));
        QVERIFY2(view.contains(",van-7 since 2026-") && view.trimmed().endsWith(",0"),
                 view.constData());
        COMPARE_STATUS(van({"van", "bring", "--out", path("back.json")}), ExitStatus::No);
        QVERIFY(!QFile::exists(path("back.json")));
        COMPARE_STATUS(van({"van", "open", path("out.json")}), ExitStatus::Yes);
        QList<QJsonObject> facts = analogFacts();
        for (qsizetype i = 0; i < facts.size(); ++i)
            facts[i]["id"] = uuid(500 + int(i)); // those of the other line have the first ones
        written(path("job.json"), recordBytes(analogFields(), facts));
        COMPARE_STATUS(van({"record", path("job.json")}), ExitStatus::Yes);
        const Answered brought = van({"van", "bring", "--out", path("back.json")});
        COMPARE_STATUS(brought, ExitStatus::Yes);
        QCOMPARE(brought.object()["facts"].toInt(), int(analogFacts().size()));
        const Answered received = office({"van", "receive", path("back.json")});
        COMPARE_STATUS(received, ExitStatus::Yes);
        const QJsonObject file = received.object()["files"].toArray().first().toObject();
        QCOMPARE(file["verdict"].toString(), "received");
        QCOMPARE(file["station"].toString(), "van-7");
        QCOMPARE(file["orders"].toArray().first()["verdict"].toString(), "joined");
        QCOMPARE(office({"van", "list"}).array().first()["state"].toString(), "back");
        QCOMPARE(office({"order", "list", "--out"}).array(), QJsonArray());
        const QJsonObject fact =
            office({"order", "show", "A-2001"}).object()["facts"].toArray().first().toObject();
        QCOMPARE(fact["station"].toString(), "van-7");
        QCOMPARE(office({"van", "receive", path("back.json")})
                     .object()["files"]
                     .toArray()
                     .first()["verdict"]
                     .toString(),
                 "already_there");
    }

    void aBulkChangeTellsWhatIsOut()
    {
        const QStringList split{"bulk",   "area_code", "--office", "NORTH",
                                "--from", "217",       "--to",     "447"};
        QCOMPARE(office(split).object()["out"].toInt(), 0);
        take({"A-2001"});
        const Answered seen = office(split);
        COMPARE_STATUS(seen, ExitStatus::No); // SPIDs that hold the old code are kept and named
        QCOMPARE(seen.object()["out"].toInt(), 1);
        QVERIFY(seen.object()["orders"].toInt() > 1);
    }

    void whatIsOutIsRefusedUnlessSaid()
    {
        take({"A-2001"});
        const QStringList set{"order", "set", "A-2001", "contact=Ada"};
        const Answered refused = office(set);
        COMPARE_STATUS(refused, ExitStatus::No);
        QCOMPARE(refused.errorCode(), "order_out");
        COMPARE_STATUS(office(set + QStringList{"--anyway"}), ExitStatus::Yes);
        COMPARE_STATUS(office({"order", "cancel", "A-2001", "--because", "moved"}), ExitStatus::No);
        COMPARE_STATUS(office({"order", "assign", "A-2001", "--installer", "K7"}), ExitStatus::No);
        COMPARE_STATUS(office({"order", "assign", "A-2001", "--installer", "K7", "--anyway"}),
                       ExitStatus::Yes);
    }

    void statuses()
    {
        COMPARE_STATUS(take({"none"}), ExitStatus::BadInput);
        QVERIFY(!QFile::exists(path("out.json")));
        COMPARE_STATUS(office({"van", "take", "A-2001", "--to", "nobody", "--out", path("o.json")}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(office({"van", "take", "--to", "van-7", "--out", path("o.json")}),
                       ExitStatus::Usage);
        const Answered closed = take({"A-1001"}); // completed
        COMPARE_STATUS(closed, ExitStatus::No);
        QCOMPARE(closed.object()["findings"].toArray().first()["code"].toString(), "order_closed");
        QVERIFY(closed.object()["bundle"].isNull());
        written(path("damaged.json"), "{\"bundle\":{}");
        const Answered damaged = office({"van", "receive", path("damaged.json")});
        COMPARE_STATUS(damaged, ExitStatus::BadInput);
        QCOMPARE(damaged.object()["files"].toArray().first()["code"].toString(), "damaged");
        COMPARE_STATUS(office({"van", "settle", "none", "--side", "office", "--because", "x"}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(office({"van", "conflicts", "none"}), ExitStatus::BadInput);
        QCOMPARE(office({"van", "conflicts"}).array(), QJsonArray());
    }

    /// By the table of trust: vans are the dispatcher's, to lose one the supervisor's.
    void roles()
    {
        COMPARE_STATUS(office({"van", "add", "van-8", "--key", path("van.key")}, "K7"),
                       ExitStatus::No);
        COMPARE_STATUS(office({"van", "lost", "van-7", "--because", "stolen"}), ExitStatus::No);
        COMPARE_STATUS(office({"van", "lost", "van-7", "--because", "stolen"}, "Dana"),
                       ExitStatus::Yes);
        COMPARE_STATUS(take({"A-2001"}), ExitStatus::No);
        COMPARE_STATUS(office({"van", "lost", "nobody", "--because", "stolen"}, "Dana"),
                       ExitStatus::BadInput);
        COMPARE_STATUS(office({"van", "lost", "van-7", "--because", " "}, "Dana"),
                       ExitStatus::Usage);
    }

    void anotherTagNeedsToBeSaid()
    {
        QVERIFY(QFile::remove(path("van.sqlite")));
        QFile::remove(path("van.sqlite-wal"));
        QFile::remove(path("van.sqlite-shm"));
        COMPARE_STATUS(van({"key", "export", "--out", path("new.key")}), ExitStatus::Yes);
        COMPARE_STATUS(office({"van", "add", "van-7", "--key", path("new.key")}), ExitStatus::No);
        COMPARE_STATUS(office({"van", "add", "van-7", "--key", path("new.key"), "--renew"}),
                       ExitStatus::Yes);
        COMPARE_STATUS(office({"van", "add", "van-8", "--key", path("new.key")}), ExitStatus::No);
    }

    /// The last one: what asked to stop stays asked for.
    void whatIsInterruptedSaysWhatStands()
    {
        take({"A-2001"}); // from now on Ctrl-C is watched for
        COMPARE_STATUS(van({"van", "open", path("out.json")}), ExitStatus::Yes);
        QList<QJsonObject> facts{analogFacts()[1]};
        facts[0]["id"] = uuid(500);
        written(path("job.json"), recordBytes(analogFields(), facts));
        COMPARE_STATUS(van({"record", path("job.json")}), ExitStatus::Yes);
        COMPARE_STATUS(van({"van", "bring", "--out", path("back.json")}), ExitStatus::Yes);
        QVERIFY(QFile::copy(path("out.json"), path("again.json")));
        QVERIFY(QFile::remove(path("out.json")));
        std::raise(SIGINT);
        const auto isStopped = [](const Answered &answered) {
            return answered.status == int(ExitStatus::Interrupted) &&
                   answered.error().value("message").toString() ==
                       "It was stopped; nothing was changed.";
        };
        QVERIFY(isStopped(take({"A-2001"})));
        QVERIFY(!QFile::exists(path("out.json")));
        QVERIFY(isStopped(van({"van", "bring", "--out", path("more.json")})));
        QVERIFY(!QFile::exists(path("more.json")));
        QVERIFY(isStopped(van({"van", "open", path("again.json")})));
        QVERIFY(isStopped(office({"van", "receive", path("back.json")})));
        QCOMPARE(office({"van", "list"}).array().first()["state"].toString(), "out");
    }
};

QTEST_MAIN(VanCommandsTest)
#include "VanCommandsTest.moc"
