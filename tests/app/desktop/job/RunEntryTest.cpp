// The entry of a run that a test set wrote down second by second.

#include "app/desktop/job/RunEntry.h"

#include "app/desktop/widgets/SignLine.h"
#include "tests/support/JobBench.h"

using namespace loopwright;
using namespace loopwright::jobs;

class RunEntryTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString file(const QByteArray &content)
    {
        QFile file(m_folder.filePath("seconds.csv"));
        if (!file.open(QIODevice::WriteOnly) || file.write(content) != content.size())
            qFatal("cannot write");
        return file.fileName();
    }
    /// The line below the entry.
    static QStringList told(const RunEntry &entry)
    {
        for (const SignLine *line : entry.findChildren<SignLine *>())
            if (line->isVisibleTo(&entry) && line->text().contains("seconds.csv"))
                return line->text().split('\n');
        return {};
    }

private slots:
    void namesEveryOddRow()
    {
        JobBench bench({briFields()});
        bench.openJob("A-1001");
        auto &entry = *bench.window().findChild<RunEntry *>();
        QVERIFY(!entry.takeFile(file("0,x\n1,0\n3,0\n")));
        QCOMPARE(told(entry),
                 (QStringList{"seconds.csv is not taken:",
                              "row 1, column bit_errors: \"x\" is not a number of bit errors",
                              "row 3, column second: 1 s is missing before \"3\""}));
        QByteArray many;
        for (int n = 0; n < 900; ++n)
            many += QByteArray::number(n) + ",x\n";
        QVERIFY(!entry.takeFile(file(many)));
        QCOMPARE(told(entry).size(), 14);
        QCOMPARE(told(entry).last(), QString("888 more are odd"));
        QVERIFY(entry.takeFile(file("0,0\n1,5\n")));
        QCOMPARE(told(entry), QStringList{"2 seconds taken from seconds.csv."});
        QVERIFY(entry.takeFile(file("0,0\n")));
        QCOMPARE(told(entry), QStringList{"1 second taken from seconds.csv."});
    }
};

QTEST_MAIN(RunEntryTest)
#include "RunEntryTest.moc"
