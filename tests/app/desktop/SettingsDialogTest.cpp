#include "app/desktop/SettingsDialog.h"

#include "app/desktop/DeskStyle.h"
#include "app/desktop/DesktopApplication.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/ServerDialog.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/DeskRecords.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>

using namespace loopwright;

class SettingsDialogTest : public QObject
{
    Q_OBJECT

private:
    std::unique_ptr<DeskRecords> m_records;
    std::unique_ptr<QSettings> m_settings;
    std::unique_ptr<DesktopApplication> m_desk;

    void start()
    {
        m_desk.reset();
        StartOptions options;
        options.database = m_records->path();
        options.by = "rivera";
        options.now = DeskRecords::now();
        m_desk = std::make_unique<DesktopApplication>(*qApp, options, *m_settings);
        m_desk->start();
        m_desk->window()->activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(m_desk->window()));
    }
    void openSettings()
    {
        QTest::keyClick(m_desk->window(), Qt::Key_Comma, Qt::ControlModifier);
        QTRY_VERIFY(m_desk->window()->findChild<QDialog *>("settings"));
    }
    QComboBox *list(const char *name) const
    {
        return m_desk->window()
            ->findChild<QDialog *>("settings")
            ->findChild<QComboBox *>(QString("settings.") + name);
    }
    /// By the keyboard, as a person walks down the list.
    void choose(const char *name, int downs)
    {
        list(name)->setFocus();
        for (int i = 0; i < downs; ++i)
            QTest::keyClick(list(name), Qt::Key_Down);
    }
    QString saying() const { return m_desk->window()->findChild<QLabel *>("said")->text(); }

    QString recordsAtStart() const
    {
        StartOptions options;
        options.chooseRecords(*m_settings);
        return options.database;
    }

