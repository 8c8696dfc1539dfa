#pragma once
// Invented records of realistic shape for trials: a region's offices, people and instruments, and
// the life of one circuit after the other. The same seed gives the same ones on the same day.
//
// Nine in ten circuits were taken over from older records (a record-only order, completed years
// ago); one in twenty was turned up with its whole evidence, a few of these were retested since;
// the others are open, at every station, or cancelled. Some have a further order: a change that is
// open, or the disconnect that ended them. A premises has from one line to 500; few offices have
// most circuits, and few installers of an office most of its work. Nothing is accepted with
// exception, and nobody waits for the weather: what has no rows is part of the shape. One circuit
// in 25 that works had a trouble, a few of these came back, and some are open.
//
// Numbers are of the block that is kept free for fiction (555-0100 to 555-0199) as far as it
// reaches; a trial of many circuits needs more numbers than there are, and goes on in offices that
// no numbering plan has (area codes beginning with N9, which are not given out).

#include "core/acceptance/Fact.h"
#include "core/office/Office.h"

#include <random>

namespace loopwright {

enum class InventedLife
{
    TakenOver, ///< completed, its identifiers alone being known
    TurnedUp,  ///< completed and certified, with its whole evidence
    Open,
    Cancelled
};

/// A repair, and how it ended unless it is open.
struct InventedTrouble
{
    ServiceOrder order;
    Moment opened;
    std::optional<Fact> closing;
};

struct InventedCircuit
{
    InventedLife life = InventedLife::TakenOver;
    ServiceOrder order;
    Moment takenIn, ended;                  ///< the latter unless it is open
    std::vector<Fact> facts;                ///< in the order of the work, before it ended
    std::vector<Fact> retests;              ///< after it was completed
    std::optional<ServiceOrder> later = {}; ///< a further one: a change that is open, or a
                                            ///< disconnect that is completed
    Moment laterTakenIn = {};
    std::vector<InventedTrouble> troubles = {}; ///< one after the other
};

class Inventor
{
public:
    /// Open orders are due about `today`, finished ones in the six years before.
    Inventor(quint64 seed, QDate today, qint64 circuits);

    const QList<ServingOffice> &offices() const { return m_offices; }
    const QList<Person> &people() const { return m_people; }
    /// One for each of the people.
    const QList<Instrument> &instruments() const { return m_instruments; }

    InventedCircuit next();

private:
    struct Premises
    {
        int office = 0;
        QString customer, address, contact, installer;
        QDate built;  ///< when most of its lines were made
        int left = 0; ///< lines that are still to come
    };

    int below(int limit) { return int(m_random() % quint64(limit)); }
    bool oneIn(int count) { return below(count) == 0; }
    double share();
    const QString &one(const QStringList &list) { return list[below(int(list.size()))]; }
    QString id() { return idFrom(m_random); }
    static QString idFrom(std::mt19937_64 &random);

    void inventRegister(QDate today);
    void move(); ///< to the next premises
    InventedLife life();
    ServiceOrder order(InventedLife life);
    void plan(ServiceOrder &order);
    void addTerminals(ServiceOrder &order);
    void addLater(InventedCircuit &circuit);

    // InventedEvidence.cpp
    std::vector<Fact> evidence(const ServiceOrder &order, bool whole);
    std::vector<Fact> retests(const ServiceOrder &order, QDate day);
    // InventedTroubles.cpp
    std::vector<InventedTrouble> troubles(const InventedCircuit &circuit);

    std::mt19937_64 m_random;
    std::mt19937_64 m_calls; ///< of customers
    QDate m_today;
    QList<ServingOffice> m_offices;
    QList<Person> m_people;
    QList<Instrument> m_instruments;
    std::vector<double> m_officeShares; ///< added up, to 1
    std::vector<int> m_premisesOf;      ///< by office: how many it has so far
    std::vector<int> m_pairsOf;         ///< likewise
    Premises m_premises;
    qint64 m_circuit = 0; ///< the next one
    int m_largest;        ///< lines at the first premises
};

/// Six hours behind UTC, where all of it happens.
Moment inventedMoment(QDate day, int minuteOfDay);

} // namespace loopwright
