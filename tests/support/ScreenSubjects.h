#pragma once
// What each screen of the window is shown on, for all tests, and for the pictures.

#include "app/desktop/Screens.h"

#include <QString>

namespace loopwright {

/// For the screens that show one order or circuit at a time.
struct ScreenSubjects
{
    QString order, circuit;

    QString of(const ScreenEntry &entry) const
    {
        const QString key = QString::fromLatin1(entry.key);
        if (key == QLatin1StringView("circuit"))
            return circuit;
        if (key == QLatin1StringView("job") || key == QLatin1StringView("handoff"))
            return order;
        return {};
    }
};

} // namespace loopwright
