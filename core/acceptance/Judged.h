#pragma once
// What is judged of an order: the decision, and how each of its needs stands. Standings are not
// stored: they follow from the input again.

#include "core/acceptance/Decision.h"
#include "core/acceptance/Evidence.h"
#include "core/acceptance/Need.h"

#include <QMap>

namespace loopwright {

enum class NeedState
{
    NotNeeded,
    Done,
    Open,
    Failed, ///< what counts misses the limit
};
template<>
struct EnumCodes<NeedState>
{
    static constexpr std::pair<NeedState, const char *> table[] = {
        {NeedState::NotNeeded, "not_needed"},
        {NeedState::Done, "done"},
        {NeedState::Open, "open"},
        {NeedState::Failed, "failed"}};
};

/// How one need stands.
struct Standing
{
    NeedState state = NeedState::NotNeeded;
    const Fact *counts = nullptr;   ///< the fact that counts; null if none does
    std::vector<Discounted> before; ///< the others that speak of it, newest first
    Text why;                       ///< one sentence
    Text next;                      ///< what to do; empty if nothing is
};

struct Judged
{
    Decision decision;
    QString pair;            ///< the pair in force: what is measured now is measured on it
    SafetyCards cards;       ///< what they read, and the hazards; points into the input
    std::vector<Need> needs; ///< in the order of the work
    QMap<QString, Standing> standings; ///< by key of the need; point into the input
};

} // namespace loopwright
