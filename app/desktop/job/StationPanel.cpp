#include "app/desktop/job/StationPanel.h"

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/PanelTitle.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/FactWords.h"

#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

StationPanel::StationPanel(const PanelInfo &info, JobSession &desk, QWidget *parent)
    : QFrame(parent)
    , m_info(info)
    , m_desk(desk)
    , m_title(new PanelTitle(tr(info.title)))
    , m_standing(new SignLine)
    , m_entry(new QWidget)
    , m_body(new QVBoxLayout(m_entry))
    , m_attempts(new AttemptList(info.key()))
{
    setObjectName("panel." + key());
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    setAccessibleName(tr(info.title));
    m_title->setObjectName(key() + ".title");
    auto *layout = new QVBoxLayout(this);
    outlineWhereFlat(this);
    whenThemed(this, [this, layout] {
        layout->setContentsMargins(em(1), em(0.4), em(1), em(0.5));
        layout->setSpacing(em(0.5));
        m_body->setSpacing(em(0.6));
    });
    layout->addWidget(m_title);
    layout->addWidget(m_standing);
    m_body->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_entry);
    layout->addWidget(m_attempts);
    connect(m_title, &PanelTitle::clicked, this, [this] {
        m_byHand = true;
        fold(!isFolded());
    });
    connect(m_attempts, &AttemptList::correctWished, this, &StationPanel::correct);
    connect(m_attempts, &AttemptList::voidWished, this,
            [this](const QString &fact, const QString &because) {
                if (const auto voided = m_desk.voidFact(fact, because); !voided)
                    m_attempts->tell(voided.error().message);
                else
                    m_attempts->setFocus();
            });
}

bool StationPanel::isFolded() const
{
    return m_title->isFolded();
}

void StationPanel::setFolded(bool folded)
{
    if (!m_byHand)
        fold(folded);
}

void StationPanel::unfold()
{
    fold(false);
}

QWidget *StationPanel::takeKeyboard(const QString &need)
{
    unfold();
    QWidget *place = entry(need);
    if (!place || !place->isEnabled())
        place = m_title;
    place->setFocus(Qt::ShortcutFocusReason);
    return place;
}

void StationPanel::fold(bool folded)
{
    m_title->setFolded(folded);
    m_standing->setVisible(!folded && !m_standing->text().isEmpty());
    m_entry->setVisible(!folded);
    m_attempts->setVisible(!folded && m_attempts->count() > 0);
}

void StationPanel::showOrder()
{
    const auto [sign, text] = standing();
    m_title->say(sign, text);
    m_standing->show(sign, text);
    showAttempts();
    fold(isFolded());
}

bool StationPanel::lists(const Fact &fact) const
{
    return std::ranges::find(m_info.also, fact.kind()) != m_info.also.end();
}

void StationPanel::showAttempts()
{
    std::vector<Attempt> attempts;
    const auto &facts = m_desk.view().facts;
    for (auto it = facts.rbegin(); it != facts.rend(); ++it) {
        if (!lists(it->fact))
            continue;
        const auto [status, words] = standingOf(*it, m_desk.view());
        const bool mayVoid = !it->voided && !it->fact.as<VoidFact>();
        attempts.push_back({it->fact.id, status,
                            timeText(it->fact.at, m_desk.now().localDate()) + "  " +
                                factText(it->fact, m_desk.order().kind) +
                                (words.isEmpty() ? QString() : " — " + words),
                            mayVoid, mayVoid && corrects(it->fact)});
    }
    m_attempts->show(std::move(attempts));
}

void StationPanel::correct(const QString &id)
{
    const auto &facts = m_desk.view().facts;
    const auto found =
        std::ranges::find_if(facts, [&id](const FactView &view) { return view.fact.id == id; });
    if (found == facts.end() || !corrects(found->fact))
        return;
    const Fact fact = found->fact; // a copy: the page may be read anew while it is filled
    if (QWidget *place = refill(fact))
        place->setFocus(Qt::OtherFocusReason);
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
    return localizedWord(toText(criterion.outcome));
}

} // namespace loopwright
