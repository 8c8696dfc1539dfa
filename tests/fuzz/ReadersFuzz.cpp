// Longer than 400 lines: one reader after another, each with what it promises.
// Throws damaged input at the other readers of the program: JSON and CSV as such, job records,
// loops, identifier lists, orders, limit sets, certificates as documents and as PDF, bundles,
// and the imports as they run on records.
//
//   fuzz.readers [EXECUTIONS [START [READER]]]
//
// What changes records finds fresh ones at each START and at each multiple of 256: begin there to
// repeat one execution. What only asks them finds the same ones always.

#include "app/actions/Audit.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Keys.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "app/trust/BundleFile.h"
#include "core/history/HistoryChain.h"
#include "core/identifiers/IdentifierList.h"
#include "core/loop/LoopLoss.h"
#include "tests/fuzz/Fuzz.h"
#include "tests/support/Certificates.h"
#include "tests/support/Office.h"

#include <QGuiApplication>

#include <cmath>

using namespace loopwright;
using namespace loopwright::fuzz;

namespace {

constexpr qint64 executionsOnRecords = 256;

template<class T>
void promiseWords(const Result<T> &result)
{
    promise(result || !result.error().message.isEmpty(), "an error says something");
}

void json(Random &random)
{
    static constexpr const char *texts[] = {
        R"({"a":[1,2.5,-3e-7,"x\u0000\ud83d\ude00"],"b":{"c":null,"d":true}})",
        "[[[[[[[[]]]]]]]]",
        "\xEF\xBB\xBF{\"\xc3\xa4\":1e308}",
    };
    QByteArray text = oneOf(random, texts);
    if (below(random, 20) == 0)
        text = QByteArray(below(random, 3000), '[') + text;
    const auto value = parseJson(damaged(text, random), "f");
    promiseWords(value);
    if (!value)
        return;
    const QByteArray written = canonicalJson(*value);
    const auto again = parseJson(written, "f");
    promise(again && canonicalJson(*again) == written, "canonical JSON reads the same");
}

void csv(Random &random)
{
    static constexpr const char *files[] = {
        "a,b,dn_1\r\n1,\"two, \"\"2\"\"\",3\r\n\r\n4,5,6\r\n",
        "\xEF\xBB\xBF"
        "b,a\n\"line\nend\",1\n",
    };
    const auto table =
        readCsv(damaged(oneOf(random, files), random), "f", {{"a", "b"}, {"dn_#", "c"}, {}});
    promiseWords(table);
    if (!table)
        return;
    int line = 0;
    for (const CsvRow &row : table->rows) {
        promise(row.line > line, "rows come in the order of their lines");
        line = row.line;
        if (!row.trouble.isEmpty())
            continue;
        promise(row.fields.size() == table->header.size(), "a row is as long as the header");
        const QByteArray record = csvRecord(row.fields);
        CsvScanner scanner(record);
        const bool blank = row.fields == QStringList{QString()};
        promise(blank || (scanner.next() && scanner.trouble().isEmpty() &&
                          qsizetype(scanner.fields().size()) == row.fields.size()),
                "what was written reads the same");
    }
}

QByteArray wholeRecord()
{
    static const QByteArray bytes = canonicalJson(
        jobs::record(jobs::order(jobs::briFields()), jobs::briFacts() + jobs::seldomFacts()));
    return bytes;
}

/// The whole record, or one with a single fact of it, so that the damage goes deep.
QByteArray damagedRecord(Random &random)
{
    QByteArray bytes = wholeRecord();
    if (below(random, 4) != 0) {
        QJsonObject record = *parseJsonObject(bytes, "f");
        const QJsonArray facts = record["facts"].toArray();
        record["facts"] = QJsonArray{facts[below(random, facts.size())]};
        bytes = canonicalJson(record);
    }
    return damaged(bytes, random);
}

void record(Random &random)
{
    const auto object = parseJsonObject(damagedRecord(random), "f");
    if (!object)
        return;
    const auto read = readJobRecord(*object, "f", [] { return jobs::uuid(99); });
    promiseWords(read);
    if (!read)
        return;
    for (const Fact &fact : read->facts) {
        const auto again = Fact::fromJson(fact.toJson(), "fact");
        promise(again && again->digest() == fact.digest(), "a fact reads as it was written");
        promiseWords(checkFits(fact, jobs::order(jobs::briFields()), "f"));
    }
}

void promiseLoop(const Result<LoopMakeup> &makeup)
{
    promiseWords(makeup);
    if (!makeup)
        return;
    const auto again = LoopMakeup::fromJson(makeup->toJson(), "loop");
    promise(again && *again == *makeup, "a make-up reads as it was written");
    const double loss = insertionLossDb(*makeup, 40'000, {});
    promise(std::isfinite(loss), "a make-up has a loss");
}

void loopJson(Random &random)
{
    static constexpr const char *loops[] = {
        R"({"temperature_f":70,"elements":[{"type":"section","gauge_awg":26,"length_ft":9000},
{"type":"bridged_tap","gauge_awg":24,"length_ft":1500},{"type":"load_coil","millihenry":88}]})",
        R"({"temperature_c":20,"capacitance_nf_per_km":43.5,"elements":[
{"type":"section","diameter_mm":0.4,"length_m":2500,"capacitance_nf_per_km":50},
{"type":"load_coil","millihenry":66,"ohms":7}]})",
    };
    const auto object = parseJsonObject(damaged(oneOf(random, loops), random), "f");
    if (object)
        promiseLoop(LoopMakeup::fromJson(*object, "f"));
}

