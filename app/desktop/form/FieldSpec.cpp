#include "app/desktop/form/FieldSpec.h"

#include "app/desktop/Language.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

QJsonValue numberOf(const QString &typed, bool whole)
{
    bool ok = false;
    if (const qint64 count = typed.toLongLong(&ok); ok)
        return count;
    const auto number = typedNumber(typed, decimalMark());
    return number && !(whole && typed.contains(u',')) ? QJsonValue(*number) : QJsonValue(typed);
}

/// Offset of the writer as it ends a time in ISO 8601.
QString zoneOf(const Moment &now)
{
    static const QRegularExpression sign(QStringLiteral("[-+Z]"));
    return now.text().mid(now.text().lastIndexOf(sign));
}

} // namespace

QString clockText(const QString &typed, const Moment &now)
{
    static const QRegularExpression form(
        QStringLiteral("^(?|([01]?\\d|2[0-3]):([0-5]\\d)(?::([0-5]\\d))?|([01]\\d|2[0-3])([0-5]\\d)"
                       "([0-5]\\d)?)$"));
    const auto match = form.match(typed);
    if (!match.hasMatch())
        return typed;
    const auto on = [&](QDate day) {
        return QString("%1T%2:%3:%4%5")
            .arg(day.toString(Qt::ISODate), match.captured(1).rightJustified(2, u'0'),
                 match.captured(2), match.captured(3).rightJustified(2, u'0'), zoneOf(now));
    };
    const QString today = on(now.localDate());
    const auto moment = Moment::parse(today);
    if (moment && now.secondsUntil(*moment) > 12 * 3600)
        return on(now.localDate().addDays(-1));
    return today;
}

QString dateText(const QString &typed)
{
    const QDate day = QDate::fromString(typed, QStringLiteral("yyyyMMdd"));
    return day.isValid() ? day.toString(Qt::ISODate) : typed;
}

QJsonValue valueOf(const FieldSpec &spec, const QString &typed, const Moment &now)
{
    if (typed.isEmpty())
        return QJsonValue::Undefined;
    switch (spec.answer) {
    case Answer::Number:
        return numberOf(typed, false);
    case Answer::Whole:
        return numberOf(typed, true);
    case Answer::YesNo:
        return typed == u"true";
    case Answer::Clock:
        return clockText(typed, now);
    case Answer::Date:
        return dateText(typed);
    default:
        return typed;
    }
}

bool isBegun(Answer answer, const QString &typed)
{
    static const QRegularExpression number(QStringLiteral("^[-+]?[.,]?$"));
    static const QRegularExpression clock(QStringLiteral(
        "^(?:[0-2]|[01]\\d|2[0-3]|[01]\\d[0-5]|2[0-3][0-5]|(?:[01]\\d|2[0-3])[0-5]\\d[0-5]|"
        "(?:[01]?\\d|2[0-3]):(?:[0-5]?|[0-5]\\d:[0-5]?)|[3-9])$"));
    static const QRegularExpression date(
        QStringLiteral("^(?:\\d{1,7}|\\d{4}-|\\d{4}-\\d{1,2}|\\d{4}-\\d\\d-\\d?)$"));
    switch (answer) {
    case Answer::Number:
    case Answer::Whole:
        return number.match(typed).hasMatch();
    case Answer::Clock:
        return clock.match(typed).hasMatch();
    case Answer::Date:
        return date.match(typed).hasMatch();
    default:
        return false;
    }
}

} // namespace loopwright
