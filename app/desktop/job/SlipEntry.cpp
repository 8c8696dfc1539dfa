#include "app/desktop/job/SlipEntry.h"

#include "app/desktop/PrintDialogs.h"
#include "app/desktop/job/CardPapers.h"
#include "app/desktop/job/JobSession.h"
#include "app/desktop/widgets/PageElements.h"

namespace loopwright {

SlipEntry::SlipEntry(JobSession &desk, const QString &name, QWidget *parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_print(makeButton({}, name + ".print", [this] { tell(printCard(this, m_desk, kind())); }))
    , m_save(makeButton({}, name + ".save", [this] { tell(saveCard(this, m_desk, kind())); }))
    , m_told(new SignLine)
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeButtonRow({m_print, m_save}));
    layout->addWidget(m_told);
    m_told->setObjectName(name + ".told");
    m_told->hide();
    offerPrint(this, m_print);
}

CardKind SlipEntry::kind() const
{
    return isAccepted(m_desk.decision().outcome) ? CardKind::CloseOut : CardKind::LeaveBehind;
}

void SlipEntry::showOrder()
{
    const bool forDesk = kind() == CardKind::CloseOut;
    m_print->setText(forDesk ? tr("Print the slip for the desk…")
                             : tr("Print the slip for the customer…"));
    m_save->setText(forDesk ? tr("Save the slip for the desk as PDF…")
                            : tr("Save the slip for the customer as PDF…"));
    setVisible(m_desk.view().status != OrderStatus::Cancelled);
}

void SlipEntry::tell(const CardTold &told)
{
    m_told->tell(told.sign, told.sentence);
}

} // namespace loopwright
