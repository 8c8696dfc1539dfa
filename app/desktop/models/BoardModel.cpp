#include "app/desktop/models/BoardModel.h"

#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr const char *columnNames[BoardModel::ColumnCount] = {
    QT_TRANSLATE_NOOP("BoardModel", "Order"),
    QT_TRANSLATE_NOOP("BoardModel", "Due"),
    QT_TRANSLATE_NOOP("BoardModel", "Stage"),
    QT_TRANSLATE_NOOP("BoardModel", "Outcome"),
    QT_TRANSLATE_NOOP("BoardModel", "Circuit"),
    QT_TRANSLATE_NOOP("BoardModel", "Customer"),
    QT_TRANSLATE_NOOP("BoardModel", "Office"),
    QT_TRANSLATE_NOOP("BoardModel", "Installer"),
    QT_TRANSLATE_NOOP("BoardModel", "Why not accepted")};

bool isFinished(const BoardRow &row)
{
    return row.stage == loopwright::Stage::Done || row.status != OrderStatus::Open;
}

/// A cancelled order has no outcome to wait for; a held one is told apart from an open one.
QString outcomeText(const BoardRow &row)
{
    if (row.status == OrderStatus::Cancelled)
        return BoardModel::tr("Cancelled");
    if (row.hazard)
        return BoardModel::tr("Hazard");
    return row.held ? BoardModel::tr("Held") : outcomeName(row.outcome);
}

Status outcomeSignOf(const BoardRow &row)
{
    if (row.status == OrderStatus::Cancelled)
        return Status::NotNeeded;
    if (row.hazard)
        return Status::Failed;
    return row.held ? Status::Doubtful : outcomeSign(row.outcome);
}

} // namespace

BoardModel::BoardModel(QObject *parent)
    : QAbstractTableModel(parent)
{
}

void BoardModel::show(std::vector<BoardRow> rows, QDate today)
{
    m_asked = false;
    m_today = today;
    const auto same = [](const BoardRow &a, const BoardRow &b) { return a.order == b.order; };
    const bool grows = rows.size() > m_rows.size() && !m_rows.empty() &&
                       std::equal(m_rows.begin(), m_rows.end(), rows.begin(), same);
    const bool refreshes = rows.size() == m_rows.size() && !rows.empty() &&
                           std::equal(rows.begin(), rows.end(), m_rows.begin(), same);
    m_total = std::max(m_total, int(rows.size()));
    if (refreshes) { // keeps selection and place
        m_rows = std::move(rows);
        emit dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    } else if (grows) {
        beginInsertRows({}, int(m_rows.size()), int(rows.size()) - 1);
        m_rows = std::move(rows);
        endInsertRows();
    } else {
        beginResetModel();
        m_rows = std::move(rows);
        endResetModel();
    }
}

int BoardModel::rowOf(const QString &order) const
{
    const auto found =
        std::ranges::find_if(m_rows, [&](const BoardRow &row) { return row.order == order; });
    return found == m_rows.end() ? -1 : int(found - m_rows.begin());
}

int BoardModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

int BoardModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : ColumnCount;
}

QString BoardModel::text(const BoardRow &row, int column) const
{
    switch (column) {
    case Order:
        return row.order;
    case Due: {
        const QString words = dueWords(row.due, m_today, isFinished(row));
        const QString day = dayText(row.due, m_today);
        return words.isEmpty() ? day : day + " · " + words;
    }
    case Stage:
        return stageName(row.stage);
    case Outcome:
        return outcomeText(row);
    case Circuit:
        return row.circuit;
    case Customer:
        return row.customer;
    case Office:
        return row.office;
    case Installer:
        return row.installer;
    case Reason:
        return row.reason;
    default:
        return {};
    }
}

QString BoardModel::spoken(const BoardRow &row, int column) const
{
    const QString said = text(row, column);
    return said.isEmpty() ? tr("%1: none").arg(tr(columnNames[column])) : said;
}

QVariant BoardModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= int(m_rows.size()))
        return {};
    const BoardRow &row = m_rows[std::size_t(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::AccessibleTextRole:
        return spoken(row, index.column());
    case Qt::ToolTipRole:
        return index.column() == Reason     ? row.reason
               : index.column() == Customer ? QString(row.customer + "\n" + row.premises)
                                            : QString();
    case Qt::DecorationRole:
        if (index.column() == Outcome) {
            const Status sign = outcomeSignOf(row);
            return glyphIcon(shapeOf(sign), colourOf(sign), colours().base);
        }
        return {};
    case Qt::FontRole:
        if (index.column() == Order || index.column() == Circuit)
            return digitsFont(0.96);
        if (index.column() == Due && row.due < m_today && !isFinished(row))
            return sized(1, QFont::DemiBold);
        return {};
    case Qt::ForegroundRole:
        if (isFinished(row))
            return colours().muted;
        return {};
    default:
        return {};
    }
}

QVariant BoardModel::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount)
        return {};
    if (role == Qt::DisplayRole)
        return tr(columnNames[section]);
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

bool BoardModel::canFetchMore(const QModelIndex &parent) const
{
    return !parent.isValid() && !m_asked && int(m_rows.size()) < m_total;
}

void BoardModel::fetchMore(const QModelIndex &parent)
{
    if (parent.isValid() || m_asked)
        return;
    m_asked = true;
    // Doubling keeps the number of times that the first rows are read again small.
    emit moreWanted(std::max(2 * int(m_rows.size()), boardRowsAtOnce));
}

} // namespace loopwright
