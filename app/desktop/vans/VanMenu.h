#pragma once
// The entries of the menu "Vans", and the dialogs behind them.

#include "app/desktop/Lanes.h"

class QAction;
class QMenu;

namespace loopwright {

class BundleWatch;
class DesktopContext;

class VanMenu : public QObject
{
    Q_OBJECT
public:
    VanMenu(DesktopContext &workplace, QMenu *menu, BundleWatch &watch, QWidget *window);

    /// The files of bundles, which a person dropped or chose.
    void takeIn(const QStringList &paths);
    /// What can be done depends on whether the records are those of a van.
    void refresh();

signals:
    void said(const QString &sentence);
    void recordsChanged();

private:
    QAction *add(QMenu *menu, const char *name, const QString &text, std::function<void()> run);
    void addFolders(QMenu *menu);
    void fillFolders(QMenu *menu);
    void chooseFolder();
    void chooseBundles();
    void bringBack();
    void settle();
    void writeKey();

    DesktopContext &m_workplace;
    BundleWatch &m_watch;
    QWidget *m_window;
    Asker m_asker;
    QAction *m_bring;
};

} // namespace loopwright
