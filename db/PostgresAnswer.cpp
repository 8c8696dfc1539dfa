#include "db/PostgresAnswer.h"

#include <libpq-fe.h>

namespace loopwright {

PostgresAnswer::PostgresAnswer(pg_result *result)
    : m_result(result, &PQclear)
{
}

} // namespace loopwright
