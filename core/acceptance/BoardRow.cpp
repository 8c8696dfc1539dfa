#include "core/acceptance/BoardRow.h"

namespace loopwright {

QJsonObject BoardRow::toJson() const
{
    return {{"order_number", order},      {"circuit_number", circuit},
            {"customer", customer},       {"premises", premises},
            {"office", office},           {"stage", toText(stage)},
            {"outcome", toText(outcome)}, {"due_date", due.toString(Qt::ISODate)},
            {"installer", installer},     {"kind", toText(kind)},
            {"reason", reason},           {"hazard", hazard},
            {"status", toText(status)},   {"held", held}};
}

} // namespace loopwright