private slots:
    void initTestCase() { qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/no/bus"); }
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_settings =
            std::make_unique<QSettings>(m_records->path("settings.ini"), QSettings::IniFormat);
        start();
    }
    void cleanup()
    {
        m_desk.reset();
        m_settings.reset();
        m_records.reset();
        speak("en");
        choosePaper({});
        applyTheme(*qApp, Look::Light, 100);
    }

    void showsWhatIsInForce()
    {
        openSettings();
        QCOMPARE(list("language")->currentText(), "English");
        QCOMPARE(list("look")->currentText(), "As the system");
        QCOMPARE(list("size")->currentText(), "Size 100 %");
        QCOMPARE(list("paper")->currentText(), "As in this country");
        QCOMPARE(list("who")->currentText(), "A. Rivera, installer");
        QCOMPARE(m_desk->window()->findChild<QLabel *>("settings.records")->text(),
                 m_records->path());
        QTest::keyClick(m_desk->window()->findChild<QDialog *>("settings"), Qt::Key_Escape);
        QTRY_VERIFY(!m_desk->window()->findChild<QDialog *>("settings"));
    }

    void look()
    {
        openSettings();
        choose("look", 2);
        QCOMPARE(m_settings->value("look").toString(), "dark");
        QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
        QVERIFY(m_desk->window()->findChild<QAction *>("action.look.dark")->isChecked());
        QCOMPARE(list("look")->currentText(), "Dark");
    }

    void size()
    {
        const int before = em(10);
        openSettings();
        choose("size", 2);
        QCOMPARE(m_settings->value("size").toInt(), 150);
        QVERIFY(em(10) > before);
    }

    void languageHoldsFromTheNextStart()
    {
        openSettings();
        choose("language", 1);
        QCOMPARE(m_settings->value("language").toString(), "de");
        QVERIFY(saying().contains("next start"));
        QCOMPARE(list("language")->currentText(), "Deutsch");
        start();
        QCOMPARE(m_desk->window()->findChild<QAction *>("action.settings")->text(),
                 "&Einstellungen …");
    }

    void paper()
    {
        const Paper usual = localPaper();
        openSettings();
        choose("paper", 2);
        QCOMPARE(m_settings->value("paper").toString(), "letter");
        QCOMPARE(localPaper(), Paper::Letter);
        choosePaper({});
        start(); // it is remembered
        QCOMPARE(localPaper(), Paper::Letter);
        QVERIFY(m_desk->window()->findChild<QAction *>("action.paper.letter")->isChecked());
        m_desk->window()->findChild<QAction *>("action.paper.a4")->trigger();
        QCOMPARE(localPaper(), Paper::A4);
        m_desk->window()->findChild<QAction *>("action.paper.country")->trigger();
        QCOMPARE(localPaper(), usual);
    }

    void whoWorks()
    {
        openSettings();
        QComboBox *who = list("who");
        const int lind = who->findText("S. Lind, supervisor");
        QVERIFY(lind >= 0);
        who->setCurrentIndex(lind);
        emit who->activated(lind);
        QCOMPARE(m_desk->window()->findChild<QToolButton *>("who")->text(), "S. Lind works");
        QCOMPARE(list("who")->currentText(), "S. Lind, supervisor");
    }

    void otherRecords()
    {
        DeskRecords others(false);
        QPointer<MainWindow> before = m_desk->window();
        m_desk->window()->openOrder("O-1002");
        emit before->recordsWished(others.path(), false);
        QTRY_VERIFY(!before);
        QVERIFY(m_desk->window() && m_desk->window()->isVisible());
        QCOMPARE(m_desk->window()->findChild<QLabel *>("records")->toolTip(), others.path());
        QCOMPARE(m_desk->window()->current()->key(), "board");
        emit m_desk->window()->recordsWished(m_records->path(),
                                             false); // and back, to where one was
        QTRY_COMPARE(m_desk->window()->current()->title(), "Job O-1002");
    }

    void recordsThatCannotBeOpenedLeaveTheWindow()
    {
        const QString broken = m_records->file("broken.sqlite", QByteArray(5000, 'x'));
        QPointer<MainWindow> before = m_desk->window();
        emit before->recordsWished(broken, false);
        QTRY_VERIFY(saying().contains("broken.sqlite"));
        QCOMPARE(m_desk->window(), before.data());
        emit before->recordsWished(m_records->path(), false);
        QTRY_COMPARE(saying(), "These records are open.");
    }

    void nobodyIsRegistered()
    {
        DeskRecords empty(false);
        emit m_desk->window()->recordsWished(empty.path(), false);
        QTRY_COMPARE(m_desk->window()->findChild<QLabel *>("records")->toolTip(), empty.path());
        m_desk->window()->findChild<QAction *>("action.settings")->trigger();
        QVERIFY(!list("who")->isEnabled());
        QVERIFY(list("who")->currentText().contains("Nobody is registered"));
    }

    void fitsASmallWindow()
    {
        m_desk->window()->resize(1024, 600);
        openSettings();
        const auto *dialog = m_desk->window()->findChild<QDialog *>("settings");
        QVERIFY(dialog->width() <= 1024 && dialog->height() <= 600);
    }

    void whichRecordsAreOpenedAtTheStart()
    {
        openSettings();
        auto *atStart = m_desk->window()->findChild<QCheckBox *>("settings.at_start");
        QVERIFY(!atStart->isChecked()); // these were named as it started
        QVERIFY(recordsAtStart().endsWith("/loopwright/records.sqlite"));
        atStart->setFocus();
        QTest::keyClick(atStart, Qt::Key_Space);
        QCOMPARE(recordsAtStart(), m_records->path());
        QTest::keyClick(atStart, Qt::Key_Space);
        QVERIFY(recordsAtStart().endsWith("/loopwright/records.sqlite"));
    }
    /// A server that is not there: the window stays, and nothing is kept of the password.
    void recordsOnAServerAreAskedFor()
    {
        openSettings();
        m_desk->window()->findChild<QPushButton *>("settings.open_server")->click();
        QDialog *dialog = nullptr;
        QTRY_VERIFY(dialog = m_desk->window()->findChild<QDialog *>("server"));
        const auto type = [&](const char *name, const char *text) {
            auto *field = dialog->findChild<QLineEdit *>(name);
            field->setFocus();
            QTest::keyClicks(field, text);
        };
        auto *open = dialog->findChild<QPushButton *>("server.open");
        auto *told = dialog->findChild<SignLine *>("server.told");
        type("server.host", "/no/such/folder");
        type("server.port", "many");
        open->click();
        QVERIFY(told->text().startsWith("A port is a number"));
        dialog->findChild<QLineEdit *>("server.port")->clear();
        type("server.port", "54329");
        open->click();
        QVERIFY(told->text().startsWith("Server, database and login"));
        type("server.database", "records");
        type("server.login", "kim");
        type("server.password", "s3cret/@");
        QTest::keyClick(dialog->findChild<QLineEdit *>("server.password"), Qt::Key_Return);
        QTRY_VERIFY2(saying().contains("/no/such/folder"), qPrintable(saying()));
        QVERIFY(!saying().contains("s3cret"));
        QVERIFY(m_desk->window()->isVisible());
        QVERIFY(recordsAtStart().endsWith("/loopwright/records.sqlite")); // it was not opened
    }
    void anAddressIsPutTogether_data()
    {
        QTest::addColumn<QStringList>("parts");
        QTest::addColumn<QString>("address");
        QTest::newRow("plain") << QStringList{"hub", "", "records", "kim", ""}
                               << "postgresql://kim@hub/records";
        QTest::newRow("port and password")
            << QStringList{"hub.example", "5433", "records", "kim", "a/b@c:d"}
            << "postgresql://kim:a%2Fb%40c:d@hub.example/records?port=5433";
        QTest::newRow("socket") << QStringList{"/var/run/pg", "", "records", "kim", ""}
                                << "postgresql://kim@/records?host=/var/run/pg";
        QTest::newRow("nothing") << QStringList{"", "", "records", "kim", ""} << "";
    }
    void anAddressIsPutTogether()
    {
        QFETCH(QStringList, parts);
        QFETCH(QString, address);
        const QString made =
            ServerDialog::addressOf(parts[0], parts[1], parts[2], parts[3], parts[4]);
        QCOMPARE(made, address);
        if (made.isEmpty())
            return;
        QVERIFY(isServerAddress(made));
        QVERIFY(!withoutPassword(made).contains("%40c"));
        // What is filled in again makes the same address, but for the password.
        ServerDialog dialog(withoutPassword(made), m_desk->window());
        QCOMPARE(dialog.address(), withoutPassword(made));
        QVERIFY(shownPlace(made).contains(parts[0]));
    }
};

QTEST_MAIN(SettingsDialogTest)
#include "SettingsDialogTest.moc"
