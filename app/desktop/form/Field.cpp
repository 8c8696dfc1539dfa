#include "app/desktop/form/Field.h"

#include "app/desktop/form/TypedNumber.h"
#include "app/desktop/widgets/FileButton.h"

#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace loopwright {

Field::Field(const QString &part, const FieldSpec &spec, EditorSize size, QWidget *parent)
    : Field(spec,
            makeEditor(spec, part + '.' + spec.key, size,
                       {[this] {
                            m_touched = true;
                            emit edited();
                        },
                        [this] { emit entered(); }}),
            parent)
{
}

Field::Field(const FieldSpec &spec, const Editor &editor, QWidget *parent)
    : FieldMark(spec.label, editor.widget, parent)
    , m_spec(spec)
    , m_editor(editor)
{
    setHint(spec.hint);
    editor.widget->installEventFilter(this);
    for (QWidget *child : editor.widget->findChildren<QWidget *>())
        child->installEventFilter(this);
    connect(this, &FieldMark::repairTaken, this, &Field::edited);
    auto *edit = qobject_cast<QLineEdit *>(editor.widget);
    if (spec.answer == Answer::PdfPath)
        setBeside(
            new FileButton(FileButton::Way::Write, edit, spec.label, tr("PDF files (*.pdf)")));
    else if (spec.answer == Answer::FolderPath)
        setBeside(new FileButton(FileButton::Way::Folder, edit, spec.label));
}

void Field::mark(const QString &reason)
{
    setFindings({{Severity::Error, "entry", Text::verbatim(reason), {}, key(), 0}});
}

void Field::tell(const Findings &findings)
{
    const bool number = m_spec.answer == Answer::Number || m_spec.answer == Answer::Whole;
    const QString unclear = number ? whyUnclear(typed()) : QString();
    if (findings.empty() || unclear.isEmpty())
        setFindings(findings);
    else
        mark(unclear);
}

void Field::goTo()
{
    field()->setFocus(Qt::TabFocusReason);
    if (auto *edit = qobject_cast<QLineEdit *>(field()))
        edit->selectAll();
}

bool Field::hasKeyboard() const
{
    const QWidget *now = QApplication::focusWidget();
    return now && isAncestorOf(now);
}

void Field::stepDay(int days)
{
    const QDate day = QDate::fromString(dateText(typed()), Qt::ISODate);
    if (!day.isValid())
        return;
    setTyped(day.addDays(days).toString(Qt::ISODate));
    m_touched = true;
    emit edited();
}

bool Field::takesKey(const QKeyEvent &key)
{
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    if (enter && !(key.modifiers() & ~Qt::KeypadModifier) && m_spec.answer != Answer::Lines) {
        emit entered();
        return true;
    }
    if (m_spec.answer == Answer::Date && (key.key() == Qt::Key_Up || key.key() == Qt::Key_Down)) {
        stepDay(key.key() == Qt::Key_Up ? 1 : -1);
        return true;
    }
    return false;
}

bool Field::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::FocusOut) {
        // The list that opens, or a menu, is no other field.
        if (static_cast<QFocusEvent *>(event)->reason() != Qt::PopupFocusReason)
            emit left();
    } else if (event->type() == QEvent::KeyPress) {
        if (takesKey(*static_cast<QKeyEvent *>(event)))
            return true;
    } else if (event->type() == QEvent::Wheel && qobject_cast<QComboBox *>(object)) {
        event->ignore(); // scrolling the page must not change a choice on the way
        return true;
    }
    return FieldMark::eventFilter(object, event);
}

} // namespace loopwright
