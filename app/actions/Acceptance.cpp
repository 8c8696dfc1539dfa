#include "app/actions/Acceptance.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "app/actions/EvidenceStore.h"
#include "app/actions/LimitSets.h"
#include "app/actions/RecordCheck.h"
#include "core/acceptance/Judging.h"
#include "db/DecisionStore.h"
#include "db/FactStore.h"
#include "db/LimitSetStore.h"
#include "db/OrderStore.h"

namespace loopwright {

Result<DecisionInput> evidenceOf(Records &records, const StoredOrder &stored)
{
    LOOPWRIGHT_ASSIGN(const auto limits, limitsFor(records, stored));
    return EvidenceStore(records.database()).of(stored, limits.version());
}

Result<DecisionInput> evidenceOf(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(orderNumber));
    return evidenceOf(records, stored);
}

Result<Decision> decisionOf(Records &records, const DecisionInput &input)
{
    LOOPWRIGHT_ASSIGN(const auto limits, limitSet(records, input.limitSet));
    return decide(input, limits);
}

Result<Decision> decisionNow(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_ASSIGN(const auto input, evidenceOf(records, orderNumber));
    return decisionOf(records, input);
}

Result<bool> storeDecision(Records &records, Transaction &transaction, const QString &orderNumber,
                           Decision &decision)
{
    LOOPWRIGHT_ASSIGN(const auto input, evidenceOf(records, orderNumber));
    LOOPWRIGHT_ASSIGN(auto decided, decisionOf(records, input));
    decision = std::move(decided);
    return DecisionStore::add(transaction, decision, input, records.now());
}

namespace {

QJsonObject decisionDetail(const Decision &decision)
{
    return {{"decision", decision.id}, {"outcome", toText(decision.outcome)}};
}

Result<void> checkException(const Decision &decision, const QStringList &criteriaKeys,
                            const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "An exception needs a reason."));
    if (criteriaKeys.isEmpty())
        return failure(ErrorCode::Usage, "Name the criteria that are excepted.", "except");
    for (const QString &key : criteriaKeys) {
        const CriterionResult *criterion = decision.criterion(key);
        if (!criterion)
            return failure(ErrorCode::Usage,
                           QString("\"%1\" is not a criterion of this order.").arg(key.left(60)),
                           "except");
        if (const Criterion *row = findCriterion(key); row && !row->mayBeExcepted)
            return failure(
                ErrorCode::Refused,
                QString("The %1 cannot be excepted.").arg(criterion->name.english().toLower()));
        if (criterion->outcome == CriterionOutcome::Met ||
            criterion->outcome == CriterionOutcome::NotNeeded)
            return failure(
                ErrorCode::Refused,
                QString("%1 needs no exception: it is %2.")
                    .arg(criterion->name.english(), toText(criterion->outcome).replace('_', ' ')));
    }
    return {};
}

} // namespace

Result<Decision> decideOrder(Records &records, const QString &orderNumber)
{
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(orderNumber));
    Decision decision;
    LOOPWRIGHT_ASSIGN(const auto isNew, storeDecision(records, transaction, orderNumber, decision));
    if (isNew) {
        LOOPWRIGHT_TRY(refreshState(records, transaction, orderNumber));
        LOOPWRIGHT_TRY(transaction.commit(
            orderEvent(records, stored.order, "decided", decisionDetail(decision))));
    }
    return decision;
}

Result<Decision> decideAgain(Records &records, const QString &decisionId)
{
    LOOPWRIGHT_ASSIGN(const auto stored, DecisionStore(records.database()).find(decisionId));
    if (!stored)
        return failure(ErrorCode::NotFound,
                       QString("There is no decision \"%1\".").arg(decisionId.left(60)));
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(stored->input, "decision " + decisionId));
    LOOPWRIGHT_ASSIGN(const auto input, DecisionInput::fromJson(object, "decision " + decisionId));
    auto again = decisionOf(records, input);
    if (again && canonicalJson(again->toJson()) != stored->result)
        return failure(ErrorCode::Refused,
                       QString("Decided again, %1 ends otherwise than it was stored: look at the "
                               "history of the records.")
                           .arg(decisionId));
    return again;
}

Result<Decision> acceptWithException(Records &records, const QString &orderNumber,
                                     const QStringList &criteriaKeys, const QString &because)
{
    LOOPWRIGHT_TRY(allow(records, Act::Except, orderNumber));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto stored, OrderStore(records.database()).get(orderNumber));
    LOOPWRIGHT_ASSIGN(const auto before, decisionNow(records, orderNumber));
    LOOPWRIGHT_TRY(checkException(before, criteriaKeys, because));
    LOOPWRIGHT_ASSIGN(const auto facts, FactStore(records.database()).ofOrder(orderNumber));
    QStringList known;
    for (const Fact &fact : facts)
        known << fact.id;
    const Fact exception{newFactId(),
                         records.now(),
                         orderNumber,
                         {},
                         {},
                         {},
                         ExceptionFact{criteriaKeys, because, records.by(), known}};
    LOOPWRIGHT_TRY(FactStore::add(transaction, exception));
    Decision decision;
    LOOPWRIGHT_TRY(storeDecision(records, transaction, orderNumber, decision));
    LOOPWRIGHT_TRY(refreshState(records, transaction, orderNumber));
    QJsonObject detail = decisionDetail(decision);
    detail.insert("criteria", QJsonArray::fromStringList(criteriaKeys));
    detail.insert("because", because);
    LOOPWRIGHT_TRY(transaction.commit(orderEvent(records, stored.order, "excepted", detail)));
    return decision;
}

} // namespace loopwright
