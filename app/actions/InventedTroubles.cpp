// What customers called about: repairs of circuits in service, most of them closed since. Drawn by
// a chance of their own, so that all else of a seed stays as it is.

#include "app/actions/Invented.h"

namespace loopwright {

namespace {

constexpr int circuitsWithTrouble = 25; ///< one in so many of those in service
constexpr int openOnes = 12;            ///< one in so many of the troubles
constexpr int noonMinute = 12 * 60;

/// What is said of one trouble, from the call to the end.
struct Said
{
    const char *symptom, *found;
    ClearedWhat cause;
    const char *cleared; ///< null: nothing was found
};

constexpr Said whatWasSaid[] = {
    {"no dial tone", "open conductor at the terminal", ClearedWhat::Wiring, "joint remade"},
    {"noise in wet weather", "water in the closure", ClearedWhat::Contact,
     "closure dried and shut"},
    {"calls drop", "bridged tap on the pair", ClearedWhat::Wiring, "tap taken off"},
    {"one channel is dead", "a number missing in the switch", ClearedWhat::Setting,
     "line translated anew"},
    {"data calls fail", "terminal set to another rate", ClearedWhat::Terminal,
     "terminal set right"},
    {"light on the NT is out", "NT without power", ClearedWhat::Nt, "NT put in anew"},
    {"cut off since this morning", "line is good at every test", ClearedWhat::NothingFound,
     nullptr},
};

} // namespace

std::vector<InventedTrouble> Inventor::troubles(const InventedCircuit &circuit)
{
    const auto below = [this](int limit) { return int(m_calls() % quint64(limit)); };
    std::vector<InventedTrouble> made;
    QDate day = circuit.ended.localDate().addDays(1 + below(900));
    // One in four comes back within the month.
    while (below(made.empty() ? circuitsWithTrouble : 4) == 0 && day.addDays(3) < m_today) {
        const Said &said = whatWasSaid[below(int(std::size(whatWasSaid)))];
        InventedTrouble trouble{circuit.order, inventedMoment(day, noonMinute), {}};
        ServiceOrder &repair = trouble.order;
        repair.number = QString("%1-R%2").arg(repair.circuit).arg(made.size() + 1);
        repair.type = OrderType::Repair;
        repair.dueDate = day.addDays(1);
        repair.symptom = said.symptom;
        repair.appointment.clear();
        const bool isOpen = below(openOnes) == 0;
        if (isOpen) {
            trouble.opened = inventedMoment(m_today.addDays(-below(4)), noonMinute - 240);
            repair.dueDate = trouble.opened.localDate().addDays(1);
        } else {
            const Moment closed = trouble.opened.plusSeconds(3600.0 * (3 + below(40)));
            const auto text = said.cleared ? std::optional<QString>(said.cleared) : std::nullopt;
            trouble.closing = Fact{idFrom(m_calls),
                                   closed,
                                   repair.number,
                                   repair.installer,
                                   {},
                                   {},
                                   ClearedFact{said.cause, text, QString(said.found)}};
        }
        made.push_back(std::move(trouble));
        if (isOpen)
            break;
        day = day.addDays(3 + below(27));
    }
    return made;
}

} // namespace loopwright
