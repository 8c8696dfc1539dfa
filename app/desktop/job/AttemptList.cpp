#include "app/desktop/job/AttemptList.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"

#include <QHBoxLayout>
#include <QKeyEvent>

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::size_t shownAtFirst = 4;
const QString moreKey = QStringLiteral("more");

} // namespace

AttemptList::AttemptList(const QString &part, QWidget *parent)
    : QWidget(parent)
    , m_list(new SignList(part + ".recorded", tr("Recorded entries")))
    , m_correct(makeButton(tr("Correct (C)"), part + ".correct", [this] { correct(); }))
    , m_void(makeButton(tr("Does not count (Del)"), part + ".void", [this] { askWhy(); }))
    , m_ask(new QWidget)
    , m_why(new QLineEdit)
    , m_told(new SignLine)
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    whenThemed(this, [layout] { layout->setSpacing(em(0.3)); });
    m_actions = makeButtonRow({m_correct, m_void});
    makeQuestion(part);
    for (QWidget *each :
         {static_cast<QWidget *>(m_list), m_actions, m_ask, static_cast<QWidget *>(m_told)}) {
        layout->addWidget(each);
        each->hide();
    }
    setFocusProxy(m_list);
    m_list->installEventFilter(this);
    connect(m_list, &SignList::chosenChanged, this, &AttemptList::showActions);
    connect(m_list, &SignList::opened, this, [this](const QString &key) {
        if (key != moreKey)
            return;
        m_all = true;
        showRows();
    });
}

void AttemptList::makeQuestion(const QString &part)
{
    auto *ask = new QHBoxLayout(m_ask);
    ask->setContentsMargins(em(1.6), 0, 0, 0);
    QLabel *label = makeText(tr("Why does it not count? Enter records it, Esc leaves it."));
    ask->addWidget(label, 1);
    ask->addWidget(m_why, 2);
    m_why->setObjectName(part + ".why");
    m_why->setAccessibleName(label->text());
    whenThemed(m_why, [this] { m_why->setMinimumHeight(em(2.2)); });
    m_why->installEventFilter(this);
    connect(m_why, &QLineEdit::returnPressed, this,
            [this] { emit voidWished(chosen(), m_why->text().trimmed()); });
}

void AttemptList::show(std::vector<Attempt> attempts)
{
    m_attempts = std::move(attempts);
    m_ask->hide();
    m_told->hide();
    showRows();
    setVisible(!m_attempts.empty());
}

void AttemptList::showRows()
{
    std::vector<SignItem> items;
    for (const Attempt &attempt : m_attempts) {
        if (!m_all && items.size() == shownAtFirst)
            break;
        items.push_back({attempt.fact, attempt.status, {}, attempt.text});
    }
    if (items.size() < m_attempts.size())
        items.push_back({moreKey,
                         Status::None,
                         {},
                         tr("Show %1 earlier entries (Enter)")
                             .arg(qlonglong(m_attempts.size() - items.size()))});
    m_list->setItems(std::move(items));
    showActions();
}

const Attempt *AttemptList::chosenAttempt() const
{
    const auto found = std::ranges::find(m_attempts, chosen(), &Attempt::fact);
    return found == m_attempts.end() ? nullptr : &*found;
}

void AttemptList::showActions()
{
    const Attempt *attempt = chosenAttempt();
    m_correct->setVisible(attempt && attempt->mayCorrect);
    m_void->setVisible(attempt && attempt->mayVoid);
    m_actions->setVisible(attempt && (attempt->mayCorrect || attempt->mayVoid));
}

bool AttemptList::has(const QString &fact) const
{
    return std::ranges::find(m_attempts, fact, &Attempt::fact) != m_attempts.end();
}

bool AttemptList::goTo(const QString &fact)
{
    if (!has(fact))
        return false;
    if (!m_list->choose(fact)) {
        m_all = true;
        showRows();
        m_list->choose(fact);
    }
    m_list->setFocus();
    return true;
}

void AttemptList::askWhy()
{
    const Attempt *attempt = chosenAttempt();
    if (!attempt || !attempt->mayVoid)
        return;
    m_ask->show();
    m_why->clear();
    m_why->setFocus();
}

void AttemptList::leaveQuestion()
{
    m_ask->hide();
    m_told->hide();
    m_list->setFocus();
}

void AttemptList::correct()
{
    if (const Attempt *attempt = chosenAttempt(); attempt && attempt->mayCorrect)
        emit correctWished(attempt->fact);
}

void AttemptList::tell(const QString &reason)
{
    m_told->tell(Status::Failed, reason);
}

bool AttemptList::eventFilter(QObject *object, QEvent *event)
{
    const bool question = object == m_why;
    if (event->type() == QEvent::ShortcutOverride && question &&
        static_cast<QKeyEvent *>(event)->key() == Qt::Key_Escape) {
        event->accept(); // before the window takes that key for its own
        leaveQuestion();
        return true;
    }
    if (event->type() == QEvent::KeyPress && !question) {
        const auto *key = static_cast<QKeyEvent *>(event);
        if (key->modifiers() == Qt::NoModifier && key->key() == Qt::Key_Delete) {
            askWhy();
            return true;
        }
        if (key->modifiers() == Qt::NoModifier && key->key() == Qt::Key_C) {
            correct();
            return true;
        }
    }
    return QWidget::eventFilter(object, event);
}

} // namespace loopwright
