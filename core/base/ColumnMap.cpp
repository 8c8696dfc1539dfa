#include "core/base/ColumnMap.h"

namespace loopwright {

namespace {

QString shownName(const QString &name)
{
    return '"' + name.left(60) + '"';
}

/// The part of a map that a sentence is about.
QString placeIn(const QString &file, const QString &part, const QString &key = {})
{
    return file + ": " + part + (key.isNull() ? QString() : '.' + key.left(60));
}

Result<QJsonObject> objectAt(const QJsonObject &object, const QString &key, const QString &place)
{
    const QJsonValue value = object.value(key);
    if (!value.isObject() && !value.isUndefined())
        return failure(ErrorCode::BadInput, "is no object", place);
    return value.toObject();
}

Result<void> readColumns(ColumnMap &map, const QJsonObject &object)
{
    LOOPWRIGHT_ASSIGN(const auto columns,
                      objectAt(object, "columns", placeIn(map.name, "columns")));
    QMap<QString, QString> theirsOf;
    for (auto it = columns.begin(); it != columns.end(); ++it) {
        const QString theirs = it.key().trimmed(), ours = it.value().toString().trimmed();
        const QString place = placeIn(map.name, "columns", it.key());
        if (theirs.isEmpty() || ours.isEmpty())
            return failure(ErrorCode::BadInput,
                           "must lead from the name of a column to one of ours", place);
        if (map.columns.contains(theirs))
            return failure(ErrorCode::BadInput, "is mapped twice", place);
        if (theirsOf.contains(ours))
            return failure(ErrorCode::BadInput,
                           QString("leads to %1, and so does %2")
                               .arg(shownName(ours), shownName(theirsOf.value(ours))),
                           place);
        theirsOf.insert(ours, theirs);
        map.columns.insert(theirs, ours);
    }
    return {};
}

Result<void> readValues(ColumnMap &map, const QJsonObject &object)
{
    LOOPWRIGHT_ASSIGN(const auto columns, objectAt(object, "values", placeIn(map.name, "values")));
    for (auto it = columns.begin(); it != columns.end(); ++it) {
        const QString place = placeIn(map.name, "values", it.key());
        LOOPWRIGHT_ASSIGN(const auto words, objectAt(columns, it.key(), place));
        QMap<QString, QString> &values = map.values[it.key().trimmed()];
        for (auto word = words.begin(); word != words.end(); ++word) {
            if (!word.value().isString())
                return failure(ErrorCode::BadInput, "is no text",
                               place + '.' + word.key().left(60));
            if (values.contains(word.key().trimmed()))
                return failure(ErrorCode::BadInput, "is mapped twice",
                               place + '.' + word.key().left(60));
            values.insert(word.key().trimmed(), word.value().toString().trimmed());
        }
    }
    return {};
}

Result<void> readIgnored(ColumnMap &map, const QJsonObject &object)
{
    const QJsonValue value = object.value("ignore");
    if (!value.isArray() && !value.isUndefined())
        return failure(ErrorCode::BadInput, "is no list", placeIn(map.name, "ignore"));
    const QJsonArray list = value.toArray();
    for (qsizetype i = 0; i < list.size(); ++i) {
        const QString place = placeIn(map.name, QString("ignore[%1]").arg(i));
        const QString theirs = list[i].toString().trimmed();
        if (!list[i].isString())
            return failure(ErrorCode::BadInput, "is no text", place);
        if (map.columns.contains(theirs))
            return failure(ErrorCode::BadInput,
                           QString("column %1 is both mapped and ignored").arg(shownName(theirs)),
                           place);
        if (!map.ignored.contains(theirs))
            map.ignored << theirs;
    }
    return {};
}

} // namespace

Result<ColumnMap> ColumnMap::read(const QByteArray &json, const QString &fileName)
{
    constexpr qint64 longest = 1'000'000;
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(json, fileName, longest));
    return fromJson(object, fileName);
}

Result<ColumnMap> ColumnMap::fromJson(const QJsonObject &object, const QString &fileName)
{
    ColumnMap map;
    map.name = fileName;
    for (auto it = object.begin(); it != object.end(); ++it)
        if (it.key() != u"columns" && it.key() != u"values" && it.key() != u"ignore")
            return failure(ErrorCode::BadInput, "is not known: columns, values and ignore are",
                           placeIn(fileName, it.key().left(60)));
    LOOPWRIGHT_TRY(readColumns(map, object));
    LOOPWRIGHT_TRY(readValues(map, object));
    LOOPWRIGHT_TRY(readIgnored(map, object));
    return map;
}

QJsonObject ColumnMap::toJson() const
{
    QJsonObject led, words;
    for (auto it = columns.begin(); it != columns.end(); ++it)
        led.insert(it.key(), it.value());
    for (auto it = values.begin(); it != values.end(); ++it) {
        QJsonObject column;
        for (auto word = it->begin(); word != it->end(); ++word)
            column.insert(word.key(), word.value());
        words.insert(it.key(), column);
    }
    return {{"columns", led}, {"values", words}, {"ignore", QJsonArray::fromStringList(ignored)}};
}

Result<QStringList> ColumnMap::header(const QStringList &theirs, const QString &fileName,
                                      const QStringList &alsoIgnored) const
{
    for (auto it = columns.begin(); it != columns.end(); ++it)
        if (!theirs.contains(it.key()))
            return failure(ErrorCode::BadInput,
                           QString("%1 has no column %2").arg(fileName, shownName(it.key())),
                           placeIn(name, "columns", it.key()));
    QStringList header;
    QMap<QString, QString> theirsOf;
    for (const QString &column : theirs) {
        const auto led = columns.constFind(column);
        if (led == columns.constEnd() &&
            (ignored.contains(column) || alsoIgnored.contains(column))) {
            header << QString();
            continue;
        }
        const QString ours = led == columns.constEnd() ? column : *led;
        if (theirsOf.contains(ours))
            return failure(
                ErrorCode::BadInput,
                QString("columns %1 and %2 both stand for %3")
                    .arg(shownName(theirsOf.value(ours)), shownName(column), shownName(ours)),
                fileName + ": row 1");
        theirsOf.insert(ours, column);
        header << ours;
    }
    return header;
}

QString ColumnMap::value(const QString &ours, const QString &theirs) const
{
    const auto column = values.constFind(ours);
    return column == values.constEnd() ? theirs : column->value(theirs, theirs);
}

} // namespace loopwright
