#include "app/print/HandoffDocument.h"

#include "app/print/CertificateResults.h"
#include "core/base/PaperTime.h"

namespace loopwright {

using namespace doc;

namespace {

Blocks hazardBlocks(const Handoff &handoff)
{
    Blocks blocks;
    for (const HandoffHazard &hazard : handoff.hazards) {
        Blocks inside{Paragraph{"HAZARD: do not touch the pair", Tone::Alarm, mm(2)}};
        for (const QString &volts : hazard.volts)
            inside.push_back(Paragraph{volts, Tone::Verdict, mm(1)});
        inside.push_back(Facts{
            {{"Where", hazard.place.isEmpty() ? hazard.wet
                                              : QString("%1, %2").arg(hazard.place, hazard.wet)},
             {"Pair", hazard.pair + (hazard.order.isEmpty() ? QString()
                                                            : ", read for order " + hazard.order)},
             {"Read", QString("%1, by %2").arg(paperTime(hazard.at), hazard.readBy)},
             {"Office says", hazard.namedByOffice},
             {"State", hazard.state}},
            1,
            mm(26),
            false,
            Tone::Large});
        const HandoffReferral told = hazard.told.value_or(HandoffReferral());
        inside.push_back(FillIn{"Who was told", told.to});
        inside.push_back(FillIn{"Their reference", told.reference});
        inside.push_back(FillIn{"Who told them", told.by});
        inside.push_back(FillIn{"Who was kept away"});
        blocks.push_back(Box{std::move(inside), true});
    }
    return blocks;
}

Blocks subjectBlocks(const Handoff &handoff)
{
    if (handoff.criterion.isEmpty())
        return {Paragraph{"By these records nothing is open on this order.", Tone::Large}};
    QString cause = handoff.cause;
    if (!handoff.causeWhere.isEmpty())
        cause += (cause.isEmpty() ? QString() : QString(" – ")) + handoff.causeWhere;
    QStringList call{handoff.call, handoff.telephone};
    call.removeAll(QString());
    return {Facts{{{handoff.isMissing ? "What is missing" : "What failed", handoff.whatFailed()},
                   {"Cause", cause},
                   {"Whose part", handoff.part},
                   {"Call", call.join(", ")}},
                  1,
                  mm(34),
                  true,
                  Tone::Large},
            Facts{{{"Telephone", handoff.telephone.isEmpty()
                                     ? QString("the register has none of this desk")
                                     : QString()},
                   // Of a hazard it stands in its box.
                   {"What was seen", handoff.hazards.empty() || handoff.criterion != u"safety"
                                         ? handoff.reason
                                         : QString()},
                   {"What it means", handoff.meaning},
                   {"Check first", handoff.check.value(0)},
                   {"Then", handoff.check.mid(1).join(' ')},
                   {"Next here", handoff.next}},
                  1,
                  mm(34),
                  true}};
}

Blocks lineBlocks(const Handoff &handoff)
{
    return {Facts{{{"Trouble", handoff.trouble},
                   {"Customer", handoff.customer},
                   {"Contact", handoff.contact},
                   {"Premises", handoff.premises},
                   {"Access", handoff.access},
                   {"Circuit", handoff.circuit},
                   {"Numbers", handoff.numbers},
                   {"Serving office", handoff.office},
                   {"Pair", handoff.pair},
                   {"Variant", handoff.variant}},
                  2}};
}

Blocks readingBlocks(const Handoff &handoff)
{
    if (handoff.readings.empty())
        return {};
    Table table{{0.24, 0.32, 0.29, 0.15},
                {{"Reading", Tone::Muted},
                 {"Value", Tone::Muted},
                 {"Limit", Tone::Muted},
                 {"Result", Tone::Muted, Align::Right}},
                {},
                mm(0.9)};
    for (std::size_t i = 0; i < handoff.readings.size(); ++i) {
        const HandoffReading &reading = handoff.readings[i];
        const bool figureFollows =
            i + 1 < handoff.readings.size() && !handoff.readings[i + 1].outcome;
        if (!reading.outcome) { // a figure of the row above
            table.rows.push_back({{{reading.name, Tone::Muted},
                                   {reading.value, Tone::Small},
                                   {reading.limit, Tone::Small},
                                   {}},
                                  {},
                                  false,
                                  figureFollows});
            continue;
        }
        const Tone tone = reading.outcome == CriterionOutcome::Met ? Tone::Body : Tone::Bad;
        table.rows.push_back({{{reading.name},
                               {reading.value, tone},
                               {reading.limit},
                               {reading.word(), tone, Align::Right}},
                              {},
                              true,
                              figureFollows});
    }
    return {std::move(table)};
}

Blocks layerBlocks(const Handoff &handoff)
{
    if (handoff.layers.empty())
        return {};
    Table table{{0.2, 0.15, 0.33, 0.32}, {}, {}, mm(0.9)};
    for (const HandoffLayer &layer : handoff.layers)
        table.rows.push_back({{{layer.where},
                               {layer.state, layer.state == u"down" ? Tone::Bad : Tone::Body},
                               {layer.cause},
                               {paperTime(layer.at), Tone::Small}}});
    return {std::move(table)};
}

/// What the record holds stands there already; the rest is a line to write on.
Blocks handedOnBlocks(const Handoff &handoff)
{
    const HandoffReferral referred = handoff.referred.value_or(HandoffReferral());
    return {FillIn{"Handed on to", referred.to}, FillIn{"Their reference", referred.reference},
            FillIn{"It waits for", referred.waitingOn}, FillIn{"Handed on by", referred.by},
            FillIn{"When", handoff.referred ? paperTime(referred.at) : QString()}};
}

QString headline(const Handoff &handoff)
{
    return handoff.criterion.isEmpty() ? QString("Order %1.").arg(handoff.order)
                                       : QString("Order %1 is not accepted. To read aloud, or to "
                                                 "hand on.")
                                             .arg(handoff.order);
}

} // namespace

Sheet handoffPage(const Handoff &handoff, Paper paper)
{
    Document document;
    document.typed = {handoff.order,   handoff.customer,  handoff.contact, handoff.premises,
                      handoff.circuit, handoff.office,    handoff.pair,    handoff.access,
                      handoff.trouble, handoff.recordedBy};
    for (const HandoffHazard &hazard : handoff.hazards)
        if (hazard.told)
            document.typed << hazard.told->to << hazard.told->reference << hazard.told->by;
    if (handoff.referred)
        document.typed << handoff.referred->to << handoff.referred->reference
                       << handoff.referred->by;
    document.title = "Handoff " + handoff.order;
    document.continued = QString("Handoff of order %1, continued").arg(handoff.order);
    document.foot =
        handoff.lastFact
            ? QString("Last entry %1%2")
                  .arg(paperTime(*handoff.lastFact),
                       handoff.recordedBy.isEmpty() ? QString() : " by " + handoff.recordedBy)
            : QString("Nothing was recorded yet");
    document.end = "End of handoff";
    Blocks &blocks = document.blocks;
    append(blocks, {Paragraph{"Handoff", Tone::Title, mm(1)},
                    Paragraph{headline(handoff), Tone::Body, mm(3)}});
    append(blocks, hazardBlocks(handoff));
    append(blocks, subjectBlocks(handoff));
    append(blocks, section("Dangerous voltage, closed", paragraphs(handoff.closedHazards)));
    append(blocks, section("Failed too", paragraphs(handoff.alsoFailed)));
    append(blocks, section("To be mended too", paragraphs(handoff.toMend)));
    append(blocks, section("Only not tried yet", paragraphs(handoff.notTried)));
    append(blocks, section("Handed on", handedOnBlocks(handoff)));
    append(blocks, section("The line", lineBlocks(handoff)));
    append(blocks, section("Layers", layerBlocks(handoff)));
    append(blocks, section("Readings", readingBlocks(handoff)));
    append(blocks, section("Done so far", paragraphs(handoff.done)));
    spellMissingCharacters(document);
    return layOut(document, paper);
}

void spellMissingCharacters(Document &document)
{
    QStringList packages;
    eachText(document, [&packages](QString &text) {
        for (const QString &character : missingCharacters(text)) {
            const char32_t code = character.toUcs4().value(0);
            text.replace(character,
                         QString("[U+%1]").arg(QString::number(uint(code), 16).toUpper()));
            if (!packages.contains(fontPackageFor(code)))
                packages << fontPackageFor(code);
        }
    });
    if (!packages.isEmpty())
        document.blocks.push_back(
            Paragraph{QString("Characters that no font here has stand as their numbers; the Debian "
                              "package %1 has them.")
                          .arg(packages.join(" and ")),
                      Tone::Muted});
}

} // namespace loopwright
