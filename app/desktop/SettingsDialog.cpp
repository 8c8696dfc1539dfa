#include "app/desktop/SettingsDialog.h"

#include "app/desktop/Keys.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDir>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QMenu>
#include <QScrollArea>

namespace loopwright {

SettingsDialog::SettingsDialog(const std::vector<SettingsRow> &rows, const SettingsRecords &records,
                               QWidget *window)
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
    addRecords(grid, records);
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

void SettingsDialog::addRecords(QGridLayout *grid, const SettingsRecords &records)
{
    QLabel *path = makeText(QDir::toNativeSeparators(records.path));
    path->setObjectName(QStringLiteral("settings.records"));
    path->setAccessibleName(tr("Records %1").arg(records.path));
    auto *atStart = new QCheckBox(tr("Open these records at every start"));
    atStart->setObjectName(QStringLiteral("settings.at_start"));
    atStart->setChecked(records.atStart);
    connect(atStart, &QCheckBox::toggled, this, &SettingsDialog::atStartChosen);
    const int place = grid->rowCount();
    grid->addWidget(new QLabel(tr("Records")), place, 0, Qt::AlignTop);
    grid->addWidget(path, place, 1);
    grid->addWidget(atStart, place + 1, 1);
    auto *buttons = new QHBoxLayout;
    for (QAction *each : records.others) {
        QPushButton *button = makeButton(
            each->text(), "settings." + each->objectName().section('.', 1), [this, each] {
                accept();
                each->trigger();
            });
        button->setAutoDefault(false);
        buttons->addWidget(button);
    }
    buttons->addStretch(1);
    grid->addLayout(buttons, place + 2, 1);
}

} // namespace loopwright
