#include "app/desktop/Lanes.h"

#include "app/actions/Board.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/JobBench.h"

#include <QDir>
#include <QSignalSpy>

using namespace loopwright;

namespace {

/// The same question for ever: ends when the database refuses it.
Result<int> askForEver(Records &records, std::atomic<int> &asked)
{
    for (;;) {
        const auto rows = boardRows(records, {});
        if (!rows)
            return failure(rows.error());
        ++asked;
    }
}

} // namespace

class LanesTest : public QObject
{
    Q_OBJECT

    /// A task that is under way until it is told to end, by whatever way.
    struct Held
    {
        std::atomic<bool> started = false;
        std::atomic<bool> release = false;
        std::atomic<bool> ended = false;

        Result<int> operator()(Records &, const Progress &progress)
        {
            started = true;
            while (!release && progress(0, 1))
                QThread::msleep(1);
            ended = true;
            return 1;
        }
    };

    std::unique_ptr<DeskRecords> m_desk;

    Lane &questions() { return m_desk->workplace().questions(); }
    static std::function<Result<int>(Records &, const Progress &)> number(int n)
    {
        return [n](Records &, const Progress &) -> Result<int> { return n; };
    }
    static std::function<Result<int>(Records &, const Progress &)> held(Held &task)
    {
        return
            [&task](Records &records, const Progress &progress) { return task(records, progress); };
    }

private slots:
    void init() { m_desk = std::make_unique<DeskRecords>(); }
    void cleanup() { m_desk.reset(); }

