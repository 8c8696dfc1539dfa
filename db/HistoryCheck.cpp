#include "db/HistoryCheck.h"

#include "core/base/Json.h"
#include "core/history/Event.h"
#include "db/EventStore.h"
#include "db/ForeignStore.h"
#include "db/LogWalk.h"
#include "db/MetaStore.h"
#include "db/PageCheck.h"
#include "db/RowSeals.h"
#include "db/SealedRows.h"
#include "db/SqlCatalog.h"
#include "db/Statement.h"

#include <utility>

namespace loopwright {

namespace {

QString wordFor(const QByteArray &table)
{
    return table == "service_order" ? "order" : QString::fromUtf8(table);
}

QString sentenceFor(SealedRows::Fault::What what)
{
    switch (what) {
    case SealedRows::Fault::Changed:
        return "was changed after it was recorded";
    case SealedRows::Fault::Unsealed:
        return "is in the records, but no event tells of it";
    case SealedRows::Fault::Gone:
        break;
    }
    return "is gone from the records";
}

class Check
{
public:
    Check(const Database &database, const std::vector<LogHead> &heads)
        : m_database(database)
        , m_heads(heads)
        , m_rows(database.connection())
    {
    }

    Result<HistoryFindings> run(const CheckProgress &progress)
    {
        PageCheck pages(m_database);
        LOOPWRIGHT_TRY(told("schema", checkSchema()));
        LogWalk walk(m_database.connection(), m_rows, [this](const HistoryFault &fault) {
            add(fault.subject, fault.event, fault.what);
        });
        LOOPWRIGHT_TRY(told("log", walk.run(progress)));
        m_findings.events = walk.events();
        LOOPWRIGHT_TRY(told("log", checkStation()));
        for (const QByteArray &table : sealedTables())
            if (table != "meta" || walk.events() > 0) // the first event seals what it is made with
                LOOPWRIGHT_TRY(told("database", compareRows(table)));
        LOOPWRIGHT_TRY(told("stations", ForeignStore(m_database).check([this](const auto &fault) {
            add(fault.subject, fault.event, fault.what);
        })));
        for (const LogHead &head : m_heads)
            LOOPWRIGHT_TRY(told("log", compareHead(head)));
        const auto references = m_database.brokenReferences();
        LOOPWRIGHT_TRY(tellFirst(pages.take(), references));
        return m_findings;
    }

private:
    void add(const QString &subject, qint64 event, const QString &what)
    {
        if (m_findings.faults.size() < HistoryFindings::maxFaults)
            m_findings.faults.push_back({subject, event, what});
    }
    /// What cannot be read is a finding, and the other questions are asked all the same.
    Result<void> told(const QString &subject, const Result<void> &done)
    {
        if (done || done.error().code == ErrorCode::Refused)
            return done;
        add(subject, 0, "cannot be read: " + done.error().message.simplified());
        return {};
    }

    Result<void> tellFirst(const Result<QStringList> &pages, const Result<QStringList> &references);
    Result<void> checkSchema();
    Result<void> checkStation();
    std::vector<QByteArray> sealedTables() const;
    Result<void> compareRows(const QByteArray &table);
    Result<void> addRow(const SealedRows::Fault &fault);
    Result<QString> nameOf(const QByteArray &table, qint64 id) const;
    Result<QString> nameOfGone(const SealedRows::Fault &fault, const Event &by,
                               const QByteArray &sealed) const;
    Result<void> compareHead(const LogHead &head);

