#include "core/acceptance/Proof.h"

namespace loopwright {

Proves provenBy(const Fact &fact)
{
    switch (fact.kind()) { // all of them, so that a new one is not forgotten
    case FactKind::Safety:
    case FactKind::Loop:
    case FactKind::Analog:
        return Proves::Pair;
    case FactKind::Layer:
        return fact.as<LayerFact>()->layer == 1 ? Proves::Layer1 : Proves::Upper;
    case FactKind::Call:
    case FactKind::Detector:
    case FactKind::Run:
        return Proves::Upper;
    case FactKind::Visit:
    case FactKind::Changed:
    case FactKind::SelfTest:
    case FactKind::Cleared:
    case FactKind::HazardClosed:
    case FactKind::Referred:
    case FactKind::MadeWith:
    case FactKind::Desk:
    case FactKind::Note:
    case FactKind::Void:
    case FactKind::Exception:
        break;
    }
    return Proves::Nothing;
}

bool isEvidence(const Fact &fact)
{
    return provenBy(fact) != Proves::Nothing;
}

bool retires(ChangedWhat what, Proves proof)
{
    switch (what) {
    case ChangedWhat::Pair:
    case ChangedWhat::LineEquipment:
        return proof != Proves::Nothing;
    case ChangedWhat::Nt:
        return proof == Proves::Layer1 || proof == Proves::Upper;
    case ChangedWhat::Identifiers:
        return proof == Proves::Upper;
    case ChangedWhat::Feed: // needs another card, and leaves what was measured
        break;
    }
    return false;
}

} // namespace loopwright
