#pragma once
// Which look the person's system asks for: by the settings portal of the desktop, which every
// desktop has in common; where there is none, by the colours that the platform gave the program.

#include "app/desktop/Theme.h"

#include <QDBusVariant>
#include <QObject>

namespace loopwright {

class SystemLook : public QObject
{
    Q_OBJECT
public:
    /// `platform`: the palette before the program had one of its own. Asks the portal, and waits
    /// for it a moment; what it says later is told by changed().
    explicit SystemLook(const QPalette &platform, QObject *parent = nullptr);

    Look look() const;

signals:
    void changed(); ///< look() is another one

private slots:
    void take(const QString &space, const QString &key, const QDBusVariant &value);

private:
    void ask(const QString &key);

    Look m_platform;
    uint m_scheme = 0;   ///< color-scheme of the portal
    uint m_contrast = 0; ///< contrast of the portal
};

} // namespace loopwright
