#include "core/order/OrderIdentifiers.h"

namespace loopwright {

std::vector<TerminalIdentifiers> identifiersOf(const ServiceOrder &order)
{
    std::vector<TerminalIdentifiers> list;
    for (const OrderedTerminal &terminal : order.terminals)
        list.push_back({terminal.number, terminal.dn, terminal.spid, terminal.tei});
    return list;
}

NumberKey::NumberKey(const ServiceOrder &order)
    : m_variant(findVariant(order.variant))
{
    if (m_variant)
        m_home = homeOf(*m_variant, identifiersOf(order));
}

DirectoryNumberCheck NumberKey::check(const QString &typed) const
{
    return m_variant ? checkDirectoryNumber(*m_variant, typed, m_home) : DirectoryNumberCheck();
}

DirectoryNumber NumberKey::numberOf(const QString &typed) const
{
    return check(typed).number;
}

QString NumberKey::operator()(const QString &typed) const
{
    const DirectoryNumber number = numberOf(typed);
    return number.isNull() ? typed : number.assignmentKey();
}

QString NumberKey::shown(const QString &typed) const
{
    const DirectoryNumber number = numberOf(typed);
    return number.isNull() ? typed : number.shown();
}

} // namespace loopwright
