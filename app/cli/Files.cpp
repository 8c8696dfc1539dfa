#include "app/cli/Files.h"

#include <QFileInfo>

namespace loopwright {

Result<void> checkNotInput(const QString &out, const QString &in)
{
    if (out == standardStream || in == standardStream)
        return {};
    const QString read = QFileInfo(in).canonicalFilePath();
    if (!out.isEmpty() && !read.isEmpty() && read == QFileInfo(out).canonicalFilePath())
        return failure(ErrorCode::Usage, "is the file that is read", out);
    return {};
}

Result<void> checkNotStandardStream(const QString &path, const QString &what)
{
    if (path == standardStream)
        return failure(ErrorCode::Usage, what, path);
    return {};
}

} // namespace loopwright
