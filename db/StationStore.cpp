#include "db/StationStore.h"

#include "db/Statement.h"

namespace loopwright {

namespace {

PeerStation readStation(const Statement &row)
{
    return {row.text("station"), row.text("tag"), row.boolean("lost")};
}

CarriedOrder readCarried(const Statement &row)
{
    return {row.text("order_number"), row.text("station"), row.text("name"),   row.text("bundle"),
            row.bytes("content"),     row.moment("at"),    row.boolean("back")};
}

} // namespace

Result<std::optional<PeerStation>> StationStore::find(const QString &name) const
{
    Statement statement(m_database, "station.newest");
    statement.bind("station", name);
    return firstRow(statement, readStation);
}

Result<std::optional<PeerStation>> StationStore::ofTag(const QString &tag) const
{
    Statement statement(m_database, "station.of_tag");
    statement.bind("tag", tag);
    return firstRow(statement, readStation);
}

Result<QString> StationStore::logOf(const QString &tag) const
{
    Statement statement(m_database, "station.log");
    statement.bind("tag", tag);
    LOOPWRIGHT_ASSIGN(const auto found,
                      firstRow(statement, [](const Statement &row) { return row.text("log"); }));
    return found.value_or(QString());
}

Result<void> StationStore::putLog(Transaction &transaction, const QString &tag, const QString &log)
{
    Statement put(transaction, "station.put_log");
    put.bind("tag", tag).bind("log", log);
    LOOPWRIGHT_TRY(put.write());
    return {};
}

Result<std::vector<PeerStation>> StationStore::all() const
{
    Statement statement(m_database, "station.all");
    return rows(statement, readStation);
}

Result<std::optional<KnownBundle>> StationStore::bundle(const QString &id) const
{
    Statement statement(m_database, "station.bundle");
    statement.bind("bundle", id);
    return firstRow(statement, [](const Statement &row) {
        return KnownBundle{row.text("bundle"), row.word<BundleKind>("kind"), row.text("station"),
                           row.json("chains")};
    });
}

Result<QStringList> StationStore::bundles(BundleKind kind) const
{
    Statement statement(m_database, "station.bundles_of_kind");
    statement.bind("kind", kind);
    return texts(statement, "bundle");
}

Result<std::vector<CarriedOrder>> StationStore::carried() const
{
    Statement statement(m_database, "station.carried");
    return rows(statement, readCarried);
}

Result<std::vector<CarriedOrder>> StationStore::carried(const QString &order) const
{
    Statement statement(m_database, "station.carried_of_order");
    statement.bind("order_number", order);
    return rows(statement, readCarried);
}

Result<std::vector<OutAt>> StationStore::outAt(const QString &order) const
{
    LOOPWRIGHT_ASSIGN(const auto taken, carried(order));
    std::vector<OutAt> out;
    for (const CarriedOrder &each : taken)
        if (each.isOut())
            out.push_back({each.shownName(), each.since});
    return out;
}

Result<void> StationStore::add(Transaction &transaction, const PeerStation &station)
{
    Statement add(transaction, "station.add");
    add.bind("station", station.name).bind("tag", station.tag);
    LOOPWRIGHT_TRY(add.write());
    return {};
}

Result<void> StationStore::lose(Transaction &transaction, const QString &name)
{
    Statement lose(transaction, "station.lose");
    lose.bind("station", name);
    LOOPWRIGHT_TRY(lose.write());
    return {};
}

Result<void> StationStore::addBundle(Transaction &transaction, const KnownBundle &bundle)
{
    Statement add(transaction, "station.add_bundle");
    add.bind("bundle", bundle.id)
        .bind("kind", bundle.kind)
        .bind("station", bundle.station)
        .bindJson("chains", bundle.chains);
    LOOPWRIGHT_TRY(add.write());
    return {};
}

Result<void> StationStore::carry(Transaction &transaction, const CarriedOrder &order)
{
    Statement carry(transaction, "station.carry");
    carry.bind("order_number", order.order)
        .bind("station", order.station)
        .bind("bundle", order.bundle)
        .bindBytes("content", order.content)
        .bindMoment("at", order.since);
    LOOPWRIGHT_TRY(carry.write());
    return {};
}

Result<std::vector<ToldOrder>> StationStore::told(const QString &order) const
{
    Statement statement(m_database, "station.told");
    statement.bind("order_number", order);
    return rows(statement, [](const Statement &row) {
        return ToldOrder{row.text("station"),
                         textsIn(row.json("base")),
                         textsIn(row.json("content")),
                         row.boolean("evidence"),
                         row.text("known").split(u' ', Qt::SkipEmptyParts),
                         row.integer("events")};
    });
}

Result<void> StationStore::tell(Transaction &transaction, const QString &order,
                                const ToldOrder &told)
{
    Statement tell(transaction, "station.tell");
    tell.bind("order_number", order)
        .bind("station", told.station)
        .bindJson("base", objectOf(told.base))
        .bindJson("content", objectOf(told.now))
        .bind("evidence", told.evidence)
        .bind("known", told.known.join(u' '))
        .bind("events", told.events);
    LOOPWRIGHT_TRY(tell.write());
    return {};
}

Result<bool> StationStore::bringHome(Transaction &transaction, const QString &order,
                                     const QString &station)
{
    Statement home(transaction, "station.bring_home");
    home.bind("order_number", order).bind("station", station);
    LOOPWRIGHT_ASSIGN(const qint64 changed, home.run());
    return changed > 0;
}

} // namespace loopwright
