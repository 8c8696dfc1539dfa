// The matrix of calls that the order grants, each answered with one key: O records that it went
// through, F asks for the cause. And the number that the network announced on this pair.

#include "app/desktop/Theme.h"
#include "app/desktop/job/CallSlots.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/turnup/Cause.h"

#include <QLabel>
#include <QVBoxLayout>

namespace loopwright {

namespace {

std::vector<FieldSpec> asksOf(const CallSlot &slot)
{
    return {
        {"outcome",
         slot.label,
         {},
         Answer::Choice,
         {{u'O', "ok", StationPanel::tr("OK")}, {u'F', "failed", StationPanel::tr("Failed")}},
         0,
         {},
         "ok"},
        {"cause",
         StationPanel::tr("Cause"),
         StationPanel::tr("Q.850, 1 to 127; may be empty"),
         Answer::Whole,
         {},
         0,
         [](const QJsonObject &typed) { return typed.value("outcome").toString() == u"failed"; },
         {}}};
}

FactObjects factsOf(const CallSlot &slot, const QJsonObject &values)
{
    if (values.isEmpty())
        return {};
    QJsonObject fact = values;
    fact.insert("kind", "call");
    fact.insert("channel", toText(slot.channel));
    fact.insert("direction", toText(slot.direction));
    fact.insert("service", toText(slot.service));
    if (!slot.dn.isEmpty())
        fact.insert("dn", slot.dn);
    return {fact};
}

class CallsPanel : public StationPanel
{
public:
    CallsPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_slots(callSlots(desk.order()))
        , m_keyOf(desk.order())
    {
        auto *matrix = new QWidget;
        m_grid = new FieldGrid(17, matrix);
        body()->addWidget(matrix);
        CallDirection shown = CallDirection::Out;
        for (const CallSlot &slot : m_slots) {
            if (m_forms.empty() || slot.direction != shown)
                addHeading(slot.direction == CallDirection::Out
                               ? tr("Out: one call for each service on each channel")
                               : tr("In: one call to each number for each of its services"));
            shown = slot.direction;
            addForm(slot);
        }
        addReadback();
    }

    QWidget *entry(const QString &criterion) const override
    {
        if (criterion == u"readback" || m_forms.empty())
            return m_readback->firstEmpty();
        for (std::size_t i = 0; i < m_slots.size(); ++i)
            if (!wentThrough(m_slots[i]))
                return m_forms[i]->firstEmpty();
        return m_forms.front()->firstEmpty();
    }

    void showOrder() override
    {
        StationPanel::showOrder();
        for (std::size_t i = 0; i < m_slots.size(); ++i)
            m_forms[i]->field("outcome")->setHint(hintOf(m_slots[i]));
    }

private:
    void addHeading(const QString &text)
    {
        auto *heading = new QLabel(text);
        whenThemed(heading, [heading] { heading->setFont(sized(1, QFont::DemiBold)); });
        m_grid->add(heading, 0);
    }

    void addForm(const CallSlot &slot)
    {
        auto *form =
            makeFactForm(desk(), key() + '.' + slot.part, tr("Record"), asksOf(slot),
                         {[slot](const QJsonObject &values) { return factsOf(slot, values); }});
        const std::size_t index = m_forms.size();
        m_forms.push_back(form);
        m_grid->add(form);
        form->button()->parentWidget()->hide(); // one key answers; the button is for a failed call
        correctIn(form, [this, slot](const Fact &fact) {
            const auto *call = fact.as<CallFact>();
            return call && !call->announcedDn && slot.isOf(*call, m_keyOf);
        });
        connect(form, &Form::edited, this, [this, index] { sayCause(index); });
        connect(form, &Form::confirmed, this, [this, index] { goOn(index); });
        sayCause(index);
    }

