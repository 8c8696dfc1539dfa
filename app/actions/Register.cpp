#include "app/actions/Register.h"

#include "core/acceptance/Judge.h"
#include "db/AssignmentStore.h"
#include "db/InstrumentStore.h"
#include "db/LimitSetStore.h"
#include "db/OfficeStore.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"

#include <algorithm>

namespace loopwright {

namespace {

template<class T>
Result<QList<T>> asList(const Result<std::vector<T>> &found)
{
    if (!found)
        return failure(found.error());
    return QList<T>(found->begin(), found->end());
}

QString whatIs(ClaimKind kind)
{
    switch (kind) {
    case ClaimKind::Dn:
        return "Number";
    case ClaimKind::Spid:
        return "SPID";
    case ClaimKind::Pair:
        return "Pair";
    }
    return {};
}

constexpr int ordersBetweenReports = 500;

} // namespace

Result<QList<ServingOffice>> offices(Records &records)
{
    return asList(OfficeStore(records.database()).all());
}

Result<QList<TestLine>> testLinesOf(Records &records, const QString &office)
{
    return OfficeStore(records.database()).testLines(office);
}

Result<QList<Person>> people(Records &records)
{
    return asList(PersonStore(records.database()).all());
}

Result<Person> registeredPerson(Records &records, const QString &key)
{
    LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(key));
    if (!person)
        return failure(ErrorCode::NotFound,
                       QString("There is no person \"%1\" in the register.").arg(key.left(60)));
    return *person;
}

Result<QList<Instrument>> instruments(Records &records)
{
    return asList(InstrumentStore(records.database()).all());
}

namespace {

Result<void> auditAssignments(Records &records, std::vector<AuditFinding> &findings)
{
    const AssignmentStore store(records.database());
    const auto doubles = store.doubles();
    const auto unassigned = store.unassigned();
    if (!doubles || !unassigned)
        return failure(doubles ? unassigned.error() : doubles.error());
    for (const ValueUse &use : *doubles)
        findings.push_back(
            {toText(use.kind) + "_twice",
             QString("%1 %2 is wanted by %3 circuits.")
                 .arg(whatIs(use.kind), use.value, QString::number(use.circuits.size())),
             use.value, use.circuits, use.orders});
    for (const ValueUse &use : *unassigned)
        findings.push_back({toText(use.kind) + "_unassigned",
                            QString("%1 %2 is on the order, but is not assigned: the records were "
                                    "changed past this program.")
                                .arg(whatIs(use.kind), use.value),
                            use.value, use.circuits, use.orders});
    return {};
}

} // namespace

Result<std::vector<AuditFinding>> auditIdentifiers(Records &records, const Progress &progress)
{
    std::vector<AuditFinding> findings;
    LOOPWRIGHT_TRY(auditAssignments(records, findings));
    LOOPWRIGHT_ASSIGN(const auto total, OrderStore(records.database()).countOpen());
    qint64 done = 0;
    LOOPWRIGHT_TRY(
        OrderStore(records.database()).eachOpen([&](const StoredOrder &stored) -> Result<void> {
            if (++done % ordersBetweenReports == 0 && progress && !progress(done, total))
                return failure(ErrorCode::Refused, "The audit was stopped.");
            for (const Finding &finding : checkOrderIdentifiers(stored.order))
                if (finding.severity == Severity::Error)
                    findings.push_back({"identifier_error",
                                        finding.field + ": " + finding.reason.english(),
                                        stored.order.fields().value(finding.field),
                                        {stored.order.circuit},
                                        {stored.order.number}});
            return {};
        }));
    return findings;
}

QJsonObject AuditFinding::toJson() const
{
    return {{"code", code},
            {"reason", reason},
            {"value", value},
            {"circuits", QJsonArray::fromStringList(circuits)},
            {"orders", QJsonArray::fromStringList(orders)}};
}

} // namespace loopwright
