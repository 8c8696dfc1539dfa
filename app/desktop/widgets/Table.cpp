#include "app/desktop/widgets/Table.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/RowMenu.h"

#include <QAction>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QHeaderView>
#include <QJsonObject>
#include <QKeyEvent>
#include <QMenu>
#include <QMetaMethod>
#include <QScopedValueRollback>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace loopwright {

Table::Table(const QString &objectName, const QString &spoken, QWidget *parent)
    : QTableView(parent)
{
    setObjectName(objectName);
    setAccessibleName(spoken);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection); // to be copied
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    setAlternatingRowColors(true);
    setFrameShape(QFrame::NoFrame);
    setCornerButtonEnabled(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setStretchLastSection(true);
    horizontalHeader()->setHighlightSections(false);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this,
            [this](int column, int, int width) { keepWidth(column, width); });
    connect(horizontalHeader(), &QHeaderView::sectionMoved, this, &Table::columnsChanged);
    connect(this, &QTableView::doubleClicked, this, &Table::opened);
    addCopyKey(this, [this] { copyRows(); });
    horizontalHeader()->setResizeContentsPrecision(0); // what a column asks for: of rows in view
    m_measuring.setSingleShot(true);
    connect(&m_measuring, &QTimer::timeout, this, &Table::measure);
    whenThemed(this, [this] { fit(); });
}

void Table::setColumnEms(std::vector<double> ems)
{
    m_ems = std::move(ems);
    fit();
}

void Table::setModel(QAbstractItemModel *model)
{
    {
        const QScopedValueRollback fitting(m_fitting, true); // nobody drew its columns to a width
        if (this->model())
            disconnect(this->model(), nullptr, &m_measuring, nullptr);
        QTableView::setModel(model);
    }
    const auto later = [this] { m_measuring.start(0); };
    if (model) {
        connect(model, &QAbstractItemModel::modelReset, &m_measuring, later);
        connect(model, &QAbstractItemModel::rowsInserted, &m_measuring, later);
    }
    fit();
}

/// Where the last column stands that is shown; it takes what is left.
int Table::lastShown() const
{
    const QHeaderView *header = horizontalHeader();
    for (int place = header->count() - 1; place >= 0; --place)
        if (!header->isSectionHidden(header->logicalIndex(place)))
            return header->logicalIndex(place);
    return -1;
}

void Table::keepWidth(int column, int width)
{
    if (m_fitting || width == 0 || column == lastShown() || std::size_t(column) >= m_ems.size())
        return;
    m_ems[std::size_t(column)] = width / double(em(100)) * 100;
    m_byHand.insert(column);
    emit columnsChanged();
}

QJsonArray Table::columns() const
{
    QJsonArray list;
    const QHeaderView *header = horizontalHeader();
    for (int place = 0; place < header->count(); ++place) {
        const int column = header->logicalIndex(place);
        list << QJsonObject{
            {"key", model()->headerData(column, Qt::Horizontal, Qt::UserRole).toString()},
            {"ems", m_ems[std::size_t(column)]},
            {"shown", !header->isSectionHidden(column)}};
    }
    return list;
}

void Table::setColumns(const QJsonArray &columns)
{
    QHeaderView *header = horizontalHeader();
    int place = 0;
    for (const QJsonValue &each : columns) {
        const QString key = each["key"].toString();
        for (int column = 0; column < header->count(); ++column) {
            if (model()->headerData(column, Qt::Horizontal, Qt::UserRole).toString() != key)
                continue;
            header->moveSection(header->visualIndex(column), place++);
            header->setSectionHidden(column, !each["shown"].toBool(true));
            double &ems = m_ems[std::size_t(column)];
            const double wanted = std::clamp(each["ems"].toDouble(ems), 2.0, 100.0);
            if (std::abs(wanted - ems) > 0.01)
                m_byHand.insert(column);
            ems = wanted;
        }
    }
    fit();
    emit columnsChanged();
}

void Table::showColumn(int column, bool shown)
{
    horizontalHeader()->setSectionHidden(column, !shown);
    fit();
    emit columnsChanged();
}

int Table::firstInView() const
{
    return rowAt(0);
}

void Table::bringToTop(int row)
{
    doItemsLayout(); // the range of the scroll bar follows the rows
    verticalScrollBar()->setValue(row);
}

void Table::fit()
{
    const QScopedValueRollback fitting(m_fitting, true);
    verticalHeader()->setDefaultSectionSize(em(1.95));
    horizontalHeader()->setFont(sized(0.9, QFont::DemiBold));
    setIconSize({em(1), em(1)});
    m_wanted.clear();
    spread();
    measure();
    m_measuring.start(0); // again when the rows are laid out
}

/// What the rows in view ask for, however many there are.
void Table::measure()
{
    if (!isVisible() || !model() || horizontalHeader()->sectionsMovable())
        return;
    const int most = em(40);
    const int columns = std::min(int(m_ems.size()), horizontalHeader()->count());
    for (int column = 0; column < columns; ++column)
        if (!isColumnHidden(column))
            m_wanted[column] =
                std::max(m_wanted[column], std::min(sizeHintForColumn(column) + em(0.2), most));
    spread();
}

/// In em, or what its heading needs; as it was drawn by hand.
int Table::leastWidth(int column) const
{
    const bool free = column < horizontalHeader()->count() && !m_byHand.contains(column);
    const int heading = free ? horizontalHeader()->sectionSizeHint(column) : 0;
    return std::max(em(m_ems[std::size_t(column)]), heading);
}

