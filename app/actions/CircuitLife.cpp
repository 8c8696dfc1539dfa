#include "app/actions/CircuitLife.h"

#include "app/actions/BulkEvents.h"
#include "core/acceptance/FactWords.h"
#include "core/acceptance/Visits.h"
#include "core/base/PaperTime.h"

#include <algorithm>

namespace loopwright {

namespace {

QString orderWord(const ServiceOrder &order)
{
    return toText(order.type).replace('_', ' ');
}

/// What one order adds to the life of its circuit.
class OrderLife
{
public:
    OrderLife(const OrderView &view, const QList<Person> &people, std::vector<LifeEntry> &life)
        : m_view(view)
        , m_people(people)
        , m_life(life)
    {
    }

    void tell()
    {
        for (const Event &event : m_view.events)
            tellEvent(event);
        tellVisits();
        tellHazards();
        for (const FactView &fact : m_view.facts)
            if (!fact.voided)
                tellFact(fact.fact);
        for (const RunMade &run : m_view.decision.runs)
            tellRun(run);
        tellDays();
    }

private:
    void add(const Moment &at, LifeKind kind, const QString &text,
             LifeResult result = LifeResult::Told)
    {
        m_life.push_back({at, m_view.order.number, kind, result, text});
    }
    QString name(const QString &key) const { return nameOf(m_people, key); }

    void tellEvent(const Event &event)
    {
        const bool repair = m_view.order.type == OrderType::Repair;
        if (event.kind == "certificate_issued")
            add(event.at, LifeKind::Certificate,
                "Certificate " + event.detail.value("certificate").toString(), LifeResult::Well);
        else if (event.kind == "order_cancelled")
            add(event.at, repair ? LifeKind::Trouble : LifeKind::Order,
                "Order cancelled: " + event.detail.value("because").toString(), LifeResult::Badly);
        else if (event.kind == "order_taken")
            tellBegin(event, repair);
        else if (event.kind == "order_completed")
            tellEnd(event, repair);
        else if (event.kind == bulk::changed || event.kind == bulk::undone)
            tellBulk(event);
    }
    void tellBulk(const Event &event)
    {
        QStringList parts;
        const QJsonObject changes = event.detail.value("changes").toObject();
        for (auto change = changes.begin(); change != changes.end(); ++change)
            parts << QString("%1 %2").arg(QString(change.key()).replace('_', ' '),
                                          change->toArray().at(1).toString());
        if (!parts.isEmpty())
            add(event.at, LifeKind::Change,
                (event.kind == bulk::changed
                     ? QString("All lines of the office changed: ")
                     : QString("Taken back for all lines of the office: ")) +
                    parts.join(", "));
    }
    void tellBegin(const Event &event, bool repair)
    {
        if (repair)
            add(event.at, LifeKind::Trouble, "Trouble: " + m_view.order.symptom, LifeResult::Badly);
        else
            add(event.at, LifeKind::Order,
                QString("Order taken in: %1, due %2")
                    .arg(orderWord(m_view.order), paperDay(m_view.order.dueDate)));
    }
    void tellEnd(const Event &event, bool repair)
    {
        if (!repair) {
            add(event.at, LifeKind::Order, "Order completed", LifeResult::Well);
            return;
        }
        QStringList parts;
        for (const char *key : {"cause", "found", "cleared"})
            if (const QString text = event.detail.value(key).toString(); !text.isEmpty())
                parts << QString(text).replace('_', ' ');
        add(event.at, LifeKind::Trouble, "Trouble closed: " + parts.join("; "), LifeResult::Well);
    }

    void tellVisits()
    {
        std::vector<Fact> facts;
        for (const FactView &fact : m_view.facts)
            facts.push_back(fact.fact);
        for (const Visit &visit : visitsOf(facts)) {
            QString text = "Visit";
            if (!visit.installer.isEmpty())
                text += " by " + name(visit.installer);
            if (visit.left)
                text += ", until " + visit.left->localClock();
            if (visit.result)
                text += ", " + toText(*visit.result).replace('_', ' ');
            const bool inVain = visit.result && *visit.result != VisitResult::Worked;
            add(visit.arrived, LifeKind::Visit, text,
                inVain ? LifeResult::Badly : LifeResult::Told);
        }
    }

