#include "app/desktop/ShortcutsDialog.h"

#include "app/desktop/Theme.h"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>

namespace loopwright {

namespace {

struct KeyRow
{
    const char *keys;
    const char *does;
};
constexpr KeyRow keyRows[] = {
    {"Ctrl+1 … Ctrl+9, Ctrl+0",
     QT_TRANSLATE_NOOP("Keys", "The first ten screens of the rail, from the top")},
    {"Esc", QT_TRANSLATE_NOOP("Keys", "On the board: let go of the rows, the search, the filters")},
    {"Shift or Ctrl+arrows, Ctrl+A",
     QT_TRANSLATE_NOOP("Keys", "On the board: select several rows")},
    {"Ctrl+T, Ctrl+D", QT_TRANSLATE_NOOP("Keys", "The selected orders: assign, another day")},
    {"Ctrl+H, Ctrl+Shift+H", QT_TRANSLATE_NOOP("Keys", "The selected orders: hold, resume")},
    {"Ctrl+K, Ctrl+P", QT_TRANSLATE_NOOP("Keys", "The selected orders: desk work, print")},
    {"Ctrl+C", QT_TRANSLATE_NOOP("Keys", "In a table: copy the selected rows")},
    {"Ctrl+P", QT_TRANSLATE_NOOP("Keys", "Print the page, card or certificate at hand")},
    {"Ctrl+Shift+E", QT_TRANSLATE_NOOP("Keys", "On the board: export what it shows")},
    {"Ctrl+Z", QT_TRANSLATE_NOOP("Keys", "Take back what was planned or changed last")},
    {"Esc", QT_TRANSLATE_NOOP("Keys", "Back; between the board and the last job")},
    {"Ctrl+F  or  /", QT_TRANSLATE_NOOP("Keys", "Find by any number or name")},
    {"Enter", QT_TRANSLATE_NOOP("Keys", "Open the selected job")},
    {"F2", QT_TRANSLATE_NOOP("Keys", "In a job: to the entry of the next step")},
    {"Shift+F1", QT_TRANSLATE_NOOP("Keys", "In a job: what the part is for, and when it fails")},
    {"F7", QT_TRANSLATE_NOOP("Keys", "In a job: to the next line at the same premises")},
    {"F8", QT_TRANSLATE_NOOP("Keys", "To the run that is over, or goes on")},
    {"Ctrl+N", QT_TRANSLATE_NOOP("Keys", "A new order")},
    {"Ctrl+I", QT_TRANSLATE_NOOP("Keys", "Import a file")},
    {"Ctrl+R", QT_TRANSLATE_NOOP("Keys", "Take the repair that is offered at a field")},
    {"F5", QT_TRANSLATE_NOOP("Keys", "Read the records anew")},
    {"F1", QT_TRANSLATE_NOOP("Keys", "This list")},
};

} // namespace

void showKeys(QWidget *parent)
{
    auto *dialog = new QDialog(parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setObjectName(QStringLiteral("keys"));
    dialog->setWindowTitle(QCoreApplication::translate("Keys", "Keys"));
    auto *layout = new QGridLayout(dialog);
    layout->setHorizontalSpacing(em(2));
    int row = 0;
    for (const KeyRow &entry : keyRows) {
        auto *keys = new QLabel(QString::fromUtf8(entry.keys));
        keys->setFont(sized(1, QFont::DemiBold));
        layout->addWidget(keys, row, 0);
        layout->addWidget(new QLabel(QCoreApplication::translate("Keys", entry.does)), row++, 1);
    }
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    layout->addWidget(buttons, row, 0, 1, 2);
    dialog->open();
}

} // namespace loopwright
