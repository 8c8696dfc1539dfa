#include "app/desktop/job/TestSetup.h"

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

/// One that several terminals share is one number, and cannot call itself.
std::vector<KeyedOption> numbers(const ServiceOrder &order)
{
    const NumberKey key(order);
    std::vector<KeyedOption> options;
    QStringList known;
    for (const OrderedTerminal &terminal : order.terminals)
        if (!terminal.dn.isEmpty() && !known.contains(key(terminal.dn))) {
            known << key(terminal.dn);
            options.push_back({QChar(u'0' + terminal.number), terminal.dn, key.shown(terminal.dn)});
        }
    return options;
}

Path pathOf(const ServiceOrder &order, const QJsonObject &answers)
{
    const Path usual = mayCallItself(order) ? Path::SelfCall : Path::TestLine;
    return fromText<Path>(answers.value("path").toString()).value_or(usual);
}

auto whenPath(std::initializer_list<Path> paths, Path usual)
{
    return [paths = std::vector<Path>(paths), usual](const QJsonObject &typed) {
        const Path path = fromText<Path>(typed.value("path").toString()).value_or(usual);
        return std::find(paths.begin(), paths.end(), path) != paths.end();
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

std::vector<FieldSpec> setupAsks(const ServiceOrder &order, const LimitSet &limits)
{
    const Path usual = mayCallItself(order) ? Path::SelfCall : Path::TestLine;
    const auto selfCall = whenPath({Path::SelfCall}, usual);
    const auto aCall = whenPath({Path::SelfCall, Path::TestLine, Path::FarEnd}, usual);
    const auto failed = [aCall](const QJsonObject &typed) {
        return aCall(typed) && typed.value("call").toString() == u"failed";
    };
    std::vector<KeyedOption> channels;
    for (const Channel channel : dataChannels(order))
        channels.push_back({toText(channel)[1], toText(channel), toText(channel)});
    const auto choice = [](const char *key, const QString &label, std::vector<KeyedOption> options,
                           int span) {
        return FieldSpec{key, label, {}, Answer::Choice, std::move(options), span};
    };
    std::vector<FieldSpec> asks = {
        choice("path", tr("Path of the test signal"), paths(order), 0),
        choice("channel", tr("Channel of the call"), channels, 1),
        choice("call", tr("Did the call come up?"),
               {{u'O', "ok", tr("OK")}, {u'F', "failed", tr("Failed")}}, 1),
        {"cause", tr("Cause"), tr("Q.850, 1 to 127; may be empty"), Answer::Whole, {}, 1, failed},
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
         tr("min; at least %1").arg(limits.value("run_seconds_min") / 60), Answer::Number}};
    asks[2].asked = aCall;
    asks[2].confirming = "ok";
    asks[4].asked = asks[5].asked = selfCall;
    asks[6].asked = whenPath({Path::TestLine}, usual);
    asks[6].hint = tr("only where it calls back");
    return asks;
}

QJsonObject setupDefaults(const ServiceOrder &order, const LimitSet &limits)
{
    const QList<Channel> data = dataChannels(order);
    const std::vector<KeyedOption> own = numbers(order);
    QJsonObject typed{{"path", toText(mayCallItself(order) ? Path::SelfCall : Path::TestLine)},
                      {"interface", toText(LineInterface::U)},
                      {"pattern", toText(PatternKey::Prbs11)},
                      {"rate", QString::number(order.dataRate)},
                      {"minutes", QString::number(limits.value("run_seconds_min") / 60)}};
    if (!data.isEmpty())
        typed.insert("channel", toText(data.front()));
    if (mayCallItself(order)) {
        typed.insert("from_dn", own[0].code);
        typed.insert("to_dn", own[1].code);
    }
    return typed;
}

QJsonObject pathAndChannels(const ServiceOrder &order, const QJsonObject &answers)
{
    const QList<Channel> data = dataChannels(order);
    const QString first =
        answers.value("channel").toString(data.isEmpty() ? QString() : toText(data.front()));
    const Path path = pathOf(order, answers);
    QJsonArray channels{first};
    for (const Channel other : data)
        if (path == Path::SelfCall && toText(other) != first)
            channels << toText(other);
    return {{"path", toText(path)}, {"channels", channels}};
}

QJsonObject runHead(const ServiceOrder &order, const QJsonObject &answers)
{
    QJsonObject head = pathAndChannels(order, answers);
    const std::vector<KeyedOption> own = numbers(order);
    if (pathOf(order, answers) == Path::SelfCall) {
        const QString from = answers.value("from_dn").toString(own[0].code);
        const QString usual = from == own[0].code ? own[1].code : own[0].code;
        head.insert("from_dn", from);
        head.insert("to_dn", answers.value("to_dn").toString(usual));
    } else if (answers.contains("back_dn")) {
        head.insert("to_dn", answers.value("back_dn"));
    }
    head.insert("interface", answers.value("interface").toString(toText(LineInterface::U)));
    head.insert("pattern", answers.value("pattern").toString(toText(PatternKey::Prbs11)));
    head.insert("rate", rateOf(order, answers));
    return head;
}

FactObjects setupCalls(const ServiceOrder &order, const QJsonObject &answers)
{
    if (!answers.contains("call") || pathOf(order, answers) == Path::NtLoop)
        return {};
    const QJsonObject head = runHead(order, answers);
    const QJsonArray channels = head.value("channels").toArray();
    const std::vector<KeyedOption> own = numbers(order);
    QJsonObject out{{"kind", "call"},
                    {"channel", channels[0]},
                    {"direction", "out"},
                    {"service", "data"},
                    {"outcome", answers.value("call")}};
    const QString from = head.value("from_dn").toString(own.empty() ? QString() : own[0].code);
    if (!from.isEmpty())
        out.insert("dn", from);
    if (answers.contains("cause"))
        out.insert("cause", answers.value("cause"));
    FactObjects calls{out};
    if (answers.value("call").toString() == u"ok" && head.contains("to_dn"))
        calls.push_back({{"kind", "call"},
                         {"channel", channels.last()},
                         {"direction", "in"},
                         {"service", "data"},
                         {"outcome", "ok"},
                         {"dn", head.value("to_dn")}});
    return calls;
}

qint64 rateOf(const ServiceOrder &order, const QJsonObject &answers)
{
    const qint64 chosen = answers.value("rate").toString().toLongLong();
    return chosen > 0 ? chosen : order.dataRate;
}

qint64 plannedSeconds(const QJsonObject &answers, const LimitSet &limits)
{
    const double minutes = answers.value("minutes").toDouble();
    return minutes > 0 ? qint64(std::ceil(minutes * 60))
                       : qint64(std::ceil(limits.value("run_seconds_min")));
}

} // namespace loopwright
