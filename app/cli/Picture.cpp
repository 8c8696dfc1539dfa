#include "app/cli/Picture.h"

#include "app/actions/OutFile.h"
#include "app/cli/Files.h"

namespace loopwright {

Result<void> writePicture(const QString &path, const PictureMakers &makers)
{
    if (path.endsWith(".png", Qt::CaseInsensitive))
        return writeOut(path, FileKind::Png, makers.png());
    if (path.endsWith(".svg", Qt::CaseInsensitive))
        return writeOut(path, FileKind::Svg, makers.svg());
    return failure(ErrorCode::Usage,
                   QString("must end in .png or .svg, not \"%1\"").arg(fileNameOf(path)), "--out");
}

} // namespace loopwright
