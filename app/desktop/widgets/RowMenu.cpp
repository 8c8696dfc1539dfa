#include "app/desktop/widgets/RowMenu.h"

#include "app/desktop/Keys.h"

#include <QContextMenuEvent>
#include <QCoreApplication>
#include <QMenu>

namespace loopwright {

namespace {

bool isByMouse(const QContextMenuEvent &event)
{
    return event.reason() == QContextMenuEvent::Mouse;
}

} // namespace

void addCopyKey(QAbstractItemView *view, std::function<void()> copy)
{
    addKey(view,
           {QStringLiteral("copy.key"),
            QCoreApplication::translate("Table", "Copy the rows"),
            {QKeySequence::Copy},
            QCoreApplication::translate("Table", "In a table or list")},
           std::move(copy));
}

QModelIndex rowOfMenu(const QAbstractItemView &view, const QContextMenuEvent &event)
{
    return isByMouse(event) ? view.indexAt(event.pos()) : view.currentIndex();
}

QMenu *makeRowMenu(QAbstractItemView *view)
{
    auto *menu = new QMenu(view);
    menu->setObjectName(view->objectName() + ".menu");
    menu->setAttribute(Qt::WA_DeleteOnClose);
    return menu;
}

void showRowMenu(QMenu *menu, const QAbstractItemView &view, const QContextMenuEvent &event,
                 const QModelIndex &row)
{
    menu->popup(isByMouse(event) ? event.globalPos()
                                 : view.viewport()->mapToGlobal(view.visualRect(row).bottomLeft()));
}

} // namespace loopwright
