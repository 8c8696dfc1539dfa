#pragma once
// The audit of identifiers over the whole records: every number, SPID and pair that is held twice,
// and every open order whose identifiers are in error. A finding opens the circuits that it
// concerns.

#include "app/actions/Register.h"
#include "app/desktop/Lanes.h"
#include "app/desktop/Screen.h"

class QProgressBar;
class QPushButton;

namespace loopwright {

class SignLine;
class Table;
class TextTable;

class AuditScreen : public Screen
{
    Q_OBJECT
public:
    explicit AuditScreen(DesktopContext &workplace, QWidget *parent = nullptr);

    QString key() const override { return QStringLiteral("audit"); }
    QString title() const override { return tr("Audit"); }
    /// An audit takes its time on large records, so it is made when it is asked for.
    void refresh() override {}
    void takeFocus() override;
    void start();

private:
    void connectAll();
    void setRunning(bool running);
    void showFindings(const Result<std::vector<AuditFinding>> &findings);
    void showCircuits(int row);
    QStringList circuitsOf(int row) const;
    void openCircuitAt(qsizetype place);

    Asker m_worker;
    std::vector<AuditFinding> m_findings;
    TextTable *m_model;
    QPushButton *m_start;
    QPushButton *m_stop;
    QProgressBar *m_progress;
    SignLine *m_summary;
    Table *m_table;
    SignLine *m_reason; ///< of the finding that is chosen, whole where its column is too narrow
    QWidget *m_circuits;
    std::vector<QPushButton *> m_circuitButtons; ///< the first ones of the finding
};

} // namespace loopwright