    void tellHazards()
    {
        for (const Hazard &hazard : m_view.judged.cards.hazards()) {
            if (hazard.card->order != m_view.order.number)
                continue; // told with the order that read it
            add(hazard.card->at, LifeKind::Hazard,
                "Hazard read: " + hazardVolts(hazard).join("; ") +
                    (hazard.isClosed() ? QString() : QString(". It is OPEN.")),
                LifeResult::Badly);
            if (hazard.isClosed())
                add(hazard.clear->at, LifeKind::Hazard, "The card is clear after the hazard",
                    LifeResult::Well);
        }
    }

    void tellFact(const Fact &fact)
    {
        switch (fact.kind()) {
        case FactKind::HazardClosed:
            add(fact.at, LifeKind::Hazard, text(fact));
            break;
        case FactKind::Changed:
        case FactKind::Cleared:
        case FactKind::Referred:
        case FactKind::Desk:
        case FactKind::Note:
        case FactKind::Exception:
            add(fact.at, LifeKind::Change, text(fact));
            break;
        default:
            break;
        }
    }
    QString text(const Fact &fact) const { return factText(fact, m_view.order.kind); }

    void tellRun(const RunMade &run)
    {
        const auto made =
            std::ranges::find(m_view.facts, run.fact, [](const FactView &f) { return f.fact.id; });
        if (made == m_view.facts.end())
            return;
        add(timeOf(made->fact), LifeKind::Run, text(made->fact) + ": " + run.resultInWords(),
            run.outcome == RunOutcome::Failed    ? LifeResult::Badly
            : run.outcome == RunOutcome::Counted ? LifeResult::Well
                                                 : LifeResult::Told);
    }

    /// Layers and calls by the dozen are counted; what has a figure is told with it.
    struct Day
    {
        std::optional<Moment> first;
        QStringList figures;
        int layersUp = 0, layersDown = 0, callsThrough = 0, callsFailed = 0;
    };
    static QString counted(int good, const char *well, int bad, const char *badly)
    {
        QStringList parts;
        if (good > 0)
            parts << QString("%1 %2").arg(good).arg(well);
        if (bad > 0)
            parts << QString("%1 %2").arg(bad).arg(badly);
        return parts.join(", ");
    }

    void count(Day &day, const Fact &fact)
    {
        if (const auto *layer = fact.as<LayerFact>())
            ++(layer->outcome == LayerOutcome::Up ? day.layersUp : day.layersDown);
        else if (const auto *call = fact.as<CallFact>())
            ++(call->outcome == CallOutcome::Ok ? day.callsThrough : day.callsFailed);
        else if (fact.as<LoopFact>() || fact.as<AnalogFact>())
            day.figures << text(fact);
    }

    void tellDays()
    {
        QMap<QDate, Day> days;
        for (const FactView &fact : m_view.facts) {
            const bool reading = fact.fact.as<LayerFact>() || fact.fact.as<CallFact>() ||
                                 fact.fact.as<LoopFact>() || fact.fact.as<AnalogFact>();
            if (!reading || fact.voided)
                continue;
            Day &day = days[fact.fact.at.localDate()];
            if (!day.first || fact.fact.at < *day.first)
                day.first = fact.fact.at;
            count(day, fact.fact);
        }
        for (const Day &day : days) {
            QStringList parts = day.figures;
            if (const QString layers = counted(day.layersUp, "up", day.layersDown, "down");
                !layers.isEmpty())
                parts << "Layers: " + layers;
            if (const QString calls =
                    counted(day.callsThrough, "through", day.callsFailed, "failed");
                !calls.isEmpty())
                parts << "Calls: " + calls;
            add(*day.first, LifeKind::Readings, parts.join("; "),
                day.layersDown + day.callsFailed > 0 ? LifeResult::Badly : LifeResult::Told);
        }
    }

    const OrderView &m_view;
    const QList<Person> &m_people;
    std::vector<LifeEntry> &m_life;
};

} // namespace

QJsonObject LifeEntry::toJson() const
{
    return {{"at", at.text()},
            {"order", order},
            {"kind", toText(kind)},
            {"result", toText(result)},
            {"text", text}};
}

std::vector<LifeEntry> lifeOf(const std::vector<OrderView> &orders, const QList<Person> &people)
{
    std::vector<LifeEntry> life;
    for (const OrderView &view : orders)
        OrderLife(view, people, life).tell();
    std::ranges::stable_sort(life, {}, [](const LifeEntry &entry) { return entry.at.msUtc; });
    return life;
}

} // namespace loopwright
