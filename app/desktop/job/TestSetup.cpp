#include "app/desktop/job/TestSetup.h"

#include "app/desktop/Language.h"
#include "app/desktop/form/TypedNumber.h"
#include "core/acceptance/Need.h"
#include "core/errortest/Path.h"
#include "core/errortest/Pattern.h"
#include "core/order/OrderIdentifiers.h"
#include "core/turnup/LayerFact.h"

#include <QCoreApplication>
#include <QJsonArray>

#include <cmath>

namespace loopwright {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("TestSetup", text);
}

std::vector<KeyedOption> numbers(const ServiceOrder &order)
{
    const NumberKey key(order);
    std::vector<KeyedOption> options;
    for (const QString &number : ownNumbers(order))
        options.push_back({QChar(u'1' + int(options.size())), number, key.shown(number)});
    return options;
}

auto whenPath(std::initializer_list<Path> paths)
{
    return [paths = std::vector<Path>(paths)](const QJsonObject &typed) {
        const auto path = fromText<Path>(typed.value("path").toString());
        return path && std::find(paths.begin(), paths.end(), *path) != paths.end();
    };
}

std::vector<KeyedOption> paths(const ServiceOrder &order)
{
    std::vector<KeyedOption> options;
    if (mayCallItself(order))
        options.push_back({u'S', toText(Path::SelfCall), tr("Self-call")});
    options.push_back({u'T', toText(Path::TestLine), tr("Test line")});
    options.push_back({u'F', toText(Path::FarEnd), tr("Far end")});
    options.push_back({u'N', toText(Path::NtLoop), tr("Loopback at the NT")});
    return options;
}

std::vector<KeyedOption> patternOptions()
{
    std::vector<KeyedOption> options;
    for (const Pattern &pattern : patterns())
        options.push_back({QChar(u'1' + int(options.size())), toText(pattern.key),
                           QString::fromUtf8(pattern.name)});
    return options;
}

} // namespace

QString whyNoSelfCall(const ServiceOrder &order)
{
    return mayCallItself(order)
               ? QString()
               : tr("A self-call needs two channels that carry data and two numbers that may call "
                    "each other; this order has not both, so the test line or the far end is the "
                    "path.");
}

std::vector<FieldSpec> setupSpecs(const ServiceOrder &order, const LimitSet &limits)
{
    std::vector<KeyedOption> channels;
    for (const Channel channel : dataChannels(order))
        channels.push_back({toText(channel)[1], toText(channel), toText(channel)});
    const auto choice = [](const char *key, const QString &label, std::vector<KeyedOption> options,
                           int span) {
        return FieldSpec{key, label, {}, Answer::Choice, std::move(options), span};
    };
    std::vector<FieldSpec> specs = {
        choice("path", tr("Path of the test signal"), paths(order), 0),
        choice("channel", tr("Channel"), channels, 1),
        choice("from_dn", tr("From number"), numbers(order), 2),
        choice("to_dn", tr("To number"), numbers(order), 2),
        choice("back_dn", tr("Number that the loopback calls back"), numbers(order), 2),
        choice("interface", tr("Test set at"),
               {{u'U', toText(LineInterface::U), tr("U")},
                {u'S', toText(LineInterface::St), tr("S/T")}},
               1),
        choice("rate", tr("Rate, bit/s"), {{u'6', "64000", "64000"}, {u'5', "56000", "56000"}}, 2),
        choice("pattern", tr("Pattern"), patternOptions(), 0),
        {"minutes", tr("Length of the run"),
         tr("min; at least %1").arg(localizedFigure(limits.value("run_seconds_min") / 60)),
         Answer::Number}};
    specs[1].asked = whenPath({Path::TestLine, Path::FarEnd, Path::NtLoop});
    specs[2].asked = specs[3].asked = whenPath({Path::SelfCall});
    specs[4].asked = whenPath({Path::TestLine});
    specs[4].hint = tr("only where it calls back");
    return specs;
}

QJsonObject setupDefaults(const QJsonObject &preset, const LimitSet &limits)
{
    QJsonObject typed{{"minutes", numberAsTyped(limits.value("run_seconds_min") / 60)},
                      {"channel", preset.value("channels").toArray().at(0)}};
    for (const char *key : {"path", "from_dn", "to_dn", "interface", "pattern", "rate"})
        if (const QJsonValue value = preset.value(QLatin1StringView(key)); !value.isUndefined())
            typed.insert(key, value.toVariant().toString());
    return typed;
}

QJsonObject runHead(const QJsonObject &preset, const QJsonObject &answers)
{
    QJsonObject head = preset;
    for (const char *key : {"interface", "pattern"})
        if (answers.contains(QLatin1StringView(key)))
            head.insert(key, answers.value(QLatin1StringView(key)));
    if (const qint64 rate = answers.value("rate").toString().toLongLong(); rate > 0)
        head.insert("rate", rate);
    for (const char *key : {"from_dn", "to_dn"}) // asked for a self-call alone
        if (answers.contains(QLatin1StringView(key)))
            head.insert(key, answers.value(QLatin1StringView(key)));
    if (answers.contains("back_dn"))
        head.insert("to_dn", answers.value("back_dn"));
    return head;
}

qint64 rateOf(const ServiceOrder &order, const QJsonObject &answers)
{
    const qint64 chosen = answers.value("rate").toString().toLongLong();
    return chosen > 0 ? chosen : order.dataRate;
}

Findings findingsOf(const QJsonObject &answers)
{
    if (!answers.value("minutes").isString())
        return {};
    return {{Severity::Error, "entry", Text::message("must be a number"), {}, "minutes", 0}};
}

qint64 plannedSeconds(const QJsonObject &answers, const LimitSet &limits)
{
    const double minutes = answers.value("minutes").toDouble();
    return minutes > 0 ? qint64(std::ceil(minutes * 60))
                       : qint64(std::ceil(limits.value("run_seconds_min")));
}

} // namespace loopwright
