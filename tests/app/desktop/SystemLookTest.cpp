#include "app/desktop/DeskStyle.h"
#include "app/desktop/DesktopApplication.h"
#include "tests/support/DeskRecords.h"

#include <QDBusConnection>
#include <QDBusContext>
#include <QDBusMessage>
#include <QProcess>
#include <QSignalSpy>
#include <QThread>

using namespace loopwright;

namespace {

/// The settings portal of a desktop, on a connection and in a thread of its own.
class Portal : public QObject, protected QDBusContext
{
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.portal.Settings")
public:
    std::atomic<uint> scheme = 0, contrast = 0;
    std::atomic<int> slowMs = 0, answered = 0;

public slots:
    /// A variant in a variant, as the portal has it.
    QDBusVariant Read(const QString &space, const QString &key)
    {
        QThread::msleep(ulong(slowMs));
        ++answered;
        if (space != u"org.freedesktop.appearance" ||
            (key != u"color-scheme" && key != u"contrast"))
            sendErrorReply(QStringLiteral("org.freedesktop.portal.Error.NotFound"), key);
        const uint value = key == u"contrast" ? contrast : scheme;
        return QDBusVariant(QVariant::fromValue(QDBusVariant(value)));
    }
};

QPalette palette(const QColor &window, const QColor &text)
{
    QPalette palette;
    palette.setColor(QPalette::Window, window);
    palette.setColor(QPalette::WindowText, text);
    return palette;
}
const QPalette brightPlatform = palette(Qt::white, Qt::black);
const QPalette darkPlatform = palette(Qt::black, Qt::white);

} // namespace

class SystemLookTest : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QProcess m_daemon;
    QThread m_thread;
    std::unique_ptr<Portal> m_portal;

    QDBusConnection portalBus() const { return QDBusConnection(QStringLiteral("portal")); }
    void begin(uint scheme, uint contrast)
    {
        m_portal->scheme = scheme;
        m_portal->contrast = contrast;
    }
    void tell(const char *key, uint value, const char *space = "org.freedesktop.appearance")
    {
        QDBusMessage signal = QDBusMessage::createSignal(
            "/org/freedesktop/portal/desktop", "org.freedesktop.portal.Settings", "SettingChanged");
        signal << space << key << QVariant::fromValue(QDBusVariant(value));
        if (space ==
            QLatin1StringView("org.freedesktop.appearance")) { // who is asked later says so too
            if (key == QLatin1StringView("contrast"))
                m_portal->contrast = value;
            else if (key == QLatin1StringView("color-scheme"))
                m_portal->scheme = value;
        }
        QVERIFY(portalBus().send(signal));
    }

