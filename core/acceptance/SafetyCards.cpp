#include "core/acceptance/SafetyCards.h"

#include "core/acceptance/PairInForce.h"
#include "core/base/PaperTime.h"

#include <QMultiHash>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

/// A contact with power is closed by a registered supervisor, or with the utility's reference.
bool mayClose(const DecisionInput &input, const Fact &fact)
{
    const auto *closed = fact.as<HazardClosedFact>();
    return closed->source != HazardSource::Power || input.bySupervisor.contains(fact.id) ||
           namesReference(closed->reference.value_or(QString()));
}

bool isOneOf(const QStringList &pairs, const QString &pair)
{
    return std::ranges::any_of(pairs,
                               [&pair](const QString &each) { return isSamePair(each, pair); });
}

QString sourceInWords(HazardSource source)
{
    switch (source) {
    case HazardSource::Power:
        return "contact with the power lines";
    case HazardSource::Ringing:
        return "ringing of the office";
    case HazardSource::SpanFeed:
        return "feed of carrier equipment";
    case HazardSource::OtherPair:
        return "contact with another pair";
    case HazardSource::Induced:
        return "induced by power lines beside the cable";
    case HazardSource::Meter:
        return "the meter was wrong";
    case HazardSource::Mistyped:
        return "mistyped: the reading was never made";
    }
    return {};
}

/// A clear card shows the place and the pair on which it was made. A card of the order that names
/// no pair is of the pair in force when it was made, which may have been another one than today's;
/// one from another station of the pair that its order had there.
bool isOfSamePlace(const DecisionInput &input, const QStringList &own, const Fact &hazard,
                   const Fact &clear)
{
    const QString at = hazard.as<SafetyFact>()->place.value_or(QString()).trimmed();
    if (!at.isEmpty() && at.compare(clear.as<SafetyFact>()->place.value_or(QString()).trimmed(),
                                    Qt::CaseInsensitive) != 0)
        return false;
    const QString read = input.pairOf(hazard), shown = input.pairOf(clear);
    if (!read.isEmpty() && !shown.isEmpty())
        return isSamePair(read, shown) || (isOneOf(own, read) && isOneOf(own, shown));
    if (hazard.pair.isEmpty())
        return clear.pair.isEmpty() || clear.order != hazard.order || isOneOf(own, clear.pair);
    return isOneOf(own, hazard.pair);
}

void sortByTime(std::vector<const Fact *> &facts)
{
    std::ranges::sort(facts, [](const Fact *a, const Fact *b) { return isEarlier(*a, *b); });
}

/// The id by which a card is closed.
QString toldId(const DecisionInput &input, const Fact &card)
{
    return input.toldUnder.value(card.id, card.id);
}

/// What stands under an id with several contents, where the same was recorded under an id of its
/// own since, as somebody settled for it.
bool isTwiceThere(const Fact &card, const QMultiHash<QString, const Fact *> &toldUnder)
{
    const QList<const Fact *> contents = toldUnder.values(card.id);
    return std::ranges::any_of(contents, [&card](const Fact *other) {
        return card.at == other->at && card.pair == other->pair &&
               card.installer == other->installer && card.instrument == other->instrument &&
               *card.as<SafetyFact>() == *other->as<SafetyFact>();
    });
}

/// Struck out or set aside or not: that removes no hazard.
std::vector<const Fact *> cardsIn(const DecisionInput &input,
                                  std::initializer_list<const std::vector<Fact> *> lists)
{
    std::vector<const Fact *> cards;
    QMultiHash<QString, const Fact *> toldUnder;
    for (const auto *facts : lists)
        for (const Fact &fact : *facts)
            if (fact.as<SafetyFact>()) {
                cards.push_back(&fact);
                if (const QString id = toldId(input, fact); id != fact.id)
                    toldUnder.insert(id, &fact);
            }
    std::erase_if(cards, [&](const Fact *card) { return isTwiceThere(*card, toldUnder); });
    sortByTime(cards);
    return cards;
}

