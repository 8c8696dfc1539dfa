#pragma once
// The rows of a file of errors per second, whatever separates its columns: the first of tab,
// semicolon and comma that stands in the first row, else blanks.

#include <QByteArrayView>
#include <QStringList>

namespace loopwright {

/// Comments and blank lines are passed over.
class SecondsRows
{
public:
    explicit SecondsRows(QByteArrayView bytes)
        : m_rest(bytes)
        , m_lineEnd(bytes.contains('\n') ? '\n' : '\r') // as terminals log what a port sends
    {
    }

    bool next();                      ///< false at the end
    int row() const { return m_row; } ///< line of the file, from 1
    const QStringList &fields() const { return m_fields; }
    /// Empty, or what is wrong with the form of the row.
    const QString &trouble() const { return m_trouble; }

private:
    void split(QByteArrayView line);
    void splitAtBlanks(QByteArrayView line);

    QByteArrayView m_rest;
    char m_lineEnd;
    int m_row = 0;
    char m_separator = 0; ///< 0: not known yet
    QStringList m_fields;
    QString m_trouble;
};

} // namespace loopwright
