#include "core/acceptance/Doubt.h"

#include "core/base/PaperTime.h"
#include "core/errortest/RunTotals.h"

namespace loopwright {

namespace {

/// What a dead pair does not have.
bool isFed(const AnalogFact &analog)
{
    switch (analog.quantity) {
    case AnalogQuantity::DialTone:
    case AnalogQuantity::Ringing:
        return analog.value() == AnalogValue(true);
    case AnalogQuantity::LoopCurrent:
        return analog.number().value_or(0) != 0;
    default:
        return false;
    }
}

} // namespace

std::optional<Doubt> doubtIn(const ClearedFact &cleared)
{
    if (cleared.what != ClearedWhat::NothingFound || !cleared.text || cleared.text->isEmpty())
        return std::nullopt;
    return Doubt{"nothing_found", "text",
                 Text(QT_TRANSLATE_NOOP(
                     "core", "It says that nothing was found, and beside it what was done: nothing "
                             "counts as done, and the next run counts only without any error. If "
                             "something was done, record what it was."))};
}

std::optional<Doubt> closingDoubt(const Fact &closing, const SafetyCards &cards)
{
    const auto *closed = closing.as<HazardClosedFact>();
    if (!closed)
        return std::nullopt;
    const Hazard *hazard = cards.hazardOf(closed->hazard);
    if (!hazard)
        return Doubt{"closes_nothing", "hazard",
                     Text(QT_TRANSLATE_NOOP("core", "The card that it names read no hazard of this "
                                                    "pair or these premises: it closes nothing."))};
    if (closing.at >= hazard->card->at)
        return std::nullopt;
    return Doubt{"closes_nothing", "at",
                 Text(QT_TRANSLATE_NOOP("core", "It is dated %1, before the hazard was read (%2): "
                                                "it closes nothing."))
                     .arg(Text::message(paperTime(closing.at)))
                     .arg(Text::message(paperTime(hazard->card->at)))};
}

bool showsOffice(const FactBody &body)
{
    if (const auto *layer = std::get_if<LayerFact>(&body))
        return layer->outcome == LayerOutcome::Up;
    if (const auto *call = std::get_if<CallFact>(&body))
        return call->outcome == CallOutcome::Ok;
    if (const auto *run = std::get_if<RunFact>(&body))
        return run->path != Path::NtLoop;
    const auto *analog = std::get_if<AnalogFact>(&body);
    return analog && isFed(*analog);
}

std::optional<Doubt> officeDoubt(const FactBody &body, const Card *card)
{
    if (!card || card->fact->as<SafetyFact>()->officeConnected != false || !showsOffice(body))
        return std::nullopt;
    return Doubt{
        "office_connected", "outcome",
        Text(QT_TRANSLATE_NOOP("core",
                               "The safety card of %1 says that the office was disconnected, and "
                               "this shows that it feeds the pair: record “changed: feed” and a "
                               "new card, or correct the card."))
            .arg(card->fact->at.localClock()),
        card->fact};
}

std::optional<Doubt> doubtIn(const RunFact &run)
{
    const auto contradiction = contradictionIn(run);
    if (!contradiction)
        return std::nullopt;
    return Doubt{"contradiction", contradiction->key,
                 Text(QT_TRANSLATE_NOOP("core", "The totals contradict each other: %1; read the "
                                                "test set again."))
                     .arg(contradiction->what)};
}

std::optional<Doubt> doubtIn(const Fact &fact, const Evidence &evidence)
{
    if (const auto *cleared = fact.as<ClearedFact>())
        return doubtIn(*cleared);
    if (const auto *run = fact.as<RunFact>())
        if (auto contradiction = doubtIn(*run))
            return contradiction;
    if (fact.as<HazardClosedFact>())
        return closingDoubt(fact, evidence.cards());
    // What was measured on another pair says nothing of this one.
    const Discounted *why = evidence.whyNot(fact);
    if (why && why->why == Discount::OtherPair)
        return std::nullopt;
    return officeDoubt(fact.body, evidence.cards().holdingAt(timeOf(fact), evidence.visitOf(fact)));
}

} // namespace loopwright
