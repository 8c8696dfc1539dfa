#include "app/desktop/screens/TroubleEntry.h"

#include "app/actions/Register.h"
#include "app/actions/Troubles.h"
#include "app/desktop/Language.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/StepFields.h"
#include "app/desktop/widgets/PageElements.h"

namespace loopwright {

namespace {

std::vector<FieldSpec> troubleFields()
{
    FieldSpec symptom{QStringLiteral("symptom"), TroubleEntry::tr("Symptom")};
    symptom.answer = Answer::Text;
    symptom.hint = TroubleEntry::tr("as the customer says it");
    symptom.span = 2;
    FieldSpec desk{QStringLiteral("desk_test"), TroubleEntry::tr("Test from the desk")};
    desk.answer = Answer::Text;
    desk.hint = TroubleEntry::tr("what it showed; may be left empty");
    desk.span = 2;
    desk.optional = true;
    FieldSpec installer{QStringLiteral("installer"), TroubleEntry::tr("Installer")};
    installer.answer = Answer::OpenList;
    installer.hint = TroubleEntry::tr("may be left empty");
    installer.optional = true;
    FieldSpec due{QStringLiteral("due"), TroubleEntry::tr("Day")};
    due.answer = Answer::Date;
    due.hint = TroubleEntry::tr("today unless said");
    due.optional = true;
    return {symptom, desk, installer, due};
}

} // namespace

TroubleEntry::TroubleEntry(DesktopContext &workplace, QWidget *parent)
    : QWidget(parent)
    , m_workplace(workplace)
    , m_begin(makeButton(tr("Report a trouble …"), QStringLiteral("circuit.trouble"),
                         [this] { unfold(); }))
{
    FormUse use;
    use.now = [this] { return m_workplace.records().now(); };
    use.confirm = [this] { return confirm(); };
    m_form = new Form(QStringLiteral("trouble"), tr("Open the trouble"), {{{}, troubleFields()}},
                      use, FormShape::Line, 11);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_begin, 0, Qt::AlignLeft);
    layout->addWidget(m_form);
    m_form->hide();
    hide();
}

void TroubleEntry::setCircuit(const QString &circuit)
{
    if (m_circuit == circuit)
        return;
    m_circuit = circuit;
    m_form->clear();
    m_form->hide();
    m_begin->show();
    setVisible(!circuit.isEmpty());
}

void TroubleEntry::unfold()
{
    const auto known = people(m_workplace.records());
    m_form->field(QStringLiteral("installer"))
        ->setOptions(peopleOptions(known.value_or(QList<Person>())));
    m_begin->hide();
    m_form->show();
    m_form->firstEmpty()->setFocus();
}

bool TroubleEntry::fold()
{
    if (m_form->isHidden())
        return false;
    m_begin->show();
    m_begin->setFocus();
    m_form->hide();
    return true;
}

bool TroubleEntry::confirm()
{
    const QJsonObject typed = m_form->typed();
    const auto opened =
        openTrouble(m_workplace.records(),
                    {m_circuit, typed.value("symptom").toString(),
                     typed.value("desk_test").toString(), typed.value("installer").toString(),
                     QDate::fromString(typed.value("due").toString(), Qt::ISODate)});
    if (!opened) {
        m_form->tell(Status::Failed, localized(opened.error()));
        return false;
    }
    QString sentence = tr("Trouble %1 is opened.").arg(opened->trouble.order);
    if (!opened->trouble.previous.isEmpty())
        sentence += ' ' + tr("It repeats %1.").arg(opened->trouble.previous);
    for (const Finding &finding : opened->findings)
        sentence += ' ' + localized(finding.reason);
    m_form->clear();
    fold();
    emit this->opened(sentence);
    return true;
}

} // namespace loopwright
