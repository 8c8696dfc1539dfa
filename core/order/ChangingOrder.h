#pragma once
// What the two changes of an office's lines have in common; for the two files of the changes
// alone.

#include "core/order/OfficeChange.h"

namespace loopwright {

inline constexpr int areaCodeLength = 3;
inline constexpr int wholeNumberLength = 10;
inline constexpr int localNumberLength = 7;

inline QString digitsIn(const QString &typed)
{
    QString digits;
    for (const QChar c : typed)
        if (c >= u'0' && c <= u'9')
            digits += c;
    return digits;
}

/// With other digits in the place of those from `at` on; what stands between them stays.
inline QString withDigitsAt(QString typed, int at, const QString &digits)
{
    int place = 0;
    for (QChar &c : typed) {
        if (c < u'0' || c > u'9')
            continue;
        if (place >= at && place < at + digits.size())
            c = digits[place - at];
        ++place;
    }
    return typed;
}

inline Text heldBy(const QString &value, const QString &circuit)
{
    return Text(QT_TRANSLATE_NOOP("core", "%1 is held by circuit %2.")).arg(value).arg(circuit);
}

/// One order on its way.
class Changing
{
public:
    Changing(const OfficeChange &change, const ServiceOrder &order, const HolderOf &holderOf)
        : m_change(change)
        , m_holderOf(holderOf)
        , m_done{order, {}, {}}
    {
    }

    ChangedOrder take() { return std::move(m_done); }

protected:
    ServiceOrder &order() { return m_done.order; }
    void set(const QString &what, QString &value, const QString &now)
    {
        m_done.changes.push_back({what, value, now});
        value = now;
    }
    void keep(const QString &what, const QString &value, const Text &because)
    {
        m_done.cannot.push_back({what, value, because});
    }
    /// The line stays as it was.
    void giveUp(const ServiceOrder &before)
    {
        m_done.order = before;
        m_done.changes.clear();
    }
    QString holderOf(ClaimKind kind, const QString &value) const
    {
        return m_holderOf ? m_holderOf(kind, value) : QString();
    }
    const OfficeChange &m_change;

private:
    const HolderOf &m_holderOf;
    ChangedOrder m_done;
};

} // namespace loopwright
