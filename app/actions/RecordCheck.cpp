#include "app/actions/RecordCheck.h"

#include "db/FactStore.h"
#include "db/HazardStore.h"

#include <QUuid>

namespace loopwright {

namespace {

/// The moments that a fact states, each with its key.
QList<std::pair<QString, Moment>> momentsOf(const Fact &fact)
{
    QList<std::pair<QString, Moment>> moments{{"at", fact.at}};
    if (const auto *run = fact.as<RunFact>())
        moments << std::pair("started", run->started) << std::pair("ended", run->ended);
    if (const auto *visit = fact.as<VisitFact>()) {
        if (visit->arrived)
            moments << std::pair("arrived", *visit->arrived);
        if (visit->left)
            moments << std::pair("left", *visit->left);
    }
    return moments;
}

Result<void> checkFactsThemselves(Records &records, const JobRecord &record,
                                  const ServiceOrder &order, const QString &place)
{
    for (std::size_t i = 0; i < record.facts.size(); ++i) {
        const Fact &fact = record.facts[i];
        const QString where = placeOf(place, i);
        LOOPWRIGHT_TRY(checkFits(fact, order, where));
        for (const auto &[key, moment] : momentsOf(fact))
            if (moment.isAheadOf(records.now()))
                return failure(ErrorCode::BadInput,
                               QString("lies more than a day ahead of the clock, which shows %1")
                                   .arg(records.now().text()),
                               where + '.' + key);
    }
    return {};
}

/// The fact of that id in the record itself or, if it has none, in the records; null if neither
/// has.
Result<std::optional<Fact>> findNamed(Records &records, const JobRecord &record, const QString &id)
{
    for (const Fact &fact : record.facts)
        if (fact.id == id)
            return std::optional(fact);
    return FactStore(records.database()).find(id);
}

Result<void> checkHazard(Records &records, const JobRecord &record, const QString &id,
                         const QString &place)
{
    // The hazard is the pair's, so the card may be of another order.
    LOOPWRIGHT_ASSIGN(auto card, findNamed(records, record, id));
    if (!card) {
        LOOPWRIGHT_ASSIGN(card, HazardStore(records.database()).toldCard(id));
    }
    if (!card || !card->as<SafetyFact>())
        return failure(
            ErrorCode::BadInput,
            "names no safety card of these records; the id of the card that read the hazard "
            "is expected",
            place + ".hazard");
    return {};
}

Result<void> checkReadings(Records &records, const JobRecord &record, const QStringList &ids,
                           const QString &place)
{
    for (qsizetype i = 0; i < ids.size(); ++i) {
        LOOPWRIGHT_ASSIGN(const auto reading, findNamed(records, record, ids[i]));
        if (!reading || reading->order != record.order)
            return failure(ErrorCode::BadInput,
                           QString("names no fact of order %1").arg(record.order),
                           QString("%1.facts[%2]").arg(place).arg(i));
    }
    return {};
}

/// A fact that speaks of another one must name one that is there.
Result<void> checkNamedFacts(Records &records, const JobRecord &record, const QString &place)
{
    for (std::size_t i = 0; i < record.facts.size(); ++i) {
        const Fact &fact = record.facts[i];
        if (const auto *closed = fact.as<HazardClosedFact>())
            LOOPWRIGHT_TRY(checkHazard(records, record, closed->hazard, placeOf(place, i)));
        if (const auto *made = fact.as<MadeWithFact>())
            LOOPWRIGHT_TRY(checkReadings(records, record, made->facts, placeOf(place, i)));
    }
    return {};
}

} // namespace

QString newFactId()
{
    return QUuid::createUuid().toString(QUuid::WithoutBraces);
}

QString placeOf(const QString &record, std::size_t fact)
{
    return QString("%1.facts[%2]").arg(record, QString::number(fact));
}

Result<void> checkRecord(Records &records, const JobRecord &record, const ServiceOrder &order,
                         const QString &place)
{
    LOOPWRIGHT_TRY(checkFactsThemselves(records, record, order, place));
    return checkNamedFacts(records, record, place);
}

} // namespace loopwright
