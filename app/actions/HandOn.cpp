#include "app/actions/HandOn.h"

#include "app/actions/Acting.h"
#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "core/acceptance/Referral.h"
#include "core/certificate/ContentParts.h"
#include "db/OfficeStore.h"

namespace loopwright {

namespace {

/// Below each criterion the figures that were read for it, as the certificate prints them; what
/// they say is not said again beside its name.
std::vector<HandoffReading> withFigures(const std::vector<HandoffReading> &readings,
                                        const OrderView &view)
{
    CertificateSources sources;
    sources.input = view.input;
    sources.decision = view.decision;
    sources.limits = view.limits;
    std::vector<HandoffReading> whole;
    for (const HandoffReading &reading : readings) {
        whole.push_back(reading);
        const std::size_t at = whole.size() - 1;
        for (const CriterionResult &criterion : view.decision.criteria)
            if (criterion.name.english() == reading.name)
                for (const CertificateReading &figure : readingsOf(criterion, sources))
                    if (!figure.what.isEmpty())
                        whole.push_back({figure.what, figure.value, figure.limit, {}});
        if (whole.size() > at + 1)
            whole[at].value = whole[at].limit = QString();
    }
    return whole;
}

} // namespace

Result<Handoff> handoffOf(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto view, showOrder(records, order));
    LOOPWRIGHT_ASSIGN(const auto issuer, OfficeStore(records.database()).issuer());
    Handoff handoff =
        makeHandoff({view.input, view.decision, view.limits, stepsOf(view, {view.now, {}}),
                     view.office, issuer, view.people});
    handoff.readings = withFigures(handoff.readings, view);
    return handoff;
}

Result<void> refer(Records &records, const QString &order, const ReferredFact &referred)
{
    if (referred.to.trimmed().isEmpty())
        return failure(ErrorCode::Usage, "say to whom the job is handed on", "--to");
    LOOPWRIGHT_TRY(allow(records, Act::HandOn, order));
    LOOPWRIGHT_ASSIGN(const auto view, showOrder(records, order));
    const Fact *before = standingReferral(view.input.facts);
    if (before && *before->as<ReferredFact>() == referred)
        return {};
    const Fact fact{{}, records.now(), order, records.by(), {}, {}, referred};
    LOOPWRIGHT_TRY(recordFacts(records, {order, {fact}}, "handoff"));
    return {};
}

} // namespace loopwright
