// The criteria, each with what was measured, its limit, the outcome by sign and word, the reason
// and the way to its evidence. Below, the exception that a supervisor may grant.

#include "app/actions/Acceptance.h"
#include "app/actions/Register.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/panels/Panels.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignList.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

/// Lets the actions act for another person as long as it lives.
class ActingAs
{
public:
    ActingAs(Records &records, const QString &name)
        : m_records(records)
        , m_before(records.by())
    {
        records.actAs(name);
    }
    ~ActingAs() { m_records.actAs(m_before); }
    ActingAs(const ActingAs &) = delete;
    ActingAs &operator=(const ActingAs &) = delete;

private:
    Records &m_records;
    QString m_before;
};

/// Of a person by key or name; what was typed if the register has neither.
QString keyOf(Records &records, const QString &typed)
{
    if (const auto known = people(records))
        for (const Person &person : *known)
            if (person.key == typed || person.name == typed)
                return person.key;
    return typed;
}

class AcceptancePanel : public StationPanel
{
public:
    AcceptancePanel(const PanelInfo &info, JobSession &desk)
        : StationPanel(info, desk)
        , m_list(new SignList(key() + ".criteria", tr("Criteria")))
        , m_evidence(makeButton(tr("Show its evidence (Enter)"), key() + ".evidence",
                                [this] { showEvidence(m_list->chosen()); }))
        , m_notes(makeMuted({}))
        , m_proves(makeText({}))
        , m_decide(makeButton(tr("Decide, and keep the decision"), key() + ".decide",
                              [this] { decide(); }))
        , m_exception(new QWidget)
    {
        body()->addWidget(m_list);
        body()->addWidget(m_evidence, 0, Qt::AlignLeft);
        body()->addWidget(m_notes);
        body()->addWidget(m_proves);
        connect(m_list, &SignList::opened, this, [this](const QString &key) { showEvidence(key); });
        connect(m_list, &SignList::chosenChanged, this, [this] {
            const CriterionResult *chosen = this->desk().decision().criterion(m_list->chosen());
            m_evidence->setVisible(chosen && !chosen->evidence.isEmpty());
        });
        m_evidence->hide();
        body()->addWidget(m_decide, 0, Qt::AlignLeft);
        m_decide->setAutoDefault(true);
        whenThemed(m_decide, [this] {
            m_decide->setMinimumHeight(em(2.5));
            m_decide->setFont(sized(1, QFont::DemiBold));
        });
        auto *layout = new QVBoxLayout(m_exception);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(makeHeading(tr("Exception by a supervisor"), 1.1));
        m_form = makeFactForm(
            desk, key() + ".exception", tr("Accept with this exception"),
            {{"criteria", tr("Which criteria"), tr("their numbers from the list, such as 2 5"),
              Answer::Text},
             {"because",
              tr("Why it may pass"),
              tr("printed on the certificate"),
              Answer::Text,
              {},
              2},
             {"by", tr("Supervisor"), tr("key or name; printed on the certificate"), Answer::Text}},
            {});
        m_form->setConfirm([this] { return except(); });
        layout->addWidget(m_form);
        body()->addWidget(m_exception);
    }

    QWidget *entry(const QString &) override { return m_decide; }

    void showOrder() override
    {
        StationPanel::showOrder();
        const Decision &decision = desk().decision();
        std::vector<SignItem> items;
        bool open = false;
        for (const CriterionResult &criterion : decision.criteria) {
            items.push_back(itemOf(int(items.size()) + 1, criterion));
            open = open || criterion.open();
        }
        m_list->setItems(std::move(items));
        m_notes->setText(localized(Text::joined(decision.notes, "\n")));
        m_notes->setVisible(!decision.notes.empty());
        m_proves->setText(tr("What the run proves: %1").arg(localized(decision.proves)));
        m_proves->setVisible(!decision.proves.isEmpty());
        m_exception->setVisible(open);
    }

protected:
    std::pair<Status, QString> standing() const override
    {
        switch (desk().decision().outcome) {
        case OrderOutcome::Accepted:
            return {Status::Done, tr("Accepted: every criterion is met or not needed.")};
        case OrderOutcome::AcceptedWithException:
            return {Status::Done, tr("Accepted with exception.")};
        case OrderOutcome::NotAccepted:
            return {Status::Failed, tr("Not accepted: a criterion is not met.")};
        case OrderOutcome::Incomplete:
            break;
        }
        return {Status::Open, tr("Incomplete: evidence is missing.")};
    }

private:
    static SignItem itemOf(int number, const CriterionResult &criterion)
    {
        QString title =
            tr("%1  %2: %3").arg(number).arg(localized(criterion.name), wordOf(criterion));
        if (!criterion.measuredText.isEmpty())
            title += tr(" — %1").arg(localized(criterion.measuredText));
        if (!criterion.limitText.isEmpty() && criterion.outcome != CriterionOutcome::NotNeeded)
            title += tr(" (limit: %1)").arg(localized(criterion.limitText));
        QString text = localized(criterion.reason);
        if (criterion.excepted)
            text +=
                u'\n' +
                tr("Excepted by %1: %2").arg(criterion.excepted->by, criterion.excepted->because);
        return {criterion.key, loopwright::signOf(criterion), title, text,
                tr("Source of the limit: %1").arg(localizedName(criterion.source))};
    }

    void showEvidence(const QString &criterion)
    {
        if (const CriterionResult *shown = desk().decision().criterion(criterion);
            shown && !shown->evidence.isEmpty())
            emit desk().evidenceWished(shown->evidence.front());
    }

    void decide()
    {
        if (const auto decision = decideOrder(desk().records(), desk().order().number); !decision) {
            emit desk().troubled(localized(decision.error()));
            return;
        }
        desk().wasChanged(tr("The decision is kept with everything that it was made from."));
        emit recorded({});
    }

    QStringList chosenKeys(const QString &typed) const
    {
        QStringList keys;
        const auto &criteria = desk().decision().criteria;
        for (const QString &word :
             typed.split(QRegularExpression("[\\s,;]+"), Qt::SkipEmptyParts)) {
            const int number = word.toInt();
            const bool inList = number >= 1 && number <= int(criteria.size());
            keys << (inList ? criteria[std::size_t(number) - 1].key : word);
        }
        return keys;
    }

    bool except()
    {
        const QJsonObject typed = m_form->typed();
        const QString by = typed.value("by").toString();
        if (by.isEmpty()) {
            m_form->field("by")->mark(tr("An exception needs the name of a supervisor."));
            m_form->field("by")->field()->setFocus();
            return false;
        }
        const ActingAs acting(desk().records(), keyOf(desk().records(), by));
        const auto decision = acceptWithException(desk().records(), desk().order().number,
                                                  chosenKeys(typed.value("criteria").toString()),
                                                  typed.value("because").toString());
        if (!decision) {
            m_form->tell(Status::Failed, localized(decision.error()));
            return false;
        }
        m_form->clear();
        m_form->keep();
        desk().wasChanged(tr("The exception is recorded under the name of %1.").arg(by));
        emit recorded({});
        return true;
    }

    SignList *m_list;
    QPushButton *m_evidence; ///< of the criterion that is chosen
    QLabel *m_notes;
    QLabel *m_proves;
    QPushButton *m_decide;
    QWidget *m_exception;
    Form *m_form = nullptr;
};

} // namespace

StationPanel *makeAcceptancePanel(const PanelInfo &info, JobSession &desk)
{
    return new AcceptancePanel(info, desk);
}

} // namespace loopwright
