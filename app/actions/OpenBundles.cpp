#include "app/actions/OpenBundles.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/BundleHazards.h"
#include "app/actions/BundleOrders.h"
#include "app/actions/BundleRegisters.h"
#include "app/actions/Events.h"
#include "app/actions/Keys.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/VanWarnings.h"
#include "db/CertificateStore.h"
#include "db/EventStore.h"
#include "db/ForeignStore.h"
#include "db/KeyStore.h"
#include "db/MetaStore.h"
#include "db/StationStore.h"

#include <QRegularExpression>

#include <algorithm>

namespace loopwright {

namespace {

/// The keys that a bundle brings along.
struct BundleKeys
{
    PublicKey issuer, sender, own;
};

TakenBundle refusedFile(const BundleInput &input, const BundleFile &file, const char *code,
                        const QString &reason)
{
    TakenBundle refused = refusedBundle(input.name, code, reason);
    refused.bundle = file.id;
    return refused;
}

std::optional<BundleKeys> keysOf(const BundleFile &file)
{
    const auto keys = readPublicKeys(file.bundle.keys.toUtf8(), "keys");
    if (!keys)
        return std::nullopt;
    BundleKeys found;
    for (const PublicKey &key : *keys) {
        if (key.isIssuers())
            found.issuer = key;
        else if (key.fingerprint() == file.key)
            found.sender = key;
        else if (key.holder == file.bundle.station)
            found.own = key;
    }
    const bool whole = !found.issuer.bytes.isEmpty() && !found.sender.bytes.isEmpty() &&
                       !found.own.bytes.isEmpty() &&
                       found.issuer.fingerprint() == file.bundle.issuer;
    return whole ? std::optional(found) : std::nullopt;
}

/// Why a file is not opened; nothing if it may be.
Result<std::optional<TakenBundle>> whyNotOpened(Records &records, const BundleInput &input,
                                                const BundleFile &file,
                                                const std::optional<BundleKeys> &keys,
                                                const QString &newIssuer)
{
    const Database &database = records.database();
    const auto refused = [&](const char *code, const QString &reason) {
        return std::optional(refusedFile(input, file, code, reason));
    };
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(database).station());
    if (file.bundle.station != tag)
        return refused("other_station",
                       QString("It is for station %1, and this is %2: give it to that van. If this "
                               "van had that tag and was restored from a backup, have the office "
                               "add it again, and hand its orders out anew.")
                           .arg(file.bundle.station, tag));
    if (!keys || !file.isSignedBy(keys->sender.bytes))
        return refused("signature", "Its signature is not that of the key that it names.");
    if (!isEndorsedBy(keys->issuer, keys->sender) || !isEndorsedBy(keys->issuer, keys->own))
        return refused("stranger", "The issuer did not endorse who signed it.");
    LOOPWRIGHT_ASSIGN(const auto office, issuerOfOffice(database));
    const bool known = office.isEmpty() || office == file.bundle.issuer;
    if (!known && file.bundle.issuer != newIssuer)
        return refused(
            "other_issuer",
            QString("This van works for the issuer with the key %1, and this is of %2. If the "
                    "issuer has a new key, have the office read it out by telephone, and enter "
                    "what you hear.")
                .arg(groupedFingerprint(office), groupedFingerprint(file.bundle.issuer)));
    LOOPWRIGHT_ASSIGN(const auto own, KeyStore(database).newestOf(tag));
    if (!own || own->bytes != keys->own.bytes)
        return refused("stranger",
                       "The key that the office knows of this station is not its key: write it "
                       "anew (key export) and have the office add it again.");
    if (office.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const int used, CertificateStore(database).nextSequence(
                                              records.now().localDate().year(), tag));
        if (used > 1)
            return refused("other_issuer",
                           "These records gave out certificates in their own name already: a van "
                           "of an office begins with records of its own.");
    }
    return std::optional<TakenBundle>();
}

