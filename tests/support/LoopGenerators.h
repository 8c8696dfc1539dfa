#pragma once
// Loops that nobody drew: make-ups of any wires, lengths, taps and coils for property tests.

#include "core/loop/LineConstants.h"
#include "core/loop/LoopMakeup.h"

#include <rapidcheck.h>

namespace loopwright {

inline rc::Gen<Wire> anyWire()
{
    return rc::gen::map(rc::gen::inRange(0, wireCount), [](int number) {
        return number < 4 ? Wire::awg(knownGauges()[std::size_t(number)])
                          : Wire::millimetres(knownDiameters()[std::size_t(number - 4)]);
    });
}

inline rc::Gen<Length> anyLength()
{
    return rc::gen::apply(
        [](int tenths, bool metric) {
            return Length{tenths / 10.0, metric ? LengthUnit::Metre : LengthUnit::Foot};
        },
        rc::gen::inRange(1, 60000), rc::gen::arbitrary<bool>());
}

inline rc::Gen<LoopElement> anyElement(bool withCoils = true)
{
    return rc::gen::apply(
        [withCoils](int kind, Wire wire, Length length, int millihenry) {
            if (withCoils && kind == 0)
                return LoopElement::coil(millihenry);
            return kind <= 2 ? LoopElement::tap(wire, length) : LoopElement::section(wire, length);
        },
        rc::gen::inRange(0, 10), anyWire(), anyLength(), rc::gen::inRange(1, 200));
}

inline rc::Gen<LoopMakeup> anyMakeup(bool withCoils = true)
{
    return rc::gen::apply(
        [](std::vector<LoopElement> elements, int degrees, bool celsius, bool stated, bool thin) {
            LoopMakeup makeup;
            makeup.elements = std::move(elements);
            if (stated)
                makeup.temperature =
                    Temperature{celsius ? degrees / 2.0 : double(degrees), celsius};
            if (thin)
                makeup.capacitanceNfPerKm = lowCapacitanceNfPerKm;
            return makeup;
        },
        rc::gen::nonEmpty(rc::gen::container<std::vector<LoopElement>>(anyElement(withCoils))),
        rc::gen::inRange(-20, 140), rc::gen::arbitrary<bool>(), rc::gen::arbitrary<bool>(),
        rc::gen::arbitrary<bool>());
}

/// 200 Hz to 1 MHz, evenly over the decades.
inline rc::Gen<double> anyFrequency()
{
    return rc::gen::map(rc::gen::inRange(0, 3700),
                        [](int step) { return 200 * std::pow(10.0, step / 1000.0); });
}

inline rc::Gen<double> anyOhms()
{
    return rc::gen::map(rc::gen::inRange(10, 3000), [](int ohms) { return double(ohms); });
}

} // namespace loopwright
