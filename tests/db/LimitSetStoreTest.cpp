#include "db/LimitSetStore.h"

#include "db/Connection.h"
#include "tests/support/StoredJobs.h"

using namespace loopwright;

class LimitSetStoreTest : public QObject
{
    Q_OBJECT
    Database m_database = recordsInMemory();

    static LimitSet set(const char *version, const char *from)
    {
        QJsonObject object = jobs::limits().toJson();
        object["version"] = version;
        object["valid_from"] = from;
        return *LimitSet::fromJson(object, "set");
    }
    Result<bool> add(const LimitSet &set)
    {
        bool added = false;
        const auto done =
            jobs::inTransaction(m_database, registerSubject(), [&](Transaction &t) -> Result<void> {
                const auto result = LimitSetStore::add(t, set);
                if (!result)
                    return failure(result.error());
                added = *result;
                return {};
            });
        if (!done)
            return failure(done.error());
        return added;
    }

private slots:
    void init() { m_database = recordsInMemory(); }
    void theNewestValidSetIsInForce_data()
    {
        QTest::addColumn<QDate>("day");
        QTest::addColumn<QString>("version");
        QTest::newRow("before") << QDate(2025, 12, 31) << "";
        QTest::newRow("first day") << QDate(2026, 1, 1) << "a";
        QTest::newRow("last day") << QDate(2026, 5, 31) << "a";
        QTest::newRow("next set, mended the same day") << QDate(2026, 6, 1) << "c";
        QTest::newRow("far") << QDate(2030, 1, 1) << "c";
    }
    void theNewestValidSetIsInForce()
    {
        QFETCH(QDate, day);
        QFETCH(QString, version);
        QVERIFY_RESULT(add(set("b", "2026-06-01")));
        QVERIFY_RESULT(add(set("c", "2026-06-01")));
        QVERIFY_RESULT(add(set("a", "2026-01-01")));
        const auto found = LimitSetStore(m_database).inForceOn(day);
        QVERIFY_RESULT(found);
        QCOMPARE(*found ? (*found)->version() : QString(), version);
    }
    void whatWasReadBeforeIsReadAnewWhereItChanged()
    {
        ReadLimitSet last;
        const auto inForce = [&](const QDate &day) {
            const auto found = LimitSetStore(m_database).inForceOn(day, last);
            return found && *found ? (*found)->version() : QString("none");
        };
        const QDate june(2026, 6, 15);
        QCOMPARE(inForce(june), "none");
        QVERIFY_RESULT(add(set("a", "2026-01-01")));
        QCOMPARE(inForce(june), "a");
        QVERIFY_RESULT(add(set("b", "2026-06-01")));
        QCOMPARE(inForce(june), "b");
        QCOMPARE(inForce(QDate(2026, 5, 31)), "a");
        QCOMPARE(inForce(QDate(2025, 5, 31)), "none");
        // A content that cannot be read stays an error each time it is asked for.
        QVERIFY_RESULT(
            editPast(m_database, "INSERT INTO limit_set (version, valid_from, content, digest) "
                                 "VALUES ('c', '2026-06-02', '{}', '" +
                                     QByteArray(64, '0') + "')"));
        for (int i = 0; i < 2; ++i)
            QVERIFY(!LimitSetStore(m_database).inForceOn(june, last));
        QCOMPARE(inForce(QDate(2026, 6, 1)), "b");
    }
    void isNeverEdited()
    {
        QCOMPARE(*add(jobs::limits()), true);
        QCOMPARE(*add(jobs::limits()), false);
        const auto other = add(set("2026-1", "2026-02-01"));
        QVERIFY(!other);
        QCOMPARE(other.error().code, ErrorCode::BadInput);
        QCOMPARE(other.error().place, "2026-1");
        const auto found = LimitSetStore(m_database).find("2026-1");
        QCOMPARE(canonicalJson((*found)->toJson()), canonicalJson(jobs::limits().toJson()));
        QCOMPARE(LimitSetStore(m_database).all()->size(), 1u);
        QVERIFY(!m_database.connection().run("DELETE FROM limit_set", "test"));
    }
};

QTEST_GUILESS_MAIN(LimitSetStoreTest)
#include "LimitSetStoreTest.moc"
