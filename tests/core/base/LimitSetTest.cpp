#include "core/base/LimitSet.h"

#include <QFile>
#include <QTest>

using namespace loopwright;

class LimitSetTest : public QObject
{
    Q_OBJECT
    QJsonObject shipped()
    {
        QFile file(LOOPWRIGHT_SOURCE_DIR "/resources/limits/2026-1.json");
        return file.open(QIODevice::ReadOnly) ? *parseJsonObject(file.readAll(), "limits")
                                              : QJsonObject();
    }
private slots:
    void readsTheShippedSet()
    {
        const auto set = LimitSet::fromJson(shipped(), "limits");
        QVERIFY2(set, set ? "" : qPrintable(set.error().text()));
        QCOMPARE(set->version(), "2026-1");
        QCOMPARE(set->value("run_seconds_min"), 900.0);
        for (const Limit &limit : set->all())
            QVERIFY2(!limit.source.isEmpty() && !limit.name.isEmpty(), qPrintable(limit.key));
    }
    void writesWhatItReads()
    {
        const auto set = LimitSet::fromJson(shipped(), "limits");
        QVERIFY(set);
        const auto again = LimitSet::fromJson(set->toJson(), "again");
        QVERIFY(again);
        QCOMPARE(canonicalJson(again->toJson()), canonicalJson(set->toJson()));
    }
    void refusesASetThatLacksAKey()
    {
        QJsonObject object = shipped();
        QJsonArray limits = object["limits"].toArray();
        limits.removeFirst();
        object["limits"] = limits;
        const auto set = LimitSet::fromJson(object, "mine.json");
        QVERIFY(!set);
        QCOMPARE(set.error().text(), "mine.json.limits: lacks \"run_seconds_min\"");
    }
};

QTEST_APPLESS_MAIN(LimitSetTest)
#include "LimitSetTest.moc"
