// Criteria layer1, layer2 and layer3: the newest record of each interface and terminal decides.

#include "core/acceptance/Judging.h"
#include "core/identifiers/TerminalIdentifiers.h"
#include "core/turnup/Cause.h"
#include "core/turnup/FirstCheck.h"

#include <QMap>

namespace loopwright {

namespace {

/// What is said of a layer that is down: the cause in words, if there is one, and the first check.
void settleDown(Judging &judging, const Need &need, CriterionResult &result, const Fact &fact)
{
    const auto *layer = fact.as<LayerFact>();
    const FirstCheck check = firstCheck(*layer);
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const auto cause =
        layer->cause && variant && usesQ850(*variant) ? causeOf(*layer->cause) : std::nullopt;
    const Text reason = cause ? Text(QT_TRANSLATE_NOOP("core", "%1 is down, cause %2 (%3): %4"))
                                    .arg(need.label)
                                    .arg(cause->number)
                                    .arg(cause->name)
                        : layer->cause
                            ? Text(QT_TRANSLATE_NOOP("core", "%1 is down, cause %2: %3"))
                                  .arg(need.label)
                                  .arg(*layer->cause)
                            : Text(QT_TRANSLATE_NOOP("core", "%1 is down: %2")).arg(need.label);
    Text whole = reason.arg(check.meaning);
    Text next = check.check;
    if (layer->causeLocation) {
        const LocationAdvice &place = adviceOf(*layer->causeLocation);
        whole += Text(QT_TRANSLATE_NOOP("core", "The cause came %1.")).arg(place.from);
        next += place.check;
    }
    judging.settle(need, result, CriterionOutcome::NotMet, whole, next);
}

/// The newest record of the need if it is up; else what is missing or down is said.
const Fact *upOf(Judging &judging, const Need &need, CriterionResult &result, const Text &next)
{
    const Fact *fact = judging.newest(need);
    if (!fact) {
        judging.settle(need, result, CriterionOutcome::Missing,
                       Text(judging.hasDiscounted(need)
                                ? QT_TRANSLATE_NOOP("core", "%1: nothing that counts was recorded.")
                                : QT_TRANSLATE_NOOP("core", "%1 was not recorded."))
                           .arg(need.label),
                       next);
        return nullptr;
    }
    result.evidence << fact->id;
    if (fact->as<LayerFact>()->outcome == LayerOutcome::Up)
        return fact;
    settleDown(judging, need, result, *fact);
    return nullptr;
}

/// A need of a layer: at an interface for layer 1, else of a terminal.
Need layerNeed(int layer, LineInterface interface, int terminal)
{
    const QString place = layer == 1 ? toText(interface) : QString::number(terminal);
    Need need{QString("layer.%1.%2").arg(layer).arg(place), QString("layer%1").arg(layer),
              StepGroup::TurnUp, Station::TurnUp, FactKind::Layer};
    need.preset = {{"layer", layer}};
    if (layer == 1)
        need.preset.insert("interface", place);
    else
        need.preset.insert("terminal", terminal);
    need.fields = {"outcome"};
    if (layer == 2)
        need.fields << "tei";
    need.fields << "cause"
                << "cause_location";
    need.optional = {"cause", "cause_location"};
    need.after = {"safety"};
    need.matches = [layer, interface, terminal](const Fact &fact) {
        const auto *seen = fact.as<LayerFact>();
        return seen && seen->layer == layer &&
               (layer == 1 ? seen->interfaceOrU() == interface : seen->terminalOrFirst() == terminal);
    };
    return need;
}

/// On a point-to-point line there is one link for all numbers.
std::span<const OrderedTerminal> linksOf(const ServiceOrder &order)
{
    const std::span<const OrderedTerminal> all = order.terminals;
    return order.isPointToPoint() ? all.first(std::min<std::size_t>(all.size(), 1)) : all;
}

Text terminalName(const ServiceOrder &order, const OrderedTerminal &terminal)
{
    if (order.isPointToPoint())
        return QT_TRANSLATE_NOOP("core", "the link");
    return order.terminals.size() == 1
               ? Text(QT_TRANSLATE_NOOP("core", "the terminal"))
               : Text(QT_TRANSLATE_NOOP("core", "terminal %1")).arg(terminal.number);
}

void judgeTei(Judging &judging, const Need &need, CriterionResult &result,
              const OrderedTerminal &terminal, int tei)
{
    const ProtocolVariant *variant = findVariant(judging.order.variant);
    const TeiCheck assigned = variant ? checkTei(*variant, terminal.tei) : TeiCheck{};
    const bool zeroOnly =
        judging.order.isPointToPoint() || (variant && variant->tei == TeiRule::FixedZero);
    const int fixed = zeroOnly ? 0 : assigned.fixed.value_or(-1); // -1: given by the network
    const bool zeroToo = variant && variant->tei == TeiRule::AutomaticOrFixedZero;
    const bool fits =
        fixed >= 0 ? tei == fixed : (tei >= 64 && tei <= 126) || (zeroToo && tei == 0);
    const Text who = terminalName(judging.order, terminal);
    if (fits)
        judging.settle(need, result, CriterionOutcome::Met,
                       Text(QT_TRANSLATE_NOOP("core", "TEI %1 at %2.")).arg(tei).arg(who));
    else
        judging.settle(
            need, result, CriterionOutcome::NotMet,
            fixed >= 0
                ? Text(QT_TRANSLATE_NOOP("core", "TEI %1 at %2 is not the assigned %3."))
                      .arg(tei)
                      .arg(who)
                      .arg(fixed)
                : Text(QT_TRANSLATE_NOOP(
                           "core", "TEI %1 at %2 is not one that the network gives (64 to 126)."))
                      .arg(tei)
                      .arg(who),
            Text(QT_TRANSLATE_NOOP("core",
                                   "Set the TEI of the terminal as ordered and start it again.")));
}

} // namespace

void needLayer1(std::vector<Need> &needs, const ServiceOrder &order, OrderScope, const LimitSet &)
{
    needs.push_back(layerNeed(1, LineInterface::U, 0));
    needs.back().label = Text(QT_TRANSLATE_NOOP("core", "Layer 1 at U"));
    needs.back().hint = Text(QT_TRANSLATE_NOOP("core", "in sync; wait 15 s after a cold start"));
    if (!order.ntSupplied)
        return;
    needs.push_back(layerNeed(1, LineInterface::St, 0));
    needs.back().label = Text(QT_TRANSLATE_NOOP("core", "Layer 1 at S/T"));
    needs.back().hint = Text(QT_TRANSLATE_NOOP("core", "in sync through the NT"));
}

void needLayer2(std::vector<Need> &needs, const ServiceOrder &order, OrderScope, const LimitSet &)
{
    for (const OrderedTerminal &terminal : linksOf(order)) {
        needs.push_back(layerNeed(2, {}, terminal.number));
        if (order.isPointToPoint())
            needs.back().matches = [](const Fact &fact) {
                return fact.as<LayerFact>() && fact.as<LayerFact>()->layer == 2;
            };
        needs.back().label =
            Text(QT_TRANSLATE_NOOP("core", "Layer 2 of %1")).arg(terminalName(order, terminal));
        needs.back().hint =
            order.isPointToPoint()
                ? Text(QT_TRANSLATE_NOOP("core", "TEI 0, one link for all numbers"))
            : isAutomaticTei(terminal.tei)
                ? Text(QT_TRANSLATE_NOOP("core", "TEI given by the network, 64 to 126"))
                : Text(QT_TRANSLATE_NOOP("core", "TEI %1 as ordered")).arg(terminal.tei);
    }
}

void needLayer3(std::vector<Need> &needs, const ServiceOrder &order, OrderScope, const LimitSet &)
{
    for (const OrderedTerminal &terminal : order.terminals) {
        if (terminal.spid.isEmpty())
            continue;
        needs.push_back(layerNeed(3, {}, terminal.number));
        needs.back().label =
            Text(QT_TRANSLATE_NOOP("core", "Layer 3 of %1")).arg(terminalName(order, terminal));
        needs.back().hint =
            Text(QT_TRANSLATE_NOOP("core", "SPID %1 accepted by the switch")).arg(terminal.spid);
    }
}

void judgeLayer1(Judging &judging, CriterionResult &result)
{
    result.limitText = judging.order.ntSupplied
                           ? QT_TRANSLATE_NOOP("core", "in sync at U and at S/T")
                           : QT_TRANSLATE_NOOP("core", "in sync at U");
    result.source = "common practice";
    for (const Need *need : judging.needsFor(result.key))
        if (upOf(judging, *need, result,
                 Text(QT_TRANSLATE_NOOP("core", "Record %1: is it in sync?")).arg(need->label)))
            judging.settle(*need, result, CriterionOutcome::Met,
                           Text(QT_TRANSLATE_NOOP("core", "%1 is in sync.")).arg(need->label));
    if (result.outcome == CriterionOutcome::Met)
        result.setMeasured(QT_TRANSLATE_NOOP("core", "in sync"));
}

void judgeLayer2(Judging &judging, CriterionResult &result)
{
    result.limitText = QT_TRANSLATE_NOOP("core", "each terminal has a TEI of its assignment");
    result.source = "TEI ranges of Q.921";
    QMap<int, const OrderedTerminal *> holders;
    QStringList teis;
    for (const OrderedTerminal &terminal : linksOf(judging.order)) {
        const Need &need = *judging.need(QString("layer.2.%1").arg(terminal.number));
        const Fact *up =
            upOf(judging, need, result,
                 Text(QT_TRANSLATE_NOOP("core", "Record %1 with its TEI.")).arg(need.label));
        if (!up)
            continue;
        const std::optional<int> tei = up->as<LayerFact>()->tei;
        if (!tei) {
            judging.settle(
                need, result, CriterionOutcome::Missing,
                Text(QT_TRANSLATE_NOOP("core", "%1 is up, its TEI was not recorded."))
                    .arg(need.label),
                Text(QT_TRANSLATE_NOOP("core", "Record %1 with its TEI.")).arg(need.label));
            continue;
        }
        judgeTei(judging, need, result, terminal, *tei);
        teis << QString::number(*tei);
        const OrderedTerminal *holder = holders.value(*tei);
        if (holder && holder->spid != terminal.spid)
            for (const int number : {holder->number, terminal.number})
                judging.settle(
                    *judging.need(QString("layer.2.%1").arg(number)), result,
                    CriterionOutcome::NotMet,
                    Text(QT_TRANSLATE_NOOP("core",
                                           "TEI %1 is on two terminals with different SPIDs."))
                        .arg(*tei),
                    Text(QT_TRANSLATE_NOOP(
                        "core", "Set the terminals to automatic TEI and start them one by one.")));
        holders.insert(*tei, &terminal);
    }
    if (!teis.isEmpty())
        result.setMeasured(Text::verbatim("TEI " + teis.join(", ")));
}

void judgeLayer3(Judging &judging, CriterionResult &result)
{
    result.limitText = QT_TRANSLATE_NOOP("core", "each SPID accepted by the switch");
    result.source = "common practice";
    int accepted = 0, asked = 0;
    for (const OrderedTerminal &terminal : judging.order.terminals) {
        if (terminal.spid.isEmpty())
            continue;
        ++asked;
        const Need &need = *judging.need(QString("layer.3.%1").arg(terminal.number));
        if (!upOf(judging, need, result,
                  Text(QT_TRANSLATE_NOOP("core", "Record %1: did the switch accept the SPID?"))
                      .arg(need.label)))
            continue;
        ++accepted;
        judging.settle(need, result, CriterionOutcome::Met,
                       Text(QT_TRANSLATE_NOOP("core", "SPID %1 accepted.")).arg(terminal.spid));
    }
    result.measured = accepted;
    result.measuredText =
        Text::counted("%1 of %n SPID accepted",
                      QT_TRANSLATE_N_NOOP("core", "%1 of %n SPIDs accepted"), asked)
            .arg(accepted);
}

} // namespace loopwright
