#include "app/desktop/SettingsDialog.h"

#include "app/desktop/Keys.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QAction>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QGridLayout>
#include <QMenu>
#include <QScrollArea>

namespace loopwright {

SettingsDialog::SettingsDialog(const std::vector<SettingsRow> &rows, const QString &databasePath,
                               QAction *openOther, QWidget *window)
    : QDialog(window)
{
    setObjectName(QStringLiteral("settings"));
    setWindowTitle(tr("Settings"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *sheet = new QWidget;
    auto *grid = new QGridLayout(sheet);
    grid->setColumnStretch(1, 1);
    for (const SettingsRow &row : rows)
        addRow(grid, row);
    addRecords(grid, databasePath, openOther);
    grid->setRowStretch(grid->rowCount(), 1);
    QDialogButtonBox *buttons = makeCloseButtons(this);
    auto *column = new QVBoxLayout(this);
    column->addWidget(inScrollArea(sheet), 1);
    column->addWidget(buttons);
    whenThemed(this, [this, grid, window] {
        grid->setHorizontalSpacing(em(1.2));
        grid->setVerticalSpacing(em(0.3));
        resize(sizeWithin(*window, 40, 36));
    });
}

void SettingsDialog::addRow(QGridLayout *grid, const SettingsRow &row)
{
    auto *list = new QComboBox;
    list->setObjectName("settings." + row.name);
    list->setAccessibleName(actionName(row.label));
    list->setAccessibleDescription(row.sentence);
    fill(list, row.menu);
    auto *label = new QLabel(row.label);
    label->setBuddy(list);
    const int place = grid->rowCount();
    grid->addWidget(label, place, 0);
    grid->addWidget(list, place, 1);
    if (!row.sentence.isEmpty())
        grid->addWidget(makeMuted(row.sentence), place + 1, 1);
    connect(list, &QComboBox::activated, this, [this, list, menu = row.menu](int chosen) {
        if (auto *action = list->itemData(chosen).value<QPointer<QAction>>().data())
            action->trigger();
        fill(list, menu); // what was refused, or is called otherwise now
    });
}

void SettingsDialog::fill(QComboBox *list, QMenu *menu)
{
    emit menu->aboutToShow(); // some are filled then
    list->clear();
    bool possible = false;
    int ticked = -1;
    for (QAction *action : menu->actions()) {
        if (action->isChecked())
            ticked = list->count();
        possible = possible || action->isEnabled();
        list->addItem(actionName(action->text()), QVariant::fromValue(QPointer<QAction>(action)));
    }
    list->setEnabled(possible);
    list->setCurrentIndex(possible ? ticked : 0);
}

void SettingsDialog::addRecords(QGridLayout *grid, const QString &databasePath, QAction *openOther)
{
    QLabel *path = makeText(QDir::toNativeSeparators(databasePath));
    path->setObjectName(QStringLiteral("settings.records"));
    path->setAccessibleName(tr("Records %1").arg(databasePath));
    QPushButton *other = makeButton(openOther->text(), QStringLiteral("settings.open"), [=, this] {
        accept();
        openOther->trigger();
    });
    other->setAutoDefault(false);
    const int place = grid->rowCount();
    grid->addWidget(new QLabel(tr("Records")), place, 0, Qt::AlignTop);
    grid->addWidget(path, place, 1);
    grid->addWidget(other, place + 1, 1, Qt::AlignLeft);
}

} // namespace loopwright
