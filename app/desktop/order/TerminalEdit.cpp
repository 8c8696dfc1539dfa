#include "app/desktop/order/TerminalEdit.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/ServicesEdit.h"
#include "app/desktop/widgets/SpidParts.h"

namespace loopwright {

TerminalEdit::TerminalEdit(int number, QWidget *parent)
    : QWidget(parent)
    , m_number(number)
    , m_title(makeHeading(tr("Terminal %1").arg(number)))
    , m_parts(new SpidParts)
    , m_noSpid(makeMuted(tr("This variant has no SPID.")))
{
    const auto field = [this](const char *column, const QString &label, OrderEditor editor) {
        auto *edit = OrderFieldEdit::make(QString::fromLatin1(column).arg(m_number), label, editor);
        edit->field()->setAccessibleName(tr("Terminal %1, %2").arg(m_number).arg(label));
        return edit;
    };
    m_dn = field("dn_%1", tr("Directory number"), OrderEditor::Line);
    m_spid = field("spid_%1", tr("SPID"), OrderEditor::Line);
    m_tei = field("tei_%1", tr("TEI"), OrderEditor::Line);
    m_services = field("dn_%1_services", tr("Answers"), OrderEditor::BServices);
    m_tei->setHint(tr("auto, or 0 to 63"));
    m_services->setHint(tr("none ticked: all that is ordered"));
    for (OrderFieldEdit *edit : {m_dn, m_spid})
        whenThemed(edit->field(), [edit] { edit->field()->setFont(digitsFont()); });

    auto *spid = new QWidget;
    auto *column = new QVBoxLayout(spid);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(m_spid);
    column->addWidget(m_parts);
    column->addWidget(m_noSpid);
    column->addStretch(1);

    auto *fields = new QWidget;
    auto *grid = new FieldGrid(13, fields);
    grid->add(m_dn);
    grid->add(spid, 2);
    grid->add(m_tei);
    grid->add(m_services);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_title);
    layout->addWidget(fields);
    m_noSpid->hide();
    connect(m_spid, &OrderFieldEdit::edited, this, &TerminalEdit::showParts);
    showParts();
}

bool TerminalEdit::isEmpty() const
{
    return m_dn->text().isEmpty() && m_spid->text().isEmpty() && m_tei->text().isEmpty();
}

void TerminalEdit::setVariant(const ProtocolVariant *variant)
{
    m_variant = variant;
    const bool analog = variant && variant->isAnalog;
    m_title->setText(analog ? tr("Number") : tr("Terminal %1").arg(m_number));
    m_spid->setVisible(!variant || variant->hasSpid() || !m_spid->text().isEmpty());
    m_noSpid->setVisible(variant && !variant->hasSpid() && !analog);
    m_tei->setVisible(!variant || variant->hasLayer2() || !m_tei->text().isEmpty());
    m_services->setVisible(!analog);
    m_spid->setHint(variant && variant->hasSpid() ? variant->spidShapes : QString());
    showParts();
}

void TerminalEdit::showParts()
{
    const QString spid = m_spid->text();
    const bool any = m_variant && m_variant->hasSpid() && !spid.isEmpty();
    m_parts->setVisible(any);
    if (any)
        m_parts->setCheck(checkSpid(*m_variant, spid, m_dn->text()));
}

} // namespace loopwright
