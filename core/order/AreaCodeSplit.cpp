// The numbers of an area code get another; the SPIDs that hold it stay, unless asked.

#include "core/identifiers/SpidRules.h"
#include "core/order/ChangingOrder.h"
#include "core/order/OrderIdentifiers.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

class Split : public Changing
{
public:
    using Changing::Changing;

    void run()
    {
        const ProtocolVariant *variant = findVariant(order().variant);
        if (!variant)
            return;
        const NumberKey key(order());
        for (OrderedTerminal &terminal : order().terminals)
            move(columnsOf(terminal.number).dn, terminal.dn, key);
        move(QStringLiteral("head_number"), order().headNumber, key);
        if (variant->hasSpid())
            for (OrderedTerminal &terminal : order().terminals)
                renew(*variant, terminal);
    }

private:
    void move(const QString &what, QString &number, const NumberKey &key)
    {
        if (number.isEmpty())
            return;
        const DirectoryNumberCheck check = key.check(number);
        if (check.number.isNull() || check.number.digits.size() == localNumberLength) {
            cannotBeRead(what, number, check);
            return;
        }
        const QString &digits = check.number.digits;
        if (!check.number.isNanp())
            return;
        if (digits.startsWith(m_change.to))
            m_moved.insert(digits.right(localNumberLength));
        if (!digits.startsWith(m_change.from))
            return;
        const DirectoryNumber next{check.number.country,
                                   m_change.to + digits.right(localNumberLength)};
        if (const QString circuit = holderOf(ClaimKind::Dn, next.assignmentKey());
            !circuit.isEmpty()) {
            keep(what, number, heldBy(next.shown(), circuit));
            return;
        }
        m_moved.insert(digits.right(localNumberLength));
        set(what, number, written(number, next));
    }
    /// As it was written, with the other code; in full if it was written without any.
    QString written(const QString &number, const DirectoryNumber &next) const
    {
        const qsizetype count = digitsIn(number).size();
        if (count < wholeNumberLength)
            return next.shown();
        return withDigitsAt(number, int(count - wholeNumberLength), m_change.to);
    }
    /// Whether it is concerned nobody can tell.
    void cannotBeRead(const QString &what, const QString &number, const DirectoryNumberCheck &check)
    {
        const bool local = !check.number.isNull() && check.number.isNanp();
        if (local)
            keep(what, number,
                 QT_TRANSLATE_NOOP("core", "Its area code is not known: write all ten digits."));
        else if (check.number.isNull() && digitsIn(number).contains(m_change.from) &&
                 !check.findings.empty())
            keep(what, number,
                 Text(QT_TRANSLATE_NOOP("core", "It cannot be read as a number: %1."))
                     .arg(check.findings.front().reason));
    }

    bool holdsOldCode(const QString &digits, std::string_view embedded) const
    {
        if (embedded.size() == wholeNumberLength &&
            embedded.substr(0, areaCodeLength) == m_change.from.toStdString())
            return true;
        return std::ranges::any_of(
            m_moved, [&](const QString &local) { return digits.contains(m_change.from + local); });
    }
    void renew(const ProtocolVariant &variant, OrderedTerminal &terminal)
    {
        if (terminal.spid.isEmpty())
            return;
        const std::string typed = terminal.spid.toStdString();
        const SpidJudge judge(variant, typed, {});
        const std::string embedded(judge.embedded());
        const QString digits = digitsIn(terminal.spid);
        if (!holdsOldCode(digits, embedded))
            return;
        const QString &what = columnsOf(terminal.number).spid;
        const QString inside = QString::fromStdString(embedded);
        if (!m_change.spids)
            keep(what, terminal.spid,
                 Text(QT_TRANSLATE_NOOP("core", "It holds area code %1 and is kept: whether the "
                                                "switch takes it as it is, the provider says."))
                     .arg(m_change.from));
        else if (judge.worst() == Severity::Error || inside.size() != wholeNumberLength)
            keep(what, terminal.spid,
                 Text(QT_TRANSLATE_NOOP("core", "It holds area code %1, but has no shape that is "
                                                "documented for %2: the provider's order paper "
                                                "says the new one."))
                     .arg(m_change.from)
                     .arg(variant.name));
        else if (!m_moved.contains(inside.right(localNumberLength)))
            keep(what, terminal.spid,
                 Text(QT_TRANSLATE_NOOP("core", "It holds %1, which is no number of this line that "
                                                "moves."))
                     .arg(DirectoryNumber{"1", inside}.shown()));
        else
            setSpid(what, terminal, withDigitsAt(terminal.spid, 0, m_change.to));
    }
    void setSpid(const QString &what, OrderedTerminal &terminal, const QString &next)
    {
        const QString circuit = holderOf(ClaimKind::Spid, digitsIn(next));
        if (circuit.isEmpty())
            set(what, terminal.spid, next);
        else
            keep(what, terminal.spid, heldBy(next, circuit));
    }

    QSet<QString> m_moved; ///< seven digits of each number that has the new code now
};

} // namespace

ChangedOrder splitAreaCode(const OfficeChange &change, const ServiceOrder &order,
                           const HolderOf &holderOf)
{
    Split how(change, order, holderOf);
    how.run();
    return how.take();
}

} // namespace loopwright
