#pragma once
// Which thing to check first when a layer does not come up, and whose part it is.

#include "core/base/Text.h"
#include "core/turnup/LayerFact.h"

namespace loopwright {

enum class LinePart
{
    PremisesWiring,
    Terminal,
    Loop,
    ServingOffice,
};
template<>
struct EnumCodes<LinePart>
{
    static constexpr std::pair<LinePart, const char *> table[] = {
        {LinePart::PremisesWiring, "premises_wiring"},
        {LinePart::Terminal, "terminal"},
        {LinePart::Loop, "loop"},
        {LinePart::ServingOffice, "serving_office"}};
};
/// "premises wiring", "terminal equipment", "loop and outside plant", "serving office".
Text partName(LinePart part);

struct FirstCheck
{
    Text meaning;                   ///< what the failed layer says
    Text check;                     ///< the first thing to check
    Text then;                      ///< what to check if that is in order
    LinePart part = LinePart::Loop; ///< whose part `check` is
};

/// For a layer that is down. The causes that name another part than the layer alone does are
/// told apart; any other cause leaves the check of the layer as it is.
FirstCheck firstCheck(const LayerFact &fact);

} // namespace loopwright
