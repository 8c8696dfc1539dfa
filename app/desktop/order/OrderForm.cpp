#include "app/desktop/order/OrderForm.h"

#include "app/desktop/Theme.h"
#include "app/desktop/widgets/FieldGrid.h"
#include "app/desktop/widgets/PageElements.h"

#include <QCoreApplication>
#include <QScrollArea>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int mostTerminals = 8;

/// A list that cannot be empty begins with this choice.
constexpr std::pair<const char *, const char *> firstChoices[] = {
    {"order_type", "new"}, {"kind", "bri"}, {"data_rate", "64000"}, {"nt_supplied", "no"}};

QString formText(const char *text)
{
    return QCoreApplication::translate("OrderForm", text);
}

QList<OrderChoice> variantChoices()
{
    QList<OrderChoice> choices{
        {QString(), formText(QT_TRANSLATE_NOOP("OrderForm", "as the office"))}};
    for (const ProtocolVariant &variant : allVariants())
        choices.append({variant.key, QStringLiteral("%1 — %2").arg(variant.key, variant.name)});
    return choices;
}

QVBoxLayout *makeCardColumn(QFrame *card)
{
    auto *column = new QVBoxLayout(card);
    whenThemed(card, [column] {
        column->setContentsMargins(em(1.1), em(0.9), em(1.1), em(0.9));
        column->setSpacing(em(0.6));
    });
    return column;
}

} // namespace

OrderForm::OrderForm(QWidget *parent)
    : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    for (const OrderPartRow &part : orderParts())
        column->addWidget(makePart(part.part, formText(part.name)));
    column->addWidget(makeTerminals());
    column->addStretch(1);
    whenThemed(this, [column] { column->setSpacing(em(0.7)); });
    m_fields.value("protocol_variant")->setChoices(variantChoices());
    adapt();
}

void OrderForm::addField(OrderFieldEdit *field)
{
    m_fields.insert(field->column(), field);
    m_order << field->column();
    connect(field, &OrderFieldEdit::edited, this, [this] {
        adapt();
        emit edited();
    });
    connect(field, &OrderFieldEdit::left, this, &OrderForm::left);
}

QWidget *OrderForm::makePart(OrderPart part, const QString &name)
{
    QFrame *card = makeCard();
    QVBoxLayout *column = makeCardColumn(card);
    column->addWidget(makeHeading(name, 1.1));
    auto *fields = new QWidget;
    auto *grid = new FieldGrid(13, fields);
    for (const OrderFieldRow &row : orderFieldRows()) {
        if (row.part != part)
            continue;
        auto *field =
            OrderFieldEdit::make(QString::fromLatin1(row.column), formText(row.label), row.editor);
        if (*row.hint)
            field->setHint(formText(row.hint));
        if (row.digitalOnly)
            m_digitalOnly << field->column();
        addField(field);
        grid->add(field, row.span);
    }
    column->addWidget(fields);
    return card;
}

QWidget *OrderForm::makeTerminals()
{
    QFrame *card = makeCard();
    m_terminalColumn = makeCardColumn(card);
    m_terminalColumn->addWidget(
        makeHeading(formText(QT_TRANSLATE_NOOP("OrderForm", "Numbers and terminals")), 1.1));
    for (int number = 1; number <= mostTerminals; ++number) {
        auto *terminal = new TerminalEdit(number);
        for (OrderFieldEdit *field : terminal->fields())
            addField(field);
        m_terminals << terminal;
        m_terminalColumn->addWidget(terminal);
    }
    m_addTerminal = makeButton(formText(QT_TRANSLATE_NOOP("OrderForm", "Add a terminal")),
                               QStringLiteral("order.add_terminal"), [this] { addTerminal(); });
    m_terminalColumn->addWidget(m_addTerminal, 0, Qt::AlignLeft);
    return card;
}

void OrderForm::addTerminal()
{
    m_shownTerminals = std::min(m_shownTerminals + 1, mostTerminals);
    adapt();
    goTo(QStringLiteral("dn_%1").arg(m_shownTerminals));
}

QString OrderForm::text(const QString &column) const
{
    return m_fields.value(column)->text();
}

const ProtocolVariant *OrderForm::variant() const
{
    if (text("kind") == u"analog")
        return findVariant(u"analog");
    const QString key = text("protocol_variant");
    return findVariant(key.isEmpty() ? m_variantOfOffice.value(text("office")) : key);
}

