#pragma once
// RFC 4180 CSV in UTF-8, row by row, each row with the line on which it starts. Our own because the
// readers in Debian give no line number and stop at the first bad row (DEVELOPERS.md).

#include "core/base/ColumnMap.h"
#include "core/base/Result.h"

#include <QByteArray>
#include <QByteArrayView>
#include <QStringList>

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace loopwright {

/// Walks over CSV bytes without copying them. The bytes must outlive it; fields are valid until the
/// next call. A carriage return alone ends a row only where it ends the first: elsewhere it is a
/// fault within a field, and half of a value is not taken for the whole.
class CsvScanner
{
public:
    explicit CsvScanner(QByteArrayView bytes, char separator = ',');

    /// Reads the next row; blank lines are passed over. False at the end.
    bool next();
    int line() const { return m_rowLine; } ///< line of the file on which the row starts, from 1
    const std::vector<std::string_view> &fields() const { return m_fields; }
    /// Empty, or what is wrong with the form of this row (an open quote, text after a closing
    /// quote, a carriage return in a field).
    const QString &trouble() const { return m_trouble; }
    qsizetype octetsLeft() const { return m_end - m_at; } ///< that are not read yet

private:
    enum class RowEnd
    {
        Unknown,
        Feed, ///< with a carriage return before it, or two
        Return,
    };

    bool endsLine() const;
    bool isBeforeFeed() const;
    bool endsRow() const;
    bool readField();
    void readBare();
    void readQuoted();

    const char *m_at;
    const char *m_end;
    char m_separator;
    int m_line = 1;
    int m_rowLine = 0;
    RowEnd m_rowEnd = RowEnd::Unknown; ///< of the first row
    std::vector<std::string_view> m_fields;
    std::vector<std::unique_ptr<std::string>> m_unquoted; ///< texts of quoted fields of this row
    std::size_t m_unquotedUsed = 0;
    QString m_trouble;
};

/// Which columns a file must and may have. In `optional`, "dn_#" allows dn_1 to dn_8.
struct CsvLayout
{
    QStringList required;
    QStringList optional;
    QStringList ignored; ///< unknown columns that the user let pass by name

    bool knows(const QString &column) const;
};

struct CsvRow
{
    int line = 0;
    QStringList fields; ///< as many as the header, unless `trouble` says otherwise
    QString trouble;    ///< what is wrong with the form of the row; empty if nothing is
};

struct CsvTable
{
    QStringList header; ///< in our names; of a file that is read by a map, empty where ignored
    std::vector<CsvRow> rows;
    QStringList theirs = {};           ///< the header as it stands in the file
    std::optional<ColumnMap> map = {}; ///< by which the file is read

    /// Position of a column, -1 if the file does not have it.
    int column(const QString &name) const { return int(header.indexOf(name)); }
    /// The trimmed value of a column in a row, empty if the file does not have the column.
    QString value(const CsvRow &row, const QString &name) const;
    /// What the file calls a column; our name if it does not have it.
    QString nameInFile(const QString &column) const;
};

/// Reads a whole file. BadInput if it is not UTF-8, empty, lacks a required column, has one
/// twice, or has an unknown one. A row of the wrong form is returned with its trouble. `map`: the
/// columns and values are somebody else's.
Result<CsvTable> readCsv(const QByteArray &bytes, const QString &fileName, const CsvLayout &layout,
                         const std::optional<ColumnMap> &map = {});
/// Checks a header alone.
Result<void> checkCsvHeader(const QStringList &header, const QString &fileName,
                            const CsvLayout &layout);
/// BadInput naming the first line that is not UTF-8.
Result<void> checkUtf8(QByteArrayView bytes, const QString &fileName);

/// One RFC 4180 record, ended by CR LF.
QByteArray csvRecord(const QStringList &fields);
/// Puts an apostrophe before a text that a spreadsheet would take for a formula (=, +, -, @, tab,
/// CR at the front), and leaves plain numbers alone.
QString spreadsheetSafe(const QString &text);

} // namespace loopwright
