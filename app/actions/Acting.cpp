#include "app/actions/Acting.h"

#include "app/actions/Events.h"
#include "app/trust/Pin.h"
#include "db/Connection.h"
#include "db/OrderStore.h"
#include "db/PersonStore.h"
#include "db/Transaction.h"

#include <algorithm>

namespace loopwright {

namespace {

bool isSupervisor(const Person &person)
{
    return person.role == Role::Supervisor;
}

/// Keeps a refusal; if that cannot be written, it is a refusal all the same.
Error refused(Records &records, Act act, const std::optional<StoredOrder> &of, const QString &why)
{
    const QJsonObject detail{{"act", toText(act)}, {"because", why}};
    if (auto transaction = Transaction::begin(records.database()))
        (void)transaction->commit(of ? orderEvent(records, of->order, "refused", detail)
                                     : registerEvent(records, "refused", detail));
    return {ErrorCode::Refused, why, {}};
}

/// Why his PIN does not let him; empty if it does, or none is asked.
Result<QString> pinTrouble(Records &records, const Person &person)
{
    if (records.isOnServer()) // to which he has shown who he is; and its owner could change any PIN
        return QString();
    if (!person.login.isEmpty() && person.login == Records::loginName())
        return QString();
    LOOPWRIGHT_ASSIGN(const auto hash, PersonStore(records.database()).pinOf(person.key));
    if (hash.isEmpty())
        return QString();
    const std::optional<QString> pin = records.askPin(person);
    if (!pin)
        return QString("This needs the PIN of %1.").arg(person.name);
    return pinMatches(hash, *pin) ? QString()
                                  : QString("This is not the PIN of %1.").arg(person.name);
}

} // namespace

bool actsAsItself(Records &records)
{
    const auto login = records.database().login();
    return login && !login->isOwner;
}

Result<void> actFor(Records &records, const QString &by)
{
    if (actsAsItself(records) && !by.isEmpty() && by != records.login())
        return failure(
            ErrorCode::Refused,
            QString("You are logged in as %1 and act as nobody else.").arg(records.login()));
    if (records.database().login() && by.isEmpty()) {
        records.actAs(records.login()); // who has the login has the key
        return {};
    }
    if (!by.isEmpty()) {
        records.actAs(by);
        return {};
    }
    LOOPWRIGHT_ASSIGN(const auto people, PersonStore(records.database()).all());
    const auto found = std::ranges::find(people, Records::loginName(), &Person::login);
    records.actAs(found == people.end() ? Records::loginName() : found->key);
    return {};
}

Result<Actor> actorOf(Records &records)
{
    LOOPWRIGHT_ASSIGN(const auto people, PersonStore(records.database()).all());
    Actor actor{records.by(), {}, std::ranges::any_of(people, isSupervisor)};
    const auto found = std::ranges::find(people, records.by(), &Person::key);
    if (found != people.end())
        actor.person = *found;
    if (actsAsItself(records)) { // the server's groups say what he is
        if (!actor.person)
            actor.person = Person{.key = actor.said, .name = actor.said};
        actor.person->role = records.database().login()->role.value_or(Role::Installer);
        actor.registerHasSupervisor = true;
    }
    return actor;
}

Result<void> allow(Records &records, Act act, const QString &order)
{
    LOOPWRIGHT_ASSIGN(const auto actor, actorOf(records));
    QString why = whyNot(actor, act).english();
    const bool asksPin = actor.person && leastRoleFor(act) == Role::Supervisor;
    if (why.isEmpty() && !asksPin)
        return {};
    std::optional<StoredOrder> stored;
    if (!order.isEmpty()) {
        LOOPWRIGHT_ASSIGN(stored, OrderStore(records.database()).find(order));
        if (!stored)
            return {}; // the act itself says that there is none
    }
    if (why.isEmpty()) {
        LOOPWRIGHT_ASSIGN(const auto trouble, pinTrouble(records, *actor.person));
        why = trouble;
    }
    if (!why.isEmpty())
        return failure(refused(records, act, stored, why));
    return {};
}

Result<void> setPin(Records &records, const QString &key, const QString &pin)
{
    LOOPWRIGHT_ASSIGN(const auto person, PersonStore(records.database()).find(key));
    if (!person)
        return failure(ErrorCode::NotFound,
                       QString("\"%1\" is not in the register.").arg(key.left(60)));
    LOOPWRIGHT_ASSIGN(const auto actor, actorOf(records));
    const bool own = actor.person && actor.person->key == key;
    // There everybody who logs in can read what would be kept of it.
    if (records.isOnServer() && !pin.isEmpty())
        return failure(
            ErrorCode::Refused,
            "On a server the login takes the place of a PIN: change its password there.");
    if (own) {
        LOOPWRIGHT_ASSIGN(const auto trouble, pinTrouble(records, *person));
        if (!trouble.isEmpty())
            return failure(refused(records, Act::KeepPeople, {}, trouble));
    } else {
        LOOPWRIGHT_TRY(allow(records, Act::KeepPeople));
    }
    LOOPWRIGHT_ASSIGN(const auto hash, pin.isEmpty() ? Result<QString>(QString()) : pinHash(pin));
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_TRY(PersonStore::setPin(transaction, *person, hash));
    return transaction.commit(registerEvent(records, hash.isEmpty() ? "pin_removed" : "pin_set",
                                            {{"installer", person->key}}));
}

} // namespace loopwright
