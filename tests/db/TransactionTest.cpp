#include "db/Transaction.h"

#include "db/Connection.h"
#include "db/Statement.h"
#include "tests/support/Records.h"
#include "tests/support/SmallDisk.h"

#include <QProcess>
#include <QRandomGenerator>
#include <QTemporaryDir>

#include <iostream>
#include <signal.h>

using namespace loopwright;

namespace {

void writeDraft(Transaction &transaction, const QString &order, const QByteArray &content = "{}")
{
    Statement put(transaction, "draft.put");
    put.bind("order_number", order).bind("part", "x").bindBytes("content", content);
    if (!put.run())
        qFatal("the draft was not written");
}

Result<void> writeWithEvent(Database &database, int number)
{
    auto transaction = Transaction::begin(database);
    if (!transaction)
        return failure(transaction.error());
    Statement put(*transaction, "draft.put");
    put.bind("order_number", QString::number(number)).bind("part", "x").bindJson("content", {});
    LOOPWRIGHT_TRY(put.run());
    Event event = sampleEvent(circuitSubject("C-1"));
    event.order = QString::number(number);
    return transaction->commit(event);
}

/// The program that will be killed: says each number when it is told that it is safe.
int writeUntilKilled(const QString &path)
{
    auto database = Database::open(path);
    if (!database)
        return 1;
    const auto next = database->connection().number("SELECT count(*) FROM event");
    for (int number = int(*next);; ++number) {
        if (!writeWithEvent(*database, number))
            return 2;
        std::cout << number << std::endl;
    }
}

} // namespace

