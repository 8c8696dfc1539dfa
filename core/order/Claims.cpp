#include "core/order/Claims.h"

#include "core/order/OrderIdentifiers.h"

#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

class Claims
{
public:
    void add(ClaimKind kind, const QString &scope, const QString &value, const QString &field,
             const QString &shown)
    {
        const bool known = std::any_of(m_list.begin(), m_list.end(), [&](const Claim &claim) {
            return claim.kind == kind && claim.value == value;
        });
        if (!value.isEmpty() && !known)
            m_list.push_back({kind, scope, value, field, shown});
    }
    std::vector<Claim> take() { return std::move(m_list); }

private:
    std::vector<Claim> m_list;
};

} // namespace

std::vector<Claim> claimsOf(const ServiceOrder &order)
{
    // A repair works on what the circuit holds already.
    if (order.type == OrderType::Disconnect || order.type == OrderType::Repair)
        return {};
    Claims claims;
    claims.add(ClaimKind::Pair, order.office, pairKey(order.pair), "pair", order.pair);
    const ProtocolVariant *variant = findVariant(order.variant);
    if (!variant)
        return claims.take();
    const std::vector<TerminalIdentifiers> terminals = identifiersOf(order);
    const NumberHome home = homeOf(*variant, terminals);
    for (const TerminalIdentifiers &terminal : terminals) {
        const QString n = QString::number(terminal.number);
        const DirectoryNumber number = checkDirectoryNumber(*variant, terminal.dn, home).number;
        if (!number.isNull())
            claims.add(ClaimKind::Dn, {}, number.assignmentKey(), "dn_" + n, terminal.dn);
        if (!terminal.spid.isEmpty())
            claims.add(ClaimKind::Spid, order.office, checkSpid(*variant, terminal.spid).digits,
                       "spid_" + n, terminal.spid);
    }
    return claims.take();
}

QString pairKey(const QString &pair)
{
    static const QRegularExpression aroundSeparators(R"(\s*([-/:,.])\s*)");
    QString plain;
    for (const QChar c : pair.normalized(QString::NormalizationForm_KC)) {
        if (c.category() == QChar::Punctuation_Dash || c.unicode() == 0x2212) // minus sign
            plain += '-';
        else if (c.category() != QChar::Other_Format) // soft hyphens, zero-width spaces
            plain += c;
    }
    return plain.simplified().toUpper().replace(aroundSeparators, "\\1");
}

QString cableOf(const QString &pair)
{
    const QString key = pairKey(pair);
    return key.first(std::max<qsizetype>(key.lastIndexOf('-'), 0));
}

qint64 pairNumber(const QString &pair)
{
    static const QRegularExpression digits("(\\d{1,9})\\D*$");
    return digits.match(pair).captured(1).toLongLong();
}

QString pairIdentity(const QString &pair)
{
    QString text;
    for (const QChar letter : pairKey(pair))
        if (letter.isLetterOrNumber())
            text += letter;
    return text;
}

QString premisesKey(const QString &premises)
{
    return premises.simplified().toCaseFolded();
}

} // namespace loopwright
