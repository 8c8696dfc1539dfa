#pragma once
// What can be done with the orders that are selected on the board: a row of buttons, a menu and
// keys. All orders or none, as one step that can be taken back.

#include "app/desktop/Lanes.h"
#include "app/desktop/OutAgain.h"
#include "app/desktop/screens/RowDeed.h"

#include <QWidget>

class QAction;
class QKeySequence;
class QLabel;
class QMenu;
class QPrinter;

namespace loopwright {

class AskDialog;
class DesktopContext;
class SignLine;
struct DeedRow;

class RowActions : public QWidget
{
    Q_OBJECT
public:
    /// The keys work in `screen`.
    RowActions(DesktopContext &workplace, QWidget *screen);

    /// The selected orders; hidden if there is none. `first`: they are all that were read so far,
    /// and there are more.
    void setRows(std::vector<BoardRow> rows, bool first = false);
    const std::vector<BoardRow> &rows() const { return m_rows; }
    QMenu *menu() const { return m_menu; }
    /// Prints the papers that these values of the dialog ask for, beside the window's thread.
    void printOn(const std::shared_ptr<QPrinter> &printer, const DeedGround &ground,
                 const QJsonObject &values, AskDialog *dialog = nullptr);

signals:
    void done(const loopwright::DoneStep &step);
    void said(const QString &sentence);
    void recordsChanged();

private:
    QAction *addEntry(const QString &key, const QString &text, const QKeySequence &shortcut,
                      std::function<void()> run);
    void addVanEntries();
    void takeAlong();
    void settle();
    void begin(const DeedRow &row);
    void open(const DeedRow &row, const DeedGround &ground);
    void keepList(AskDialog *dialog, const DeedList &list);
    void print(const DeedGround &ground, AskDialog *dialog);
    DeedGround ground() const;
    void carryOut(const Deed &deed, const QJsonObject &values, AskDialog *dialog);
    void showDone(const Deed &deed, const QJsonObject &values, const DeedReport &report);
    /// `asked`: what was to be done, to know it when it is asked for again.
    void refuse(const Error &error, AskDialog *dialog, const QString &asked = {});

    DesktopContext &m_workplace;
    QWidget *m_screen;
    Asker m_asker;
    Asker m_looker; ///< of what a deed asks with
    std::vector<BoardRow> m_rows;
    QMenu *m_menu;
    QAction *m_settle = nullptr; ///< on where stations disagree about one of them
    QAction *m_cancel = nullptr; ///< on where one of them is open
    QLabel *m_count;
    QLayout *m_buttons;
    SignLine *m_told;
    OutAgain m_outAgain;
};

} // namespace loopwright
