#pragma once
// What two stations say otherwise of one order, until a person decides; and which facts count for
// nothing meanwhile, or since. Nothing that was measured is ever dropped for it, and an open hazard
// of either side stands.

#include "core/acceptance/Fact.h"

#include <QHash>

namespace loopwright {

enum class ConflictCode
{
    OrderChanged,          ///< a value that evidence is held against differs from what the van had
    OrderClosed,           ///< it was completed or cancelled meanwhile
    TwoStations,           ///< two worked on it, neither knowing of the other
    ValueInUse,            ///< a number, SPID or pair of the van's order is another circuit's
    FactDiffers,           ///< one id, two contents; they may be of two orders
    CertificateSuperseded, ///< two stations issued one
    ClockAhead,            ///< facts from more than a day ahead
    CertificateTwice,      ///< one number, two certificates: two copies of a station's records
    Forked,                ///< a station tells two histories: likewise, or an older copy
};
template<>
struct EnumCodes<ConflictCode>
{
    static constexpr std::pair<ConflictCode, const char *> table[] = {
        {ConflictCode::OrderChanged, "order_changed"},
        {ConflictCode::OrderClosed, "order_closed"},
        {ConflictCode::TwoStations, "two_stations"},
        {ConflictCode::ValueInUse, "value_in_use"},
        {ConflictCode::FactDiffers, "fact_differs"},
        {ConflictCode::CertificateSuperseded, "certificate_superseded"},
        {ConflictCode::ClockAhead, "clock_ahead"},
        {ConflictCode::CertificateTwice, "certificate_twice"},
        {ConflictCode::Forked, "forked"}};
};

// Sides that are no station's tag.
inline const QString officeSide = QStringLiteral("office");
inline const QString bothSides = QStringLiteral("both");

struct Settlement
{
    QString side; ///< officeSide, bothSides, or the tag of a station
    QString because, by;
    Moment at;
    Moment first; ///< when it was settled first: what came later was in no conflict

    bool operator==(const Settlement &) const = default;
};

struct StationConflict
{
    QString id;
    QString order;
    ConflictCode code = ConflictCode::OrderChanged;
    QString station; ///< tag of the one that differs from here; empty where several may
    /// Of OrderChanged "columns": {column: [the van's, the office's]} and "what": ChangedWhat; of
    /// FactDiffers "fact" and "told": {side: {"content","pair"}}; of CertificateSuperseded
    /// "stations", those that issued one; of ValueInUse "values"; of CertificateTwice "number",
    /// "digests", "orders"; of Forked "event", of the station's log or of the circuit's "chain".
    /// Nothing in it says who came first.
    QJsonObject content;
    Moment since;
    std::optional<Settlement> settled;
    bool stands = true; ///< else it holds no longer, or one with more in it took its place

    bool isOpen() const { return stands && !settled; }
    bool isSettledFor(const QString &side) const { return settled && settled->side == side; }
    /// Of FactDiffers: the id under which it was told, the content as that side told it, and the
    /// sides that told one.
    QString fact() const { return content.value("fact").toString(); }
    /// Whether it is about contents of that id.
    bool isAbout(const QString &id) const
    {
        return code == ConflictCode::FactDiffers && fact() == id;
    }
    QByteArray toldBy(const QString &side) const;
    QStringList tellers() const;
    /// The same thing has the same id, whatever else was delivered before.
    static QString idOf(ConflictCode code, const QString &order, const QString &station,
                        const QJsonObject &content);
};

/// The id under which a content of FactDiffers counts if somebody settles it so: the same one
/// wherever that is done, and whoever came first.
QString idOfToldContent(const QByteArray &content);
/// Of the void by which what stands under the id of FactDiffers is struck out as it is settled.
QString idOfStrikeOut(const StationConflict &conflict);
/// Of the void of such a content that says what `voided` says of the id under which it was told.
QString idOfFollowing(const QString &voided, const QString &content);
/// By each such id of the conflicts that stand: the id under which it was told.
QHash<QString, QString> toldUnder(const std::vector<StationConflict> &conflicts);

/// A station that tells a fact which was not recorded here.
struct FactOrigin
{
    QString fact;
    QString station, name; ///< tag, and what it is called here
    QString pair;          ///< that the order had there
    bool ahead = false;    ///< of the clock here when it came, by more than a day
};

/// A fact that counts for nothing as stations disagree.
struct SetAside
{
    QString fact;
    ConflictCode code = ConflictCode::OrderChanged;
    bool settled = false; ///< against it; else nobody has decided yet

    bool operator==(const SetAside &) const = default;
    Text sentence() const;
};
QJsonArray listOf(const std::vector<SetAside> &all);
std::vector<SetAside> readSetAside(JsonReader &reader, const QString &key);
/// `tellers`: of each fact all that tell it.
std::vector<SetAside> setAside(const std::vector<Fact> &facts,
                               const std::vector<FactOrigin> &tellers,
                               const std::vector<StationConflict> &conflicts);

/// What each may be settled for: officeSide, stations by tag, bothSides. `facts`: of the order.
QStringList sidesOf(const StationConflict &conflict, const std::vector<Fact> &facts,
                    const std::vector<FactOrigin> &tellers);
/// The evidence that one of the sides recorded.
std::vector<const Fact *> workOf(const QString &side, const std::vector<Fact> &facts,
                                 const std::vector<FactOrigin> &tellers);
/// Whether it may be settled anew: a settlement that changed the order or an entry stands.
bool isSettledLoosely(const StationConflict &conflict);

} // namespace loopwright
