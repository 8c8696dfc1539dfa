#include "app/desktop/job/StationPanel.h"

#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
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
    , m_attempts(new AttemptList(desk, QString::fromLatin1(info.key), info.kinds))
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
        return {signOf(first),
                QString("%1: %2 %3").arg(first.name, first.reason.english(), first.next.english()).trimmed()};
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
    m_attempts->showOrder();
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
