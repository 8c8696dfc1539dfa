#pragma once
// How a table with columns of somebody else's is read as one of ours:
// {"columns":{theirs:ours},"values":{ours:{theirs:ours}},"ignore":[theirs]}. A column that it does
// not name keeps its name, a value that it does not name stays as it is.

#include "core/base/Json.h"

#include <QMap>
#include <QStringList>

namespace loopwright {

struct CsvLayout;

struct ColumnMap
{
    QString name;                                 ///< of its file, for messages
    QMap<QString, QString> columns;               ///< theirs to ours
    QMap<QString, QMap<QString, QString>> values; ///< of a column of ours: theirs to ours
    QStringList ignored;                          ///< theirs

    bool operator==(const ColumnMap &) const = default;

    /// BadInput with the place if it is malformed, two columns stand for one of ours, or one is
    /// mapped and ignored.
    static Result<ColumnMap> read(const QByteArray &json, const QString &fileName);
    static Result<ColumnMap> fromJson(const QJsonObject &object, const QString &fileName);
    QJsonObject toJson() const;

    /// BadInput with the place if it leads to a column that the layout does not have.
    Result<void> check(const CsvLayout &layout) const;
    /// The header of a file in our names; empty where the column is ignored, by the map or by
    /// `alsoIgnored`. BadInput if a column of the map is not there, or two stand for one of ours.
    Result<QStringList> header(const QStringList &theirs, const QString &fileName,
                               const QStringList &alsoIgnored = {}) const;
    /// The value that stands in a column of ours.
    QString value(const QString &ours, const QString &theirs) const;
};

} // namespace loopwright
