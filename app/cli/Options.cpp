#include "app/cli/Options.h"

#include "app/cli/Layout.h"
#include "core/base/Result.h"

#include <QDateTime>
#include <QTimeZone>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <limits>

namespace loopwright {

namespace {

constexpr int helpAt = 30; ///< where CLI11 puts the help of an option

/// The help with what may be given, in lines that fit beside the name.
std::string helpText(const char *help, const QString &values = {})
{
    const QString text =
        QString::fromUtf8(help) + (values.isEmpty() ? QString() : QString(" [" + values + "]"));
    return wrapped(text, 0, std::max(textWidth() - helpAt, 20)).toStdString();
}

template<class Number>
QString rangeText(Number min, Number max)
{
    // The greatest ones say no more than that the number must fit.
    const bool noEnd = double(max) >= double(std::numeric_limits<int>::max());
    return noEnd ? QString("%1 or more").arg(min) : QString("%1 to %2").arg(min).arg(max);
}

/// Binds a name to a reader that answers with what is wrong, or with an empty text. `type` stands
/// for the value behind the name of an option.
CLI::Option *bindOption(CLI::App &app, const char *name, const std::string &help, const char *type,
                        Given given, std::function<QString(const QString &)> read)
{
    CLI::Option *option = app.add_option_function<std::string>(
        name,
        [name, read = std::move(read)](const std::string &value) {
            if (const QString wrong = read(QString::fromStdString(value)); !wrong.isEmpty())
                throw CLI::ValidationError(name, wrong.toStdString());
        },
        help);
    option->required(given == Given::Always);
    option->type_name(option->get_positional() ? "" : type);
    return option;
}

/// Assigns a number within the range to `target`.
template<class Target>
auto numberReader(Target &target, double min, double max)
{
    return [&target, min, max](const QString &value) {
        bool read = false;
        const double found = value.toDouble(&read);
        if (!read || !std::isfinite(found) || found < min || found > max)
            return QString("must be a number from %1 to %2, not \"%3\"")
                .arg(min)
                .arg(max)
                .arg(value);
        target = found;
        return QString();
    };
}

} // namespace

void Options::text(const char *name, QString &target, const char *help, Given given)
{
    bindOption(m_app, name, helpText(help), "TEXT", given, [&target, given](const QString &value) {
        target = value;
        // The next option was meant, and the value forgotten.
        if (value.startsWith(u"--"))
            return QString("needs a value");
        return given != Given::IfWanted && value.trimmed().isEmpty() ? QString("must not be empty")
                                                                     : QString();
    });
    m_declared.push_back({name, help, "value", {}, given == Given::Always, false});
}

void Options::texts(const char *name, QStringList &target, const char *help, Given given,
                    Separation separation)
{
    CLI::Option *option = m_app.add_option_function<std::vector<std::string>>(
        name,
        [&target](const std::vector<std::string> &values) {
            for (const std::string &value : values)
                target << QString::fromStdString(value);
        },
        helpText(help));
    option->required(given == Given::Always);
    option->type_name(option->get_positional() ? "" : "TEXT");
    if (separation == Separation::Comma)
        option->delimiter(',');
    m_declared.push_back({name, help, "value", {}, given == Given::Always, true});
}

void Options::flag(const char *name, bool &target, const char *help)
{
    m_app.add_flag_function(
        name, [&target](std::int64_t) { target = true; }, helpText(help));
    m_declared.push_back({name, help, {}, {}, false, false});
}

void Options::integer(const char *name, qint64 &target, qint64 min, qint64 max, const char *help,
                      Given given)
{
    bindOption(m_app, name, helpText(help, rangeText(min, max)), "N", given,
               [&target, min, max](const QString &value) {
                   bool whole = false;
                   const qint64 read = value.toLongLong(&whole);
                   if (!whole || read < min || read > max)
                       return QString("must be a whole number from %1 to %2, not \"%3\"")
                           .arg(min)
                           .arg(max)
                           .arg(value);
                   target = read;
                   return QString();
               });
    m_declared.push_back({name, help, "number", {}, given == Given::Always, false});
}

void Options::number(const char *name, double &target, double min, double max, const char *help,
                     Given given)
{
    bindOption(m_app, name, helpText(help, rangeText(min, max)), "N", given,
               numberReader(target, min, max));
    m_declared.push_back({name, help, "number", {}, given == Given::Always, false});
}

void Options::number(const char *name, std::optional<double> &target, double min, double max,
                     const char *help)
{
    bindOption(m_app, name, helpText(help, rangeText(min, max)), "N", Given::IfWanted,
               numberReader(target, min, max));
    m_declared.push_back({name, help, "number", {}, false, false});
}

void Options::word(const char *name, QString &target, const QStringList &words, const char *help,
                   Given given)
{
    bindOption(
        m_app, name, helpText(help, words.join(u", ")), "WORD", given,
        [&target, words](const QString &value) {
            target = value;
            return words.contains(value)
                       ? QString()
                       : QString("must be one of %1, not \"%2\"").arg(words.join(u", "), value);
        });
    m_declared.push_back({name, help, "word", words, given == Given::Always, false});
}

void Options::date(const char *name, QDate &target, const char *help)
{
    bindOption(m_app, name, helpText(help, "YYYY-MM-DD"), "DAY", Given::IfWanted,
               [&target](const QString &value) {
                   target = QDate::fromString(value, Qt::ISODate);
                   return target.isValid() && value.size() == 10
                              ? QString()
                              : QString("must be a date like 2026-03-04, not \"%1\"").arg(value);
               });
    m_declared.push_back({name, help, "date", {}, false, false});
}

void Options::moment(const char *name, std::optional<Moment> &target, const char *help)
{
    bindOption(
        m_app, name, helpText(help, "ISO 8601, like 2026-03-04T09:15:00+01:00 or 2026-03-04"),
        "TIME", Given::IfWanted, [&target](const QString &value) {
            target = momentFromCommandLine(value);
            return target ? QString()
                          : QString("must be a time in ISO 8601 like 2026-03-04T09:15:00+01:00, "
                                    "not \"%1\"")
                                .arg(value);
        });
    m_declared.push_back({name, help, "time", {}, false, false});
}

std::optional<Moment> momentFromCommandLine(const QString &text)
{
    if (const auto complete = Moment::parse(text))
        return complete;
    const bool dayAlone = text.size() == 10;
    const QDateTime local =
        QDateTime::fromString(dayAlone ? text + u"T00:00:00" : text, Qt::ISODateWithMs);
    if (!local.isValid() || local.timeSpec() != Qt::LocalTime)
        return std::nullopt;
    return Moment::parse(local.toOffsetFromUtc(local.offsetFromUtc()).toString(Qt::ISODateWithMs));
}

} // namespace loopwright
