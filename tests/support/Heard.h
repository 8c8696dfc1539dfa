#pragma once
// What a screen reader is told while this lives.

#include "app/desktop/AccessibleParts.h"

#include <QApplication>
#include <QEvent>
#include <QWidget>

namespace loopwright {

class Heard : public QObject
{
public:
    Heard() { qApp->installEventFilter(this); }

    /// In order, and forgotten here.
    QStringList take() { return std::exchange(m_texts, {}); }

protected:
    bool eventFilter(QObject *object, QEvent *event) override
    {
        if (event->type() == QEvent::Show &&
            object->objectName() == QLatin1StringView(announcementName))
            m_texts << static_cast<QWidget *>(object)->accessibleName();
        return false;
    }

private:
    QStringList m_texts;
};

} // namespace loopwright
