#include "app/desktop/job/Paperwork.h"

#include "app/print/PdfFile.h"

#include <QDir>
#include <QSaveFile>
#include <QStandardPaths>

namespace loopwright {

QString proposedPath(const QString &fileName)
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation))
        .filePath(fileName);
}

Result<void> saveSheet(const QString &path, const Sheet &sheet, const Moment &now)
{
    PdfInfo info;
    info.title = sheet.title;
    info.created = now;
    const auto pdf = sheetPdf(sheet, info);
    if (!pdf)
        return failure(pdf.error());
    return saveBytes(path, *pdf);
}

Result<void> saveBytes(const QString &path, const QByteArray &bytes)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return failure(ErrorCode::DiskTrouble,
                       QString("The file could not be written: %1.").arg(file.errorString()), path);
    return {};
}

} // namespace loopwright
