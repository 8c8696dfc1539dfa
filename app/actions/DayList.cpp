#include "app/actions/DayList.h"

#include "app/actions/Orders.h"
#include "db/PersonStore.h"

#include <algorithm>

namespace loopwright {

namespace {

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
    job.line = jobLine(view.decision, view.stage);
    job.next = nextSentence(view.decision, view.stage);
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
    // "09:00-11:00" sorts as text; who comes at any time comes when there is time.
    std::ranges::stable_sort(jobs, {}, [](const DayJob &job) {
        return std::pair(job.appointment.isEmpty(), job.appointment);
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
    DaySheet made{dayList(name, day, jobs, paper), {}};
    for (const DayJob &job : jobs)
        made.orders << job.order;
    return made;
}

} // namespace loopwright
