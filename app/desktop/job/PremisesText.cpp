#include "app/desktop/job/PremisesText.h"

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"

#include <QCoreApplication>

#include <algorithm>

namespace loopwright {

namespace {

constexpr std::size_t namedInHead = 3;

}

QString lineText(const BoardRow &row)
{
    return QCoreApplication::translate("Visit", "%1, due %2, at %3")
        .arg(kindName(row.kind), dayText(row.due), localizedWord(stageName(row.stage)));
}

QString alsoHereText(const OrderView &view)
{
    if (view.alsoHere.empty())
        return {};
    QStringList named;
    for (std::size_t i = 0; i < std::min(view.alsoHere.size(), namedInHead); ++i)
        named << QCoreApplication::translate("Visit", "%1, %2, due %3")
                     .arg(view.alsoHere[i].order, kindName(view.alsoHere[i].kind),
                          dayText(view.alsoHere[i].due));
    if (view.alsoHere.size() > namedInHead)
        named << QCoreApplication::translate("Visit", "%1 more")
                     .arg(view.alsoHere.size() - namedInHead);
    return QCoreApplication::translate("Visit", "Also at these premises (F7): %1")
        .arg(named.join(QStringLiteral("; ")));
}

} // namespace loopwright
