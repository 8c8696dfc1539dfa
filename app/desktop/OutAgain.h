#pragma once
// An order that a van has is changed only when the same thing is asked for a second time, after it
// was said that it is out.

#include "app/actions/Records.h"

#include <QString>

namespace loopwright {

class OutAgain
{
public:
    /// Whether just this was refused for that before; it is forgotten then.
    bool isAgain(const QString &what);
    /// The sentence for a refusal; says how to go on where it is for that alone.
    QString refused(const Error &error, const QString &what);

private:
    QString m_refused;
};

/// While it lives, the records let what is out be changed if `on`.
class ChangingOut
{
public:
    ChangingOut(Records &records, bool on)
        : m_records(records)
    {
        m_records.changeWhatIsOut(on);
    }
    ~ChangingOut() { m_records.changeWhatIsOut(false); }
    ChangingOut(const ChangingOut &) = delete;
    ChangingOut &operator=(const ChangingOut &) = delete;

private:
    Records &m_records;
};

} // namespace loopwright
