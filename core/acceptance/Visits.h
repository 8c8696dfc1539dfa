#pragma once
// Visits: one installer at one premises, from arrival to leaving. Two lines at one premises share
// the visit, never the safety card: voltage belongs to a pair. A visit is recorded in the job of
// one line and counts for the others there, and so do the self-tests of the instruments that were
// used on it.

#include "core/acceptance/Fact.h"

namespace loopwright {

struct Visit
{
    QString installer;
    Moment arrived;
    std::optional<Moment> left; ///< none: it lasts until the end of the local day
    std::optional<VisitResult> result;
    QStringList orders; ///< that hold a fact of it; the first is the one where it was begun
    QStringList facts;  ///< ids

    bool spans(const Moment &moment) const;
    /// Both of one installer and both over: he was at two places at a time.
    bool overlaps(const Visit &other) const;
    bool isSame(const Visit &other) const
    {
        return installer == other.installer && arrived == other.arrived;
    }
    /// "visit 2026-03-04T14:00:00Z"
    QString name() const { return "visit " + arrived.utcText(); }

    QJsonObject toJson() const;
    static Visit read(JsonReader &reader);
    bool operator==(const Visit &) const = default;
};

/// When the thing was done: a run counts from its start.
Moment timeOf(const Fact &fact);
/// By the time that they record; at the same time by id.
bool isEarlier(const Fact &a, const Fact &b);
/// Whether the fact was made at the premises: a safety card, a self-test, or a measurement.
bool isMadeOnSite(const Fact &fact);
/// A measurement for which somebody was at the pair.
bool isMeasurement(const Fact &fact);
/// The facts that no fact among them voids, without the voids, by time; the id settles ties, so
/// that the order of recording never changes a decision.
std::vector<const Fact *> standingFacts(const std::vector<Fact> &facts);

/// The visits that the standing ones of these facts record, by arrival. What names the same
/// installer and arrival is one visit. A leaving or a result without arrival belongs to the visit
/// that is open then; if none is, it is a visit of its own.
std::vector<Visit> visitsOf(const std::vector<Fact> &facts);

/// The visit that is going on at `now`: the newest one without leaving that is told in the order,
/// or by the installer in another order at the premises. Nothing if there is none.
std::optional<Visit> openVisit(const std::vector<Visit> &visits, const QString &order,
                               const QString &installer, const Moment &now);

/// Name of the visit on which a fact was made, by the visits: one of its own installer before any
/// other, the later before the earlier; the local day if none spans it.
QString visitName(const Fact &fact, const std::vector<Visit> &visits);
/// The same by the order's standing facts alone, each visit fact for itself, the first that spans.
QString visitName(const Fact &fact, const std::vector<const Fact *> &standing);

/// What an order takes over of the visits to its premises.
struct SharedVisits
{
    /// The visits on which the order's facts were made; empty if each of its own visit facts,
    /// taken for itself, says the same.
    std::vector<Visit> visits;
    std::vector<Fact> selfTests; ///< made in other orders, of instruments that its facts name
};

/// `own` are all facts of the order, `others` the standing ones of other orders at its premises. A
/// visit of another order is taken for a day only if it is of the same installer, overlaps no
/// visit of the order's own, and every fact of that day then lies on a visit: facts that contradict
/// it keep their calendar day. A self-test is taken unless both orders record the visit: an order
/// that records its own stands for itself.
SharedVisits shareVisits(const std::vector<Fact> &own, const std::vector<Fact> &others);

} // namespace loopwright
