#include "app/actions/BundleParts.h"

#include "app/actions/OutFile.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace loopwright {

namespace {

QString partName(const QString &out, std::size_t part, std::size_t parts)
{
    if (parts == 1)
        return out;
    const QString suffix = QFileInfo(out).suffix();
    const QString end = suffix.isEmpty() ? QString() : '.' + suffix;
    return QString("%1-%2%3").arg(out.chopped(end.size()), QString::number(part), end);
}

} // namespace

std::vector<BundleFile> signedParts(const Bundle &outline, std::vector<BundledOrder> orders,
                                    int split, const SigningKey &key)
{
    const std::size_t most = split > 0 ? std::size_t(split) : orders.size();
    const std::size_t parts = (orders.size() + most - 1) / most;
    std::vector<BundleFile> files;
    files.reserve(parts);
    for (std::size_t part = 0; part < parts; ++part) {
        Bundle bundle = outline;
        bundle.part = int(part) + 1;
        bundle.parts = int(parts);
        const std::size_t end = std::min(orders.size(), (part + 1) * most);
        for (std::size_t i = part * most; i < end; ++i)
            bundle.orders.push_back(std::move(orders[i]));
        files.push_back(signedBundle(std::move(bundle), key));
    }
    return files;
}

QStringList writtenOver(const QString &out, const std::vector<BundleFile> &files)
{
    QStringList orders, going;
    for (const BundleFile &each : files)
        for (const BundledOrder &entry : each.bundle.orders)
            going << entry.number;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const QString name = partName(out, i + 1, files.size());
        QFile file(name);
        if (!QFileInfo(name).isFile() || !file.open(QIODevice::ReadOnly))
            continue;
        const auto there = readBundle(file.readAll(), name);
        if (!there || there->bundle.kind != files[i].bundle.kind)
            continue;
        for (const BundledOrder &entry : there->bundle.orders)
            if (!going.contains(entry.number))
                orders << entry.number;
    }
    return orders;
}

Result<QStringList> writeParts(const QString &out, const std::vector<BundleFile> &files)
{
    QStringList names;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const QString name = partName(out, i + 1, files.size());
        LOOPWRIGHT_TRY(writeOut(name, FileKind::Json, files[i].bytes()));
        names << name;
    }
    return names;
}

} // namespace loopwright
