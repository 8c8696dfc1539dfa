#pragma once
// What was recorded for a part of the job, newest first; earlier attempts and voided entries stay.
// One stop of the Tab key: Up and Down walk, Delete (or the button) asks why the entry shall no
// longer count, on the line below it.

#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/SignLine.h"

#include <QFrame>
#include <QLineEdit>

class QVBoxLayout;

namespace loopwright {

class AttemptList : public QFrame
{
    Q_OBJECT
public:
    AttemptList(JobSession &desk, const QString &part, QList<FactKind> kinds,
                QWidget *parent = nullptr);

    /// Shows the facts of its kinds that are recorded now.
    void showOrder();
    /// Id of the entry that is chosen; empty where none is.
    QString chosen() const;
    int count() const { return int(m_ids.size()); }
    /// Chooses the entry and takes the keyboard; nothing where it is not of this list.
    bool show(const QString &factId);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void addRow(const FactView &view);
    void choose(int row);
    void askWhy();
    void voidChosen();
    QString standing(const FactView &view) const;
    Status signOf(const FactView &view, const QString &standing) const;

    JobSession &m_desk;
    QList<FactKind> m_kinds;
    QVBoxLayout *m_rows;
    std::vector<QString> m_ids;
    std::vector<QWidget *> m_widgets;
    int m_chosen = -1;
    bool m_all = false; ///< else only the newest few
    QWidget *m_ask;     ///< the question why, with its field
    QLineEdit *m_why;
    SignLine *m_told;
};

} // namespace loopwright
