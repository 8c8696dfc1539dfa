#pragma once
// What was read within a change. Who changes holds the lock of all writers, so what he has read
// stays as it is until he writes there himself: it is asked once. And what is going to be asked can
// be found out before, by going through it with no answers, and be asked all at once: the way to
// the server costs more than most of the questions.

#include "db/PostgresAnswer.h"

#include <QByteArray>

#include <map>
#include <string>
#include <vector>

namespace loopwright {

/// "fact" of "INSERT INTO fact (…", "UPDATE …", "DELETE FROM …"; empty if it is none of these.
std::string tableWritten(const std::string &statement);

struct PostgresQuestion
{
    std::string text; ///< with $n
    std::vector<unsigned> types;
    std::vector<QByteArray> values; ///< null: NULL

    std::string key() const;
};

/// As libpq takes values; they must outlive it.
std::vector<const char *> pointersTo(const std::vector<QByteArray> &values);

class PostgresReads
{
public:
    /// From now on answers are kept; until endChange().
    void beginChange() { m_keeps = true; }
    void endChange();
    bool isKeeping() const { return m_keeps; }

    /// Nullptr: it was not asked, or something was written since where it reads.
    const PostgresAnswer *find(const std::string &key) const;
    /// Only while isKeeping().
    void keep(const PostgresQuestion &question, PostgresAnswer answer);
    /// `statement` has written; empty: somebody wrote anywhere.
    void forget(const std::string &statement);

    /// Until takeWanted() what is not kept is wanted, and has no rows.
    void beginForeseeing() { m_foresees = true; }
    bool isForeseeing() const { return m_foresees; }
    void want(PostgresQuestion question);
    std::vector<PostgresQuestion> takeWanted();

private:
    struct Kept
    {
        std::string text;
        PostgresAnswer answer;
    };
    std::map<std::string, Kept> m_kept; ///< by key
    std::vector<PostgresQuestion> m_wanted;
    bool m_keeps = false, m_foresees = false;
};

} // namespace loopwright
