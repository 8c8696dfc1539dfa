#include "app/desktop/StartOptions.h"

#include "app/actions/HelpPages.h"
#include "app/actions/InFile.h"
#include "app/actions/ManualPage.h"
#include "app/actions/Records.h"
#include "app/desktop/Files.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"

#include <QCommandLineParser>
#include <QFileInfo>

#include <utility>

namespace loopwright {

namespace {

constexpr const char *purpose =
    "Turn-up records and certificates for ISDN basic-rate and analog lines";
constexpr const char *fileHelp =
    "Records to open, a certificate to check (.pdf, .txt), a file to import (.csv), or a bundle of "
    "the office or a van to take in (.json).";

/// "en or de"
QString languageCodes()
{
    QStringList codes;
    for (const Language &each : languages())
        codes << QString::fromLatin1(each.code);
    return codes.join(QStringLiteral(" or "));
}

QList<QCommandLineOption> declared()
{
    return {
        {"db",
         "Records to open, a file or postgresql://…; otherwise LOOPWRIGHT_DB, otherwise those that "
         "the settings name, otherwise records.sqlite in the data directory.",
         "records"},
        {"by", "Who acts; otherwise the login name.", "name"},
        {"now", "Starts the clock at this time (ISO 8601 with offset), for late entry.", "time"},
        {"order", "Opens this job.", "number"},
        {"look", "system, light, dark or high_contrast.", "look"},
        {"language", languageCodes() + "; otherwise as last chosen, otherwise as the system says.",
         "code"},
        {"size", "Size of everything, 100 to 200 percent.", "percent"},
        {{"h", "help"}, "Shows this text."},
        {"version", "Shows the version."},
        {"manual", "Writes the manual page."},
    };
}

void declare(QCommandLineParser &parser)
{
    parser.setApplicationDescription(QString(purpose) + u'.');
    parser.addPositionalArgument("file", fileHelp, "[file]");
    parser.addOptions(declared());
}

/// How every SQLite database begins.
const QByteArray databaseMark("SQLite format 3", 16);

/// Its first octets, as many as tell what it is.
Result<QByteArray> headOf(const QString &path)
{
    QFile file(path);
    if (!QFileInfo::exists(path))
        return failure(ErrorCode::Usage, QStringLiteral("“%1” is no file.").arg(path));
    LOOPWRIGHT_TRY(openInput(file, path));
    return file.read(databaseMark.size());
}

/// By what it begins with, and by its name, where nothing else tells a text from a table.
Result<void> takeFile(StartOptions &options, const QString &path)
{
    LOOPWRIGHT_ASSIGN(const QByteArray head, headOf(path));
    const auto isNamed = [&path](const char *end) {
        return path.endsWith(QLatin1StringView(end), Qt::CaseInsensitive);
    };
    options.file = QFileInfo(path).absoluteFilePath();
    if (head == databaseMark)
        options.database = std::exchange(options.file, {});
    else if (beginsBundle(head))
        options.screen.clear();
    else if (head.startsWith("%PDF-") || isNamed(".txt"))
        options.screen = QStringLiteral("certificate");
    else if (isNamed(".csv"))
        options.screen = QStringLiteral("import");
    else
        return failure(
            ErrorCode::Usage,
            QStringLiteral("“%1” is neither records, nor a bundle, nor a certificate, nor "
                           "a CSV file; a job record goes in with loopwright-cli record.")
                .arg(path));
    return {};
}

} // namespace

void StartOptions::chooseRecords(const QSettings &settings)
{
    if (database.isEmpty())
        database = settings.value(recordsKey).toString();
    if (database.isEmpty())
        database = defaultDatabasePath();
}

Result<StartOptions> StartOptions::read(const QStringList &arguments)
{
    QCommandLineParser parser;
    declare(parser);
    if (!parser.parse(arguments))
        return failure(ErrorCode::Usage, parser.errorText());
    const QStringList files = parser.positionalArguments();
    if (files.size() > 1)
        return failure(ErrorCode::Usage,
                       QStringLiteral("“%1” is one file too many.").arg(files[1]));
    StartOptions options;
    options.helpWanted = parser.isSet(QStringLiteral("help"));
    options.versionWanted = parser.isSet(QStringLiteral("version"));
    options.manualWanted = parser.isSet(QStringLiteral("manual"));
    options.database = parser.value(QStringLiteral("db"));
    if (!files.isEmpty())
        LOOPWRIGHT_TRY(takeFile(options, files.first()));
    if (parser.isSet(QStringLiteral("db")) &&
        parser.value(QStringLiteral("db")) != options.database)
        return failure(ErrorCode::Usage,
                       QStringLiteral("--db names other records than “%1”.").arg(files.first()));
    if (options.database.isEmpty())
        options.database = qEnvironmentVariable("LOOPWRIGHT_DB");
    options.by = parser.value(QStringLiteral("by"));
    options.order = parser.value(QStringLiteral("order"));
    options.look = parser.value(QStringLiteral("look"));
    if (!options.look.isEmpty() && !fromText<LookChoice>(options.look))
        return failure(
            ErrorCode::Usage,
            QStringLiteral("--look is one of %1.").arg(allWords<LookChoice>().join(u", ")));
    options.language = parser.value(QStringLiteral("language"));
    if (!options.language.isEmpty() && !findLanguage(options.language))
        return failure(
            ErrorCode::Usage,
            QStringLiteral("--language is %1, not “%2”.").arg(languageCodes(), options.language));
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

QByteArray StartOptions::manual()
{
    ManualPage page(QStringLiteral("loopwright"), purpose);
    page.section("SYNOPSIS")
        .call({}, {ManualPage::optional(ManualPage::argument("options")),
                   ManualPage::optional(ManualPage::argument("file"))});
    page.section("DESCRIPTION")
        .paragraph("The desktop program: the board of all orders, the page of each job from its "
                   "first step to the certificate, the register, the reports. It works on the "
                   "same records as the command line, one SQLite file, and needs no network.")
        .beginList()
        .item(ManualPage::argument("file"), fileHelp)
        .endList()
        .paragraph("Records have one window of a user. Whoever starts the program again with the "
                   "same records has that window brought forward, with the job or file that was "
                   "named.");
    page.section("OPTIONS").beginList();
    for (const QCommandLineOption &option : declared())
        page.item(ManualPage::option("--" + option.names().last(), option.valueName()),
                  option.description());
    page.endList();
    describeStations(page);
    describeWords(page);
    page.section("ENVIRONMENT")
        .beginList()
        .item(ManualPage::variable("LOOPWRIGHT_DB"),
              "The records, unless some are named: a file, or the address of a server "
              "(postgresql://…).")
        .item(ManualPage::variable("XDG_DATA_HOME"),
              "The folder that data lies in, if it is not ~/.local/share.")
        .item(ManualPage::variable("XDG_CONFIG_HOME"),
              "The folder that settings lie in, if it is not ~/.config.")
        .endList();
    page.section("FILES")
        .beginList()
        .item(ManualPage::path("~/.local/share/loopwright/records.sqlite"), "The records.")
        .item(ManualPage::path("~/.local/share/loopwright/records-backups"),
              "A backup of each day: seven days, four more weeks, twelve more months.")
        .item(ManualPage::path("~/.local/share/loopwright/keys"),
              "The secret halves of the keys that sign. They are in no backup of the records.")
        .item(ManualPage::path("~/.config/loopwright/desktop.ini"),
              "The look that was chosen, which records are opened, and where one was.")
        .endList();
    page.section("EXIT STATUS")
        .paragraph("0, or 2 for wrong usage. Records that cannot be opened are told in a window.");
    return page.seeAlso({QStringLiteral("loopwright-cli")}).text();
}

} // namespace loopwright
