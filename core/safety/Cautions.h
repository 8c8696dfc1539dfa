#pragma once
// The cautions of the safety card, in our own words, each with the section of law to look up if
// one is known. They are reminders: local codes, permits and licensed practice prevail.

#include <QString>

#include <span>

namespace loopwright {

struct Caution
{
    const char *key;    ///< stable, e.g. "live_until_measured"
    const char *title;  ///< a few words
    const char *text;   ///< one to three sentences
    const char *lookUp; ///< section of law, "common practice", or where the figure is from
};
std::span<const Caution> cautions();

/// Printed below every list of cautions.
QString cautionsDisclaimer();

} // namespace loopwright
