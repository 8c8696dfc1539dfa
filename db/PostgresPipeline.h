#pragma once
// Statements that go to a PostgreSQL server in one trip, with all their answers (libpq 34.5,
// pipeline mode).

#include "db/PostgresAnswer.h"
#include "db/PostgresReads.h"

#include <QString>

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

struct pg_conn;

namespace loopwright {

struct PostgresMessage
{
    PostgresQuestion question;
    std::string name = {}; ///< under which it was prepared; empty: its text is sent
    bool prepares = false; ///< only prepares it, under that name
    QString doing = {};    ///< for an error
    bool changesRows = false;
    bool once = false; ///< not worth preparing
};

/// A statement that has no values.
PostgresMessage plainMessage(const char *sql, const QString &doing);

/// What is sent again and again the server prepares: to prepare it once costs as much as to send it
/// twice as it is.
class PostgresPrepared
{
public:
    /// Adds it, with the name that it has, or after a message that gives it one.
    void add(std::vector<PostgresMessage> &messages, PostgresMessage message);
    /// What was prepared is gone, or may not have come so far.
    void forget() { m_known.clear(); }

private:
    struct Known
    {
        int runs = 0;
        std::string name; ///< empty until it is prepared
    };
    std::unordered_map<std::string, Known> m_known; ///< by text and types
    int m_named = 0;
};

/// One answer for each, in their order; after one that failed the others are told as passed over.
/// Nothing: nobody knows what the server heard, and the connection cannot go on.
std::optional<std::vector<PostgresAnswer>>
sendTogether(pg_conn *handle, const std::vector<PostgresMessage> &messages);

} // namespace loopwright
