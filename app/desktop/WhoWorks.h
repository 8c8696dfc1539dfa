#pragma once
// Who works at this machine, for a laptop that several share: the list to choose from, and the
// question for a PIN when an act needs one.

#include "app/desktop/DesktopContext.h"

#include <QToolButton>

namespace loopwright {

/// Shows who acts; its menu lists the people of the register.
class WhoWorks : public QToolButton
{
    Q_OBJECT
public:
    explicit WhoWorks(DesktopContext &workplace, QWidget *parent = nullptr);

    /// The register may have changed.
    void refresh();

signals:
    void changed(const QString &name);

private:
    void choose(const Person &person);
    void showPeople();

    DesktopContext &m_workplace;
};

/// Asks for the PIN of a person; nothing if it is not given.
std::optional<QString> askForPin(const Person &person, QWidget *parent);

} // namespace loopwright
