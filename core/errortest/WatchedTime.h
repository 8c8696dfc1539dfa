#pragma once
// While which seconds of a run a program looked on. It says so every few seconds; the time that a
// program was dead is then a gap, in which nobody saw whether there was an error. A value; its JSON
// is kept as a draft beside that of the run.

#include "core/base/Moment.h"

#include <QJsonObject>

#include <optional>
#include <vector>

namespace loopwright {

/// The part of an order's drafts in which it is kept.
inline const QString watchedPart = QStringLiteral("error_test.watched");

/// Whole seconds of a run, from the first one up to, and without, the last.
struct Stretch
{
    qint64 from = 0;
    qint64 to = 0;

    qint64 seconds() const { return to - from; }
    bool operator==(const Stretch &) const = default;
};

class WatchedTime
{
public:
    /// What a program may be behind with saying that it looks on, in seconds.
    static constexpr qint64 mostBehind = 6;

    WatchedTime() = default;
    /// Of the run that started then; nobody has looked on yet.
    explicit WatchedTime(const Moment &started)
        : m_started(started)
    {
    }

    /// False for any other run, and if nothing is known.
    bool isOf(const Moment &started) const { return m_started == started; }
    /// Who began to look on at the second `from` did so up to `to`.
    void watch(qint64 from, qint64 to);
    /// What nobody watched of the first `until` seconds, in order. The end counts as watched if it
    /// is not longer than mostBehind.
    std::vector<Stretch> gaps(qint64 until) const;

    QJsonObject toJson() const;
    /// What cannot be read is left out.
    static WatchedTime fromJson(const QJsonObject &object);

    bool operator==(const WatchedTime &) const = default;

private:
    std::optional<Moment> m_started;
    std::vector<Stretch> m_stretches; ///< by their begin
};

} // namespace loopwright
