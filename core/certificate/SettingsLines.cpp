#include "core/certificate/SettingsLines.h"

#include "core/identifiers/CountryCodes.h"
#include "core/identifiers/Tei.h"
#include "core/order/OrderIdentifiers.h"

#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

/// Countries whose national numbers all have one form (their public numbering plans): how it is
/// grouped. A number of any other country is not grouped: a wrong grouping is worse than none.
struct NationalForm
{
    const char *country;
    std::initializer_list<int> groups;
};
const NationalForm nationalForms[] = {{"1", {3, 3, 4}}, {"33", {1, 2, 2, 2, 2}}, {"61", {1, 4, 4}}};

QString groupedNational(const DirectoryNumber &number)
{
    for (const NationalForm &form : nationalForms) {
        qsizetype length = 0;
        for (const int size : form.groups)
            length += size;
        if (number.country != QLatin1StringView(form.country) || number.digits.size() != length)
            continue;
        QStringList groups;
        qsizetype at = 0;
        for (const int size : form.groups) {
            groups << number.digits.mid(at, size);
            at += size;
        }
        return groups.join(u' ');
    }
    return number.digits;
}

QString groupedByPlan(const DirectoryNumber &number)
{
    if (number.isNanp() || number.country.isEmpty())
        return groupedNational(number);
    return QString("+%1 %2").arg(number.country, groupedNational(number));
}

/// The number without its area code, if it was typed with a separator behind that; else empty.
QString subscriberNumber(const QString &typed, const DirectoryNumber &number)
{
    static const QRegularExpression separators("[\\s()/.-]+");
    QString rest = typed.trimmed();
    if (rest.startsWith(u'+'))
        rest = rest.mid(1 + number.country.size());
    QStringList parts = rest.split(separators, Qt::SkipEmptyParts);
    if (parts.size() < 2)
        return {};
    parts.removeFirst();
    const QString digits = parts.join(QString());
    return number.digits.endsWith(digits) ? digits : QString();
}

/// What is keyed into a terminal of the variant.
QString keyed(const ProtocolVariant &variant, const OrderedTerminal &terminal,
              const DirectoryNumber &number)
{
    if (number.isNanp() || number.country.isEmpty())
        return number.digits;
    QStringList parts;
    if (variant.key == u"1tr6")
        parts << "EAZ " + number.digits.last(1);
    else if (variant.key == u"dss1")
        if (const QString msn = subscriberNumber(terminal.dn, number); !msn.isEmpty())
            parts << "MSN " + msn;
    parts << (dialsZeroInside(number.country) ? "0" + number.digits : number.digits);
    return parts.join(", national ");
}

QString servicesInWords(Services services)
{
    QStringList words;
    for (const Service service : each(services))
        words << toText(service);
    return words.join(", ");
}

QString channelText(const ServiceOrder &order, Services services)
{
    if (!services)
        return "not ordered";
    QString text = servicesInWords(services);
    if (services.testFlag(Service::Data))
        text += QString(" at %1 kbit/s").arg(order.dataRate / 1000);
    return text;
}

CertificateTerminal terminalLine(const ServiceOrder &order, const ProtocolVariant *variant,
                                 const OrderedTerminal &terminal)
{
    CertificateTerminal line;
    line.number = terminal.number;
    line.dn = line.dnGrouped = line.toKey = terminal.dn;
    line.spid = line.spidGrouped = terminal.spid;
    line.tei = terminal.tei;
    line.services = servicesInWords(order.servicesOf(terminal));
    if (!variant)
        return line;
    const NumberHome home = homeOf(*variant, identifiersOf(order));
    const DirectoryNumber number = checkDirectoryNumber(*variant, terminal.dn, home).number;
    if (!number.isNull()) {
        line.dnGrouped = groupedByPlan(number);
        line.dn = number.isNanp() ? number.shown() : line.dnGrouped;
        line.toKey = keyed(*variant, terminal, number);
    }
    const SpidCheck spid = checkSpid(*variant, terminal.spid, terminal.dn);
    if (!spid.digits.isEmpty()) {
        line.spid = spid.digits;
        line.spidGrouped = spid.grouped();
    }
    if (!variant->hasLayer2())
        line.tei.clear();
    else if (order.isPointToPoint())
        line.tei = "fixed, 0";
    else if (isAutomaticTei(terminal.tei))
        line.tei = "automatic";
    else
        line.tei = "fixed, " + terminal.tei;
    return line;
}

/// The one value that this line has, where the variant's row leaves a choice.
QString settled(const ServiceOrder &order, const QString &name, const QString &value)
{
    if (name == u"Line" && order.kind == LineKind::Bri)
        return order.isPointToPoint() ? "point-to-point" : "multipoint";
    const bool anySpid = std::ranges::any_of(
        order.terminals, [](const OrderedTerminal &terminal) { return !terminal.spid.isEmpty(); });
    if (name == u"SPID entry")
        return anySpid ? "as below, all digits without separators" : "none, leave it empty";
    if (name != u"TEI")
        return value;
    if (order.isPointToPoint())
        return "fixed, 0";
    const bool anyFixed = std::ranges::any_of(
        order.terminals, [](const OrderedTerminal &t) { return !isAutomaticTei(t.tei); });
    return anyFixed ? "as below" : "automatic";
}

} // namespace

std::vector<CertificateLine> serviceLines(const ServiceOrder &order)
{
    if (order.kind == LineKind::Analog)
        return {{"Line", channelText(order, order.bServices())}};
    std::vector<CertificateLine> lines{{"B1", channelText(order, order.b1)},
                                       {"B2", channelText(order, order.b2)}};
    if (order.d)
        lines.push_back({"D", channelText(order, order.d)});
    lines.push_back({"NT", order.ntSupplied ? "supplied with the line" : "customer's own"});
    return lines;
}

std::vector<CertificateTerminal> terminalLines(const ServiceOrder &order)
{
    const ProtocolVariant *variant = findVariant(order.variant);
    std::vector<CertificateTerminal> lines;
    for (const OrderedTerminal &terminal : order.terminals)
        lines.push_back(terminalLine(order, variant, terminal));
    return lines;
}

std::vector<CertificateLine> terminalSettings(const ServiceOrder &order)
{
    std::vector<CertificateLine> lines;
    const ProtocolVariant *variant = findVariant(order.variant);
    if (variant)
        for (const TerminalSetting &setting : variant->settings)
            if (setting.name != u"EAZ") // stands with each number
                lines.push_back({setting.name, settled(order, setting.name, setting.value)});
    if (order.isPointToPoint()) {
        const QString head = !order.headNumber.isEmpty() || order.terminals.empty()
                                 ? order.headNumber
                                 : order.terminals.front().dn;
        const DirectoryNumber number = NumberKey(order).numberOf(head);
        if (!head.isEmpty())
            lines.push_back({"Head number", number.isNull() ? head : groupedByPlan(number)});
        if (!order.numberRange.isEmpty())
            lines.push_back({"Number range", order.numberRange});
    }
    if (order.bServices().testFlag(Service::Data))
        lines.push_back({"Data rate", QString("%1 kbit/s").arg(order.dataRate / 1000)});
    if (!order.dialPrefix.isEmpty())
        lines.push_back({"Prefix to dial", order.dialPrefix});
    return lines;
}

} // namespace loopwright
