#include "app/desktop/models/BoardModel.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <algorithm>

namespace loopwright {

namespace {

Status outcomeSignOf(const BoardRow &row)
{
    if (row.status == OrderStatus::Cancelled)
        return Status::NotNeeded;
    if (row.hazard)
        return Status::Failed;
    return row.held ? Status::Doubtful : outcomeSign(row.outcome);
}

bool isFinished(const BoardRow &row)
{
    return row.stage == Stage::Done || row.status != OrderStatus::Open;
}

const int orderColumn = boardColumn(u"order"), dueColumn = boardColumn(u"due"),
          customerColumn = boardColumn(u"customer"), whyColumn = boardColumn(u"why"),
          outcomeColumn = boardColumn(u"outcome"), circuitColumn = boardColumn(u"circuit"),
          pairColumn = boardColumn(u"pair");

} // namespace

BoardModel::BoardModel(QObject *parent)
    : QAbstractTableModel(parent)
{
    m_marking.setSingleShot(true);
    m_marking.setInterval(boardMarkMs);
    connect(&m_marking, &QTimer::timeout, this, &BoardModel::unmark);
    m_asking.setSingleShot(true);
    m_asking.setInterval(0);
    connect(&m_asking, &QTimer::timeout, this, &BoardModel::askForPages);
}

/// Whether the same orders stand there already: then selection and place are kept.
bool BoardModel::holds(int first, const std::vector<BoardRow> &rows) const
{
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const int place = first + int(i);
        if (!isHere(place) || row(place).order != rows[i].order)
            return false;
    }
    return true;
}

void BoardModel::show(std::vector<BoardRow> rows, QDate today, Mark mark, int first, int atLeast)
{
    m_today = today;
    if (mark == Mark::Changes)
        markChanges(first, rows);
    const int count = int(rows.size());
    const int total = std::max(first + count, atLeast);
    const bool refreshes = count > 0 && total == m_total && holds(first, rows);
    if (!refreshes)
        beginResetModel();
    m_pages.clear();
    m_seen.clear();
    m_wanted.clear();
    m_asked.clear();
    m_total = total;
    keep(first, std::move(rows));
    if (refreshes)
        changed(0, m_total); // what is not here is blank until it is read again
    else
        endResetModel();
}

/// Cuts rows that begin a page into pages.
void BoardModel::keep(int first, std::vector<BoardRow> rows)
{
    for (std::size_t from = 0; from < rows.size(); from += boardRowsAtOnce) {
        const int page = first / boardRowsAtOnce + int(from / boardRowsAtOnce);
        const std::size_t to = std::min(rows.size(), from + boardRowsAtOnce);
        m_pages[page] = {std::make_move_iterator(rows.begin() + std::ptrdiff_t(from)),
                         std::make_move_iterator(rows.begin() + std::ptrdiff_t(to))};
        std::erase(m_seen, page);
        m_seen.push_back(page);
    }
    while (m_seen.size() > boardPagesHeld) {
        m_pages.erase(m_seen.front());
        m_seen.pop_front();
    }
}

void BoardModel::put(int first, std::vector<BoardRow> rows)
{
    const int count = int(rows.size());
    m_asked.remove(first / boardRowsAtOnce);
    if (count < boardRowsAtOnce && first + count < m_total)
        setTotal(first + count); // fewer than were counted
    keep(first, std::move(rows));
    if (std::exchange(m_passedOver, false))
        changed(0, m_total); // what is in view now is wanted anew
    else
        changed(first, std::min(count, m_total - first));
}

void BoardModel::setTotal(int total)
{
    if (total > m_total) {
        beginInsertRows({}, m_total, total - 1);
        m_total = total;
        endInsertRows();
    } else if (total < m_total) {
        beginRemoveRows({}, total, m_total - 1);
        m_total = total;
        m_pages.erase(m_pages.lower_bound((total + boardRowsAtOnce - 1) / boardRowsAtOnce),
                      m_pages.end());
        endRemoveRows();
    }
}

void BoardModel::changed(int first, int count, const QList<int> &roles)
{
    if (count > 0)
        emit dataChanged(index(first, 0), index(first + count - 1, columnCount() - 1), roles);
}

void BoardModel::markChanges(int first, const std::vector<BoardRow> &rows)
{
    QHash<QString, const BoardRow *> before;
    for (const auto &[number, page] : m_pages)
        for (const BoardRow &row : page)
            before.insert(row.order, &row);
    // Where nothing was known everything would be new.
    for (std::size_t i = 0; i < rows.size(); ++i) {
        if (!m_pages.contains((first + int(i)) / boardRowsAtOnce))
            continue;
        const BoardRow *known = before.value(rows[i].order);
        if (!known || *known != rows[i])
            m_marked.insert(rows[i].order);
    }
    if (!m_marked.isEmpty())
        m_marking.start();
}

void BoardModel::unmark()
{
    m_marked.clear();
    changed(0, m_total, {Qt::BackgroundRole});
}

bool BoardModel::isHere(int row) const
{
    const auto page = m_pages.find(row / boardRowsAtOnce);
    return row >= 0 && page != m_pages.end() &&
           std::size_t(row % boardRowsAtOnce) < page->second.size();
}

