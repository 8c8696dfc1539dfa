#include "core/loop/Remedies.h"

#include <algorithm>
#include <tuple>

namespace loopwright {

namespace {

constexpr std::size_t mostTapsInSets = 10;

using Positions = std::vector<std::size_t>;

Positions positionsOf(const LoopMakeup &makeup, ElementType type)
{
    Positions positions;
    for (std::size_t i = 0; i < makeup.elements.size(); ++i)
        if (makeup.elements[i].type == type)
            positions.push_back(i);
    return positions;
}

/// Each element alone; then all coils together with each set of taps, as one coil left is as bad as
/// all of them.
std::vector<Positions> choices(const LoopMakeup &makeup)
{
    const Positions coils = positionsOf(makeup, ElementType::LoadCoil);
    const Positions taps = positionsOf(makeup, ElementType::BridgedTap);
    std::vector<Positions> all;
    for (const std::size_t coil : coils)
        all.push_back({coil});
    for (const std::size_t tap : taps)
        all.push_back({tap});
    const auto add = [&all, &coils](Positions set) {
        set.insert(set.end(), coils.begin(), coils.end());
        std::sort(set.begin(), set.end());
        if (!set.empty() && std::find(all.begin(), all.end(), set) == all.end())
            all.push_back(std::move(set));
    };
    if (taps.size() > mostTapsInSets) {
        add({});
        add(taps);
        return all;
    }
    for (std::size_t bits = 0; bits < std::size_t(1) << taps.size(); ++bits) {
        Positions set;
        for (std::size_t i = 0; i < taps.size(); ++i)
            if (bits >> i & 1)
                set.push_back(taps[i]);
        add(std::move(set));
    }
    return all;
}

Text mendText(const LoopMakeup &makeup, const Positions &remove)
{
    Text parts;
    for (const std::size_t position : remove) {
        const Text part = Text(QT_TRANSLATE_NOOP("core", "the %1")).arg(makeup.textAt(position));
        parts = parts.isEmpty()
                    ? part
                    : Text(QT_TRANSLATE_NOOP("core", "%1; and %2")).arg(parts).arg(part);
    }
    return Text(QT_TRANSLATE_NOOP("core", "Take out %1")).arg(parts);
}

bool isPartOf(const Positions &small, const Positions &large)
{
    return small.size() < large.size() &&
           std::includes(large.begin(), large.end(), small.begin(), small.end());
}

/// Singles are always listed; a larger set only if it reaches a better verdict than the loop has
/// and no part of it does as well.
bool isWorthTelling(const Remedy &mend, const std::vector<Remedy> &all, Suitability now)
{
    if (mend.remove.size() == 1)
        return true;
    if (mend.verdictAfter >= now)
        return false;
    return std::none_of(all.begin(), all.end(), [&mend](const Remedy &other) {
        return isPartOf(other.remove, mend.remove) && other.verdictAfter <= mend.verdictAfter;
    });
}

} // namespace

std::vector<Remedy> remedies(const LoopMakeup &makeup, const LimitSet &limits)
{
    const LoopQualification now = qualify(makeup, limits);
    if (now.verdict == Suitability::Suitable)
        return {};
    std::vector<Remedy> all;
    for (Positions &remove : choices(makeup)) {
        const LoopQualification after = qualify(makeup.without(remove), limits);
        all.push_back({remove, mendText(makeup, remove), after.insertionLossDb,
                       now.insertionLossDb - after.insertionLossDb, after.dcResistanceOhm,
                       after.verdict});
    }
    std::vector<Remedy> told;
    std::copy_if(all.begin(), all.end(), std::back_inserter(told),
                 [&](const Remedy &mend) { return isWorthTelling(mend, all, now.verdict); });
    std::stable_sort(told.begin(), told.end(), [](const Remedy &a, const Remedy &b) {
        return std::make_tuple(a.verdictAfter, a.remove.size(), a.lossAfterDb) <
               std::make_tuple(b.verdictAfter, b.remove.size(), b.lossAfterDb);
    });
    return told;
}

QJsonObject Remedy::toJson() const
{
    QJsonArray positions;
    for (const std::size_t position : remove)
        positions << qint64(position);
    return {{"remove", positions},
            {"text", text.english()},
            {"loss_after_db", lossAfterDb},
            {"loss_gain_db", lossGainDb},
            {"dc_resistance_after_ohm", dcResistanceAfterOhm},
            {"verdict_after", toText(verdictAfter)}};
}

} // namespace loopwright