private slots:
    /// A bus of its own, so that neither this desk nor another test is asked.
    void initTestCase()
    {
        const QString configuration = m_folder.filePath("bus.conf");
        QFile file(configuration);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(
            "<!DOCTYPE busconfig PUBLIC '-//freedesktop//DTD D-Bus Bus Configuration 1.0//EN' "
            "'http://www.freedesktop.org/standards/dbus/1.0/busconfig.dtd'>"
            "<busconfig><type>session</type><listen>unix:tmpdir=/tmp</listen>"
            "<policy context='default'><allow send_destination='*'/><allow "
            "eavesdrop='true'/><allow own='*'/>"
            "</policy></busconfig>");
        file.close();
        m_daemon.start("dbus-daemon",
                       {"--config-file=" + configuration, "--nofork", "--print-address"});
        QVERIFY2(m_daemon.waitForStarted(), "the package dbus-daemon is not installed");
        QVERIFY(QTest::qWaitFor([this] { return m_daemon.canReadLine(); }));
        const QByteArray address = m_daemon.readLine().trimmed();
        qputenv("DBUS_SESSION_BUS_ADDRESS", address);
        QDBusConnection bus = QDBusConnection::connectToBus(address, "portal");
        QVERIFY(bus.isConnected());
        m_portal = std::make_unique<Portal>();
        m_portal->moveToThread(&m_thread);
        QVERIFY(bus.registerObject("/org/freedesktop/portal/desktop", m_portal.get(),
                                   QDBusConnection::ExportAllSlots));
        m_thread.start();
    }
    void cleanupTestCase()
    {
        m_thread.quit();
        m_thread.wait();
        m_portal.reset();
        QDBusConnection::disconnectFromBus("portal");
        m_daemon.kill();
        m_daemon.waitForFinished();
    }
    void init()
    {
        QVERIFY(portalBus().registerService("org.freedesktop.portal.Desktop"));
        m_portal->slowMs = 0;
        begin(0, 0);
    }
    void cleanup() { portalBus().unregisterService("org.freedesktop.portal.Desktop"); }

    void asThePortalSays_data()
    {
        QTest::addColumn<uint>("scheme");
        QTest::addColumn<uint>("contrast");
        QTest::addColumn<bool>("platformIsDark");
        QTest::addColumn<Look>("look");
        QTest::newRow("dark") << 1U << 0U << false << Look::Dark;
        QTest::newRow("light") << 2U << 0U << true << Look::Light;
        QTest::newRow("no preference, light") << 0U << 0U << false << Look::Light;
        QTest::newRow("no preference, dark") << 0U << 0U << true << Look::Dark;
        QTest::newRow("more contrast") << 2U << 1U << false << Look::HighContrast;
        QTest::newRow("not in the standard") << 9U << 9U << false << Look::Light;
    }
    void asThePortalSays()
    {
        QFETCH(uint, scheme);
        QFETCH(uint, contrast);
        QFETCH(bool, platformIsDark);
        begin(scheme, contrast);
        const SystemLook system(platformIsDark ? darkPlatform : brightPlatform);
        QTEST(system.look(), "look"); // at once: the window opens in it
    }

    void withoutAPortalThePlatformDecides()
    {
        portalBus().unregisterService("org.freedesktop.portal.Desktop");
        QCOMPARE(SystemLook(brightPlatform).look(), Look::Light);
        QCOMPARE(SystemLook(darkPlatform).look(), Look::Dark);
    }

    void whatChangesIsFollowed()
    {
        SystemLook system(brightPlatform);
        QSignalSpy changed(&system, &SystemLook::changed);
        tell("color-scheme", 1);
        QTRY_COMPARE(system.look(), Look::Dark);
        tell("contrast", 1);
        QTRY_COMPARE(system.look(), Look::HighContrast);
        tell("contrast", 0);
        QTRY_COMPARE(system.look(), Look::Dark);
        QCOMPARE(changed.count(), 3);
        // Another setting, and the same once more, change nothing.
        tell("color-scheme", 2, "org.gnome.desktop.interface");
        tell("accent-color", 2);
        tell("color-scheme", 1);
        tell("color-scheme", 2);
        QTRY_COMPARE(system.look(), Look::Light);
        QCOMPARE(changed.count(), 4);
    }

    /// A portal that is only being started is heard when it answers.
    void aSlowPortalIsHeardLater()
    {
        begin(1, 0);
        m_portal->slowMs = 400;
        m_portal->answered = 0;
        SystemLook system(brightPlatform);
        QCOMPARE(system.look(), Look::Light);
        QTRY_COMPARE(system.look(), Look::Dark);
        QTRY_COMPARE(m_portal->answered, 4); // each was asked twice; none disturbs the next test
    }

    void theProgramFollowsUnlessALookWasChosen()
    {
        DeskRecords records(false);
        QSettings settings(records.path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = records.path();
        begin(1, 0);
        {
            DesktopApplication desk(*qApp, options, settings);
            desk.start();
            QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
            QVERIFY(desk.window()->findChild<QAction *>("action.look.system")->isChecked());
            tell("color-scheme", 2);
            QTRY_COMPARE(lookOf(QApplication::palette()), Look::Light);
            tell("contrast", 1);
            QTRY_COMPARE(lookOf(QApplication::palette()), Look::HighContrast);
            // Chosen by hand, it stays.
            desk.window()->findChild<QAction *>("action.look.light")->trigger();
            QCOMPARE(lookOf(QApplication::palette()), Look::Light);
            tell("color-scheme", 1);
            tell("contrast", 0);
            QTest::qWait(100);
            QCOMPARE(lookOf(QApplication::palette()), Look::Light);
            // And back: what was said meanwhile is known.
            desk.window()->findChild<QAction *>("action.look.system")->trigger();
            QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
        }
        QCOMPARE(settings.value("look").toString(), "system");
        applyTheme(*qApp, Look::Light, 100);
    }
};

QTEST_MAIN(SystemLookTest)
#include "SystemLookTest.moc"
