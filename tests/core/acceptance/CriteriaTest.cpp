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
    void aSetFromBeforeALimitDoesNotKnowItsCriterion()
    {
        Criterion later = criteria().front();
        later.cameWith = "slips_max";
        const LimitSet before = jobs::limits();
        QVERIFY(!knows(before, later));
        QVERIFY(knows(before, criteria().front()));
        QJsonObject object = before.toJson();
        QJsonArray limits = object["limits"].toArray();
        limits << QJsonObject{{"key", "slips_max"},
                              {"value", 0},
                              {"unit", ""},
                              {"name", "Slips, at most"},
                              {"source", "common practice"}};
        object["limits"] = limits;
        const auto after = LimitSet::fromJson(object, "after");
        QVERIFY(after);
        QVERIFY(knows(*after, later));
    }
    // A key that only the newest set has must not shut out the others: old decisions need them.
    void everyShippedSetIsRead() { QVERIFY(!shipped().empty()); }
    void theNewestShippedSetKnowsEveryCriterion()
    {
        const LimitSet newest = shipped().back();
        for (const Criterion &criterion : criteria())
            QVERIFY2(knows(newest, criterion), criterion.key);
    }
};

QTEST_APPLESS_MAIN(CriteriaTest)
#include "CriteriaTest.moc"
