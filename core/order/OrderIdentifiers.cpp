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

QString NumberKey::operator()(const QString &typed) const
{
    if (!m_variant)
        return typed;
    const DirectoryNumberCheck check = checkDirectoryNumber(*m_variant, typed, m_home);
    return check.number.isNull() ? typed : check.number.assignmentKey();
}

} // namespace loopwright
