#include "app/desktop/DesktopApplication.h"

#include "app/desktop/DeskStyle.h"
#include "app/desktop/OpenErrorPage.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QPushButton>

using namespace loopwright;

class DesktopApplicationTest : public QObject
{
    Q_OBJECT

private:
    QString line(const DesktopApplication &desk, const QString &name) const
    {
        return desk.shown()->findChild<SignLine *>(name)->text();
    }

private slots:
    void opensTheRecordsOnTheBoard()
    {
        DeskRecords records;
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = records.path();
        options.by = "A. Rivera";
        options.now = DeskRecords::now();
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        QVERIFY(desk.window());
        QCOMPARE(desk.window()->current()->key(), "board");
        QVERIFY(desk.window()->findChild<QLabel *>("records")->text().contains("A. Rivera"));
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
            emit desk.window()->lookChosen(Look::Dark);
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
        emit page->openOther(records.path());
        QTRY_VERIFY(desk.window());
    }
};

QTEST_MAIN(DesktopApplicationTest)
#include "DesktopApplicationTest.moc"