/// Those that may close or clear: what is set aside does neither.
std::vector<const Fact *> standingWith(const DecisionInput &input,
                                       std::vector<const Fact *> standing,
                                       const std::vector<Fact> &others)
{
    for (const Fact *fact : standingFacts(others))
        standing.push_back(fact);
    QSet<QString> aside;
    for (const SetAside &each : input.setAside)
        aside.insert(each.fact);
    std::erase_if(standing, [&aside](const Fact *fact) { return aside.contains(fact->id); });
    sortByTime(standing);
    return standing;
}

/// Nobody has decided yet what the card read: so nobody can have closed it.
bool isInDispute(const DecisionInput &input, const Fact &card)
{
    return std::ranges::any_of(input.setAside, [&card](const SetAside &each) {
        return each.fact == card.id && each.code == ConflictCode::FactDiffers && !each.settled;
    });
}

} // namespace

QStringList hazardVolts(const Hazard &hazard)
{
    QStringList volts;
    for (const VoltageFinding &finding : hazard.verdict.hazards)
        volts << QString("%1 V %2, %3")
                     .arg(finding.volts)
                     .arg(finding.alternating ? QString("AC") : QString("DC"),
                          wirePairName(finding.pair));
    return volts;
}

QString hazardStory(const Hazard &hazard, const QString &by, const QString &reference)
{
    QString story = QString("A dangerous voltage was read on %1: %2.")
                        .arg(paperTime(hazard.card->at), hazardVolts(hazard).join("; "));
    if (hazard.closing)
        story += QString(" Its cause: %1; by %2%3, %4.")
                     .arg(sourceInWords(hazard.closing->as<HazardClosedFact>()->source), by,
                          reference.isEmpty() ? QString() : ", reference " + reference,
                          paperTime(hazard.closing->at));
    if (hazard.clear)
        story += QString(" No reading was above the stop limits on %1.")
                     .arg(paperTime(hazard.clear->at));
    return story;
}

SafetyCards::SafetyCards(const DecisionInput &input, const QStringList &pairs,
                         const std::vector<std::pair<const Fact *, QString>> &counting,
                         const std::vector<const Fact *> &standing, const LimitSet &limits)
{
    addCards(counting, limits);
    for (const Fact *fact : standing)
        if (const auto *changed = fact->as<ChangedFact>();
            changed && changed->what == ChangedWhat::Feed)
            m_feedChanges.push_back(fact->at);
    const auto ofPair = standingWith(input, standing, input.pairCards);
    for (const Fact *card : cardsIn(input, {&input.facts, &input.pairCards}))
        if (auto hazard = readHazard(input, pairs, *card, limits, ofPair))
            m_hazards.push_back(*hazard);
    const auto nearby = standingWith(input, standing, input.premisesCards);
    for (const Fact *card : cardsIn(input, {&input.premisesCards}))
        if (auto hazard = readHazard(input, pairs, *card, limits, nearby)) {
            hazard->isOfPair = false;
            m_nearby.push_back(*hazard);
        }
}

void SafetyCards::addCards(const std::vector<std::pair<const Fact *, QString>> &counting,
                           const LimitSet &limits)
{
    for (const auto &[fact, visit] : counting) {
        const auto *card = fact->as<SafetyFact>();
        const SafetyFact *before = nullptr; // of the same visit and place
        for (const Card &each : m_cards)
            if (const auto *other = each.fact->as<SafetyFact>();
                each.visit == visit && other->place == card->place)
                before = other;
        m_cards.push_back({fact, judge(*card, limits, before), visit});
    }
}

std::optional<Hazard> SafetyCards::readHazard(const DecisionInput &input, const QStringList &pairs,
                                              const Fact &card, const LimitSet &limits,
                                              const std::vector<const Fact *> &standing)
{
    Hazard hazard{&card, judge(*card.as<SafetyFact>(), limits)};
    if (hazard.verdict.outcome != SafetyOutcome::Hazard)
        return std::nullopt;
    hazard.told = toldId(input, card);
    hazard.isDisputed = isInDispute(input, card);
    const auto isOfCard = [&](const QString &id) {
        return input.toldUnder.value(id, id) == hazard.told;
    };
    for (const Fact *fact : standing)
        if (const auto *closed = fact->as<HazardClosedFact>();
            closed && isOfCard(closed->hazard) && fact->at >= card.at)
            (!hazard.isDisputed && mayClose(input, *fact) ? hazard.closing : hazard.refused) = fact;
    for (const Fact *fact : standing)
        if (const auto *later = fact->as<SafetyFact>();
            later && hazard.closing && !hazard.clear && fact != &card &&
            fact->at >= hazard.closing->at && isOfSamePlace(input, pairs, card, *fact) &&
            judge(*later, limits).outcome == SafetyOutcome::Clear)
            hazard.clear = fact;
    return hazard;
}

