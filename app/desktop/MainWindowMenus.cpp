// The menus of the window.
#include "app/desktop/GlossaryDialog.h"
#include "app/desktop/Language.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/RunTeller.h"
#include "app/desktop/ShortcutsDialog.h"
#include "app/desktop/UndoNotice.h"
#include "app/desktop/WhoWorks.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>

namespace loopwright {

namespace {

struct LookName
{
    Look look;
    const char *name;
};
constexpr LookName lookNames[] = {
    {Look::Light, QT_TRANSLATE_NOOP("MainWindow", "&Light")},
    {Look::Dark, QT_TRANSLATE_NOOP("MainWindow", "&Dark")},
    {Look::HighContrast, QT_TRANSLATE_NOOP("MainWindow", "High &contrast")}};

} // namespace

QAction *MainWindow::addAction(QMenu *menu, const QString &name, const QString &text,
                               const QKeySequence &key, std::function<void()> run)
{
    QAction *action = menu->addAction(text);
    action->setObjectName("action." + name);
    action->setShortcut(key);
    connect(action, &QAction::triggered, this, std::move(run));
    return action;
}

void MainWindow::makeRecordsMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&Records"));
    addAction(menu, QStringLiteral("new_order"), tr("&New order"),
              QKeySequence(Qt::CTRL | Qt::Key_N), [this] { editOrder({}); });
    addAction(menu, QStringLiteral("import"), tr("&Import a file"),
              QKeySequence(Qt::CTRL | Qt::Key_I), [this] { showScreen(QStringLiteral("import")); });
    addAction(menu, QStringLiteral("who"), tr("&Who works"), QKeySequence(Qt::CTRL | Qt::Key_W),
              [this] { m_who->showMenu(); });
    menu->addAction(m_undo->action());
    menu->addSeparator();
    addAction(menu, QStringLiteral("quit"), tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q),
              [this] { close(); });
}

void MainWindow::makeGoMenu(std::span<const ScreenEntry> screens)
{
    QMenu *menu = menuBar()->addMenu(tr("&Go"));
    int place = 0;
    for (const ScreenEntry &entry : screens) {
        const QString key = QString::fromLatin1(entry.key);
        if (entry.under)
            continue;
        const int digit = ++place % 10; // the tenth by 0, further ones by menu and rail alone
        addAction(menu, "go." + key, tr(entry.name),
                  place > 10 ? QKeySequence() : QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_0 + digit)),
                  [this, key] { showScreen(key); });
    }
    menu->addSeparator();
    addAction(menu, QStringLiteral("back"), tr("&Back; between board and job"),
              QKeySequence(Qt::Key_Escape), [this] { goBack(); });
    addAction(menu, QStringLiteral("run"), tr("&Run that is over or goes on"),
              QKeySequence(Qt::Key_F8), [this] { openRun(m_runs->toOpen()); });
    QAction *search = addAction(menu, QStringLiteral("search"), tr("&Search"), {}, [this] {
        if (!current()->startSearch()) {
            showScreen(QStringLiteral("board"));
            current()->startSearch();
        }
    });
    search->setShortcuts({QKeySequence(Qt::CTRL | Qt::Key_F), QKeySequence(Qt::Key_Slash)});
}

void MainWindow::makeViewAndHelpMenus()
{
    QMenu *menu = menuBar()->addMenu(tr("&View"));
    addAction(menu, QStringLiteral("refresh"), tr("&Read anew"), QKeySequence(Qt::Key_F5), [this] {
        current()->refresh();
        say(tr("Read anew."));
    });
    menu->addSeparator();
    auto *looks = new QActionGroup(this);
    for (const LookName &row : lookNames) {
        QAction *action = addAction(menu, "look." + toText(row.look), tr(row.name), {},
                                    [this, look = row.look] { emit lookChosen(look); });
        action->setCheckable(true);
        looks->addAction(action);
    }
    menu->addSeparator();
    auto *sizes = new QActionGroup(this);
    for (const int percent : offeredSizes) {
        QAction *action =
            addAction(menu, QStringLiteral("size.%1").arg(percent), tr("Size %1 %").arg(percent),
                      {}, [this, percent] { emit sizeChosen(percent); });
        action->setCheckable(true);
        sizes->addAction(action);
    }
    menu->addSeparator();
    auto *tongues = new QActionGroup(this);
    for (const Language &language : languages()) {
        const QString code = QString::fromLatin1(language.code);
        QAction *action = addAction(menu, "language." + code, QString::fromUtf8(language.ownName),
                                    {}, [this, code] { emit languageChosen(code); });
        action->setCheckable(true);
        tongues->addAction(action);
    }
    QMenu *help = menuBar()->addMenu(tr("&Help"));
    addAction(help, QStringLiteral("keys"), tr("&Keys"), QKeySequence(Qt::Key_F1),
              [this] { showKeys(this); });
    addAction(help, QStringLiteral("glossary"), tr("&Glossary"), {},
              [this] { showGlossary(this); });
}

void MainWindow::markTheme(Look look, int percent)
{
    if (auto *action = findChild<QAction *>("action.look." + toText(look)))
        action->setChecked(true);
    if (auto *action = findChild<QAction *>(QStringLiteral("action.size.%1").arg(percent)))
        action->setChecked(true);
}

void MainWindow::markLanguage(const QString &code)
{
    if (auto *action = findChild<QAction *>("action.language." + code))
        action->setChecked(true);
}

} // namespace loopwright
