#include "core/acceptance/Visits.h"

#include "core/acceptance/Proof.h"

#include <QMap>
#include <QSet>

#include <algorithm>

namespace loopwright {

namespace {

/// The visit of the installer that is open at the moment; none if none is.
Visit *openVisitAt(std::vector<Visit> &visits, const QString &installer, const Moment &moment)
{
    const auto open = std::find_if(visits.rbegin(), visits.rend(), [&](const Visit &visit) {
        return visit.installer == installer && !visit.left && visit.spans(moment);
    });
    return open == visits.rend() ? nullptr : &*open;
}

Visit &visitToldBy(std::vector<Visit> &visits, const Fact &fact, const VisitFact &told)
{
    Visit begun{fact.installer,
                told.arrived.value_or(std::min(fact.at, told.left.value_or(fact.at))),
                {},
                {},
                {},
                {}};
    if (!told.arrived)
        if (Visit *open = openVisitAt(visits, fact.installer, told.left.value_or(fact.at)))
            return *open;
    const auto known = std::find_if(visits.begin(), visits.end(),
                                    [&begun](const Visit &v) { return v.isSame(begun); });
    return known == visits.end() ? visits.emplace_back(std::move(begun)) : *known;
}

bool touches(const Visit &visit, QDate day)
{
    return visit.arrived.localDate() <= day &&
           visit.left.value_or(visit.arrived).localDate() >= day;
}

bool overlap(const Visit &a, const Visit &b)
{
    return a.installer == b.installer && (a.spans(b.arrived) || b.spans(a.arrived));
}

/// Facts made on site, by local day.
using Days = QMap<QDate, std::vector<const Fact *>>;

Days daysOf(const std::vector<const Fact *> &standing)
{
    Days days;
    for (const Fact *fact : standing)
        if (isMadeOnSite(*fact))
            days[timeOf(*fact).localDate()].push_back(fact);
    return days;
}

/// Reads the visits of one order among those of its premises.
class Sharing
{
public:
    Sharing(const std::vector<Fact> &own, const std::vector<Fact> &others)
        : m_order(own.empty() ? QString() : own.front().order)
        , m_others(others)
        , m_standing(standingFacts(own))
        , m_days(daysOf(m_standing))
        , m_own(visitsOf(own))
    {
        std::vector<Fact> all = own;
        all.insert(all.end(), others.begin(), others.end());
        for (Visit &visit : visitsOf(all))
            if (tells(visit, m_order) ||
                std::none_of(m_own.begin(), m_own.end(),
                             [&](const Visit &o) { return overlap(o, visit); }))
                m_all.push_back(std::move(visit));
        for (auto day = m_days.begin(); day != m_days.end(); ++day)
            takeDay(day.key(), day.value());
    }

    SharedVisits result() const
    {
        SharedVisits shared{m_taken, selfTests()};
        if (shared.selfTests.empty() && !saysMore())
            shared.visits.clear();
        return shared;
    }

private:
    static bool tells(const Visit &visit, const QString &order)
    {
        return visit.orders.contains(order);
    }

    bool lies(const Fact &fact, const Visit &visit) const
    {
        return visit.spans(timeOf(fact)) &&
               (tells(visit, m_order) || visit.installer == fact.installer);
    }

    void takeDay(QDate day, const std::vector<const Fact *> &facts)
    {
        const bool explained = std::all_of(facts.begin(), facts.end(), [&](const Fact *fact) {
            return std::any_of(m_all.begin(), m_all.end(),
                               [&](const Visit &visit) { return lies(*fact, visit); });
        });
        for (const Visit &visit : explained ? m_all : m_own) {
            const bool used = touches(visit, day) &&
                              std::any_of(facts.begin(), facts.end(),
                                          [&](const Fact *fact) { return lies(*fact, visit); });
            const bool known = std::any_of(m_taken.begin(), m_taken.end(),
                                           [&](const Visit &v) { return v.isSame(visit); });
            if (used && !known)
                m_taken.push_back(visit);
        }
    }

    /// Whether the visits name any fact's visit otherwise than the order's own facts do.
    bool saysMore() const
    {
        QSet<QString> ownInstallers;
        for (const Visit &visit : m_own)
            ownInstallers.insert(visit.installer);
        const bool alone = std::all_of(m_taken.begin(), m_taken.end(), [this](const Visit &visit) {
            return visit.orders == QStringList{m_order};
        });
        // Two installers on one job at a time are at one visit by their facts.
        if (alone && ownInstallers.size() > 1)
            return false;
        for (const auto &facts : m_days)
            for (const Fact *fact : facts)
                if (visitName(*fact, m_taken) != visitName(*fact, m_standing))
                    return true;
        return false;
    }

    std::vector<Fact> selfTests() const
    {
        std::vector<Fact> list;
        for (const Fact &fact : m_others)
            if (fact.as<SelfTestFact>() && !fact.instrument.isEmpty() &&
                std::any_of(m_taken.begin(), m_taken.end(),
                            [&](const Visit &visit) { return concerns(fact, visit); }))
                list.push_back(fact);
        return list;
    }

    /// Whether the instrument was used on that visit for the order, and not both orders record it.
    bool concerns(const Fact &test, const Visit &visit) const
    {
        if (visit.installer != test.installer || !visit.spans(test.at))
            return false;
        std::vector<Fact> there;
        std::copy_if(m_others.begin(), m_others.end(), std::back_inserter(there),
                     [&test](const Fact &fact) { return fact.order == test.order; });
        for (const Visit &told : visitsOf(there))
            if (told.installer == test.installer && told.spans(test.at) &&
                (!told.isSame(visit) || tells(visit, m_order)))
                return false;
        return std::any_of(m_standing.begin(), m_standing.end(), [&](const Fact *fact) {
            return isMadeOnSite(*fact) && fact->instrument == test.instrument &&
                   visitName(*fact, m_taken) == visit.name();
        });
    }

