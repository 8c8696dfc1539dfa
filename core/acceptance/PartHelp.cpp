#include "core/acceptance/PartHelp.h"

#include "core/acceptance/Criteria.h"

#include <algorithm>

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr PartHelp helpRows[] = {
    {"order", TEXT("Order"), Station::Order,
     TEXT("Says what the customer gets, on which pair and with which numbers; all that follows is "
          "held against it."),
     TEXT("A row that cannot be taken in is named with its column and reason; one whose numbers "
          "are in error or taken stays on the board, held, until the order is changed.")},
    {"settings", TEXT("Settings to program"), Station::Identifiers,
     TEXT("Shows the numbers, SPIDs and TEIs that go into the customer's equipment, and whether "
          "they fit the switch and belong to no other line."),
     TEXT("Compare them with what the office assigned, digit by digit; take the repair that is "
          "offered, or have the order changed.")},
    {"makeup", TEXT("Loop: make-up and prediction"), Station::Loop,
     TEXT("Predicts from what the pair is made of, before anybody drives out, whether it can "
          "carry the service."),
     TEXT("See whether it is the pair of the order; have load coils and bridged taps taken off, or "
          "take another pair of the cable.")},
    {"visit", TEXT("Visit"), Station::Order,
     TEXT("Says who is at the premises, and since when; what is recorded until leaving belongs to "
          "this visit."),
     TEXT("Where nobody opens or the customer is not ready, say so at leaving: that is a visit "
          "too.")},
    {"safety", TEXT("Safety card"), Station::Safety,
     TEXT("Shows that this pair was measured on this visit before anybody worked on it, and what "
          "was read."),
     nullptr},
    {"instrument", TEXT("Instrument"), Station::Acceptance,
     TEXT("Names what the readings are made with; they count only where it is registered and was "
          "calibrated on that day."),
     TEXT("Enter it from its label, have the office record its calibration, or measure again with "
          "another one.")},
    {"pair", TEXT("Measured on the pair"), Station::TurnUp,
     TEXT("Holds what was measured on the pair against the limits and against what its make-up "
          "predicts."),
     TEXT("See whether it is the pair of the order; then look for bad joints, taps and coils, and "
          "measure again.")},
    {"turnup", TEXT("Turn-up"), Station::TurnUp,
     TEXT("Shows the line layer by layer: in step with the office, an address for each terminal, "
          "each SPID accepted."),
     TEXT("Begin at the lowest layer that is down: the pair for layer 1, the TEI for layer 2, SPID "
          "and protocol variant for layer 3.")},
    {"analog", TEXT("The line at the customer's interface"), Station::TurnUp,
     TEXT("Holds what an analog line gives the customer, its current, loss, noise and ringing, "
          "against the limits."),
     TEXT("Measure again with the customer's wiring unplugged: what stays is of the pair or the "
          "office, what goes is behind the interface.")},
    {"calls", TEXT("Calls"), Station::Calls,
     TEXT("Shows by calls out and in that each channel and each number carries the services that "
          "were ordered."),
     TEXT("Read what the cause means: it says whether to check number, terminal, wiring or office "
          "first, and whose part it is.")},
    {"error_test", TEXT("Error test"), Station::ErrorTest,
     TEXT("Shows first that the test set sees errors that are made on purpose, then counts bit "
          "errors on each channel that carries data."),
     TEXT("Look at contacts and wiring and say what was done; then make the detector check again, "
          "and after it the run.")},
    {"remarks", TEXT("Changes, notes, self-test"), Station::Acceptance,
     TEXT("Takes what belongs to the record and to no step: a change on the line, a note, a "
          "self-test of the instrument."),
     TEXT("After a failed self-test nothing counts that the instrument measured on this visit, "
          "until one passes: use another one, or have it pass.")},
    {"acceptance", TEXT("Acceptance"), Station::Acceptance,
     TEXT("Decides criterion by criterion from what was recorded, and from nothing else: nobody "
          "types that a line passed."),
     TEXT("Mend what the first open criterion names and record it again; a supervisor may accept "
          "with an exception, by name and with a reason.")},
    {"certificate", TEXT("Certificate"), Station::Certificate,
     TEXT("Says for the customer what was measured against which limit, signed, so that a change "
          "is found."),
     TEXT("What lacks is named, and nothing is issued until it is there; one that stands no longer "
          "is issued anew from evidence that counts.")},
    {"leaving", TEXT("Leaving"), Station::Certificate,
     TEXT("Ends the visit: how it went, and when."),
     TEXT("Hand on a job that is not done: its page says which layer, which cause, whose part it "
          "is and whom to call.")},
};

#undef TEXT

} // namespace

Text PartHelp::whenItFails() const
{
    if (onFailure)
        return Text(onFailure);
    const Criterion *criterion = findCriterion(QString::fromLatin1(key));
    return criterion ? Text(criterion->check) : Text();
}

std::span<const PartHelp> partHelps()
{
    return helpRows;
}

const PartHelp *findPartHelp(const QString &key)
{
    const auto found = std::ranges::find_if(
        helpRows, [&key](const PartHelp &part) { return key == QLatin1StringView(part.key); });
    return found == std::end(helpRows) ? nullptr : found;
}

std::vector<const PartHelp *> partHelpsOf(const QString &stationOrPart)
{
    std::vector<const PartHelp *> parts;
    if (const auto station = fromText<Station>(stationOrPart)) {
        for (const PartHelp &part : helpRows)
            if (part.station == *station)
                parts.push_back(&part);
    } else if (const PartHelp *part = findPartHelp(stationOrPart)) {
        parts.push_back(part);
    }
    return parts;
}

} // namespace loopwright
