#include "core/acceptance/Stage.h"

namespace loopwright {

QString stationName(Station station)
{
    switch (station) {
    case Station::Order:
        return "Order";
    case Station::Identifiers:
        return "Identifiers";
    case Station::Loop:
        return "Loop";
    case Station::Safety:
        return "Safety";
    case Station::TurnUp:
        return "Turn-up";
    case Station::Calls:
        return "Calls";
    case Station::ErrorTest:
        return "Error test";
    case Station::Acceptance:
        return "Acceptance";
    case Station::Certificate:
        return "Certificate";
    }
    return {};
}

QString stageName(Stage stage)
{
    return stage == Stage::Done ? QString("Done") : stationName(Station(int(stage)));
}

} // namespace loopwright
