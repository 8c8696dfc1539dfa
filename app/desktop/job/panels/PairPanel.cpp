// What was measured of the pair: resistance and loss, against the limits and against what the
// make-up on record predicts.

#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/LoopState.h"
#include "app/desktop/job/panels/Panels.h"
#include "core/loop/LoopComparison.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

std::vector<FieldSpec> asks(JobSession &desk)
{
    const LimitSet &limits = desk.limits();
    const bool analog = desk.order().kind == LineKind::Analog;
    const QString ohms =
        analog ? StationPanel::tr("ohm; at most %1, with load coils %2")
                     .arg(limits.value("rd_resistance_max"))
                     .arg(limits.value("rrd_long_resistance_max"))
               : StationPanel::tr("ohm; at most %1").arg(limits.value("bri_resistance_max"));
    std::vector<FieldSpec> list = {
        {"dc_resistance_ohm", StationPanel::tr("DC resistance"), ohms, Answer::Number}};
    if (analog)
        return list;
    const double kHz = limits.value("bri_loss_frequency") / 1000;
    list.push_back({"loss_db", StationPanel::tr("Loss"),
                    StationPanel::tr("dB; at most %1 at %2 kHz between %3 ohm")
                        .arg(limits.value("bri_loss_max"))
                        .arg(kHz)
                        .arg(limits.value("bri_termination")),
                    Answer::Number});
    list.push_back({"frequency_hz", StationPanel::tr("Loss measured at"),
                    StationPanel::tr("Hz; left empty: %1").arg(kHz * 1000), Answer::Number});
    return list;
}

class PairPanel : public StationPanel
{
public:
    PairPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_form(makeFactForm(desk, key(), tr("Record what was measured"), asks(desk),
                              {[this](const QJsonObject &values) { return facts(values); }}))
        , m_against(new SignLine)
    {
        body()->addWidget(m_form);
        body()->addWidget(m_against);
        correctIn(m_form, [](const Fact &fact) {
            const auto *loop = fact.as<LoopFact>();
            return loop && !loop->makeup;
        });
        connect(m_form, &Form::confirmed, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

    void showOrder() override
    {
        StationPanel::showOrder();
        const LoopState loop = loopState(desk().view(), desk().limits());
        const bool both =
            loop.makeup && (loop.measured.dcResistanceOhm || !loop.measured.losses.empty());
        m_against->setVisible(both);
        if (!both)
            return;
        const LoopComparison comparison = compareLoop(*loop.makeup, loop.measured, desk().limits());
        m_against->show(comparison.agrees ? Status::Done : Status::Doubtful,
                        tr("Against the make-up on record: %1").arg(comparison.why));
    }

private:
    FactObjects facts(const QJsonObject &values) const
    {
        if (values.isEmpty())
            return {};
        QJsonObject fact = values;
        fact.insert("kind", "loop");
        if (fact.contains("loss_db") && !fact.contains("frequency_hz"))
            fact.insert("frequency_hz", desk().limits().value("bri_loss_frequency"));
        return {fact};
    }

    Form *m_form;
    SignLine *m_against;
};

} // namespace

StationPanel *makePairPanel(const PanelInfo &info, JobSession &desk)
{
    return new PairPanel(info, desk);
}

} // namespace loopwright
