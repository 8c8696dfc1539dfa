#pragma once
// An error-rate run while it goes on: when it was started, how long it is meant to last, and what
// was seen in which second. It lives by its start time alone, so that a program that was killed and
// started again knows how much of the run is left. A value; its JSON is kept as a draft.

#include "core/base/Moment.h"
#include "core/errortest/Second.h"
#include "core/errortest/WatchedTime.h"

#include <QJsonObject>

#include <optional>

namespace loopwright {

/// The part of an order's drafts in which its run is kept.
inline const QString runPart = QStringLiteral("error_test.run");

class RunLog
{
public:
    RunLog() = default;
    RunLog(const Moment &started, qint64 plannedSeconds)
        : m_started(started)
        , m_planned(plannedSeconds)
    {
    }

    bool isStarted() const { return m_started.has_value(); }
    /// Running or over; of a log that is started.
    Moment started() const { return *m_started; }
    qint64 plannedSeconds() const { return m_planned; }
    /// Whole seconds since the start, at most the planned ones, or those until it was stopped.
    qint64 elapsed(const Moment &now) const;
    qint64 remaining(const Moment &now) const { return m_planned - elapsed(now); }
    /// The planned time has passed, or it was stopped.
    bool isOver(const Moment &now) const { return stoppedEarly() || remaining(now) <= 0; }
    bool stoppedEarly() const { return m_stopped.has_value(); }
    Moment ended(const Moment &now) const;

    void addErrors(const Moment &now, qint64 count);
    /// Takes the last error entry back; nothing where there is none.
    void takeBack();
    void toggleSync(const Moment &now);
    bool inSync() const { return m_sync.size() % 2 == 0; }
    void stop(const Moment &now) { m_stopped = now; }
    /// A stop that was a slip of the finger can be taken back until the planned time has passed;
    /// after that the run stays one that was stopped.
    bool canGoOn(const Moment &now) const;
    void goOn(const Moment &now);

    /// Seconds read from the test set's export take the place of what was entered by hand.
    void import(SecondList seconds) { m_imported = std::move(seconds); }
    bool isImported() const { return m_imported.has_value(); }

    /// Something was keyed or imported while it went on.
    bool sawAnything() const { return m_imported || !m_errors.empty() || !m_sync.empty(); }

    /// What no program watched of it; none of an imported one. Not kept with the log: it follows
    /// from WatchedTime.
    void setGaps(std::vector<Stretch> gaps) { m_gaps = std::move(gaps); }
    std::vector<Stretch> gaps() const { return m_imported ? std::vector<Stretch>() : m_gaps; }
    qint64 notWatchedSeconds() const;

    /// One entry for each second up to now; one that nobody watched is there as a clean one.
    SecondList seconds(const Moment &now) const;

    QJsonObject toJson() const;
    /// What cannot be read is left out; a draft is no evidence.
    static RunLog fromJson(const QJsonObject &object);

    bool operator==(const RunLog &) const = default;

private:
    qint64 secondOf(const Moment &now) const;

    std::optional<Moment> m_started;
    qint64 m_planned = 0;
    std::optional<Moment> m_stopped;
    std::vector<std::pair<qint64, qint64>> m_errors; ///< second, bit errors; in the order entered
    std::vector<qint64> m_sync;                      ///< seconds of loss and regain in turn
    std::optional<SecondList> m_imported;
    std::vector<Stretch> m_gaps;
};

} // namespace loopwright