Result<void> learnKeys(Records &records, Transaction &transaction, const BundleKeys &keys)
{
    for (const PublicKey &key : {keys.issuer, keys.sender, keys.own}) {
        LOOPWRIGHT_ASSIGN(const auto known, KeyStore(records.database()).find(key.fingerprint()));
        if (known != key)
            LOOPWRIGHT_TRY(KeyStore::add(transaction, key, records.now()));
    }
    LOOPWRIGHT_ASSIGN(const auto office,
                      StationStore(records.database()).ofTag(keys.sender.holder));
    if (!office)
        LOOPWRIGHT_TRY(StationStore::add(transaction, {officeSide, keys.sender.holder}));
    return {};
}

/// The most changes of its registers that the office told in a bundle; it goes on counting.
Result<qint64> registerChangesTold(Records &records, const QString &office)
{
    LOOPWRIGHT_ASSIGN(const auto opened,
                      EventStore(records.database()).ofRegister("bundle_opened"));
    qint64 most = 0;
    for (const Event &event : opened)
        if (event.detail.value("station").toString() == office)
            most = std::max(most, event.detail.value("changes").toInteger());
    return most;
}

/// Keys and registers, before the orders that stand on them.
Result<void> takeHead(Records &records, const BundleFile &file, const BundleKeys &keys,
                      const QString &place)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    QByteArray lines = "{}";
    if (!file.bundle.testLines.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto ours, records.keys().find(keys.own.fingerprint()));
        if (ours) {
            LOOPWRIGHT_ASSIGN(lines, ours->opened(file.bundle.testLines.toLatin1()));
        }
    }
    LOOPWRIGHT_TRY(learnKeys(records, transaction, keys));
    const qint64 changes = file.bundle.registers.value("changes").toInteger();
    LOOPWRIGHT_ASSIGN(const qint64 known, registerChangesTold(records, keys.sender.holder));
    if (changes >= known) // not those of a bundle that was written before another one
        LOOPWRIGHT_TRY(takeRegisters(transaction, file.bundle.registers, lines, place));
    LOOPWRIGHT_TRY(takeHazards(records, transaction, file.bundle.registers, place));
    return transaction.commit(registerEvent(
        records, "bundle_opened",
        {{"bundle", file.id}, {"station", keys.sender.holder}, {"changes", changes}}));
}

Finding changedHere()
{
    return {Severity::Warning,
            "order_changed",
            QT_TRANSLATE_NOOP("core",
                              "The order was changed here and in the office; it stays as it "
                              "is here until the office has decided."),
            {},
            {},
            0};
}

Finding writtenBefore()
{
    return {
        Severity::Warning,
        "older_bundle",
        QT_TRANSLATE_NOOP("core", "It was written before what is here: nothing was taken back."),
        {},
        {},
        0};
}

/// How far these events tell the chain of the station.
qint64 lastOf(const std::vector<ForeignEvent> &events, const QString &station)
{
    qint64 last = 0;
    for (const ForeignEvent &each : events)
        if (each.station == station)
            last = std::max(last, each.event.sequence);
    return last;
}

/// The office has more to say of the order than this, and said it here already.
Result<bool> isOlder(const Database &database, const BundledOrder &entry, const QString &office)
{
    LOOPWRIGHT_ASSIGN(const auto known, ForeignStore(database).eventsOfOrder(entry.number));
    return lastOf(entry.events, office) < lastOf(known, office);
}

/// Whether the office decided what the order says with all in mind that was changed here.
Result<bool> isDecidedByOffice(const Database &database, const BundledOrder &entry,
                               const QString &tag)
{
    if (entry.undecided.contains(tag))
        return false;
    qint64 joined = 0;
    for (const ForeignEvent &each : entry.events)
        if (each.event.kind == joinedKind && each.event.detail.value("station").toString() == tag)
            joined = std::max(joined, each.event.detail.value("events").toInteger());
    LOOPWRIGHT_ASSIGN(const auto own, EventStore(database).ofOrder(entry.number));
    return std::ranges::none_of(own, [joined](const Event &event) {
        return event.kind == u"order_changed" && event.sequence > joined; // not by the office
    });
}

