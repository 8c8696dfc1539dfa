#pragma once
// The slip that stays behind, printed or saved: for the customer as long as the line is not
// accepted, and then for the desk that it is closed with.

#include "app/actions/Cards.h"

#include <QWidget>

class QPushButton;

namespace loopwright {

class JobSession;
class SignLine;
struct CardTold;

class SlipEntry : public QWidget
{
    Q_OBJECT
public:
    /// `name`: begin of the names of its buttons.
    SlipEntry(JobSession &desk, const QString &name, QWidget *parent = nullptr);

    /// The order was read anew.
    void showOrder();

private:
    CardKind kind() const;
    void tell(const CardTold &told);

    JobSession &m_desk;
    QPushButton *m_print, *m_save;
    SignLine *m_told;
};

} // namespace loopwright
