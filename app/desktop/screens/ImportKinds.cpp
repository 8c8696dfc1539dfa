#include "app/desktop/screens/ImportKinds.h"

#include "core/base/Json.h"
#include "core/base/TextForm.h"

#include <QFile>
#include <QFileInfo>

namespace loopwright {

namespace {

constexpr qint64 headBytes = 1'000'000;
constexpr std::size_t headRows = 5000;

constexpr ImportKind kinds[] = {
    {"orders", "order_number", &importOrders},
    {"offices", "test_lines", &importOffices},
    {"issuer", "trouble_hours", &importIssuer},
    {"installers", "installer", &importInstallers},
    {"instruments", "calibrated_on", &importInstruments},
};

QString plainName(const QString &name)
{
    return name.trimmed().toLower().replace(' ', '_').replace('-', '_');
}

} // namespace

const FileForm &ImportKind::form() const
{
    return *findFileForm(QString::fromLatin1(key));
}

std::span<const ImportKind> importKinds()
{
    return kinds;
}

QStringList ourColumns(const ImportKind &kind)
{
    const CsvLayout layout = kind.form().layout();
    QStringList columns = layout.required;
    for (const QString &name : layout.optional) {
        if (!name.contains('#')) {
            columns << name;
            continue;
        }
        for (int number = 1; number <= 8; ++number) {
            const QString column = QString(name).replace('#', QString::number(number));
            if (!columns.contains(column))
                columns << column;
        }
    }
    return columns;
}

QStringList wordsOf(const ImportKind &kind, const QString &column)
{
    return wordsOfColumn(QString::fromLatin1(kind.key), column);
}

QString ImportHead::digest() const
{
    return sha256Hex(csvRecord(header));
}

bool ImportHead::isOurs(const ImportKind &kind) const
{
    return checkCsvHeader(header, fileName, kind.form().layout()).has_value();
}

QStringList ImportHead::valuesOf(qsizetype column) const
{
    QStringList values;
    QSet<QString> seen;
    for (const QStringList &row : rows) {
        const QString value = row.value(column).trimmed();
        if (!seen.contains(value))
            values << value;
        seen.insert(value);
    }
    return values;
}

std::optional<ImportHead> importHeadOf(const QString &path)
{
    QFile file(path);
    if (!QFileInfo(file).isFile() || !file.open(QIODevice::ReadOnly))
        return std::nullopt;
    QByteArray bytes = file.read(headBytes);
    const bool isCut = bytes.size() == headBytes;
    if (isCut)
        bytes.truncate(bytes.lastIndexOf('\n') + 1); // not within a letter
    if (!checkUtf8(bytes, {}))
        return std::nullopt;
    CsvScanner scanner(bytes);
    const auto fields = [&scanner] {
        QStringList list;
        for (const std::string_view field : scanner.fields())
            list << textFromUtf8(field).trimmed();
        return list;
    };
    if (!scanner.next())
        return std::nullopt;
    ImportHead head{QFileInfo(path).fileName(), fields(), {}};
    while (head.rows.size() < headRows && scanner.next())
        head.rows.push_back(fields());
    if (isCut && !head.rows.empty())
        head.rows.pop_back(); // it may be cut off
    return head;
}

ColumnMap proposedMap(const ImportHead &head, const ImportKind &kind)
{
    ColumnMap map;
    QStringList free = ourColumns(kind);
    for (const QString &theirs : head.header) {
        const QString ours = plainName(theirs);
        if (free.removeOne(ours) && !map.columns.contains(theirs))
            map.columns.insert(theirs, ours);
        else if (!map.columns.contains(theirs) && !map.ignored.contains(theirs))
            map.ignored << theirs;
    }
    return map;
}

} // namespace loopwright
