#include "core/errortest/SecondsRows.h"

#include "core/base/Csv.h"

namespace loopwright {

bool SecondsRows::next()
{
    while (!m_rest.isEmpty()) {
        const auto end = m_rest.indexOf(m_lineEnd);
        const QByteArrayView line = (end < 0 ? m_rest : m_rest.first(end)).trimmed();
        m_rest = end < 0 ? QByteArrayView() : m_rest.sliced(end + 1);
        ++m_row;
        if (line.isEmpty() || line.startsWith('#'))
            continue;
        split(line);
        return true;
    }
    return false;
}

void SecondsRows::split(QByteArrayView line)
{
    if (m_separator == 0) {
        m_separator = ' ';
        for (const char candidate : {'\t', ';', ','})
            if (m_separator == ' ' && line.contains(candidate))
                m_separator = candidate;
    }
    m_fields.clear();
    m_trouble.clear();
    if (m_separator == ' ') {
        splitAtBlanks(line);
        return;
    }
    CsvScanner scanner(line, m_separator);
    scanner.next();
    m_trouble = scanner.trouble();
    for (const std::string_view field : scanner.fields())
        m_fields << QString::fromUtf8(field.data(), qsizetype(field.size())).trimmed();
}

void SecondsRows::splitAtBlanks(QByteArrayView line)
{
    m_fields = QString::fromUtf8(line).simplified().split(' ');
    // A blank between date and time, or between time and AM or PM, separates no columns.
    if (m_fields.size() > 1 && m_fields[0].size() >= 8 && !m_fields[0].contains(':') &&
        m_fields[1].contains(':')) {
        const QString time = m_fields.takeAt(1);
        m_fields[0] += ' ' + time;
    }
    if (m_fields.size() > 1 &&
        (m_fields[1].compare(QStringLiteral("AM"), Qt::CaseInsensitive) == 0 ||
         m_fields[1].compare(QStringLiteral("PM"), Qt::CaseInsensitive) == 0)) {
        const QString half = m_fields.takeAt(1);
        m_fields[0] += ' ' + half;
    }
}

} // namespace loopwright
