// Criteria layer1, layer2 and layer3: the newest record of each interface and terminal decides.

#include "core/acceptance/Judging.h"
#include "core/identifiers/TerminalIdentifiers.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

#include <QMap>

namespace loopwright {

namespace {

const Fact *newestLayer(const Judging &judging, int layer, int terminal,
                        std::optional<LineInterface> interface)
{
    const Fact *newest = nullptr;
    for (const Fact *fact :
         judging.evidence.of<LayerFact>(layer == 1 ? Proves::Layer1 : Proves::Upper)) {
        const auto *record = fact->as<LayerFact>();
        if (record->layer == layer &&
            (interface ? record->interfaceOrU() == *interface : record->terminalOrFirst() == terminal))
            newest = fact;
    }
    return newest;
}

/// What is said of a layer that is down: the cause in words where there is one, and the first
/// check.
void settleDown(const Judging &judging, CriterionResult &result, const QString &what,
                const Fact &fact)
{
    const auto *layer = fact.as<LayerFact>();
    const FirstCheck check = firstCheck(*layer);
    QString reason = what + " is down";
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const auto cause =
        layer->cause && variant && usesQ850(*variant) ? causeOf(*layer->cause) : std::nullopt;
    if (layer->cause)
        reason += cause ? QString(", cause %1 (%2)").arg(cause->number).arg(cause->name)
                        : QString(", cause %1").arg(*layer->cause);
    mergeOutcome(result, CriterionOutcome::NotMet, reason + ": " + check.meaning, check.check);
}

void judgeInterface(const Judging &judging, CriterionResult &result, LineInterface interface)
{
    const QString name = interface == LineInterface::U ? "U" : "S/T";
    const Fact *fact = newestLayer(judging, 1, 0, interface);
    if (!fact) {
        mergeOutcome(result, CriterionOutcome::Missing,
                     QString("Layer 1 at %1 was not recorded.").arg(name),
                     QString("Record whether layer 1 is in sync at %1.").arg(name));
        return;
    }
    result.evidence << fact->id;
    if (fact->as<LayerFact>()->outcome == LayerOutcome::Up)
        mergeOutcome(result, CriterionOutcome::Met, QString("In sync at %1.").arg(name));
    else
        settleDown(judging, result, "Layer 1 at " + name, *fact);
}

QString terminalName(const ServiceOrder &order, const OrderedTerminal &terminal)
{
    return order.terminals.size() == 1 ? QString("the terminal")
                                       : QString("terminal %1").arg(terminal.number);
}

void judgeTei(const Judging &judging, CriterionResult &result, const OrderedTerminal &terminal,
              int tei)
{
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const TeiCheck assigned = variant ? checkTei(*variant, terminal.tei) : TeiCheck{};
    const bool zeroOnly = variant && variant->tei == TeiRule::FixedZero;
    const int fixed = assigned.fixed.value_or(zeroOnly ? 0 : -1); // -1: given by the network
    const bool zeroToo = variant && variant->tei == TeiRule::AutomaticOrFixedZero;
    const bool fits =
        fixed >= 0 ? tei == fixed : (tei >= 64 && tei <= 126) || (zeroToo && tei == 0);
    const QString who = terminalName(judging.order, terminal);
    if (fits)
        mergeOutcome(result, CriterionOutcome::Met, QString("TEI %1 at %2.").arg(tei).arg(who));
    else
        mergeOutcome(
            result, CriterionOutcome::NotMet,
            fixed >= 0
                ? QString("TEI %1 at %2 is not the assigned %3.").arg(tei).arg(who).arg(fixed)
                : QString("TEI %1 at %2 is not one that the network gives (64 to 126).")
                      .arg(tei)
                      .arg(who),
            "Set the TEI of the terminal as ordered and start it again.");
}

} // namespace

void judgeLayer1(const Judging &judging, CriterionResult &result)
{
    result.limitText = judging.order.ntSupplied ? "in sync at U and at S/T" : "in sync at U";
    result.source = "common practice";
    judgeInterface(judging, result, LineInterface::U);
    if (judging.order.ntSupplied)
        judgeInterface(judging, result, LineInterface::St);
    if (result.outcome == CriterionOutcome::Met)
        result.measured = result.measuredText = "in sync";
}

void judgeLayer2(const Judging &judging, CriterionResult &result)
{
    result.limitText = "each terminal has a TEI of its assignment";
    result.source = "TEI ranges of Q.921";
    QMap<int, QString> spidOfTei;
    QStringList teis;
    for (const OrderedTerminal &terminal : judging.order.terminals) {
        const QString who = terminalName(judging.order, terminal);
        const Fact *fact = newestLayer(judging, 2, terminal.number, std::nullopt);
        if (!fact) {
            mergeOutcome(result, CriterionOutcome::Missing,
                         QString("Layer 2 of %1 was not recorded.").arg(who),
                         QString("Record layer 2 of %1 with its TEI.").arg(who));
            continue;
        }
        result.evidence << fact->id;
        const auto *layer = fact->as<LayerFact>();
        if (layer->outcome == LayerOutcome::Down) {
            settleDown(judging, result, "Layer 2 of " + who, *fact);
        } else if (!layer->tei) {
            mergeOutcome(result, CriterionOutcome::Missing,
                         QString("Layer 2 of %1 is up, its TEI was not recorded.").arg(who),
                         QString("Record the TEI of %1.").arg(who));
        } else {
            judgeTei(judging, result, terminal, *layer->tei);
            teis << QString::number(*layer->tei);
            if (spidOfTei.contains(*layer->tei) && spidOfTei[*layer->tei] != terminal.spid)
                mergeOutcome(
                    result, CriterionOutcome::NotMet,
                    QString("TEI %1 is on two terminals with different SPIDs.").arg(*layer->tei),
                    "Set the terminals to automatic TEI and start them one by one.");
            spidOfTei.insert(*layer->tei, terminal.spid);
        }
    }
    result.measuredText = teis.isEmpty() ? QString() : "TEI " + teis.join(", ");
    if (!teis.isEmpty())
        result.measured = result.measuredText;
}

void judgeLayer3(const Judging &judging, CriterionResult &result)
{
    result.limitText = "each SPID accepted by the switch";
    result.source = "common practice";
    int accepted = 0;
    for (const OrderedTerminal &terminal : judging.order.terminals) {
        if (terminal.spid.isEmpty())
            continue;
        const QString who = terminalName(judging.order, terminal);
        const Fact *fact = newestLayer(judging, 3, terminal.number, std::nullopt);
        if (!fact) {
            mergeOutcome(result, CriterionOutcome::Missing,
                         QString("Layer 3 of %1 was not recorded.").arg(who),
                         QString("Record whether the switch accepted the SPID of %1.").arg(who));
            continue;
        }
        result.evidence << fact->id;
        if (fact->as<LayerFact>()->outcome == LayerOutcome::Up) {
            ++accepted;
            mergeOutcome(result, CriterionOutcome::Met,
                         QString("SPID %1 accepted.").arg(terminal.spid));
        } else {
            settleDown(judging, result, "Layer 3 of " + who, *fact);
        }
    }
    result.measured = accepted;
    result.measuredText = QString("%1 SPID accepted").arg(accepted);
}

} // namespace loopwright
