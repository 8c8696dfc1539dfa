#pragma once
// A fact of kind `layer`: one layer of a basic-rate line seen up or down. Layer 1 is seen at an
// interface, layers 2 and 3 at a terminal.

#include "core/base/Json.h"
#include "core/turnup/Cause.h"

namespace loopwright {

enum class LineInterface
{
    U,
    St,
};
template<>
struct EnumCodes<LineInterface>
{
    static constexpr std::pair<LineInterface, const char *> table[] = {{LineInterface::U, "u"},
                                                                       {LineInterface::St, "st"}};
};

enum class LayerOutcome
{
    Up,
    Down,
};
template<>
struct EnumCodes<LayerOutcome>
{
    static constexpr std::pair<LayerOutcome, const char *> table[] = {{LayerOutcome::Up, "up"},
                                                                      {LayerOutcome::Down, "down"}};
};

struct LayerFact
{
    int layer = 1;                          ///< 1, 2 or 3
    std::optional<LineInterface> interface; ///< layer 1; U if it is left out
    std::optional<int> terminal;            ///< layers 2 and 3, 1 to 8; 1 if it is left out
    LayerOutcome outcome = LayerOutcome::Down;
    std::optional<int> tei;   ///< layer 2, 0 to 127
    std::optional<int> cause; ///< Q.850, 1 to 127
    std::optional<CauseLocation> causeLocation = {};

    LineInterface interfaceOrU() const { return interface.value_or(LineInterface::U); }
    int terminalOrFirst() const { return terminal.value_or(1); }

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static LayerFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const LayerFact &) const = default;
};

} // namespace loopwright
