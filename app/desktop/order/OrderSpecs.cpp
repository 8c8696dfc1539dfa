#include "app/desktop/order/OrderSpecs.h"

#include "app/desktop/Language.h"
#include "app/desktop/widgets/SpidParts.h"
#include "core/identifiers/ProtocolVariant.h"

#include <QCoreApplication>

#include <algorithm>

namespace loopwright {

namespace {

QString words(const char *text)
{
    return QCoreApplication::translate("OrderForm", text);
}

using Options = std::vector<KeyedOption>;

Options list(std::initializer_list<std::pair<const char *, const char *>> codes)
{
    Options options;
    for (const auto &[code, name] : codes)
        options.push_back({{}, QString::fromLatin1(code), words(name)});
    return options;
}

Options services(std::initializer_list<Service> offered)
{
    Options options;
    for (const Service service : offered)
        options.push_back({{}, toText(service), localizedWord(toText(service))});
    return options;
}

Options variants()
{
    Options options{{{}, {}, words("as the office")}};
    for (const ProtocolVariant &variant : allVariants())
        options.push_back(
            {{},
             variant.key,
             QStringLiteral("%1 — %2").arg(variant.key, localizedWord(variant.name))});
    return options;
}

bool isAnalog(const QJsonObject &typed)
{
    return typed.value("kind").toString() == u"analog";
}

bool isDigital(const QJsonObject &typed)
{
    return !isAnalog(typed);
}

/// Null: not known yet; then everything is asked.
const ProtocolVariant *variantOf(const QJsonObject &typed, const OrderFormState &state)
{
    if (isAnalog(typed))
        return findVariant(u"analog");
    const QString key = typed.value("protocol_variant").toString();
    return findVariant(key.isEmpty() ? state.variantOfOffice.value(typed.value("office").toString())
                                     : key);
}

FieldSpec ask(const char *key, const char *label, const char *hint, Answer answer = Answer::Text,
              int span = 1)
{
    FieldSpec spec{QString::fromLatin1(key), words(label), *hint ? words(hint) : QString(), answer};
    spec.span = span;
    return spec;
}

/// A list that cannot be empty begins with its first choice.
FieldSpec choose(const char *key, const char *label, const char *hint, Options options)
{
    FieldSpec spec = ask(key, label, hint, Answer::List);
    spec.usual = options.front().code;
    spec.options = std::move(options);
    return spec;
}

FieldSpec digitalOnly(FieldSpec spec)
{
    spec.asked = isDigital;
    return spec;
}

FieldSpec channel(const char *key, const char *label, std::initializer_list<Service> offered)
{
    FieldSpec spec = ask(key, label, "", Answer::Services);
    spec.options = services(offered);
    return spec;
}

FieldGroup orderGroup()
{
    return {words("Order"),
            {ask("order_number", QT_TR_NOOP("Order number"), ""),
             choose("order_type", QT_TR_NOOP("Order type"), "",
                    list({{"new", QT_TR_NOOP("New line")},
                          {"change", QT_TR_NOOP("Change")},
                          {"move", QT_TR_NOOP("Move")},
                          {"disconnect", QT_TR_NOOP("Disconnect")},
                          {"record_only", QT_TR_NOOP("Record only")},
                          {"repair", QT_TR_NOOP("Repair")}})),
             ask("due_date", QT_TR_NOOP("Due date"),
                 QT_TR_NOOP("YYYY-MM-DD; up and down change the day"), Answer::Date),
             ask("installer", QT_TR_NOOP("Installer"), QT_TR_NOOP("may be left empty"),
                 Answer::OpenList)}};
}

FieldGroup customerGroup()
{
    return {words("Customer and premises"),
            {ask("customer", QT_TR_NOOP("Customer"), "", Answer::Text, 2),
             ask("premises", QT_TR_NOOP("Premises"),
                 QT_TR_NOOP("address as the installer needs it"), Answer::Text, 2)}};
}

FieldGroup lineGroup()
{
    FieldSpec variant =
        ask("protocol_variant", QT_TR_NOOP("Protocol variant"), "", Answer::OpenList);
    variant.options = variants();
    return {
        words("Circuit and pair"),
        {ask("circuit_number", QT_TR_NOOP("Circuit number"), ""),
         choose("kind", QT_TR_NOOP("Kind of line"), "",
                list({{"bri", QT_TR_NOOP("Basic rate (2B+D)")}, {"analog", QT_TR_NOOP("Analog")}})),
         ask("office", QT_TR_NOOP("Serving office"), "", Answer::OpenList), variant,
         ask("pair", QT_TR_NOOP("Pair"), QT_TR_NOOP("cable and pair in the office")),
         digitalOnly(choose("nt_supplied", QT_TR_NOOP("NT supplied"), "",
                            list({{"no", QT_TR_NOOP("No")}, {"yes", QT_TR_NOOP("Yes")}})))}};
}

FieldGroup serviceGroup()
{
    return {words("Service"),
            {channel("b1_services", QT_TR_NOOP("Channel B1"), {Service::Voice, Service::Data}),
             digitalOnly(
                 channel("b2_services", QT_TR_NOOP("Channel B2"), {Service::Voice, Service::Data})),
             digitalOnly(channel("d_services", QT_TR_NOOP("Channel D"), {Service::Packet})),
             digitalOnly(choose("data_rate", QT_TR_NOOP("Data rate"), QT_TR_NOOP("bit/s"),
                                list({{"64000", "64000"}, {"56000", "56000"}})))}};
}

QStringList columnsOf(int terminal)
{
    return {QString("dn_%1").arg(terminal), QString("spid_%1").arg(terminal),
            QString("tei_%1").arg(terminal), QString("dn_%1_services").arg(terminal)};
}

/// Of a SPID or TEI: where the variant has one, or one is typed already.
std::function<bool(const QJsonObject &)> whereVariantHas(const OrderFormState &state, int terminal,
                                                         const QString &column,
                                                         bool (ProtocolVariant::*has)() const)
{
    return [&state, terminal, column, has](const QJsonObject &typed) {
        const ProtocolVariant *variant = variantOf(typed, state);
        return terminal <= state.terminals &&
               (!variant || (variant->*has)() || typed.contains(column));
    };
}

FieldGroup terminalGroup(int number, const OrderFormState &state)
{
    const QStringList columns = columnsOf(number);
    const auto field = [&](int at, const char *label, const char *hint, Answer answer, int span) {
        FieldSpec spec = ask("", label, hint, answer, span);
        spec.key = columns[at];
        spec.spoken = words("Terminal %1, %2").arg(number).arg(spec.label);
        return spec;
    };
    FieldSpec dn = field(0, QT_TR_NOOP("Directory number"), "", Answer::Identifier, 1);
    FieldSpec spid = field(1, "SPID", "", Answer::Identifier, 2);
    FieldSpec tei = field(2, QT_TR_NOOP("TEI"), QT_TR_NOOP("auto, or 0 to 63"), Answer::Text, 1);
    FieldSpec answers = field(3, QT_TR_NOOP("Answers"),
                              QT_TR_NOOP("none ticked: all that is ordered"), Answer::Services, 1);
    answers.options = services({Service::Voice, Service::Data});
    // An analog line has one number; more stay in sight only while something stands in them.
    dn.asked = [&state, number, columns](const QJsonObject &typed) {
        const bool any =
            typed.contains(columns[0]) || typed.contains(columns[1]) || typed.contains(columns[2]);
        return number <= state.terminals && (number == 1 || isDigital(typed) || any);
    };
    spid.asked = whereVariantHas(state, number, columns[1], &ProtocolVariant::hasSpid);
    tei.asked = whereVariantHas(state, number, columns[2], &ProtocolVariant::hasLayer2);
    answers.asked = [&state, number](const QJsonObject &typed) {
        return number <= state.terminals && isDigital(typed);
    };
    return {words("Terminal %1").arg(number), {dn, spid, tei, answers}};
}

constexpr std::size_t firstTerminalGroup = 4;

/// Behind what has a field made for it, the texts of the part that may be left out.
FieldGroup withTexts(FieldGroup group, OrderPart part)
{
    for (const OrderText &text : orderTexts())
        if (text.part == part)
            group.fields.push_back(ask(text.column, text.label, text.hint,
                                       text.isLong ? Answer::Lines : Answer::Text,
                                       text.isLong ? 0 : 1));
    return group;
}

} // namespace

Form *makeOrderForm(OrderFormState &state, FormUse use)
{
    std::vector<FieldGroup> groups{withTexts(orderGroup(), OrderPart::Order),
                                   withTexts(customerGroup(), OrderPart::Customer),
                                   withTexts(lineGroup(), OrderPart::Line), serviceGroup()};
    for (int number = 1; number <= mostTerminals; ++number)
        groups.push_back(terminalGroup(number, state));
    auto *form =
        new Form(QString::fromLatin1(orderPart), {}, groups, std::move(use), FormShape::Cards);
    for (int number = 1; number <= mostTerminals; ++number) {
        auto *parts = new SpidParts;
        form->field(columnsOf(number)[1])->setBelow(parts);
        state.spidParts << parts;
    }
    QObject::connect(form, &Form::edited, form, [form, &state] { adaptOrderForm(*form, state); });
    adaptOrderForm(*form, state);
    return form;
}

OrderFields orderFieldsOf(const Form &form)
{
    return textsIn(form.values());
}

void showOrderFields(Form &form, OrderFormState &state, const OrderFields &fields, bool touched)
{
    state.terminals = 1;
    for (int number = 2; number <= mostTerminals; ++number)
        for (const QString &column : columnsOf(number).mid(0, 3))
            if (!fields.value(column).isEmpty())
                state.terminals = number;
    form.setTyped(objectOf(fields), touched);
    adaptOrderForm(form, state);
}

void adaptOrderForm(Form &form, OrderFormState &state)
{
    const QJsonObject typed = form.typed();
    const bool analog = isAnalog(typed);
    const ProtocolVariant *variant = variantOf(typed, state);
    form.field("b1_services")->setLabel(analog ? words("Line") : words("Channel B1"));
    const QString office = state.variantOfOffice.value(typed.value("office").toString());
    form.field("protocol_variant")
        ->setHint(typed.contains("protocol_variant") || office.isEmpty()
                      ? QString()
                      : words("the office has %1").arg(office));
    const bool spids = variant && variant->hasSpid();
    for (int number = 1; number <= mostTerminals; ++number) {
        const QStringList columns = columnsOf(number);
        form.setGroupTitle(firstTerminalGroup + std::size_t(number) - 1,
                           analog ? words("Number") : words("Terminal %1").arg(number));
        form.field(columns[0])
            ->setHint(variant && !spids && !analog ? words("this variant has no SPID") : QString());
        form.field(columns[1])->setHint(spids ? localizedSentence(variant->spidShapes) : QString());
        const QString spid = typed.value(columns[1]).toString();
        const SpidCheck check = spids && !spid.isEmpty()
                                    ? checkSpid(*variant, spid, typed.value(columns[0]).toString())
                                    : SpidCheck();
        state.spidParts[number - 1]->setCheck(check);
        state.spidParts[number - 1]->setVisible(!check.parts.empty());
    }
}

void addTerminal(Form &form, OrderFormState &state)
{
    state.terminals = std::min(state.terminals + 1, mostTerminals);
    form.showAsked();
    form.goTo(columnsOf(state.terminals)[0]);
}

void goToColumn(Form &form, OrderFormState &state, const QString &column)
{
    for (int number = state.terminals + 1; number <= mostTerminals; ++number)
        if (columnsOf(number).contains(column))
            state.terminals = number;
    form.showAsked();
    form.goTo(column);
}

QString nameOfColumn(const Form &form, const QString &column)
{
    const Field *field = form.field(column);
    return field ? field->field()->accessibleName() : column;
}

} // namespace loopwright
