#include "app/actions/Acceptance.h"

#include "app/actions/Doing.h"
#include "app/actions/LimitSets.h"
#include "core/acceptance/Judging.h"
#include "db/DecisionStore.h"
#include "db/EvidenceStore.h"
#include "db/FactStore.h"
#include "db/LimitSetStore.h"
#include "db/PersonStore.h"

#include <QUuid>

namespace loopwright {

Result<DecisionInput> evidenceOf(Records &records, const StoredOrder &stored)
{
    const auto limits = limitsFor(records, stored);
    if (!limits)
        return failure(limits.error());
    return EvidenceStore(records.database()).of(stored, limits->version());
}

Result<DecisionInput> evidenceOf(Records &records, const QString &orderNumber)
{
    const auto stored = orderOf(records.database(), orderNumber);
    if (!stored)
        return failure(stored.error());
    return evidenceOf(records, *stored);
}

Result<Decision> decisionOf(Records &records, const DecisionInput &input)
{
    const auto limits = limitSet(records, input.limitSet);
    if (!limits)
        return failure(limits.error());
    return decide(input, *limits);
}

Result<Decision> decisionNow(Records &records, const QString &orderNumber)
{
    const auto input = evidenceOf(records, orderNumber);
    if (!input)
        return failure(input.error());
    return decisionOf(records, *input);
}

Result<bool> storeDecision(Records &records, Transaction &transaction, const QString &orderNumber,
                           Decision &decision)
{
    const auto input = evidenceOf(records, orderNumber);
    if (!input)
        return failure(input.error());
    auto decided = decisionOf(records, *input);
    if (!decided)
        return failure(decided.error());
    decision = std::move(*decided);
    return DecisionStore::add(transaction, decision, *input, records.now());
}

namespace {

QJsonObject decisionDetail(const Decision &decision)
{
    return {{"decision", decision.id}, {"outcome", toText(decision.outcome)}};
}

Result<void> checkException(Records &records, const Decision &decision,
                            const QStringList &criteriaKeys, const QString &because)
{
    LOOPWRIGHT_TRY(checkReason(because, "An exception needs a reason."));
    if (records.by().trimmed().isEmpty())
        return failure(ErrorCode::Usage,
                       "An exception needs the name of the supervisor who makes it.", "by");
    if (criteriaKeys.isEmpty())
        return failure(ErrorCode::Usage, "Name the criteria that are excepted.", "except");
    for (const QString &key : criteriaKeys) {
        const CriterionResult *criterion = decision.criterion(key);
        if (!criterion)
            return failure(ErrorCode::Usage,
                           QString("\"%1\" is not a criterion of this order.").arg(key.left(60)),
                           "except");
        if (key == "safety")
            return failure(ErrorCode::Refused, "The safety card cannot be excepted.");
        if (criterion->outcome == CriterionOutcome::Met ||
            criterion->outcome == CriterionOutcome::NotNeeded)
            return failure(ErrorCode::Refused,
                           QString("%1 needs no exception: it is %2.")
                               .arg(criterion->name, toText(criterion->outcome).replace('_', ' ')));
    }
    const auto people = PersonStore(records.database()).all();
    if (!people)
        return failure(people.error());
    for (const Person &person : *people)
        if ((person.key == records.by() || person.name == records.by()) &&
            person.role != Role::Supervisor)
            return failure(ErrorCode::Refused,
                           QString("%1 is registered as %2; a supervisor must make the exception.")
                               .arg(person.name, toText(person.role)));
    return {};
}

} // namespace

Result<Decision> decideOrder(Records &records, const QString &orderNumber)
{
    auto transaction = Transaction::begin(records.database());
    if (!transaction)
        return failure(transaction.error());
    const auto stored = orderOf(records.database(), orderNumber);
    if (!stored)
        return failure(stored.error());
    Decision decision;
    const auto isNew = storeDecision(records, *transaction, orderNumber, decision);
    if (!isNew)
        return failure(isNew.error());
    if (*isNew) {
        LOOPWRIGHT_TRY(refreshState(records, *transaction, orderNumber));
        LOOPWRIGHT_TRY(transaction->commit(
            orderEvent(records, stored->order, "decided", decisionDetail(decision))));
    }
    return decision;
}

Result<Decision> decideAgain(Records &records, const QString &decisionId)
{
    const auto stored = DecisionStore(records.database()).find(decisionId);
    if (!stored)
        return failure(stored.error());
    if (!*stored)
        return failure(ErrorCode::NotFound,
                       QString("There is no decision \"%1\".").arg(decisionId.left(60)));
    const auto object = parseJsonObject((*stored)->input, "decision " + decisionId);
    if (!object)
        return failure(object.error());
    const auto input = DecisionInput::fromJson(*object, "decision " + decisionId);
    if (!input)
        return failure(input.error());
    auto again = decisionOf(records, *input);
    if (again && canonicalJson(again->toJson()) != (*stored)->result)
        return failure(ErrorCode::Refused,
                       QString("Decided again, %1 ends otherwise than it was stored: look at the "
                               "history of the records.")
                           .arg(decisionId));
    return again;
}

Result<Decision> acceptWithException(Records &records, const QString &orderNumber,
                                     const QStringList &criteriaKeys, const QString &because)
{
    auto transaction = Transaction::begin(records.database());
    if (!transaction)
        return failure(transaction.error());
    const auto stored = orderOf(records.database(), orderNumber);
    if (!stored)
        return failure(stored.error());
    const auto before = decisionNow(records, orderNumber);
    if (!before)
        return failure(before.error());
    LOOPWRIGHT_TRY(checkException(records, *before, criteriaKeys, because));
    const auto facts = FactStore(records.database()).ofOrder(orderNumber);
    if (!facts)
        return failure(facts.error());
    QStringList known;
    for (const Fact &fact : *facts)
        known << fact.id;
    const Fact exception{QUuid::createUuid().toString(QUuid::WithoutBraces),
                         records.now(),
                         orderNumber,
                         {},
                         {},
                         ExceptionFact{criteriaKeys, because, records.by(), known}};
    const auto added = FactStore::add(*transaction, exception);
    if (!added)
        return failure(added.error());
    Decision decision;
    const auto isNew = storeDecision(records, *transaction, orderNumber, decision);
    if (!isNew)
        return failure(isNew.error());
    LOOPWRIGHT_TRY(refreshState(records, *transaction, orderNumber));
    QJsonObject detail = decisionDetail(decision);
    detail.insert("criteria", QJsonArray::fromStringList(criteriaKeys));
    detail.insert("because", because);
    LOOPWRIGHT_TRY(transaction->commit(orderEvent(records, stored->order, "excepted", detail)));
    return decision;
}

} // namespace loopwright
