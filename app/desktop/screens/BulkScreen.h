#pragma once
// Bulk changes: an area code is split, or a switch converted, for all lines of an office. What
// would become of each is shown before it is done; done it can be taken back, and the settings
// cards of all customers be saved in one go. The work runs beside the window and can be stopped;
// then nothing was changed.

#include "app/actions/BulkChange.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QTabWidget;

namespace loopwright {

class SignLine;
class TextTable;

class BulkScreen : public Screen
{
    Q_OBJECT
public:
    explicit BulkScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("bulk"); }
    QString title() const override { return tr("Bulk change"); }
    void refresh() override;
    void takeFocus() override;
    /// Chooses that office.
    void open(const QString &office) override;

private:
    QWidget *makeQuestion();
    QWidget *makeButtons();
    QWidget *makeReport();
    void showQuestion();
    /// What is typed is another question than the one that is answered.
    void forget();
    OfficeChange asked() const;
    void preview();
    void apply();
    void saveCards();
    void setRunning(bool running);
    void show(const Result<BulkReport> &report);
    void showRows(const BulkReport &report);
    void tellDone(const BulkReport &report);

    Asker m_worker;
    QString m_done; ///< the change whose report is shown, once it is made
    TextTable *m_changes;
    TextTable *m_cannot;

    QComboBox *m_kind = nullptr;
    QComboBox *m_office = nullptr;
    QLineEdit *m_from = nullptr;
    QLineEdit *m_to = nullptr;
    QComboBox *m_variant = nullptr;
    QWidget *m_split = nullptr;
    QWidget *m_conversion = nullptr;
    QCheckBox *m_spids = nullptr;
    QPushButton *m_preview = nullptr;
    QPushButton *m_apply = nullptr;
    QPushButton *m_stop = nullptr;
    QPushButton *m_cards = nullptr;
    QProgressBar *m_progress = nullptr;
    SignLine *m_summary = nullptr;
    QTabWidget *m_tabs = nullptr;
};

} // namespace loopwright
