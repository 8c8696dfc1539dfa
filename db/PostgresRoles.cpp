// Who is logged in on a server, and what the groups may do there.

#include "db/PostgresConnection.h"
#include "db/SqlCatalog.h"

namespace loopwright {

namespace {

constexpr Role highestFirst[] = {Role::Supervisor, Role::Dispatcher, Role::Installer};

/// Whether the groups are there and may write: a dump that was restored elsewhere lost them.
constexpr const char *groupsStand =
    "SELECT count(*) = 3 AND bool_and(has_table_privilege(oid, 'public.event', 'INSERT'))"
    " FROM pg_roles WHERE rolname IN ('installer', 'dispatcher', 'supervisor')";

} // namespace

Result<void> PostgresConnection::readLogin(bool mayWrite)
{
    ServerLogin login;
    LOOPWRIGHT_ASSIGN(login.name, text("SELECT session_user"));
    LOOPWRIGHT_ASSIGN(const auto owner,
                      text("SELECT pg_has_role(session_user, relowner, 'USAGE') FROM pg_class"
                           " WHERE oid = 'public.meta'::regclass"));
    login.isOwner = owner == u"t";
    if (login.isOwner && mayWrite) {
        LOOPWRIGHT_ASSIGN(const auto stand, text(groupsStand));
        if (stand != u"t")
            LOOPWRIGHT_TRY(makeRoles());
    }
    LOOPWRIGHT_ASSIGN(const auto groups,
                      texts("SELECT rolname FROM pg_roles WHERE rolname IN ('installer',"
                            " 'dispatcher', 'supervisor')"
                            " AND pg_has_role(session_user, oid, 'MEMBER')"));
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
    const auto made =
        run("BEGIN READ WRITE;" + embeddedSql("postgresql/roles.sql") + "COMMIT", "roles");
    if (made)
        return {};
    rollBack();
    return failure(ErrorCode::DatabaseTrouble,
                   QString("the roles installer, dispatcher and supervisor are not there, or have "
                           "no rights, and this login may not make them: %1")
                       .arg(made.error().message),
                   path());
}

} // namespace loopwright
