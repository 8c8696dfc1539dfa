#include "app/actions/CertificateSetLines.h"

#include "app/actions/Board.h"
#include "db/FactStore.h"

#include <algorithm>

namespace loopwright {

namespace {

Result<SetMember> memberOf(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(auto about, certifying(records, order));
    const ServiceOrder &ordered = about.stored.order;
    SetMember member{{ordered.number,
                      ordered.circuit,
                      ordered.customer,
                      ordered.kind,
                      about.decision.outcome,
                      stageAt(Station::Identifiers),
                      true,
                      {}},
                     std::move(about)};
    if (const auto may = checkMayIssue(records, member.about); !may) {
        if (may.error().code != ErrorCode::Refused)
            return failure(may.error());
        const CriterionResult *open = member.about.decision.firstOpen();
        member.line.mayHave = false;
        member.line.why = open ? open->sentence().english() : may.error().message;
    }
    member.line.stage = stageOf(member.about.decision, member.about.input,
                                member.about.stored.status != OrderStatus::Open);
    return member;
}

/// A completed order belongs to the set if it was worked on during the same visit.
Result<bool> workedTogether(const Database &database, const QString &order,
                            const std::optional<LastWork> &last)
{
    if (!last)
        return false;
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(database).ofOrder(order));
    const auto work = workOn(facts);
    return std::find(work.begin(), work.end(), *last) != work.end();
}

} // namespace

std::vector<LastWork> workOn(const std::vector<Fact> &facts)
{
    std::vector<LastWork> list;
    for (const Fact *fact : standingFacts(facts))
        if (isMadeOnSite(*fact))
            list.push_back({fact->installer, timeOf(*fact).localDate()});
    return list;
}

Result<std::vector<SetMember>> membersOfSet(Records &records, const QString &order)
{
    std::vector<SetMember> members;
    LOOPWRIGHT_ASSIGN(auto asked, memberOf(records, order));
    if (asked.about.stored.status == OrderStatus::Cancelled)
        return failure(ErrorCode::Refused, QString("Order %1 was cancelled.").arg(order));
    const auto work = workOn(asked.about.input.facts);
    const auto last = work.empty() ? std::nullopt : std::optional(work.back());
    LOOPWRIGHT_ASSIGN(const auto rows, rowsAtPremises(records, asked.about.stored.order.premises));
    members.push_back(std::move(asked));
    for (const BoardRow &row : rows) {
        if (row.order == order)
            continue;
        LOOPWRIGHT_ASSIGN(const auto together,
                          row.status == OrderStatus::Open
                              ? Result<bool>(true)
                              : workedTogether(records.database(), row.order, last));
        if (!together)
            continue;
        LOOPWRIGHT_ASSIGN(auto member, memberOf(records, row.order));
        if (member.about.stored.order.type == OrderType::Repair)
            continue; // the line has its certificate
        members.push_back(std::move(member));
    }
    return members;
}

Result<std::vector<SetLine>> linesOfSet(Records &records, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto members, membersOfSet(records, order));
    std::vector<SetLine> lines;
    for (const SetMember &member : members)
        lines.push_back(member.line);
    return lines;
}

} // namespace loopwright
