#include "core/loop/Wire.h"

#include <algorithm>
#include <array>

namespace loopwright {

namespace {

constexpr std::array<int, 4> gauges{19, 22, 24, 26};
constexpr std::array<double, 5> diameters{0.32, 0.40, 0.50, 0.63, 0.90};
static_assert(gauges.size() + diameters.size() == wireCount);

} // namespace

QString Wire::text() const
{
    return gaugeAwg != 0 ? QString("%1 AWG").arg(gaugeAwg)
                         : QString("%1 mm").arg(diameterMm, 0, 'f', 2);
}

std::span<const int> knownGauges()
{
    return gauges;
}

std::span<const double> knownDiameters()
{
    return diameters;
}

int wireNumber(const Wire &wire)
{
    if (wire.gaugeAwg != 0) {
        const auto row = std::find(gauges.begin(), gauges.end(), wire.gaugeAwg);
        return row != gauges.end() ? int(row - gauges.begin()) : -1;
    }
    const auto row = std::find(diameters.begin(), diameters.end(), wire.diameterMm);
    return row != diameters.end() ? int(gauges.size() + (row - diameters.begin())) : -1;
}

} // namespace loopwright
