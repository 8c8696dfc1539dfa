// What a van brings back, joined on the records of its office: damaged within, then told by a chain
// that holds together and signed by the van's own key, so that the damage comes past both. Each
// execution finds records of its own, and can be repeated alone.

#include "app/actions/Audit.h"
#include "app/trust/BundleFile.h"
#include "db/Connection.h"
#include "tests/fuzz/RecordReaders.h"
#include "tests/fuzz/Seeds.h"
#include "tests/support/Vans.h"

#include <QSet>

namespace loopwright::fuzz {

namespace {

/// An office of which a van took two orders along, and what the van did with them.
struct Depot
{
    jobs::Site office{true}, van{false};
    SigningKey key = *SigningKey::fromSeed(QByteArray(SigningKey::seedBytes, 'k'));
    Bundle whole;

    Depot()
    {
        using namespace jobs;
        good(importOrders(*office.records, csv({briFields(), analogFields()}), {"f"}));
        join(office, van);
        van.open(take(office, {"A-1001", "A-2001"}));
        van.record(briFields(),
                   briFacts() + QList<QJsonObject>{fact(61, "note", 50, {{"text", "wet cable"}})});
        good(voidFact(*van.records, uuid(61), "misread"));
        good(issueCertificate(
            *van.records, {"A-1001", Paper::A4, {}, [](const auto &) { return Result<void>(); }}));
        van.record(analogFields(), factsFor(analogFields(), analogFacts(), 100).mid(0, 3));
        whole = readBundle(van.bring(), "back")->bundle;
        key = good(signerAtHand(*van.records))->secret;
        office.records.reset(); // its file is copied
    }
    /// The office's records as they are before anything comes back.
    std::unique_ptr<Records> records() const
    {
        const QString copy = office.file("try.sqlite");
        for (const char *ending : {"", "-wal", "-shm"})
            QFile::remove(copy + QLatin1StringView(ending));
        promise(QFile::copy(office.file("records.sqlite"), copy), "the records are copied");
        auto opened = Records::open(copy);
        promise(opened.has_value(), "the copy is opened");
        (*opened)->setKeys(KeyFolder(office.file("keys")));
        (*opened)->actAs("Dana");
        (*opened)->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
        return std::move(*opened);
    }
};

std::unique_ptr<Depot> g_depot;

Depot &depot()
{
    if (!g_depot)
        g_depot = std::make_unique<Depot>();
    return *g_depot;
}

/// Each event follows the one before, and is what its digest says.
void chain(BundledOrder &order)
{
    QString before = order.events.empty() ? QString() : order.events.front().event.previous;
    for (ForeignEvent &each : order.events) {
        each.event.previous = before;
        each.event.digest = each.event.computedDigest();
        before = each.event.digest;
    }
}

/// A seed is of another van and office: their tags, orders and circuits become those of the depot.
Bundle fitted(Bundle bundle)
{
    const Bundle &whole = depot().whole;
    for (BundledOrder &order : bundle.orders) {
        for (const BundledOrder &known : whole.orders)
            if (known.number == order.number) {
                order.uuid = known.uuid;
                order.circuitUuid = known.circuitUuid;
            }
        for (ForeignEvent &each : order.events)
            each.station = whole.station;
        for (BundledFact &fact : order.facts)
            fact.station = whole.station;
        chain(order);
    }
    bundle.station = whole.station;
    bundle.issuer = whole.issuer;
    bundle.answers = whole.answers;
    bundle.log = {};
    return bundle;
}

/// Damaged, and still JSON if that is to be had in a few tries.
QByteArray damagedContent(Random &random, const QByteArray &content)
{
    for (int tries = 0; tries < 20; ++tries)
        if (const auto object = parseJsonObject(damaged(content, random), "f"))
            return canonicalJson(*object);
    return damaged(content, random);
}

/// What seals the content seals it as it is now.
void damageSealed(Random &random, BundledOrder &order, QByteArray &content)
{
    const QByteArray before = sha256Hex(content).toLatin1();
    content = damagedContent(random, content);
    const QByteArray after = sha256Hex(content).toLatin1();
    for (ForeignEvent &each : order.events)
        each.event.detail =
            *parseJsonObject(canonicalJson(each.event.detail).replace(before, after), "detail");
}

void damageDetail(Random &random, Event &event)
{
    const auto detail = parseJsonObject(damagedContent(random, canonicalJson(event.detail)), "f");
    event.detail = detail.value_or(QJsonObject());
}

void damageOrder(Random &random, BundledOrder &order)
{
    switch (below(random, 8)) {
    case 0:
        if (!order.decisions.empty())
            damageSealed(random, order,
                         random() & 1 ? order.decisions[0].input : order.decisions[0].result);
        break;
    case 1:
        if (!order.certificates.empty())
            damageSealed(random, order, order.certificates[0].content);
        break;
    case 2:
        damageSealed(random, order, order.content);
        break;
    case 3:
        order.base = damagedContent(random, order.base);
        break;
    case 4:
        if (!order.events.empty())
            damageDetail(random, order.events[below(random, qint64(order.events.size()))].event);
        break;
    default:
        if (!order.facts.empty())
            damageSealed(random, order,
                         order.facts[below(random, qint64(order.facts.size()))].content);
        break;
    }
    chain(order);
}

QByteArray damagedBundle(Random &random)
{
    const QByteArray made = canonicalJson(depot().whole.toJson());
    const QByteArray begun = seed(random, made);
    Bundle bundle = depot().whole;
    if (begun != made) {
        const auto object = parseJsonObject(begun, "seed");
        const auto read = object ? Bundle::fromJson(*object, "seed") : Result<Bundle>(Bundle());
        promise(object && read, "a seed is a bundle");
        bundle = fitted(*read);
    }
    if (below(random, 4) == 0) { // anywhere
        const QByteArray text = damagedContent(random, canonicalJson(bundle.toJson()));
        const auto object = parseJsonObject(text, "f");
        auto read = object ? Bundle::fromJson(*object, "f") : Result<Bundle>(Bundle());
        if (!object || !read)
            return damaged(signedBundle(bundle, depot().key).bytes(), random);
        bundle = std::move(*read);
    } else {
        for (qint64 changes = below(random, 3); changes > 0 && !bundle.orders.empty(); --changes)
            damageOrder(random, bundle.orders[below(random, qint64(bundle.orders.size()))]);
    }
    return g_input = signedBundle(bundle, depot().key).bytes();
}

QSet<QString> factsIn(Records &records)
{
    const auto ids = records.database().connection().texts("SELECT uuid FROM fact");
    promise(ids.has_value(), "the facts can be read");
    return {ids->begin(), ids->end()};
}

void promiseTold(const TakenBundle &taken, const QSet<QString> &facts)
{
    promise(taken.verdict != BundleVerdict::Refused || !taken.reason.isEmpty(),
            "a file is refused for a reason");
    for (const JoinedOrder &order : taken.orders) {
        promise(order.verdict != BundleVerdict::Refused ||
                    (!order.code.isEmpty() && !order.reason.isEmpty()),
                "an order is refused for a reason");
        for (const QString &fact : order.added)
            promise(facts.contains(fact), "what was added is there");
    }
    promise(!taken.toJson("received").isEmpty(), "it can be told");
}

} // namespace

void receive(Random &random)
{
    const QByteArray bytes = damagedBundle(random);
    const auto records = depot().records();
    const QSet<QString> before = factsIn(*records);
    const auto taken = receiveBundles(*records, {{"back.json", bytes}});
    promiseWords(taken);
    const QSet<QString> after = factsIn(*records);
    promise(after.contains(before), "nothing is lost");
    if (taken)
        promiseTold(taken->front(), after);
    promiseWords(receiveBundles(*records, {{"again.json", bytes}}));
    promise(factsIn(*records) == after, "what comes again adds nothing");
    promise(verifyHistory(*records)->broken.empty(), "the history is whole");
    promise(auditDerived(*records)->empty(), "what is derived follows from the records");
}

void closeDepot()
{
    g_depot.reset();
}

} // namespace loopwright::fuzz
