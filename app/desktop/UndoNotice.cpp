#include "app/desktop/UndoNotice.h"

#include "app/desktop/DesktopContext.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextEdit>

namespace loopwright {

namespace {

constexpr std::size_t stepsKept = 20;

bool canUndoTyping(const QObject *field)
{
    if (const auto *combo = qobject_cast<const QComboBox *>(field))
        return combo->lineEdit() && combo->lineEdit()->isUndoAvailable();
    if (const auto *line = qobject_cast<const QLineEdit *>(field))
        return line->isUndoAvailable();
    if (const auto *text = qobject_cast<const QTextEdit *>(field))
        return !text->isReadOnly() && text->document()->isUndoAvailable();
    if (const auto *text = qobject_cast<const QPlainTextEdit *>(field))
        return !text->isReadOnly() && text->document()->isUndoAvailable();
    return false;
}

} // namespace

UndoNotice::UndoNotice(DesktopContext &workplace, QWidget *parent)
    : QFrame(parent)
    , m_asker(workplace.longWork())
    , m_action(new QAction(tr("&Undo"), this))
    , m_words(new SignLine)
    , m_undo(makeButton(tr("Undo   Ctrl+Z"), QStringLiteral("undo.take_back"), [this] { undo(); }))
{
    setObjectName(QStringLiteral("undo"));
    setAccessibleName(tr("What was done last"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    m_action->setObjectName(QStringLiteral("action.undo"));
    m_action->setShortcut(QKeySequence::Undo);
    setWhyOff(m_action, tr("Nothing was done that can be taken back."));
    connect(m_action, &QAction::triggered, this, &UndoNotice::undo);
    m_words->setObjectName(QStringLiteral("undo.words"));
    QPushButton *dismissed =
        makeButton(tr("Dismiss"), QStringLiteral("undo.dismiss"), [this] { dismiss(); });
    auto *row = new QHBoxLayout(this);
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    row->addWidget(m_undo);
    row->addWidget(dismissed);
    for (QPushButton *button : {m_undo, dismissed})
        button->setFocusPolicy(Qt::TabFocus); // a click leaves the keyboard at the rows
    whenThemed(this, [row] {
        row->setContentsMargins(em(1), em(0.4), em(1), em(0.4));
        row->setSpacing(em(0.7));
    });
    dismiss();
    qApp->installEventFilter(this);
}

/// A field takes Ctrl+Z for itself, even where nothing was typed in it. Then it is the notice's.
bool UndoNotice::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::ShortcutOverride && m_action->isEnabled() &&
        static_cast<QKeyEvent *>(event)->matches(QKeySequence::Undo) && !canUndoTyping(object)) {
        event->ignore();
        return true;
    }
    return QFrame::eventFilter(object, event);
}

void UndoNotice::tell(const DoneStep &step)
{
    if (step.takeBack)
        m_steps.push_back(step);
    if (m_steps.size() > stepsKept)
        m_steps.erase(m_steps.begin());
    showPossible(step.takeBack != nullptr);
    show();
    m_words->tell(step.remark.isEmpty() ? Status::Done : Status::Doubtful,
                  QStringList{step.sentence, step.remark}.join(u' ').trimmed());
}

void UndoNotice::undo()
{
    if (m_steps.empty() || m_asker.isBusy())
        return;
    const DoneStep step = m_steps.back();
    m_steps.pop_back();
    m_action->setEnabled(false);
    m_undo->setEnabled(false);
    m_asker.ask<void>([step](Records &records, const Progress &) { return step.takeBack(records); },
                      [this, step](const Result<void> &done) { showUndone(step, done); });
}

void UndoNotice::showUndone(const DoneStep &step, const Result<void> &done)
{
    // What others changed since stays refused; a full disk does not.
    const bool over =
        done || done.error().code == ErrorCode::Refused || done.error().code == ErrorCode::NotFound;
    if (!over)
        m_steps.push_back(step);
    showPossible(!over);
    show();
    m_words->tell(done ? Status::Done : Status::Failed,
                  done ? tr("Taken back: %1").arg(step.sentence)
                       : tr("Not taken back: %1 %2").arg(step.sentence, localized(done.error())));
    emit takenBack();
}

/// `told`: the notice tells the step that is taken back next.
void UndoNotice::showPossible(bool told)
{
    const bool possible = !m_steps.empty();
    m_action->setEnabled(possible);
    m_undo->setEnabled(possible);
    m_undo->setVisible(possible);
    m_undo->setText(told ? tr("Undo   Ctrl+Z") : tr("Undo the step before   Ctrl+Z"));
    m_undo->setToolTip(told || !possible ? QString() : asTip(m_steps.back().sentence));
}

void UndoNotice::dismiss()
{
    m_steps.clear();
    showPossible(true);
    hide();
}

} // namespace loopwright
