#include "app/actions/BundleFolder.h"

#include "app/actions/InFile.h"

#include <QDateTime>
#include <QDir>

namespace loopwright {

namespace {

/// As the last look left it, read now if nobody is writing it any more.
Result<FolderFile> lookAt(Records &records, const QFileInfo &info,
                          const QHash<QString, FolderFile> &before)
{
    FolderFile file{info.size(), info.lastModified().toMSecsSinceEpoch()};
    const auto known = before.constFind(info.absoluteFilePath());
    if (known == before.constEnd() || known->size != file.size ||
        known->changedMs != file.changedMs)
        return file;
    if (known->isRead)
        return *known;
    file.isRead = true;
    const auto bytes = readFile(info.absoluteFilePath());
    if (!bytes)
        return file;
    LOOPWRIGHT_ASSIGN(auto outline, outlineOf(records, {info.fileName(), *bytes}));
    if (outline.code.isEmpty())
        file.bundle = std::move(outline);
    return file;
}

bool isFor(const VanDesk &desk, const BundleOutline &bundle)
{
    return desk.isVan || bundle.kind == BundleKind::Out
               ? bundle.kind == BundleKind::Out && bundle.forStation == desk.tag
               : bundle.kind == BundleKind::Back;
}

} // namespace

Result<FolderLook> lookInto(Records &records, const QString &folder,
                            const QHash<QString, FolderFile> &before)
{
    const QDir dir(folder);
    if (!dir.exists() || !dir.isReadable())
        return failure(ErrorCode::BadInput, "The folder is not there or cannot be read.", folder);
    LOOPWRIGHT_ASSIGN(const auto desk, vanDesk(records));
    const StationStore stations(records.database());
    const QFileInfoList infos = dir.entryInfoList({"*.json"}, QDir::Files, QDir::Name);
    FolderLook look;
    for (const QFileInfo &info : infos) {
        LOOPWRIGHT_ASSIGN(auto file, lookAt(records, info, before));
        if (file.bundle && isFor(desk, *file.bundle)) {
            LOOPWRIGHT_ASSIGN(const auto here, stations.bundle(file.bundle->id));
            if (!here)
                look.waiting << info.absoluteFilePath();
        }
        look.files.insert(info.absoluteFilePath(), std::move(file));
    }
    return look;
}

} // namespace loopwright
