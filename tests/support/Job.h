#pragma once
// A job that is accepted, to be changed by a test: its order, its facts, and what the records know
// beside them.

#include "tests/support/Jobs.h"

#include <algorithm>
#include <functional>

namespace loopwright::jobs {

struct Job
{
    OrderFields fields = briFields();
    QList<QJsonObject> facts = briFacts();
    std::vector<OrderChange> changes = {};
    std::function<void(DecisionInput &)> then = [](DecisionInput &) {};

    QJsonObject &at(int n)
    {
        return *std::ranges::find_if(facts,
                                     [n](const QJsonObject &f) { return f["id"] == uuid(n); });
    }
    void drop(int n)
    {
        facts.removeIf([n](const QJsonObject &f) { return f["id"] == uuid(n); });
    }
    void set(int n, const QString &key, const QJsonValue &value) { at(n).insert(key, value); }
    /// Facts first to last name the pair.
    void name(const QString &pair, int first = 1, int last = 99)
    {
        for (QJsonObject &fact : facts)
            for (int n = first; n <= last; ++n)
                if (fact["id"] == uuid(n) && fact["kind"] != "changed")
                    fact["pair"] = pair;
    }
};

/// Minutes from 08:00 on the day of the visit.
inline Moment minute(int minutes)
{
    return *Moment::parse(fact(0, "", minutes, {})["at"].toString());
}

inline QJsonObject changed(int n, int minutes, const char *what, const QString &to = {})
{
    QJsonObject body{{"what", what}, {"text", "as it was said"}};
    if (!to.isEmpty())
        body.insert("to", to);
    return fact(n, "changed", minutes, body);
}

} // namespace loopwright::jobs
