#include "core/acceptance/LoopState.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class LoopStateTest : public QObject
{
    Q_OBJECT

    static DecisionInput inputWith(const QJsonObject &content)
    {
        return jobs::input(jobs::briFields(),
                           {jobs::safety(1, 5), jobs::fact(3, "loop", 10, content)});
    }

private slots:
    void aLossWithoutFrequencyCountsForNothing()
    {
        QVERIFY(loopState(inputWith({{"loss_db", 30}}), jobs::limits()).measured.losses.empty());
    }
    void aFrequencyThatWasToldStays()
    {
        const DecisionInput input = inputWith({{"loss_db", 6}, {"frequency_hz", 1004}});
        QCOMPARE(loopState(input, jobs::limits()).measured.losses.at(0).frequencyHz, 1004.0);
    }
};

QTEST_APPLESS_MAIN(LoopStateTest)
#include "LoopStateTest.moc"
