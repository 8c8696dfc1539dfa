// Arrival at the head of the page and leaving at its end: two entries of one visit.

#include "app/desktop/job/EntryForm.h"
#include "app/desktop/job/VisitState.h"
#include "app/desktop/job/panels/Panels.h"

#include <QVBoxLayout>

namespace loopwright {

namespace {

QString clock(const Moment &moment)
{
    return moment.text().mid(11, 5);
}

class ArrivalPanel : public StationPanel
{
public:
    ArrivalPanel(const PanelInfo &info, JobDesk &desk)
        : StationPanel(info, desk)
        , m_form(new EntryForm(
              desk, key(), tr("I have arrived"),
              {{"arrived", tr("Arrived at"), tr("HH:MM; left empty: now"), Answer::Clock}},
              [this](const QJsonObject &values) { return facts(values); }, FormShape::Line))
    {
        body()->addWidget(m_form);
        connect(m_form, &EntryForm::recorded, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

protected:
    std::pair<Sign, QString> need() const override
    {
        if (const auto arrived = openVisit(desk().view(), desk().now()))
            return {Sign::Done, tr("On site since %1.").arg(clock(*arrived))};
        return {Sign::Open, tr("Say when you arrive: every entry of today then belongs to this "
                               "visit. Without it the calendar day is the visit.")};
    }

private:
    FactObjects facts(const QJsonObject &values) const
    {
        const Moment now = desk().now();
        return {{{"kind", "visit"}, {"arrived", values.value("arrived").toString(now.text())}}};
    }

    EntryForm *m_form;
};

class LeavingPanel : public StationPanel
{
public:
    LeavingPanel(const PanelInfo &info, JobDesk &desk)
        : StationPanel(info, desk)
        , m_form(new EntryForm(
              desk, key(), tr("I am leaving"),
              {{"result", tr("How the visit went"), {}, Answer::Choice, results(), 0},
               {"left", tr("Left at"), tr("HH:MM; left empty: now"), Answer::Clock}},
              [this](const QJsonObject &values) { return facts(values); }, FormShape::Line))
    {
        body()->addWidget(m_form);
        connect(m_form, &EntryForm::recorded, this, &StationPanel::recorded);
    }

    QWidget *entry(const QString &) const override { return m_form->firstEmpty(); }

protected:
    std::pair<Sign, QString> need() const override
    {
        if (const auto arrived = openVisit(desk().view(), desk().now()))
            return {Sign::Open, tr("On site since %1. Say how the visit went when you leave; a "
                                   "visit without result counts too.")
                                    .arg(clock(*arrived))};
        return {Sign::Note, tr("No visit is going on.")};
    }

private:
    static std::vector<KeyOption> results()
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
        if (const auto arrived = openVisit(desk().view(), now))
            fact.insert("arrived", arrived->text());
        if (values.contains("result"))
            fact.insert("result", values.value("result"));
        return {fact};
    }

    EntryForm *m_form;
};

} // namespace

StationPanel *makeArrivalPanel(const PanelInfo &info, JobDesk &desk)
{
    return new ArrivalPanel(info, desk);
}

StationPanel *makeLeavingPanel(const PanelInfo &info, JobDesk &desk)
{
    return new LeavingPanel(info, desk);
}

} // namespace loopwright
