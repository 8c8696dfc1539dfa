#pragma once
// What rounds begin with: records of their own, and how much an undisturbed task does, to know when
// to disturb one. Made once in a process, whatever kinds of rounds follow.

#include "tests/soak/Worker.h"

namespace loopwright::soak {

struct Cost
{
    qint64 calls[3] = {}; ///< by Fault::Count
    qint64 programUs = 0;
};

class Start
{
public:
    /// In this folder, if it is not made yet.
    static const Start &made(const QString &folder);

    /// Puts the records there, and lets the machine forget the rounds before.
    void begin(const Place &place, bool certified) const;
    const Cost &cost(Work work) const { return m_costs[int(work)]; }

private:
    explicit Start(const QString &folder);
    Place placeOf(bool certified) const;
    void measure(Work work);

    QDir m_folder;
    Cost m_costs[works];
};

} // namespace loopwright::soak
