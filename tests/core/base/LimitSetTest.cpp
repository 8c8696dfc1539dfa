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
    /// One that is spelt wrong would be taken for none.
    void refusesAKeyThatNothingAsksFor()
    {
        const auto with = [this](const char *key) {
            QJsonObject object = shipped();
            QJsonArray limits = object["limits"].toArray();
            limits << QJsonObject{{"key", QLatin1StringView(key)},
                                  {"value", 2},
                                  {"unit", "ohm"},
                                  {"name", "Uncertainty"},
                                  {"source", "the maker's sheet"}};
            object["limits"] = limits;
            return LimitSet::fromJson(object, "mine.json");
        };
        QVERIFY(with("uncertainty_resistance"));
        const auto misspelt = with("uncertainty_resistence");
        QVERIFY(!misspelt);
        QVERIFY2(misspelt.error().text().endsWith(
                     "key: \"uncertainty_resistence\" is no limit that anything is held against"),
                 qPrintable(misspelt.error().text()));
        QVERIFY(!with("uncertainty_loss")); // in dB
    }
    void refusesALimitThatCannotBeMeant_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("field");
        QTest::addColumn<QJsonValue>("value");
        QTest::addColumn<QString>("error");
        QTest::newRow("metres") << "bri_tap_total_max"
                                << "unit" << QJsonValue("m")
                                << "].unit: of \"bri_tap_total_max\" must be \"ft\"";
        QTest::newRow("per cent")
            << "run_esr_max"
            << "unit" << QJsonValue("%")
            << "].unit: of \"run_esr_max\" must be empty: it is a pure number";
        QTest::newRow("below nothing")
            << "bri_loss_max"
            << "value" << QJsonValue(-42) << "].value: of \"bri_loss_max\" must be from 0 to 1e+12";
        QTest::newRow("more than all")
            << "run_esr_max"
            << "value" << QJsonValue(1.2) << "].value: of \"run_esr_max\" must be from 0 to 1";
        QTest::newRow("good beyond marginal")
            << "loss_1004_good_max"
            << "value" << QJsonValue(10.5)
            << "limits: has a \"loss_1004_good_max\" above its \"loss_1004_marginal_max\"";
    }
    void refusesALimitThatCannotBeMeant()
    {
        QFETCH(QString, key);
        QFETCH(QString, field);
        QFETCH(QJsonValue, value);
        QJsonObject object = shipped();
        QJsonArray limits;
        for (const QJsonValue &each : object["limits"].toArray()) {
            QJsonObject limit = each.toObject();
            if (limit["key"] == key)
                limit[field] = value;
            limits << limit;
        }
        object["limits"] = limits;
        const auto set = LimitSet::fromJson(object, "mine.json");
        QVERIFY(!set);
        QFETCH(QString, error);
        QVERIFY2(set.error().text().endsWith(error), qPrintable(set.error().text()));
    }
};

QTEST_APPLESS_MAIN(LimitSetTest)
#include "LimitSetTest.moc"
