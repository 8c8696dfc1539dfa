#pragma once
// A screen is one page of the window: a QWidget with a key, a title, and a way to read the records
// anew. Screens never speak to each other; what they want from the window they say by signal. A new
// screen is one file pair and one line in Screens.cpp.

#include "app/desktop/DesktopContext.h"
#include "app/desktop/DoneStep.h"

#include <QJsonObject>
#include <QWidget>

namespace loopwright {

class Screen : public QWidget
{
    Q_OBJECT
public:
    explicit Screen(DesktopContext &workplace, QWidget *parent = nullptr)
        : QWidget(parent)
        , m_workplace(workplace)
    {
    }

    /// Stable name, e.g. "board"; also the object name of the page ("screen.board").
    virtual QString key() const = 0;
    /// What the window is called while this screen is shown, e.g. "Job 4711".
    virtual QString title() const = 0;
    /// Reads the records anew and keeps what is typed and selected. Called each time the screen is
    /// shown, by F5, and after another screen changed the records. Must not block.
    virtual void refresh() = 0;
    /// Shows the order, or the circuit, of that number; for screens that show one at a time.
    virtual void open(const QString &number) { Q_UNUSED(number) }
    /// Puts the keyboard at a part of what is shown, e.g. "run"; nothing where it has none.
    virtual void showPart(const QString &part) { Q_UNUSED(part) }
    /// Puts the keyboard where the work begins. Called when the screen is shown.
    virtual void takeFocus() { setFocus(); }
    /// Ctrl+F, and "/" where no text is being typed. False where there is nothing to search.
    virtual bool startSearch() { return false; }
    /// Esc: lets go of what was searched or chosen last. False where there is nothing to let go of;
    /// then it goes back.
    virtual bool letGo() { return false; }
    /// What is remembered of it between starts: what it shows, what is searched for there.
    virtual QJsonObject place() const { return {}; }
    /// Goes back there; what is no longer there is passed over. Called before the window is shown.
    virtual void restore(const QJsonObject &place) { Q_UNUSED(place) }

signals:
    void openOrder(const QString &number);    ///< show this job
    void openCircuit(const QString &circuit); ///< show this circuit with its history
    /// Show the screen of that key, with that order or circuit where it shows one at a time.
    void openScreen(const QString &key, const QString &subject);
    void editOrder(const QString &number); ///< the order form; empty: a new order
    void recordsChanged();                 ///< something was written
    void titleChanged();
    void placeChanged();                             ///< place() is another one
    void runChanged();                               ///< a run was started, stopped or keyed to
    void stepDone(const loopwright::DoneStep &step); ///< to be told, with the way back
    void serverWished();                             ///< which records of a server are opened
    void demoReady(const QString &path);             ///< open the demo's records there
    void said(const QString &sentence); ///< for the status line; nothing that must be answered

protected:
    DesktopContext &workplace() const { return m_workplace; }
    Records &records() const { return m_workplace.records(); }

private:
    DesktopContext &m_workplace;
};

} // namespace loopwright
