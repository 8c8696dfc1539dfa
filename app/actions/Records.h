#pragma once
// The open records: one database, a clock, and who acts. Both faces make one and hand it to every
// action.

#include "app/trust/KeyFolder.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"
#include "core/office/Office.h"
#include "db/LimitSetStore.h"

#include <chrono>
#include <functional>
#include <memory>

namespace loopwright {

class Records
{
public:
    /// Opens or makes the database at `path`. It changes nothing that is in it: a new one has no
    /// limit sets yet (bringShippedLimits()).
    /// DatabaseTrouble if it cannot be opened, is locked, damaged, or of a newer version;
    /// DiskTrouble if the disk refuses a write.
    static Result<std::unique_ptr<Records>>
    open(const QString &path, Database::Access access = Database::Access::ReadWrite);

    Database &database() { return m_database; }

    /// Who acts; goes into the history. The login name unless set (actFor()).
    QString by() const { return m_by; }
    void actAs(const QString &name) { m_by = name; }
    /// Of the process's user; no environment variable gives rights.
    static QString loginName();
    /// As whom one is logged in: on the server that keeps the records, else as the process's user.
    QString login() const;
    bool isOnServer() const { return !m_database.isFile(); }

    /// Where the PIN of a person comes from if an act needs one; nothing: it was not given.
    using PinSource = std::function<std::optional<QString>(const Person &)>;
    void setPinSource(PinSource source) { m_pinSource = std::move(source); }
    std::optional<QString> askPin(const Person &person) const
    {
        return m_pinSource ? m_pinSource(person) : std::nullopt;
    }

    /// Where the secret keys lie. The usual place unless set.
    const KeyFolder &keys() const { return m_keys; }
    void setKeys(KeyFolder keys) { m_keys = std::move(keys); }

    /// The time that counts: the given one if it was set (late entry, tests), else the clock.
    Moment now() const;
    void setNow(std::optional<Moment> moment);
    /// As setNow, but the time goes on from the given one: a window stays open for hours, and its
    /// entries must not all bear one time.
    void startClock(const Moment &from);
    /// The clock, in the local offset; the history keeps it beside now().
    static Moment realNow();

    /// Whether orders that a van has are changed all the same: somebody said so (AtHome.h).
    bool changesWhatIsOut() const { return m_changesWhatIsOut; }
    void changeWhatIsOut(bool on) { m_changesWhatIsOut = on; }

    /// What limitsInForce() read last: an import judges many orders by one set.
    ReadLimitSet &lastLimits() { return m_lastLimits; }

    explicit Records(Database database);

private:
    Database m_database;
    QString m_by;
    PinSource m_pinSource;
    KeyFolder m_keys{KeyFolder::defaultPath()};
    bool m_changesWhatIsOut = false;
    std::optional<Moment> m_given;
    ReadLimitSet m_lastLimits;
    std::optional<std::chrono::steady_clock::time_point> m_runningSince; ///< of the given time
};

/// `records.sqlite` in the XDG data directory of the program.
QString defaultDatabasePath();

/// Long work reports here: how much of how much; answer false to stop it, and nothing is changed.
using Progress = std::function<bool(qint64 done, qint64 total)>;

/// One piece of such work after the other, where stopping it takes all of it back.
class Steps
{
public:
    Steps(const Progress &progress, qint64 total)
        : m_progress(progress)
        , m_total(total)
    {
    }
    /// Before each. Refused when it is stopped.
    Result<void> next()
    {
        if (m_progress && !m_progress(m_done++, m_total))
            return failure(ErrorCode::Refused, "It was stopped; nothing was changed.");
        return {};
    }

private:
    const Progress &m_progress;
    qint64 m_done = 0, m_total;
};

} // namespace loopwright
