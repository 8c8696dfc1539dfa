#pragma once
// Orders of the board go along with a van: which van, into which file; which of them go, which stay
// and why.

#include "app/actions/TakeAlong.h"
#include "app/actions/VanDesk.h"
#include "app/desktop/vans/VanDialog.h"
#include "core/acceptance/BoardRow.h"

class QCheckBox;
class QComboBox;
class QPushButton;

namespace loopwright {

class AddVanEntry;
class FileChoice;

class TakeAlongDialog : public VanDialog
{
    Q_OBJECT
public:
    TakeAlongDialog(DesktopContext &workplace, std::vector<BoardRow> rows, QWidget *window);

protected:
    void confirm() override;

private:
    QWidget *makeVan();
    void readVans(const QString &choose = {});
    void showBefore();
    void showReady();
    SignItem before(const BoardRow &row) const;
    bool goes(const BoardRow &row) const;
    bool isElsewhere(const BoardRow &row) const;
    QString suggestedFile() const;
    void showAfter(const Result<TakenAlong> &taken);
    void undo();
    void showUndone(const Result<QStringList> &back);

    std::vector<BoardRow> m_rows;
    QComboBox *m_van; ///< data: the tag
    AddVanEntry *m_add;
    FileChoice *m_file;
    QCheckBox *m_anyway;
    QPushButton *m_undo;
    QStringList m_taken; ///< that the van had not before
    QString m_station;   ///< with which they are
};

} // namespace loopwright
