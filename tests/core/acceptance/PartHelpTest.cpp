#include "core/acceptance/PartHelp.h"

#include "core/acceptance/Criteria.h"

#include <QSet>
#include <QTest>

using namespace loopwright;

class PartHelpTest : public QObject
{
    Q_OBJECT

    static bool isOneSentence(const QString &text)
    {
        return text.endsWith('.') && text.count(". ") == 0 && text[0].isUpper();
    }

private slots:
    void everyPartSaysTwoSentences()
    {
        QSet<QString> keys;
        for (const PartHelp &part : partHelps()) {
            QVERIFY2(!keys.contains(part.key), part.key);
            keys << part.key;
            QVERIFY2(isOneSentence(part.whatFor().english()), part.key);
            QVERIFY2(isOneSentence(part.whenItFails().english()), part.key);
        }
        for (const auto &[group, word] : EnumCodes<StepGroup>::table)
            QVERIFY2(keys.contains(word), word);
    }

    void everyStationHasAPart()
    {
        for (const auto &[station, word] : EnumCodes<Station>::table) {
            const auto parts = partHelpsOf(word);
            QVERIFY2(!parts.empty(), word);
            for (const PartHelp *part : parts)
                QCOMPARE(part->station, station);
        }
        QCOMPARE(partHelpsOf("turnup").size(), 3u);
        QCOMPARE(partHelpsOf("leaving").size(), 1u);
        QCOMPARE(partHelpsOf("nothing").size(), 0u);
        QVERIFY(!findPartHelp("nothing"));
    }

    /// On dangerous voltage the words are the criterion's.
    void safetyIsNotWrittenTwice()
    {
        const PartHelp *safety = findPartHelp("safety");
        QVERIFY(safety && !safety->onFailure);
        QCOMPARE(safety->whenItFails().english(), QString(findCriterion("safety")->check));
    }
};

QTEST_APPLESS_MAIN(PartHelpTest)
#include "PartHelpTest.moc"
