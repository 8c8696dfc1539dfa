#include "app/actions/Records.h"

#include "app/actions/ShippedLimits.h"

#include <QDateTime>
#include <QDir>
#include <QStandardPaths>

namespace loopwright {

namespace {

QString loginName()
{
    for (const char *variable : {"LOGNAME", "USER"})
        if (const QString name = qEnvironmentVariable(variable); !name.isEmpty())
            return name;
    return QDir::home().dirName().isEmpty() ? QString("unknown") : QDir::home().dirName();
}

} // namespace

Records::Records(Database database)
    : m_database(std::move(database))
    , m_by(loginName())
{
}

Result<std::unique_ptr<Records>> Records::open(const QString &path)
{
    auto database = Database::open(path);
    if (!database)
        return failure(database.error());
    auto records = std::make_unique<Records>(std::move(*database));
    LOOPWRIGHT_TRY(bringShippedLimits(*records));
    return records;
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