    void answersInTheThreadThatAsked()
    {
        Asker asker(questions());
        QSignalSpy busy(&asker, &Asker::busyChanged);
        QThread *answeredIn = nullptr, *workedIn = nullptr;
        asker.ask<int>(
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
        QVERIFY(asker.isBusy());
        QTRY_VERIFY(answeredIn != nullptr);
        QCOMPARE(answeredIn, thread());
        QVERIFY(workedIn != thread());
        QVERIFY(!asker.isBusy());
        QCOMPARE(busy.count(), 2);
    }

    void whatIsSupersededIsDroppedBeforeItStarts()
    {
        Held first;
        Asker other(questions()), asker(questions());
        QList<int> answers, started;
        other.ask<int>(held(first), [&](const Result<int> &) { answers << -1; });
        QTRY_VERIFY(first.started);
        for (int i = 0; i < 20; ++i) {
            asker.supersede();
            asker.ask<int>(
                [i, &started](Records &, const Progress &) -> Result<int> {
                    started << i; // in the lane, one after the other
                    return i;
                },
                [&](const Result<int> &answer) { answers << *answer; });
        }
        first.release = true;
        QTRY_VERIFY(!asker.isBusy());
        QCOMPARE(started, QList<int>{19});
        QCOMPARE(answers, (QList<int>{-1, 19})); // the other asker's stands
    }

    void anAnswerThatWasReadyDoesNotArrive()
    {
        Asker asker(questions()), other(questions());
        std::atomic<bool> ready = false;
        QList<int> answers;
        asker.ask<int>(number(1), [&](const Result<int> &answer) { answers << *answer; });
        other.ask<int>(
            [&ready](Records &, const Progress &) -> Result<int> {
                ready = true; // so the one before has answered
                return 2;
            },
            [&](const Result<int> &answer) { answers << *answer; });
        while (!ready)
            QThread::msleep(1); // no event is taken meanwhile
        asker.supersede();
        QVERIFY(!asker.isBusy());
        QTRY_VERIFY(!other.isBusy());
        QTest::qWait(50);
        QCOMPARE(answers, QList<int>{2});
    }

    void whatRunsIsInterruptedInTheDatabase()
    {
        Asker asker(questions());
        std::atomic<int> asked = 0;
        std::atomic<bool> refused = false;
        bool answered = false;
        asker.ask<int>(
            [&](Records &records, const Progress &) {
                auto ended = askForEver(records, asked);
                refused = ended.error().code == ErrorCode::Refused;
                return ended;
            },
            [&](const Result<int> &) { answered = true; });
        QTRY_VERIFY(asked > 3);
        asker.supersede();
        QTRY_VERIFY(refused);
        // The next one has the same connection, and is not interrupted.
        std::optional<Result<std::vector<BoardRow>>> rows;
        asker.ask<std::vector<BoardRow>>(
            [](Records &records, const Progress &) { return boardRows(records, {}); },
            [&](const Result<std::vector<BoardRow>> &answer) { rows = answer; });
        QTRY_VERIFY(rows.has_value());
        QVERIFY(rows->has_value());
        QCOMPARE((*rows)->size(), 8U);
        QVERIFY(!answered);
    }

    void longWorkHoldsNoQuestionUp()
    {
        Held work;
        Asker importer(m_desk->workplace().longWork()), asker(questions());
        bool imported = false;
        importer.ask<int>(held(work), [&](const Result<int> &) { imported = true; });
        QTRY_VERIFY(work.started);
        int answer = 0;
        asker.ask<int>(number(7), [&](const Result<int> &each) { answer = *each; });
        QTRY_COMPARE(answer, 7);
        QVERIFY(!imported);
        work.release = true;
        QTRY_VERIFY(imported);
    }

    void whatRunsIsAskedToStop()
    {
        Asker asker(m_desk->workplace().longWork());
        QSignalSpy progressed(&asker, &Asker::progressed);
        std::optional<Error> error;
        asker.ask<int>(
            [](Records &, const Progress &progress) -> Result<int> {
                for (qint64 i = 0; progress(i, 1'000'000); ++i)
                    QThread::msleep(1);
                return failure(ErrorCode::Refused, QStringLiteral("stopped"));
            },
            [&](const Result<int> &answer) { error = answer.error(); });
        QTRY_VERIFY(progressed.count() > 0);
        asker.stop();
        QTRY_VERIFY(error.has_value());
        QCOMPARE(error->message, "stopped");
        int answer = 0; // and the next one is not stopped
        asker.ask<int>(
            [](Records &, const Progress &progress) -> Result<int> {
                return progress(0, 1) ? 5 : 6;
            },
            [&](const Result<int> &each) { answer = *each; });
        QTRY_COMPARE(answer, 5);
    }

    void anAskerThatGoesGetsNoAnswer()
    {
        auto work = std::make_shared<Held>();
        bool answered = false;
        {
            Asker asker(questions());
            asker.ask<int>([work](Records &records,
                                  const Progress &progress) { return (*work)(records, progress); },
                           [&](const Result<int> &) { answered = true; });
            QTRY_VERIFY(work->started);
        }
        QTRY_VERIFY(work->ended); // its progress said no
        Asker other(questions());
        int answer = 0;
        other.ask<int>(number(3), [&](const Result<int> &each) { answer = *each; });
        QTRY_COMPARE(answer, 3);
        QVERIFY(!answered);
    }

    void aLaneThatGoesWaitsForWhatRuns()
    {
        std::atomic<int> asked = 0;
        std::atomic<bool> ended = false;
        bool answered = false;
        auto lane = std::make_unique<Lane>([this] { return m_desk->workplace().another(); });
        lane->put(std::make_shared<Ticket>(), [&](Result<Records *> records) -> Lane::Answer {
            ended = !askForEver(**records, asked);
            return [&] { answered = true; };
        });
        QTRY_VERIFY(asked > 0);
        lane.reset();
        QVERIFY(ended);
        QTest::qWait(20);
        QVERIFY(!answered);
    }

    void anIdleJobPageHasAskedInOneLaneOnly()
    {
        m_desk.reset(); // and its lanes
        jobs::JobBench bench({jobs::briFields()});
        bench.openJob("A-1001");
        QTest::qWait(200);
        int lanes = 0;
        const QDir tasks("/proc/self/task");
        for (const QString &task : tasks.entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
            QFile name(tasks.filePath(task + "/comm"));
            if (name.open(QIODevice::ReadOnly) && name.readAll() == "lane\n")
                ++lanes;
        }
        QCOMPARE(lanes, 1); // of questions; nothing takes long
    }

    void recordsThatCannotBeOpenedAreTold()
    {
        DesktopContext broken(nullptr, m_desk->file("broken.sqlite", QByteArray(5000, 'x')), {},
                              {});
        Asker asker(broken.questions());
        std::optional<Error> error;
        asker.ask<int>(number(1), [&](const Result<int> &answer) { error = answer.error(); });
        QTRY_VERIFY(error.has_value());
        QCOMPARE(error->code, ErrorCode::DatabaseTrouble);
    }
};

QTEST_MAIN(LanesTest)
#include "LanesTest.moc"
