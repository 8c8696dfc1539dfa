#include "app/cli/CommandLine.h"

#include "app/actions/InFile.h"
#include "app/cli/BashCompletion.h"
#include "app/cli/Commands.h"
#include "app/cli/Examples.h"
#include "app/cli/Manual.h"
#include "app/cli/PinInput.h"

#include <QFileDevice>

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cstring>
#include <utility>

namespace loopwright {

namespace {

constexpr const char *programName = "loopwright-cli";
constexpr const char *purpose =
    "Turn-up records and certificates for ISDN basic-rate and analog lines";

void say(QIODevice &messages, const QString &text)
{
    messages.write((programName + QString(": ") + oneLine(text) + "\n").toUtf8());
}

/// The deepest command or group that was named.
const CLI::App *named(const CLI::App &app)
{
    const CLI::App *at = &app;
    while (!at->get_subcommands().empty())
        at = at->get_subcommands().back();
    return at;
}

/// CLI11's own words for what a person gets wrong most often are about itself; these are about the
/// commands.
QString usageMessage(const CLI::App &app, const CLI::ParseError &error)
{
    const std::vector<std::string> unread = app.remaining(true);
    if (!unread.empty())
        return QString("\"%1\" is no command or option here")
            .arg(QString::fromStdString(unread.front()));
    const CLI::App *at = named(app);
    QStringList words;
    for (const CLI::App *next : at->get_subcommands([](const CLI::App *) { return true; }))
        words << QString::fromStdString(next->get_name());
    if (!words.isEmpty() && dynamic_cast<const CLI::RequiredError *>(&error))
        return QString("say what to do: %1").arg(words.join(", "));
    return QString::fromUtf8(error.what());
}

/// What stands below the options of a command.
std::string examplesOf(const QString &words)
{
    QString text = "Examples:\n";
    for (const QString &example : commandExamples(words))
        text += QString("  %1 %2\n").arg(programName, example);
    text += "\n--db, --json, --quiet, --by, --pin-file and --now may stand anywhere; see ";
    text += programName + QString(" --help.");
    return text.toStdString();
}

/// Every command that begins with these words, with what it does.
std::string commandList(const QString &firstWords = {})
{
    std::size_t longest = 0;
    for (const CommandEntry &entry : allCommands())
        longest = std::max(longest, std::strlen(entry.words));
    QString list = "Commands:\n";
    for (const CommandEntry &entry : allCommands())
        if (QString(entry.words).startsWith(firstWords))
            list += QString("  %1  %2\n")
                        .arg(QString(entry.words).leftJustified(int(longest)), entry.summary);
    return list.toStdString();
}

} // namespace

struct CommandLine::Reading
{
    CLI::App app{std::string(purpose) + '.', programName};
    CommonOptions common;
    ProgramSpec spec{programName, purpose, {}, {}};
    std::vector<std::unique_ptr<Command>> commands; ///< as in the register
    std::vector<CLI::App *> apps;                   ///< likewise
    int chosen = -1;
    std::optional<Error> wrong;
    QString help; ///< of help or version, if one was asked for

