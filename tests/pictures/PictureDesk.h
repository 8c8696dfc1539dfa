#pragma once
// The window on records of its own, and what is needed to bring it into a state and take pictures
// of that: each waits until nothing in it changes any more.

#include "app/desktop/DesktopContext.h"
#include "app/desktop/MainWindow.h"

#include <functional>

class QMenu;

namespace loopwright {

/// What the pictures of one run have in common.
struct Sight
{
    QString language;
    Look look = Look::Light;
    int percent = 100;

    /// "de-dark-200"
    QString name() const;
    /// Of the window: the size of an ordinary laptop, and what is asked for at twice the size.
    QSize size() const { return percent < 150 ? QSize(1366, 768) : QSize(1920, 1080); }
};

class PictureDesk
{
public:
    /// The window on these records, by the demo's person on the demo's day.
    PictureDesk(const QString &records, Sight sight, QString folder);
    ~PictureDesk();

    MainWindow &window() { return *m_window; }
    const QString &records() const { return m_path; }
    /// From now on pictures are called so, and a part of it.
    void begin(const QString &scene) { m_scene = scene; }
    int taken() const { return m_taken; }
    /// Those that are another than the one of their name that was there.
    const QStringList &changed() const { return m_changed; }
    /// Figures with a decimal point that were seen in a language that has another mark.
    const QStringList &englishFiguresSeen() const { return m_english; }

    /// The control of that name; it must be there, for a scene that shows nothing is no scene.
    template<class Widget>
    Widget *find(const QString &name)
    {
        auto *found = m_window->findChild<Widget *>(name);
        if (!found)
            qFatal("%s: there is no %s", qPrintable(m_scene), qPrintable(name));
        return found;
    }
    void click(const QString &button);
    void trigger(const QString &action);
    void selectRows(const QString &table, int count);

    /// A picture of the window as it is.
    void take(const QString &part = {});
    void takeOf(QWidget &widget, const QString &part = {});
    /// All of the page that is shown, also what has to be scrolled to.
    void takeWhole(const QString &part);
    /// Of the dialog that `open` opens, however it waits; it is closed again.
    void takeDialog(const QString &part, const std::function<void()> &open);
    void takeMenu(const QString &part, QMenu *menu);
    /// Each of its tabs.
    void takeTabs(const QString &tabs);
    /// Until two pictures of it are the same.
    static void settle(QWidget &widget);

private:
    void readFigures(QWidget &widget, const QString &part);

    QString m_path;
    Sight m_sight;
    QString m_folder, m_scene;
    int m_taken = 0;
    QStringList m_changed, m_english;
    std::unique_ptr<DesktopContext> m_workplace;
    std::unique_ptr<MainWindow> m_window;
};

/// One state of the window, or several that follow from each other.
struct Scene
{
    const char *name;
    bool onEmptyRecords;
    std::function<void(PictureDesk &)> show;
};
/// Every screen as it opens, then each with something done in it, then the dialogs and menus.
std::vector<Scene> allScenes();

/// The demo with a certificate and a handoff in it, at the path. The certificate's file lies
/// beside it.
void makePictureRecords(const QString &path);
QString certificateBeside(const QString &records);

} // namespace loopwright