/// The room to spare, to the columns that lack any: the least lack first, so that as many as can be
/// are whole.
std::map<int, int> Table::extraWidths() const
{
    int room = viewport()->width();
    std::vector<std::pair<int, int>> lacking;
    const int columns = std::min(int(m_ems.size()), horizontalHeader()->count());
    for (int column = 0; column < columns; ++column) {
        if (isColumnHidden(column))
            continue;
        const int least = leastWidth(column);
        room -= least;
        if (const auto wanted = m_wanted.find(column);
            wanted != m_wanted.end() && wanted->second > least && !m_byHand.contains(column))
            lacking.emplace_back(wanted->second - least, column);
    }
    std::ranges::sort(lacking);
    std::map<int, int> extra;
    for (std::size_t i = 0; i < lacking.size() && room > 0; ++i) {
        const int given = std::min(lacking[i].first, room / int(lacking.size() - i));
        extra[lacking[i].second] = given;
        room -= given;
    }
    return extra;
}

void Table::spread()
{
    const QScopedValueRollback fitting(m_fitting, true);
    std::map<int, int> extra = extraWidths();
    for (int column = 0; column < int(m_ems.size()); ++column)
        setColumnWidth(column, leastWidth(column) + extra[column]);
    fitLast();
}

/// It takes what is left, but never less than its heading needs.
void Table::fitLast()
{
    const int last = lastShown();
    if (last < 0)
        return;
    const QScopedValueRollback fitting(m_fitting, true);
    QHeaderView *header = horizontalHeader();
    int left = viewport()->width();
    for (int column = 0; column < header->count(); ++column)
        if (column != last && !header->isSectionHidden(column))
            left -= header->sectionSize(column);
    const int needed = header->sectionSizeHint(last);
    header->setStretchLastSection(left >= needed);
    if (left < needed)
        header->resizeSection(last, needed);
}

void Table::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    spread();
    m_measuring.start(0); // more rows may be in view
}

void Table::showEvent(QShowEvent *event)
{
    QTableView::showEvent(event);
    m_measuring.start(0);
}

void Table::keyboardSearch(const QString &text)
{
    if (isSignalConnected(QMetaMethod::fromSignal(&Table::typed)))
        emit typed(text);
    else
        QTableView::keyboardSearch(text);
}

void Table::keyPressEvent(QKeyEvent *event)
{
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
        currentIndex().isValid()) {
        emit opened(currentIndex());
        return;
    }
    QTableView::keyPressEvent(event);
}

void Table::selectAll()
{
    if (isSignalConnected(QMetaMethod::fromSignal(&Table::allWanted)))
        emit allWanted();
    else
        QTableView::selectAll();
}

void Table::setCellText(std::function<QString(int row, int column)> text)
{
    m_cellText = std::move(text);
}

/// On one line and without tabs: those part the cells.
QString Table::cellText(int row, int column) const
{
    return (m_cellText ? m_cellText(row, column)
                       : model()->index(row, column).data(Qt::DisplayRole).toString())
        .simplified();
}

void Table::copyCell(const QModelIndex &index) const
{
    if (index.isValid())
        QGuiApplication::clipboard()->setText(cellText(index.row(), index.column()));
}

void Table::copyRows() const
{
    QList<int> rows;
    for (const QItemSelectionRange &range : selectionModel()->selection())
        for (int row = range.top(); row <= range.bottom(); ++row)
            rows << row;
    std::ranges::sort(rows);
    rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
    const QHeaderView *header = horizontalHeader();
    QStringList lines;
    for (const int row : std::as_const(rows)) {
        QStringList cells;
        for (int place = 0; place < header->count(); ++place)
            if (const int column = header->logicalIndex(place); !header->isSectionHidden(column))
                cells << cellText(row, column);
        lines << cells.join(u'\t');
    }
    if (!lines.isEmpty())
        QGuiApplication::clipboard()->setText(lines.join(u'\n') + u'\n');
}

void Table::addCopying(QMenu *menu, std::function<QModelIndex()> at) const
{
    QAction *cell = menu->addAction(tr("&Copy the cell"));
    cell->setObjectName(QStringLiteral("copy.cell"));
    connect(cell, &QAction::triggered, this, [this, at = std::move(at)] { copyCell(at()); });
    QAction *rows = menu->addAction(tr("Copy the ro&ws   Ctrl+C"));
    rows->setObjectName(QStringLiteral("copy.rows"));
    connect(rows, &QAction::triggered, this, &Table::copyRows);
}

QModelIndex Table::menuIndex(QPoint at) const
{
    const QModelIndex under = indexAt(at);
    return under.isValid() ? under : currentIndex();
}

void Table::contextMenuEvent(QContextMenuEvent *event)
{
    const QPersistentModelIndex at = rowOfMenu(*this, *event);
    if (!at.isValid())
        return;
    QMenu *menu = makeRowMenu(this);
    if (isSignalConnected(QMetaMethod::fromSignal(&Table::opened))) {
        QAction *open = menu->addAction(tr("&Open   Enter"));
        open->setObjectName(QStringLiteral("open"));
        connect(open, &QAction::triggered, this, [this, at] { emit opened(at); });
        menu->addSeparator();
    }
    addCopying(menu, [at] { return QModelIndex(at); });
    showRowMenu(menu, *this, *event, at);
}

} // namespace loopwright
