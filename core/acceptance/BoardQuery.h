#pragma once
// What is asked of the board: which orders, and in which order. A filter is one word of BoardFacet
// with its row in db/BoardStatement.cpp; every count of it follows.

#include "core/base/EnumCodes.h"

#include <QDate>
#include <QMap>
#include <QString>
#include <QStringList>

#include <array>
#include <vector>

namespace loopwright {

/// What the board filters by, each with its exact counts.
enum class BoardFacet
{
    Open,      ///< "1": neither completed nor cancelled
    Stage,     ///< a Stage
    Outcome,   ///< an OrderOutcome
    Criterion, ///< key of the first open criterion; empty: none is open
    Office,
    Installer, ///< key; empty: nobody is assigned
    WaitingOn, ///< a WaitingOn, of a hold or the referral that stands; empty: nobody
    Paper,     ///< "1": accepted, and its certificate not issued
    Hazard,    ///< "1": one is open and the order is not done
    Away,      ///< "1": a van has it
    Conflict   ///< "1": stations disagree about it, and nobody has settled that
};
template<>
struct EnumCodes<BoardFacet>
{
    static constexpr std::pair<BoardFacet, const char *> table[] = {
        {BoardFacet::Open, "open"},
        {BoardFacet::Stage, "stage"},
        {BoardFacet::Outcome, "outcome"},
        {BoardFacet::Criterion, "criterion"},
        {BoardFacet::Office, "office"},
        {BoardFacet::Installer, "installer"},
        {BoardFacet::WaitingOn, "waiting_on"},
        {BoardFacet::Paper, "paper"},
        {BoardFacet::Hazard, "hazard"},
        {BoardFacet::Away, "out"},
        {BoardFacet::Conflict, "conflicts"}};
};

/// Ties go by due date, then number.
enum class BoardSort
{
    Urgency, ///< an open hazard before everything else; by due date
    Due,
    Number,
    Stage, ///< along the stations
    Outcome,
    Criterion, ///< in the order of the decision; those without one last
    Office,
    Installer, ///< by name; nobody last
    Customer,
    Circuit,
    Pair,
    WaitingOn ///< those that wait on nobody last
};
template<>
struct EnumCodes<BoardSort>
{
    static constexpr std::pair<BoardSort, const char *> table[] = {
        {BoardSort::Urgency, "urgency"},   {BoardSort::Due, "due"},
        {BoardSort::Number, "number"},     {BoardSort::Stage, "stage"},
        {BoardSort::Outcome, "outcome"},   {BoardSort::Criterion, "criterion"},
        {BoardSort::Office, "office"},     {BoardSort::Installer, "installer"},
        {BoardSort::Customer, "customer"}, {BoardSort::Circuit, "circuit"},
        {BoardSort::Pair, "pair"},         {BoardSort::WaitingOn, "waiting_on"}};
};

/// The first day of the week.
inline QDate mondayOf(QDate day)
{
    return day.addDays(1 - day.dayOfWeek());
}

/// An order is at risk if it is not accepted and due today or within so many working days.
inline constexpr int riskWorkingDays = 2;
/// The day so many working days, Monday to Friday, after another.
inline QDate workingDaysAfter(QDate day, int days)
{
    while (days > 0) {
        day = day.addDays(1);
        if (day.dayOfWeek() < 6)
            --days;
    }
    return day;
}

/// A registered person in whose name words of the text are: his orders are found too, where the
/// other words are in theirs.
struct NamedInstaller
{
    QString key;
    QStringList rest; ///< folded (foldForSearch())

    bool operator==(const NamedInstaller &) const = default;
};

struct BoardQuery
{
    QMap<BoardFacet, QString> facets{};
    QDate dueFrom{}, dueBefore{}; ///< invalid: any; from inclusive, before exclusive
    bool pending = false;         ///< open and not accepted
    QDate missedBefore{};         ///< missed its first date, which was before this day
    QString text{};               ///< words that must all be found, any part of a number or name
    std::vector<NamedInstaller> named{};
    BoardSort sort = BoardSort::Urgency;
    bool descending = false;

    /// Apart from its text: nothing in it depends on the day.
    bool isTallied() const
    {
        return !dueFrom.isValid() && !dueBefore.isValid() && !missedBefore.isValid();
    }
};

} // namespace loopwright
