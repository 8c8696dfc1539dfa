#include "app/desktop/Files.h"

#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

namespace loopwright {

namespace {

/// By its first bytes: a bundle is canonical JSON, so that they are always the same.
bool isBundle(const QString &path)
{
    constexpr QByteArrayView begin("{\"bundle\":");
    QFile file(path);
    return QFileInfo(path).isFile() && file.open(QIODevice::ReadOnly) &&
           file.read(begin.size()) == begin;
}

} // namespace

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
