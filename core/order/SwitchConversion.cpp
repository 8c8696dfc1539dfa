// The lines of a switch get another protocol variant, with the SPIDs that it asks for.

#include "core/identifiers/SpidRules.h"
#include "core/order/ChangingOrder.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>

namespace loopwright {

namespace {

class Conversion : public Changing
{
public:
    using Changing::Changing;

    void run()
    {
        const ProtocolVariant *next = findVariant(m_change.to);
        if (!next || order().variant != m_change.from)
            return;
        const ServiceOrder before = order();
        set(QStringLiteral("protocol_variant"), order().variant, next->key);
        bool whole = true;
        for (OrderedTerminal &terminal : order().terminals)
            whole = renew(*next, before, terminal) && whole;
        whole = keepNumbers(before) && whole;
        whole = whole && isNoWorse(*next, before);
        if (whole)
            return;
        keep(QStringLiteral("protocol_variant"), before.variant,
             QT_TRANSLATE_NOOP("core", "The line stays as it is, for the reasons that are named "
                                       "with it."));
        giveUp(before);
    }

private:
    /// False if the line cannot have the new variant with this terminal.
    bool renew(const ProtocolVariant &next, const ServiceOrder &before, OrderedTerminal &terminal)
    {
        if (terminal.dn.isEmpty() && terminal.spid.isEmpty())
            return true;
        const QString &what = columnsOf(terminal.number).spid;
        if (!next.hasSpid()) {
            if (!terminal.spid.isEmpty())
                set(what, terminal.spid, {});
            return true;
        }
        const std::string typed = terminal.spid.toStdString();
        const SpidJudge judge(next, typed, {});
        if (judge.worst() == Severity::Note)
            return true;
        const QString wanted = made(next, before, terminal);
        if (!wanted.isEmpty() && wanted == digitsIn(terminal.spid))
            return true; // what is doubtful is in the number
        Text because;
        if (wanted.isEmpty())
            because = Text(QT_TRANSLATE_NOOP("core", "The rule of %1 does not say the SPID of "
                                                     "this terminal: the provider's order paper "
                                                     "does."))
                          .arg(next.name);
        else if (const QString circuit = holderOf(ClaimKind::Spid, wanted); !circuit.isEmpty())
            because = heldBy(wanted, circuit);
        if (because.isEmpty()) {
            set(what, terminal.spid, wanted);
            return true;
        }
        keep(what, terminal.spid, because);
        return judge.worst() != Severity::Error;
    }

    /// Empty where it does not follow from the number: the variant has several shapes, the area
    /// code is not known, or terminals share the number and the ids tell them apart.
    static QString made(const ProtocolVariant &next, const ServiceOrder &before,
                        const OrderedTerminal &terminal)
    {
        const NumberKey key(before);
        const DirectoryNumber number = key.numberOf(terminal.dn);
        if (!number.isNanp() || number.digits.size() != wholeNumberLength)
            return {};
        const auto sharing =
            std::ranges::count_if(before.terminals, [&](const OrderedTerminal &other) {
                return key(other.dn) == number.assignmentKey();
            });
        if (sharing > 1)
            return {};
        switch (next.spidMaking) {
        case SpidMaking::Unknown:
            break;
        case SpidMaking::Generic:
            return number.digits + "0101";
        case SpidMaking::FiveEss:
            return "01" + number.digits.right(localNumberLength) + "0";
        }
        return {};
    }

    /// Each number stays the number that it is: written out where the new variant would read it
    /// otherwise. False if that does not help.
    bool keepNumbers(const ServiceOrder &before)
    {
        const NumberKey was(before), now(order());
        bool all = true;
        const auto keepOne = [&](const QString &what, QString &typed) {
            const DirectoryNumber number = was.numberOf(typed);
            if (number.isNull() || now(typed) == number.assignmentKey())
                return;
            for (const QString &written : {number.shown(), number.international()})
                if (isStill(number, written)) {
                    set(what, typed, written);
                    return;
                }
            keep(what, typed, QT_TRANSLATE_NOOP("core", "It would be read as another number."));
            all = false;
        };
        for (OrderedTerminal &terminal : order().terminals)
            keepOne(columnsOf(terminal.number).dn, terminal.dn);
        keepOne(QStringLiteral("head_number"), order().headNumber);
        return all;
    }
    bool isStill(const DirectoryNumber &number, const QString &typed)
    {
        return NumberKey(order())(typed) == number.assignmentKey();
    }

    /// Nothing of the line is in error that was not before.
    bool isNoWorse(const ProtocolVariant &next, const ServiceOrder &before)
    {
        const ProtocolVariant *variant = findVariant(before.variant);
        const auto findingsOf = [](const ProtocolVariant &by, const ServiceOrder &line) {
            return checkTerminals(by, identifiersOf(line), line.bothChannelsOrdered());
        };
        const Findings found = findingsOf(next, order());
        if (worst(found) != Severity::Error ||
            (variant && worst(findingsOf(*variant, before)) == Severity::Error))
            return true;
        const OrderFields fields = before.fields();
        for (const Finding &finding : found)
            if (finding.severity == Severity::Error)
                keep(finding.field, fields.value(finding.field), finding.reason);
        return false;
    }
};

} // namespace

ChangedOrder convertSwitch(const OfficeChange &change, const ServiceOrder &order,
                           const HolderOf &holderOf)
{
    Conversion how(change, order, holderOf);
    how.run();
    return how.take();
}

} // namespace loopwright
