#include "app/desktop/DesktopApplication.h"

#include "app/actions/DailyBackups.h"
#include "app/desktop/DeskStyle.h"
#include "app/desktop/OpenErrorPage.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QComboBox>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTableView>
#include <QToolButton>

#include <csignal>

using namespace loopwright;

namespace {

constexpr const char *victimOf = "LOOPWRIGHT_TEST_VICTIM"; ///< database|settings

StartOptions optionsFor(const QString &database)
{
    StartOptions options;
    options.database = database;
    options.by = "A. Rivera";
    options.now = DeskRecords::now();
    return options;
}

/// Rows have been read and shown.
bool boardShows(MainWindow &window, int rows)
{
    auto *table = window.findChild<QTableView *>("orders");
    return QTest::qWaitFor([&] { return table->model()->rowCount() == rows; });
}

/// What the killed program had done: searched, filtered, chosen, opened a job, made the window
/// another size; then the system ends it.
void workAndDie(const QString &database, const QString &settingsFile)
{
    QSettings settings(settingsFile, QSettings::IniFormat);
    DesktopApplication desk(*qApp, optionsFor(database), settings);
    desk.start();
    MainWindow &window = *desk.window();
    boardShows(window, 8);
    auto *installers = window.findChild<QComboBox *>("filter.installer");
    if (!QTest::qWaitFor([&] { return installers->findData("rivera") >= 0; }))
        qFatal("the filters are not shown");
    installers->setCurrentIndex(installers->findData("rivera"));
    emit installers->activated(installers->currentIndex());
    window.findChild<QAbstractButton *>("chip.stage.safety")->click();
    window.findChild<QLineEdit *>("search")->setText("mill");
    boardShows(window, 2);
    auto *table = window.findChild<QTableView *>("orders");
    table->setCurrentIndex(table->model()->index(1, 0));
    window.openOrder(table->currentIndex().data().toString());
    window.resize(777, 666);
    QTest::qWait(1000); // a second after the last key
    std::raise(SIGKILL);
}

} // namespace

