#include "app/actions/ExportCircuit.h"

#include "app/actions/ExportParts.h"
#include "app/actions/IssuePaper.h"
#include "app/actions/Issuing.h"
#include "app/actions/LimitChanges.h"
#include "db/Connection.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/FactStore.h"
#include "db/InstrumentStore.h"
#include "db/OfficeStore.h"

namespace loopwright {

namespace {

QString countOrNothing(const std::optional<qint64> &count)
{
    return count ? QString::number(*count) : QString();
}

QStringList runCells(const Fact &fact, const RunFact &run, bool voided, const QString &seconds)
{
    QStringList channels;
    for (const Channel channel : run.channels)
        channels << toText(channel);
    return {fact.order,
            fact.id,
            fact.installer,
            fact.instrument,
            fact.pair,
            voided ? "true" : "false",
            toText(run.path),
            channels.join(' '),
            run.interface ? toText(*run.interface) : QString(),
            run.fromDn.value_or(QString()),
            run.toDn.value_or(QString()),
            run.pattern.value_or(QString()),
            QString::number(run.bitsPerSecond()),
            run.started.text(),
            run.ended.text(),
            run.wasStoppedEarly() ? "true" : "false",
            countOrNothing(run.bitErrors),
            countOrNothing(run.erroredSeconds),
            countOrNothing(run.severelyErroredSeconds),
            countOrNothing(run.syncLosses),
            countOrNothing(run.slips),
            seconds};
}

class CircuitFile
{
public:
    CircuitFile(Records &records, ExportFolder &folder, const Progress &progress)
        : m_records(records)
        , m_folder(folder)
        , m_progress(progress)
    {
    }

    Result<void> all(const QString &circuit, const std::vector<StoredOrder> &orders)
    {
        for (const StoredOrder &stored : orders)
            LOOPWRIGHT_TRY(read(stored));
        LOOPWRIGHT_TRY(registers(orders));
        LOOPWRIGHT_TRY(orderFiles(orders));
        LOOPWRIGHT_TRY(runs());
        LOOPWRIGHT_TRY(m_folder.document("decisions.json", m_decisions));
        LOOPWRIGHT_TRY(events(circuit));
        for (const StoredOrder &stored : orders)
            LOOPWRIGHT_TRY(certificates(stored.order.number));
        return m_folder.close(
            {{"kind", "circuit"},
             {"circuit", circuit},
             {"made_at", Records::realNow().text()},
             {"certificates", m_certificates},
             {"take_in", QJsonArray{"office import offices.csv",
                                    "instrument import instruments.csv", "order import orders.csv",
                                    "record records/*.json", "record records_after/*.json"}}});
    }

    CircuitExport result; ///< without paths

private:
    const Database &database() const { return m_records.database(); }
    Result<void> read(const StoredOrder &stored);
    Result<void> registers(const std::vector<StoredOrder> &orders);
    Result<void> orderFiles(const std::vector<StoredOrder> &orders);
    Result<void> runs();
    Result<void> events(const QString &circuit);
    Result<void> certificates(const QString &order);
    Result<void> paper(const StoredCertificate &certificate, const CertificateIssue &issue,
                       const std::optional<Signer> &signer);
    Result<void> goOn() const
    {
        if (m_progress && !m_progress(m_folder.written(), 0))
            return failure(ErrorCode::Refused, "The export was stopped; nothing is left of it.");
        return {};
    }

    Records &m_records;
    ExportFolder &m_folder;
    const Progress &m_progress;
    std::vector<Fact> m_facts;
    std::vector<OrderRecords> m_recorded; ///< of each order
    QJsonArray m_decisions, m_certificates;
};

Result<void> CircuitFile::read(const StoredOrder &stored)
{
    const QString &number = stored.order.number;
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database()).ofOrder(number));
    m_facts.insert(m_facts.end(), facts.begin(), facts.end());
    m_recorded.push_back(recordsOf(number, facts));
    LOOPWRIGHT_ASSIGN(const auto now, certifying(m_records, number));
    LOOPWRIGHT_ASSIGN(const auto decisions, DecisionStore(database()).ofOrder(number));
    QJsonArray made;
    for (const StoredDecision &each : decisions) {
        LOOPWRIGHT_ASSIGN(const auto input, parseJson(each.input, "decision " + each.id));
        LOOPWRIGHT_ASSIGN(const auto said, parseJson(each.result, "decision " + each.id));
        made << QJsonObject{{"decision", each.id}, {"at", each.at.text()},
                            {"input", input},      {"input_sha256", each.inputDigest},
                            {"result", said},      {"result_sha256", each.digest}};
    }
    m_decisions << QJsonObject{{"order", number},
                               {"status", toText(stored.status)},
                               {"now", now.decision.toJson()},
                               {"made", made}};
    return goOn();
}

