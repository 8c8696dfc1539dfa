// The program itself as a screen reader meets it: under an X server and buses of the test's own,
// asked over AT-SPI as any assistive program asks.

#include "tests/support/DeskRecords.h"

#include <QDBusArgument>
#include <QDBusConnection>
#include <QDBusInterface>
#include <QDBusReply>
#include <QProcess>

using namespace loopwright;

namespace {

const QString accessible = QStringLiteral("org.a11y.atspi.Accessible");

/// One of the objects that a program shows: who has it, and under which path.
struct Seen
{
    QString program, path;
    QString role, name;
};

/// Each event of the objects that says something: which object, and in which words.
class Listener : public QObject
{
    Q_OBJECT
public:
    QStringList shown; ///< paths of objects that began to show

public slots:
    void stateChanged(const QDBusMessage &message)
    {
        if (message.arguments().value(0).toString() == u"showing" &&
            message.arguments().value(1).toInt() == 1)
            shown << message.path();
    }
};

} // namespace

class ScreenReaderTest : public QObject
{
    Q_OBJECT

private:
    QTemporaryDir m_home;
    QProcess m_screen, m_bus, m_program;
    QString m_name; ///< of the program on the bus of the screen readers
    std::unique_ptr<DeskRecords> m_records;
    Listener m_listener;

    static QDBusConnection readers() { return QDBusConnection(QStringLiteral("readers")); }

