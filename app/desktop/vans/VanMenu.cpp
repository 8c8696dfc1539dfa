#include "app/desktop/vans/VanMenu.h"

#include "app/actions/Keys.h"
#include "app/actions/OutFile.h"
#include "app/actions/VanDesk.h"
#include "app/desktop/DesktopContext.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/vans/BringBackDialog.h"
#include "app/desktop/vans/BundleWatch.h"
#include "app/desktop/vans/ConflictsDialog.h"
#include "app/desktop/vans/TakeInDialog.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QMenu>

namespace loopwright {

VanMenu::VanMenu(DesktopContext &workplace, QMenu *menu, BundleWatch &watch, QWidget *window)
    : QObject(window)
    , m_workplace(workplace)
    , m_watch(watch)
    , m_window(window)
    , m_asker(workplace.longWork())
{
    add(menu, "take_in", tr("&Take in a bundle…"), [this] {
        chooseBundles();
    })->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I));
    m_bring = add(menu, "bring_back", tr("&Bring back…"), [this] { bringBack(); });
    m_bring->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_B));
    setWhyOff(m_bring, tr("These records are no van's: nothing of an office was taken in here."));
    addFolders(menu);
    menu->addSeparator();
    add(menu, "settle", tr("&Settle between stations…"), [this] { settle(); });
    menu->addSeparator();
    add(menu, "station_key", tr("&Key of this station…"), [this] { writeKey(); });
    connect(menu, &QMenu::aboutToShow, this, &VanMenu::refresh);
    refresh();
    connect(&watch, &BundleWatch::takeInWished, this, &VanMenu::takeIn);
    connect(&watch, &BundleWatch::troubled, this, &VanMenu::said);
    connect(this, &VanMenu::recordsChanged, &watch, &BundleWatch::look);
}

QAction *VanMenu::add(QMenu *menu, const char *name, const QString &text, std::function<void()> run)
{
    QAction *action = menu->addAction(text);
    action->setObjectName(QLatin1String("action.") + QLatin1String(name));
    connect(action, &QAction::triggered, this, std::move(run));
    return action;
}

void VanMenu::addFolders(QMenu *menu)
{
    QMenu *folders = menu->addMenu(tr("&Watched folder"));
    folders->setObjectName(QStringLiteral("menu.bundle_folder"));
    connect(folders, &QMenu::aboutToShow, this, [this, folders] { fillFolders(folders); });
    fillFolders(folders);
}

void VanMenu::fillFolders(QMenu *menu)
{
    menu->clear();
    const auto choice = [&](const char *name, const QString &text, bool inForce,
                            std::function<void()> run) {
        QAction *action = add(menu, name, text, std::move(run));
        action->setCheckable(true);
        action->setChecked(inForce);
    };
    const QString folder = m_watch.folder();
    choice("watch.none", tr("&None"), folder.isEmpty(), [this] { m_watch.watch({}); });
    if (!folder.isEmpty())
        choice("watch.folder", QDir::toNativeSeparators(folder).replace('&', "&&"), true,
               [this] { m_watch.look(); });
    choice("watch.choose", tr("&Choose…"), false, [this] { chooseFolder(); });
}

void VanMenu::chooseFolder()
{
    const QString begin = m_watch.folder().isEmpty() ? QDir::homePath() : m_watch.folder();
    const QString chosen =
        QFileDialog::getExistingDirectory(m_window, tr("Folder in which bundles come"), begin);
    if (chosen.isEmpty())
        return;
    m_watch.watch(chosen);
    emit said(tr("Bundles that come into %1 are told here.").arg(QDir::toNativeSeparators(chosen)));
}

void VanMenu::refresh()
{
    const auto desk = vanDesk(m_workplace.records());
    m_bring->setEnabled(desk && desk->isVan);
}

void VanMenu::chooseBundles()
{
    const QStringList chosen = QFileDialog::getOpenFileNames(
        m_window, tr("Take in a bundle"), QDir::homePath(), tr("Bundles (*.json);;All files (*)"));
    if (!chosen.isEmpty())
        takeIn(chosen);
}

void VanMenu::takeIn(const QStringList &paths)
{
    auto *dialog = new TakeInDialog(m_workplace, paths, m_window);
    connect(dialog, &VanDialog::recordsChanged, this, &VanMenu::recordsChanged);
    connect(dialog, &TakeInDialog::settleWished, this, &VanMenu::settle);
    dialog->open();
}

void VanMenu::bringBack()
{
    auto *dialog = new BringBackDialog(m_workplace, m_window);
    connect(dialog, &VanDialog::recordsChanged, this, &VanMenu::recordsChanged);
    dialog->open();
}

void VanMenu::settle()
{
    connect(showConflicts(m_workplace, {}, m_window), &ConflictsDialog::recordsChanged, this,
            &VanMenu::recordsChanged);
}

void VanMenu::writeKey()
{
    const QString path = QFileDialog::getSaveFileName(
        m_window, tr("Key of this station"), QDir::home().filePath(QStringLiteral("key.txt")),
        tr("Keys (*.txt)"));
    if (path.isEmpty())
        return;
    m_asker.ask<QString>(
        [path](Records &records, const Progress &) -> Result<QString> {
            LOOPWRIGHT_TRY(checkOut(path, FileKind::PublicKeys));
            LOOPWRIGHT_ASSIGN(const auto lines, publicKeyFile(records));
            LOOPWRIGHT_TRY(writeOut(path, FileKind::PublicKeys, lines));
            return path;
        },
        [this](const Result<QString> &written) {
            emit said(written ? tr("The key is in %1; the office adds the van by it.").arg(*written)
                              : localized(written.error()));
        });
}

} // namespace loopwright
