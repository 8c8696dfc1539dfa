#include "core/acceptance/StationConflict.h"

#include "core/acceptance/FactList.h"
#include "core/acceptance/Proof.h"

#include <QUuid>

#include <algorithm>

namespace loopwright {

namespace {

constexpr int lettersOfId = 16;

bool namesAnotherPair(const Fact &fact)
{
    const auto *changed = fact.as<ChangedFact>();
    return changed && changed->what == ChangedWhat::Pair;
}

/// Whether a fact is held against one of the values that differ; the pair apart, for a fact is held
/// against that by its name. But what says that the pair is another one now was said of a pair that
/// is in doubt.
bool hangsOn(const StationConflict &conflict, const Fact &fact)
{
    for (const QJsonValue &word : conflict.content.value("what").toArray()) {
        const auto what = fromText<ChangedWhat>(word.toString());
        if (what == ChangedWhat::Pair && namesAnotherPair(fact))
            return true;
        if (what && *what != ChangedWhat::Pair && retires(*what, provenBy(fact)))
            return true;
    }
    return false;
}

/// Who recorded a fact; what several stations tell alike is the work of each of them.
class Tellers
{
public:
    explicit Tellers(const std::vector<FactOrigin> &tellers)
    {
        for (const FactOrigin &teller : tellers)
            m_of.insert(teller.fact, &teller);
    }
    bool isTold(const Fact &fact, const QString &side) const
    {
        return side == officeSide ? !m_of.contains(fact.id) : by(fact, side) != nullptr;
    }
    bool isAhead(const Fact &fact, const QString &station) const
    {
        const FactOrigin *teller = by(fact, station);
        return teller && teller->ahead;
    }

private:
    const FactOrigin *by(const Fact &fact, const QString &station) const
    {
        for (auto [teller, end] = m_of.equal_range(fact.id); teller != end; ++teller)
            if ((*teller)->station == station)
                return *teller;
        return nullptr;
    }

    QMultiHash<QString, const FactOrigin *> m_of;
};

/// The same one wherever it is made.
QString uuidOf(const QByteArray &name)
{
    static const QUuid space("{3c0e2f36-6f1c-5a0e-9d52-4f6ad0a5b7c1}");
    return QUuid::createUuidV5(space, name).toString(QUuid::WithoutBraces);
}

QString idOfSide(const StationConflict &conflict, const QString &side)
{
    return idOfToldContent(conflict.toldBy(side));
}

/// A doubt about the content itself, then by id.
bool isToldBefore(const StationConflict &a, const StationConflict &b)
{
    const bool ofContent = a.code == ConflictCode::FactDiffers;
    return ofContent != (b.code == ConflictCode::FactDiffers) ? ofContent : a.id < b.id;
}

/// Of one id with several contents none counts, whichever of them stands under the id, until one
/// is settled for: the office's own under that id, a station's under one of its own. Asked for many
/// facts, and an id is made of all of a content: so each is made once.
class ContentsOut
{
public:
    explicit ContentsOut(const std::vector<StationConflict> &conflicts)
    {
        for (const StationConflict &each : conflicts)
            if (each.stands && each.code == ConflictCode::FactDiffers)
                add(each);
    }
    /// The conflict that keeps it out; null if none does.
    const StationConflict *by(const QString &fact) const { return m_by.value(fact); }

private:
    void add(const StationConflict &conflict)
    {
        if (!conflict.isSettledFor(officeSide))
            note(conflict.fact(), conflict);
        const QString counts =
            conflict.settled ? idOfSide(conflict, conflict.settled->side) : QString();
        const QStringList sides = conflict.tellers();
        for (const QString &side : sides)
            if (const QString id = idOfSide(conflict, side); id != counts)
                note(id, conflict);
    }
    void note(const QString &fact, const StationConflict &conflict)
    {
        const StationConflict *&by = m_by[fact];
        if (!by || isToldBefore(conflict, *by))
            by = &conflict;
    }

