#include "db/MetaStore.h"

#include "db/SqliteConnection.h"
#include "tests/support/Records.h"

#include <QRegularExpression>
#include <QUuid>

using namespace loopwright;

class MetaStoreTest : public QObject
{
    Q_OBJECT
private slots:
    void everyDatabaseHasItsOwnName()
    {
        QSet<QString> ids;
        for (int i = 0; i < 20; ++i) {
            const Database database = recordsInMemory();
            const auto id = MetaStore(database).databaseId();
            QVERIFY_RESULT(id);
            const QUuid uuid = QUuid::fromString(*id);
            QCOMPARE(uuid.version(), QUuid::Random);
            QCOMPARE(uuid.variant(), QUuid::DCE);
            ids << *id;
            const auto station = MetaStore(database).station();
            QVERIFY_RESULT(station);
            QVERIFY2(QRegularExpression("\\A\\d{3}\\z").match(*station).hasMatch(),
                     qPrintable(*station));
            QVERIFY(*station != "000");
        }
        QCOMPARE(ids.size(), 20);
    }
    void aMissingValueIsTrouble()
    {
        const Database database = recordsInMemory();
        QVERIFY_RESULT(database.connection().run("DELETE FROM meta", "test"));
        const auto id = MetaStore(database).databaseId();
        QVERIFY(!id);
        QCOMPARE(id.error().code, ErrorCode::DatabaseTrouble);
    }
};

QTEST_GUILESS_MAIN(MetaStoreTest)
#include "MetaStoreTest.moc"
