// Throws damaged input at the other readers of the program: JSON and CSV as such, column maps, job
// records, loops, identifier lists, orders, limit sets, certificates as documents, bundles; and at
// those that work on records (RecordReaders.h).
//
//   fuzz.readers [EXECUTIONS [START [READER]]]

#include "app/actions/Import.h"
#include "app/trust/BundleFile.h"
#include "core/history/HistoryChain.h"
#include "core/identifiers/IdentifierList.h"
#include "core/loop/LoopLoss.h"
#include "tests/fuzz/RecordReaders.h"
#include "tests/fuzz/Seeds.h"
#include "tests/support/Certificates.h"

#include <QGuiApplication>

#include <cmath>

using namespace loopwright;
using namespace loopwright::fuzz;

namespace {

void json(Random &random)
{
    static constexpr const char *texts[] = {
        R"({"a":[1,2.5,-3e-7,"x\u0000\ud83d\ude00"],"b":{"c":null,"d":true}})",
        "[[[[[[[[]]]]]]]]",
        "\xEF\xBB\xBF{\"\xc3\xa4\":1e308}",
    };
    QByteArray text = seed(random, oneOf(random, texts));
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
    const auto table = readCsv(damaged(seed(random, oneOf(random, files)), random), "f",
                               {{"a", "b"}, {"dn_#", "c"}, {}});
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

/// A file of somebody else's, read by a map of its columns.
void columnMap(Random &random)
{
    static constexpr const char *maps[] = {
        R"({"columns":{"No":"order_number","Sort":"order_type","Wire":"pair"},)"
        R"("values":{"order_type":{"N":"new","X":"disconnect"}},"ignore":["Row"]})",
        R"({"columns":{"Wire":"pair"},"values":{"kind":{"ISDN":"bri"}}})",
    };
    static constexpr const char *files[] = {
        "Row,No,Sort,due_date,customer,premises,circuit_number,kind,office,protocol_variant,Wire,"
        "b1_services,b2_services,dn_1,spid_1,tei_1,nt_supplied\n"
        "1,A-1,N,2026-03-06,Ada,4 Hill,C-1,ISDN,NORTH,ni2,17-1,voice,,217-555-0150,,,no\n"
        "2,A-2,X,,,,,,,,,,,,,,\n",
    };
    const QByteArray file =
        random() & 1 ? QByteArray(oneOf(random, files)) : damaged(oneOf(random, files), random);
    const auto map = ColumnMap::read(damaged(seed(random, oneOf(random, maps)), random), "m");
    promiseWords(map);
    if (!map)
        return;
    const auto again = ColumnMap::fromJson(map->toJson(), "m");
    promise(again && *again == *map, "a map reads as it was written");
    const auto table = readCsv(file, "f", ordersLayout(), *map);
    promiseWords(table);
    if (!table)
        return;
    promise(table->header.size() == table->theirs.size(), "each column has its place");
    for (const QString &column : ordersLayout().required)
        promise(table->header.count(column) == 1, "each column of ours stands for one of theirs");
    for (const CsvRow &row : table->rows)
        for (qsizetype i = 0; i < table->header.size() && row.trouble.isEmpty(); ++i) {
            const QString &column = table->header[i];
            const QString theirs = row.fields[i].trimmed();
            const QString ours = column.isEmpty() ? theirs : table->value(row, column);
            promise(ours == theirs || map->values.value(column).value(theirs) == ours,
                    "a value is theirs, or what the map leads it to");
        }
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
    const auto object = parseJsonObject(damaged(seed(random, oneOf(random, loops)), random), "f");
    if (object)
        promiseLoop(LoopMakeup::fromJson(*object, "f"));
}

void loopCsv(Random &random)
{
    static constexpr const char *loops[] = {
        "element,gauge_awg,length_ft,temperature_f\nsection,26,9000,70\nbridged_tap,24,1500,\n",
        "element,diameter_mm,length_m,millihenry,ohms\nsection,0.4,2500,,\nload_coil,,,88,9\n",
    };
    promiseLoop(LoopMakeup::fromCsv(damaged(seed(random, oneOf(random, loops)), random), "f"));
}

void identifiers(Random &random)
{
    static constexpr const char *lists[] = {
        "variant,spid,dn\nni2,21755501430101,217-555-0143\nni1-5ess,01555014300,\n,x,y\n",
        "dn,variant,spid\r\n\"217-555-0143\",\"ni-generic\",\"217 555 0143 01 01\"\r\n"
        "217-555-0144,dms100-custom,2175550144\r\n217-555-0144,euro,1\r\n",
    };
    QByteArray out;
    const auto count = checkIdentifierList(damaged(seed(random, oneOf(random, lists)), random), "f",
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
    const auto object = parseJsonObject(damaged(seed(random, shipped), random), "f");
    if (object)
        promiseWords(LimitSet::fromJson(*object, "f"));
}

void content(Random &random)
{
    static const QByteArray bytes = canonicalJson(certificates::bri().toJson());
    const auto object = parseJsonObject(damaged(seed(random, bytes), random), "f");
    if (!object)
        return;
    const auto read = CertificateContent::fromJson(*object, "f");
    promiseWords(read);
    if (read)
        promise(canonicalJson(read->toJson()) == canonicalJson(*object),
                "a certificate's content says nothing that it does not keep");
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
    QByteArray bytes = seed(random, whole.bytes());
    if (bytes != whole.bytes() || random() & 1) {
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
    // Not read->bytes(): a time may be written in several ways.
    const BundleFile anew = signedBundle(read->bundle, key);
    const auto again = readBundle(anew.bytes(), "f");
    promise(again && again->id == anew.id && again->isSignedBy(key.publicKey()),
            "a bundle reads as it was written");
    promise(read->id == whole.id || !read->isSignedBy(key.publicKey()),
            "what was changed is not what was signed");
}

// Ten thousand executions of each, but of what opens records: these take about a minute together of
// one core, under the sanitizers of tests/run (there an execution of receive takes some 120 ms, of
// records 40, of pdf 34, square and plans 15, number 10, orders 3, the other imports 1; new records
// for each 256 of those that change them 0.3 s). tests/CMakeLists.txt makes a test of each row.
constexpr Reader readers[] = {
    {"json", json},
    {"csv", csv},
    {"map", columnMap},
    {"record", record},
    {"loop.json", loopJson},
    {"loop.csv", loopCsv},
    {"identifiers", identifiers},
    {"order", order},
    {"limits", limits},
    {"content", content},
    {"orders", orders, 2'000},
    {"plans", plans, 400},
    {"offices", offices, 2'000},
    {"issuer", issuer, 2'000},
    {"installers", installers, 2'000},
    {"instruments", instruments, 2'000},
    {"records", recordOnRecords, 300},
    {"pdf", pdf, 300},
    {"number", number, 400},
    {"square", square, 400},
    {"keys", keys},
    {"heads", heads},
    {"bundle", bundle},
    {"receive", receive, 100},
};

} // namespace

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen"); // certificates are painted
    const QGuiApplication application(argc, argv);
    const int status = readSeeds() ? runReaders(argc, argv, readers) : 2;
    closeRecords();
    closeDepot();
    return status;
}