    QHash<QString, const StationConflict *> m_by;
};

/// Whether the conflict keeps the fact from counting, if it is about no content.
bool keepsOut(const StationConflict &conflict, const Fact &fact, const Tellers &tellers)
{
    const bool theirs = tellers.isTold(fact, conflict.station);
    const bool before = conflict.settled && fact.at <= conflict.settled->at;
    const bool atFirst = conflict.settled && fact.at <= conflict.settled->first;
    switch (conflict.code) {
    case ConflictCode::OrderChanged:
        if (conflict.isSettledFor(bothSides))
            return false;
        if (conflict.isSettledFor(conflict.station))
            return !theirs && before && hangsOn(conflict, fact);
        return theirs && hangsOn(conflict, fact);
    case ConflictCode::TwoStations:
        return atFirst && !conflict.isSettledFor(bothSides) && isEvidence(fact) &&
               !tellers.isTold(fact, conflict.settled->side);
    case ConflictCode::ClockAhead:
        return tellers.isAhead(fact, conflict.station) && !conflict.isSettledFor(conflict.station);
    case ConflictCode::FactDiffers: // ContentsOut
    case ConflictCode::OrderClosed:
    case ConflictCode::ValueInUse:
    case ConflictCode::CertificateSuperseded:
    case ConflictCode::CertificateTwice:
    case ConflictCode::Forked:
        break;
    }
    return false;
}

} // namespace

QString StationConflict::idOf(ConflictCode code, const QString &order, const QString &station,
                              const QJsonObject &content)
{
    return digestOf(QJsonObject{{"code", toText(code)},
                                {"order", order},
                                {"station", station},
                                {"content", content}})
        .left(lettersOfId);
}

QByteArray StationConflict::toldBy(const QString &side) const
{
    return content.value("told")[side]["content"].toString().toUtf8();
}

QStringList StationConflict::tellers() const
{
    return content.value("told").toObject().keys();
}

QString idOfToldContent(const QByteArray &content)
{
    return uuidOf(content);
}

QString idOfStrikeOut(const StationConflict &conflict)
{
    return uuidOf((conflict.fact() + " in " + conflict.order).toUtf8());
}

QString idOfFollowing(const QString &voided, const QString &content)
{
    return uuidOf((voided + " of " + content).toUtf8());
}

QHash<QString, QString> toldUnder(const std::vector<StationConflict> &conflicts)
{
    QHash<QString, QString> ids;
    for (const StationConflict &each : conflicts) {
        if (!each.stands || each.code != ConflictCode::FactDiffers)
            continue;
        const QStringList sides = each.tellers();
        for (const QString &side : sides)
            ids.insert(idOfSide(each, side), each.fact());
    }
    return ids;
}

QJsonArray listOf(const std::vector<SetAside> &all)
{
    QJsonArray list;
    for (const SetAside &each : all)
        list << QJsonObject{
            {"fact", each.fact}, {"code", toText(each.code)}, {"settled", each.settled}};
    return list;
}

std::vector<SetAside> readSetAside(JsonReader &reader, const QString &key)
{
    std::vector<SetAside> all;
    const QJsonArray list = reader.array(key, mostFacts);
    for (int i = 0; i < list.size() && !reader.failed(); ++i) {
        JsonReader item = reader.item(key, i, list[i]);
        all.push_back(
            {item.text("fact"), item.word<ConflictCode>("code"), item.boolean("settled")});
        item.done();
    }
    return all;
}

Text SetAside::sentence() const
{
    const char *what = "";
    switch (code) {
    case ConflictCode::OrderChanged:
        what = QT_TRANSLATE_NOOP("core", "the order was changed while a van had it");
        break;
    case ConflictCode::TwoStations:
        what = QT_TRANSLATE_NOOP("core", "two stations worked on the order");
        break;
    case ConflictCode::FactDiffers:
        what = QT_TRANSLATE_NOOP("core", "two stations have it with different content");
        break;
    case ConflictCode::ClockAhead:
        what = QT_TRANSLATE_NOOP("core", "the clock of its station was more than a day ahead");
        break;
    case ConflictCode::OrderClosed:
    case ConflictCode::ValueInUse:
    case ConflictCode::CertificateSuperseded:
    case ConflictCode::CertificateTwice:
    case ConflictCode::Forked:
        break;
    }
    return Text(settled ? QT_TRANSLATE_NOOP("core", "set aside by who settled it: %1")
                        : QT_TRANSLATE_NOOP("core", "set aside until somebody settles it: %1"))
        .arg(Text(what));
}

std::vector<SetAside> setAside(const std::vector<Fact> &facts,
                               const std::vector<FactOrigin> &tellers,
                               const std::vector<StationConflict> &conflicts)
{
    std::vector<SetAside> list;
    const Tellers known(tellers);
    const ContentsOut contents(conflicts);
    std::vector<const StationConflict *> others;
    for (const StationConflict &each : conflicts)
        if (each.stands && each.code != ConflictCode::FactDiffers)
            others.push_back(&each);
    for (const Fact &fact : facts) {
        // Which one is told must not hang on who came first.
        const StationConflict *by = contents.by(fact.id);
        for (const StationConflict *each : others)
            if (keepsOut(*each, fact, known) && (!by || isToldBefore(*each, *by)))
                by = each;
        if (by)
            list.push_back({fact.id, by->code, !by->isOpen()});
    }
    return list;
}

namespace {

/// The office before the stations, and these by tag.
QStringList officeFirst(QStringList sides)
{
    sides.sort();
    if (sides.removeOne(officeSide))
        sides.prepend(officeSide);
    return sides;
}

} // namespace

std::vector<const Fact *> workOf(const QString &side, const std::vector<Fact> &facts,
                                 const std::vector<FactOrigin> &tellers)
{
    const Tellers by(tellers);
    std::vector<const Fact *> work;
    for (const Fact &fact : facts)
        if (isEvidence(fact) && by.isTold(fact, side))
            work.push_back(&fact);
    return work;
}

bool isSettledLoosely(const StationConflict &conflict)
{
    switch (conflict.code) {
    case ConflictCode::OrderChanged:
    case ConflictCode::ValueInUse:
        return conflict.isSettledFor(officeSide);
    case ConflictCode::TwoStations:
    case ConflictCode::CertificateSuperseded:
    case ConflictCode::ClockAhead:
        return conflict.settled.has_value();
    case ConflictCode::OrderClosed: // has one side
    case ConflictCode::FactDiffers:
    case ConflictCode::CertificateTwice:
    case ConflictCode::Forked:
        break;
    }
    return false;
}

QStringList sidesOf(const StationConflict &conflict, const std::vector<Fact> &facts,
                    const std::vector<FactOrigin> &tellers)
{
    QStringList stations;
    for (const FactOrigin &teller : tellers)
        if (!stations.contains(teller.station))
            stations << teller.station;
    stations.sort();
    switch (conflict.code) {
    case ConflictCode::OrderClosed:
    case ConflictCode::CertificateTwice:
    case ConflictCode::Forked:
        return {officeSide};
    case ConflictCode::OrderChanged:
        return {officeSide, conflict.station, bothSides};
    case ConflictCode::TwoStations:
        return (workOf(officeSide, facts, tellers).empty() ? stations
                                                           : QStringList{officeSide} + stations) +
               QStringList{bothSides};
    case ConflictCode::FactDiffers:
        return officeFirst(conflict.tellers());
    case ConflictCode::CertificateSuperseded:
        return officeFirst(conflict.content.value("stations").toVariant().toStringList());
    case ConflictCode::ValueInUse:
    case ConflictCode::ClockAhead:
        break;
    }
    return {officeSide, conflict.station};
}

} // namespace loopwright
