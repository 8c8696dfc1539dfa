#include "app/cli/Manual.h"

#include "app/actions/HelpPages.h"
#include "app/cli/ExitStatus.h"

#include <algorithm>

namespace loopwright {

namespace {

/// What stands in the place of its value: the words there are, if they are few enough to read.
QString valueOf(const OptionSpec &option)
{
    const QString words = option.words.join(u'|');
    const bool few = !words.isEmpty() && words.size() <= 40;
    return few ? words : option.value;
}

QString partOf(const OptionSpec &option)
{
    const QString many = option.many ? QStringLiteral(" ...") : QString();
    if (option.isArgument())
        return ManualPage::argument(option.name) + many;
    return ManualPage::option(option.name, valueOf(option)) + many;
}

QString meaningOf(const OptionSpec &option)
{
    QString meaning = option.help;
    const bool namesAll =
        std::all_of(option.words.begin(), option.words.end(),
                    [&meaning](const QString &word) { return meaning.contains(word); });
    if (!namesAll && valueOf(option) == option.value)
        meaning += QStringLiteral("; one of ") + option.words.join(QStringLiteral(", "));
    return meaning + u'.';
}

void describeAll(ManualPage &page, const std::vector<OptionSpec> &options)
{
    if (options.empty())
        return;
    page.beginList();
    for (const OptionSpec &option : options)
        page.item(partOf(option), meaningOf(option));
    page.endList();
}

void describe(ManualPage &page, const CommandSpec &command)
{
    QStringList parts;
    for (const OptionSpec &option : command.options)
        parts << (option.required ? partOf(option) : ManualPage::optional(partOf(option)));
    page.subsection(command.words).paragraph(command.summary + u'.').call(command.words, parts);
    describeAll(page, command.options);
}

void describeCommon(ManualPage &page, const ProgramSpec &program)
{
    page.section("COMMON OPTIONS")
        .paragraph("These may stand anywhere, with every command.")
        .beginList();
    for (const OptionSpec &option : program.common)
        page.item(partOf(option), meaningOf(option));
    page.item(ManualPage::option("--help"), "Says what can be said at this place.")
        .item(ManualPage::option("--version"), "Says the version of the program.")
        .item(ManualPage::option("--manual", "man|bash"), QString(manualHelp) + u'.')
        .endList();
}

void describeSurroundings(ManualPage &page)
{
    page.section("ENVIRONMENT")
        .beginList()
        .item(ManualPage::variable("LOOPWRIGHT_DB"),
              "The file of the records, unless --db names one.")
        .item(ManualPage::variable("XDG_DATA_HOME"),
              "The folder that data lies in, if it is not ~/.local/share.")
        .item(ManualPage::variable("TZ"),
              "The zone of times that are given without an offset, and of what is a day.")
        .endList();
    page.section("FILES")
        .beginList()
        .item(ManualPage::path("~/.local/share/loopwright/records.sqlite"), "The records.")
        .item(ManualPage::path("~/.local/share/loopwright/records-backups"),
              "The backups that the desktop program makes of them, each with the signed head of "
              "its log.")
        .item(ManualPage::path("~/.local/share/loopwright/keys"),
              "The secret halves of the keys that sign. They are in no backup of the records.")
        .endList();
}

void describeStatuses(ManualPage &page)
{
    page.section("EXIT STATUS").beginList();
    for (const ExitStatusMeaning &each : exitStatuses())
        page.item(ManualPage::literal(QString::number(int(each.status))), each.meaning);
    page.endList().paragraph(
        "On 2 to 5, and on 130, nothing has been changed, but where it is said that only the paper "
        "or the file is missing, or that a part of a bundle is in. Then the same command does the "
        "rest.");
}

} // namespace

QByteArray manualOf(const ProgramSpec &program)
{
    ManualPage page(program.name, program.purpose);
    page.section("SYNOPSIS")
        .call({}, {ManualPage::optional(ManualPage::argument("common options")),
                   ManualPage::argument("command"),
                   ManualPage::optional(ManualPage::argument("its options"))});
    page.section("DESCRIPTION")
        .paragraph("Keeps the job of turning up a telephone line from the order to the signed "
                   "certificate. It works on the same records as the desktop program, one SQLite "
                   "file, and needs no network and no display.")
        .paragraph("The answer of a command goes to standard output, all else to standard error. "
                   "Where a file is named, - is standard input or output.");
    describeCommon(page, program);
    page.section("COMMANDS");
    for (const CommandSpec &command : program.commands)
        describe(page, command);
    describeFiles(page);
    describeSurroundings(page);
    describeStatuses(page);
    page.section("EXAMPLES")
        .paragraph("Take orders in, keep apart what cannot be taken, and show what is late:")
        .call("order import",
              {ManualPage::argument("F.csv"), ManualPage::option("--rejects", "G.csv")})
        .call("order list", {ManualPage::option("--late")})
        .paragraph("Decide an order and issue its certificate:")
        .call("decide", {ManualPage::argument("26-0001")})
        .call("certificate issue",
              {ManualPage::argument("26-0001"), ManualPage::option("--out", "F.pdf")});
    return page.seeAlso({"loopwright"}).text();
}

} // namespace loopwright
