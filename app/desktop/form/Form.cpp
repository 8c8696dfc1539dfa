#include "app/desktop/form/Form.h"

#include "app/desktop/AccessibleParts.h"
#include "app/desktop/Keys.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"

#include <QDateTime>
#include <QScrollArea>

#include <algorithm>
#include <map>

namespace loopwright {

namespace {

/// A choice is answered by a slip of one key; as last answer it waits for Enter on the button.
bool isOneKey(Answer answer)
{
    return answer == Answer::Choice || answer == Answer::YesNo;
}

} // namespace

Form::Form(const QString &part, const QString &confirmText, const std::vector<FieldGroup> &groups,
           FormUse use, FormShape shape, double columnEm, QWidget *parent)
    : QWidget(parent)
    , m_use(std::move(use))
    , m_button(shape == FormShape::Cards ? nullptr : new QPushButton(confirmText))
    , m_told(new SignLine)
{
    setObjectName(part);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    FieldGrid *last = nullptr;
    for (const FieldGroup &group : groups)
        last = addGroup(group, part, shape, columnEm);
    if (m_button) {
        addButton(shape, last);
        dressButton();
    }
    layout->addWidget(m_told);
    m_told->hide();
    addKeys();
    m_resting.setSingleShot(true);
    m_resting.setInterval(checkAfterMs);
    m_keeping.setSingleShot(true);
    m_keeping.setInterval(keepAfterMs);
    connect(&m_resting, &QTimer::timeout, this, &Form::rest);
    connect(&m_keeping, &QTimer::timeout, this, &Form::keep);
    if (shape == FormShape::Cards)
        whenThemed(this, [layout] { layout->setSpacing(em(0.7)); });
    setTyped({});
}

Form::~Form()
{
    // The field that has the keyboard is left as it goes, when whoever keeps drafts may be gone.
    m_use = {};
    for (Field *field : m_fields)
        field->disconnect(this);
}

FieldGrid *Form::addGroup(const FieldGroup &group, const QString &part, FormShape shape,
                          double columnEm)
{
    QWidget *holder = shape == FormShape::Cards ? makeCard() : new QWidget;
    auto *column = new QVBoxLayout(holder);
    column->setContentsMargins(0, 0, 0, 0);
    if (shape == FormShape::Cards)
        whenThemed(holder, [column] {
            column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
            column->setSpacing(em(0.6));
        });
    QLabel *title = makeHeading(group.title, 1.1);
    column->addWidget(title);
    title->setVisible(!group.title.isEmpty());
    auto *grid = new FieldGrid(columnEm);
    column->addLayout(grid);
    m_groups.push_back({holder, title, {}});
    layout()->addWidget(holder);
    for (const FieldSpec &spec : group.fields)
        addField(part, spec, shape, grid);
    return grid;
}

void Form::addField(const QString &part, const FieldSpec &spec, FormShape shape, FieldGrid *grid)
{
    auto *field =
        new Field(part, spec, shape == FormShape::Cards ? EditorSize::Dense : EditorSize::Roomy);
    grid->add(field, spec.span, spec.newRow);
    m_fields.push_back(field);
    m_groups.back().fields.push_back(field);
    connect(field, &Field::left, this, [this, field] { fieldLeft(field); });
    connect(field, &Field::entered, this, [this, field] { fieldEntered(field); });
    connect(field, &Field::edited, this, [this, field] { fieldEdited(field); });
}

void Form::addButton(FormShape shape, FieldGrid *grid)
{
    auto *holder = new QWidget;
    auto *layout = new QVBoxLayout(holder);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    if (shape == FormShape::Line) { // in line with the fields beside it
        auto *label = new QLabel(QStringLiteral(" "));
        label->setObjectName(QLatin1StringView(fieldLabelName));
        layout->addWidget(label);
    }
    layout->addWidget(m_button, 0, Qt::AlignLeft | Qt::AlignTop);
    layout->addStretch(1);
    grid->add(holder, shape == FormShape::Line ? 1 : 0);
}

void Form::dressButton()
{
    m_button->setObjectName(objectName() + ".confirm");
    m_button->setAutoDefault(true); // Enter presses it
    m_button->setToolTip(tr("Ctrl+Enter from any field of this part"));
    whenThemed(m_button, [button = m_button] {
        button->setMinimumHeight(em(2.5));
        button->setFont(sized(1, QFont::DemiBold));
    });
    connect(m_button, &QPushButton::clicked, this, &Form::confirm);
}

void Form::addKeys()
{
    addKey(this,
           {QString(objectName() + ".confirm_key"),
            tr("Record what is typed, or go on"),
            {QKeySequence(Qt::CTRL | Qt::Key_Return), QKeySequence(Qt::CTRL | Qt::Key_Enter)},
            tr("In a form")},
           [this] { confirm(); });
}

Field *Form::field(const QString &key) const
{
    const auto found =
        std::ranges::find_if(m_fields, [&key](const Field *each) { return each->key() == key; });
    return found == m_fields.end() ? nullptr : *found;
}

Moment Form::now() const
{
    return m_use.now ? m_use.now()
                     : *Moment::parse(QDateTime::currentDateTimeUtc().toString(Qt::ISODate));
}

QJsonObject Form::values() const
{
    QJsonObject values;
    for (const Field *field : m_fields) {
        const QJsonValue value = field->value(now());
        if (!field->isAsked() || value.isUndefined())
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

QJsonObject Form::typed() const
{
    QJsonObject typed;
    for (const Field *field : m_fields)
        if (const QString text = field->typed(); !text.isEmpty())
            typed.insert(field->key(), text);
    return typed;
}

void Form::setTyped(const QJsonObject &typed, bool touched)
{
    m_resting.stop();
    m_keeping.stop();
    m_all = false;
    for (Field *field : m_fields) {
        field->setTyped(typed.value(field->key()).toString(field->spec().usual));
        field->setTouched(touched);
        field->clearFindings();
    }
    m_told->hide();
    showAsked();
}

void Form::propose(const QJsonObject &typed)
{
    for (Field *field : m_fields)
        if (field->typed().isEmpty())
            field->setTyped(typed.value(field->key()).toString());
    showAsked();
}

void Form::showAsked()
{
    const QJsonObject now = typed();
    for (Field *field : m_fields)
        field->setVisible(!field->spec().asked || field->spec().asked(now));
    for (const Group &group : m_groups)
        group.holder->setVisible(std::ranges::any_of(group.fields, &Field::isAsked));
}

void Form::setGroupTitle(std::size_t group, const QString &title)
{
    m_groups[group].title->setText(title);
}

void Form::setCheck(std::function<Findings(const QJsonObject &values)> check)
{
    m_use.check = std::move(check);
}

void Form::fieldEdited(Field *field)
{
    field->clearFindings();
    m_told->hide();
    showAsked();
    m_resting.start();
    m_keeping.start();
    emit edited();
}

void Form::fieldLeft(Field *field)
{
    keepPending();
    if (m_use.emptyIsWrong || !field->typed().isEmpty())
        field->setTouched(true);
    rest();
}

void Form::keep()
{
    m_keeping.stop();
    if (m_use.keep)
        m_use.keep(typed());
}

void Form::keepPending()
{
    if (m_keeping.isActive())
        keep();
}

void Form::hideEvent(QHideEvent *event)
{
    QWidget::hideEvent(event);
    keepPending();
}

void Form::rest()
{
    m_resting.stop();
    if (m_use.check)
        showFindings(m_use.check(values()));
    emit rested();
}

void Form::showFindings(const Findings &findings)
{
    std::map<QString, Findings> byField;
    for (const Finding &finding : findings)
        byField[finding.field].push_back(finding);
    for (Field *field : m_fields) {
        const bool empty = field->typed().isEmpty() && !m_use.emptyIsWrong;
        const bool begun = field->hasKeyboard() && isBegun(field->spec().answer, field->typed());
        const bool shown = m_all || (field->isTouched() && !empty && !begun);
        field->tell(shown && field->isAsked() ? byField[field->key()] : Findings());
    }
}

void Form::touchAll()
{
    m_all = true;
}

void Form::fieldEntered(Field *field)
{
    if (field->spec().confirms && field->spec().confirms(typed())) {
        confirm();
        return;
    }
    const auto here = std::ranges::find(m_fields, field);
    const auto next = std::find_if(here + 1, m_fields.end(), [](const Field *each) {
        return each->isAsked() && !each->spec().aside && each->field()->isEnabled();
    });
    const bool waits = isOneKey(field->spec().answer) && !(m_use.answerConfirms && isComplete());
    if (next != m_fields.end() && !field->spec().aside)
        (*next)->goTo();
    else if (m_button && waits)
        m_button->setFocus(Qt::TabFocusReason);
    else
        confirm();
}

bool Form::isComplete() const
{
    return std::ranges::none_of(m_fields, [](const Field *each) {
        return each->isAsked() && !each->spec().optional && each->typed().isEmpty();
    });
}

void Form::tell(const Finding &finding)
{
    Field *wrong = field(finding.field);
    if (!wrong || !wrong->isAsked()) {
        tell(signOf(finding.severity), localized(finding.reason));
        return;
    }
    // A screen reader says the reason with the field that it comes to, else it must be told.
    const bool isThere = wrong->hasKeyboard();
    wrong->field()->setFocus(); // first: the field that is left is checked anew
    m_resting.stop();
    wrong->tell({finding});
    if (isThere)
        announce(*wrong, localized(finding.reason), Tone::Urgent);
}

void Form::tell(Status sign, const QString &sentence)
{
    m_told->tellIfNew(sign, sentence);
}

QWidget *Form::firstEmpty() const
{
    const auto empty = std::ranges::find_if(m_fields, [](const Field *each) {
        return each->isAsked() && !each->spec().aside && each->typed().isEmpty();
    });
    if (empty != m_fields.end())
        return (*empty)->field();
    return m_button ? static_cast<QWidget *>(m_button) : m_fields.front()->field();
}

void Form::goTo(const QString &key)
{
    Field *field = this->field(key);
    if (!field)
        return;
    field->field()->setFocus(Qt::OtherFocusReason);
    for (QWidget *up = parentWidget(); up; up = up->parentWidget())
        if (auto *area = qobject_cast<QScrollArea *>(up))
            area->ensureWidgetVisible(field, em(1), em(3));
}

bool Form::check()
{
    for (Field *field : m_fields)
        field->clearFindings();
    m_told->hide();
    const Findings found = m_use.check ? m_use.check(values()) : Findings();
    const auto error = std::ranges::find(found, Severity::Error, &Finding::severity);
    if (error == found.end())
        return true;
    tell(*error);
    return false;
}

bool Form::confirm()
{
    m_told->forgetTold();
    if (!m_use.confirm || !m_use.confirm())
        return false;
    emit confirmed();
    return true;
}

} // namespace loopwright
