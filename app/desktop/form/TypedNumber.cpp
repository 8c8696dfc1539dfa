#include "app/desktop/form/TypedNumber.h"

#include "app/desktop/Language.h"

#include <QCoreApplication>

namespace loopwright {

QString numberAsTyped(double value)
{
    return numberAsTyped(QString::number(value, 'g', 10));
}

QString numberAsTyped(const QString &english)
{
    return asTyped(english, decimalMark());
}

QString whyUnclear(const QString &typed)
{
    const auto readings = twoReadings(typed, decimalMark());
    return readings ? QCoreApplication::translate("Form", "“%1” can be read as %2 or as %3: type "
                                                          "the one that is meant")
                          .arg(typed.trimmed(), numberAsTyped(readings->first),
                               numberAsTyped(readings->second))
                    : QString();
}

} // namespace loopwright