Result<void> CircuitFile::registers(const std::vector<StoredOrder> &orders)
{
    QStringList offices, instruments;
    for (const StoredOrder &stored : orders)
        offices << stored.order.office;
    for (const Fact &fact : m_facts)
        instruments << fact.instrument;
    offices.removeDuplicates();
    instruments.removeDuplicates();
    std::vector<ServingOffice> found;
    for (const QString &key : std::as_const(offices)) {
        LOOPWRIGHT_ASSIGN(const auto office, OfficeStore(database()).find(key));
        if (office)
            found.push_back(*office);
    }
    LOOPWRIGHT_TRY(writeOffices(m_folder, m_records, found));
    std::vector<Instrument> confirmed, labelled;
    for (const QString &key : std::as_const(instruments)) {
        LOOPWRIGHT_ASSIGN(const auto instrument, InstrumentStore(database()).find(key));
        if (instrument)
            (instrument->asLabelled ? labelled : confirmed).push_back(*instrument);
    }
    LOOPWRIGHT_TRY(writeInstruments(m_folder, "instruments.csv", confirmed));
    return labelled.empty() ? Result<void>()
                            : writeInstruments(m_folder, "instruments_as_labelled.csv", labelled);
}

Result<void> CircuitFile::orderFiles(const std::vector<StoredOrder> &orders)
{
    UsedColumns used;
    for (const StoredOrder &stored : orders)
        used.note(stored.order);
    const QStringList columns = used.columns();
    const auto write = [&](const QString &name, bool repairs) {
        return m_folder.table(name, [&](const TakeCells &take) -> Result<void> {
            LOOPWRIGHT_TRY(take(columns));
            for (const StoredOrder &stored : orders)
                if ((stored.order.type == OrderType::Repair) == repairs)
                    LOOPWRIGHT_TRY(take(orderCells(stored.order, columns)));
            return {};
        });
    };
    LOOPWRIGHT_TRY(write("orders.csv", false));
    if (std::ranges::any_of(orders, [](const StoredOrder &stored) {
            return stored.order.type == OrderType::Repair;
        }))
        LOOPWRIGHT_TRY(write("repairs.csv", true));
    for (const OrderRecords &recorded : m_recorded)
        for (auto file = recorded.files.begin(); file != recorded.files.end(); ++file)
            LOOPWRIGHT_TRY(m_folder.document(file.key(), file.value()));
    LOOPWRIGHT_TRY(m_folder.table("voids.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take(voidColumns()));
        for (const OrderRecords &recorded : m_recorded)
            for (const QStringList &row : recorded.voids)
                LOOPWRIGHT_TRY(take(row));
        return {};
    }));
    return m_folder.table("exceptions.csv", [&](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take(exceptionColumns()));
        for (const OrderRecords &recorded : m_recorded)
            for (const QStringList &row : recorded.exceptions)
                LOOPWRIGHT_TRY(take(row));
        return {};
    });
}

Result<void> CircuitFile::runs()
{
    QSet<QString> voided;
    for (const Fact &fact : m_facts)
        if (const auto *voiding = fact.as<VoidFact>())
            voided.insert(voiding->fact);
    std::vector<QStringList> rows;
    for (const Fact &fact : m_facts) {
        const auto *run = fact.as<RunFact>();
        if (!run)
            continue;
        const QString seconds = run->seconds ? "runs/" + fact.id + ".csv" : QString();
        rows.push_back(runCells(fact, *run, voided.contains(fact.id), seconds));
        if (!run->seconds)
            continue;
        LOOPWRIGHT_TRY(m_folder.table(seconds, [run](const TakeCells &take) -> Result<void> {
            LOOPWRIGHT_TRY(take({"second", "bit_errors", "sync_lost"}));
            for (std::size_t i = 0; i < run->seconds->size(); ++i) {
                const Second &second = (*run->seconds)[i];
                LOOPWRIGHT_TRY(
                    take({QString::number(i),
                          second.inSync() ? QString::number(second.bitErrors()) : QString(),
                          second.inSync() ? "0" : "1"}));
            }
            return {};
        }));
    }
    return m_folder.table("runs.csv", [&rows](const TakeCells &take) -> Result<void> {
        LOOPWRIGHT_TRY(take({"order_number",
                             "run",
                             "installer",
                             "instrument",
                             "pair",
                             "voided",
                             "path",
                             "channels",
                             "interface",
                             "from_dn",
                             "to_dn",
                             "pattern",
                             "rate",
                             "started",
                             "ended",
                             "stopped_early",
                             "bit_errors",
                             "errored_seconds",
                             "severely_errored_seconds",
                             "sync_losses",
                             "slips",
                             "seconds"}));
        for (const QStringList &row : rows)
            LOOPWRIGHT_TRY(take(row));
        return {};
    });
}

