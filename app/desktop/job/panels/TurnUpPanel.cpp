// Turn-up, layer by layer: one short entry for layer 1 at each interface and for layers 2 and 3 of
// each terminal. What a layer that is down means, and what to check first, stands there as soon as
// it is typed.

#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/panels/Panels.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/identifiers/Tei.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

/// One thing to record: a layer at an interface or of a terminal.
struct Step
{
    int layer = 1;
    LineInterface interface = LineInterface::U;
    int terminal = 1;
    QString label;
    QString hint;

    QString part(const QString &panel) const
    {
        return layer == 1 ? QString("%1.1.%2").arg(panel, toText(interface))
                          : QString("%1.%2.%3").arg(panel).arg(layer).arg(terminal);
    }
    bool isOf(const LayerFact &fact) const
    {
        return fact.layer == layer &&
               (layer == 1 ? fact.interfaceOrU() == interface : fact.terminalOrFirst() == terminal);
    }
};

QString terminalHint(int layer, const OrderedTerminal &terminal)
{
    if (layer == 3)
        return StationPanel::tr("SPID %1 accepted by the switch").arg(terminal.spid);
    return isAutomaticTei(terminal.tei) ? StationPanel::tr("TEI given by the network")
                                        : StationPanel::tr("TEI %1 as ordered").arg(terminal.tei);
}

std::vector<Step> stepsOf(const ServiceOrder &order)
{
    std::vector<Step> steps = {{1, LineInterface::U, 1, StationPanel::tr("Layer 1 at U"),
                                StationPanel::tr("in sync; wait 15 s after a cold start")}};
    if (order.ntSupplied)
        steps.push_back({1, LineInterface::St, 1, StationPanel::tr("Layer 1 at S/T"),
                         StationPanel::tr("in sync through the NT")});
    for (const int layer : {2, 3})
        for (const OrderedTerminal &terminal : order.terminals)
            if (layer == 2 || !terminal.spid.isEmpty())
                steps.push_back(
                    {layer, LineInterface::U, terminal.number,
                     StationPanel::tr("Layer %1 of terminal %2").arg(layer).arg(terminal.number),
                     terminalHint(layer, terminal)});
    return steps;
}

std::vector<FieldSpec> asksOf(const Step &step)
{
    const auto down = [](const QJsonObject &typed) {
        return typed.value("outcome").toString() == u"down";
    };
    const auto up = [](const QJsonObject &typed) {
        return typed.value("outcome").toString() == u"up";
    };
    std::vector<FieldSpec> asks = {
        {"outcome",
         step.label,
         step.hint,
         Answer::Choice,
         {{u'U', "up", StationPanel::tr("Up")}, {u'D', "down", StationPanel::tr("Down")}},
         1}};
    if (step.layer == 2)
        asks.push_back({"tei",
                        StationPanel::tr("TEI"),
                        StationPanel::tr("0 to 63 set, 64 to 126 by the network"),
                        Answer::Whole,
                        {},
                        1,
                        up});
    asks.push_back({"cause",
                    StationPanel::tr("Cause"),
                    StationPanel::tr("Q.850, 1 to 127; may be empty"),
                    Answer::Whole,
                    {},
                    1,
                    down});
    return asks;
}

FactObjects factsOf(const Step &step, const QJsonObject &values)
{
    if (values.isEmpty())
        return {};
    QJsonObject fact = values;
    fact.insert("kind", "layer");
    fact.insert("layer", step.layer);
    if (step.layer == 1)
        fact.insert("interface", toText(step.interface));
    else
        fact.insert("terminal", step.terminal);
    return {fact};
}

class TurnUpPanel : public StationPanel
{
public:
    TurnUpPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_steps(stepsOf(desk.order()))
    {
        for (const Step &step : m_steps)
            addForm(step);
    }

