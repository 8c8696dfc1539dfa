#pragma once
// The loops of a serving office: which carry basic rate, and what would mend the others. A click on
// a column's head sorts by it; Enter opens the order of a loop.

#include "app/actions/OfficeLoops.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QComboBox;
class QProgressBar;
class QPushButton;

namespace loopwright {

class EmptyState;
class SignLine;
class Table;
class TextTable;

class LoopsScreen : public Screen
{
    Q_OBJECT
public:
    explicit LoopsScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("loops"); }
    QString title() const override { return tr("Loops"); }
    /// Brings the offices; the loops of one are judged when it is asked for.
    void refresh() override;
    void takeFocus() override;
    void start();
    void saveAs(const QString &path);

private:
    struct Judged
    {
        std::vector<OfficeLoop> loops;
        OfficeLoopCount count;
    };
    void arrange();
    void connectAll();
    void setRunning(bool running);
    void showJudged(Result<Judged> judged);
    QString summaryOf(const OfficeLoopCount &count) const;
    void sortBy(int column);
    void showRows();
    void showChosen(int row);
    void save();

    Asker m_worker;
    std::vector<OfficeLoop> m_loops; ///< in the order of the table
    QString m_judged;                ///< the office whose loops these are
    int m_sortColumn = 1;
    bool m_descending = false;
    TextTable *m_model;
    QComboBox *m_office;
    QPushButton *m_start, *m_stop, *m_save;
    QProgressBar *m_progress;
    SignLine *m_summary;
    Table *m_table;
    SignLine *m_chosen; ///< why, and what would mend it, of the loop that is chosen
    EmptyState *m_empty;
};

} // namespace loopwright
