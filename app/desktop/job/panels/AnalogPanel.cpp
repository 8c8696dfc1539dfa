// Every quantity of an analog line, each with its unit and what is good and marginal, in the order
// of the table of quantities.

#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/LoopState.h"
#include "app/desktop/job/panels/Panels.h"
#include "core/loop/AnalogQuantity.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

QString capital(QString text)
{
    text[0] = text[0].toUpper();
    return text;
}

std::vector<FieldSpec> asks(const LimitSet &limits)
{
    std::vector<FieldSpec> list;
    for (const AnalogQuantityInfo &each : analogQuantities()) {
        QString hint = each.yesOrNo ? QString::fromUtf8(each.definition)
                                    : QString("%1; %2").arg(QString::fromUtf8(each.unit),
                                                            limitText(each.quantity, limits));
        if (each.quantity == AnalogQuantity::Balance)
            hint += StationPanel::tr("; left empty: computed");
        else if (!each.always)
            hint += StationPanel::tr("; where it is measured");
        QString label = capital(QString::fromUtf8(each.name));
        if (each.yesOrNo)
            label += StationPanel::tr(" as it should be?");
        list.push_back(
            {toText(each.quantity), label, hint, each.yesOrNo ? Answer::YesNo : Answer::Number});
    }
    return list;
}

class AnalogPanel : public StationPanel
{
public:
    AnalogPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_form(makeFactForm(desk, key(), tr("Record what was measured"), asks(desk.limits()),
                              {[this](const QJsonObject &values) { return facts(values); },
                               [this](int fact, const QString &) {
                                   const QStringList given = quantitiesOf(m_form->values());
                                   return fact < given.size() ? given[fact] : QString();
                               }},
                              FormShape::Block, 17))
        , m_predicted(new SignLine)
    {
        body()->addWidget(m_predicted);
        body()->addWidget(m_form);
        connect(m_form, &Form::confirmed, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &criterion) const override
    {
        const Field *field = m_form->field(criterion);
        return field ? field->field() : m_form->firstEmpty();
    }

    void showOrder() override
    {
        StationPanel::showOrder();
        const LoopState loop = loopState(desk().view(), desk().limits());
        m_predicted->setVisible(loop.makeup.has_value());
        if (!loop.makeup)
            return;
        const AnalogPrediction predicted = predictAnalog(*loop.makeup);
        m_predicted->show(Status::Note,
                          tr("Predicted from the make-up: loop current %1 mA, loss %2 dB "
                             "at 1004 Hz, slope %3 dB.")
                              .arg(predicted.loopCurrentMa, 0, 'f', 1)
                              .arg(predicted.loss1004Db, 0, 'f', 1)
                              .arg(predicted.slopeDb, 0, 'f', 1));
    }

private:
    static QStringList quantitiesOf(const QJsonObject &values)
    {
        QStringList given;
        for (const AnalogQuantityInfo &each : analogQuantities())
            if (values.contains(toText(each.quantity)))
                given << toText(each.quantity);
        return given;
    }

    FactObjects facts(const QJsonObject &values) const
    {
        FactObjects list;
        for (const QString &quantity : quantitiesOf(values)) {
            QJsonObject fact{
                {"kind", "analog"}, {"quantity", quantity}, {"value", values.value(quantity)}};
            const AnalogQuantityInfo &about = loopwright::info(*fromText<AnalogQuantity>(quantity));
            if (!about.yesOrNo)
                fact.insert("unit", QString::fromUtf8(about.unit));
            list.push_back(fact);
        }
        return list;
    }

    Form *m_form;
    SignLine *m_predicted;
};

} // namespace

StationPanel *makeAnalogPanel(const PanelInfo &info, JobSession &desk)
{
    return new AnalogPanel(info, desk);
}

} // namespace loopwright