    QWidget *entry(const QString &criterion) const override
    {
        const int layer = criterion.right(1).toInt(); // "layer1", "layer2", "layer3"
        for (std::size_t i = 0; i < m_steps.size(); ++i)
            if (!isUp(m_steps[i]) && (layer == 0 || m_steps[i].layer == layer))
                return m_forms[i]->firstEmpty();
        return m_forms.front()->firstEmpty();
    }

    void showOrder() override
    {
        StationPanel::showOrder();
        for (std::size_t i = 0; i < m_steps.size(); ++i) {
            const Fact *newest = newestOf(m_steps[i]);
            QString hint = m_steps[i].hint;
            if (newest) {
                const auto *layer = newest->as<LayerFact>();
                hint = tr("%1 at %2%3%4")
                           .arg(toText(layer->outcome),
                                timeText(newest->at, this->desk().now().localDate()),
                                layer->tei ? tr(", TEI %1").arg(*layer->tei) : QString(),
                                layer->cause ? tr(", cause %1").arg(*layer->cause) : QString());
            }
            m_forms[i]->field("outcome")->setHint(hint);
        }
    }

private:
    void addForm(const Step &step)
    {
        auto *form =
            makeFactForm(desk(), step.part(key()), tr("Record"), asksOf(step),
                         {[step](const QJsonObject &values) { return factsOf(step, values); }},
                         FormShape::Line, 18);
        const std::size_t index = m_forms.size();
        m_forms.push_back(form);
        body()->addWidget(form);
        correctIn(form, [step](const Fact &fact) {
            const auto *layer = fact.as<LayerFact>();
            return layer && step.isOf(*layer);
        });
        connect(form, &Form::edited, this, [this, index] { sayFirstCheck(index); });
        connect(form, &Form::confirmed, this, [this, index] { goOn(index); });
        sayFirstCheck(index);
    }

    const Fact *newestOf(const Step &step) const
    {
        const Fact *newest = nullptr;
        for (const FactView &entry : desk().view().facts)
            if (const auto *layer = entry.fact.as<LayerFact>();
                layer && !entry.voided && step.isOf(*layer))
                newest = &entry.fact;
        return newest;
    }

    bool isUp(const Step &step) const
    {
        const Fact *newest = newestOf(step);
        return newest && newest->as<LayerFact>()->outcome == LayerOutcome::Up;
    }

    /// The next step that is not up yet, else the head of the page.
    void goOn(std::size_t index)
    {
        for (std::size_t next = index + 1; next < m_steps.size(); ++next)
            if (!isUp(m_steps[next])) {
                m_forms[next]->firstEmpty()->setFocus(Qt::TabFocusReason);
                return;
            }
        emit recorded();
    }

    void sayFirstCheck(std::size_t index)
    {
        const auto read = desk().read(factsOf(m_steps[index], m_forms[index]->values()));
        const LayerFact *layer =
            read && !read->facts.empty() ? read->facts.front().as<LayerFact>() : nullptr;
        if (!layer || layer->outcome != LayerOutcome::Down) {
            m_forms[index]->tell(Status::None, {});
            return;
        }
        const FirstCheck check = firstCheck(*layer);
        QString text = tr("%1 Check first (%2): %3 Then: %4")
                           .arg(check.meaning, partName(check.part), check.check, check.then);
        if (layer->cause)
            text.prepend(causeWords(*layer->cause));
        m_forms[index]->tell(Status::Doubtful, text);
    }

    QString causeWords(int number) const
    {
        const ProtocolVariant *variant = findVariant(desk().order().variant);
        if (variant && !usesQ850(*variant))
            return tr("Cause %1: %2 ").arg(number).arg(whyNoCauseNames(*variant));
        const auto cause = causeOf(number);
        return cause ? tr("Cause %1, %2 (%3). ").arg(number).arg(cause->name, cause->classText)
                     : QString();
    }

    std::vector<Step> m_steps;
    std::vector<Form *> m_forms;
};

} // namespace

StationPanel *makeTurnUpPanel(const PanelInfo &info, JobSession &desk)
{
    return new TurnUpPanel(info, desk);
}

} // namespace loopwright
