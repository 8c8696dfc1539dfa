#include "core/acceptance/BoardRow.h"

namespace loopwright {

QJsonObject BoardRow::toJson(QDate today) const
{
    const auto orNull = [](const QString &text) {
        return text.isEmpty() ? QJsonValue() : QJsonValue(text);
    };
    return {{"order_number", order},
            {"circuit_number", circuit},
            {"customer", customer},
            {"premises", premises},
            {"pair", pair},
            {"office", office},
            {"stage", toText(stage)},
            {"outcome", toText(outcome)},
            {"due_date", due.toString(Qt::ISODate)},
            {"first_due_date", promised.toString(Qt::ISODate)},
            {"late", isLate(today)},
            {"date_missed", isMissed(today)},
            {"installer", installer},
            {"installer_name", orNull(installerName)},
            {"kind", toText(kind)},
            {"criterion", orNull(criterion)},
            {"reason", reason},
            {"waiting_on", orNull(waitingOn)},
            {"paper_outstanding", paper},
            {"hazard", hazard},
            {"status", toText(status)},
            {"held", held}};
}

} // namespace loopwright
