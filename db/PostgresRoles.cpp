// Who is logged in on a server, and what the groups may do there.

#include "core/base/Json.h"
#include "db/PostgresConnection.h"
#include "db/SqlCatalog.h"

#include <libpq-fe.h>

namespace loopwright {

namespace {

constexpr Role highestFirst[] = {Role::Supervisor, Role::Dispatcher, Role::Installer};

const char *const script = "postgresql/roles.sql";

/// As what the script makes last bears it, so that another script is run once more.
QByteArray markOfScript()
{
    return "Loopwright roles " + sha256Hex(embeddedSql(script)).left(16).toLatin1();
}

/// Name; whether it may act as the owner; whether the groups are there, have the rights that this
/// program gives and may write, for a dump that was restored elsewhere lost them; to which it
/// belongs.
QByteArray whoIsIt()
{
    return "SELECT session_user, public.acts_as_owner(),"
           " count(oid) = 3 AND bool_and(has_table_privilege(oid, 'public.event', 'INSERT'))"
           " AND obj_description(to_regprocedure('public.masked_test_lines()'), 'pg_proc')"
           " IS NOT DISTINCT FROM '" +
           markOfScript() +
           "', string_agg(rolname, ' ') FILTER (WHERE pg_has_role(session_user, oid, 'USAGE'))"
           " FROM pg_roles WHERE rolname IN ('installer', 'dispatcher', 'supervisor')";
}

} // namespace

Result<void> PostgresConnection::readLogin(bool mayWrite)
{
    LOOPWRIGHT_ASSIGN(auto who, m_session.execute(whoIsIt(), "login"));
    const auto told = [&who](int column) {
        return QString::fromUtf8(PQgetvalue(who.get(), 0, column));
    };
    const auto is = [&told](int column) { return told(column) == u"t"; };
    if (is(1) && !is(2) && mayWrite) {
        LOOPWRIGHT_TRY(makeRoles());
        LOOPWRIGHT_ASSIGN(who, m_session.execute(whoIsIt(), "login"));
    }
    ServerLogin login{told(0), is(1), {}};
    const QStringList groups = told(3).split(u' ');
    for (const Role role : highestFirst)
        if (!login.role && groups.contains(toText(role)))
            login.role = role;
    if (!login.isOwner && !login.role)
        return failure(ErrorCode::DatabaseTrouble,
                       QString("the login %1 has no role here: the owner of the database gives it "
                               "one of installer, dispatcher and supervisor (GRANT installer TO "
                               "…)")
                           .arg(login.name),
                       path());
    m_login = login;
    return {};
}

Result<void> PostgresConnection::makeRoles()
{
    LOOPWRIGHT_TRY(beginChange()); // one at a time
    const QByteArray mark = "COMMENT ON FUNCTION masked_test_lines() IS '" + markOfScript() + "';";
    const auto made = run(embeddedSql(script) + mark + "COMMIT", "roles");
    rollBack(); // of what was committed nothing
    if (made)
        return {};
    return failure(ErrorCode::DatabaseTrouble,
                   QString("the roles installer, dispatcher and supervisor are not there, or have "
                           "no rights, and this login may not make them: %1")
                       .arg(made.error().message),
                   path());
}

} // namespace loopwright
