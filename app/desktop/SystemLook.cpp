#include "app/desktop/SystemLook.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>

namespace loopwright {

namespace {

constexpr const char *service = "org.freedesktop.portal.Desktop";
constexpr const char *path = "/org/freedesktop/portal/desktop";
constexpr const char *interface = "org.freedesktop.portal.Settings";
constexpr const char *appearance = "org.freedesktop.appearance";
constexpr const char *schemeKey = "color-scheme";
constexpr const char *contrastKey = "contrast";

/// As org.freedesktop.portal.Settings has them; 0 is no preference.
constexpr uint prefersDark = 1, prefersLight = 2, prefersContrast = 1;

/// So long the window waits to open in the right look; a portal that is started for it takes
/// longer.
constexpr int askMs = 250;

QVariant unwrapped(QVariant value)
{
    while (value.metaType() == QMetaType::fromType<QDBusVariant>())
        value = value.value<QDBusVariant>().variant();
    return value;
}

} // namespace

SystemLook::SystemLook(const QPalette &platform, QObject *parent)
    : QObject(parent)
    , m_platform(platform.color(QPalette::Window).lightness() <
                         platform.color(QPalette::WindowText).lightness()
                     ? Look::Dark
                     : Look::Light)
{
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected())
        return;
    bus.connect(service, path, interface, QStringLiteral("SettingChanged"), this,
                SLOT(take(QString, QString, QDBusVariant)));
    ask(schemeKey);
    ask(contrastKey);
}

void SystemLook::ask(const QString &key)
{
    QDBusMessage question =
        QDBusMessage::createMethodCall(service, path, interface, QStringLiteral("Read"));
    question << QString::fromLatin1(appearance) << key;
    QDBusConnection bus = QDBusConnection::sessionBus();
    const QDBusMessage answer = bus.call(question, QDBus::Block, askMs);
    if (answer.type() == QDBusMessage::ReplyMessage)
        return take(appearance, key, QDBusVariant(unwrapped(answer.arguments().value(0))));
    if (answer.errorName() != u"org.freedesktop.DBus.Error.NoReply")
        return; // there is none, or it does not know
    auto *later = new QDBusPendingCallWatcher(bus.asyncCall(question), this);
    connect(later, &QDBusPendingCallWatcher::finished, this, [this, key, later] {
        const QDBusPendingReply<QDBusVariant> reply = *later;
        if (reply.isValid())
            take(appearance, key, reply.value());
        later->deleteLater();
    });
}

void SystemLook::take(const QString &space, const QString &key, const QDBusVariant &value)
{
    if (space != QLatin1StringView(appearance))
        return;
    const Look before = look();
    const uint said = unwrapped(value.variant()).toUInt();
    if (key == QLatin1StringView(schemeKey))
        m_scheme = said;
    else if (key == QLatin1StringView(contrastKey))
        m_contrast = said;
    if (look() != before)
        emit changed();
}

Look SystemLook::look() const
{
    if (m_contrast == prefersContrast)
        return Look::HighContrast;
    if (m_scheme == prefersDark)
        return Look::Dark;
    return m_scheme == prefersLight ? Look::Light : m_platform;
}

} // namespace loopwright
