#include "app/desktop/job/AttemptList.h"

#include "app/desktop/Theme.h"
#include "app/desktop/job/FactText.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int shownAtFirst = 4;

/// Leaves the question by Escape, before the window takes that key for its own.
class EscapeLeaves : public QObject
{
public:
    EscapeLeaves(QObject *parent, std::function<void()> leave)
        : QObject(parent)
        , m_leave(std::move(leave))
    {
    }
    bool eventFilter(QObject *, QEvent *event) override
    {
        if (event->type() != QEvent::ShortcutOverride ||
            static_cast<QKeyEvent *>(event)->key() != Qt::Key_Escape)
            return false;
        event->accept();
        m_leave();
        return true;
    }

private:
    std::function<void()> m_leave;
};

} // namespace

AttemptList::AttemptList(JobSession &desk, const QString &part, QList<FactKind> kinds,
                         QWidget *parent)
    : QFrame(parent)
    , m_desk(desk)
    , m_kinds(std::move(kinds))
    , m_rows(new QVBoxLayout)
    , m_ask(new QWidget)
    , m_why(new QLineEdit)
    , m_told(new SignLine)
{
    setObjectName(part + ".recorded");
    setFocusPolicy(Qt::StrongFocus);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    layout->addLayout(m_rows);
    m_rows->setSpacing(1);
    auto *ask = new QHBoxLayout(m_ask);
    ask->setContentsMargins(em(1.6), 0, 0, 0);
    auto *label = new QLabel(tr("Why does it no longer count? Enter records it, Esc leaves it."));
    label->setWordWrap(true);
    ask->addWidget(label, 1);
    ask->addWidget(m_why, 2);
    m_why->setObjectName(part + ".why");
    m_why->setAccessibleName(label->text());
    m_why->setMinimumHeight(em(2.2));
    m_why->installEventFilter(new EscapeLeaves(this, [this] {
        m_ask->hide();
        setFocus();
    }));
    connect(m_why, &QLineEdit::returnPressed, this, &AttemptList::voidChosen);
    layout->addWidget(m_ask);
    layout->addWidget(m_told);
    m_ask->hide();
    m_told->hide();
}

QString AttemptList::standing(const FactView &view) const
{
    if (view.voided)
        return tr("voided by %1: %2").arg(view.voidedBy, view.voidedBecause);
    for (const RunMade &run : m_desk.decision().runs)
        if (run.fact == view.fact.id)
            return run.result;
    for (const CriterionResult &criterion : m_desk.decision().criteria)
        if (criterion.evidence.contains(view.fact.id))
            return tr("counts");
    return {};
}

/// What failed bears the mark of failure, whether it still counts or not.
Status AttemptList::signOf(const FactView &view, const QString &standing) const
{
    if (view.voided)
        return Status::NotNeeded;
    if (hasFailed(view.fact, m_desk.limits()) || standing == u"failed")
        return Status::Failed;
    return standing == tr("counts") || standing == u"counted" ? Status::Done : Status::Note;
}

void AttemptList::showOrder()
{
    const QString kept = chosen();
    while (QLayoutItem *item = m_rows->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_ids.clear();
    m_widgets.clear();
    int more = 0;
    const auto &facts = m_desk.view().facts;
    for (auto it = facts.rbegin(); it != facts.rend(); ++it) {
        if (!m_kinds.contains(it->fact.kind()))
            continue;
        if (m_all || count() < shownAtFirst)
            addRow(*it);
        else
            ++more;
    }
    if (more > 0) {
        auto *button = new QToolButton;
        button->setText(tr("Show %1 earlier entries").arg(more));
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &QToolButton::clicked, this, [this] {
            m_all = true;
            QMetaObject::invokeMethod(this, &AttemptList::showOrder, Qt::QueuedConnection);
        });
        m_rows->addWidget(button);
    }
    m_ask->hide();
    m_told->hide();
    const auto found = std::ranges::find(m_ids, kept);
    choose(found == m_ids.end() ? -1 : int(found - m_ids.begin()));
    setVisible(count() > 0);
}

void AttemptList::addRow(const FactView &view)
{
    auto *row = new QWidget;
    row->setAutoFillBackground(true);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(em(0.4), 1, em(0.4), 1);
    auto *line = new SignLine;
    const QString how = standing(view);
    line->show(signOf(view, how), timeText(view.fact.at, m_desk.now().localDate()) + "  " +
                                      factText(view.fact, m_desk.order().kind) +
                                      (how.isEmpty() ? QString() : " — " + how));
    layout->addWidget(line, 1, Qt::AlignVCenter);
    const bool canVoid = !view.voided && view.fact.kind() != FactKind::Void;
    if (canVoid) {
        auto *button = new QToolButton;
        button->setText(tr("Void…"));
        button->setFocusPolicy(Qt::NoFocus);
        const QString id = view.fact.id;
        connect(button, &QToolButton::clicked, this, [this, id] {
            if (show(id))
                askWhy();
        });
        layout->addWidget(button, 0, Qt::AlignVCenter);
    }
    m_rows->addWidget(row);
    m_ids.push_back(view.fact.id);
    m_widgets.push_back(row);
}

QString AttemptList::chosen() const
{
    return m_chosen < 0 || m_chosen >= count() ? QString() : m_ids[std::size_t(m_chosen)];
}

bool AttemptList::show(const QString &factId)
{
    m_all = m_all || std::ranges::find(m_ids, factId) == m_ids.end();
    if (m_all)
        showOrder();
    const auto found = std::ranges::find(m_ids, factId);
    if (found == m_ids.end())
        return false;
    setFocus();
    choose(int(found - m_ids.begin()));
    return true;
}

void AttemptList::choose(int row)
{
    m_chosen = row;
    for (int i = 0; i < count(); ++i)
        m_widgets[std::size_t(i)]->setBackgroundRole(i == row && hasFocus() ? QPalette::Highlight
                                                                            : QPalette::Base);
    setAccessibleName(row < 0 ? tr("Recorded entries")
                              : m_widgets[std::size_t(row)]->findChild<SignLine *>()->text());
}

void AttemptList::askWhy()
{
    const QString id = chosen();
    const auto &facts = m_desk.view().facts;
    const auto found =
        std::ranges::find_if(facts, [&id](const FactView &view) { return view.fact.id == id; });
    if (found == facts.end() || found->voided || found->fact.kind() == FactKind::Void)
        return;
    m_ask->show();
    m_why->clear();
    m_why->setFocus();
}

void AttemptList::voidChosen()
{
    const QString because = m_why->text().trimmed();
    if (const auto voided = m_desk.voidFact(chosen(), because); !voided) {
        m_told->show(Status::Failed, voided.error().message);
        m_told->setVisible(true);
        return;
    }
    setFocus();
}

void AttemptList::keyPressEvent(QKeyEvent *event)
{
    switch (event->key()) {
    case Qt::Key_Down:
        choose(std::min(m_chosen + 1, count() - 1));
        return;
    case Qt::Key_Up:
        choose(std::max(m_chosen - 1, 0));
        return;
    case Qt::Key_Delete:
        askWhy();
        return;
    default:
        QFrame::keyPressEvent(event);
    }
}

void AttemptList::focusInEvent(QFocusEvent *event)
{
    QFrame::focusInEvent(event);
    choose(m_chosen < 0 && count() > 0 ? 0 : m_chosen);
}

void AttemptList::focusOutEvent(QFocusEvent *event)
{
    QFrame::focusOutEvent(event);
    choose(m_chosen);
}

} // namespace loopwright
