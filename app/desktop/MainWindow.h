#pragma once
// The window: a rail of screens on the left, the shown screen beside it, one status line. It knows
// no screen by type; it only carries their wishes from one to the next.

#include "app/desktop/Screens.h"
#include "app/desktop/Theme.h"

#include <QLabel>
#include <QMainWindow>
#include <QMap>
#include <QStackedWidget>

class QMenu;

namespace loopwright {

class Sidebar;
class RunTeller;
class UndoNotice;
class BundleWatch;
class VanMenu;
class WhoWorks;

class MainWindow : public QMainWindow
{
    Q_OBJECT
public:
    explicit MainWindow(DesktopContext &workplace,
                        std::span<const ScreenEntry> screens = allScreens(),
                        QWidget *parent = nullptr);

    /// Null where no screen has that key.
    Screen *screen(const QString &key) const { return m_screens.value(key); }
    Screen *current() const;
    /// Where one is: the screen, what each of them shows, size and place of the window.
    QJsonObject place() const;
    /// Goes back there, inside the screen that there is now.
    void restore(const QJsonObject &place);
    /// Ticks the entries of the menu that are in force.
    void markTheme(LookChoice look, int percent);
    void markLanguage(const QString &code);
    void markPaper(const QString &code);
    /// Whether these records are opened when the program starts.
    void markAtStart(bool atStart) { m_isAtStart = atStart; }
    /// Keeps what is typed, to close or to open others. False where it can be kept nowhere, once.
    bool settle();

public slots:
    void showScreen(const QString &key, const QString &subject = {});
    void openOrder(const QString &number) { showScreen(QStringLiteral("job"), number); }
    void openCircuit(const QString &circuit) { showScreen(QStringLiteral("circuit"), circuit); }
    /// The order form; an empty number is a new order.
    void editOrder(const QString &number);
    void say(const QString &sentence);
    /// Asks whether these bundles shall be taken in.
    void takeIn(const QStringList &bundles);
    /// The run of that order on its job page.
    void openRun(const QString &order);
    /// Back to where one came from; from the board to the last job. First what the screen has
    /// to let go of.
    void goBack();

signals:
    void lookChosen(loopwright::LookChoice look);
    void sizeChosen(int percent);
    void languageChosen(const QString &code);
    void paperChosen(const QString &code); ///< "country" or a code of Paper
    /// `atStart`: and whenever the program starts.
    void recordsWished(const QString &path, bool atStart);
    void atStartChosen(bool atStart); ///< of the records that are open
    void placeChanged();              ///< place() is another one
    void demoReady(const QString &path);

protected:
    void closeEvent(QCloseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void moveEvent(QMoveEvent *event) override;
    void changeEvent(QEvent *event) override;
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void keepInsideScreen();
    void addScreens(std::span<const ScreenEntry> screens);
    void connectScreen(Screen *screen);
    void makeRecordsMenu();
    void makeGoMenu(std::span<const ScreenEntry> screens);
    void makeViewMenu();
    void makeVanMenu();
    void makeHelpMenu(std::span<const ScreenEntry> screens);
    QMenu *addSubmenu(QMenu *menu, const QString &name, const QString &text);
    void addChoice(QMenu *menu, const QString &name, const QString &text,
                   std::function<void()> choose);
    void openOtherRecords();
    void openServer();
    void showSettings();
    void fillRecent(QMenu *menu);
    void remember(const QString &order);
    void makeStatusLine();
    QAction *addAction(QMenu *menu, const QString &name, const QString &text,
                       const QKeySequence &key, std::function<void()> run);
    void recordsChangedBy(Screen *screen);
    void showTitle();

    DesktopContext &m_workplace;
    Sidebar *m_rail = nullptr;
    QStackedWidget *m_pages = nullptr;
    QLabel *m_said = nullptr;
    bool m_isAtStart = false;
    WhoWorks *m_who = nullptr;
    RunTeller *m_runs = nullptr;
    UndoNotice *m_undo = nullptr;
    BundleWatch *m_bundles = nullptr;
    VanMenu *m_vans = nullptr;
    QMap<QString, Screen *> m_screens;
    QMap<QString, int> m_pageOf;    ///< its place in m_pages
    QMap<QString, QString> m_under; ///< screens that are not on the rail: whose button is marked
    bool m_losesDrafts = false;     ///< whoever closes it once more was told
    QStringList m_trail;            ///< keys of the screens that were shown before
    QStringList m_recent;           ///< orders whose jobs were opened, the last one first
};

} // namespace loopwright
