#include "core/order/OfficeChange.h"

#include "core/identifiers/Nanp.h"
#include "core/identifiers/ProtocolVariant.h"

#include <algorithm>
#include <array>

namespace loopwright {

namespace {

constexpr int digitsOfCode = 3;

bool isAreaCode(const QString &text)
{
    const bool digits = text.size() == digitsOfCode &&
                        std::ranges::all_of(text, [](QChar c) { return c >= u'0' && c <= u'9'; });
    if (!digits)
        return false;
    const std::string code = text.toStdString();
    const NanpFault fault = areaCodeFault(code);
    return fault == NanpFault::None || fault == NanpFault::Held;
}

} // namespace

const TerminalColumns &columnsOf(int terminal)
{
    static const auto all = [] {
        std::array<TerminalColumns, mostTerminals> columns;
        for (int i = 0; i < mostTerminals; ++i) {
            const QString number = QString::number(i + 1);
            columns[std::size_t(i)] = {"dn_" + number, "spid_" + number, "tei_" + number};
        }
        return columns;
    }();
    return all.at(std::size_t(terminal - 1));
}

QJsonObject OfficeChange::toJson() const
{
    return {
        {"kind", toText(kind)}, {"office", office}, {"from", from}, {"to", to}, {"spids", spids}};
}

Result<OfficeChange> OfficeChange::fromJson(const QJsonObject &object, const QString &place)
{
    const auto kind = fromText<OfficeChangeKind>(object.value("kind").toString());
    OfficeChange change{kind.value_or(OfficeChangeKind::AreaCode),
                        object.value("office").toString(), object.value("from").toString(),
                        object.value("to").toString(), object.value("spids").toBool()};
    if (!kind || change.toJson() != object)
        return failure(ErrorCode::BadInput, "is no change of an office's lines", place);
    return change;
}

Result<void> checkOfficeChange(const OfficeChange &change)
{
    for (const auto &[value, place] :
         {std::pair(change.from, "from"), std::pair(change.to, "to")}) {
        const QString shown = value.left(60);
        const ProtocolVariant *variant = findVariant(value);
        if (change.kind == OfficeChangeKind::AreaCode && !isAreaCode(value))
            return failure(ErrorCode::BadInput,
                           QString("\"%1\" is no area code of the North American plan: three "
                                   "digits, the first 2 to 9, the last two not 11.")
                               .arg(shown),
                           place);
        if (change.kind == OfficeChangeKind::Variant && (!variant || variant->isAnalog))
            return failure(ErrorCode::BadInput,
                           QString("\"%1\" is no protocol variant of a switch.").arg(shown), place);
    }
    if (change.from == change.to)
        return failure(ErrorCode::BadInput,
                       QString("%1 would be changed into itself.").arg(change.from), "to");
    return {};
}

Text doubtAbout(const OfficeChange &change)
{
    if (change.kind != OfficeChangeKind::AreaCode)
        return {};
    const std::string code = change.to.toStdString();
    if (areaCodeFault(code) == NanpFault::Held)
        return Text(QT_TRANSLATE_NOOP("core", "Area code %1 is held for expansion and not given "
                                              "out: confirm it with the provider."))
            .arg(change.to);
    if (const char *why = whyNoAreaOfLines(code))
        return Text(QT_TRANSLATE_NOOP("core", "Area code %1 %2: confirm it with the provider."))
            .arg(change.to)
            .arg(Text(why));
    return {};
}

ServiceOrder lineOf(const QJsonObject &content)
{
    const auto text = [&content](const auto &column) {
        const auto found = content.constFind(column);
        return found == content.constEnd() ? QString() : found->toString();
    };
    ServiceOrder order;
    order.number = text(QLatin1StringView("order_number"));
    order.circuit = text(QLatin1StringView("circuit_number"));
    order.office = text(QLatin1StringView("office"));
    order.variant = text(QLatin1StringView("protocol_variant"));
    order.headNumber = text(QLatin1StringView("head_number"));
    order.b1 = servicesFromText(text(QLatin1StringView("b1_services"))).value_or(Services());
    order.b2 = servicesFromText(text(QLatin1StringView("b2_services"))).value_or(Services());
    for (int number = 1; number <= mostTerminals; ++number) {
        const TerminalColumns &columns = columnsOf(number);
        OrderedTerminal terminal{
            number, text(columns.dn), text(columns.spid), text(columns.tei), {}};
        if (number == 1 || !terminal.dn.isEmpty() || !terminal.spid.isEmpty() ||
            !terminal.tei.isEmpty())
            order.terminals.push_back(std::move(terminal));
    }
    return order;
}

ServiceOrder withValues(ServiceOrder order, const OrderFields &values)
{
    const auto put = [&values](const QString &column, QString &value) {
        if (const auto found = values.constFind(column); found != values.constEnd())
            value = *found;
    };
    put(QStringLiteral("protocol_variant"), order.variant);
    put(QStringLiteral("head_number"), order.headNumber);
    for (OrderedTerminal &terminal : order.terminals) {
        put(columnsOf(terminal.number).dn, terminal.dn);
        put(columnsOf(terminal.number).spid, terminal.spid);
    }
    return order;
}

ChangedOrder changedBy(const OfficeChange &change, const ServiceOrder &order,
                       const HolderOf &holderOf)
{
    return change.kind == OfficeChangeKind::AreaCode ? splitAreaCode(change, order, holderOf)
                                                     : convertSwitch(change, order, holderOf);
}

} // namespace loopwright
