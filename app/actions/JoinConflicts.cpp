#include "app/actions/JoinConflicts.h"

#include "app/actions/BoardRefresh.h"
#include "app/actions/JoinFacts.h"
#include "app/actions/OrderIntake.h"
#include "app/actions/WorkedApart.h"
#include "core/certificate/CertificateNumber.h"
#include "db/AssignmentStore.h"
#include "db/CertificateStore.h"
#include "db/ConflictStore.h"

#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

class ConflictDrawing
{
public:
    ConflictDrawing(Records &records, Transaction &transaction, const Drawing &drawing,
                    AddedParts &parts)
        : m_records(records)
        , m_transaction(transaction)
        , m_drawing(drawing)
        , m_entry(drawing.joining.entry)
        , m_tag(drawing.joining.van.tag)
        , m_parts(parts)
    {
    }

    Result<void> run();

private:
    Result<void> orderChanged();
    Result<std::optional<QJsonObject>> differences(const OrderFields &there) const;
    Result<void> valueInUse();
    Result<QString> whoseValue(const std::vector<Conflict> &held) const;
    Result<void> certificates();
    Result<void> certificatesTwice();
    Result<QString> add(ConflictCode code, const QString &station, const QJsonObject &content = {})
    {
        LOOPWRIGHT_ASSIGN(const auto drawn, drawConflict(m_records, m_transaction, m_entry.number,
                                                         code, station, content));
        return drawn.id;
    }
    Result<void> withdraw(ConflictCode code, const QString &station, const QString &but = {});
    const Database &database() const { return m_transaction.database(); }

    Records &m_records;
    Transaction &m_transaction;
    const Drawing &m_drawing;
    const BundledOrder &m_entry;
    const QString &m_tag;
    AddedParts &m_parts;
    StoredOrder m_now;
};

/// All of the code and station, or, where `but` takes their place, the settled ones too.
Result<void> ConflictDrawing::withdraw(ConflictCode code, const QString &station,
                                       const QString &but)
{
    LOOPWRIGHT_ASSIGN(const auto all, ConflictStore(database()).ofOrder(m_entry.number));
    for (const StationConflict &each : all)
        if (each.code == code && each.station == station && each.id != but && each.stands &&
            (each.isOpen() || !but.isEmpty()))
            LOOPWRIGHT_TRY(ConflictStore::withdraw(m_transaction, each.id));
    return {};
}

/// Columns in which evidence is held against other values than the order has now.
Result<std::optional<QJsonObject>> ConflictDrawing::differences(const OrderFields &there) const
{
    const OrderFields here = m_now.order.fields();
    if (there == here)
        return std::optional<QJsonObject>();
    LOOPWRIGHT_ASSIGN(const auto now, readFields(m_records, here));
    LOOPWRIGHT_ASSIGN(const auto van, readFields(m_records, there));
    QStringList columns = there.keys() + here.keys();
    columns.removeDuplicates();
    QJsonObject differing;
    for (const QString &column : std::as_const(columns)) {
        if (there.value(column) == here.value(column))
            continue;
        OrderFields one = here;
        one.insert(column, there.value(column));
        LOOPWRIGHT_ASSIGN(const auto other, readFields(m_records, one));
        if (!whatChanged(other.order, now.order).empty())
            differing.insert(column, QJsonArray{there.value(column), here.value(column)});
    }
    if (differing.isEmpty())
        return std::optional<QJsonObject>();
    QJsonArray what;
    for (const ChangedWhat each : whatChanged(van.order, now.order))
        what << toText(each);
    return std::optional(QJsonObject{{"columns", differing}, {"what", what}});
}

/// Whether somebody decided against these values of the station; that the order has another value
/// since is no new question.
bool isDecided(const StationConflict &before, const QString &station, const QJsonObject &content)
{
    if (before.code != ConflictCode::OrderChanged || before.station != station || !before.stands ||
        !before.isSettledFor(officeSide))
        return false;
    const QJsonObject known = before.content.value("columns").toObject();
    const QJsonObject columns = content.value("columns").toObject();
    const QStringList names = columns.keys();
    return std::ranges::all_of(names, [&](const QString &column) {
        return known.contains(column) &&
               known.value(column).toArray().at(0) == columns.value(column).toArray().at(0);
    });
}

/// Of every station that told of the order: what one brings may change what the order says.
Result<void> ConflictDrawing::orderChanged()
{
    LOOPWRIGHT_ASSIGN(const auto told, StationStore(database()).told(m_entry.number));
    LOOPWRIGHT_ASSIGN(const auto known, ConflictStore(database()).ofOrder(m_entry.number));
    for (const ToldOrder &each : told) {
        if (each.station == officeSide || !each.evidence)
            continue;
        LOOPWRIGHT_ASSIGN(const auto content, differences(each.now));
        const auto decided = [&](const StationConflict &before) {
            return content && isDecided(before, each.station, *content);
        };
        if (std::ranges::any_of(known, decided))
            continue;
        QString id;
        if (content) {
            LOOPWRIGHT_ASSIGN(id, add(ConflictCode::OrderChanged, each.station, *content));
        }
        LOOPWRIGHT_TRY(withdraw(ConflictCode::OrderChanged, each.station, id));
    }
    return {};
}

/// The first station by tag whose word one of these columns of the order is; empty if none is.
QString whoGave(const QStringList &columns, const std::vector<ToldOrder> &told)
{
    const auto office = std::ranges::find(told, officeSide, &ToldOrder::station);
    for (const ToldOrder &each : told)
        for (const QString &column : columns)
            if (each.station != officeSide && each.now.value(column) == office->now.value(column) &&
                each.now.value(column) != office->base.value(column))
                return each.station;
    return {};
}

