#pragma once
// What can be chosen for the whole program, on one page. It has no list of its own: each row shows
// a menu of the window, and choosing there is choosing here.

#include <QDialog>
#include <QPointer>

#include <vector>

class QComboBox;
class QGridLayout;
class QMenu;

namespace loopwright {

struct SettingsRow
{
    QString name; ///< object name of its list
    QString label;
    QMenu *menu; ///< one of its entries is ticked
    QString sentence;
};

struct SettingsRecords
{
    QString path; ///< as it is shown
    bool atStart = false;
    QList<QAction *> others; ///< each asks for other records
};

class SettingsDialog : public QDialog
{
    Q_OBJECT
public:
    SettingsDialog(const std::vector<SettingsRow> &rows, const SettingsRecords &records,
                   QWidget *window);

signals:
    void atStartChosen(bool atStart);

private:
    void addRow(QGridLayout *grid, const SettingsRow &row);
    void addRecords(QGridLayout *grid, const SettingsRecords &records);
    void fill(QComboBox *list, QMenu *menu);
};

} // namespace loopwright
