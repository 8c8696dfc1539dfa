#pragma once
// What tests of the stores begin with: records in memory and an event.

#include "db/Transaction.h"
#include "tests/support/Place.h"

#include <QTest>

/// Ends the test when a Result failed, with its error in words.
#define QVERIFY_RESULT(expression)                                                                 \
    do {                                                                                           \
        const auto &checked = (expression);                                                        \
        QVERIFY2(checked, checked ? "" : qPrintable(checked.error().text()));                      \
    } while (false)

namespace loopwright {

inline Event sampleEvent(const QString &subject = registerSubject(),
                         const QString &kind = QStringLiteral("tried"))
{
    Event event;
    event.subject = subject;
    event.by = "A. Rivera";
    event.at = *Moment::parse(u"2026-03-04T09:15:00-06:00");
    event.kind = kind;
    return event;
}

inline Database recordsInMemory()
{
    auto opened = Database::open(newPlace());
    if (!opened)
        qFatal("%s", qPrintable(opened.error().text()));
    return std::move(*opened);
}

} // namespace loopwright