std::vector<int> BoardModel::rowsHere(int first, int last) const
{
    std::vector<int> rows;
    for (const auto &[number, page] : m_pages) {
        const int begin = number * boardRowsAtOnce;
        const int end = std::min(last + 1, begin + int(page.size()));
        for (int row = std::max(first, begin); row < end; ++row)
            rows.push_back(row);
    }
    return rows;
}

const BoardRow &BoardModel::row(int row) const
{
    static const BoardRow blank;
    const int number = row / boardRowsAtOnce;
    if (!isHere(row)) {
        want(number);
        return blank;
    }
    if (!m_seen.empty() && m_seen.back() != number) {
        std::erase(m_seen, number);
        m_seen.push_back(number);
    }
    return m_pages.at(number)[std::size_t(row % boardRowsAtOnce)];
}

void BoardModel::want(int page) const
{
    if (m_asked.contains(page))
        return;
    m_wanted.insert(page);
    if (!m_asking.isActive())
        m_asking.start();
}

/// Those that were wanted last, as many as are held: who drags the bar passes over the others.
void BoardModel::askForPages()
{
    const QSet<int> wanted = std::exchange(m_wanted, {});
    for (const int page : wanted) {
        if (m_asked.size() >= boardPagesHeld / 2) {
            m_passedOver = true;
            break;
        }
        m_asked.insert(page);
        emit pageWanted(page * boardRowsAtOnce);
    }
}

int BoardModel::rowOf(const QString &order) const
{
    for (const auto &[number, page] : m_pages) {
        const auto found = std::ranges::find(page, order, &BoardRow::order);
        if (found != page.end())
            return number * boardRowsAtOnce + int(found - page.begin());
    }
    return -1;
}

int BoardModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : m_total;
}

int BoardModel::columnCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(boardColumns().size());
}

QString BoardModel::text(const BoardRow &row, int column) const
{
    return boardColumns()[std::size_t(column)].text(row, m_today);
}

QString BoardModel::spoken(const BoardRow &row, int column) const
{
    QString said = text(row, column);
    if (column == dueColumn && row.isAtRisk(m_today))
        said += tr(", at risk");
    if (column == orderColumn) {
        const QString found = foundText(row.foundIn);
        said = (QStringList{said} + stationLines(row.out, row.conflicts, m_today) +
                (found.isEmpty() ? QStringList() : QStringList(found)))
                   .join(QStringLiteral(", "));
    }
    return said.isEmpty() ? tr("%1: none").arg(tr(boardColumns()[std::size_t(column)].name)) : said;
}

QString BoardModel::tip(const BoardRow &row, int column) const
{
    if (column == dueColumn) {
        QStringList lines;
        if (row.isAtRisk(m_today))
            lines << tr("At risk: due within two working days, and not accepted. %1")
                         .arg(localizedSentence(row.reason));
        if (row.promised.isValid() && row.promised != row.due)
            lines << tr("First promised for %1.").arg(dayText(row.promised, m_today));
        return lines.join(u'\n');
    }
    if (column == orderColumn)
        return stationLines(row.out, row.conflicts, m_today).join(u'\n');
    if (column == whyColumn)
        return text(row, whyColumn);
    return column == customerColumn ? row.customer + "\n" + row.premises : QString();
}

QVariant BoardModel::sign(const BoardRow &row, int column) const
{
    const bool judged = column == outcomeColumn || column == whyColumn;
    if (column == orderColumn && row.conflicts > 0)
        return glyphIcon(shapeOf(Status::Doubtful), colourOf(Status::Doubtful), colours().base);
    if (column == orderColumn && !row.out.empty())
        return glyphIcon(shapeOf(Status::Away), colourOf(Status::Away), colours().base);
    const bool risky = column == dueColumn && row.isAtRisk(m_today);
    if (!judged && !risky)
        return {};
    const bool stops = column == whyColumn && row.hazard; // that it is cancelled is its outcome
    const Status sign = risky ? Status::Doubtful : stops ? Status::Failed : outcomeSignOf(row);
    return glyphIcon(shapeOf(sign), colourOf(sign), colours().base);
}

QVariant BoardModel::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= m_total)
        return {};
    const BoardRow &row = this->row(index.row());
    if (row.order.isEmpty()) // its page has not come
        return {};
    switch (role) {
    case Qt::DisplayRole:
        return text(row, index.column());
    case Qt::AccessibleTextRole:
        return spoken(row, index.column());
    case Qt::ToolTipRole: {
        QStringList lines{tip(row, index.column()), foundText(row.foundIn)};
        lines.removeAll(QString());
        return asTip(lines.join(u'\n'));
    }
    case Qt::DecorationRole:
        return sign(row, index.column());
    case Qt::FontRole:
        if (index.column() == orderColumn || index.column() == circuitColumn ||
            index.column() == pairColumn)
            return digitsFont(0.96);
        if (index.column() == dueColumn && row.isLate(m_today))
            return sized(1, QFont::DemiBold);
        return {};
    case Qt::BackgroundRole:
        return m_marked.contains(row.order) ? QVariant(colours().doubtfulGround) : QVariant();
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
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount())
        return {};
    if (role == Qt::DisplayRole)
        return tr(boardColumns()[std::size_t(section)].name);
    if (role == Qt::UserRole)
        return QString::fromLatin1(boardColumns()[std::size_t(section)].key);
    if (role == Qt::TextAlignmentRole)
        return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

} // namespace loopwright
