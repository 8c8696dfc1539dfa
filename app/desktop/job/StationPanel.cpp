#include "app/desktop/job/StationPanel.h"

#include "app/desktop/Language.h"
#include "app/desktop/Lengths.h"
#include "app/desktop/Theme.h"
#include "app/desktop/job/AttemptList.h"
#include "app/desktop/job/FactText.h"
#include "app/desktop/job/PanelTitle.h"
#include "app/desktop/widgets/PageElements.h"
#include "core/acceptance/FactWords.h"
#include "core/acceptance/PartHelp.h"

#include <QHBoxLayout>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

QString helpText(const QString &part)
{
    const PartHelp *help = findPartHelp(part);
    return help ? localized(help->whatFor()) + '\n' +
                      StationPanel::tr("When it fails: %1").arg(localized(help->whenItFails()))
                : QString();
}

} // namespace

StationPanel::StationPanel(const PanelInfo &info, JobSession &desk, QWidget *parent)
    : QFrame(parent)
    , m_info(info)
    , m_desk(desk)
    , m_title(new PanelTitle(tr(info.title)))
    , m_help(makeMuted(helpText(info.key())))
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
    layout->addWidget(makeHead());
    layout->addWidget(m_help);
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
                    m_attempts->tell(localizedSentence(voided.error().message));
                else
                    m_attempts->setFocus();
            });
}

/// The title, and beside it a sign that shows the help; by the keyboard Shift+F1 does.
QWidget *StationPanel::makeHead()
{
    m_help->setObjectName(key() + ".help");
    m_help->hide();
    auto *sign = new QToolButton;
    sign->setObjectName(key() + ".help_sign");
    sign->setText(QStringLiteral("?"));
    sign->setAutoRaise(true);
    sign->setFocusPolicy(Qt::NoFocus);
    sign->setAccessibleName(tr("Help on %1").arg(m_title->text()));
    sign->setToolTip(tr("What it is for, and what to do when it fails   Shift+F1"));
    connect(sign, &QToolButton::clicked, this, &StationPanel::toggleHelp);
    auto *head = new QWidget;
    auto *row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(m_title, 1);
    row->addWidget(sign);
    return head;
}

void StationPanel::toggleHelp()
{
    m_help->setVisible(m_help->isHidden());
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
        attempts.push_back(
            {it->fact.id, status,
             timeText(it->fact.at, m_desk.now().localDate()) + "  " +
                 localizedSentence(factText(it->fact, m_desk.order().kind, inMetres())) +
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
