#include "app/actions/ManualPage.h"

#include <QDate>
#include <QLocale>
#include <QRegularExpression>

namespace loopwright {

namespace {

/// Longer lines are held against the page by those who check it.
constexpr qsizetype manualWidth = 78;

/// What roff prints as this text: it knows a backslash as its own, and letters of ASCII.
QString forRoff(const QString &text)
{
    QString written;
    for (const uint sign : text.toUcs4()) {
        if (sign == '\\')
            written += QStringLiteral("\\e");
        else if (sign < 128)
            written += QChar(char16_t(sign));
        else
            written += QStringLiteral("\\[u%1]")
                           .arg(sign, 4, 16, QChar(u'0'))
                           .toUpper()
                           .replace(QStringLiteral("\\[U"), QStringLiteral("\\[u"));
    }
    return written.replace(QStringLiteral("--"), QStringLiteral("\\-\\-"));
}

/// As one argument of a macro: no macro itself, no mark of punctuation, whole with its blanks.
QString argumentForRoff(const QString &text)
{
    QString written = "\\&" + forRoff(text).replace(u'"', QStringLiteral("\\(dq"));
    // What is typed is found again by a search for it: a minus, no hyphen.
    written.replace(QRegularExpression(QStringLiteral("(?<!\\\\)-")), QStringLiteral("\\-"));
    return written.contains(u' ') ? '"' + written + '"' : written;
}

} // namespace

ManualPage::ManualPage(const QString &program, const QString &purpose)
{
    const QDate date = QDate::fromString(QStringLiteral(LOOPWRIGHT_DATE), Qt::ISODate);
    add(QStringLiteral(".\\\" Made by the program itself (--manual); do not edit."));
    add(".Dd " + QLocale::c().toString(date, QStringLiteral("MMMM d, yyyy")));
    add(".Dt " + program.toUpper() + " 1");
    add(QStringLiteral(".Os"));
    section(QStringLiteral("NAME"));
    add(".Nm " + program);
    add(".Nd " + forRoff(purpose));
}

ManualPage &ManualPage::section(const QString &title)
{
    add(".Sh " + title);
    m_afterHead = true;
    return *this;
}

ManualPage &ManualPage::subsection(const QString &title)
{
    add(".Ss " + argumentForRoff(title));
    m_afterHead = true;
    return *this;
}

ManualPage &ManualPage::paragraph(const QString &text)
{
    if (!m_afterHead)
        add(QStringLiteral(".Pp"));
    m_afterHead = false;
    addText(text);
    return *this;
}

/// Each sentence begins a line, which is how roff knows that one ends.
void ManualPage::addText(const QString &text)
{
    static const QRegularExpression end(QStringLiteral("(?<=[.!?]) +(?=[A-Z])"));
    for (const QString &sentence : forRoff(text).split(end)) {
        QString line;
        const auto put = [this, &line] {
            const bool looksLikeARequest = line.startsWith(u'.') || line.startsWith(u'\'');
            add(looksLikeARequest ? "\\&" + line : line);
        };
        for (const QString &word : sentence.split(u' ', Qt::SkipEmptyParts)) {
            if (!line.isEmpty() && line.size() + 1 + word.size() > manualWidth) {
                put();
                line.clear();
            }
            line += line.isEmpty() ? word : u' ' + word;
        }
        if (!line.isEmpty())
            put();
    }
}

ManualPage &ManualPage::call(const QString &words, const QStringList &parts)
{
    if (!m_afterHead)
        add(QStringLiteral(".Pp"));
    m_afterHead = false;
    add(QStringLiteral(".Nm"));
    if (!words.isEmpty())
        add(".Cm " + argumentForRoff(words));
    for (const QString &part : parts)
        add('.' + part);
    return *this;
}

ManualPage &ManualPage::beginList()
{
    add(QStringLiteral(".Bl -tag -width Ds"));
    return *this;
}

ManualPage &ManualPage::item(const QString &part, const QString &meaning)
{
    add(".It " + part);
    addText(meaning);
    return *this;
}

ManualPage &ManualPage::endList()
{
    add(QStringLiteral(".El"));
    m_afterHead = false;
    return *this;
}

ManualPage &ManualPage::seeAlso(const QStringList &programs)
{
    section(QStringLiteral("SEE ALSO"));
    for (const QString &program : programs)
        add(".Xr " + program + " 1" + (program == programs.last() ? QString() : QString(" ,")));
    return *this;
}

QString ManualPage::option(const QString &name, const QString &value)
{
    // The macro puts one dash before what it is given.
    const QString flag = "Fl \\-" + forRoff(name.mid(2)).replace(u'-', QStringLiteral("\\-"));
    return value.isEmpty() ? flag : flag + " Ar " + argumentForRoff(value);
}

QString ManualPage::argument(const QString &name)
{
    return "Ar " + argumentForRoff(name);
}

QString ManualPage::optional(const QString &part)
{
    return "Op " + part;
}

QString ManualPage::variable(const QString &name)
{
    return "Ev " + name;
}

QString ManualPage::path(const QString &path)
{
    return "Pa " + argumentForRoff(path);
}

QString ManualPage::literal(const QString &word)
{
    return "Li " + argumentForRoff(word);
}

} // namespace loopwright
