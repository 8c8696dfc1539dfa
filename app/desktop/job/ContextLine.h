#pragma once
// Who makes the entries, with which instrument, on which visit: set once at the head of the page
// and carried by every new entry.

#include "app/desktop/job/JobSession.h"

#include <QComboBox>
#include <QLabel>

namespace loopwright {

class SignLine;

class ContextLine : public QWidget
{
    Q_OBJECT
public:
    explicit ContextLine(JobSession &desk, QWidget *parent = nullptr);

    /// Fills the lists from the register and shows the desk's context.
    void showOrder();
    QComboBox *installer() const { return m_installer; }
    QComboBox *instrument() const { return m_instrument; }

protected:
    bool eventFilter(QObject *object, QEvent *event) override;

private:
    QComboBox *makeBox(const QString &name, const QString &accessibleName, int leastEm);
    void take();
    QString instrumentWarning() const;

    JobSession &m_desk;
    QComboBox *m_installer;
    QComboBox *m_instrument;
    SignLine *m_state;
    QList<Instrument> m_instruments;
};

} // namespace loopwright
