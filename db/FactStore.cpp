#include "db/FactStore.h"

#include "core/order/Claims.h"
#include "db/OrderStore.h"
#include "db/Statement.h"

namespace loopwright {

namespace {

Fact readStoredFact(const Statement &row)
{
    const auto fact = Fact::fromJson(row.json("content"), "fact " + row.text("uuid"));
    if (!fact)
        row.refuse("content", fact.error().text());
    return fact.value_or(Fact());
}

/// In the form in which bindMoment writes; a day alone sorts before each moment of the day.
QString dayText(QDate day)
{
    return day.toString(Qt::ISODate);
}

void bindDays(Statement &statement, const FactStore::Span &days)
{
    statement.bind("from_utc", dayText(days.first.addDays(-1)))
        .bind("before_utc", dayText(days.last.addDays(2)));
}

void bindPlaceAndDays(Statement &statement, const ServiceOrder &order, const FactStore::Span &days)
{
    bindDays(statement, days);
    statement.bind("premises_key", premisesKey(order.premises)).bind("order_number", order.number);
}

} // namespace

Result<std::optional<Fact>> FactStore::find(const QString &id) const
{
    Statement statement(m_database, "fact.find");
    statement.bind("uuid", id);
    return firstRow(statement, readStoredFact);
}

Result<std::optional<Fact>> FactStore::voidOf(const QString &id) const
{
    Statement statement(m_database, "fact.void_of");
    statement.bind("uuid", id);
    return firstRow(statement, readStoredFact);
}

Result<std::vector<Fact>> FactStore::ofOrder(const QString &order) const
{
    Statement statement(m_database, "fact.of_order");
    statement.bind("order_number", order);
    return rows(statement, readStoredFact);
}

Result<std::vector<Fact>> FactStore::visitsAtPremises(const ServiceOrder &order,
                                                      const QString &installer,
                                                      const Span &days) const
{
    Statement statement(m_database, "fact.visits_at_premises");
    bindPlaceAndDays(statement, order, days);
    statement.bind("installer", installer);
    return rows(statement, readStoredFact);
}

Result<std::vector<Fact>> FactStore::visitsAtPremises(const ServiceOrder &order,
                                                      const Span &days) const
{
    Statement statement(m_database, "fact.visits_of_all_at_premises");
    bindPlaceAndDays(statement, order, days);
    return rows(statement, readStoredFact);
}

Result<std::vector<Fact>> FactStore::visitsOf(const QString &installer, const Span &days) const
{
    Statement statement(m_database, "fact.visits_of_installer");
    bindDays(statement, days);
    statement.bind("installer", installer);
    return rows(statement, readStoredFact);
}

Result<QStringList> FactStore::otherOrdersAtPremises(const ServiceOrder &order,
                                                     const Span &days) const
{
    Statement statement(m_database, "fact.other_orders_at_premises");
    bindPlaceAndDays(statement, order, days);
    return texts(statement, "order_number");
}

Result<QStringList> FactStore::openOrdersUsing(const QString &instrument) const
{
    Statement statement(m_database, "fact.open_orders_using");
    statement.bind("instrument", instrument);
    return texts(statement, "order_number");
}

Result<void>
FactStore::eachMakeup(const QString &office,
                      const std::function<Result<void>(const StoredMakeup &)> &visit) const
{
    struct Row
    {
        StoredMakeup makeup;
        bool isOfPair; ///< of the one that the order holds, as far as the fact says
    };
    Statement statement(m_database, "fact.makeups_of_office");
    statement.bind("office", office);
    std::optional<StoredMakeup> newest;
    for (;;) {
        auto row = firstRow(statement, [](const Statement &each) {
            const QString measured = each.text("measured_pair");
            return Row{{each.text("circuit_number"), each.text("order_number"), each.text("pair"),
                        each.word<LineKind>("kind"), each.bytes("content")},
                       measured.isEmpty() ||
                           pairIdentity(measured) == pairIdentity(each.text("held_pair"))};
        });
        if (!row)
            return failure(row.error());
        if (newest && (!*row || (*row)->makeup.order != newest->order)) {
            LOOPWRIGHT_TRY(visit(*newest));
            newest.reset();
        }
        if (!*row)
            return {};
        if ((*row)->isOfPair)
            newest = std::move((*row)->makeup);
    }
}

Result<qint64> FactStore::countPairs(const QString &office) const
{
    Statement statement(m_database, "fact.pairs_of_office");
    statement.bind("office", office);
    LOOPWRIGHT_ASSIGN(const auto pairs, firstRow(statement, [](const Statement &row) {
                          return row.integer("pairs");
                      }));
    return pairs.value_or(0);
}

Result<std::optional<QString>> FactStore::digestOf(const QString &id) const
{
    Statement known(m_database, "fact.digest");
    known.bind("uuid", id);
    return firstRow(known, [](const Statement &row) { return row.text("digest"); });
}

Result<bool> FactStore::add(Transaction &transaction, const Fact &fact)
{
    LOOPWRIGHT_ASSIGN(const auto subject, OrderStore(transaction.database()).subjectOf(fact.order));
    const QByteArray content = canonicalJson(fact.toJson());
    const QString digest = sha256Hex(content);
    LOOPWRIGHT_ASSIGN(const auto before, FactStore(transaction.database()).digestOf(fact.id));
    if (before && *before != digest)
        return failure(ErrorCode::BadInput, "is the id of another fact", fact.id);
    if (before)
        return false;
    const auto *voiding = fact.as<VoidFact>();
    Statement add(transaction, "fact.add");
    add.bind("uuid", fact.id)
        .bind("order_number", fact.order)
        .bind("kind", toText(fact.kind()))
        .bindMoment("at", fact.at)
        .bind("installer", fact.installer)
        .bind("instrument", fact.instrument)
        .bindOrNull("voids", voiding ? voiding->fact : QString())
        .bindBytes("content", content)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(subject, {"fact", fact.id, digest});
    return true;
}

} // namespace loopwright