class DesktopApplicationTest : public QObject
{
    Q_OBJECT

private:
    QString line(const DesktopApplication &desk, const QString &name) const
    {
        return desk.shown()->findChild<SignLine *>(name)->text();
    }

private slots:
    /// Made while one works; and named where the records cannot be opened any more.
    void aBackupOfEachDay()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        std::optional<QString> backup;
        {
            DesktopApplication desk(*qApp, optionsFor(records.path()), settings);
            desk.start();
            QVERIFY(desk.window());
            QVERIFY(!newestDailyBackup(records.path()));
            desk.findChild<QTimer *>("backups")->start(0);
            QTRY_VERIFY((backup = newestDailyBackup(records.path())));
        }
        const QString copy = records.path("damaged.sqlite");
        QVERIFY(QFile::copy(records.path(), copy));
        QVERIFY(QDir(dailyBackupFolder(records.path())).exists());
        QVERIFY(QFile::rename(dailyBackupFolder(records.path()), dailyBackupFolder(copy)));
        QFile file(copy);
        QVERIFY(file.open(QIODevice::ReadWrite) && file.resize(5000));
        file.close();
        DesktopApplication desk(*qApp, optionsFor(copy), settings);
        desk.start();
        QVERIFY(!desk.window());
        const QString told = line(desk, "backup");
        QVERIFY2(told.contains(QFileInfo(*backup).fileName()) && told.contains("restore"),
                 qPrintable(told));
    }

    void opensTheRecordsOnTheBoard()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = records.path();
        options.by = "rivera";
        options.now = DeskRecords::now();
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        QVERIFY(desk.window());
        QCOMPARE(desk.window()->current()->key(), "board");
        QCOMPARE(desk.window()->findChild<QToolButton *>("who")->text(), "A. Rivera works");
    }

    void aGivenTimeGoesOn()
    {
        DeskRecords records;
        const auto workplace = DesktopContext::open(records.path(), {}, DeskRecords::now());
        QVERIFY(workplace.has_value());
        QCOMPARE((*workplace)->records().now(), DeskRecords::now());
        (*workplace)->letClockRun();
        QTRY_VERIFY(DeskRecords::now() < (*workplace)->records().now());
        const auto another = (*workplace)->another();
        QVERIFY(another.has_value());
        QVERIFY2(DeskRecords::now() < (*another)->now(), "a worker has another time");
    }

    void keepsLookAndSize()
    {
        DeskRecords records(false);
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = records.path();
        {
            DesktopApplication desk(*qApp, options, settings);
            desk.start();
            QCOMPARE(lookOf(QApplication::palette()), Look::Light);
            emit desk.window()->lookChosen(LookChoice::Dark);
            emit desk.window()->sizeChosen(150);
            QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
        }
        applyTheme(*qApp, Look::Light, 100);
        const int small = em(10);
        DesktopApplication again(*qApp, options, settings);
        again.start();
        QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
        QVERIFY(em(10) > small);
        QVERIFY(again.window()->findChild<QAction *>("action.size.150")->isChecked());
        // The command line goes before what was chosen.
        options.look = "high_contrast";
        options.size = 100;
        DesktopApplication told(*qApp, options, settings);
        QCOMPARE(lookOf(QApplication::palette()), Look::HighContrast);
        QCOMPARE(em(10), small);
        applyTheme(*qApp, Look::Light, 100);
    }

    void troubleIsAPageNotACrash_data()
    {
        QTest::addColumn<QByteArray>("content");
        QTest::newRow("no database") << QByteArray(10'000, 'x');
        QTest::newRow("cut off") << QByteArray("SQLite format 3\0\x10", 17);
        QTest::newRow("empty") << QByteArray();
    }
    void troubleIsAPageNotACrash()
    {
        QFETCH(QByteArray, content);
        DeskRecords records(false);
        const QString path = records.file("broken.sqlite", content);
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = path;
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        QVERIFY(!desk.window());
        QCOMPARE(desk.shown()->objectName(), "trouble");
        for (const char *part : {"happened", "kept", "todo"})
            QVERIFY2(line(desk, part).size() > 10, part);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), content); // nothing was written to it
        // Put right meanwhile: "Try again" opens it.
        QVERIFY(QFile::remove(path));
        desk.shown()->findChild<QPushButton *>("again")->click();
        QTRY_VERIFY(desk.window());
    }

    void isWhereItWasAfterAKill()
    {
        DeskRecords records;
        const QString file = records.path("settings.ini");
        QProcess victim;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(victimOf, records.path() + '|' + file);
        victim.setProcessEnvironment(environment);
        victim.start(QCoreApplication::applicationFilePath(), {});
        QVERIFY(victim.waitForFinished(60'000));
        QCOMPARE(victim.exitStatus(), QProcess::CrashExit);
        QCOMPARE(victim.exitCode(), SIGKILL);

        QSettings settings(file, QSettings::IniFormat);
        DesktopApplication desk(*qApp, optionsFor(records.path()), settings);
        desk.start();
        MainWindow &window = *desk.window();
        QCOMPARE(window.current()->key(), "job");
        QCOMPARE(window.current()->title(), "Job O-1007");
        QCOMPARE(window.size(), QSize(777, 666));
        window.goBack();
        QCOMPARE(window.current()->key(), "board");
        QVERIFY(boardShows(window, 2));
        auto *table = window.findChild<QTableView *>("orders");
        QTRY_COMPARE(table->currentIndex().data().toString(), "O-1007");
        QCOMPARE(window.findChild<QLineEdit *>("search")->text(), "mill");
        QVERIFY(window.findChild<QAbstractButton *>("chip.stage.safety")->isChecked());
        QTRY_COMPARE(window.findChild<QComboBox *>("filter.installer")->currentText(),
                     "A. Rivera   2");
    }

    void theCommandLineGoesBeforeWhereItWas()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options = optionsFor(records.path());
        {
            DesktopApplication desk(*qApp, options, settings);
            desk.start();
            desk.window()->openOrder("O-1002");
        } // a clean end right after it keeps it too
        {
            DesktopApplication desk(*qApp, options, settings);
            desk.start();
            QCOMPARE(desk.window()->current()->title(), "Job O-1002");
        }
        options.order = "O-1003";
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        QCOMPARE(desk.window()->current()->title(), "Job O-1003");
    }

    void anotherDatabaseHasItsOwnPlace()
    {
        DeskRecords first, second;
        QSettings settings(first.path("settings.ini"), QSettings::IniFormat);
        {
            DesktopApplication desk(*qApp, optionsFor(first.path()), settings);
            desk.start();
            desk.window()->openOrder("O-1002");
        }
        DesktopApplication desk(*qApp, optionsFor(second.path()), settings);
        desk.start();
        QCOMPARE(desk.window()->current()->key(), "board");
        QCOMPARE(desk.window()->screen("job")->title(), "Job");
    }

    void whatIsNoLongerThereIsPassedOver()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        DesktopApplication desk(*qApp, optionsFor(records.path()), settings);
        desk.start();
        desk.window()->restore({{"screen", "no_such"},
                                {"screens", QJsonObject{{"job", QJsonObject{{"order", "O-9"}}},
                                                        {"no_such", QJsonObject()}}},
                                {"window", "no geometry"}});
        QCOMPARE(desk.window()->current()->key(), "board");
        QCOMPARE(desk.window()->screen("job")->title(), "Job");
    }

    void aPlaceOnALargerScreenIsBroughtInside()
    {
        DeskRecords records(false);
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        const StartOptions options = optionsFor(records.path());
        {
            DesktopApplication desk(*qApp, options, settings);
            desk.start();
            desk.window()->resize(9000, 7000);
            desk.window()->move(3000, 2000);
        }
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        const QRect room = desk.window()->QWidget::screen()->availableGeometry();
        QVERIFY(room.contains(desk.window()->frameGeometry()));
    }

    void otherRecordsCanBeOpened()
    {
        DeskRecords records(false);
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = records.file("broken.sqlite", QByteArray(5000, 'x'));
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        auto *page = qobject_cast<OpenErrorPage *>(desk.shown());
        QVERIFY(page);
        emit page->openOther(records.path(), false);
        QTRY_VERIFY(desk.window());
    }
};

int main(int argc, char *argv[])
{
    qputenv("DBUS_SESSION_BUS_ADDRESS",
            "unix:path=/no/bus"); // looks as the tests say, not as this desk
    QApplication application(argc, argv);
    if (const QStringList victim = qEnvironmentVariable(victimOf).split(u'|'); victim.size() == 2)
        workAndDie(victim[0], victim[1]);
    DesktopApplicationTest test;
    return QTest::qExec(&test, argc, argv);
}
#include "DesktopApplicationTest.moc"
