#include "app/actions/Drafts.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Orders.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/OneWindow.h"
#include "app/desktop/models/BoardModel.h"
#include "app/desktop/widgets/Table.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/Records.h"

#include <QElapsedTimer>
#include <QLabel>
#include <QMenu>
#include <QTest>

using namespace loopwright;

// Two desks of an office: the same records of a server, a window each, and each login for itself.
class ServerWindowsTest : public QObject
{
    Q_OBJECT

    QString m_address = newServerRecords();

    struct Desk
    {
        explicit Desk(const QString &address)
        {
            auto opened = DesktopContext::open(address, {}, DeskRecords::now());
            if (!opened)
                qFatal("%s", qPrintable(opened.error().text()));
            context = std::move(*opened);
            window = std::make_unique<MainWindow>(*context);
            window->resize(1300, 750);
            window->show();
        }
        Records &records() const { return context->records(); }
        QStringList orders()
        {
            const auto *table = window->findChild<Table *>("orders");
            QStringList numbers;
            for (int row = 0; row < table->model()->rowCount(); ++row)
                numbers << table->model()->index(row, boardColumn(u"order")).data().toString();
            return numbers;
        }
        std::unique_ptr<DesktopContext> context;
        std::unique_ptr<MainWindow> window;
    };
    QString as(const QString &login) const
    {
        return QString(m_address).replace("//tester@", "//" + login + '@');
    }

private slots:
    void initTestCase()
    {
        qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/no/bus");
        for (const char *login : {"rivera", "lind"})
            runOnTestServer(QByteArray("DO $$ BEGIN CREATE ROLE ") + login +
                            " LOGIN; EXCEPTION WHEN duplicate_object THEN NULL; END $$");
        auto records = Records::open(m_address);
        QVERIFY_RESULT(records);
        (*records)->setNow(DeskRecords::now());
        QVERIFY_RESULT(bringShippedLimits(**records));
        QVERIFY_RESULT(importOffices(**records, DeskRecords::officesCsv(), {"offices.csv"}));
        QVERIFY_RESULT(importInstallers(**records, DeskRecords::installersCsv(), {"i.csv"}));
        (*records)->actAs("lind");
        QVERIFY_RESULT(importOrders(**records, DeskRecords::ordersCsv(), {"orders.csv"}));
        runOnTestServer("GRANT installer TO rivera; GRANT supervisor TO lind");
    }

    void eachDeskSeesWhatTheOtherDoes()
    {
        Desk one(as("lind"));
        Desk other(as("rivera"));
        QTRY_COMPARE(one.orders().size(), 8);
        QTRY_COMPARE(other.orders().size(), 8);
        QElapsedTimer clock;
        clock.start();
        QVERIFY_RESULT(cancelOrder(one.records(), "O-1003", "the customer moved away"));
        QTRY_VERIFY(!other.orders().contains("O-1003"));
        qInfo("told after %lld ms", clock.elapsed());
        QVERIFY_RESULT(cancelOrder(one.records(), "O-1004", "the customer moved away"));
        QTRY_VERIFY(!other.orders().contains("O-1004"));
    }
    /// What one types is at no other desk.
    void draftsAreOnesOwn()
    {
        Desk one(as("lind"));
        Desk other(as("rivera"));
        QVERIFY_RESULT(saveDrafts(one.records(), {{"O-1001", "loop", {{"loss", "28"}}}}));
        QVERIFY_RESULT(saveDrafts(other.records(), {{"O-1001", "loop", {{"loss", "31"}}}}));
        const auto mine = drafts(one.records(), "O-1001");
        QVERIFY_RESULT(mine);
        QCOMPARE(mine->keys(), QStringList("loop"));
        QCOMPARE(mine->value("loop")["loss"].toString(), QString("28"));
        QCOMPARE(draftsOfPart(other.records(), "loop")->value("O-1001")["loss"].toString(),
                 QString("31"));
        QVERIFY_RESULT(saveDrafts(one.records(), {{"O-1001", "loop", {}}}));
        QVERIFY(drafts(one.records(), "O-1001")->isEmpty());
        QVERIFY(!drafts(other.records(), "O-1001")->isEmpty());
    }
    /// Who is logged in works; nobody else is offered.
    void aLoginWorksAsItself()
    {
        Desk desk(as("rivera"));
        QCOMPARE(desk.records().by(), QString("rivera"));
        auto *menu = desk.window->findChild<QMenu *>("who.menu");
        emit menu->aboutToShow();
        QCOMPARE(menu->actions().size(), 1);
        QCOMPARE(menu->actions().front()->objectName(), QString("who.rivera"));
        const auto *shown = desk.window->findChild<QLabel *>("records");
        QVERIFY(!shown->toolTip().contains("rivera@"));
    }
    void theSameServerHasOneWindowOfALogin()
    {
        QVERIFY(keyOfDatabase(as("rivera")) != keyOfDatabase(as("lind")));
        QCOMPARE(keyOfDatabase(as("rivera:secret")), keyOfDatabase(as("rivera")));
    }
};

QTEST_MAIN(ServerWindowsTest)
#include "ServerWindowsTest.moc"
