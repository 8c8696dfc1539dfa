#include "app/desktop/order/OrderFieldEdit.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/ServicesEdit.h"

#include <QComboBox>
#include <QCompleter>
#include <QDate>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace loopwright {

/// How an editor is read and written; one for each kind of widget.
class OrderFieldEdit::Access
{
public:
    virtual ~Access() = default;
    virtual QString text() const = 0;
    virtual void setText(const QString &text) = 0;
    virtual void setChoices(const QList<OrderChoice> &) {}
};

namespace {

class LineAccess : public OrderFieldEdit::Access
{
public:
    explicit LineAccess(QLineEdit *edit)
        : m_edit(edit)
    {
    }
    QString text() const override { return m_edit->text().trimmed(); }
    void setText(const QString &text) override { m_edit->setText(text); }

private:
    QLineEdit *m_edit;
};

class LinesAccess : public OrderFieldEdit::Access
{
public:
    explicit LinesAccess(QPlainTextEdit *edit)
        : m_edit(edit)
    {
    }
    QString text() const override { return m_edit->toPlainText().trimmed(); }
    void setText(const QString &text) override
    {
        const QSignalBlocker quiet(m_edit);
        m_edit->setPlainText(text);
    }

private:
    QPlainTextEdit *m_edit;
};

class ServicesAccess : public OrderFieldEdit::Access
{
public:
    explicit ServicesAccess(ServicesEdit *edit)
        : m_edit(edit)
    {
    }
    QString text() const override { return m_edit->text(); }
    void setText(const QString &text) override { m_edit->setText(text); }

private:
    ServicesEdit *m_edit;
};

/// A list of choices. An editable one also takes a text that is not among them, which the check
/// then names.
class ChoiceAccess : public OrderFieldEdit::Access
{
public:
    explicit ChoiceAccess(QComboBox *combo)
        : m_combo(combo)
    {
    }
    QString text() const override
    {
        if (!m_combo->isEditable())
            return m_combo->currentData().toString();
        const QString typed = m_combo->currentText().trimmed();
        const int known = m_combo->findText(typed);
        return known >= 0 ? m_combo->itemData(known).toString() : typed;
    }
    void setText(const QString &text) override
    {
        const QSignalBlocker quiet(m_combo);
        const int known = m_combo->findData(text);
        if (known >= 0) {
            m_combo->setCurrentIndex(known);
        } else if (m_combo->isEditable()) {
            m_combo->setCurrentIndex(-1);
            m_combo->setEditText(text);
        } else { // a code that this list does not have; the check will say so
            m_combo->addItem(text, text);
            m_combo->setCurrentIndex(m_combo->count() - 1);
        }
    }
    void setChoices(const QList<OrderChoice> &choices) override
    {
        const QString kept = text();
        const QSignalBlocker quiet(m_combo);
        m_combo->clear();
        for (const OrderChoice &choice : choices)
            m_combo->addItem(choice.name, choice.text);
        setText(kept);
    }

private:
    QComboBox *m_combo;
};

struct FixedChoice
{
    OrderEditor editor;
    const char *text;
    const char *name;
};
constexpr FixedChoice fixedChoices[] = {
    {OrderEditor::Type, "new", QT_TRANSLATE_NOOP("OrderForm", "New line")},
    {OrderEditor::Type, "change", QT_TRANSLATE_NOOP("OrderForm", "Change")},
    {OrderEditor::Type, "move", QT_TRANSLATE_NOOP("OrderForm", "Move")},
    {OrderEditor::Type, "disconnect", QT_TRANSLATE_NOOP("OrderForm", "Disconnect")},
    {OrderEditor::Type, "record_only", QT_TRANSLATE_NOOP("OrderForm", "Record only")},
    {OrderEditor::Kind, "bri", QT_TRANSLATE_NOOP("OrderForm", "Basic rate (2B+D)")},
    {OrderEditor::Kind, "analog", QT_TRANSLATE_NOOP("OrderForm", "Analog")},
    {OrderEditor::Rate, "64000", QT_TRANSLATE_NOOP("OrderForm", "64000")},
    {OrderEditor::Rate, "56000", QT_TRANSLATE_NOOP("OrderForm", "56000")},
    {OrderEditor::YesNo, "no", QT_TRANSLATE_NOOP("OrderForm", "No")},
    {OrderEditor::YesNo, "yes", QT_TRANSLATE_NOOP("OrderForm", "Yes")},
};

bool isTypedList(OrderEditor editor)
{
    return editor == OrderEditor::Office || editor == OrderEditor::Installer ||
           editor == OrderEditor::Variant;
}

QComboBox *makeCombo(OrderEditor editor)
{
    auto *combo = new QComboBox;
    combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    combo->setMinimumContentsLength(8);
    for (const FixedChoice &choice : fixedChoices)
        if (choice.editor == editor)
            combo->addItem(QCoreApplication::translate("OrderForm", choice.name),
                           QString::fromLatin1(choice.text));
    if (isTypedList(editor)) {
        combo->setEditable(true);
        combo->setInsertPolicy(QComboBox::NoInsert);
        combo->completer()->setFilterMode(Qt::MatchContains);
        combo->completer()->setCompletionMode(QCompleter::PopupCompletion);
    }
    return combo;
}

} // namespace

