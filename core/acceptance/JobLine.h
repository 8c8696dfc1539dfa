#pragma once
// The stations of one job as a line, each with its mark, and the sentence that says what comes
// next. Board, job page and certificate draw this and nothing else.

#include "core/acceptance/Plan.h"

namespace loopwright {

enum class StationMark
{
    Done,
    Failed,
    Open,
    NotNeeded
};
template<>
struct EnumCodes<StationMark>
{
    static constexpr std::pair<StationMark, const char *> table[] = {
        {StationMark::Done, "done"},
        {StationMark::Failed, "failed"},
        {StationMark::Open, "open"},
        {StationMark::NotNeeded, "not needed"}};
};

struct StationState
{
    Station station = Station::Order;
    StationMark mark = StationMark::Open;
    bool excepted = false; ///< done only because a supervisor excepted a criterion of it
    bool next = false;     ///< the station at which the job stands
    bool onSite = false;   ///< open, and shown at a later station: the desk cannot show it

    QString name() const; ///< "Turn-up", "Error test", …
    QString word() const; ///< "done", "excepted", "failed", "open", "on site", "not needed"
    bool operator==(const StationState &) const = default;
};

/// All stations in the order of the job. `stage`: where the order stands.
std::vector<StationState> jobLine(const Decision &decision, Stage stage);

/// One sentence: "Next: make the safety card of this visit.", that the certificate can be issued,
/// or that nothing is left but to complete the order. `stage` as for jobLine().
Text nextSentence(const Decision &decision, Stage stage);

/// The same of the plan: its first step that is open; else as above.
Text nextSentence(const std::vector<Step> &steps, const Decision &decision, Stage stage);

} // namespace loopwright