class TransactionTest : public QObject
{
    Q_OBJECT
    static qint64 count(const Database &database, const QByteArray &table)
    {
        return *database.connection().number("SELECT count(*) FROM " + table);
    }

private slots:
    void rollsBackUnlessCommitted()
    {
        Database database = recordsInMemory();
        {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            writeDraft(*transaction, "SO-1");
        }
        QCOMPARE(count(database, "draft"), 0);
        QVERIFY(!database.connection().inTransaction());
        QVERIFY_RESULT(writeWithEvent(database, 1));
        QCOMPARE(count(database, "draft"), 1);
    }
    void chainsTheEvents()
    {
        Database database = recordsInMemory();
        for (int i = 0; i < 3; ++i)
            QVERIFY_RESULT(writeWithEvent(database, i));
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        QVERIFY_RESULT(transaction->commit({sampleEvent(), sampleEvent(circuitSubject("C-1")),
                                            sampleEvent(circuitSubject("C-1"))}));
        QCOMPARE(*database.connection().texts(
                     "SELECT subject || sequence FROM event ORDER BY log_position"),
                 (QStringList{"circuit:C-11", "circuit:C-12", "circuit:C-13", "register1",
                              "circuit:C-14", "circuit:C-15"}));
        QCOMPARE(*database.connection().number(
                     "SELECT count(*) FROM event AS e JOIN event AS b ON b.subject = e.subject "
                     "AND b.sequence = e.sequence - 1 AND b.digest = e.previous"),
                 4);
        QCOMPARE(*database.connection().text("SELECT digest FROM chain_head WHERE subject = "
                                             "'circuit:C-1'"),
                 *database.connection().text("SELECT digest FROM event WHERE sequence = 5"));
    }
    void aCommitNeedsAnEvent_data()
    {
        QTest::addColumn<QString>("subject");
        QTest::addColumn<QString>("by");
        QTest::addColumn<QString>("kind");
        QTest::newRow("no subject") << ""
                                    << "A"
                                    << "k";
        QTest::newRow("no name") << "register"
                                 << ""
                                 << "k";
        QTest::newRow("no kind") << "register"
                                 << "A"
                                 << "";
        QTest::newRow("unknown subject") << "office"
                                         << "A"
                                         << "k";
    }
    void aCommitNeedsAnEvent()
    {
        QFETCH(QString, subject);
        QFETCH(QString, by);
        QFETCH(QString, kind);
        Database database = recordsInMemory();
        {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            QVERIFY(!transaction->commit(std::vector<Event>()));
            Event event = sampleEvent(subject, kind);
            event.by = by;
            QVERIFY(!transaction->commit(event));
        }
        QCOMPARE(count(database, "event"), 0);
    }
    void sealsGoIntoTheEventOfTheirSubject()
    {
        Database database = recordsInMemory();
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        transaction->seal("register", {"office", "SPFD", "d1"});
        transaction->seal("circuit:C-1", {"fact", "f", "d2"});
        QVERIFY_RESULT(transaction->commit({sampleEvent(circuitSubject("C-1")), sampleEvent()}));
        // On a server the detail says who was logged in, too.
        QVERIFY(database.connection()
                    .text("SELECT detail FROM event WHERE subject <> 'register'")
                    ->startsWith(R"({"seals":[{"digest":"d2","id":"f","row":"fact"}])"));
    }
    void recordedEventsCountWithTheCommit()
    {
        Database database = recordsInMemory();
        {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            QVERIFY_RESULT(transaction->record(sampleEvent()));
        }
        QCOMPARE(count(database, "event"), 0);
        auto transaction = Transaction::begin(database);
        QVERIFY_RESULT(transaction);
        transaction->seal("register", {"office", "SPFD", "d1"});
        QVERIFY_RESULT(transaction->record(sampleEvent()));
        transaction->seal("register", {"office", "MILL", "d2"});
        QVERIFY(!transaction->commit(std::vector<Event>())); // of a row behind the event
        QVERIFY_RESULT(transaction->record(sampleEvent()));
        QVERIFY_RESULT(transaction->commit(std::vector<Event>()));
        QVERIFY(!transaction->record(sampleEvent()));
        const auto details =
            database.connection().texts("SELECT detail FROM event ORDER BY log_position");
        QCOMPARE(details->size(), 2);
        QVERIFY(details->front().contains("SPFD"));
        QVERIFY(details->back().contains("MILL"));
    }
    void rowsWithoutAnEventAreRefused()
    {
        Database database = recordsInMemory();
        {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            transaction->seal("circuit:C-1", {"fact", "f", "d2"});
            const auto done = transaction->commit(sampleEvent());
            QVERIFY(!done);
            QVERIFY(done.error().message.contains("circuit:C-1"));
        }
        QCOMPARE(count(database, "event"), 0);
    }
    void draftsNeedNoEventButNothingElse()
    {
        Database database = recordsInMemory();
        {
            auto transaction = Transaction::begin(database);
            QVERIFY_RESULT(transaction);
            writeDraft(*transaction, "SO-1");
            QVERIFY(!transaction->commitDraft()); // nobody said that this was a draft
            transaction->countDraftChanges(1);
            QVERIFY_RESULT(transaction->commitDraft());
            QVERIFY(!transaction->commitDraft());
        }
        QCOMPARE(count(database, "draft"), 1);
    }
    void aSecondTransactionWaitsAndThenSaysLocked()
    {
        QTemporaryDir folder;
        auto one = Database::open(folder.filePath("r.sqlite"));
        auto two = Database::open(folder.filePath("r.sqlite"));
        QVERIFY_RESULT(one);
        QVERIFY_RESULT(two);
        const auto held = Transaction::begin(*one);
        QVERIFY_RESULT(held);
        QElapsedTimer timer;
        timer.start();
        const auto refused = Transaction::begin(*two);
        QVERIFY(!refused);
        QVERIFY(timer.elapsed() >= 2000);
        QCOMPARE(errorName(refused.error().code), errorName(ErrorCode::Busy));
        QVERIFY(refused.error().message.contains("locked by another program"));
    }
    void nothingThatWasAcknowledgedIsLost()
    {
        QTemporaryDir folder;
        const QString path = folder.filePath("r.sqlite");
        int acknowledged = -1;
        for (int round = 0; round < 12; ++round) {
            QProcess writer;
            writer.start(QCoreApplication::applicationFilePath(), {"write", path});
            QVERIFY(writer.waitForReadyRead());
            QTest::qSleep(QRandomGenerator::global()->bounded(40));
            ::kill(pid_t(writer.processId()), SIGKILL);
            QVERIFY(writer.waitForFinished());
            const QByteArray said = writer.readAllStandardOutput();
            const qsizetype end = said.lastIndexOf('\n');
            acknowledged = said.left(end).split('\n').last().toInt();
            const auto database = Database::open(path);
            QVERIFY_RESULT(database);
            QVERIFY_RESULT(database->checkIntegrity());
            // Change and event are there together, and perhaps one more that was not yet told.
            QCOMPARE(count(*database, "draft"), count(*database, "event"));
            QVERIFY(count(*database, "event") >= acknowledged + 1);
            QVERIFY(count(*database, "event") <= acknowledged + 2);
            QCOMPARE(*database->connection().number("SELECT events FROM chain_head"),
                     count(*database, "event"));
        }
        QVERIFY(acknowledged > 12);
    }
    void aFullDiskChangesNothing()
    {
        SmallDisk disk("2m");
        if (!disk.mounted())
            QSKIP("needs root, to mount a small disk");
        auto database = Database::open(disk.file("r.sqlite"));
        QVERIFY_RESULT(database);
        QVERIFY_RESULT(writeWithEvent(*database, 1));
        disk.fill("filler");
        Result<void> done;
        for (int number = 2; done && number < 1000; ++number) {
            auto transaction = Transaction::begin(*database);
            QVERIFY_RESULT(transaction);
            Statement put(*transaction, "draft.put");
            put.bind("order_number", QString::number(number))
                .bind("part", "x")
                .bindBytes("content", "\"" + QByteArray(50'000, 'x') + "\"");
            const auto put1 = put.run();
            done = put1 ? transaction->commit(sampleEvent(circuitSubject("C-1")))
                        : Result<void>(failure(put1.error()));
        }
        QVERIFY(!done);
        QVERIFY2(done.error().code == ErrorCode::DiskTrouble, qPrintable(done.error().text()));
        QCOMPARE(count(*database, "draft"), count(*database, "event"));
        QVERIFY_RESULT(database->checkIntegrity());
        QVERIFY(QFile::remove(disk.file("filler")));
        QVERIFY_RESULT(writeWithEvent(*database, 1001)); // and it goes on
    }
};

int main(int argc, char **argv)
{
    QCoreApplication application(argc, argv);
    if (argc == 3 && QByteArray(argv[1]) == "write")
        return writeUntilKilled(QString::fromLocal8Bit(argv[2]));
    TransactionTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "TransactionTest.moc"
