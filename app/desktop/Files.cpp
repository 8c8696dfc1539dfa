#include "app/desktop/Files.h"

#include <QFile>
#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

namespace loopwright {

namespace {

constexpr qint64 mostBytes = 2'000'000'000;

} // namespace

Result<QByteArray> readWholeFile(const QString &path)
{
    QFile file(path);
    if (QFileInfo(path).isDir())
        return failure(ErrorCode::BadInput, QStringLiteral("is a folder, not a file"), path);
    if (!file.open(QIODevice::ReadOnly))
        return failure(ErrorCode::BadInput,
                       QStringLiteral("cannot be read: %1").arg(file.errorString()), path);
    if (file.size() > mostBytes)
        return failure(ErrorCode::BadInput, QStringLiteral("is longer than 2 GB"), path);
    QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return failure(ErrorCode::BadInput,
                       QStringLiteral("cannot be read: %1").arg(file.errorString()), path);
    return bytes;
}

QString droppedFile(const QMimeData *data)
{
    const QList<QUrl> urls = data->urls();
    return urls.size() == 1 && urls.first().isLocalFile() ? urls.first().toLocalFile() : QString();
}

} // namespace loopwright
