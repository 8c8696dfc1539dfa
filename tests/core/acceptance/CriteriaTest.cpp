#include "core/acceptance/Judging.h"
#include "tests/support/Jobs.h"

#include <QDir>
#include <QTest>

using namespace loopwright;

class CriteriaTest : public QObject
{
    Q_OBJECT

    /// The shipped sets, oldest first.
    static std::vector<LimitSet> shipped()
    {
        std::vector<LimitSet> sets;
        const QDir folder(LOOPWRIGHT_SOURCE_DIR "/resources/limits");
        for (const QString &name : folder.entryList({"*.json"}, QDir::Files)) {
            QFile file(folder.filePath(name));
            if (file.open(QIODevice::ReadOnly))
                sets.push_back(
                    LimitSet::fromJson(parseJsonObject(file.readAll(), name).value(), name)
                        .value());
        }
        std::sort(sets.begin(), sets.end(), [](const LimitSet &a, const LimitSet &b) {
            return a.validFrom() < b.validFrom();
        });
        return sets;
    }

private slots:
    // A key that only the newest set has must not shut out the others: old decisions need them.
    void everyShippedSetIsRead() { QVERIFY(!shipped().empty()); }
    void everyCriterionSaysItAllAndOnce()
    {
        QStringList keys;
        for (const Criterion &criterion : criteria()) {
            QVERIFY(!keys.contains(QString(criterion.key)));
            keys << criterion.key;
            QCOMPARE(findCriterion(criterion.key), &criterion);
            const PlainWords &words = criterion.words;
            for (const char *sentence : {words.met, words.marginal, words.failed, words.notShown})
                QVERIFY2(QString(sentence).endsWith('.') && QString(sentence).size() <= 110,
                         sentence);
            QVERIFY(QString(words.met) != words.failed && QString(words.failed) != words.notShown);
            QVERIFY(*criterion.check && *criterion.name);
        }
        QCOMPARE(findCriterion("no such"), nullptr);
    }
    void aNeedSpeaksOfACriterionAndOfFieldsThatItsFactHas()
    {
        for (const OrderFields &fields : {jobs::briFields(), jobs::analogFields()}) {
            const auto needs = needsOf(jobs::order(fields), OrderScope::Full, jobs::limits());
            QVERIFY(needs.size() > 15);
            QStringList keys;
            for (const Need &need : needs) {
                QVERIFY2(!keys.contains(need.key), qPrintable(need.key));
                keys << need.key;
                QVERIFY(need.isOffer() || findCriterion(need.criterion));
                QVERIFY(!need.label.isEmpty());
            }
            for (const Need &need : needs)
                for (const QString &before : need.after)
                    QVERIFY2(keys.contains(before) && keys.indexOf(before) < keys.indexOf(need.key),
                             qPrintable(need.key + " after " + before));
        }
    }
};

QTEST_APPLESS_MAIN(CriteriaTest)
#include "CriteriaTest.moc"
