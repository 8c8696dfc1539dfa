// The menus of the window, and its status line.
#include "app/desktop/AboutDialog.h"
#include "app/desktop/ActionPalette.h"
#include "app/desktop/GlossaryDialog.h"
#include "app/desktop/Language.h"
#include "app/desktop/MainWindow.h"
#include "app/desktop/PrintDialogs.h"
#include "app/desktop/RunTeller.h"
#include "app/desktop/ServerDialog.h"
#include "app/desktop/SettingsDialog.h"
#include "app/desktop/ShortcutsDialog.h"
#include "app/desktop/UndoNotice.h"
#include "app/desktop/WhoWorks.h"
#include "app/desktop/vans/VanMenu.h"
#include "app/desktop/widgets/PageElements.h"

#include <QAction>
#include <QActionGroup>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QStatusBar>

namespace loopwright {

namespace {

struct LookName
{
    LookChoice look;
    const char *name;
};
constexpr qsizetype recentJobs = 9;
constexpr LookName lookNames[] = {
    {LookChoice::System, QT_TRANSLATE_NOOP("MainWindow", "As the &system")},
    {LookChoice::Light, QT_TRANSLATE_NOOP("MainWindow", "&Light")},
    {LookChoice::Dark, QT_TRANSLATE_NOOP("MainWindow", "&Dark")},
    {LookChoice::HighContrast, QT_TRANSLATE_NOOP("MainWindow", "High &contrast")}};

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

void MainWindow::makeStatusLine()
{
    m_said = new QLabel;
    m_said->setObjectName(QStringLiteral("said"));
    m_said->setTextFormat(Qt::PlainText);
    auto *where = new QLabel;
    where->setObjectName(QStringLiteral("records"));
    where->setTextFormat(Qt::PlainText);
    where->setForegroundRole(QPalette::PlaceholderText);
    where->setText(QFileInfo(m_workplace.databasePath()).fileName());
    where->setAccessibleName(tr("Records %1").arg(m_workplace.databasePath()));
    m_who = new WhoWorks(m_workplace);
    connect(m_who, &WhoWorks::changed, this, [this](const QString &name) {
        say(tr("%1 works from now on.").arg(name));
        recordsChangedBy(nullptr);
    });
    m_workplace.setPinDialog([this](const Person &person) { return askForPin(person, this); });
    where->setToolTip(asTip(m_workplace.databasePath()));
    statusBar()->setSizeGripEnabled(false);
    statusBar()->addWidget(m_said, 1);
    statusBar()->addPermanentWidget(where);
    statusBar()->addPermanentWidget(m_who);
    whenThemed(where, [this] { statusBar()->setContentsMargins(em(0.8), 0, em(0.8), 0); });
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
    addAction(menu, QStringLiteral("open"), tr("&Open other records…"),
              QKeySequence(Qt::CTRL | Qt::Key_O), [this] { openOtherRecords(); });
    addAction(menu, QStringLiteral("open_server"), tr("Records on a ser&ver…"), {},
              [this] { openServer(); });
    addAction(menu, QStringLiteral("settings"), tr("&Settings…"),
              QKeySequence(Qt::CTRL | Qt::Key_Comma), [this] { showSettings(); });
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
    QMenu *recent = menu->addMenu(tr("&Last jobs"));
    recent->setObjectName(QStringLiteral("recent"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(recent); });
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
    addAction(menu, QStringLiteral("find_action"), tr("&Find an action…"),
              QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P),
              [this] { findAction(this, current()); });
}

void MainWindow::fillRecent(QMenu *menu)
{
    menu->clear();
    for (const QString &order : std::as_const(m_recent))
        addAction(menu, "recent." + order, tr("Job %1").arg(QString(order).replace("&", "&&")), {},
                  [this, order] { openOrder(order); });
    if (m_recent.isEmpty())
        menu->addAction(tr("No job was opened yet"))->setEnabled(false);
}

void MainWindow::remember(const QString &order)
{
    m_recent.removeAll(order);
    m_recent.prepend(order);
    m_recent = m_recent.mid(0, recentJobs);
}

void MainWindow::makeViewMenu()
{
    QMenu *menu = menuBar()->addMenu(tr("&View"));
    addAction(menu, QStringLiteral("refresh"), tr("&Read anew"), QKeySequence(Qt::Key_F5), [this] {
        current()->refresh();
        say(tr("Read anew."));
    });
    menu->addSeparator();
    QMenu *looks = addSubmenu(menu, QStringLiteral("look"), tr("&Look"));
    for (const LookName &row : lookNames)
        addChoice(looks, "look." + toText(row.look), tr(row.name),
                  [this, look = row.look] { emit lookChosen(look); });
    QMenu *sizes = addSubmenu(menu, QStringLiteral("size"), tr("&Size"));
    for (const int percent : offeredSizes)
        addChoice(sizes, QStringLiteral("size.%1").arg(percent), tr("Size %1 %").arg(percent),
                  [this, percent] { emit sizeChosen(percent); });
    QMenu *tongues = addSubmenu(menu, QStringLiteral("language"), tr("L&anguage"));
    for (const Language &language : languages()) {
        const QString code = QString::fromLatin1(language.code);
        addChoice(tongues, "language." + code, QString::fromUtf8(language.ownName),
                  [this, code] { emit languageChosen(code); });
    }
    QMenu *papers = addSubmenu(menu, QStringLiteral("paper"), tr("&Paper"));
    for (const auto &[code, name] :
         {std::pair(QStringLiteral("country"), tr("As in this &country")),
          std::pair(toText(Paper::A4), tr("&A4")), std::pair(toText(Paper::Letter), tr("&Letter"))})
        addChoice(papers, "paper." + code, name, [this, code = code] { emit paperChosen(code); });
}

void MainWindow::makeVanMenu()
{
    m_vans = new VanMenu(m_workplace, menuBar()->addMenu(tr("Va&ns")), *m_bundles, this);
    connect(m_vans, &VanMenu::said, this, &MainWindow::say);
    connect(m_vans, &VanMenu::recordsChanged, this, [this] { recordsChangedBy(nullptr); });
}

QMenu *MainWindow::addSubmenu(QMenu *menu, const QString &name, const QString &text)
{
    QMenu *further = menu->addMenu(text);
    further->setObjectName("menu." + name);
    new QActionGroup(further); // of its entries one is in force
    return further;
}

void MainWindow::addChoice(QMenu *menu, const QString &name, const QString &text,
                           std::function<void()> choose)
{
    QAction *action = addAction(menu, name, text, {}, std::move(choose));
    action->setCheckable(true);
    menu->findChild<QActionGroup *>()->addAction(action);
}

void MainWindow::openOtherRecords()
{
    const QString chosen = QFileDialog::getOpenFileName(
        this, tr("Open other records"),
        m_workplace.records().isOnServer() ? QDir::homePath()
                                           : QFileInfo(m_workplace.databasePath()).absolutePath(),
        tr("Records (*.sqlite);;All files (*)"));
    if (!chosen.isEmpty())
        emit recordsWished(chosen, false);
}

void MainWindow::openServer()
{
    auto *dialog = new ServerDialog(m_workplace.address(), this);
    connect(dialog, &ServerDialog::wished, this, &MainWindow::recordsWished);
    dialog->open();
}

void MainWindow::showSettings()
{
    const auto row = [this](const char *name, const QString &label, const QString &sentence = {}) {
        const QString key = QString::fromLatin1(name);
        return SettingsRow{key, label, findChild<QMenu *>("menu." + key), sentence};
    };
    const std::vector<SettingsRow> rows{
        row("language", tr("L&anguage"), tr("Holds from the next start on.")),
        row("look", tr("&Look")),
        row("size", tr("&Size")),
        row("paper", tr("&Paper"), tr("Of certificates, cards, lists and reports.")),
        row("bundle_folder", tr("&Watched folder"),
            tr("Bundles that come into it are told below the page; nothing is taken in unasked.")),
        {QStringLiteral("who"), tr("&Who works"), m_who->menu(),
         tr("Goes into the history of what is done here.")}};
    auto *dialog = new SettingsDialog(
        rows,
        {m_workplace.databasePath(),
         m_isAtStart,
         {findChild<QAction *>("action.open"), findChild<QAction *>("action.open_server")}},
        this);
    connect(dialog, &SettingsDialog::atStartChosen, this, [this](bool atStart) {
        m_isAtStart = atStart;
        emit atStartChosen(atStart);
    });
    dialog->open();
}

void MainWindow::makeHelpMenu(std::span<const ScreenEntry> screens)
{
    QMenu *menu = menuBar()->addMenu(tr("&Help"));
    QStringList order;
    for (const ScreenEntry &entry : screens)
        order << QString::fromLatin1(entry.key);
    addAction(menu, QStringLiteral("keys"), tr("&Keys"), QKeySequence(Qt::Key_F1), [this, order] {
        QList<QWidget *> pages;
        for (const QString &key : order)
            pages << screen(key);
        showKeys(this, pages);
    });
    addAction(menu, QStringLiteral("glossary"), tr("&Glossary"), {},
              [this] { showGlossary(this); });
    addAction(menu, QStringLiteral("about"), tr("&About Loopwright"), {},
              [this] { showAbout(this, m_workplace.databasePath()); });
}

void MainWindow::markTheme(LookChoice look, int percent)
{
    if (auto *action = findChild<QAction *>("action.look." + toText(look)))
        action->setChecked(true);
    if (auto *action = findChild<QAction *>(QStringLiteral("action.size.%1").arg(percent)))
        action->setChecked(true);
}

void MainWindow::markPaper(const QString &code)
{
    if (auto *action = findChild<QAction *>("action.paper." + code))
        action->setChecked(true);
}

void MainWindow::markLanguage(const QString &code)
{
    if (auto *action = findChild<QAction *>("action.language." + code))
        action->setChecked(true);
}

} // namespace loopwright
