#include "app/desktop/screens/BoardMenus.h"

#include "app/desktop/models/BoardModel.h"
#include "app/desktop/widgets/Table.h"

#include <QHeaderView>
#include <QMenu>

namespace loopwright {

namespace {

QAction *addColumn(QMenu *menu, const QString &prefix, int column)
{
    const BoardColumn &row = boardColumns()[std::size_t(column)];
    QAction *action = menu->addAction(BoardModel::tr(row.name));
    action->setObjectName(prefix + QString::fromLatin1(row.key));
    action->setCheckable(true);
    return action;
}

} // namespace

QMenu *makeColumnsMenu(Table *table, QWidget *parent)
{
    auto *menu = new QMenu(QMenu::tr("C&olumns"), parent);
    menu->setObjectName(QStringLiteral("columns.menu"));
    QObject::connect(menu, &QMenu::aboutToShow, table, [menu, table] {
        menu->clear();
        const QHeaderView *header = table->horizontalHeader();
        for (int place = 0; place < header->count(); ++place) {
            const int column = header->logicalIndex(place);
            QAction *action = addColumn(menu, QStringLiteral("column."), column);
            const bool shown = !header->isSectionHidden(column);
            action->setChecked(shown);
            action->setEnabled(!shown || header->hiddenSectionCount() + 1 < header->count());
            QObject::connect(action, &QAction::toggled, table,
                             [table, column](bool on) { table->showColumn(column, on); });
        }
    });
    return menu;
}

QMenu *makeSortMenu(std::function<SortChoice()> now, std::function<void(int column)> sortBy,
                    QWidget *parent)
{
    auto *menu = new QMenu(QMenu::tr("&Sort by"), parent);
    menu->setObjectName(QStringLiteral("sort.menu"));
    QObject::connect(menu, &QMenu::aboutToShow, parent,
                     [menu, now = std::move(now), sortBy = std::move(sortBy)] {
                         menu->clear();
                         const SortChoice choice = now();
                         for (int column = 0; column < int(boardColumns().size()); ++column) {
                             QAction *action = addColumn(menu, QStringLiteral("sort."), column);
                             action->setChecked(column == choice.column);
                             if (column == choice.column)
                                 action->setText(
                                     choice.descending
                                         ? QMenu::tr("%1, downwards").arg(action->text())
                                         : QMenu::tr("%1, upwards").arg(action->text()));
                             QObject::connect(action, &QAction::triggered, menu,
                                              [sortBy, column] { sortBy(column); });
                         }
                     });
    return menu;
}

} // namespace loopwright
