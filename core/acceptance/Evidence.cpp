#include "core/acceptance/Evidence.h"

#include "core/acceptance/Contradiction.h"
#include "core/acceptance/Proof.h"
#include "core/base/PaperTime.h"
#include "core/order/OrderIdentifiers.h"

#include <QMap>

#include <algorithm>
#include <array>

namespace loopwright {

namespace {

/// What was recorded when the order had ended decides nothing.
bool isInTime(const DecisionInput &input, const Fact &fact)
{
    return !input.afterEnd.contains(fact.id);
}

/// One thing that makes evidence old.
struct Change
{
    ChangedWhat what = ChangedWhat::Pair;
    Moment at;
    bool unnamedOnly = false; ///< leaves what names its pair: that is held against the pair
};

std::vector<Change> changesOf(const DecisionInput &input, const std::vector<const Fact *> &facts)
{
    std::vector<Change> list;
    for (const Fact *fact : facts)
        if (const auto *changed = fact->as<ChangedFact>(); changed && isInTime(input, *fact))
            list.push_back({changed->what, fact->at, changed->to.has_value()});
    // The office enters the pair that was reported from the site: it was that pair already.
    const auto isEntered = [&](const OrderChange &change) {
        return change.what == ChangedWhat::Pair &&
               std::ranges::any_of(facts, [&](const Fact *fact) {
                   const auto *changed = fact->as<ChangedFact>();
                   return changed && changed->what == ChangedWhat::Pair && changed->to &&
                          fact->at <= change.at && isSamePair(*changed->to, input.order.pair);
               });
    };
    for (const OrderChange &change : input.changes)
        if (change.what && !isEntered(change))
            list.push_back({*change.what, change.at, *change.what == ChangedWhat::Pair});
    return list;
}

const char *changeName(ChangedWhat what)
{
    switch (what) {
    case ChangedWhat::Pair:
        return "the pair was changed";
    case ChangedWhat::LineEquipment:
        return "the line equipment was changed";
    case ChangedWhat::Nt:
        return "the NT was changed";
    case ChangedWhat::Identifiers:
        return "the identifiers were changed";
    case ChangedWhat::Feed:
        break;
    }
    return "the feed was switched";
}

/// From when to when it lasted: a check from its quiet seconds on.
std::optional<std::pair<Moment, Moment>> spanOf(const Fact &fact)
{
    if (const auto *run = fact.as<RunFact>())
        return std::pair(run->started, run->ended);
    if (const auto *check = fact.as<DetectorFact>())
        return std::pair(fact.at.plusSeconds(-double(check->quietSeconds.value_or(0))), fact.at);
    return std::nullopt;
}

/// Measured only if the office is disconnected.
bool needsDeadPair(const Fact &fact)
{
    const auto *analog = fact.as<AnalogFact>();
    return analog && (analog->quantity == AnalogQuantity::Insulation ||
                      analog->quantity == AnalogQuantity::ForeignVoltage);
}

/// Busy, no answer: the far end speaks, not this line.
bool isAnsweredElsewhere(int cause)
{
    constexpr std::array causes = {17, 18, 19};
    return std::ranges::find(causes, cause) != causes.end();
}

} // namespace

Evidence::Evidence(const DecisionInput &input, const LimitSet &limits)
    : m_input(input)
    , m_facts(standingFacts(input.facts))
    , m_pairs(pairInForce(input, m_facts))
{
    QHash<QString, const Fact *> voids; // the first of each
    for (const Fact &fact : input.facts)
        if (const auto *voiding = fact.as<VoidFact>()) {
            const Fact *&first = voids[voiding->fact];
            if (!first || isEarlier(fact, *first))
                first = &fact;
        }
    for (const Fact &fact : input.facts) {
        if (const Fact *by = voids.value(fact.id)) {
            const auto *voiding = by->as<VoidFact>();
            m_voids.insert(&fact, voiding);
            m_struckOut.push_back({&fact, Discount::StruckOut,
                                   Text(QT_TRANSLATE_NOOP("core", "struck out by %1: %2"))
                                       .arg(voiding->by)
                                       .arg(voiding->because.simplified())});
        }
    }
    const auto byTime = [](const Fact *a, const Fact *b) { return isEarlier(*a, *b); };
    std::sort(m_struckOut.begin(), m_struckOut.end(),
              [](const auto &a, const auto &b) { return isEarlier(*a.fact, *b.fact); });
    for (const Fact *fact : m_facts) {
        if (!isInTime(input, *fact))
            continue;
        if (fact->as<SelfTestFact>())
            m_selfTests.push_back(fact);
        if (const auto *made = fact->as<MadeWithFact>())
            for (const QString &id : made->facts)
                m_madeWith.insert(id, fact->instrument);
    }
    for (const Fact &test : input.selfTests)
        m_selfTests.push_back(&test);
    std::sort(m_selfTests.begin(), m_selfTests.end(), byTime);

    discountByOrder(input);
    discountByChanges(input);
    std::vector<std::pair<const Fact *, QString>> counting;
    for (const Fact *card : of<SafetyFact>())
        counting.emplace_back(card, visitOf(*card));
    m_cards = SafetyCards(input, m_pairs, counting, m_facts, limits);
    discountWithoutCard();
    discountBySelfTests();
    discountByLayers();
    discountCallsElsewhere(input.order);
    discountContradictions();
}

/// The first reason stands.
void Evidence::discount(const Fact &fact, Discount why, Text sentence)
{
    if (!m_discounts.contains(&fact))
        m_discounts.insert(&fact, {&fact, why, std::move(sentence)});
}

void Evidence::discountByOrder(const DecisionInput &input)
{
    for (const Fact *fact : m_facts) {
        if (!isInTime(input, *fact))
            discount(*fact, Discount::OrderEnded,
                     Text(QT_TRANSLATE_NOOP("core", "recorded when the order was no longer open")));
        const auto aside = std::ranges::find(input.setAside, fact->id, &SetAside::fact);
        if (aside != input.setAside.end())
            discount(*fact, Discount::Disputed, aside->sentence());
        if (!isEvidence(*fact))
            continue;
        const QString pair = input.pairOf(*fact);
        const bool right =
            pair.isEmpty() || std::ranges::any_of(m_pairs, [&pair](const QString &name) {
                return isSamePair(name, pair);
            });
        if (!right)
            discount(*fact, Discount::OtherPair,
                     Text(QT_TRANSLATE_NOOP("core", "measured on %1, the order is for %2"))
                         .arg(pair)
                         .arg(m_pairs.front()));
    }
}

void Evidence::discountByChanges(const DecisionInput &input)
{
    for (const Change &change : changesOf(input, m_facts))
        for (const Fact *fact : m_facts)
            if (retires(change.what, provenBy(*fact)) && timeOf(*fact) <= change.at &&
                !(change.unnamedOnly && !m_input.pairOf(*fact).isEmpty()))
                discount(*fact, Discount::Retired,
                         Text(QT_TRANSLATE_NOOP("core", "made before %1, %2"))
                             .arg(Text(changeName(change.what)))
                             .arg(Text::message(paperTime(change.at))));
}

bool Evidence::needsCard(const QString &visit) const
{
    switch (m_input.scope) {
    case OrderScope::Full:
    case OrderScope::MoveWithin:
    case OrderScope::Repair:
        return true;
    case OrderScope::NumbersOnly:
        return std::ranges::any_of(m_facts, [&](const Fact *fact) {
            return (fact->as<VisitFact>() || fact->as<SafetyFact>() || fact->as<SelfTestFact>()) &&
                   visitOf(*fact) == visit;
        });
    case OrderScope::RecordOnly:
    case OrderScope::Nothing:
        break;
    }
    return false;
}

void Evidence::discountWithoutCard()
{
    for (const Fact *fact : m_facts) {
        const auto *loop = fact->as<LoopFact>();
        if (!isMeasurement(*fact) || (loop && loop->from == MeasuredFrom::Office))
            continue;
        const QString visit = visitOf(*fact);
        if (!needsCard(visit))
            continue;
        const Moment time = timeOf(*fact);
        const Card *card = m_cards.holdingAt(time, visit);
        if (m_cards.openAt(time))
            discount(*fact, Discount::Hazard,
                     Text(QT_TRANSLATE_NOOP("core", "made while a hazard was open, read on %1"))
                         .arg(Text::message(paperTime(m_cards.openAt(time)->card->at))));
        else if (!card)
            discount(
                *fact, Discount::NoCard,
                m_cards.hasCardUpTo(time, visit)
                    ? Text(QT_TRANSLATE_NOOP(
                          "core", "made after the feed was switched, without a new safety card"))
                    : Text(QT_TRANSLATE_NOOP("core", "made before the safety card of that visit")));
        else if (card->verdict.outcome == SafetyOutcome::ForeignBattery)
            discount(*fact, Discount::NoCard,
                     Text(QT_TRANSLATE_NOOP(
                         "core", "made when the safety card of that visit read foreign battery")));
        else if (card->verdict.outcome != SafetyOutcome::Clear)
            discount(*fact, Discount::NoCard,
                     Text(QT_TRANSLATE_NOOP(
                         "core", "made when the safety card of that visit was incomplete")));
        else if (needsDeadPair(*fact) && card->fact->as<SafetyFact>()->officeConnected != false)
            discount(*fact, Discount::NoCard,
                     Text(QT_TRANSLATE_NOOP(
                         "core", "made when the safety card said that the office was connected")));
    }
}

QString Evidence::instrumentOf(const Fact &fact) const
{
    if (!fact.instrument.isEmpty())
        return fact.instrument;
    return m_madeWith.value(fact.id, m_madeWith.value(m_input.toldUnder.value(fact.id)));
}

bool Evidence::selfTestFailed(const Fact &fact) const
{
    const QString instrument = instrumentOf(fact);
    if (instrument.isEmpty())
        return false;
    const QString visit = visitOf(fact);
    bool failed = false;
    for (const Fact *test : m_selfTests)
        if (test->instrument == instrument && visitOf(*test) == visit)
            failed = test->as<SelfTestFact>()->outcome == SelfTestOutcome::Failed;
    return failed;
}

void Evidence::discountBySelfTests()
{
    // The meter of a card was proved on a known source: that counts for more.
    for (const Fact *fact : m_facts)
        if (isEvidence(*fact) && !fact->as<SafetyFact>() && selfTestFailed(*fact))
            discount(*fact, Discount::SelfTest,
                     Text(QT_TRANSLATE_NOOP(
                              "core", "made with %1, which failed its self-test on that visit"))
                         .arg(instrumentOf(*fact)));
}

void Evidence::discountByLayers()
{
    // Before the new TEIs: they do not undo that a layer went down.
    for (const Fact *down : of<LayerFact>()) {
        if (down->as<LayerFact>()->outcome != LayerOutcome::Down)
            continue;
        for (const Fact *fact : m_facts)
            if (const auto span = spanOf(*fact);
                span && span->first <= down->at && down->at < span->second)
                discount(
                    *fact, Discount::LayerDown,
                    Text(QT_TRANSLATE_NOOP("core", "layer %1 went down while it lasted, at %2"))
                        .arg(down->as<LayerFact>()->layer)
                        .arg(down->at.localClock()));
    }
    QMap<int, int> teis; // by terminal
    for (const Fact *fact : of<LayerFact>()) {
        const auto *layer = fact->as<LayerFact>();
        if (layer->layer != 2 || !layer->tei)
            continue;
        const int terminal = layer->terminalOrFirst();
        const bool another = teis.value(terminal, *layer->tei) != *layer->tei;
        teis.insert(terminal, *layer->tei);
        if (!another)
            continue;
        for (const Fact *other : of<LayerFact>())
            if (const auto *upper = other->as<LayerFact>();
                upper->layer == 3 && upper->terminalOrFirst() == terminal && other->at < fact->at)
                discount(*other, Discount::NewTei,
                         Text(QT_TRANSLATE_NOOP("core", "made before the terminal had TEI %1"))
                             .arg(*layer->tei));
    }
}

void Evidence::discountCallsElsewhere(const ServiceOrder &order)
{
    const NumberKey key(order);
    for (const Fact *fact : m_facts) {
        const auto *call = fact->as<CallFact>();
        if (!call || call->direction != CallDirection::Out || call->outcome == CallOutcome::Ok ||
            !isAnsweredElsewhere(call->cause.value_or(0)))
            continue;
        const bool own = call->dn && std::ranges::any_of(order.terminals, [&](const auto &each) {
                             return !each.dn.isEmpty() && key(each.dn) == key(*call->dn);
                         });
        if (!own)
            discount(*fact, Discount::Elsewhere,
                     Text(QT_TRANSLATE_NOOP(
                         "core", "busy or not answered elsewhere: it says nothing of this line")));
    }
}

/// Held only against what counts: what is out for another reason shows nothing wrong.
void Evidence::discountContradictions()
{
    const std::vector<const Fact *> held = counting();
    const Contradictions contradictions(held);
    for (const Fact *fact : held)
        if (const auto found = contradictions.in(*fact))
            discount(*fact, Discount::Contradiction, found->sentence());
}

std::vector<const Fact *> Evidence::counting() const
{
    std::vector<const Fact *> list;
    std::ranges::copy_if(m_facts, std::back_inserter(list),
                         [this](const Fact *fact) { return counts(*fact); });
    return list;
}

const Discounted *Evidence::whyNot(const Fact &fact) const
{
    const auto found = m_discounts.constFind(&fact);
    return found == m_discounts.constEnd() ? nullptr : &*found;
}

std::vector<Discounted> Evidence::discounted() const
{
    std::vector<Discounted> list;
    for (const Fact *fact : m_facts)
        if (const Discounted *why = whyNot(*fact))
            list.push_back(*why);
    return list;
}

QString Evidence::visitOf(const Fact &fact) const
{
    return m_input.visits.empty() ? visitName(fact, m_facts) : visitName(fact, m_input.visits);
}

WhatWasDone Evidence::doneBetween(const Moment &from, const Moment &to) const
{
    WhatWasDone done = WhatWasDone::Nothing;
    for (const Fact *fact : m_facts) {
        const auto *cleared = fact->as<ClearedFact>();
        if (!(cleared || fact->as<ChangedFact>()) || !counts(*fact) || fact->at < from ||
            fact->at > to)
            continue;
        if (!cleared || cleared->what != ClearedWhat::NothingFound)
            return WhatWasDone::Something;
        done = WhatWasDone::NothingFound;
    }
    return done;
}

} // namespace loopwright