    void declareCommon();
    void declareAboutItself();
    CLI::App *find(const QStringList &words);
    void parse(const QStringList &words);
    QString whereHelpIs() const;
    bool fileGoesToStandardOutput() const;
};

/// What is answered without any command, and ends the reading as a call for the version does.
void CommandLine::Reading::declareAboutItself()
{
    app.set_version_flag("--version", std::string(programName) + " " + LOOPWRIGHT_VERSION);
    app.add_option_function<std::string>(
           "--manual",
           [this](const std::string &form) {
               if (form != "man" && form != "bash")
                   throw CLI::ValidationError("--manual", "must be one of man, bash");
               const QByteArray text = form == "man" ? manualOf(spec) : bashCompletionOf(spec);
               throw CLI::CallForVersion(text.trimmed().toStdString(), 0);
           },
           manualHelp)
        ->type_name("");
}

void CommandLine::Reading::declareCommon()
{
    declareAboutItself();
    Options options(app);
    options.text("--db", common.database,
                 "The database (else LOOPWRIGHT_DB, else records.sqlite in the data directory)");
    options.flag("--json", common.json, "One JSON document on standard output");
    options.flag("--quiet", common.quiet,
                 "No progress and no notes on standard error: errors alone");
    options.text("--by", common.by,
                 "Who acts, by key of the register; goes into the history (else by the login)");
    options.text("--pin-file", common.pinFile,
                 "Holds in its first line the PIN of who acts, if one is needed");
    options.moment("--now", common.now, "Takes the place of the clock");
    app.require_subcommand(1);
    app.fallthrough();
    app.footer(commandList());
    spec.common = std::move(options).declared();
}

/// The CLI11 app of a command; those of its first words are made on the way.
CLI::App *CommandLine::Reading::find(const QStringList &words)
{
    CLI::App *at = &app;
    for (qsizetype i = 0; i < words.size(); ++i) {
        const auto found = at->get_subcommands(
            [&words, i](CLI::App *app) { return app->get_name() == words[i].toStdString(); });
        CLI::App *next = found.empty() ? nullptr : found.front();
        if (!next) {
            const bool group = i + 1 < words.size();
            next = at->add_subcommand(words[i].toStdString(),
                                      group ? groupSummary(words[i]).toStdString() : "");
            next->fallthrough();
            next->group(""); // the list below the options names them all
            next->footer(group ? commandList(words[i] + " ") : examplesOf(words.join(u' ')));
            if (group)
                next->require_subcommand(1);
        }
        at = next;
    }
    return at;
}

void CommandLine::Reading::parse(const QStringList &words)
{
    // Known before all else, so that wrong usage too is reported as JSON.
    common.json = words.contains("--json");
    if (wrong)
        return;
    std::vector<std::string> reversed;
    for (auto word = words.crbegin(); word != words.crend(); ++word)
        reversed.push_back(word->toStdString());
    try {
        app.parse(reversed);
    } catch (const CLI::CallForHelp &) {
        help = QString::fromStdString(app.help());
    } catch (const CLI::CallForVersion &call) {
        help = QString::fromUtf8(call.what()) + "\n";
    } catch (const CLI::ParseError &error) {
        wrong = Error{ErrorCode::Usage, usageMessage(app, error), {}};
    }
    for (std::size_t i = 0; i < apps.size(); ++i)
        if (apps[i]->parsed())
            chosen = int(i);
}

bool CommandLine::Reading::fileGoesToStandardOutput() const
{
    for (const char *name : {"--out", "--rejects"}) {
        const CLI::Option *option = apps[std::size_t(chosen)]->get_option_no_throw(name);
        if (option && option->results() == std::vector<std::string>{standardStream.toStdString()})
            return true;
    }
    return false;
}

QString CommandLine::Reading::whereHelpIs() const
{
    const QString words =
        chosen < 0 ? QString() : QString(" ") + QLatin1StringView(allCommands()[chosen].words);
    return programName + words + " --help";
}

CommandLine::CommandLine()
    : m_reading(std::make_unique<Reading>())
{
    m_reading->declareCommon();
    m_reading->commands.reserve(allCommands().size());
    m_reading->apps.reserve(allCommands().size());
    m_reading->spec.commands.reserve(allCommands().size());
    for (const CommandEntry &entry : allCommands()) {
        CLI::App *app = m_reading->find(QString(entry.words).split(' '));
        app->description(entry.summary);
        Options options(*app);
        m_reading->commands.push_back(entry.make());
        m_reading->commands.back()->declare(options);
        m_reading->spec.commands.push_back(
            {entry.words, entry.summary, std::move(options).declared()});
        m_reading->apps.push_back(app);
    }
}

CommandLine::~CommandLine() = default;

void CommandLine::read(const QStringList &words)
{
    m_reading->parse(words);
}

const ProgramSpec &CommandLine::spec() const
{
    return m_reading->spec;
}

void CommandLine::readBytes(const QByteArrayList &words)
{
    QStringList texts;
    for (const QByteArray &word : words) {
        texts << QString::fromUtf8(word);
        if (!word.isValidUtf8() && !m_reading->wrong)
            m_reading->wrong =
                Error{ErrorCode::BadInput,
                      "this word is not UTF-8 (its other bytes are shown as %…). A file of such a "
                      "name cannot be opened: rename it, or give - and its content on standard "
                      "input",
                      QString::fromLatin1(word.toPercentEncoding(" /.:=~+,"))};
    }
    read(texts);
}

std::optional<Error> CommandLine::wrong() const
{
    return m_reading->wrong;
}

bool CommandLine::paints() const
{
    return m_reading->chosen >= 0 && loopwright::paints(allCommands()[m_reading->chosen].effect);
}

namespace {

ExitStatus tellError(const Error &error, bool json, QIODevice &out, QIODevice &messages)
{
    say(messages, error.text());
    if (error.code == ErrorCode::OrderOut)
        say(messages, "With --anyway it is changed all the same.");
    if (error.rowsDone > 0)
        say(messages, QString("Rows taken in before that: %1. Import the same file again, and it "
                              "takes in the others.")
                          .arg(error.rowsDone));
    if (json)
        out.write(canonicalJson(QJsonObject{{"error", errorJson(error)}}) + "\n");
    return exitStatusOf(error.code);
}

/// Writes the answer. A full disk behind standard output must not pass for success; if the
/// records were changed already the work stays done, and only the message says so.
ExitStatus tellAnswer(const Answer &answer, const CommonOptions &common, Effect effect,
                      QIODevice &out, QIODevice &messages)
{
    const bool json = common.json;
    for (const Answer::Line &line : answer.told)
        if (!line.isNote || !common.quiet)
            say(messages, line.text);
    const Writing &writing = json ? answer.json : answer.text;
    if (writing)
        writing(out);
    if (json)
        out.write("\n");
    const auto *file = qobject_cast<QFileDevice *>(&out);
    if (file &&
        (!const_cast<QFileDevice *>(file)->flush() || file->error() != QFileDevice::NoError)) {
        say(messages, "the answer could not be written to standard output: " + file->errorString());
        if (!changes(effect))
            return ExitStatus::DiskTrouble;
    }
    if (answer.refusedWhole)
        return ExitStatus::BadInput;
    return answer.yes ? ExitStatus::Yes : ExitStatus::No;
}

} // namespace

ExitStatus CommandLine::fail(const Error &error, QIODevice &out, QIODevice &messages) const
{
    const ExitStatus status = tellError(error, m_reading->common.json, out, messages);
    if (status == ExitStatus::Usage)
        say(messages, "see " + m_reading->whereHelpIs());
    return status;
}

ExitStatus CommandLine::run(QIODevice &out, QIODevice &messages, bool terminal)
{
    const bool json = m_reading->common.json;
    if (!m_reading->help.isEmpty()) {
        out.write(m_reading->help.toUtf8());
        return ExitStatus::Yes;
    }
    if (m_reading->wrong)
        return fail(*m_reading->wrong, out, messages);
    const bool taken = m_reading->fileGoesToStandardOutput();
    if (taken && json)
        return fail({ErrorCode::Usage, "standard output is for the JSON document", "-"}, out,
                    messages);
    CommonOptions common = m_reading->common;
    if (!common.pinFile.isEmpty()) {
        auto pin = pinFromFile(common.pinFile);
        if (!pin)
            return fail(pin.error(), out, messages);
        common.pin = std::move(*pin);
    }
    CommandContext context(std::move(common), messages, terminal);
    context.setReadsOnly(!changes(allCommands()[m_reading->chosen].effect));
    Result<Answer> answer = m_reading->commands[m_reading->chosen]->run(context);
    if (!answer) {
        const ExitStatus status = fail(answer.error(), out, messages);
        const bool stopped = status == ExitStatus::No && CommandContext::isInterrupted();
        return stopped ? ExitStatus::Interrupted : status; // else it says what else went wrong
    }
    if (taken && answer->text) { // the file stands there alone
        const Writing text = std::exchange(answer->text, {});
        if (!m_reading->common.quiet)
            text(messages);
    }
    return tellAnswer(*answer, m_reading->common, allCommands()[m_reading->chosen].effect, out,
                      messages);
}

} // namespace loopwright
