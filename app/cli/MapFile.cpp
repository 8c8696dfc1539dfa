#include "app/cli/MapFile.h"

#include "app/cli/Files.h"

namespace loopwright {

Result<std::optional<ColumnMap>> readMapFile(const QString &path, const QString &file)
{
    if (path.isEmpty())
        return std::optional<ColumnMap>();
    if (path == standardStream && file == standardStream)
        return failure(ErrorCode::Usage, "standard input is the file to read already", "--map");
    LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path));
    LOOPWRIGHT_ASSIGN(auto map, ColumnMap::read(bytes, fileNameOf(path)));
    return std::optional(std::move(map));
}

} // namespace loopwright
