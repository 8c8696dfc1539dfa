#pragma once
// Text for a person at a terminal: tables in columns, labels with their values, wrapped sentences.

#include <QStringList>

#include <optional>
#include <utility>
#include <vector>

namespace loopwright {

/// Width to which sentences are wrapped, and that of a table: of the terminal, if one is known.
int textWidth();
int tableWidth();
/// How many columns the terminal has; nothing: where there is none.
void setTerminalWidth(std::optional<int> columns);
/// What COLUMNS says, else what the terminal behind standard output does.
std::optional<int> terminalWidth();

/// Rows in aligned columns, two blanks between them, the header underlined. The last column is
/// wrapped if a row would be longer than tableWidth(); on a terminal the others too, the widest
/// first, where that is not enough. No word is broken.
class ColumnLayout
{
public:
    /// A heading that begins with ">" stands over a column that is set to the right.
    explicit ColumnLayout(const QStringList &headings);
    void add(const QStringList &cells);
    bool isEmpty() const { return m_rows.empty(); }
    QString text() const;

private:
    QString line(const QStringList &cells, const std::vector<qsizetype> &widths) const;
    std::vector<qsizetype> fittedWidths() const;

    QStringList m_headings;
    std::vector<bool> m_right;
    std::vector<qsizetype> m_widths, m_words; ///< of the longest cell, and of the longest word
    std::vector<QStringList> m_rows;
};

/// Labels in one column, values wrapped in the other; empty values are left out.
class LabelledLines
{
public:
    LabelledLines &add(const QString &label, const QString &value);
    QString text() const;

private:
    std::vector<std::pair<QString, QString>> m_lines;
};

/// Breaks at blanks; the lines after the first begin with `indent` blanks.
QString wrapped(const QString &text, int indent = 0, int width = textWidth());

/// A heading with a line below it.
QString heading(const QString &text);

/// A number as a person writes it: up to `digits` significant ones.
QString shortNumber(double value, int digits = 4);

} // namespace loopwright
