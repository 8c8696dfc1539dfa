#include "app/cli/Picture.h"

#include "app/actions/OutFile.h"
#include "app/cli/Files.h"

#include <QFileInfo>

namespace loopwright {

QStringList pictureFormats()
{
    return {"png", "svg"};
}

Result<void> writePicture(const QString &path, const QString &format, const PictureMakers &makers)
{
    const QString form = format.isEmpty() ? QFileInfo(path).suffix().toLower() : format;
    if (form == "png")
        return writeOut(path, FileKind::Png, makers.png());
    if (form == "svg")
        return writeOut(path, FileKind::Svg, makers.svg());
    if (path == standardStream)
        return failure(ErrorCode::Usage, "say by --format png or svg what goes there", "--out");
    return failure(ErrorCode::Usage,
                   QString("must end in .png or .svg, not \"%1\"").arg(fileNameOf(path)), "--out");
}

} // namespace loopwright
