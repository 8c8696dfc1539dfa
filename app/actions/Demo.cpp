#include "app/actions/Demo.h"

#include "app/actions/Evidence.h"
#include "app/actions/Import.h"
#include "app/actions/LimitChanges.h"
#include "db/SqliteCopy.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

// Outside of any namespace, as Qt wants it: the files lie in a library.
static void initDemoResource()
{
    Q_INIT_RESOURCE(demo);
}

namespace loopwright {

namespace {

const QString demoFiles = QStringLiteral(":/demo/");

Result<void> stopped()
{
    return failure(ErrorCode::Refused, QStringLiteral("The demo was not made: it was stopped."));
}

Result<QByteArray> demoFile(const QString &name)
{
    QFile file(demoFiles + name);
    if (!file.open(QIODevice::ReadOnly))
        return failure(ErrorCode::BadInput, QStringLiteral("is not in the program"), name);
    return file.readAll();
}

/// Two of its orders are held on purpose.
Result<void> takeDemoFile(Records &records, const QString &name, decltype(&importOrders) import)
{
    LOOPWRIGHT_ASSIGN(const auto bytes, demoFile(name));
    ImportOptions options;
    options.fileName = name;
    LOOPWRIGHT_ASSIGN(const auto report, import(records, bytes, options));
    if (report.refused > 0)
        return failure(ErrorCode::BadInput, QStringLiteral("has rows that are refused"), name);
    return {};
}

Result<void> fillDemo(Records &records, const Progress &progress)
{
    LOOPWRIGHT_TRY(bringShippedLimits(records));
    records.setNow(demoNow());
    records.actAs(demoPerson());
    LOOPWRIGHT_TRY(takeDemoFile(records, QStringLiteral("offices.csv"), importOffices));
    LOOPWRIGHT_TRY(takeDemoFile(records, QStringLiteral("issuer.csv"), importIssuer));
    LOOPWRIGHT_TRY(takeDemoFile(records, QStringLiteral("installers.csv"), importInstallers));
    LOOPWRIGHT_TRY(takeDemoFile(records, QStringLiteral("instruments.csv"), importInstruments));
    records.actAs(QStringLiteral("moss"));
    LOOPWRIGHT_TRY(takeDemoFile(records, QStringLiteral("orders.csv"), importOrders));
    records.actAs(QStringLiteral("okafor"));
    const QStringList names =
        QDir(demoFiles + "records").entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name);
    for (qsizetype i = 0; i < names.size(); ++i) {
        if (progress && !progress(i, names.size()))
            return stopped();
        LOOPWRIGHT_ASSIGN(const auto bytes, demoFile("records/" + names[i]));
        LOOPWRIGHT_TRY(recordFile(records, bytes, names[i]));
    }
    return {};
}

} // namespace

QString demoDatabasePath()
{
    return QFileInfo(defaultDatabasePath()).path() + "/demo.sqlite";
}

QString demoPerson()
{
    return QStringLiteral("hale");
}

Moment demoNow()
{
    return *Moment::parse(u"2026-03-12T17:00:00-06:00");
}

Result<void> makeDemo(const QString &path, const Progress &progress)
{
    if (QFileInfo::exists(path))
        return {};
    initDemoResource();
    const QString making = unfinishedName(path);
    Result<void> made = [&]() -> Result<void> {
        LOOPWRIGHT_ASSIGN(const auto records, Records::open(making));
        return fillDemo(*records, progress);
    }();
    if (made)
        made = putInPlace(making, path, PutMode::KeepOther);
    if (!made)
        removeDatabaseFiles(making);
    return made;
}

} // namespace loopwright
