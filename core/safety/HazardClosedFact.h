#pragma once
// A fact of kind `hazard_closed`: where the voltage of a hazardous card came from, and who says
// that it is gone. A clear card after it ends the hazard (core/acceptance).

#include "core/base/Json.h"

namespace loopwright {

enum class HazardSource
{
    Power,     ///< contact with the power lines
    Ringing,   ///< of the office
    SpanFeed,  ///< feed of carrier equipment
    OtherPair, ///< a cross with another pair
    Induced,   ///< by power lines beside the cable
    Meter,     ///< the meter was wrong
    Mistyped,  ///< the reading was never made
};
template<>
struct EnumCodes<HazardSource>
{
    static constexpr std::pair<HazardSource, const char *> table[] = {
        {HazardSource::Power, "power"},        {HazardSource::Ringing, "ringing"},
        {HazardSource::SpanFeed, "span_feed"}, {HazardSource::OtherPair, "other_pair"},
        {HazardSource::Induced, "induced"},    {HazardSource::Meter, "meter"},
        {HazardSource::Mistyped, "mistyped"}};
};

/// A reference names something: it holds a letter or a figure.
bool namesReference(const QString &reference);

struct HazardClosedFact
{
    QString hazard; ///< id of the card that read it
    HazardSource source = HazardSource::Power;
    QString by;                       ///< who says so; never blank
    std::optional<QString> reference; ///< of the utility's or the office's ticket

    /// Reads its own keys; the caller reads the header of the fact and calls done().
    static HazardClosedFact read(JsonReader &reader);
    void write(QJsonObject &object) const;
    static std::span<const FactField> fields();
    bool operator==(const HazardClosedFact &) const = default;
};

} // namespace loopwright
