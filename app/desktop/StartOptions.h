#pragma once
// What the program is told when it starts, on its command line and by LOOPWRIGHT_DB.

#include "app/desktop/OneWindow.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"

#include <QSettings>
#include <QStringList>

namespace loopwright {

struct StartOptions
{
    /// --db or a file of records, else LOOPWRIGHT_DB; empty: as the settings say (chooseRecords()).
    QString database;
    QString by;                ///< --by; empty: the login name
    std::optional<Moment> now; ///< --now
    QString order;             ///< --order: the job to open
    QString screen, file;      ///< a file that is no database, and the screen that takes it, if
                               ///< it is no bundle
    QString look;              ///< --look: a code of LookChoice; empty: as last chosen
    QString language;          ///< --language: a code of languages(); empty: as last chosen
    int size = 0;              ///< --size in percent; 0: as last chosen
    bool helpWanted = false;
    bool versionWanted = false;
    bool manualWanted = false;

    Wish wish() const { return {order, screen, file}; }
    /// Where nothing was said of the records: those that the settings name, else the usual place.
    void chooseRecords(const QSettings &settings);
    static constexpr const char *recordsKey = "records"; ///< of the settings

    /// Usage where an option is unknown or has a value that makes no sense.
    static Result<StartOptions> read(const QStringList &arguments);
    static QString help();
    /// The page loopwright(1), in mdoc.
    static QByteArray manual();
};

} // namespace loopwright
