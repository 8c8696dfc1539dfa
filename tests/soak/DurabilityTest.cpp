// The short form of soak.durability: some rounds of each kind.

#include "tests/soak/Rounds.h"

#include <QGuiApplication>
#include <QHashSeed>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class DurabilityTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

private slots:
    void initTestCase()
    {
        qputenv("XDG_DATA_HOME", QFile::encodeName(m_folder.filePath("home"))); // the keys
    }

    void nothingIsLostHalfDoneOrLeft_data()
    {
        QTest::addColumn<QString>("kind");
        for (const QString &kind : soak::kinds())
            QTest::newRow(qPrintable(kind)) << kind;
    }
    void nothingIsLostHalfDoneOrLeft()
    {
        QFETCH(QString, kind);
        soak::Plan plan{m_folder.filePath(kind)};
        plan.rounds = 20;
        const soak::Tally tally = soak::runRounds(kind, plan);
        if (!tally.skipped.isEmpty())
            QSKIP(qPrintable(tally.skipped));
        QVERIFY2(tally.faults() == 0, qPrintable(tally.line()));
        QCOMPARE(tally.rounds, plan.rounds);
        QVERIFY(tally.acknowledged > 0 && tally.struck > 0);
    }
};

int main(int argc, char **argv)
{
    // What another process must make again byte for byte, as in the programs.
    QHashSeed::setDeterministicGlobalSeed();
    const QGuiApplication application(argc, argv);
    DurabilityTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "DurabilityTest.moc"
