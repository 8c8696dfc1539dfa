#include "core/loop/LoopPlace.h"

#include <iterator>

namespace loopwright {

std::vector<LoopPlace> loopPlaces(const LoopMakeup &makeup)
{
    std::vector<LoopPlace> all;
    for (std::size_t i = 0; i < makeup.elements.size(); ++i) {
        all.push_back({i, 0});
        if (makeup.elements[i].type == ElementType::Section)
            all.push_back({i, 0.5});
    }
    all.push_back({makeup.elements.size(), 0});
    if (all.size() <= mostLoopPlaces)
        return all;
    std::vector<LoopPlace> some;
    for (std::size_t i = 0; i < mostLoopPlaces; ++i)
        some.push_back(all[i * (all.size() - 1) / (mostLoopPlaces - 1)]);
    return some;
}

std::size_t insertAt(LoopMakeup &makeup, const LoopPlace &place, const LoopElement &element)
{
    auto &elements = makeup.elements;
    if (place.share <= 0) {
        elements.insert(elements.begin() + std::ptrdiff_t(place.before), element);
        return place.before;
    }
    LoopElement front = elements[place.before];
    front.length.value *= place.share;
    elements[place.before].length.value *= 1 - place.share;
    const LoopElement both[] = {front, element};
    elements.insert(elements.begin() + std::ptrdiff_t(place.before), std::begin(both),
                    std::end(both));
    return place.before + 1;
}

LoopElement cableAt(const LoopMakeup &makeup, const LoopPlace &place)
{
    const LoopElement *nearest = nullptr;
    for (std::size_t i = 0; i < makeup.elements.size(); ++i)
        if (makeup.elements[i].type == ElementType::Section && (!nearest || i <= place.before))
            nearest = &makeup.elements[i];
    return nearest ? *nearest : LoopElement::section(Wire::awg(24), {});
}

} // namespace loopwright
