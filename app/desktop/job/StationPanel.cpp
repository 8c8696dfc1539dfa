#include "app/desktop/job/StationPanel.h"

#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/FactForm.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/widgets/PageElements.h"

#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

StationPanel::StationPanel(const PanelInfo &info, JobSession &desk, QWidget *parent)
    : QFrame(parent)
    , m_info(info)
    , m_desk(desk)
    , m_need(new SignLine)
    , m_stop(new SignLine)
    , m_entry(new QWidget)
    , m_body(new QVBoxLayout(m_entry))
    , m_attempts(new AttemptList(QString::fromLatin1(info.key)))
{
    setObjectName("panel." + key());
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setAccessibleName(tr(info.title));
    auto *layout = new QVBoxLayout(this);
    auto *title = new QLabel(tr(info.title));
    outlineWhereFlat(this);
    whenThemed(this, [layout, title] {
        layout->setContentsMargins(em(1.2), em(0.9), em(1.2), em(1.1));
        layout->setSpacing(em(0.6));
        title->setFont(sized(1.35, QFont::DemiBold));
    });
    layout->addWidget(title);
    layout->addWidget(m_need);
    layout->addWidget(m_stop);
    m_body->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_entry);
    layout->addWidget(m_attempts);
    m_stop->hide();
    connect(m_attempts, &AttemptList::correctWished, this, &StationPanel::correct);
    connect(m_attempts, &AttemptList::voidWished, this,
            [this](const QString &fact, const QString &because) {
                if (const auto voided = m_desk.voidFact(fact, because); !voided)
                    m_attempts->tell(voided.error().message);
                else
                    m_attempts->setFocus();
            });
}

bool StationPanel::serves(const QString &criterion) const
{
    return QString::fromLatin1(m_info.criteria).split(' ').contains(criterion);
}

std::vector<const CriterionResult *> StationPanel::ownCriteria() const
{
    std::vector<const CriterionResult *> own;
    for (const CriterionResult &criterion : m_desk.decision().criteria)
        if (serves(criterion.key))
            own.push_back(&criterion);
    return own;
}

std::pair<Status, QString> StationPanel::need() const
{
    const auto own = ownCriteria();
    if (own.empty())
        return {Status::None, {}};
    const auto open = std::ranges::find_if(own, [](const auto *each) { return each->open(); });
    const bool anyNeeded = std::ranges::any_of(
        own, [](const auto *each) { return each->outcome != CriterionOutcome::NotNeeded; });
    if (open != own.end()) {
        const CriterionResult &first = **open;
        return {signOf(first), QString("%1: %2 %3")
                                   .arg(first.name, first.reason.english(), first.next.english())
                                   .trimmed()};
    }
    if (!anyNeeded)
        return {Status::NotNeeded, tr("Not needed. %1").arg(own.front()->reason.english())};
    QStringList reasons;
    for (const CriterionResult *each : own)
        if (each->outcome == CriterionOutcome::Met)
            reasons << each->reason.english();
        else if (each->excepted)
            reasons << tr("%1 excepted by %2.").arg(each->name, each->excepted->by);
    return {Status::Done, tr("Done. %1").arg(reasons.join(' '))};
}

void StationPanel::showOrder()
{
    showNeed();
    showAttempts();
}

void StationPanel::correctIn(Form *form, std::function<bool(const Fact &)> isOf)
{
    m_correcting.push_back({form, std::move(isOf)});
}

const StationPanel::Correcting *StationPanel::correctingOf(const Fact &fact) const
{
    const auto found = std::ranges::find_if(
        m_correcting, [&fact](const Correcting &each) { return each.isOf(fact); });
    return found == m_correcting.end() ? nullptr : &*found;
}

void StationPanel::showAttempts()
{
    std::vector<Attempt> attempts;
    const auto &facts = m_desk.view().facts;
    for (auto it = facts.rbegin(); it != facts.rend(); ++it) {
        if (std::ranges::find(m_info.kinds, it->fact.kind()) == m_info.kinds.end())
            continue;
        const auto [status, words] = standingOf(*it, m_desk.view());
        const bool mayVoid = !it->voided && !it->fact.as<VoidFact>();
        attempts.push_back({it->fact.id, status,
                            timeText(it->fact.at, m_desk.now().localDate()) + "  " +
                                factText(it->fact, m_desk.order().kind) +
                                (words.isEmpty() ? QString() : " — " + words),
                            mayVoid, mayVoid && correctingOf(it->fact)});
    }
    m_attempts->show(std::move(attempts));
}

void StationPanel::correct(const QString &id)
{
    const auto &facts = m_desk.view().facts;
    const auto found =
        std::ranges::find_if(facts, [&id](const FactView &view) { return view.fact.id == id; });
    const Correcting *correcting = found == facts.end() ? nullptr : correctingOf(found->fact);
    if (!correcting)
        return;
    Form *form = correcting->form;
    form->setTyped(typedOf(*form, found->fact));
    m_desk.setCorrects(form->objectName(), id);
    form->keep();
    form->tell(Status::Note,
               tr("Filled with the entry of %1. What you record takes its place; that one stays on "
                  "record as corrected.")
                   .arg(timeText(found->fact.at, m_desk.now().localDate())));
    if (!form->fields().empty())
        form->fields().front()->goTo();
}

void StationPanel::showNeed()
{
    const auto [sign, text] = need();
    m_need->show(sign, text);
    m_need->setVisible(!text.isEmpty());
}

void StationPanel::setStopped(const QString &why)
{
    m_entry->setEnabled(why.isEmpty());
    m_stop->show(Status::Failed, why);
    m_stop->setVisible(!why.isEmpty());
}

Status signOf(const CriterionResult &criterion)
{
    if (criterion.excepted && criterion.outcome != CriterionOutcome::Met)
        return Status::Doubtful;
    switch (criterion.outcome) {
    case CriterionOutcome::Met:
        return Status::Done;
    case CriterionOutcome::NotMet:
        return Status::Failed;
    case CriterionOutcome::Missing:
        return Status::Open;
    case CriterionOutcome::NotNeeded:
        break;
    }
    return Status::NotNeeded;
}

QString wordOf(const CriterionResult &criterion)
{
    if (criterion.excepted && criterion.outcome != CriterionOutcome::Met)
        return StationPanel::tr("excepted");
    return toText(criterion.outcome).replace(u'_', u' ');
}

} // namespace loopwright
