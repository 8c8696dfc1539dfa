#include "app/cli/Layout.h"

#include <algorithm>
#include <numeric>
#include <sys/ioctl.h>
#include <unistd.h>

namespace loopwright {

namespace {

constexpr int narrowestColumn = 30;
constexpr int widestText = 96; ///< a longer line is hard to read

std::optional<int> knownColumns; ///< of the terminal

/// A value of several lines would break the columns.
QString cellText(const QString &text)
{
    return text.simplified();
}

qsizetype longestWord(const QString &text)
{
    qsizetype longest = 0;
    for (const QStringView word : QStringView(text).split(u' '))
        longest = std::max(longest, word.size());
    return longest;
}

QString withoutTrailingBlanks(QString line)
{
    while (line.endsWith(u' '))
        line.chop(1);
    return line;
}

} // namespace

int textWidth()
{
    return knownColumns ? std::min(widestText, *knownColumns) : widestText;
}

int tableWidth()
{
    return knownColumns.value_or(120);
}

void setTerminalWidth(std::optional<int> columns)
{
    knownColumns = columns;
    if (knownColumns)
        knownColumns = std::clamp(*knownColumns, 40, 1000);
}

std::optional<int> terminalWidth()
{
    const int said = qEnvironmentVariableIntValue("COLUMNS");
    if (said > 0)
        return said;
    winsize size = {};
    if (isatty(STDOUT_FILENO) && ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0)
        return size.ws_col;
    return std::nullopt;
}

ColumnLayout::ColumnLayout(const QStringList &headings)
{
    for (const QString &heading : headings) {
        const bool right = heading.startsWith(u'>');
        m_right.push_back(right);
        m_headings << (right ? heading.mid(1) : heading);
        m_widths.push_back(m_headings.last().size());
        m_words.push_back(longestWord(m_headings.last()));
    }
}

void ColumnLayout::add(const QStringList &cells)
{
    QStringList row;
    for (qsizetype i = 0; i < m_headings.size(); ++i) {
        row << cellText(cells.value(i));
        m_widths[i] = std::max(m_widths[i], row.last().size());
        m_words[i] = std::max(m_words[i], longestWord(row.last()));
    }
    m_rows.push_back(row);
}

std::vector<qsizetype> ColumnLayout::fittedWidths() const
{
    std::vector<qsizetype> widths = m_widths;
    const auto total = std::accumulate(widths.begin(), widths.end(), qsizetype(0));
    qsizetype over = total + 2 * qsizetype(widths.size() - 1) - tableWidth();
    const auto narrow = [&](std::size_t column, qsizetype least) {
        const qsizetype before = widths[column];
        widths[column] = std::max(std::min(before, least), before - over);
        over -= before - widths[column];
    };
    if (over > 0 && !m_right.back())
        narrow(widths.size() - 1, narrowestColumn);
    if (!knownColumns)
        return widths;
    const auto slack = [&](std::size_t column) {
        return m_right[column] ? 0 : widths[column] - m_words[column];
    };
    while (over > 0) {
        std::size_t widest = 0;
        for (std::size_t i = 1; i < widths.size(); ++i)
            if (slack(i) > 0 && (slack(widest) <= 0 || widths[i] > widths[widest]))
                widest = i;
        if (slack(widest) <= 0)
            break;
        narrow(widest, m_words[widest]);
    }
    return widths;
}

QString ColumnLayout::line(const QStringList &cells, const std::vector<qsizetype> &widths) const
{
    std::vector<QStringList> lines;
    lines.reserve(widths.size());
    qsizetype most = 1;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        lines.push_back(wrapped(cells[qsizetype(i)], 0, int(widths[i])).split(u'\n'));
        most = std::max(most, lines.back().size());
    }
    QString text;
    for (qsizetype at = 0; at < most; ++at) {
        QString line;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            const QString part = lines[i].value(at);
            line += (i > 0 ? "  " : "") +
                    (m_right[i] ? part.rightJustified(widths[i]) : part.leftJustified(widths[i]));
        }
        text += withoutTrailingBlanks(line) + "\n";
    }
    return text;
}

QString ColumnLayout::text() const
{
    const std::vector<qsizetype> widths = fittedWidths();
    QStringList rule;
    for (const qsizetype width : widths)
        rule << QString(width, u'-');
    QString text = line(m_headings, widths) + line(rule, widths);
    for (const QStringList &row : m_rows)
        text += line(row, widths);
    return text;
}

LabelledLines &LabelledLines::add(const QString &label, const QString &value)
{
    if (!value.isEmpty())
        m_lines.emplace_back(label, value);
    return *this;
}

QString LabelledLines::text() const
{
    qsizetype width = 0;
    for (const auto &[label, value] : m_lines)
        width = std::max(width, label.size());
    QString text;
    for (const auto &[label, value] : m_lines)
        text +=
            withoutTrailingBlanks(wrapped(label.leftJustified(width + 2) + value, int(width) + 2)) +
            "\n";
    return text;
}

QString wrapped(const QString &text, int indent, int width)
{
    QStringList words = text.split(u' ');
    QString all;
    QString line = words.takeFirst();
    for (const QString &word : words) {
        if (line.size() + 1 + word.size() > width && !line.trimmed().isEmpty()) {
            all += withoutTrailingBlanks(line) + "\n";
            line = QString(indent, u' ') + word;
        } else {
            line += u' ' + word;
        }
    }
    return all + line;
}

QString heading(const QString &text)
{
    return text + "\n" + QString(text.size(), u'=') + "\n";
}

QString shortNumber(double value, int digits)
{
    return QString::number(value, 'g', digits);
}

} // namespace loopwright
