#include "app/desktop/Names.h"

#include "core/acceptance/JobLine.h"

#include <QCoreApplication>
#include <QLocale>

namespace loopwright {

namespace {

struct OutcomeRow
{
    const char *key;
    const char *name;
    Status sign;
};
constexpr OutcomeRow outcomeRows[] = {
    {"accepted", QT_TRANSLATE_NOOP("Names", "Accepted"), Status::Done},
    {"accepted_with_exception", QT_TRANSLATE_NOOP("Names", "Accepted with exception"),
     Status::Done},
    {"not_accepted", QT_TRANSLATE_NOOP("Names", "Not accepted"), Status::Failed},
    {"incomplete", QT_TRANSLATE_NOOP("Names", "Incomplete"), Status::Open},
};

const OutcomeRow *outcomeRow(const QString &key)
{
    for (const OutcomeRow &row : outcomeRows)
        if (key == QLatin1StringView(row.key))
            return &row;
    return nullptr;
}

/// "error_test" to "Error test".
/// "dn_twice" as "DN twice".
QString spelled(const QString &code)
{
    QStringList words = code.split(u'_');
    for (QString &word : words)
        if (word == u"dn" || word == u"spid" || word == u"tei")
            word = word.toUpper();
    QString text = words.join(u' ');
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

} // namespace

QString stageName(const QString &stage)
{
    if (const auto station = fromText<Station>(stage))
        return stationName(*station);
    return spelled(stage);
}

QStringList stageKeys()
{
    return {
        QStringLiteral("identifiers"), QStringLiteral("loop"),        QStringLiteral("safety"),
        QStringLiteral("turnup"),      QStringLiteral("calls"),       QStringLiteral("error_test"),
        QStringLiteral("acceptance"),  QStringLiteral("certificate"), QStringLiteral("done")};
}

QString outcomeName(const QString &outcome)
{
    const OutcomeRow *row = outcomeRow(outcome);
    return row ? QCoreApplication::translate("Names", row->name) : spelled(outcome);
}

Status outcomeSign(const QString &outcome)
{
    const OutcomeRow *row = outcomeRow(outcome);
    return row ? row->sign : Status::None;
}

QString kindName(LineKind kind)
{
    return kind == LineKind::Bri ? QCoreApplication::translate("Names", "basic rate")
                                 : QCoreApplication::translate("Names", "analog");
}

QString eventName(const QString &kind)
{
    return spelled(kind);
}

QString dayText(QDate day, QDate today)
{
    if (!day.isValid())
        return {};
    const bool near = today.isValid() && day.year() == today.year();
    return QLocale().toString(day, near ? QStringLiteral("d MMM") : QStringLiteral("d MMM yyyy"));
}

QString dueWords(QDate due, QDate today, bool finished)
{
    if (!due.isValid() || finished)
        return {};
    const qint64 days = today.daysTo(due);
    if (days == 0)
        return QCoreApplication::translate("Names", "today");
    if (days == 1)
        return QCoreApplication::translate("Names", "tomorrow");
    if (days == -1)
        return QCoreApplication::translate("Names", "1 day late");
    if (days < 0)
        return QCoreApplication::translate("Names", "%1 days late").arg(-days);
    return {};
}

} // namespace loopwright
