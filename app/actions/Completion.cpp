#include "app/actions/Completion.h"

#include "app/actions/Acceptance.h"
#include "app/actions/LineSince.h"
#include "core/certificate/CertificateNumber.h"
#include "core/certificate/Slips.h"
#include "db/DecisionStore.h"
#include "db/EventStore.h"
#include "db/OrderStore.h"

#include <QRegularExpression>

namespace loopwright {

namespace {

QString digitsOf(QString number)
{
    static const QRegularExpression separators("[\\s-]+");
    return number.remove(separators);
}

bool isOf(const Decision &decision, const QString &digits)
{
    return isAccepted(decision.outcome) && digitsOf(completionNumber(decision)) == digits;
}

} // namespace

Result<SpokenNumber> checkCompletion(Records &records, const QString &order, const QString &spoken)
{
    LOOPWRIGHT_ASSIGN(const auto now, decisionNow(records, order));
    const QString digits = digitsOf(spoken);
    if (digits.size() != 10 || mod97CheckDigits(digits.left(8)) != digits.right(2))
        return SpokenNumber::Misheard;
    LOOPWRIGHT_ASSIGN(const auto whole, OrderStore(records.database()).get(order));
    if (isOf(now, digits)) {
        LOOPWRIGHT_ASSIGN(const auto ofCircuit,
                          EventStore(records.database()).ofCircuit(whole.order.circuit));
        LOOPWRIGHT_ASSIGN(const auto since, lineSince(records.database(), whole.order, ofCircuit));
        return whole.status == OrderStatus::Cancelled || !since.isEmpty() ? SpokenNumber::Superseded
                                                                          : SpokenNumber::Stands;
    }
    LOOPWRIGHT_ASSIGN(const auto stored, DecisionStore(records.database()).ofOrder(order));
    for (const StoredDecision &each : stored) {
        LOOPWRIGHT_ASSIGN(const auto earlier, decideAgain(records, each.id));
        if (isOf(earlier, digits))
            return SpokenNumber::Superseded;
    }
    return SpokenNumber::Another;
}

} // namespace loopwright
