#pragma once
// What every screen stands on: the open records, and the two lanes of work beside the window's
// thread. One per window, made by main.cpp, lives longer than every screen.

#include "app/desktop/DraftKeeper.h"
#include "app/desktop/Lanes.h"

#include <QDate>
#include <QMutex>
#include <QObject>

namespace loopwright {

class DesktopContext
{
public:
    DesktopContext(std::unique_ptr<Records> records, QString databasePath, QString by,
                   std::optional<Moment> given);
    /// Opens the database, and takes in the limit sets that come with the program; errors as
    /// Records::open. Empty `by`: the login name.
    static Result<std::unique_ptr<DesktopContext>>
    open(const QString &databasePath, const QString &by, std::optional<Moment> given);

    /// For the window's own thread only.
    Records &records() const { return *m_records; }
    /// What is being typed; for the window's own thread only.
    DraftKeeper &drafts() const { return *m_drafts; }
    /// A further connection to the same database, acting for the same person at the same time. Call
    /// it in the thread that will use it, and let it go there.
    Result<std::unique_ptr<Records>> another();

    /// What is asked while one looks on: searches, an order's view.
    Lane &questions() { return m_questions; }
    /// What takes its time: imports, printing, exports, looking through everything.
    Lane &longWork() { return m_longWork; }

    /// Lets the given time go on; nothing where the clock counts anyway.
    void letClockRun();

    /// The person with this key works from now on, in the lanes too.
    void actAs(const QString &key);
    /// Called in the window's thread when an act needs a PIN.
    void setPinDialog(Records::PinSource ask) { m_askPin = std::move(ask); }

    /// As it is shown: of a server's records without login and password.
    QString databasePath() const { return shownPlace(m_databasePath); }
    /// As it was given, without a password.
    QString address() const { return withoutPassword(m_databasePath); }
    QDate today() const { return m_records->now().localDate(); }

private:
    /// In it acts who works in the window at that time.
    Lane makeLane();
    QString by() const;
    std::optional<QString> pinOf(const Person &person);

    std::unique_ptr<Records> m_records;
    std::unique_ptr<DraftKeeper> m_drafts; ///< null if the records cannot be opened
    QString m_databasePath;
    mutable QMutex m_whoMutex; ///< of the one below, which the lanes read
    QString m_by;
    std::optional<Moment> m_given;
    QObject m_window; ///< lives in the window's thread
    Records::PinSource m_askPin;
    std::atomic<bool> m_clockRuns = false;
    Lane m_questions; ///< last: what runs in them uses the others
    Lane m_longWork;
};

} // namespace loopwright