/// Who gave the values that are held; else who gave another, such as the office that they are
/// counted in. Empty if all are the office's.
Result<QString> ConflictDrawing::whoseValue(const std::vector<Conflict> &held) const
{
    if (!m_drawing.before)
        return m_tag;
    LOOPWRIGHT_ASSIGN(const auto told, StationStore(database()).told(m_entry.number));
    QStringList columns;
    for (const Conflict &each : held)
        columns << each.field;
    const QString station = whoGave(columns, told);
    return station.isEmpty() ? whoGave(m_now.order.fields().keys(), told) : station;
}

Result<void> ConflictDrawing::valueInUse()
{
    LOOPWRIGHT_ASSIGN(const auto held, AssignmentStore(database()).conflictsOf(m_now.order));
    LOOPWRIGHT_ASSIGN(const auto station,
                      held.empty() ? Result<QString>(QString()) : whoseValue(held));
    QString drawn;
    if (!station.isEmpty()) {
        QJsonArray values;
        for (const Conflict &each : held)
            values << each.toJson();
        LOOPWRIGHT_ASSIGN(drawn, add(ConflictCode::ValueInUse, station, {{"values", values}}));
    }
    if (!held.empty() && drawn.isEmpty())
        return {};
    LOOPWRIGHT_ASSIGN(const auto all, ConflictStore(database()).ofOrder(m_entry.number));
    for (const StationConflict &each : all)
        if (each.code == ConflictCode::ValueInUse && each.isOpen() && each.id != drawn)
            LOOPWRIGHT_TRY(ConflictStore::withdraw(m_transaction, each.id));
    return {};
}

Result<void> ConflictDrawing::certificates()
{
    if (m_parts.certificates.isEmpty())
        return {};
    LOOPWRIGHT_ASSIGN(const auto all, CertificateStore(database()).ofOrder(m_entry.number));
    QStringList stations;
    for (const StoredCertificate &each : all) {
        const auto number = CertificateNumber::parse(each.number);
        const QString tag = number ? number->station : QString();
        LOOPWRIGHT_ASSIGN(const auto van, StationStore(database()).ofTag(tag));
        stations << (van ? tag : officeSide);
    }
    stations.removeDuplicates();
    stations.sort();
    if (stations.size() < 2)
        return {};
    LOOPWRIGHT_ASSIGN(const auto drawn, add(ConflictCode::CertificateSuperseded, {},
                                            {{"stations", QJsonArray::fromStringList(stations)}}));
    return withdraw(ConflictCode::CertificateSuperseded, {}, drawn);
}

/// On both orders: the one that has the certificate, and the one whose certificate stays out.
Result<void> ConflictDrawing::certificatesTwice()
{
    for (const CertificateTwice &each : m_parts.twice) {
        const QJsonObject content = each.toJson();
        const QStringList orders{each.order, m_entry.number};
        for (const QString &order : orders) {
            LOOPWRIGHT_ASSIGN(const auto known,
                              ConflictStore(database())
                                  .find(StationConflict::idOf(ConflictCode::CertificateTwice, order,
                                                              m_tag, content)));
            LOOPWRIGHT_ASSIGN(const auto drawn,
                              drawConflict(m_records, m_transaction, order,
                                           ConflictCode::CertificateTwice, m_tag, content));
            if (!known && order != m_entry.number)
                m_parts.elsewhere.push_back(drawn);
        }
    }
    return {};
}

Result<void> ConflictDrawing::run()
{
    LOOPWRIGHT_ASSIGN(m_now, OrderStore(database()).get(m_entry.number));
    LOOPWRIGHT_TRY(orderChanged());
    const auto isNew = [this](const Fact &fact) { return !m_drawing.known.contains(fact.id); };
    if (m_drawing.before && m_drawing.before->status != OrderStatus::Open &&
        std::ranges::any_of(m_drawing.facts, isNew))
        LOOPWRIGHT_TRY(add(ConflictCode::OrderClosed, m_tag));
    LOOPWRIGHT_TRY(valueInUse());
    LOOPWRIGHT_TRY(joinFacts(m_records, m_transaction, m_drawing, m_parts));
    LOOPWRIGHT_ASSIGN(const Apart apart, workedApart(database(), m_drawing, m_parts));
    if (apart == Apart::Yes)
        LOOPWRIGHT_TRY(add(ConflictCode::TwoStations, {}));
    else if (apart == Apart::No)
        LOOPWRIGHT_TRY(withdraw(ConflictCode::TwoStations, {}));
    if (m_parts.ahead)
        LOOPWRIGHT_TRY(add(ConflictCode::ClockAhead, m_tag));
    LOOPWRIGHT_TRY(certificates());
    LOOPWRIGHT_TRY(certificatesTwice());
    QSet<QString> orders;
    for (const StationConflict &each : m_parts.elsewhere)
        orders.insert(each.order);
    for (const QString &order : std::as_const(orders))
        LOOPWRIGHT_TRY(refreshState(m_records, m_transaction, order));
    return {};
}

} // namespace

Result<void> drawConflicts(Records &records, Transaction &transaction, const Drawing &drawing,
                           AddedParts &parts)
{
    return ConflictDrawing(records, transaction, drawing, parts).run();
}

} // namespace loopwright
