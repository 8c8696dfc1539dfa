#pragma once
// An answer of a PostgreSQL server, as libpq holds it.

#include <memory>

struct pg_result;

namespace loopwright {

/// What the server answered; nullptr: nothing yet. Several may hold one.
class PostgresAnswer
{
public:
    explicit PostgresAnswer(pg_result *result = nullptr);
    pg_result *get() const { return m_result.get(); }
    void drop() { m_result.reset(); }

private:
    std::shared_ptr<pg_result> m_result;
};

} // namespace loopwright
