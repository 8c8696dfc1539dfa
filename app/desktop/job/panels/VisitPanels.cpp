// Arrival at the head of the page and leaving at its end: two entries of one visit.

#include "app/desktop/Names.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/VisitState.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

/// "On site since 09:05, by the arrival in order A-1001."
QString sinceText(const Visit &visit, const QString &order)
{
    return visit.orders.contains(order)
               ? StationPanel::tr("On site since %1.").arg(visit.arrived.localClock())
               : StationPanel::tr("On site since %1, by the arrival in order %2: one visit of all "
                                  "lines at these premises. The safety card is this pair's own.")
                     .arg(visit.arrived.localClock(), visit.orders.front());
}

class ArrivalPanel : public StationPanel
{
public:
    ArrivalPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_othersHead(makeHeading(tr("Also at these premises")))
        , m_others(new SignList(key() + ".lines", tr("Also at these premises")))
        , m_form(makeFactForm(
              desk, key(), tr("I have arrived"),
              {{"arrived", tr("Arrived at"), tr("HH:MM; left empty: now"), Answer::Clock}},
              {[this](const QJsonObject &values) { return facts(values); }}, FormShape::Line))
    {
        body()->addWidget(m_form);
        body()->addWidget(m_othersHead);
        body()->addWidget(m_others);
        m_others->setLinks(true);
        connect(m_others, &SignList::opened, this,
                [this](const QString &number) { emit this->desk().jobWished(number); });
        connect(m_form, &Form::confirmed, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

    void showOrder() override
    {
        StationPanel::showOrder();
        std::vector<SignItem> lines;
        for (const BoardRow &row : desk().view().alsoHere)
            lines.push_back({row.order, outcomeSign(row.outcome), row.order, lineText(row)});
        m_othersHead->setVisible(!lines.empty());
        m_others->setItems(std::move(lines));
    }

protected:
    std::pair<Status, QString> need() const override
    {
        if (const auto visit = desk().visit())
            return {Status::Done, sinceText(*visit, desk().order().number)};
        if (!desk().view().alsoHere.empty())
            return {Status::Open,
                    tr("Say when you arrive: every entry of today then belongs to this "
                       "visit, for every line at these premises. Without it the "
                       "calendar day is the visit.")};
        return {Status::Open, tr("Say when you arrive: every entry of today then belongs to this "
                                 "visit. Without it the calendar day is the visit.")};
    }

private:
    FactObjects facts(const QJsonObject &values) const
    {
        const Moment now = desk().now();
        return {{{"kind", "visit"}, {"arrived", values.value("arrived").toString(now.text())}}};
    }

    QLabel *m_othersHead;
    SignList *m_others; ///< the other lines at the premises
    Form *m_form;
};

class LeavingPanel : public StationPanel
{
public:
    LeavingPanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_form(makeFactForm(
              desk, key(), tr("I am leaving"),
              {{"result", tr("How the visit went"), {}, Answer::Choice, results(), 0},
               {"left", tr("Left at"), tr("HH:MM; left empty: now"), Answer::Clock}},
              {[this](const QJsonObject &values) { return facts(values); }}, FormShape::Line))
    {
        body()->addWidget(m_form);
        connect(m_form, &Form::confirmed, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

protected:
    std::pair<Status, QString> need() const override
    {
        if (const auto visit = desk().visit())
            return {Status::Open, leavingText(*visit)};
        return {Status::Note, tr("No visit is going on.")};
    }

private:
    QString leavingText(const Visit &visit) const
    {
        const QString text = tr("On site since %1. Say how the visit went when you leave; a visit "
                                "without result counts too.")
                                 .arg(visit.arrived.localClock());
        QStringList others;
        for (const BoardRow &row : desk().view().alsoHere)
            if (row.stage < stageAt(Station::Certificate))
                others << tr("%1 at %2").arg(row.order, stageName(row.stage));
        return others.isEmpty()
                   ? text
                   : text +
                         tr(" It ends for every line here; still open: %1.").arg(others.join(", "));
    }

    static std::vector<KeyedOption> results()
    {
        return {{u'W', toText(VisitResult::Worked), tr("Worked")},
                {u'N', toText(VisitResult::NoAccess), tr("No access")},
                {u'C', toText(VisitResult::CustomerNotReady), tr("Customer not ready")},
                {u'O', toText(VisitResult::Other), tr("Other")}};
    }

    FactObjects facts(const QJsonObject &values) const
    {
        const Moment now = desk().now();
        QJsonObject fact{{"kind", "visit"}, {"left", values.value("left").toString(now.text())}};
        if (const auto visit = desk().visit())
            fact.insert("arrived", visit->arrived.text());
        if (values.contains("result"))
            fact.insert("result", values.value("result"));
        return {fact};
    }

    Form *m_form;
};

} // namespace

StationPanel *makeArrivalPanel(const PanelInfo &info, JobSession &desk)
{
    return new ArrivalPanel(info, desk);
}

StationPanel *makeLeavingPanel(const PanelInfo &info, JobSession &desk)
{
    return new LeavingPanel(info, desk);
}

} // namespace loopwright
