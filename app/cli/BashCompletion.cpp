#include "app/cli/BashCompletion.h"

#include <QMap>

namespace loopwright {

namespace {

// Walks over what was typed: words of the command lead on, options that take a value skip it.
constexpr const char *walk = R"(_loopwright_cli()
{
    local command= options valued below arguments words word=${COMP_WORDS[COMP_CWORD]} before= i at
    COMPREPLY=()
    _loopwright_cli_at ""
    for ((i = 1; i < COMP_CWORD; i++)); do
        at=${COMP_WORDS[i]}
        case $at in
            =) ;;
            -*)
                # --out F and, which bash takes apart, --out=F
                if [[ " $valued " == *" $at "* ]]; then
                    [[ ${COMP_WORDS[i + 1]} == = ]] && ((i++))
                    ((i++))
                    [[ $i -ge $COMP_CWORD ]] && before=$at
                fi
                ;;
            *)
                if [[ " $below " == *" $at "* ]]; then
                    command=${command:+$command }$at
                    _loopwright_cli_at "$command"
                fi
                ;;
        esac
    done
    [[ $word == = ]] && word=
    if [[ -n $before ]]; then
        _loopwright_cli_words "$command" "$before"
    elif [[ $word == -* ]]; then
        words=$options
    else
        words="$below $arguments"
    fi
    mapfile -t COMPREPLY < <(compgen -W "$words" -- "$word")
}
complete -o default -F _loopwright_cli loopwright-cli
)";

struct Place
{
    QStringList below; ///< the next words of commands
    const CommandSpec *command = nullptr;
};

/// The words of each command and of each group of commands, with what can follow.
QMap<QString, Place> placesOf(const ProgramSpec &program)
{
    QMap<QString, Place> places;
    for (const CommandSpec &command : program.commands) {
        QString before;
        for (const QString &word : command.words.split(u' ')) {
            QStringList &below = places[before].below;
            if (!below.contains(word))
                below << word;
            before += before.isEmpty() ? word : u' ' + word;
        }
        places[command.words].command = &command;
    }
    return places;
}

QString joined(const QStringList &words)
{
    return '"' + words.join(u' ') + '"';
}

/// One branch: what can be said at this place.
QString branchOf(const QString &words, const Place &place, const ProgramSpec &program)
{
    QStringList options, valued, arguments;
    const auto take = [&](const std::vector<OptionSpec> &declared) {
        for (const OptionSpec &option : declared) {
            if (option.isArgument()) {
                arguments << option.words;
                continue;
            }
            options << option.name;
            if (!option.value.isEmpty())
                valued << option.name;
        }
    };
    if (place.command)
        take(place.command->options);
    take(program.common);
    options << QStringLiteral("--help");
    if (words.isEmpty()) {
        options << QStringLiteral("--version") << QStringLiteral("--manual");
        valued << QStringLiteral("--manual");
    }
    return QStringLiteral("        \"%1\")\n            below=%2 arguments=%3\n"
                          "            options=%4\n            valued=%5\n            ;;\n")
        .arg(words, joined(place.below), joined(arguments), joined(options), joined(valued));
}

/// The words that an option of a command takes.
QString wordsBranches(const ProgramSpec &program)
{
    QString branches;
    const auto add = [&branches](const QString &command, const OptionSpec &option) {
        if (!option.isArgument() && !option.words.isEmpty())
            branches += QStringLiteral("        \"%1 %2\") words=%3 ;;\n")
                            .arg(command, option.name, joined(option.words));
    };
    for (const CommandSpec &command : program.commands)
        for (const OptionSpec &option : command.options)
            add(command.words, option);
    return branches + QStringLiteral("        *\" --manual\") words=\"man bash\" ;;\n");
}

} // namespace

QByteArray bashCompletionOf(const ProgramSpec &program)
{
    QString text = QStringLiteral("# bash completion for loopwright-cli\n"
                                  "# Made by the program itself (--manual bash); do not edit.\n\n"
                                  "# What can follow the words of a command.\n"
                                  "_loopwright_cli_at()\n{\n    case $1 in\n");
    const auto places = placesOf(program);
    for (auto place = places.cbegin(); place != places.cend(); ++place)
        text += branchOf(place.key(), place.value(), program);
    text += QStringLiteral("    esac\n}\n\n# The words that an option takes; none: a file, or "
                           "whatever it is.\n_loopwright_cli_words()\n{\n    words=\n"
                           "    case \"$1 $2\" in\n");
    text += wordsBranches(program);
    text += QStringLiteral("    esac\n}\n\n");
    return (text + QString::fromLatin1(walk)).toUtf8();
}

} // namespace loopwright