    void addReadback()
    {
        std::vector<FieldSpec> asks;
        std::vector<KeyedOption> numbers;
        for (const OrderedTerminal &terminal : desk().order().terminals)
            numbers.push_back(
                {QChar(u'0' + terminal.number), terminal.dn, m_keyOf.shown(terminal.dn)});
        if (numbers.size() > 1)
            asks.push_back(
                {"dn", tr("Number that was to be heard"), {}, Answer::Choice, numbers, 0});
        asks.push_back({"announced_dn",
                        tr("Number announced by the network"),
                        tr("must be the order's: a wrong one is another customer's line"),
                        Answer::Text,
                        {},
                        2});
        m_readback = makeFactForm(
            desk(), key() + ".readback", tr("Record what was announced"), asks,
            {[this](const QJsonObject &values) { return readbackFacts(values); }}, FormShape::Line);
        body()->addWidget(m_readback);
        connect(m_readback, &Form::confirmed, this, &StationPanel::recorded);
    }

    FactObjects readbackFacts(const QJsonObject &values) const
    {
        if (!values.contains("announced_dn"))
            return {};
        const ServiceOrder &order = desk().order();
        const Service service =
            order.bServices().testFlag(Service::Voice) ? Service::Voice : Service::Data;
        QJsonObject fact = values;
        if (order.terminals.size() == 1)
            fact.insert("dn", order.terminals.front().dn);
        fact.insert("kind", "call");
        fact.insert("channel",
                    toText(order.b1.testFlag(service) || !order.b2 ? Channel::B1 : Channel::B2));
        fact.insert("direction", toText(CallDirection::Out));
        fact.insert("service", toText(service));
        fact.insert("outcome", toText(CallOutcome::Ok));
        return {fact};
    }

    const Fact *newestOf(const CallSlot &slot) const
    {
        const Fact *newest = nullptr;
        for (const FactView &entry : desk().view().facts)
            if (const auto *call = entry.fact.as<CallFact>();
                call && !entry.voided && slot.isOf(*call, m_keyOf))
                newest = &entry.fact;
        return newest;
    }

    bool wentThrough(const CallSlot &slot) const
    {
        const Fact *newest = newestOf(slot);
        return newest && newest->as<CallFact>()->outcome == CallOutcome::Ok;
    }

    QString hintOf(const CallSlot &slot) const
    {
        const Fact *newest = newestOf(slot);
        if (!newest)
            return tr("not made yet");
        const auto *call = newest->as<CallFact>();
        return tr("%1 at %2%3")
            .arg(call->outcome == CallOutcome::Ok ? tr("went through") : tr("failed"),
                 timeText(newest->at, desk().now().localDate()),
                 call->cause ? tr(", cause %1").arg(*call->cause) : QString());
    }

    void goOn(std::size_t index)
    {
        m_forms[index]->button()->parentWidget()->hide();
        for (std::size_t next = index + 1; next < m_slots.size(); ++next)
            if (!wentThrough(m_slots[next])) {
                m_forms[next]->field("outcome")->field()->setFocus(Qt::TabFocusReason);
                return;
            }
        emit recorded();
    }

    void sayCause(std::size_t index)
    {
        Form *form = m_forms[index];
        const bool failed = form->typed().value("outcome").toString() == u"failed";
        form->button()->parentWidget()->setVisible(failed);
        const auto number = form->values().value("cause").toInt();
        const auto cause = failed ? causeOf(number) : std::nullopt;
        const ProtocolVariant *variant = findVariant(desk().order().variant);
        if (!cause)
            form->tell(Status::None, {});
        else if (variant && !usesQ850(*variant))
            form->tell(Status::Note, whyNoCauseNames(*variant));
        else
            form->tell(Status::Doubtful,
                       tr("%1, %2. Check first: %3")
                           .arg(cause->name, cause->classText, cause->checkFirst));
    }

    std::vector<CallSlot> m_slots;
    NumberKey m_keyOf;
    std::vector<Form *> m_forms;
    FieldGrid *m_grid = nullptr;
    Form *m_readback = nullptr;
};

} // namespace

StationPanel *makeCallsPanel(const PanelInfo &info, JobSession &desk)
{
    return new CallsPanel(info, desk);
}

} // namespace loopwright
