#include "app/actions/SparePairs.h"

#include "app/actions/LimitSets.h"
#include "core/acceptance/Criteria.h"
#include "core/acceptance/Fact.h"
#include "core/loop/LoopFact.h"
#include "core/order/Claims.h"
#include "db/AssignmentStore.h"
#include "db/FactStore.h"
#include "db/OrderStore.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <tuple>

namespace loopwright {

namespace {

constexpr qint64 pairsOfGroup = 25;
constexpr int nearestAsked = 6; // whose make-up is looked for

/// Every use of each pair, by its number.
using Cable = std::map<qint64, std::vector<PairUse>>;

qint64 groupOf(qint64 pair)
{
    return (pair - 1) / pairsOfGroup;
}

bool isHeld(const std::vector<PairUse> &uses)
{
    return std::ranges::any_of(
        uses, [](const PairUse &use) { return use.state != AssignmentState::Released; });
}

/// What a use says of the copper itself.
QString trouble(const PairUse &use)
{
    if (use.hazard)
        return QString("A dangerous voltage was read on order %1 and is not closed: keep away.")
            .arg(use.order);
    if (use.state == AssignmentState::Released && pairKey(use.pairNow) != use.pair &&
        !use.pairNow.isEmpty())
        return QString("Order %1 gave it up for pair %2.").arg(use.order, use.pairNow);
    if (use.outcome == OrderOutcome::NotAccepted && isOfThePlant(use.criterion))
        return QString("Order %1: %2").arg(use.order, use.reason);
    return {};
}

QStringList troublesOn(const Cable &cable, qint64 pair)
{
    QStringList said;
    if (const auto own = cable.find(pair); own != cable.end())
        for (const PairUse &use : own->second)
            if (const QString one = trouble(use); !one.isEmpty())
                said << one;
    for (const qint64 beside : {pair - 1, pair + 1})
        if (const auto near = cable.find(beside); near != cable.end())
            for (const PairUse &use : near->second)
                if (const QString one = trouble(use); !one.isEmpty())
                    said << QString("Beside it, %1: %2").arg(use.pair, one);
    return said;
}

/// Everything between the first and the last pair that some order had.
std::vector<SparePair> sparesOf(const Cable &cable, const QString &name, qint64 own)
{
    std::vector<SparePair> spares;
    constexpr qint64 mostPairs = 10'000; // a name that ends with a long number is no cable's count
    const qint64 first = cable.begin()->first, last = cable.rbegin()->first;
    for (qint64 pair = first; pair <= last && pair - first < mostPairs; ++pair) {
        const auto uses = cable.find(pair);
        if (pair == own || (uses != cable.end() && isHeld(uses->second)))
            continue;
        SparePair spare;
        spare.pair =
            uses == cable.end() ? QString("%1-%2").arg(name).arg(pair) : uses->second.back().pair;
        spare.lastOrder = uses == cable.end() ? QString() : uses->second.back().order;
        spare.against = troublesOn(cable, pair);
        spare.away = std::abs(pair - own);
        spares.push_back(std::move(spare));
    }
    std::ranges::stable_sort(spares, {}, [own](const SparePair &spare) {
        return std::tuple(!spare.against.isEmpty(), groupOf(pairNumber(spare.pair)) != groupOf(own),
                          spare.away);
    });
    return spares;
}

Result<std::optional<LoopMakeup>> makeupOf(const Database &database, const PairUse &use)
{
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(use.order));
    for (auto fact = facts.rbegin(); fact != facts.rend(); ++fact) {
        const auto *loop = fact->as<LoopFact>();
        // What names no pair was measured on the one that the order has now.
        const QString &pair = fact->pair.isEmpty() ? use.pairNow : fact->pair;
        if (!loop || !loop->makeup || pairIdentity(pair) != pairIdentity(use.pair))
            continue;
        LOOPWRIGHT_ASSIGN(const auto voided, FactStore(database).voidOf(fact->id));
        if (!voided)
            return loop->makeup;
    }
    return std::optional<LoopMakeup>();
}

/// As they were read, once for each.
using Makeups = std::map<const PairUse *, std::optional<LoopMakeup>>;

/// By the newest make-up of the pair, else of the nearest that has one.
Result<void> predict(const Database &database, const Cable &cable, const LimitSet &limits,
                     Makeups &known, SparePair &spare)
{
    const qint64 own = pairNumber(spare.pair);
    std::vector<const PairUse *> nearest;
    for (const auto &[pair, uses] : cable)
        if (groupOf(pair) == groupOf(own))
            nearest.push_back(&uses.back());
    std::ranges::stable_sort(
        nearest, {}, [own](const PairUse *use) { return std::abs(pairNumber(use->pair) - own); });
    if (nearest.size() > nearestAsked)
        nearest.resize(nearestAsked);
    for (const PairUse *use : nearest) {
        auto makeup = known.find(use);
        if (makeup == known.end()) {
            LOOPWRIGHT_ASSIGN(const auto read, makeupOf(database, *use));
            makeup = known.emplace(use, read).first;
        }
        if (!makeup->second)
            continue;
        const LoopQualification judged = qualify(*makeup->second, limits);
        spare.makeupOf = use->pair;
        spare.lossDb = judged.insertionLossDb;
        spare.verdict = judged.verdict;
        return {};
    }
    return {};
}

} // namespace

Result<std::vector<SparePair>> sparesInCable(Records &records, const ServiceOrder &order, int limit)
{
    const Database &database = records.database();
    const QString name = cableOf(order.pair);
    LOOPWRIGHT_ASSIGN(const auto uses, AssignmentStore(database).ofCable(order.office, name));
    Cable cable;
    for (const PairUse &use : uses)
        if (cableOf(use.pair) == name && pairNumber(use.pair) > 0)
            cable[pairNumber(use.pair)].push_back(use);
    if (cable.empty())
        return std::vector<SparePair>();
    std::vector<SparePair> spares = sparesOf(cable, name, pairNumber(order.pair));
    if (int(spares.size()) > limit)
        spares.resize(std::size_t(limit));
    LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
    Makeups known;
    for (SparePair &spare : spares)
        LOOPWRIGHT_TRY(predict(database, cable, limits, known, spare));
    return spares;
}

Result<SparePairs> sparePairs(Records &records, const QString &number, int limit)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(number));
    const ServiceOrder &order = stored.order;
    SparePairs found{order.pair, cableOf(order.pair), {}};
    if (found.cable.isEmpty() || pairNumber(found.pair) == 0)
        return failure(
            ErrorCode::Refused,
            QString("The pair of order %1 names no cable: CABLE-PAIR, as 17-204.").arg(number));
    LOOPWRIGHT_ASSIGN(found.spares, sparesInCable(records, order, limit));
    return found;
}

QJsonObject SparePair::toJson() const
{
    const bool known = !makeupOf.isEmpty();
    return {{"pair", pair},
            {"last_order", lastOrder.isEmpty() ? QJsonValue() : QJsonValue(lastOrder)},
            {"against", QJsonArray::fromStringList(against)},
            {"away", away},
            {"makeup_of", known ? QJsonValue(makeupOf) : QJsonValue()},
            {"insertion_loss_db", known ? QJsonValue(lossDb) : QJsonValue()},
            {"verdict", known ? QJsonValue(toText(verdict)) : QJsonValue()}};
}

} // namespace loopwright
