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
    return Text(QT_TRANSLATE_NOOP("core",
                                  "Order %1 is with %2 since %3, which will not know of the "
                                  "change until it is home."))
        .arg(order)
        .arg(out.front().station)
        .arg(out.front().since.localDate().toString(Qt::ISODate));
}

Result<void> checkAtHome(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto trouble, outTrouble(records, order));
    if (!trouble.isEmpty())
        return failure(ErrorCode::OrderOut, trouble.english(), "order_number");
    return {};
}

} // namespace loopwright
