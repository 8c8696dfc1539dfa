#include "app/actions/VanDesk.h"

#include "app/actions/OpenBundles.h"
#include "core/acceptance/StationConflict.h"
#include "db/MetaStore.h"

namespace loopwright {

namespace {

/// The tag of the station that signed; of the office by the key that the file brings along.
QString signerOf(const BundleFile &file)
{
    if (file.bundle.kind == BundleKind::Back)
        return file.bundle.station;
    const auto keys = readPublicKeys(file.bundle.keys.toUtf8(), "keys");
    if (keys)
        for (const PublicKey &key : *keys)
            if (!key.isIssuers() && key.fingerprint() == file.key)
                return key.holder;
    return {};
}

} // namespace

Result<VanDesk> vanDesk(Records &records)
{
    const StationStore stations(records.database());
    VanDesk desk;
    LOOPWRIGHT_ASSIGN(desk.tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto all, stations.all());
    for (const PeerStation &each : all) {
        if (each.name == officeSide) {
            desk.isVan = true;
            continue;
        }
        LOOPWRIGHT_ASSIGN(const auto inUse, stations.find(each.name));
        if (inUse == each && !each.lost)
            desk.vans.push_back(each);
    }
    if (!desk.isVan)
        return desk;
    LOOPWRIGHT_ASSIGN(const auto carried, stations.carried());
    for (const CarriedOrder &each : carried)
        if (each.station == desk.tag && !each.back)
            desk.orders << each.order;
    return desk;
}

Result<BundleOutline> outlineOf(Records &records, const BundleInput &input)
{
    BundleOutline outline;
    outline.file = input.name;
    const auto read = readBundle(input.bytes, input.name);
    if (!read) {
        outline.code = read.error().code;
        outline.reason = read.error().error.message;
        return outline;
    }
    const Bundle &bundle = read->bundle;
    const QString tag = signerOf(*read);
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(records.database()).ofTag(tag));
    outline.id = read->id;
    outline.kind = bundle.kind;
    if (bundle.kind == BundleKind::Out)
        outline.forStation = bundle.station;
    outline.station = known && known->name != officeSide ? known->name : tag;
    LOOPWRIGHT_ASSIGN(const auto issuer, issuerOfOffice(records.database()));
    if (bundle.kind == BundleKind::Out && !issuer.isEmpty() && issuer != bundle.issuer)
        outline.otherIssuer = bundle.issuer;
    outline.part = bundle.part;
    outline.parts = bundle.parts;
    outline.keep = bundle.keep;
    for (const BundledOrder &order : bundle.orders) {
        outline.orders << order.number;
        outline.facts += int(order.facts.size());
    }
    return outline;
}

} // namespace loopwright