Result<void> CircuitFile::events(const QString &circuit)
{
    LOOPWRIGHT_ASSIGN(const auto events, EventStore(database()).ofCircuit(circuit));
    QJsonArray list;
    for (const Event &event : events)
        list << event.toJson();
    return m_folder.document("events.json", list);
}

Result<void> CircuitFile::certificates(const QString &order)
{
    const CertificateStore store(database());
    LOOPWRIGHT_ASSIGN(const auto certificates, store.ofOrder(order));
    if (certificates.empty())
        return {};
    const auto signer =
        signerAtHand(m_records); // a key that cannot be read is one that is not here
    for (const StoredCertificate &certificate : certificates) {
        LOOPWRIGHT_ASSIGN(const auto issues, store.issuesOf(certificate.number));
        for (const CertificateIssue &issue : issues) {
            LOOPWRIGHT_TRY(goOn());
            LOOPWRIGHT_TRY(paper(certificate, issue, signer.value_or(std::nullopt)));
        }
        ++result.certificates;
    }
    return {};
}

/// Of one issue, if the same bytes come out again; copies say the same and are left out.
Result<void> CircuitFile::paper(const StoredCertificate &certificate, const CertificateIssue &issue,
                                const std::optional<Signer> &signer)
{
    QJsonObject entry{{"certificate", certificate.number},
                      {"issue", issue.issue},
                      {"at", issue.at.text()},
                      {"sha256", issue.fileSha256},
                      {"file", QJsonValue()}};
    const auto lacks = [&](const QString &why) -> Result<void> {
        entry.insert("because", why);
        m_certificates << entry;
        result.lacking
            << QString("The paper of certificate %1 is not in it: %2").arg(certificate.number, why);
        return {};
    };
    if (!signer)
        return lacks("the key that seals it is not on this machine.");
    const auto mark = issueMark(database(), certificate, issue, *signer);
    if (!mark)
        return lacks(mark.error().message);
    if (issue.issue > 1 && !mark->countersigns)
        return {};
    const auto content =
        CertificateContent::fromJson(certificate.content, "certificate " + certificate.number);
    if (!content)
        return lacks(content.error().text());
    const auto made =
        paperMadeAgain(*content, *mark, fromText<Paper>(issue.paper).value_or(Paper::A4), *signer,
                       issue.fileSha256);
    if (!made)
        return lacks(made.error().text());
    if (!*made)
        return lacks("it cannot be made again byte for byte by this version or this key.");
    const QString name = QString("certificates/%1%2.pdf")
                             .arg(asFileName(certificate.number),
                                  issue.issue > 1 ? QString("-%1").arg(issue.issue) : QString());
    entry.insert("file", name);
    m_certificates << entry;
    return m_folder.bytes(name, FileKind::Pdf, (*made)->pdf);
}

} // namespace

Result<CircuitExport> exportCircuit(Records &records, const QString &circuit, const QString &folder,
                                    const Progress &progress)
{
    LOOPWRIGHT_TRY(followLimits(records));
    const ReadSnapshot snapshot(records.database().connection());
    LOOPWRIGHT_TRY(snapshot.result());
    LOOPWRIGHT_ASSIGN(const auto orders, OrderStore(records.database()).ofCircuit(circuit));
    if (orders.empty())
        return failure(ErrorCode::NotFound,
                       QString("There is no circuit \"%1\".").arg(circuit.left(60)));
    LOOPWRIGHT_ASSIGN(auto guard, guardOfAllOffices(records));
    LOOPWRIGHT_ASSIGN(auto made, ExportFolder::open(folder, {std::move(guard), false, false}));
    CircuitFile file(records, made, progress);
    LOOPWRIGHT_TRY(file.all(circuit, orders));
    file.result.paths = made.paths();
    file.result.orders = int(orders.size());
    return file.result;
}

} // namespace loopwright
