#pragma once
// A field with its label above and, below it, what is wrong with it: a sign for the severity, the
// reason, and the repair where there is exactly one. Ctrl+R in the field, or a click, takes the
// repair. The sentence is the finding's own, the same that the command line prints.
//
// While nothing is found the line below may carry a hint (unit, limit, example). The line keeps its
// place, so that nothing jumps as findings come and go.

#include "app/desktop/widgets/SignLine.h"

#include <QToolButton>

namespace loopwright {

class FieldMark : public QWidget
{
    Q_OBJECT
public:
    /// Takes the field over as a child. `label` becomes its accessible name too, unless it has one;
    /// an "&" in it makes a key.
    FieldMark(const QString &label, QWidget *field, QWidget *parent = nullptr);

    QWidget *field() const { return m_field; }
    void setLabel(const QString &label);
    /// Takes a widget over that stands behind the field, on the screen and for Tab.
    void setBeside(QWidget *widget);
    /// Takes a widget over that stands between the field and the line below it.
    void setBelow(QWidget *widget);
    /// "ohm; at most 1300" …, with a sign where it says how something stands; shown while nothing
    /// is found. `spoken`: what a screen reader says instead, where it is read elsewhere.
    void setHint(const QString &hint, Status sign = Status::None, const QString &spoken = {});
    /// Shows the worst of these; the others are in the tool tip. Empty: nothing is wrong.
    void setFindings(const Findings &findings);
    void clearFindings() { setFindings({}); }
    const Findings &findings() const { return m_findings; }
    bool isInError() const;
    /// What the line below says now.
    QString sentence() const { return m_line->text(); }
    /// Whether the line below takes no room while it has nothing to say; off at first.
    void setTight(bool tight);

public slots:
    /// Puts the repair into the field (a QLineEdit or an editable QComboBox) and says so.
    void takeRepair();

signals:
    void repairTaken(const QString &repaired);

private:
    void showLine();
    const Finding *repairable() const;

    QWidget *m_field;
    QLabel *m_label;
    SignLine *m_line;
    QToolButton *m_repair;
    QAction *m_repairKey = nullptr; ///< on while a repair is offered
    QString m_hint;
    QString m_spokenHint;
    Status m_hintSign = Status::None;
    Findings m_findings;
    bool m_tight = false;
};

} // namespace loopwright
