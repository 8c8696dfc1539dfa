#include "app/desktop/Files.h"

#include <QMimeData>
#include <QUrl>

namespace loopwright {

QString droppedFile(const QMimeData *data)
{
    const QList<QUrl> urls = data->urls();
    return urls.size() == 1 && urls.first().isLocalFile() ? urls.first().toLocalFile() : QString();
}

} // namespace loopwright
