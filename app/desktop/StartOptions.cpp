#include "app/desktop/StartOptions.h"

#include "app/actions/Records.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"

#include <QCommandLineParser>

namespace loopwright {

namespace {

void declare(QCommandLineParser &parser)
{
    parser.setApplicationDescription(
        QStringLiteral("Turn-up records and certificates for ISDN basic-rate and analog lines."));
    parser.addOptions({
        {"db",
         "Records to open; otherwise LOOPWRIGHT_DB, otherwise records.sqlite in the data "
         "directory.",
         "file"},
        {"by", "Who acts; otherwise the login name.", "name"},
        {"now", "Starts the clock at this time (ISO 8601 with offset), for late entry.", "time"},
        {"order", "Opens this job.", "number"},
        {"look", "light, dark or high_contrast.", "look"},
        {"language", "en or de; otherwise as last chosen, otherwise as the system says.", "code"},
        {"size", "Size of everything, 100 to 200 percent.", "percent"},
        {{"h", "help"}, "Shows this text."},
        {"version", "Shows the version."},
    });
}

} // namespace

Result<StartOptions> StartOptions::read(const QStringList &arguments)
{
    QCommandLineParser parser;
    declare(parser);
    if (!parser.parse(arguments))
        return failure(ErrorCode::Usage, parser.errorText());
    if (!parser.positionalArguments().isEmpty())
        return failure(
            ErrorCode::Usage,
            QStringLiteral("“%1” is no option.").arg(parser.positionalArguments().first()));
    StartOptions options;
    options.helpWanted = parser.isSet(QStringLiteral("help"));
    options.versionWanted = parser.isSet(QStringLiteral("version"));
    options.database = parser.value(QStringLiteral("db"));
    if (options.database.isEmpty())
        options.database = qEnvironmentVariable("LOOPWRIGHT_DB");
    if (options.database.isEmpty())
        options.database = defaultDatabasePath();
    options.by = parser.value(QStringLiteral("by"));
    options.order = parser.value(QStringLiteral("order"));
    options.look = parser.value(QStringLiteral("look"));
    if (!options.look.isEmpty() && !fromText<Look>(options.look))
        return failure(ErrorCode::Usage,
                       QStringLiteral("--look is one of %1.").arg(allWords<Look>().join(u", ")));
    options.language = parser.value(QStringLiteral("language"));
    if (!options.language.isEmpty() && !findLanguage(options.language))
        return failure(ErrorCode::Usage,
                       QStringLiteral("--language is en or de, not “%1”.").arg(options.language));
    if (const QString text = parser.value(QStringLiteral("now")); !text.isEmpty()) {
        options.now = Moment::parse(text);
        if (!options.now)
            return failure(
                ErrorCode::Usage,
                QStringLiteral("--now is a time like 2026-03-04T09:15:00+01:00, not “%1”.")
                    .arg(text));
    }
    if (const QString text = parser.value(QStringLiteral("size")); !text.isEmpty()) {
        options.size = text.toInt();
        if (options.size < 100 || options.size > 200)
            return failure(
                ErrorCode::Usage,
                QStringLiteral("--size is a number from 100 to 200, not “%1”.").arg(text));
    }
    return options;
}

QString StartOptions::help()
{
    QCommandLineParser parser;
    declare(parser);
    return parser.helpText();
}

} // namespace loopwright