/// The order as it is now, unless it was changed here since it was taken along, and the office does
/// not know of it: then `base`, what its changes here are held against, stays what it was.
Result<bool> takeOrderAlong(Records &records, Transaction &transaction, const BundledOrder &entry,
                            const QString &place, std::vector<Event> &events, JoinedOrder &joined,
                            QByteArray &base)
{
    LOOPWRIGHT_ASSIGN(const auto order, orderIn(entry, entry.content, place + ".content"));
    LOOPWRIGHT_ASSIGN(const auto before, OrderStore(records.database()).find(entry.number));
    const bool isTwice = before && before->uuid != entry.uuid; // entered here and in the office
    if (isTwice && before->order.circuit != order.circuit)
        return failure(
            ErrorCode::Refused,
            QString("An order %1 was made here, of circuit %2, and the office has one of "
                    "circuit %3. Enter the one that was made here under its right "
                    "number, record its work anew, and cancel the wrong one.")
                .arg(entry.number, before->order.circuit, order.circuit),
            "number_in_use");
    if (before && before->order == order)
        return false;
    if (before) {
        LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
        LOOPWRIGHT_ASSIGN(const auto carried,
                          StationStore(records.database()).carried(entry.number));
        const auto mine = std::ranges::find(carried, tag, &CarriedOrder::station);
        const QByteArray now = canonicalJson(before->order.toJson());
        if (isTwice && mine == carried.end()) { // the two meet for the first time
            joined.findings.push_back(changedHere());
            return false;
        }
        LOOPWRIGHT_ASSIGN(const bool decided, isDecidedByOffice(records.database(), entry, tag));
        // What was measured here stands on what the order says here, until somebody has decided.
        const bool mayStay =
            mine != carried.end() && (mine->content != now || entry.undecided.contains(tag));
        if (mayStay && !decided) {
            if (mine->content != entry.content) // the office changed it too
                joined.findings.push_back(changedHere());
            base = mine->content;
            return false;
        }
    }
    LOOPWRIGHT_ASSIGN(auto taken, takeOrder(records, transaction, order, before, false,
                                            {entry.uuid, entry.circuitUuid, true}));
    joined.isNew = !before;
    if (before)
        for (Finding &finding : changeWarnings(before->order, order))
            joined.findings.push_back(std::move(finding));
    taken.event.kind = before ? "order_changed_in_office" : "order_opened";
    // What the change makes old, the office's own events say.
    taken.event.detail.remove("retires");
    events.push_back(taken.event);
    return true;
}

Result<JoinedOrder> openOrderOf(Records &records, const BundleFile &file, const QString &office,
                                const BundledOrder &entry, const QString &place)
{
    JoinedOrder joined;
    joined.order = entry.number;
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    std::vector<Event> events;
    QByteArray base = entry.content;
    LOOPWRIGHT_ASSIGN(const bool older, isOlder(records.database(), entry, office));
    if (older)
        joined.findings.push_back(writtenBefore());
    LOOPWRIGHT_ASSIGN(const bool changed, older ? Result<bool>(false)
                                                : takeOrderAlong(records, transaction, entry, place,
                                                                 events, joined, base));
    LOOPWRIGHT_ASSIGN(const int told, addForeignEvents(records, transaction, entry));
    LOOPWRIGHT_ASSIGN(const auto facts, factsIn(entry, place));
    LOOPWRIGHT_ASSIGN(const auto parts, addParts(records, transaction, entry, facts, {}, place));
    LOOPWRIGHT_ASSIGN(const auto tag, MetaStore(records.database()).station());
    LOOPWRIGHT_ASSIGN(const auto carried, StationStore(records.database()).carried(entry.number));
    const bool isOut = older || std::ranges::any_of(carried, [&](const CarriedOrder &each) {
                           return each.bundle == file.id;
                       });
    joined.added = parts.added;
    joined.alreadyThere = parts.alreadyThere;
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(entry.number));
    const bool isNews = changed || told > 0 || !parts.added.isEmpty() || !isOut;
    if (!isNews)
        joined.verdict = BundleVerdict::AlreadyThere;
    if (!entry.with.isEmpty())
        joined.findings.push_back(outWarning(entry.with));
    const bool ahead = std::ranges::any_of(entry.events, [&](const ForeignEvent &each) {
        return each.event.at.isAheadOf(records.now());
    });
    if (ahead)
        joined.findings.push_back(clockBehindWarning(records.now()));
    if (!isNews) {
        LOOPWRIGHT_ASSIGN(const auto around, hazardsAround(records, stored));
        joined.tellFirst(hazardWarnings(around.open));
        return joined;
    }
    if (!isOut)
        LOOPWRIGHT_TRY(StationStore::carry(transaction,
                                           {entry.number, tag, {}, file.id, base, records.now()}));
    LOOPWRIGHT_ASSIGN(const auto hazards, refreshState(records, transaction, entry.number));
    joined.tellFirst(hazardWarnings(hazards));
    if (changed)
        LOOPWRIGHT_TRY(tellHeldOrders(records, transaction, events));
    LOOPWRIGHT_TRY(refreshOrdersOnVisits(records, transaction, stored.order, parts.facts));
    LOOPWRIGHT_TRY(refreshOrdersConcerned(records, transaction, stored.order, parts.facts, {}));
    events.push_back(orderEvent(records, stored.order, "opened",
                                {{"bundle", file.id}, {"facts", parts.added.size()}}));
    LOOPWRIGHT_TRY(transaction.commit(events));
    return joined;
}

