#include "app/actions/Cards.h"

#include "app/actions/Issuing.h"
#include "core/certificate/LineChange.h"
#include "core/certificate/SettingsLines.h"

namespace loopwright {

namespace {

/// What is programmed today, whatever the order was completed with.
Result<doc::Document> settingsDocument(const ServiceOrder &order, const CertificateSources &sources,
                                       const NumberGuard &guard)
{
    LOOPWRIGHT_TRY(checkForPaper(sources.input));
    CardContent card;
    card.order = order.number;
    card.customer = order.customer;
    card.premises = order.terminalLocation.isEmpty()
                        ? order.premises
                        : order.premises + "; " + order.terminalLocation;
    card.circuit = order.circuit;
    card.office = sources.office.name;
    card.service = inOneLine(serviceLines(order));
    card.kind = order.kind;
    const ProtocolVariant *variant = findVariant(order.variant);
    card.variantName = variant ? variant->name : order.variant;
    card.settings = terminalSettings(order);
    card.terminals = terminalLines(order);
    card.made = sources.issuedAt;
    if (sources.replaces && lineChange(sources.input.order, order).isEmpty())
        card.certificate = sources.replaces->number;
    doc::Document document = settingsCard(card);
    eachText(document, [&guard](QString &text) { text = guard.coverTyped(text); });
    return document;
}

Result<doc::Document> documentOf(const ServiceOrder &order, const CertificateSources &sources,
                                 const NumberGuard &guard, CardKind kind)
{
    if (kind == CardKind::Settings)
        return settingsDocument(order, sources, guard);
    if (kind == CardKind::LeaveBehind) {
        LOOPWRIGHT_ASSIGN(const auto slip, leaveBehindSlip(sources, guard));
        return leaveBehindDocument(slip);
    }
    LOOPWRIGHT_ASSIGN(const auto slip, closeOutSlip(sources, guard));
    return closeOutDocument(slip);
}

} // namespace

Result<Sheet> cardOf(Records &records, const QString &order, CardKind kind, Paper paper)
{
    LOOPWRIGHT_ASSIGN(const auto about, certifying(records, order));
    LOOPWRIGHT_ASSIGN(const auto sources, sourcesOf(records, about));
    LOOPWRIGHT_ASSIGN(const auto guard, guardOf(records.database(), about.stored.order.office));
    LOOPWRIGHT_ASSIGN(auto document, documentOf(about.stored.order, sources, guard, kind));
    // Whatever was joined to make them, no unpublished number is left in its texts.
    eachText(document, [&guard](QString &text) { text = guard.cover(text); });
    Sheet sheet = layOut(document, paper);
    LOOPWRIGHT_TRY(checkCharacters(sheet));
    return sheet;
}

} // namespace loopwright