void loopCsv(Random &random)
{
    static constexpr const char *loops[] = {
        "element,gauge_awg,length_ft,temperature_f\nsection,26,9000,70\nbridged_tap,24,1500,\n",
        "element,diameter_mm,length_m,millihenry,ohms\nsection,0.4,2500,,\nload_coil,,,88,9\n",
    };
    promiseLoop(LoopMakeup::fromCsv(damaged(oneOf(random, loops), random), "f"));
}

void identifiers(Random &random)
{
    static constexpr const char *lists[] = {
        "variant,spid,dn\nni2,21755501430101,217-555-0143\nni1-5ess,01555014300,\n,x,y\n",
        "dn,variant,spid\r\n\"217-555-0143\",\"ni-generic\",\"217 555 0143 01 01\"\r\n"
        "217-555-0144,dms100-custom,2175550144\r\n217-555-0144,euro,1\r\n",
    };
    QByteArray out;
    const auto count = checkIdentifierList(damaged(oneOf(random, lists), random), "f",
                                           [&out](QByteArrayView piece) -> Result<void> {
                                               out.append(piece);
                                               return {};
                                           });
    promiseWords(count);
    if (!count)
        return;
    promise(count->ok + count->warnings + count->errors == count->rows, "each row has a verdict");
    const auto table =
        readCsv(out, "f", {{"variant", "spid", "verdict", "code", "reason", "repair"}, {"dn"}, {}});
    promise(table && qint64(table->rows.size()) == count->rows, "each row is written");
    for (const CsvRow &row : table->rows)
        promise(QStringList{"ok", "warning", "error"}.contains(table->value(row, "verdict")),
                "a verdict is one of three");
}

void order(Random &random)
{
    OrderFields fields = random() & 1 ? jobs::briFields() : jobs::analogFields();
    for (int changes = int(below(random, 4)); changes > 0; --changes) {
        const auto at = std::next(fields.begin(), below(random, fields.size()));
        at.value() = QString::fromUtf8(damaged(at.value().toUtf8(), random)).trimmed();
    }
    for (auto at = fields.begin(); at != fields.end();)
        at = at.value().isEmpty() ? fields.erase(at) : std::next(at);
    const OrderReading read = readOrder(fields, [](const QString &office) {
        return office == u"NORTH" ? std::optional<QString>("ni2") : std::nullopt;
    });
    for (const Finding &finding : read.malformed)
        promise(!finding.reason.isEmpty() && !finding.field.isEmpty(), "a finding names its field");
    if (!read.malformed.empty())
        return;
    const auto again = ServiceOrder::fromJson(read.order.toJson(), "f");
    promise(again && *again == read.order, "an order reads as it was written");
}

void limits(Random &random)
{
    static const QByteArray shipped = canonicalJson(jobs::limits().toJson());
    const auto object = parseJsonObject(damaged(shipped, random), "f");
    if (object)
        promiseWords(LimitSet::fromJson(*object, "f"));
}

void content(Random &random)
{
    static const QByteArray bytes = canonicalJson(certificates::bri().toJson());
    const auto object = parseJsonObject(damaged(bytes, random), "f");
    if (!object)
        return;
    const auto read = CertificateContent::fromJson(*object, "f");
    promiseWords(read);
    if (read)
        promise(canonicalJson(read->toJson()) == canonicalJson(*object),
                "a certificate's content says nothing that it does not keep");
}

/// Records with one job that is accepted and certified.
struct Desk
{
    std::unique_ptr<Records> records = jobs::office();
    QByteArray pdf, square;
    QString number, code;
    std::vector<PublicKey> keys;

