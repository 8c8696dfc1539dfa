#include "app/cli/LoopFile.h"

#include "app/cli/Files.h"

namespace loopwright {

namespace {

constexpr qint64 largestLoopFile = 10'000'000;
constexpr double largestOhm = 1e6;

} // namespace

Result<LoopMakeup> readLoopFile(const QString &path)
{
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path, largestLoopFile));
    const bool isCsv = path == standardStream ? !bytes.trimmed().startsWith('{')
                                              : path.endsWith(".csv", Qt::CaseInsensitive);
    if (isCsv)
        return LoopMakeup::fromCsv(bytes, fileNameOf(path));
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(bytes, fileNameOf(path)));
    return LoopMakeup::fromJson(object, fileNameOf(path));
}

Result<Terminations> terminationsFromText(const QString &text)
{
    if (text.isEmpty())
        return Terminations();
    QStringList parts = text.split(u',');
    if (parts.size() == 1)
        parts << parts.first();
    double ohms[2] = {0, 0};
    for (int i = 0; i < 2 && parts.size() == 2; ++i)
        ohms[i] = parts[i].trimmed().toDouble();
    // A text that is no number reads as 0; the comparison refuses "nan" too.
    if (!(ohms[0] > 0 && ohms[1] > 0 && ohms[0] <= largestOhm && ohms[1] <= largestOhm))
        return failure(
            ErrorCode::Usage,
            QString("must be a resistance in ohm, or two as SOURCE,LOAD, not \"%1\"").arg(text),
            "--ohms");
    return Terminations{ohms[0], ohms[1]};
}

} // namespace loopwright