OrderFieldEdit::OrderFieldEdit(const QString &column, const QString &label, QWidget *editor,
                               std::unique_ptr<Access> access, QWidget *parent)
    : FieldMark(label, editor, parent)
    , m_column(column)
    , m_access(std::move(access))
{
    editor->setObjectName("order." + column);
    editor->installEventFilter(this);
    for (QWidget *child : editor->findChildren<QWidget *>())
        child->installEventFilter(this);
    connect(this, &OrderFieldEdit::edited, this, [this] { m_touched = true; });
    connect(this, &FieldMark::repairTaken, this, &OrderFieldEdit::edited);
}

OrderFieldEdit::~OrderFieldEdit() = default;

OrderFieldEdit *OrderFieldEdit::make(const QString &column, const QString &label,
                                     OrderEditor editor, QWidget *parent)
{
    OrderFieldEdit *field = nullptr;
    const auto built = [&](QWidget *widget, std::unique_ptr<Access> access) {
        field = new OrderFieldEdit(column, label, widget, std::move(access), parent);
    };
    if (editor == OrderEditor::Line || editor == OrderEditor::Date) {
        auto *edit = new QLineEdit;
        built(edit, std::make_unique<LineAccess>(edit));
        field->m_isDate = editor == OrderEditor::Date;
        connect(edit, &QLineEdit::textEdited, field, &OrderFieldEdit::edited);
    } else if (editor == OrderEditor::Lines) {
        auto *edit = new QPlainTextEdit;
        edit->setTabChangesFocus(true);
        built(edit, std::make_unique<LinesAccess>(edit));
        whenThemed(edit, [edit] { edit->setFixedHeight(em(4)); });
        connect(edit, &QPlainTextEdit::textChanged, field, &OrderFieldEdit::edited);
    } else if (editor == OrderEditor::BServices || editor == OrderEditor::DServices) {
        const bool b = editor == OrderEditor::BServices;
        auto *edit =
            new ServicesEdit("order." + column, label,
                             b ? Service::Voice | Service::Data : Services(Service::Packet));
        built(edit, std::make_unique<ServicesAccess>(edit));
        connect(edit, &ServicesEdit::edited, field, &OrderFieldEdit::edited);
    } else {
        QComboBox *combo = makeCombo(editor);
        built(combo, std::make_unique<ChoiceAccess>(combo));
        connect(combo, &QComboBox::activated, field, &OrderFieldEdit::edited);
        if (combo->isEditable()) {
            combo->lineEdit()->setAccessibleName(combo->accessibleName());
            connect(combo, &QComboBox::editTextChanged, field, &OrderFieldEdit::edited);
        }
    }
    return field;
}

QString OrderFieldEdit::text() const
{
    return m_access->text();
}

void OrderFieldEdit::setText(const QString &text)
{
    m_access->setText(text);
}

void OrderFieldEdit::setChoices(const QList<OrderChoice> &choices)
{
    m_access->setChoices(choices);
}

void OrderFieldEdit::stepDay(int days)
{
    const QDate day = QDate::fromString(text(), Qt::ISODate);
    if (!day.isValid())
        return;
    setText(day.addDays(days).toString(Qt::ISODate));
    emit edited();
}

bool OrderFieldEdit::eventFilter(QObject *object, QEvent *event)
{
    if (event->type() == QEvent::FocusOut) {
        m_touched = true;
        emit left();
    } else if (event->type() == QEvent::KeyPress && m_isDate) {
        const int key = static_cast<QKeyEvent *>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) {
            stepDay(key == Qt::Key_Up ? 1 : -1);
            return true;
        }
    } else if (event->type() == QEvent::Wheel && qobject_cast<QComboBox *>(object)) {
        event->ignore(); // scrolling the page must not change a choice on the way
        return true;
    }
    return FieldMark::eventFilter(object, event);
}

} // namespace loopwright