void OrderForm::adapt()
{
    const bool analog = text("kind") == u"analog";
    for (const QString &column : std::as_const(m_digitalOnly))
        m_fields.value(column)->setVisible(!analog);
    m_fields.value("b1_services")
        ->setLabel(analog ? formText(QT_TRANSLATE_NOOP("OrderForm", "Line"))
                          : formText(QT_TRANSLATE_NOOP("OrderForm", "Channel B1")));
    const QString office = m_variantOfOffice.value(text("office"));
    m_fields.value("protocol_variant")
        ->setHint(text("protocol_variant").isEmpty() && !office.isEmpty()
                      ? formText(QT_TRANSLATE_NOOP("OrderForm", "the office has %1")).arg(office)
                      : QString());
    for (TerminalEdit *terminal : std::as_const(m_terminals)) {
        const bool shown = terminal->number() <= m_shownTerminals &&
                           (terminal->number() == 1 || !analog || !terminal->isEmpty());
        terminal->setVisible(shown);
        terminal->setVariant(variant());
    }
    m_addTerminal->setVisible(!analog && m_shownTerminals < mostTerminals);
}

OrderFields OrderForm::fields() const
{
    OrderFields fields;
    const bool analog = text("kind") == u"analog";
    for (auto it = m_fields.constBegin(); it != m_fields.constEnd(); ++it) {
        const QString value = it.value()->text();
        // What an analog line does not have is not handed on while it is hidden.
        if (!value.isEmpty() && !(analog && m_digitalOnly.contains(it.key())))
            fields.insert(it.key(), value);
    }
    return fields;
}

void OrderForm::setFields(const OrderFields &fields, bool touched)
{
    m_shownTerminals = 1;
    for (auto it = m_fields.constBegin(); it != m_fields.constEnd(); ++it) {
        const QSignalBlocker quiet(it.value());
        it.value()->setText(fields.value(it.key()));
        it.value()->setTouched(touched);
        it.value()->clearFindings();
    }
    for (const auto &[column, first] : firstChoices)
        if (!fields.contains(QString::fromLatin1(column)))
            m_fields.value(QString::fromLatin1(column))->setText(QString::fromLatin1(first));
    for (const TerminalEdit *terminal : std::as_const(m_terminals))
        if (!terminal->isEmpty())
            m_shownTerminals = std::max(m_shownTerminals, terminal->number());
    adapt();
}

void OrderForm::setChoices(const QList<OrderChoice> &offices, const QList<OrderChoice> &installers,
                           const QMap<QString, QString> &variantOfOffice)
{
    m_variantOfOffice = variantOfOffice;
    m_fields.value("office")->setChoices(offices);
    m_fields.value("installer")->setChoices(installers);
    if (offices.isEmpty())
        m_fields.value("office")->setHint(
            formText(QT_TRANSLATE_NOOP("OrderForm", "none yet: import offices first")));
    adapt();
}

Findings OrderForm::showFindings(const Findings &findings)
{
    QMap<QString, Findings> byField;
    Findings elsewhere;
    for (const Finding &finding : findings) {
        const OrderFieldEdit *field = m_fields.value(finding.field);
        if (field && field->isTouched() && field->isVisibleTo(this))
            byField[finding.field].push_back(finding);
        else
            elsewhere.push_back(finding);
    }
    for (auto it = m_fields.constBegin(); it != m_fields.constEnd(); ++it)
        it.value()->setFindings(byField.value(it.key()));
    return elsewhere;
}

void OrderForm::touchAll()
{
    for (OrderFieldEdit *field : std::as_const(m_fields))
        field->setTouched(true);
}

void OrderForm::goTo(const QString &column)
{
    OrderFieldEdit *field = m_fields.value(column);
    if (!field)
        return;
    for (const TerminalEdit *terminal : std::as_const(m_terminals))
        if (terminal->fields().contains(field) && terminal->number() > m_shownTerminals) {
            m_shownTerminals = terminal->number();
            adapt();
        }
    field->field()->setFocus(Qt::OtherFocusReason);
    for (QWidget *up = parentWidget(); up; up = up->parentWidget())
        if (auto *area = qobject_cast<QScrollArea *>(up))
            area->ensureWidgetVisible(field, em(1), em(3));
}

QString OrderForm::nameOf(const QString &column) const
{
    const OrderFieldEdit *field = m_fields.value(column);
    return field ? field->field()->accessibleName() : column;
}

} // namespace loopwright