    QString m_order;
    const std::vector<Fact> &m_others;
    std::vector<const Fact *> m_standing;
    Days m_days;
    std::vector<Visit> m_own;   ///< recorded by the order's facts alone
    std::vector<Visit> m_all;   ///< recorded by all, without those that overlap the order's own
    std::vector<Visit> m_taken; ///< on which facts of the order were made
};

} // namespace

bool Visit::spans(const Moment &moment) const
{
    const bool after = left ? moment > *left : moment.localDate() != arrived.localDate();
    return moment >= arrived && !after;
}

QJsonObject Visit::toJson() const
{
    QJsonObject object{{"arrived", arrived.text()},
                       {"orders", QJsonArray::fromStringList(orders)},
                       {"facts", QJsonArray::fromStringList(facts)}};
    if (!installer.isEmpty())
        object.insert("installer", installer);
    if (left)
        object.insert("left", left->text());
    if (result)
        object.insert("result", toText(*result));
    return object;
}

Visit Visit::read(JsonReader &reader)
{
    Visit visit;
    visit.installer = reader.optionalText("installer").value_or(QString());
    visit.arrived = reader.moment("arrived");
    visit.left = reader.optionalMoment("left");
    visit.result = reader.optionalWord<VisitResult>("result");
    for (const QJsonValue &order : reader.array("orders", 10000))
        visit.orders << order.toString();
    for (const QJsonValue &fact : reader.array("facts", 10000))
        visit.facts << fact.toString();
    return visit;
}

Moment timeOf(const Fact &fact)
{
    const auto *run = fact.as<RunFact>();
    return run ? run->started : fact.at;
}

bool isEarlier(const Fact &a, const Fact &b)
{
    const Moment atA = timeOf(a), atB = timeOf(b);
    return atA != atB ? atA < atB : a.id < b.id;
}

bool isMeasurement(const Fact &fact)
{
    if (const auto *loop = fact.as<LoopFact>()) // a make-up is on record
        return loop->dcResistanceOhm || loop->lossDb;
    return isEvidence(fact) && !fact.as<SafetyFact>();
}

bool isMadeOnSite(const Fact &fact)
{
    return isMeasurement(fact) || fact.as<SafetyFact>() || fact.as<SelfTestFact>();
}

std::vector<const Fact *> standingFacts(const std::vector<Fact> &facts)
{
    QSet<QString> voided;
    for (const Fact &fact : facts)
        if (const auto *voiding = fact.as<VoidFact>())
            voided.insert(voiding->fact);
    std::vector<const Fact *> list;
    for (const Fact &fact : facts)
        if (!voided.contains(fact.id) && !fact.as<VoidFact>())
            list.push_back(&fact);
    std::sort(list.begin(), list.end(),
              [](const Fact *a, const Fact *b) { return isEarlier(*a, *b); });
    return list;
}

bool Visit::overlaps(const Visit &other) const
{
    return installer == other.installer && arrived != other.arrived && left && other.left &&
           arrived < *other.left && other.arrived < *left;
}

std::vector<Visit> visitsOf(const std::vector<Fact> &facts)
{
    std::vector<Visit> visits;
    for (const Fact *fact : standingFacts(facts)) {
        const auto *told = fact->as<VisitFact>();
        if (!told)
            continue;
        Visit &visit = visitToldBy(visits, *fact, *told);
        if (told->left)
            visit.left = told->left;
        if (told->result)
            visit.result = told->result;
        if (!visit.orders.contains(fact->order))
            visit.orders << fact->order;
        visit.facts << fact->id;
    }
    std::stable_sort(visits.begin(), visits.end(),
                     [](const Visit &a, const Visit &b) { return a.arrived < b.arrived; });
    return visits;
}

std::optional<Visit> openVisit(const std::vector<Visit> &visits, const QString &order,
                               const QString &installer, const Moment &now)
{
    std::optional<Visit> open;
    for (const Visit &visit : visits)
        if (!visit.left && visit.arrived.localDate() == now.localDate() &&
            (visit.orders.contains(order) || visit.installer == installer))
            open = visit;
    return open;
}

QString visitName(const Fact &fact, const std::vector<Visit> &visits)
{
    const Moment time = timeOf(fact);
    const Visit *found = nullptr;
    for (const Visit &visit : visits)
        if (visit.spans(time) &&
            (!found || visit.installer == fact.installer || found->installer != fact.installer))
            found = &visit;
    return found ? found->name() : "day " + time.localDate().toString(Qt::ISODate);
}

QString visitName(const Fact &fact, const std::vector<const Fact *> &standing)
{
    const Moment time = timeOf(fact);
    for (const Fact *told : standing)
        if (const auto *visit = told->as<VisitFact>()) {
            const Visit alone{{}, visit->arrived.value_or(told->at), visit->left, {}, {}, {}};
            if (alone.spans(time))
                return alone.name();
        }
    return "day " + time.localDate().toString(Qt::ISODate);
}

SharedVisits shareVisits(const std::vector<Fact> &own, const std::vector<Fact> &others)
{
    return Sharing(own, others).result();
}

} // namespace loopwright
