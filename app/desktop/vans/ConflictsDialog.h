#pragma once
// What stations say otherwise of orders: both sides, one of which a person chooses, with a reason.

#include "app/actions/StationConflicts.h"
#include "app/desktop/Lanes.h"

#include <QDialog>

class QButtonGroup;
class QCheckBox;
class QFrame;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace loopwright {

class DesktopContext;
class SignLine;
class SignList;

class ConflictsDialog : public QDialog
{
    Q_OBJECT
public:
    /// `order`: of this one alone; empty: of all.
    ConflictsDialog(DesktopContext &workplace, QString order, QWidget *window);

signals:
    void recordsChanged();

private:
    QWidget *makeCard();
    QWidget *makeReason();
    void read();
    void showList(const Result<std::vector<ShownConflict>> &conflicts);
    void showChosen();
    void addSide(const ShownConflict::Side &side, int place, bool only);
    const ShownConflict *chosen() const;
    void settle();
    void showSettled(const Result<StationConflict> &settled, const QString &side);

    DesktopContext &m_workplace;
    Asker m_asker;
    QString m_order;
    std::vector<ShownConflict> m_conflicts;
    SignList *m_list;
    QCheckBox *m_all;
    QFrame *m_card = nullptr;
    QLabel *m_about = nullptr;
    QLabel *m_settled = nullptr; ///< how, of one that is
    QWidget *m_reason = nullptr;
    QVBoxLayout *m_sides = nullptr;
    QWidget *m_sidesHolder = nullptr; ///< of the chosen one; made anew for each
    QButtonGroup *m_choice = nullptr;
    QLineEdit *m_because = nullptr;
    QPushButton *m_settle = nullptr;
    SignLine *m_told;
};

/// Opened; gone when it is closed.
ConflictsDialog *showConflicts(DesktopContext &workplace, const QString &order, QWidget *window);

} // namespace loopwright
