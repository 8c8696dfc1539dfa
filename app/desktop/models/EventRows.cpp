#include "app/desktop/models/EventRows.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "core/base/Json.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QMap>

namespace loopwright {

namespace {

constexpr qsizetype longestDetail = 400;

/// "safety, layer ×6, call": each word once, in the order in which they come.
QString countedWords(const QJsonArray &list)
{
    QStringList words;
    QMap<QString, int> counts;
    for (const QJsonValue &value : list) {
        if (!counts.contains(value.toString()))
            words << value.toString();
        ++counts[value.toString()];
    }
    for (QString &word : words) {
        const int count = counts.value(word);
        word = localizedWord(word) + (count > 1 ? QStringLiteral(" ×%1").arg(count) : QString());
    }
    return words.join(QStringLiteral(", "));
}

QString valueText(const QJsonValue &value)
{
    if (value.isString())
        return value.toString();
    if (value.isBool())
        return value.toBool() ? localizedWord(QStringLiteral("yes")) // what is not so goes unsaid
                              : QString();
    if (const QJsonArray list = value.toArray(); !list.isEmpty() && list.first().isString()) {
        return countedWords(list);
    }
    if (value.isArray() || value.isObject() || value.isNull())
        return QString::fromUtf8(canonicalJson(value));
    return localizedFigure(value.toVariant().toString());
}

} // namespace

QStringList eventHeader()
{
    const auto tr = [](const char *text) { return QCoreApplication::translate("Events", text); };
    return {tr("When"), tr("What"), tr("Order"), tr("By"), tr("More")};
}

std::vector<double> eventColumnEms()
{
    return {12, 12, 8, 8, 30};
}

QString eventDetail(const QJsonObject &detail)
{
    QStringList parts;
    for (auto it = detail.constBegin(); it != detail.constEnd(); ++it) {
        if (it.key() == u"seals")
            continue;
        if (const QString value = valueText(it.value()); !value.isEmpty())
            parts << localizedWord(it.key()) + ": " + value;
    }
    const QString text = parts.join(QStringLiteral(", "));
    return text.size() > longestDetail ? text.first(longestDetail) + "…" : text;
}

QString momentText(const Moment &moment)
{
    return dayText(moment.localDate()) + u' ' + moment.localClock();
}

std::vector<TextRow> eventRows(const std::vector<Event> &events, const QList<Person> &people)
{
    std::vector<TextRow> rows;
    for (auto event = events.rbegin(); event != events.rend(); ++event)
        rows.push_back({{momentText(event->at), eventName(event->kind), event->order,
                         nameOf(people, event->by), eventDetail(event->detail)},
                        Status::None,
                        event->order,
                        false});
    return rows;
}

} // namespace loopwright
