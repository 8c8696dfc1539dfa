#pragma once
// A fact of kind `analog`: one quantity of an analog line as it was measured or observed. The unit
// stays as it was written; a unit that does not fit the quantity is an error with its place.

#include "core/loop/AnalogQuantity.h"

namespace loopwright {

struct AnalogFact
{
    AnalogQuantity quantity = AnalogQuantity::LoopCurrent;
    AnalogValue written = 0.0;   ///< as it stands in the record
    std::optional<QString> unit; ///< as it stands in the record; the quantity's own if absent

    /// In the unit of the quantity.
    AnalogValue value() const;
    /// The same if it is a number; none of a yes or no.
    std::optional<double> number() const;

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static AnalogFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const AnalogFact &) const = default;
};

} // namespace loopwright
