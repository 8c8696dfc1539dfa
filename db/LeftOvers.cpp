#include "db/LeftOvers.h"

#include <QDir>
#include <QFileInfo>

#include <atomic>
#include <cerrno>
#include <csignal>
#include <unistd.h>

namespace loopwright {

QString nameInTheMaking(const QString &stem)
{
    static std::atomic<int> count = 0;
    QString name;
    // One that is there is of an earlier process with the number of this one.
    do
        name = QString("%1%2-%3").arg(stem).arg(getpid()).arg(++count);
    while (QFileInfo::exists(name));
    return name;
}

QStringList leftOvers(const QString &stem)
{
    const QFileInfo beginning(stem);
    const QDir folder = beginning.dir();
    // By hand: a name may have characters that are patterns to entryList().
    const QStringList names = folder.entryList(QDir::Files | QDir::Dirs | QDir::NoDotAndDotDot |
                                               QDir::Hidden | QDir::NoSymLinks | QDir::System);
    QStringList found;
    for (const QString &name : names) {
        if (!name.startsWith(beginning.fileName()))
            continue;
        bool isNumber = false;
        const int process =
            name.sliced(beginning.fileName().size()).section('-', 0, 0).toInt(&isNumber);
        if (isNumber && process > 0 && kill(process, 0) != 0 && errno == ESRCH)
            found << folder.filePath(name);
    }
    return found;
}

void removeLeftOvers(const QString &stem)
{
    const QStringList files = leftOvers(stem);
    for (const QString &file : files)
        if (!QFile::remove(file))
            QDir(file).removeRecursively();
}

} // namespace loopwright