    const Database &m_database;
    const std::vector<LogHead> &m_heads;
    SealedRows m_rows;
    HistoryFindings m_findings;
};

/// Damage of the pages may be what else was found comes from: it stands before that.
Result<void> Check::tellFirst(const Result<QStringList> &pages,
                              const Result<QStringList> &references)
{
    const auto others = std::exchange(m_findings.faults, {});
    const Result<QStringList> &damage = pages && references
                                            ? Result<QStringList>(*pages + *references)
                                        : pages ? references
                                                : pages;
    LOOPWRIGHT_TRY(told("database", damage ? Result<void>() : failure(damage.error())));
    for (const QString &each : damage.value_or(QStringList()))
        add("database", 0, each);
    for (const HistoryFault &fault : others)
        add(fault.subject, fault.event, fault.what);
    return {};
}

Result<void> Check::checkSchema()
{
    LOOPWRIGHT_ASSIGN(const auto faults, m_database.connection().schemaFaults());
    for (const QString &fault : faults)
        add("schema", 0, fault);
    return {};
}

Result<void> Check::checkStation()
{
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(m_database).logHead());
    if (head.position == 0)
        return {};
    LOOPWRIGHT_ASSIGN(const auto last, EventStore(m_database).headAt(head.position));
    const QString recorded = last ? last->station : QString();
    if (recorded != head.station)
        add("log", 0,
            QString("the records call themselves station %1, and the log ends with station %2")
                .arg(head.station, recorded));
    return {};
}

/// By what the program knows, not by what the file says that it has.
std::vector<QByteArray> Check::sealedTables() const
{
    static const std::string prefix = "history.name_";
    std::vector<QByteArray> tables;
    for (const std::string &label : SqlCatalog::embedded().statementLabels())
        if (label.starts_with(prefix))
            tables.push_back(QByteArray::fromStdString(label.substr(prefix.size())));
    return tables;
}

Result<void> Check::compareRows(const QByteArray &table)
{
    LOOPWRIGHT_ASSIGN(const auto faults, m_rows.compare(table, HistoryFindings::maxFaults));
    for (const SealedRows::Fault &fault : faults)
        LOOPWRIGHT_TRY(addRow(fault));
    return {};
}

Result<void> Check::addRow(const SealedRows::Fault &fault)
{
    Statement statement(m_database, "history.sealed_by");
    statement.bind("log_position", fault.position);
    Event by;
    QByteArray sealed;
    const auto found = firstRow(statement, [&](const Statement &row) {
        by.subject = row.text("subject");
        by.sequence = row.integer("sequence");
        by.detail = row.json("detail");
        sealed = row.bytes("sealed");
        return true;
    });
    if (!found)
        return failure(found.error());
    LOOPWRIGHT_ASSIGN(const auto name, fault.what == SealedRows::Fault::Gone
                                           ? nameOfGone(fault, by, sealed)
                                           : nameOf(fault.table, fault.id));
    add(by.subject, by.sequence,
        QString("%1 %2 %3")
            .arg(wordFor(fault.table), name.isEmpty() ? QString("row %1").arg(fault.id) : name,
                 sentenceFor(fault.what)));
    return {};
}

Result<QString> Check::nameOf(const QByteArray &table, qint64 id) const
{
    Statement statement(m_database, "history.name_" + table.toStdString());
    statement.bind("id", id);
    const auto name = firstRow(statement, [](const Statement &row) { return row.text("name"); });
    if (!name)
        return failure(name.error());
    return name->value_or(QString());
}

/// The event names what it sealed; of these, the one that is not called by another of its rows.
Result<QString> Check::nameOfGone(const SealedRows::Fault &fault, const Event &by,
                                  const QByteArray &sealed) const
{
    QStringList names;
    for (const Seal &seal : by.seals())
        if (seal.row == wordFor(fault.table))
            names << seal.id;
    for (const QByteArray &line : sealed.split('\n')) {
        const QList<QByteArray> parts = line.split(' ');
        if (parts.front() != fault.table || parts.size() < 2)
            continue;
        LOOPWRIGHT_ASSIGN(const auto name, nameOf(fault.table, parts[1].toLongLong()));
        names.removeAll(name);
    }
    return names.join(" or ");
}

Result<void> Check::compareHead(const LogHead &head)
{
    if (head.position == 0)
        return {};
    LOOPWRIGHT_ASSIGN(const auto found, EventStore(m_database).headAt(head.position));
    const QString told = QString("event %1 of the log of %2").arg(head.position).arg(head.station);
    if (!found)
        add("log", 0,
            QString("%1 was recorded, and is not in it: the log is shorter now").arg(told));
    else if (found->station != head.station || found->digest != head.digest)
        add("log", 0, QString("%1 was another than the one that stands there now").arg(told));
    else if (found->at.msUtc != head.at.msUtc)
        add("log", 0,
            QString("%1 was recorded at %2, and not at %3")
                .arg(told, found->at.storedText(), head.at.storedText()));
    return {};
}

} // namespace

Result<HistoryFindings> checkHistory(const Database &database, const CheckProgress &progress,
                                     const std::vector<LogHead> &heads)
{
    LOOPWRIGHT_TRY(database.connection().forgetPages());
    const ReadSnapshot snapshot(database.connection());
    LOOPWRIGHT_TRY(snapshot.result());
    return Check(database, heads).run(progress);
}

} // namespace loopwright
