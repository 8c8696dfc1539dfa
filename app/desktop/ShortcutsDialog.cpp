#include "app/desktop/ShortcutsDialog.h"

#include "app/desktop/ActionCatalogue.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QMainWindow>
#include <QScrollArea>

#include <algorithm>

namespace loopwright {

namespace {

/// What lists and the clock of a run do by themselves.
struct OwnKey
{
    const char *where;
    const char *keys;
    const char *does;
};
constexpr const char *inLists = QT_TRANSLATE_NOOP("Keys", "In a table or list");
constexpr const char *onBoard = QT_TRANSLATE_NOOP("Keys", "Board");
constexpr const char *atClock = QT_TRANSLATE_NOOP("Keys", "While a run counts, at its clock");
constexpr OwnKey ownKeys[] = {
    {onBoard, QT_TRANSLATE_NOOP("Keys", "Esc"),
     QT_TRANSLATE_NOOP("Keys", "First lets go of the rows, the search, the filters")},
    {inLists, QT_TRANSLATE_NOOP("Keys", "Enter"), QT_TRANSLATE_NOOP("Keys", "Open the row")},
    {inLists, QT_TRANSLATE_NOOP("Keys", "Shift or Ctrl+arrows, Ctrl+A"),
     QT_TRANSLATE_NOOP("Keys", "Select several rows, or all")},
    {inLists, QT_TRANSLATE_NOOP("Keys", "Menu key"),
     QT_TRANSLATE_NOOP("Keys", "What can be done with the row")},
    {atClock, QT_TRANSLATE_NOOP("Keys", "1 … 9, E"),
     QT_TRANSLATE_NOOP("Keys", "So many bit errors, or one")},
    {atClock, QT_TRANSLATE_NOOP("Keys", "Backspace"),
     QT_TRANSLATE_NOOP("Keys", "Take the last one back")},
    {atClock, "S", QT_TRANSLATE_NOOP("Keys", "Pattern lost, or found again")},
    {atClock, "X", QT_TRANSLATE_NOOP("Keys", "Stop the run, or go on")},
};

QString keyText(const char *text)
{
    return QCoreApplication::translate("Keys", text);
}

std::vector<KeyGroup> allKeys(const QMainWindow &window, const QList<QWidget *> &screens)
{
    std::vector<KeyGroup> groups = keysOf(window, screens);
    for (const OwnKey &own : ownKeys)
        groupOf(groups, keyText(own.where)).rows.push_back({keyText(own.keys), keyText(own.does)});
    return groups;
}

QWidget *makeSheet(const std::vector<KeyGroup> &groups)
{
    auto *sheet = new QWidget;
    auto *grid = new QGridLayout(sheet);
    grid->setHorizontalSpacing(em(2));
    grid->setColumnStretch(1, 1);
    int row = 0;
    for (const KeyGroup &group : groups) {
        QLabel *head = makeHeading(group.where, 1.1);
        head->setContentsMargins(0, row > 0 ? em(0.8) : 0, 0, 0);
        grid->addWidget(head, row++, 0, 1, 2);
        for (const KeyRow &each : group.rows) {
            auto *keys = new QLabel(each.keys);
            keys->setTextFormat(Qt::PlainText);
            keys->setFont(sized(1, QFont::DemiBold));
            keys->setAlignment(Qt::AlignTop | Qt::AlignLeft);
            QLabel *does = makeText(each.does);
            does->setObjectName("keys." + each.keys);
            grid->addWidget(keys, row, 0);
            grid->addWidget(does, row++, 1);
        }
    }
    grid->setRowStretch(row, 1);
    return sheet;
}

} // namespace

void showKeys(QMainWindow *window, const QList<QWidget *> &screens)
{
    auto *dialog = new QDialog(window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setObjectName(QStringLiteral("keys"));
    dialog->setWindowTitle(keyText(QT_TRANSLATE_NOOP("Keys", "Keys")));
    auto *area = new QScrollArea;
    area->setObjectName(QStringLiteral("keys.area"));
    area->setAccessibleName(dialog->windowTitle());
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(makeSheet(allKeys(*window, screens)));
    QDialogButtonBox *buttons = makeCloseButtons(dialog);
    auto *layout = new QVBoxLayout(dialog);
    layout->addWidget(area, 1);
    layout->addWidget(buttons);
    dialog->resize(sizeWithin(*window, 50, 40));
    area->setFocus(); // the arrows scroll it
    dialog->open();
}

} // namespace loopwright
