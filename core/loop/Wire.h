#pragma once
// The conductors of which cable is made, and for which constants are known (LineConstants.h).

#include <QString>

#include <span>

namespace loopwright {

/// Capacitance of the gauge cables unless said otherwise (83 nF per mile), nF/km.
inline constexpr double usualCapacitanceNfPerKm = 51.57;

/// Which conductor: a gauge (constants U70) or a diameter (constants EPE), exactly one of the two.
struct Wire
{
    int gaugeAwg = 0;      ///< 19, 22, 24 or 26; 0 if the diameter is given
    double diameterMm = 0; ///< 0.32, 0.40, 0.50, 0.63 or 0.90; 0 if the gauge is given

    static Wire awg(int gauge) { return {gauge, 0}; }
    static Wire millimetres(double diameter) { return {0, diameter}; }
    QString text() const; ///< "26 AWG" or "0.40 mm"
    bool operator==(const Wire &) const = default;
};

/// Gauges of U70: 19, 22, 24, 26.
std::span<const int> knownGauges();
/// Diameters of EPE in mm: 0.32, 0.40, 0.50, 0.63, 0.90.
std::span<const double> knownDiameters();
/// Place of a wire in the two sets together: gauges first, then diameters; -1 if it is in
/// neither.
int wireNumber(const Wire &wire);
inline constexpr int wireCount = 9;
inline bool isKnown(const Wire &wire)
{
    return wireNumber(wire) >= 0;
}

} // namespace loopwright
