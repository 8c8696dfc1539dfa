#pragma once
// The identifiers of an order's terminals as the rules of its variant take them, and the keys by
// which its numbers are told apart.

#include "core/identifiers/DirectoryNumber.h"
#include "core/identifiers/TerminalIdentifiers.h"
#include "core/order/ServiceOrder.h"

namespace loopwright {

std::vector<TerminalIdentifiers> identifiersOf(const ServiceOrder &order);

/// Tells numbers apart as the records do: equal for the same number however it was typed. What is
/// no number by the order's variant is its own key.
class NumberKey
{
public:
    explicit NumberKey(const ServiceOrder &order);
    QString operator()(const QString &typed) const;
    /// Grouped for reading aloud, "217-555-0143"; what is no number, as typed.
    QString shown(const QString &typed) const;
    /// Null for what is no number by the order's variant.
    DirectoryNumber numberOf(const QString &typed) const;
    /// Without findings if the variant is not known.
    DirectoryNumberCheck check(const QString &typed) const;

private:
    const ProtocolVariant *m_variant;
    NumberHome m_home;
};

} // namespace loopwright
