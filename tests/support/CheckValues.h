#pragma once
// Rows of a CSV of check values under tests/data, by column name.

#include "core/base/Csv.h"

#include <QFile>
#include <QMap>

#include <vector>

namespace loopwright {

using CheckRow = QMap<QString, QString>;

/// Empty if the file cannot be read: a test checks the number of rows.
inline std::vector<CheckRow> checkValues(const QString &name)
{
    QFile file(QString(LOOPWRIGHT_SOURCE_DIR "/tests/data/%1").arg(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray bytes = file.readAll();
    CsvScanner scanner(bytes);
    if (!scanner.next())
        return {};
    QStringList header;
    for (const std::string_view field : scanner.fields())
        header << QString::fromUtf8(field.data(), qsizetype(field.size()));
    std::vector<CheckRow> rows;
    while (scanner.next()) {
        CheckRow row;
        for (qsizetype i = 0; i < header.size() && std::size_t(i) < scanner.fields().size(); ++i)
            row.insert(header[i], QString::fromUtf8(scanner.fields()[i].data(),
                                                    qsizetype(scanner.fields()[i].size())));
        rows.push_back(row);
    }
    return rows;
}

} // namespace loopwright
