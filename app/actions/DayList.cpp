#include "app/actions/DayList.h"

#include "app/actions/Orders.h"
#include "core/acceptance/JobLine.h"
#include "core/acceptance/Referral.h"
#include "core/base/PaperTime.h"
#include "core/certificate/SettingsLines.h"
#include "core/order/Claims.h"
#include "db/EventStore.h"
#include "db/PersonStore.h"

#include <QRegularExpression>

#include <algorithm>
#include <tuple>

namespace loopwright {

namespace {

/// Somebody must go there: a criterion that is shown at the premises is open, or the instrument of
/// a reading that decides is not good, so that it is measured again.
bool needsVisit(const OrderView &view)
{
    if (view.input.scope == OrderScope::Nothing || view.input.scope == OrderScope::RecordOnly)
        return false;
    return std::ranges::any_of(view.decision.criteria, [](const CriterionResult &criterion) {
        const Station station = criterion.station;
        const bool again = station == Station::Acceptance && // of the instrument
                           criterion.outcome == CriterionOutcome::NotMet;
        return criterion.open() && (again || station == Station::Loop ||
                                    station == Station::Safety || station == Station::TurnUp ||
                                    station == Station::Calls || station == Station::ErrorTest);
    });
}

/// Street, house number, and the rest: "3 Quay Street" stands before "12 Quay Street".
std::tuple<QString, int, QString> houseOrderOf(const QString &premises)
{
    static const QRegularExpression houseNumber(QStringLiteral("\\b(\\d{1,6})[a-z]?\\b"));
    const QString whole = premisesKey(premises);
    const auto match = houseNumber.match(whole);
    QString street = whole;
    if (match.hasMatch())
        street = street.remove(match.capturedStart(), match.capturedLength()).simplified();
    return {street, match.captured(1).toInt(), whole};
}

QString waitingText(const Fact &referral)
{
    const auto *referred = referral.as<ReferredFact>();
    QString text = "Handed on to " + referred->to;
    if (referred->reference)
        text += ", reference " + *referred->reference;
    if (referred->waitingOn)
        text =
            QString("WAITS on %1. %2").arg(toText(*referred->waitingOn).replace(u'_', u' '), text);
    else
        text = "WAITS. " + text;
    return text + ", " + paperTime(referral.at) + '.';
}

QString numberText(const CertificateTerminal &terminal)
{
    QStringList parts{terminal.dn, terminal.spid.isEmpty() ? QString() : "SPID " + terminal.spid,
                      terminal.tei.isEmpty() ? QString() : "TEI " + terminal.tei,
                      terminal.services};
    parts.removeAll(QString());
    return QString("%1: %2").arg(terminal.number).arg(parts.join(", "));
}

/// Which pair, and how many volts: "HAZARD open on this pair: 72 V AC, tip to ground; …".
QString hazardMark(const Hazard &hazard)
{
    const QString where =
        hazard.isOfPair ? QString("this pair")
        : hazard.card->pair.isEmpty()
            ? QString("another pair at these premises (order %1)").arg(hazard.card->order)
            : QString("pair %1 at these premises (order %2)")
                  .arg(hazard.card->pair, hazard.card->order);
    return QString("HAZARD open on %1: %2; see its handoff first.")
        .arg(where, hazardVolts(hazard).join("; "));
}

/// What the plan asks for first, and what the decision waits for after it. The row is named "Next".
QString whatIsNext(const OrderView &view)
{
    const QString label = "Next: ";
    QString first = nextSentenceOf(view).english(),
            then = nextSentence(view.decision, view.stage).english();
    if (!first.startsWith(label))
        return first;
    then.remove(0, label.size());
    first.remove(0, label.size());
    if (then != first)
        first += " Then: " + then;
    first[0] = first[0].toUpper();
    return first;
}

DayJob dayJobOf(const OrderView &view)
{
    const ServiceOrder &order = view.order;
    DayJob job;
    job.appointment = order.appointment;
    job.crew = order.crew;
    job.order = order.number;
    job.customer = order.customer;
    job.premises = order.premises;
    job.contact = order.contact;
    job.circuit = order.circuit;
    job.office = view.office.name;
    job.pair = order.pair;
    job.accessNotes = order.accessNotes;
    job.terminalLocation = order.terminalLocation;
    job.trouble = troubleText(order);
    job.remarks = order.remarks;
    job.service = inOneLine(serviceLines(order));
    for (const CertificateTerminal &terminal : terminalLines(order))
        job.numbers << numberText(terminal);
    job.due = order.dueDate;
    for (const Hazard &hazard : view.judged.cards.open())
        job.hazards << hazardMark(hazard);
    job.needsVisit = needsVisit(view);
    job.next = whatIsNext(view);
    if (order.isOnHold()) {
        job.waits = true;
        job.next =
            QString("WAITS on %1: %2. %3")
                .arg(QString(order.waitingOn).replace(u'_', u' '), order.waitingBecause, job.next);
    } else if (const Fact *referral = standingReferral(view.input.facts)) {
        job.waits = true;
        job.next = waitingText(*referral) + ' ' + job.next;
    }
    return job;
}

} // namespace

Result<std::vector<DayJob>> jobsOfDay(Records &records, const QString &installer, QDate day,
                                      const Progress &progress)
{
    BoardFilter filter;
    filter.facets.insert(BoardFacet::Open, QStringLiteral("1"));
    if (!installer.isEmpty())
        filter.facets.insert(BoardFacet::Installer, installer);
    filter.dueBefore = day.addDays(1);
    LOOPWRIGHT_ASSIGN(const auto rows, boardRows(records, filter));
    std::vector<DayJob> jobs;
    for (const BoardRow &row : rows) {
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(records, row.order));
        jobs.push_back(dayJobOf(view));
        if (progress && !progress(qint64(jobs.size()), qint64(rows.size())))
            return failure(ErrorCode::Refused, "It was stopped; nothing was written.");
    }
    // What waits on others stands apart, last. "09:00-11:00" sorts as text; who comes at any time
    // comes when there is time. The lines at one place stand together.
    std::ranges::stable_sort(jobs, {}, [](const DayJob &job) {
        return std::tuple(job.hazards.isEmpty(), job.waits, job.appointment.isEmpty(),
                          job.appointment, houseOrderOf(job.premises));
    });
    return jobs;
}

Result<DaySheet> daySheet(Records &records, const QString &installer, QDate day, Paper paper,
                          const Progress &progress)
{
    QString name;
    if (!installer.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(installer));
        if (!person)
            return failure(ErrorCode::NotFound,
                           QString("There is no installer \"%1\" in the register.").arg(installer));
        name = person->name;
    }
    LOOPWRIGHT_ASSIGN(const auto jobs, jobsOfDay(records, installer, day, progress));
    LOOPWRIGHT_ASSIGN(const auto head, EventStore(records.database()).logHead());
    DaySheet made{layOut(dayList(name, day, jobs, head.paperText()), paper), {}};
    for (const DayJob &job : jobs)
        made.orders << job.order;
    return made;
}

} // namespace loopwright
