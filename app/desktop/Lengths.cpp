#include "app/desktop/Lengths.h"

#include "app/desktop/Language.h"
#include "core/loop/LoopMakeup.h"

#include <QLocale>
#include <QMap>
#include <QRegularExpression>

namespace loopwright {

namespace {

/// Nothing where two lengths come out alike.
std::optional<QString> converted(const QString &said, bool metres, int moreDecimals)
{
    static const QRegularExpression length("(?<![-\\w.,])(\\d+)(?:[.,](\\d+))? (ft|m)(?![\\w/])");
    QString text;
    QMap<QString, double> seen;
    bool apart = true;
    qsizetype from = 0;
    for (auto it = length.globalMatch(said); it.hasNext();) {
        const auto match = it.next();
        text += said.mid(from, match.capturedStart() - from);
        from = match.capturedEnd();
        const bool areMetres = match.captured(3) == u"m";
        const double value = QString(match.captured(1) + '.' + match.captured(2) + '0').toDouble();
        const double shown = areMetres == metres ? value
                             : metres            ? value * metresPerFoot
                                                 : value / metresPerFoot;
        const int decimals =
            int(match.capturedLength(2)) + (areMetres == metres ? 0 : moreDecimals);
        const QString figure = localizedFigure(shown, decimals);
        apart = apart && seen.value(figure, shown) == shown;
        seen.insert(figure, shown);
        text += figure + (metres ? " m" : " ft");
    }
    if (!apart)
        return {};
    return text + said.mid(from);
}

} // namespace

bool inMetres()
{
    const QLocale locale;
    return locale.language() != QLocale::C && locale.measurementSystem() == QLocale::MetricSystem;
}

QString withLengths(const QString &said, bool metres)
{
    constexpr int most = 3;
    for (int more = 0; more < most; ++more)
        if (const auto text = converted(said, metres, more))
            return *text;
    return said;
}

} // namespace loopwright
