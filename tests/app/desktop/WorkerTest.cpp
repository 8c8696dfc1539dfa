#include "app/desktop/Worker.h"

#include "app/actions/Board.h"
#include "tests/support/DeskRecords.h"

#include <QSignalSpy>

using namespace loopwright;

class WorkerTest : public QObject
{
    Q_OBJECT

private slots:
    void answersInTheThreadThatAsked()
    {
        DeskRecords records;
        Worker worker(records.workplace());
        QThread *answeredIn = nullptr, *workedIn = nullptr;
        worker.run<int>(
            [&workedIn](Records &records, const Progress &) -> Result<int> {
                workedIn = QThread::currentThread();
                const auto rows = boardRows(records, {});
                if (!rows)
                    return failure(rows.error());
                return int(rows->size());
            },
            [&](const Result<int> &answer) {
                answeredIn = QThread::currentThread();
                QVERIFY(answer);
                QCOMPARE(*answer, 8);
            });
        QVERIFY(worker.isBusy());
        QTRY_VERIFY(answeredIn != nullptr);
        QCOMPARE(answeredIn, thread());
        QVERIFY(workedIn != thread());
        QVERIFY(!worker.isBusy());
    }

    void aNewerTaskTakesThePlaceOfTheOlder()
    {
        DeskRecords records(false);
        Worker worker(records.workplace());
        QList<int> answers;
        for (int i = 0; i < 20; ++i) {
            worker.supersede();
            worker.run<int>([i](Records &, const Progress &) -> Result<int> { return i; },
                            [&](const Result<int> &answer) { answers << *answer; });
        }
        QTRY_VERIFY(!worker.isBusy());
        QCOMPARE(answers, QList<int>{19});
    }

    void aRunningTaskIsAskedToStop()
    {
        DeskRecords records(false);
        Worker worker(records.workplace());
        std::atomic<bool> started = false;
        QSignalSpy progressed(&worker, &Worker::progressed);
        std::optional<Error> error;
        worker.run<int>(
            [&started](Records &, const Progress &progress) -> Result<int> {
                started = true;
                for (qint64 i = 0; progress(i, 1'000'000); ++i)
                    QThread::msleep(1);
                return failure(ErrorCode::Refused, QStringLiteral("stopped"));
            },
            [&](const Result<int> &answer) { error = answer.error(); });
        QTRY_VERIFY(started);
        QTRY_VERIFY(progressed.count() > 0);
        worker.cancel();
        QTRY_VERIFY(error.has_value());
        QCOMPARE(error->message, "stopped");
    }

    void destroyingWaitsForWhatRuns()
    {
        DeskRecords records(false);
        std::atomic<bool> ended = false;
        {
            Worker worker(records.workplace());
            std::atomic<bool> started = false;
            worker.run<int>(
                [&](Records &, const Progress &progress) -> Result<int> {
                    started = true;
                    while (progress(0, 1))
                        QThread::msleep(1);
                    ended = true;
                    return 0;
                },
                [](const Result<int> &) { QFAIL("answers after its end"); });
            QTRY_VERIFY(started);
        }
        QVERIFY(ended);
    }

    void recordsThatCannotBeOpenedAreTold()
    {
        DeskRecords records(false);
        DesktopContext broken(nullptr, records.file("broken.sqlite", QByteArray(5000, 'x')), {},
                              {});
        Worker worker(broken);
        std::optional<Error> error;
        worker.run<int>([](Records &, const Progress &) -> Result<int> { return 1; },
                        [&](const Result<int> &answer) { error = answer.error(); });
        QTRY_VERIFY(error.has_value());
        QCOMPARE(error->code, ErrorCode::DatabaseTrouble);
    }
};

QTEST_MAIN(WorkerTest)
#include "WorkerTest.moc"
