#pragma once
// A field with its label above and, below it, what is wrong with it: a sign and a word for the
// severity, the reason, and the repair where there is exactly one. Ctrl+R, or a click, takes the
// repair. The sentence is the finding's own, the same that the command line prints.
//
// While nothing is found the line below may carry a hint (unit, limit, example). The line keeps its
// place, so that nothing jumps as findings come and go.

#include "core/base/Finding.h"

#include <QLabel>
#include <QToolButton>

namespace loopwright {

class FieldMark : public QWidget
{
    Q_OBJECT
public:
    /// Takes the field over as a child. `label` is its accessible name too, unless it has one; an
    /// "&" in it makes a key.
    FieldMark(const QString &label, QWidget *field, QWidget *parent = nullptr);

    QWidget *field() const { return m_field; }
    /// "DC resistance, ohm; at most 1300" …; shown while nothing is found.
    void setHint(const QString &hint);
    /// Shows the worst of these; the others are in the tool tip. Empty: nothing is wrong.
    void setFindings(const Findings &findings);
    void clearFindings() { setFindings({}); }
    const Findings &findings() const { return m_findings; }
    bool isInError() const { return worst(m_findings) == Severity::Error && !m_findings.empty(); }
    /// What the line below says now.
    QString sentence() const;

public slots:
    /// Puts the repair into the field (QLineEdit or editable QComboBox) and says so by signal.
    void takeRepair();

signals:
    void repairTaken(const QString &repaired);

protected:
    void changeEvent(QEvent *event) override;

private:
    void showLine();

    QWidget *m_field;
    QLabel *m_label;
    QLabel *m_sign;
    QLabel *m_line;
    QToolButton *m_repair;
    QString m_hint;
    Findings m_findings;
};

} // namespace loopwright