/// Without the groups in which it is read out; empty stays empty.
Result<QString> fingerprintSaid(QString said)
{
    static const QRegularExpression digits("^[0-9a-f]{32}$");
    said = said.remove(u' ').toLower();
    if (!said.isEmpty() && !digits.match(said).hasMatch())
        return failure(ErrorCode::BadInput,
                       "The key of an issuer is told by 32 digits, 0 to 9 and a to f.", "issuer");
    return said;
}

Result<void> openBundle(Records &records, const BundleInput &input, const QString &newIssuer,
                        TakenBundle &taken, BundleSteps &steps)
{
    auto file = readBundleInput(input, BundleKind::Out);
    if (!file) {
        taken = std::move(file.error());
        return {};
    }
    const auto keys = keysOf(*file);
    LOOPWRIGHT_ASSIGN(auto refused, whyNotOpened(records, input, *file, keys, newIssuer));
    if (refused) {
        taken = std::move(*refused);
        return {};
    }
    taken.file = input.name;
    taken.bundle = file->id;
    LOOPWRIGHT_ASSIGN(const auto known, StationStore(records.database()).bundle(file->id));
    taken.station = officeSide;
    if (!known)
        LOOPWRIGHT_TRY(takeHead(records, *file, *keys, input.name));
    taken.begun = !known;
    LOOPWRIGHT_TRY(
        takeOrders(taken, *file, steps, [&](const BundledOrder &entry, const QString &place) {
            return openOrderOf(records, *file, keys->sender.holder, entry, place);
        }));
    if (known || steps.isStopped())
        return {};
    return noteWhole(records, {file->id, BundleKind::Out, file->bundle.station, {}});
}

} // namespace

Result<QString> issuerOfOffice(const Database &database)
{
    LOOPWRIGHT_ASSIGN(const auto stations, StationStore(database).all());
    if (stations.empty())
        return QString();
    LOOPWRIGHT_ASSIGN(const auto key, KeyStore(database).newestOf(stations.back().tag));
    return key ? key->endorsedBy : QString();
}

Result<std::vector<TakenBundle>> openBundles(Records &records,
                                             const std::vector<BundleInput> &files,
                                             const QString &newIssuer, const Progress &progress)
{
    LOOPWRIGHT_TRY(allow(records, Act::WorkApart));
    LOOPWRIGHT_ASSIGN(const auto issuer, fingerprintSaid(newIssuer));
    return eachBundle(files, progress,
                      [&](const BundleInput &input, TakenBundle &taken, BundleSteps &steps) {
                          return openBundle(records, input, issuer, taken, steps);
                      });
}

} // namespace loopwright
