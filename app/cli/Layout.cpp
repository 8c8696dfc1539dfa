#include "app/cli/Layout.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int narrowestColumn = 30;
constexpr QChar filler = u'.';

/// A value of several lines would break the columns.
QString cellText(const QString &text)
{
    return text.simplified();
}

QString withoutTrailingBlanks(QString line)
{
    while (line.endsWith(u' '))
        line.chop(1);
    return line;
}

} // namespace

ColumnLayout::ColumnLayout(const QStringList &headings)
{
    for (const QString &heading : headings) {
        const bool right = heading.startsWith(u'>');
        m_right.push_back(right);
        m_headings << (right ? heading.mid(1) : heading);
        m_widths.push_back(m_headings.last().size());
    }
}

void ColumnLayout::add(const QStringList &cells)
{
    QStringList row;
    for (qsizetype i = 0; i < m_headings.size(); ++i) {
        row << cellText(cells.value(i));
        m_widths[i] = std::max(m_widths[i], row.last().size());
    }
    m_rows.push_back(row);
}

/// Where the last column begins, in characters.
int ColumnLayout::lastColumnAt() const
{
    qsizetype at = 0;
    for (std::size_t i = 0; i + 1 < m_widths.size(); ++i)
        at += m_widths[i] + 2;
    return int(at);
}

QString ColumnLayout::line(const QStringList &cells) const
{
    QString text;
    for (qsizetype i = 0; i + 1 < cells.size(); ++i)
        text += (m_right[i] ? cells[i].rightJustified(m_widths[i])
                            : cells[i].leftJustified(m_widths[i])) +
                "  ";
    const QString &last = cells.last();
    if (m_right.back())
        return withoutTrailingBlanks(text + last.rightJustified(m_widths.back())) + "\n";
    const int at = lastColumnAt();
    const int room = std::max(tableWidth - at, narrowestColumn);
    // Wrapped with the columns before it standing in for the indent of its first line.
    const QString column = wrapped(QString(at, filler) + last, at, at + room);
    return withoutTrailingBlanks(text + column.mid(at)) + "\n";
}

QString ColumnLayout::text() const
{
    const qsizetype room = std::max(tableWidth - lastColumnAt(), narrowestColumn);
    QStringList rule;
    for (const qsizetype width : m_widths)
        rule << QString(width, u'-');
    rule.last().truncate(room);
    QString text = line(m_headings) + line(rule);
    for (const QStringList &row : m_rows)
        text += line(row);
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