    Desk()
    {
        const auto good = [](bool done) { promise(done, "the records are made"); };
        good(importOrders(*records, jobs::csv({jobs::briFields(), jobs::analogFields()}), {"f"})
                 .has_value());
        good(recordFile(
                 *records,
                 canonicalJson(jobs::record(jobs::order(jobs::briFields()), jobs::briFacts())), "f")
                 .has_value());
        const auto issued = issueCertificate(
            *records, {"A-1001", Paper::A4, {}, [this](const CertificatePaper &made) {
                           pdf = made.pdf;
                           return Result<void>();
                       }});
        good(issued.has_value());
        number = issued->number;
        code = issued->code;
        square = issued->mark.proof->claims.text();
        const auto known = knownKeys(*records);
        for (const KnownKey &each : *known)
            keys.push_back(each.key);
    }
    ~Desk()
    {
        promise(verifyHistory(*records)->broken.empty(), "the history is whole");
        promise(auditDerived(*records)->empty(), "what is derived follows from the records");
    }
};

std::unique_ptr<Desk> g_desk, g_archive;

/// Records that the execution may change.
Desk &desk()
{
    static qint64 last = -1;
    const bool fresh = last != g_execution && g_execution % executionsOnRecords == 0;
    if (!g_desk || fresh || g_execution < last) {
        g_desk.reset();
        g_desk = std::make_unique<Desk>();
    }
    last = g_execution;
    return *g_desk;
}

/// Records that no execution changes.
Desk &archive()
{
    if (!g_archive)
        g_archive = std::make_unique<Desk>();
    return *g_archive;
}

void imported(Random &random, const QByteArray &file,
              Result<ImportReport> (*import)(Records &, const QByteArray &, const ImportOptions &))
{
    const QByteArray bytes = damaged(file, random);
    ImportOptions options{"f.csv"};
    options.allOrNothing = below(random, 4) == 0;
    options.update = random() & 1;
    const auto report = import(*desk().records, bytes, options);
    promiseWords(report);
    if (!report)
        return;
    promise(report->held <= report->accepted, "a held row was taken in");
    for (const Finding &finding : report->findings)
        promise(!finding.reason.isEmpty() && finding.row > 0, "a finding names its row");
    promise(report->refused == 0 || !report->rejects.isEmpty(), "refused rows are handed back");
    promise(!report->toJson().isEmpty(), "it can be told");
}

void orders(Random &random)
{
    imported(random, jobs::csv({jobs::briFields(), jobs::analogFields()}), importOrders);
}
void offices(Random &random)
{
    imported(random,
             "office,name,protocol_variant,test_lines\n"
             "NORTH,North Street,ni2,loopback=5550199777;quiet=5550199778\nSOUTH,South,euro,\n",
             importOffices);
}
void installers(Random &random)
{
    imported(random, "installer,name,role\nK7,Kim Carver,installer\nD1,Dana Reed,dispatcher\n",
             importInstallers);
}
void instruments(Random &random)
{
    imported(random,
             "instrument,serial,kind,calibrated_on,calibration_due\n"
             "TS-4,S-1021,basic-rate test set,2025-09-01,2026-09-01\n"
             "TS-5,S-1022,voltmeter,2025-09-01,not_required\n",
             importInstruments);
}

void recordOnRecords(Random &random)
{
    Records &records = *desk().records;
    const QByteArray bytes = damagedRecord(random);
    const auto before = showOrder(records, "A-1001")->facts.size();
    const auto report = recordFile(records, bytes, "f.json");
    promiseWords(report);
    const auto after = showOrder(records, "A-1001")->facts.size();
    promise(after == before + (report ? std::size_t(report->added.size()) : 0),
            "facts are added whole or not at all");
}

void pdf(Random &random)
{
    Desk &there = archive();
    const QByteArray bytes = damaged(there.pdf, random);
    const auto check = verifyCertificateFile(*there.records, bytes);
    promise(check.has_value(), "any file is judged");
    promise(bytes == there.pdf ? check->verdict == CertificateVerdict::Genuine
                               : check->verdict == CertificateVerdict::Altered ||
                                     check->verdict == CertificateVerdict::Unknown,
            "a changed file is not genuine, and an unchanged one is");
    promise((verifyByKeys(bytes, there.keys).verdict == CertificateVerdict::Genuine) ==
                (bytes == there.pdf),
            "nor is it by the public keys");
}

void square(Random &random)
{
    Desk &there = archive();
    const QByteArray text = damaged(there.square, random);
    QByteArray plain = text.trimmed(); // without what a reader of codes adds
    if (plain.startsWith("\xef\xbb\xbf"))
        plain.remove(0, 3);
    const bool same = plain.replace("\r\n", "\n") == there.square;
    const auto check = verifyCertificateFile(*there.records, text);
    promise(check.has_value(), "any text is judged");
    promise(check->isGood() == same, "nothing but what was signed is good");
    promise(verifyByKeys(text, there.keys).isGood() == same, "nor by the public keys");
}

