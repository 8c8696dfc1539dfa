#include "app/actions/DayList.h"

#include "app/actions/Orders.h"
#include "core/certificate/SettingsLines.h"
#include "core/order/Claims.h"
#include "db/PersonStore.h"

#include <algorithm>
#include <tuple>

namespace loopwright {

namespace {

/// Somebody must go there: a criterion that is shown at the premises is open.
bool needsVisit(const OrderView &view)
{
    if (view.input.scope == OrderScope::Nothing || view.input.scope == OrderScope::RecordOnly)
        return false;
    return std::ranges::any_of(view.decision.criteria, [](const CriterionResult &criterion) {
        const Station station = criterion.station;
        return criterion.open() && (station == Station::Loop || station == Station::Safety ||
                                    station == Station::TurnUp || station == Station::Calls ||
                                    station == Station::ErrorTest);
    });
}

QString numberText(const CertificateTerminal &terminal)
{
    QStringList parts{terminal.dn, terminal.spid.isEmpty() ? QString() : "SPID " + terminal.spid,
                      terminal.tei.isEmpty() ? QString() : "TEI " + terminal.tei,
                      terminal.services};
    parts.removeAll(QString());
    return QString("%1: %2").arg(terminal.number).arg(parts.join(", "));
}

DayJob dayJobOf(const OrderView &view)
{
    const ServiceOrder &order = view.order;
    DayJob job;
    job.appointment = order.appointment;
    job.order = order.number;
    job.customer = order.customer;
    job.premises = order.premises;
    job.contact = order.contact;
    job.circuit = order.circuit;
    job.office = view.office.name;
    job.pair = order.pair;
    job.accessNotes = order.accessNotes;
    job.terminalLocation = order.terminalLocation;
    job.remarks = order.remarks;
    job.service = inOneLine(serviceLines(order));
    for (const CertificateTerminal &terminal : terminalLines(order))
        job.numbers << numberText(terminal);
    job.due = order.dueDate;
    job.hazard = !view.judged.cards.open().empty();
    job.needsVisit = needsVisit(view);
    job.next = nextSentence(view.decision, view.stage);
    if (const QString label = "Next: "; job.next.startsWith(label)) { // stands in a row named so
        job.next.remove(0, label.size());
        job.next[0] = job.next[0].toUpper();
    }
    return job;
}

} // namespace

Result<std::vector<DayJob>> jobsOfDay(Records &records, const QString &installer, QDate day)
{
    BoardFilter filter;
    filter.installer = installer;
    filter.dueBefore = day.addDays(1);
    filter.open = true;
    LOOPWRIGHT_ASSIGN(const auto rows, boardRows(records, filter));
    std::vector<DayJob> jobs;
    for (const BoardRow &row : rows) {
        LOOPWRIGHT_ASSIGN(const auto view, showOrder(records, row.order));
        jobs.push_back(dayJobOf(view));
    }
    // "09:00-11:00" sorts as text; who comes at any time comes when there is time. The lines at one
    // place stand together.
    std::ranges::stable_sort(jobs, {}, [](const DayJob &job) {
        return std::tuple(!job.hazard, job.appointment.isEmpty(), job.appointment,
                          premisesKey(job.premises));
    });
    return jobs;
}

Result<DaySheet> daySheet(Records &records, const QString &installer, QDate day, Paper paper)
{
    QString name;
    if (!installer.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(installer));
        if (!person)
            return failure(ErrorCode::NotFound,
                           QString("There is no installer \"%1\" in the register.").arg(installer));
        name = person->name;
    }
    LOOPWRIGHT_ASSIGN(const auto jobs, jobsOfDay(records, installer, day));
    DaySheet made{layOut(dayList(name, day, jobs), paper), {}};
    for (const DayJob &job : jobs)
        made.orders << job.order;
    return made;
}

} // namespace loopwright
