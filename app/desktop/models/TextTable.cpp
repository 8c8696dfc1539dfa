#include "app/desktop/models/TextTable.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

namespace loopwright {

TextTable::TextTable(QStringList header, int signColumn, std::set<int> digitColumns,
                     QObject *parent)
    : QAbstractTableModel(parent)
    , m_header(std::move(header))
    , m_signColumn(signColumn)
    , m_digitColumns(std::move(digitColumns))
{
}

void TextTable::show(std::vector<TextRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int TextTable::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int TextTable::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_header.size());
}

QVariant TextTable::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const TextRow &row = m_rows[std::size_t(index.row())];
    const QString text = row.cells.value(index.column());
    switch (role) {
    case Qt::DisplayRole:
        return text;
    case Qt::ToolTipRole:
        return asTip(text);
    case Qt::AccessibleTextRole:
        return text.isEmpty() ? tr("%1: none").arg(m_header.value(index.column())) : text;
    case Qt::DecorationRole:
        if (index.column() == m_signColumn && row.sign != Status::None)
            return glyphIcon(shapeOf(row.sign), colourOf(row.sign), colours().base);
        return {};
    case Qt::FontRole:
        return m_digitColumns.contains(index.column()) ? QVariant(digitsFont(0.96)) : QVariant();
    case Qt::ForegroundRole:
        return row.quiet ? QVariant(colours().muted) : QVariant();
    case BarRole:
        return row.bar;
    default:
        return {};
    }
}

QVariant TextTable::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::DisplayRole)
        return m_header.value(section);
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

} // namespace loopwright
