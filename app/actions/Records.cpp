#include "app/actions/Records.h"

#include "db/Connection.h"

#include <QDateTime>
#include <QStandardPaths>

#include <pwd.h>
#include <unistd.h>

namespace loopwright {

Records::Records(Database database)
    : m_database(std::move(database))
    , m_by(login())
{
}

QString Records::login() const
{
    const auto onServer = m_database.login();
    return onServer ? onServer->name : loginName();
}

QString Records::loginName()
{
    const passwd *user = getpwuid(getuid());
    return user ? QString::fromLocal8Bit(user->pw_name) : QString("user %1").arg(getuid());
}

Result<std::unique_ptr<Records>> Records::open(const QString &path, Database::Access access)
{
    LOOPWRIGHT_ASSIGN(auto database, Database::open(path, access));
    return std::make_unique<Records>(std::move(database));
}

Moment Records::now() const
{
    if (!m_given)
        return realNow();
    if (!m_runningSince)
        return *m_given;
    const std::chrono::duration<double> passed = std::chrono::steady_clock::now() - *m_runningSince;
    return m_given->plusSeconds(passed.count());
}

void Records::setNow(std::optional<Moment> moment)
{
    m_given = moment;
    m_runningSince.reset();
}

void Records::startClock(const Moment &from)
{
    m_given = from;
    m_runningSince = std::chrono::steady_clock::now();
}

Moment Records::realNow()
{
    const QDateTime now = QDateTime::currentDateTime();
    return Moment{now.toMSecsSinceEpoch(), now.offsetFromUtc()};
}

QString defaultDatabasePath()
{
    return QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
           "/loopwright/records.sqlite";
}

} // namespace loopwright
