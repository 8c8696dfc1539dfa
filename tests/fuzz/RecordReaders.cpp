// The readers that work on records: imports, job records, certificates as PDF, as text and by
// number, keys and heads. What changes records finds fresh ones at each START and at each multiple
// of 256: begin there to repeat one execution. What only asks them finds the same ones always.

#include "tests/fuzz/RecordReaders.h"

#include "app/actions/Audit.h"
#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/History.h"
#include "app/actions/Keys.h"
#include "app/actions/Orders.h"
#include "app/actions/VerifyCertificate.h"
#include "tests/fuzz/Seeds.h"
#include "tests/support/Office.h"

namespace loopwright::fuzz {

namespace {

constexpr qint64 executionsOnRecords = 256;

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
    const QByteArray bytes = damaged(seed(random, file), random);
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

} // namespace

QByteArray wholeRecord()
{
    static const QByteArray bytes = canonicalJson(
        jobs::record(jobs::order(jobs::briFields()), jobs::briFacts() + jobs::seldomFacts()));
    return bytes;
}

QByteArray damagedRecord(Random &random)
{
    QByteArray bytes = seed(random, wholeRecord());
    if (bytes == wholeRecord() && below(random, 4) != 0) {
        QJsonObject record = *parseJsonObject(bytes, "f");
        const QJsonArray facts = record["facts"].toArray();
        record["facts"] = QJsonArray{facts[below(random, facts.size())]};
        bytes = canonicalJson(record);
    }
    return damaged(bytes, random);
}

void orders(Random &random)
{
    imported(random, jobs::csv({jobs::briFields(), jobs::analogFields()}), importOrders);
}
void plans(Random &random)
{
    imported(random,
             "order_number,column,value\nA-1001,remarks,ring twice\nA-2001,due_date,2026-03-09\n"
             "A-1001,installer,K7\nA-2001,pair,17-299\nA-1001,remarks,\n",
             importPlans);
}
void offices(Random &random)
{
    imported(random,
             "office,name,protocol_variant,test_lines\n"
             "NORTH,North Street,ni2,loopback=5550199777;quiet=5550199778\nSOUTH,South,euro,\n",
             importOffices);
}
void issuer(Random &random)
{
    imported(random,
             "name,address,telephone,trouble_telephone,trouble_hours\n"
             "Prairie Line,\"4 Hill, Hollow\",217-555-0170,217-555-0171,always\n",
             importIssuer);
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
    const QByteArray bytes = damaged(seed(random, there.pdf), random);
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
    const QByteArray text = damaged(seed(random, there.square), random);
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
    const auto read = readPublicKeys(damaged(seed(random, lines), random), "f");
    promiseWords(read);
    for (const PublicKey &key : read.value_or(std::vector<PublicKey>()))
        promise(readPublicKeys(key.line(true).toUtf8(), "f").has_value(),
                "a key that was read can be written and read again");
}

void heads(Random &random)
{
    Records &records = *archive().records;
    static const SignedHead head = *logHead(records);
    const QByteArray bytes = damaged(seed(random, canonicalJson(head.toJson())), random);
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
    // In a seed the code stands below the number.
    const QByteArrayList lines =
        seed(random, QString(there.number + '\n' + there.code).toUtf8()).split('\n');
    const QString number = changed(QString::fromUtf8(lines.value(0)));
    const QString code = changed(QString::fromUtf8(lines.value(1)));
    const auto check = verifyCertificateNumber(*there.records, number, code);
    promiseWords(check);
    if (check && number == there.number && code == there.code)
        promise(check->verdict == CertificateVerdict::Genuine, "the number with its code");
    if (check && check->verdict == CertificateVerdict::Genuine)
        promise(number.size() <= 80 && code.size() >= 6, "no short code is enough");
}

void closeRecords()
{
    g_desk.reset(); // look at their history for the last time
    g_archive.reset();
}

} // namespace loopwright::fuzz
