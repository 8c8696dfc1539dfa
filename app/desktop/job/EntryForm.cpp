#include "app/desktop/job/EntryForm.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"

#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QShortcut>
#include <QVBoxLayout>

namespace loopwright {

EntryForm::EntryForm(JobSession &desk, const QString &part, const QString &confirmText,
                     const std::vector<FieldSpec> &asks, MakeFacts facts, FormShape shape,
                     double columnEm)
    : m_desk(desk)
    , m_part(part)
    , m_facts(std::move(facts))
    , m_button(new QPushButton(confirmText))
    , m_told(new SignLine)
{
    setObjectName(part);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    auto *grid = new FieldGrid(columnEm);
    layout->addLayout(grid);
    for (const FieldSpec &ask : asks)
        addField(ask, grid);
    addButton(shape, grid);
    layout->addWidget(m_told);
    m_told->hide();
    dressButton();
    setTyped(m_desk.draft(part));
}

void EntryForm::addButton(FormShape shape, FieldGrid *grid)
{
    auto *holder = new QWidget;
    auto *layout = new QVBoxLayout(holder);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    if (shape == FormShape::Line) // as high as the labels of the fields beside it
        layout->addWidget(new QLabel(QStringLiteral(" ")));
    layout->addWidget(m_button, 0, Qt::AlignLeft | Qt::AlignTop);
    layout->addStretch(1);
    grid->add(holder, shape == FormShape::Line ? 1 : 0);
}

void EntryForm::dressButton()
{
    m_button->setObjectName(m_part + ".confirm");
    m_button->setAutoDefault(true); // Enter presses it
    m_button->setToolTip(tr("Ctrl+Enter from any field of this part"));
    whenThemed(m_button, [button = m_button] {
        button->setMinimumHeight(em(2.5));
        button->setFont(sized(1, QFont::DemiBold));
    });
    connect(m_button, &QPushButton::clicked, this, &EntryForm::confirm);
    for (const Qt::Key key : {Qt::Key_Return, Qt::Key_Enter}) {
        auto *shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, &EntryForm::confirm);
    }
}

void EntryForm::addField(const FieldSpec &ask, FieldGrid *grid)
{
    auto *field = new EntryField(m_part, ask);
    grid->add(field, ask.span, ask.newRow);
    m_fields.push_back(field);
    connect(field, &EntryField::left, this, [this, field] { fieldLeft(field); });
    connect(field, &EntryField::entered, this, [this, field] { fieldEntered(field); });
    connect(field, &EntryField::edited, this, [this, field] {
        field->clearFindings();
        m_told->hide();
        showAsked();
        emit edited();
    });
}

EntryField *EntryForm::field(const QString &key) const
{
    for (EntryField *field : m_fields)
        if (field->key() == key)
            return field;
    return nullptr;
}

QJsonObject EntryForm::values() const
{
    QJsonObject values;
    for (const EntryField *field : m_fields) {
        const QJsonValue value = field->value(m_desk.now());
        if (field->isHidden() || value.isUndefined())
            continue;
        const qsizetype dot = field->key().indexOf(u'.');
        if (dot < 0) {
            values.insert(field->key(), value);
            continue;
        }
        QJsonObject inner = values.value(field->key().left(dot)).toObject();
        inner.insert(field->key().mid(dot + 1), value);
        values.insert(field->key().left(dot), inner);
    }
    return values;
}

QJsonObject EntryForm::typed() const
{
    QJsonObject typed;
    for (const EntryField *field : m_fields)
        if (!field->typed().isEmpty())
            typed.insert(field->key(), field->typed());
    return typed;
}

void EntryForm::setTyped(const QJsonObject &typed)
{
    for (EntryField *field : m_fields)
        field->setTyped(typed.value(field->key()).toString());
    showAsked();
}

void EntryForm::clear()
{
    for (EntryField *field : m_fields)
        field->clearFindings();
    setTyped({});
    m_told->hide();
}

void EntryForm::showAsked()
{
    const QJsonObject now = typed();
    for (EntryField *field : m_fields)
        field->setVisible(!field->ask().asked || field->ask().asked(now));
}

void EntryForm::keep()
{
    m_desk.keepDraft(m_part, typed());
}

void EntryForm::fieldLeft(EntryField *field)
{
    keep();
    field->clearFindings();
    markWrong(field);
    emit wasLeft();
}

void EntryForm::markWrong(EntryField *field)
{
    if (field->typed().isEmpty() || !m_facts)
        return;
    const auto read = m_desk.read(m_facts(values()));
    if (read)
        return;
    EntryField *wrong = fieldAt(read.error().place);
    if (wrong && !wrong->typed().isEmpty()) // what is not filled in yet is no error yet
        wrong->mark(read.error().message);
}

void EntryForm::fieldEntered(EntryField *field)
{
    if (!field->ask().confirming.isEmpty() && field->typed() == field->ask().confirming) {
        confirm();
        return;
    }
    bool behind = false;
    for (EntryField *other : m_fields) {
        if (behind && !other->isHidden() && other->field()->isEnabled()) {
            other->field()->setFocus(Qt::TabFocusReason);
            if (auto *edit = qobject_cast<QLineEdit *>(other->field()))
                edit->selectAll();
            return;
        }
        behind = behind || other == field;
    }
    // The last answer of a choice waits for Enter on the button, so that no slip of a key records.
    if (qobject_cast<KeyedChoice *>(field->field()))
        m_button->setFocus(Qt::TabFocusReason);
    else
        confirm();
}

EntryField *EntryForm::fieldAt(const QString &place) const
{
    static const QRegularExpression form(QStringLiteral("(?:^|\\.)facts\\[(\\d+)\\]\\.?(.*)$"));
    const auto match = form.match(place);
    if (!match.hasMatch())
        return nullptr;
    const int fact = match.captured(1).toInt();
    const QString within = match.captured(2);
    if (m_fieldOf)
        return field(m_fieldOf(fact, within));
    for (EntryField *candidate : m_fields)
        if (within == candidate->key() || within.startsWith(candidate->key() + '['))
            return candidate;
    return nullptr;
}

void EntryForm::tell(const Error &error)
{
    EntryField *wrong = fieldAt(error.place);
    if (!wrong || wrong->isHidden()) {
        tell(Status::Failed, error.place.isEmpty() ? error.message : error.text());
        return;
    }
    wrong->mark(error.message);
    wrong->field()->setFocus();
}

void EntryForm::tell(Status sign, const QString &sentence)
{
    m_told->show(sign, sentence);
    m_told->setVisible(!sentence.isEmpty());
}

QWidget *EntryForm::firstEmpty() const
{
    for (const EntryField *field : m_fields)
        if (!field->isHidden() && field->typed().isEmpty())
            return field->field();
    return m_button;
}

bool EntryForm::check()
{
    for (EntryField *field : m_fields)
        field->clearFindings();
    m_told->hide();
    if (const auto read = m_desk.read(m_facts(values())); !read) {
        tell(read.error());
        return false;
    }
    return true;
}

bool EntryForm::confirm()
{
    if (m_confirm)
        return m_confirm();
    if (!check())
        return false;
    const FactObjects facts = m_facts(values());
    if (facts.empty()) {
        tell(Status::Open, tr("Nothing is entered yet."));
        return false;
    }
    const QJsonObject before = typed();
    clear(); // first: recording reads the page anew, and what is shown then is no draft any more
    if (const auto report = m_desk.record(m_part, facts); !report) {
        setTyped(before);
        tell(report.error());
        return false;
    }
    emit recorded();
    return true;
}

} // namespace loopwright
