#pragma once
// Bulk changes: the area code of an office is split, or its switch is converted, for all its lines
// at once. Seen beforehand line by line, done in one transaction, taken back as one while nothing
// was built on it.
//
// Changed are the orders that are open and the one by which each circuit works. What an open order
// has shown of its numbers is to be shown again, as if each had been changed by hand; an order that
// was completed keeps its acceptance, for it was completed with the numbers that it had (a
// certificate of it stands no longer: it names those).

#include "app/actions/OrderPapers.h"
#include "app/actions/Records.h"
#include "core/order/OfficeChange.h"

namespace loopwright {

struct BulkLine
{
    QString circuit, order;
    ValueChange value;

    void appendTo(QByteArray &json) const; ///< {"circuit","new","old","order","what"}
};
struct BulkKept
{
    QString circuit, order;
    ValueKept value;

    void appendTo(QByteArray &json) const; ///< {"because","circuit","old","order","what"}
};

struct BulkReport
{
    OfficeChange change;
    bool applied = false;
    QString id; ///< of the change that was made; else empty
    std::vector<BulkLine> changes;
    std::vector<BulkKept> cannot;
    qsizetype circuits = 0, orders = 0; ///< that are changed
    bool officeToo = false;             ///< the office itself gets the new variant
    /// Of the orders that are changed and have one: it stands no longer then.
    qsizetype certificates = 0;
    qsizetype out = 0; ///< of the orders that are changed: with vans, which will not know of it
    Text doubt;        ///< about the change as a whole
};

/// What would be done; changes nothing. Without `from` a conversion is of the office's own variant.
/// NotFound if there is no such office; BadInput as checkOfficeChange().
Result<BulkReport> previewBulk(Records &records, const OfficeChange &change,
                               const Progress &progress = {});
/// Does what can be done. Refused when it is stopped: then nothing was changed.
Result<BulkReport> applyBulk(Records &records, const OfficeChange &change,
                             const Progress &progress = {});

/// A bulk change that was made and stands.
struct BulkDone
{
    QString id;
    OfficeChange change;
    qint64 circuits = 0, orders = 0;
    QString by;
    Moment at;
    qint64 logPosition = 0, events = 0; ///< of its event in the register; those right before it
    QStringList freed;                  ///< held orders that it let go
    bool officeToo = false;

    QString sentence() const; ///< "Area code 217 of office NORTH to 447: 12 circuits"
    QJsonObject toJson() const;
};
Result<std::optional<BulkDone>> lastBulk(Records &records);

/// Takes the last bulk change back: what it changed stands as it stood. Refused, naming the
/// circuits, if anything was done on one of them since, a number of theirs is another's now, or an
/// order was taken in with a number of the new area code or the new variant of the office; if there
/// is none, or `id` is given and is another one. Nothing is changed then.
Result<BulkDone> undoBulk(Records &records, const QString &id = {}, const Progress &progress = {});

/// The settings cards of the customers whom the last bulk change concerns, one for each circuit, in
/// one sheet, or as a file each in a folder. Refused if there is none.
Result<OrderPapers> cardsOfLastBulk(Records &records, Paper paper, const QString &folder = {},
                                    const Progress &progress = {});

} // namespace loopwright