void keys(Random &random)
{
    QByteArray lines;
    for (const PublicKey &key : archive().keys)
        lines += key.line(true).toUtf8() + '\n';
    const auto read = readPublicKeys(damaged(lines, random), "f");
    promiseWords(read);
    for (const PublicKey &key : read.value_or(std::vector<PublicKey>()))
        promise(readPublicKeys(key.line(true).toUtf8(), "f").has_value(),
                "a key that was read can be written and read again");
}

void heads(Random &random)
{
    Records &records = *archive().records;
    static const SignedHead head = *logHead(records);
    const QByteArray bytes = damaged(canonicalJson(head.toJson()), random);
    const auto read = witnessesIn(bytes, "f");
    promiseWords(read);
    // The whole history is read for it: of some only.
    if (read && read->heads.size() == 1 && read->heads[0].head.text() != head.head.text() &&
        read->heads[0].head.position > 0 && random() % 16 == 0)
        promise(!verifyHistory(records, {}, *read)->broken.empty(), "a changed head is noticed");
}

void number(Random &random)
{
    Desk &there = archive();
    const auto changed = [&random](const QString &text) {
        return random() & 1 ? text : QString::fromUtf8(damaged(text.toUtf8(), random));
    };
    const QString number = changed(there.number);
    const QString code = changed(there.code);
    const auto check = verifyCertificateNumber(*there.records, number, code);
    promiseWords(check);
    if (check && number == there.number && code == there.code)
        promise(check->verdict == CertificateVerdict::Genuine, "the number with its code");
    if (check && check->verdict == CertificateVerdict::Genuine)
        promise(number.count('-') <= 40 && code.size() >= 6, "no short code is enough");
}

/// What a van brings back: whole in the file and signed again, damaged inside, so that the damage
/// comes past the signature; or as it is.
void bundle(Random &random)
{
    static const SigningKey key = *SigningKey::fromSeed(QByteArray(32, 'k'));
    static const BundleFile whole = [] {
        Bundle bundle;
        bundle.kind = BundleKind::Back;
        bundle.station = "ABC234";
        BundledOrder order;
        order.number = "A-1001";
        order.circuit = "C-77";
        order.uuid = jobs::uuid(1);
        order.circuitUuid = jobs::uuid(2);
        order.status = "open";
        order.content = canonicalJson(jobs::order(jobs::briFields()).toJson());
        HistoryChain chain(circuitSubject(order.circuit));
        Event event;
        event.order = order.number;
        event.by = "K7";
        event.kind = "facts_recorded";
        order.events.push_back({bundle.station, chain.append(event)});
        order.facts.push_back({wholeRecord(), bundle.station, "17-204"});
        order.certificates.push_back({"26-ABC234-00001-64", "d", {}, "{}", "claims", {}});
        bundle.orders.push_back(order);
        return signedBundle(bundle, key);
    }();
    QByteArray bytes = whole.bytes();
    if (random() & 1) {
        bytes = damaged(bytes, random);
    } else {
        const auto inner =
            parseJsonObject(damaged(canonicalJson(whole.bundle.toJson()), random), "f");
        if (!inner)
            return;
        bytes = canonicalJson(QJsonObject{{"bundle", *inner},
                                          {"id", digestOf(*inner)},
                                          {"key", key.fingerprint()},
                                          {"signature", "none"}});
    }
    const auto read = readBundle(bytes, "f");
    if (!read) {
        promise(!read.error().error.message.isEmpty(), "an error says what is wrong");
        return;
    }
    const auto again = readBundle(read->bytes(), "f");
    promise(again && again->id == read->id, "a bundle reads as it was written");
    promise(read->id == whole.id || !read->isSignedBy(key.publicKey()),
            "what was changed is not what was signed");
}

// Ten thousand executions of each, but of what opens records: these take about a minute together of
// one core, under the sanitizers of tests/run (there an execution of records takes 40 ms, of pdf
// 34, square 15, number 10, orders 2, the other imports 1; new records for each 256 of those that
// change them 0.3 s). tests/CMakeLists.txt makes a test of each row.
constexpr Reader readers[] = {
    {"json", json},
    {"csv", csv},
    {"record", record},
    {"loop.json", loopJson},
    {"loop.csv", loopCsv},
    {"identifiers", identifiers},
    {"order", order},
    {"limits", limits},
    {"content", content},
    {"orders", orders, 2'000},
    {"offices", offices, 2'000},
    {"installers", installers, 2'000},
    {"instruments", instruments, 2'000},
    {"records", recordOnRecords, 400},
    {"pdf", pdf, 400},
    {"number", number, 500},
    {"square", square, 500},
    {"keys", keys},
    {"heads", heads},
    {"bundle", bundle},
};

} // namespace

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen"); // certificates are painted
    const QGuiApplication application(argc, argv);
    const int status = runReaders(argc, argv, readers);
    g_desk.reset(); // look at their history for the last time
    g_archive.reset();
    return status;
}
