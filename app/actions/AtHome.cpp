#include "app/actions/AtHome.h"

#include "db/StationStore.h"

namespace loopwright {

Result<Text> outTrouble(Records &records, const QString &order)
{
    if (records.changesWhatIsOut())
        return Text();
    LOOPWRIGHT_ASSIGN(const auto out, StationStore(records.database()).outAt(order));
    if (out.empty())
        return Text();
    std::vector<Text> with;
    for (const OutAt &each : out)
        with.push_back(Text(QT_TRANSLATE_NOOP("core", "%1 since %2"))
                           .arg(each.station)
                           .arg(each.since.localDate().toString(Qt::ISODate)));
    return Text(QT_TRANSLATE_NOOP("core", "Order %1 is with %2, where nobody will know of the "
                                          "change until it is home."))
        .arg(order)
        .arg(Text::joined(with, ", "));
}

Result<void> checkAtHome(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto trouble, outTrouble(records, order));
    if (!trouble.isEmpty())
        return failure(ErrorCode::OrderOut, trouble.english());
    return {};
}

} // namespace loopwright
