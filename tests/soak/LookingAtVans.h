#pragma once
// What is found after a failure of what an order does on its way to a van and back: whether file
// and records agree, and whether an order went, was opened or joined whole or not at all.

#include "app/actions/BundleAnswer.h"
#include "tests/soak/Looking.h"

namespace loopwright::soak {

class LookingAtVans
{
public:
    LookingAtVans(Looking &looking, Tally &tally, const Place &place, const Begun &begun)
        : m_looking(looking)
        , m_tally(tally)
        , m_place(place)
        , m_begun(begun)
    {
    }

    /// Opens the records of both, if something was begun between them.
    void atRecords(Database::Access access);
    /// The files between the two find their way: the van opens the one, the office receives the
    /// other.
    void atWay();

private:
    void atOffice(Records &office);
    void atVan(Records &van);
    void atTaking(Records &office, const Task &task);
    void atOpening(Records &van, const Task &task);
    void atReceiving(Records &office, const Task &task);
    void atFile(Records &records, Work work, const QString &path);
    void atOrdersOut(Records &office, const BundleFile &file);
    void atOrdersBrought(Records &van, const BundleFile &file);
    void mustBeTaken(const QString &path, const Result<std::vector<TakenBundle>> &files);
    bool together(const QString &what, const QList<bool> &signs);
    void inTurn(const QString &order, bool begun, bool in, bool whole);
    void judge(const Task &task, qsizetype found, qsizetype all);
    std::vector<Acknowledged> lastWriters(Work work) const;
    bool mayBeOf(const Acknowledged &each, const BundleFile &file) const;

    Looking &m_looking;
    Tally &m_tally;
    const Place &m_place;
    const Begun &m_begun;
};

} // namespace loopwright::soak
