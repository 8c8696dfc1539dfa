#pragma once
// The stations of a job, in its order, and where an order stands on its way along them.

#include "core/base/EnumCodes.h"

namespace loopwright {

enum class Station
{
    Order,
    Identifiers,
    Loop,
    Safety,
    TurnUp,
    Calls,
    ErrorTest,
    Acceptance,
    Certificate
};
template<>
struct EnumCodes<Station>
{
    static constexpr std::pair<Station, const char *> table[] = {
        {Station::Order, "order"},
        {Station::Identifiers, "identifiers"},
        {Station::Loop, "loop"},
        {Station::Safety, "safety"},
        {Station::TurnUp, "turnup"},
        {Station::Calls, "calls"},
        {Station::ErrorTest, "error_test"},
        {Station::Acceptance, "acceptance"},
        {Station::Certificate, "certificate"}};
};

/// "Order", "Identifiers", …: the name of a station for a person.
QString stationName(Station station);

/// Where an order stands: at its first open station, stageAt(), or at the end. None stands at the
/// station Order, for it is taken in.
enum class Stage : int
{
    Done = int(Station::Certificate) + 1
};
constexpr Stage stageAt(Station station)
{
    return Stage(int(station));
}
template<>
struct EnumCodes<Stage>
{
    static constexpr auto table = [] {
        std::array<std::pair<Stage, const char *>, std::size(EnumCodes<Station>::table)> codes;
        for (std::size_t i = 1; i < codes.size(); ++i)
            codes[i - 1] = {stageAt(EnumCodes<Station>::table[i].first),
                            EnumCodes<Station>::table[i].second};
        codes.back() = {Stage::Done, "done"};
        return codes;
    }();
};

/// As stationName(), and "Done".
QString stageName(Stage stage);

} // namespace loopwright
