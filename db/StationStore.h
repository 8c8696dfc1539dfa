#pragma once
// The stations that work is exchanged with, the bundles that went and came, and the orders that are
// out.

#include "core/acceptance/BoardRow.h"
#include "core/history/Bundle.h"
#include "core/order/ServiceOrder.h"
#include "db/Transaction.h"

namespace loopwright {

struct PeerStation
{
    QString name;
    QString tag;
    bool lost = false; ///< what it signs is believed no longer

    bool operator==(const PeerStation &) const = default;
};

struct KnownBundle
{
    QString id;
    BundleKind kind = BundleKind::Out;
    QString station;    ///< tag of the van
    QJsonObject chains; ///< of one that is brought: subject to the number of events that it tells
};

/// An order that a station took along; its newest taking.
struct CarriedOrder
{
    QString order;
    QString station, name; ///< tag, and what it is called here
    QString bundle;
    QByteArray content; ///< the order as it went
    Moment since;
    bool back = false;

    /// With a van: in the van itself, which knows no van, orders are at hand.
    bool isOut() const { return !back && !name.isEmpty(); }
    const QString &shownName() const { return name.isEmpty() ? station : name; }
};

/// What a station says of the values of an order.
struct ToldOrder
{
    QString station;       ///< tag; "office" for what the office itself says
    OrderFields base;      ///< as the station took it along, or as the office has it by itself
    OrderFields now;       ///< as the station told it last; of the office what came of all
    bool evidence = false; ///< it brought some
    QStringList known;     ///< ids of the facts that it told, or had from others
    qint64 events = 0;     ///< of its chain of the circuit, told with this order
};

class StationStore
{
public:
    explicit StationStore(const Database &database)
        : m_database(database)
    {
    }

    /// With the tag that is in use.
    Result<std::optional<PeerStation>> find(const QString &name) const;
    Result<std::optional<PeerStation>> ofTag(const QString &tag) const;
    Result<QString> logOf(const QString &tag) const; ///< as far as it told it (ToldLog)
    Result<std::vector<PeerStation>> all() const;    ///< by name, older tags first
    Result<std::optional<KnownBundle>> bundle(const QString &id) const;
    Result<QStringList> bundles(BundleKind kind) const; ///< oldest first
    Result<std::vector<CarriedOrder>> carried() const;
    Result<std::vector<CarriedOrder>> carried(const QString &order) const;
    Result<std::vector<ToldOrder>> told(const QString &order) const; ///< by tag, the office last
    /// Of those that are not back.
    Result<std::vector<OutAt>> outAt(const QString &order) const;

    // Of the register: the event of the transaction says what was done.
    static Result<void> add(Transaction &transaction, const PeerStation &station);
    static Result<void> lose(Transaction &transaction, const QString &name);
    static Result<void> putLog(Transaction &transaction, const QString &tag, const QString &log);
    /// Nothing if it is known already.
    static Result<void> addBundle(Transaction &transaction, const KnownBundle &bundle);
    /// The order went along, or is out again with a bundle that brought it home before.
    static Result<void> carry(Transaction &transaction, const CarriedOrder &order);
    static Result<void> tell(Transaction &transaction, const QString &order, const ToldOrder &told);
    /// Whether it was out.
    static Result<bool> bringHome(Transaction &transaction, const QString &order,
                                  const QString &station);

private:
    const Database &m_database;
};

} // namespace loopwright
