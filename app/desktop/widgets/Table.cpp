#include "app/desktop/widgets/Table.h"

#include "app/desktop/Theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMetaMethod>

namespace loopwright {

Table::Table(const QString &objectName, const QString &spoken, QWidget *parent)
    : QTableView(parent)
{
    setObjectName(objectName);
    setAccessibleName(spoken);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
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
    connect(this, &QTableView::doubleClicked, this, &Table::opened);
    whenThemed(this, [this] { fit(); });
}

void Table::setColumnEms(std::vector<double> ems)
{
    m_ems = std::move(ems);
    fit();
}

void Table::fit()
{
    for (std::size_t column = 0; column < m_ems.size(); ++column)
        setColumnWidth(int(column), em(m_ems[column]));
    verticalHeader()->setDefaultSectionSize(em(1.95));
    horizontalHeader()->setFont(sized(0.9, QFont::DemiBold));
    setIconSize({em(1), em(1)});
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

} // namespace loopwright