    static void begin(QProcess &process, const QString &program, const QStringList &arguments,
                      QByteArray &said)
    {
        process.start(program, arguments);
        QVERIFY2(process.waitForStarted(), qPrintable(program + " is not installed"));
        QVERIFY(QTest::qWaitFor([&process] { return process.canReadLine(); }, 20'000));
        said = process.readLine().trimmed();
    }

    static QVariant property(const Seen &of, const char *name)
    {
        QDBusMessage question = QDBusMessage::createMethodCall(
            of.program, of.path, "org.freedesktop.DBus.Properties", "Get");
        question << accessible << name;
        const QDBusReply<QDBusVariant> answer = readers().call(question);
        return answer.isValid() ? answer.value().variant() : QVariant();
    }
    static QVariant asked(const Seen &of, const char *what)
    {
        const QDBusMessage answer =
            readers().call(QDBusMessage::createMethodCall(of.program, of.path, accessible, what));
        return answer.arguments().value(0);
    }
    static std::vector<Seen> childrenOf(const Seen &parent)
    {
        std::vector<Seen> children;
        const auto list = asked(parent, "GetChildren").value<QDBusArgument>();
        if (list.currentType() != QDBusArgument::ArrayType)
            return children;
        list.beginArray();
        while (!list.atEnd()) {
            Seen child;
            QDBusObjectPath path;
            list.beginStructure();
            list >> child.program >> path;
            list.endStructure();
            child.path = path.path();
            children.push_back(child);
        }
        list.endArray();
        for (Seen &child : children) {
            child.role = asked(child, "GetRoleName").toString();
            child.name = property(child, "Name").toString();
        }
        return children;
    }

    /// Everything that the program shows; of a table its name, not each cell.
    std::vector<Seen> everything() const
    {
        std::vector<Seen> all{{m_name, "/org/a11y/atspi/accessible/root", {}, {}}};
        for (std::size_t i = 0; i < all.size() && all.size() < 5000; ++i)
            if (all[i].role != u"table")
                for (const Seen &child : childrenOf(Seen(all[i])))
                    all.push_back(child);
        return all;
    }
    static std::optional<Seen> find(const std::vector<Seen> &all, const QString &role,
                                    const QString &name)
    {
        const auto found = std::ranges::find_if(
            all, [&](const Seen &each) { return each.role == role && each.name.startsWith(name); });
        return found == all.end() ? std::nullopt : std::optional(*found);
    }
    static QString inWords(const std::vector<Seen> &all)
    {
        QStringList lines;
        for (const Seen &each : all)
            lines << each.role + ": " + each.name;
        return lines.join('\n');
    }
    static bool isShown(const Seen &each)
    {
        constexpr uint showing = 25; // of AtspiStateType
        QList<uint> states;
        asked(each, "GetState").value<QDBusArgument>() >> states;
        return !states.isEmpty() && (states.first() >> showing & 1U) != 0;
    }
    static void press(const Seen &button)
    {
        QDBusMessage act = QDBusMessage::createMethodCall(button.program, button.path,
                                                          "org.a11y.atspi.Action", "DoAction");
        act << 0;
        QCOMPARE(readers().call(act).type(), QDBusMessage::ReplyMessage);
    }

    void startBuses()
    {
        QByteArray display, session;
        begin(m_screen, "Xvfb",
              {"-displayfd", "1", "-screen", "0", "1366x768x24", "-nolisten", "tcp"}, display);
        qputenv("DISPLAY", ":" + display);
        qputenv("XDG_RUNTIME_DIR", QFile::encodeName(m_home.path()));
        qputenv("XDG_CONFIG_HOME", QFile::encodeName(m_home.path()));
        begin(m_bus, "dbus-daemon", {"--session", "--nofork", "--print-address"}, session);
        qputenv("DBUS_SESSION_BUS_ADDRESS", session);
        const QDBusConnection bus = QDBusConnection::connectToBus(session, "session");
        const QDBusReply<QString> address = bus.call(QDBusMessage::createMethodCall(
            "org.a11y.Bus", "/org/a11y/bus", "org.a11y.Bus", "GetAddress"));
        QVERIFY2(address.isValid(), "the package at-spi2-core is not installed");
        QVERIFY(QDBusConnection::connectToBus(address.value(), "readers").isConnected());
    }
    /// Programs tell of an event only where somebody asked for it.
    void listen()
    {
        QDBusMessage wish =
            QDBusMessage::createMethodCall("org.a11y.atspi.Registry", "/org/a11y/atspi/registry",
                                           "org.a11y.atspi.Registry", "RegisterEvent");
        wish << "object:state-changed:showing" << QStringList() << QString();
        QTRY_COMPARE(readers().call(wish).type(), QDBusMessage::ReplyMessage); // it starts only now
        QVERIFY(readers().connect({}, {}, "org.a11y.atspi.Event.Object", "StateChanged",
                                  &m_listener, SLOT(stateChanged(QDBusMessage))));
    }
    bool isThere()
    {
        const Seen desktop{"org.a11y.atspi.Registry", "/org/a11y/atspi/accessible/root", {}, {}};
        for (const Seen &each : childrenOf(desktop))
            if (each.name.compare("loopwright", Qt::CaseInsensitive) == 0)
                m_name = each.program;
        return !m_name.isEmpty();
    }

private slots:
    void initTestCase()
    {
        m_records = std::make_unique<DeskRecords>();
        startBuses();
        if (QTest::currentTestFailed())
            return;
        listen();
        qputenv("QT_LINUX_ACCESSIBILITY_ALWAYS_ON", "1");
        qputenv("QT_QPA_PLATFORM", "xcb");
        m_program.setProcessChannelMode(QProcess::ForwardedChannels);
        m_program.start(LOOPWRIGHT_BIN_DIR "/loopwright",
                        {"--db", m_records->path(), "--by", "rivera", "--now",
                         DeskRecords::now().text(), "--language", "en"});
        QVERIFY(m_program.waitForStarted());
        QVERIFY2(QTest::qWaitFor([this] { return isThere(); }, 60'000),
                 "the program does not come to the bus of the screen readers");
    }
    void cleanupTestCase()
    {
        for (QProcess *each : {&m_program, &m_bus, &m_screen}) {
            each->terminate();
            each->waitForFinished();
        }
    }

    void theBoardIsATableWithAName()
    {
        const auto all = everything();
        const auto table = find(all, "table", "Orders");
        QVERIFY2(table, qPrintable(inWords(all)));
        QVERIFY(property(*table, "ChildCount").toInt() >= 8);
        const auto search = std::ranges::find(all, "text", &Seen::role);
        QVERIFY(search != all.end() && !search->name.isEmpty());
    }

    void everyButtonHasAName()
    {
        QStringList nameless;
        int buttons = 0;
        for (const Seen &each : everything())
            if ((each.role == u"push button" || each.role == u"toggle button") && isShown(each)) {
                ++buttons;
                if (each.name.trimmed().isEmpty())
                    nameless << each.path;
            }
        QVERIFY(buttons > 10);
        QVERIFY2(nameless.isEmpty(), qPrintable(nameless.join('\n')));
    }

    /// Pressed over the bus, as a person who sees nothing has it pressed.
    void theJobLineIsAList()
    {
        const auto open = find(everything(), "push button", "Open the job");
        QVERIFY2(open, qPrintable(inWords(everything())));
        press(*open);
        std::vector<Seen> all;
        QVERIFY2(QTest::qWaitFor(
                     [&] {
                         all = everything();
                         return find(all, "list item", "Safety: ").has_value();
                     },
                     20'000),
                 qPrintable(inWords(all)));
        QVERIFY(find(all, "list", "Job line"));
    }

    /// A sentence is told as a notification that begins to show; its name is the sentence.
    void whatCameOfItIsTold()
    {
        m_listener.shown.clear();
        const auto refresh = find(everything(), "menu item", "Read anew");
        QVERIFY2(refresh, qPrintable(inWords(everything())));
        press(*refresh);
        const auto told = [this] {
            for (const QString &path : std::as_const(m_listener.shown)) {
                const Seen each{m_name, path, {}, {}};
                if (property(each, "Name").toString() == u"Read anew." &&
                    asked(each, "GetRoleName").toString() == u"notification")
                    return true;
            }
            return false;
        };
        QVERIFY2(QTest::qWaitFor(told, 10'000), qPrintable(m_listener.shown.join('\n')));
    }
};

QTEST_GUILESS_MAIN(ScreenReaderTest)
#include "ScreenReaderTest.moc"
