#include "app/desktop/Files.h"

#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

namespace loopwright {

namespace {

bool isBundle(const QString &path)
{
    QFile file(path);
    return QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) &&
           beginsBundle(file.read(bundleMarkSize));
}

} // namespace

bool beginsBundle(QByteArrayView head)
{
    constexpr QByteArrayView mark("{\"bundle\":"); // canonical JSON, so that it is always the same
    static_assert(mark.size() == bundleMarkSize);
    return head.startsWith(mark);
}

QString droppedFile(const QMimeData *data)
{
    const QList<QUrl> urls = data->urls();
    const bool one = urls.size() == 1 && urls.first().isLocalFile();
    return one && !isBundle(urls.first().toLocalFile()) ? urls.first().toLocalFile() : QString();
}

QStringList droppedBundles(const QMimeData *data)
{
    QStringList paths;
    const QList<QUrl> urls = data->urls();
    for (const QUrl &url : urls) {
        if (!url.isLocalFile() || !isBundle(url.toLocalFile()))
            return {};
        paths << url.toLocalFile();
    }
    return paths;
}

} // namespace loopwright