std::vector<Hazard> SafetyCards::open() const
{
    std::vector<Hazard> list;
    for (const auto *hazards : {&m_hazards, &m_nearby})
        for (const Hazard &hazard : *hazards)
            if (!hazard.isClosed())
                list.push_back(hazard);
    return list;
}

const Hazard *SafetyCards::hazardOf(const QString &card) const
{
    for (const auto *hazards : {&m_hazards, &m_nearby})
        for (const Hazard &hazard : *hazards)
            if (hazard.card->id == card || hazard.told == card)
                return &hazard;
    return nullptr;
}

const char *Hazard::whyRefused() const
{
    return isDisputed
               ? QT_TRANSLATE_NOOP("core", "Stations tell otherwise what this card read: until "
                                           "somebody settles that, no closing of it counts.")
               : QT_TRANSLATE_NOOP("core", "A contact with power is closed by a registered "
                                           "supervisor, or with the utility's reference: neither "
                                           "stands with what was said.");
}

Text hazardText(const Hazard &hazard, const QString &thisOrder)
{
    const Text when = Text::message(paperTime(hazard.card->at));
    if (!hazard.isOfPair)
        return Text(QT_TRANSLATE_NOOP("core", "On another pair at these premises: %1 Read %2 for "
                                              "order %3."))
            .arg(hazard.verdict.text())
            .arg(when)
            .arg(hazard.card->order);
    if (hazard.card->order != thisOrder)
        return Text(QT_TRANSLATE_NOOP("core", "%1 Read %2 on this pair for order %3."))
            .arg(hazard.verdict.text())
            .arg(when)
            .arg(hazard.card->order);
    return Text(QT_TRANSLATE_NOOP("core", "%1 Read %2.")).arg(hazard.verdict.text()).arg(when);
}

const Hazard *SafetyCards::openAt(const Moment &moment) const
{
    const auto found = std::ranges::find_if(
        m_hazards, [&moment](const Hazard &hazard) { return hazard.isOpenAt(moment); });
    return found == m_hazards.end() ? nullptr : &*found;
}

const Hazard *SafetyCards::unexplained() const
{
    const auto found =
        std::ranges::find_if(m_hazards, [](const Hazard &hazard) { return !hazard.closing; });
    return found == m_hazards.end() ? nullptr : &*found;
}

const Hazard *SafetyCards::awaitingCard() const
{
    const auto found = std::ranges::find_if(
        m_hazards, [](const Hazard &hazard) { return hazard.closing && !hazard.clear; });
    return found == m_hazards.end() ? nullptr : &*found;
}

bool SafetyCards::hasCardUpTo(const Moment &moment, const QString &visit) const
{
    return std::ranges::any_of(
        m_cards, [&](const Card &card) { return card.visit == visit && card.fact->at <= moment; });
}

const Card *SafetyCards::holdingAt(const Moment &moment, const QString &visit) const
{
    const Card *holding = nullptr;
    for (const Card &card : m_cards)
        if (card.visit == visit && card.fact->at <= moment)
            holding = &card;
    const bool switched = holding && std::ranges::any_of(m_feedChanges, [&](const Moment &change) {
                              return change > holding->fact->at && change <= moment;
                          });
    return switched ? nullptr : holding;
}

const Card *SafetyCards::cardOf(const Fact &fact) const
{
    const auto found = std::ranges::find(m_cards, &fact, &Card::fact);
    return found == m_cards.end() ? nullptr : &*found;
}

bool SafetyCards::isClearAt(const Moment &moment, const QString &visit) const
{
    const Card *card = holdingAt(moment, visit);
    return card && card->verdict.outcome == SafetyOutcome::Clear && !openAt(moment);
}

} // namespace loopwright
