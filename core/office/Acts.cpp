#include "core/office/Acts.h"

namespace loopwright {

namespace {

struct ActRow
{
    Act act;
    Role least;
    const char *words;               ///< completes "may not …"
    bool needsSupervisorAlways = {}; ///< also while the register has none
};

// In the order of the enumeration. The roles rise: installer, dispatcher, supervisor.
constexpr ActRow rows[] = {
    {Act::RecordFacts, Role::Installer, QT_TRANSLATE_NOOP("core", "record what was done")},
    {Act::LabelInstrument, Role::Installer,
     QT_TRANSLATE_NOOP("core", "enter an instrument from its label")},
    {Act::TakeOrderOnSite, Role::Installer, QT_TRANSLATE_NOOP("core", "enter an order on site")},
    {Act::IssueCertificate, Role::Installer, QT_TRANSLATE_NOOP("core", "issue a certificate")},
    {Act::HandOn, Role::Installer, QT_TRANSLATE_NOOP("core", "hand an order on")},
    {Act::VoidOwnFact, Role::Installer, QT_TRANSLATE_NOOP("core", "void an entry of one's own")},
    {Act::KeepOrders, Role::Dispatcher,
     QT_TRANSLATE_NOOP("core", "take in, change, complete or cancel orders")},
    {Act::KeepRegister, Role::Dispatcher,
     QT_TRANSLATE_NOOP("core", "change offices and instruments")},
    {Act::ExportInternal, Role::Dispatcher,
     QT_TRANSLATE_NOOP("core", "export unpublished numbers")},
    {Act::VoidAnothersFact, Role::Supervisor,
     QT_TRANSLATE_NOOP("core",
                       "void a hazard, or an entry that is another's or of an earlier visit")},
    {Act::Except, Role::Supervisor, QT_TRANSLATE_NOOP("core", "accept with an exception"), true},
    {Act::KeepLimits, Role::Supervisor, QT_TRANSLATE_NOOP("core", "change limit sets")},
    {Act::KeepPeople, Role::Supervisor, QT_TRANSLATE_NOOP("core", "change people and their roles")},
    {Act::KeepIssuer, Role::Supervisor, QT_TRANSLATE_NOOP("core", "change the issuer")},
    {Act::Restore, Role::Supervisor, QT_TRANSLATE_NOOP("core", "restore a backup")},
    {Act::KeepKeys, Role::Supervisor, QT_TRANSLATE_NOOP("core", "renew keys")},
    {Act::WorkApart, Role::Installer,
     QT_TRANSLATE_NOOP("core", "open or bring back what a van takes along")},
    {Act::SendVans, Role::Dispatcher,
     QT_TRANSLATE_NOOP("core", "hand orders to vans, or take their work in")},
    {Act::LoseVan, Role::Supervisor, QT_TRANSLATE_NOOP("core", "declare a van lost")},
    {Act::ChangeOffice, Role::Supervisor,
     QT_TRANSLATE_NOOP("core", "change all lines of an office at once")},
};

const ActRow &rowOf(Act act)
{
    const ActRow &row = rows[std::size_t(act)];
    Q_ASSERT(row.act == act);
    return row;
}

const char *roleInWords(Role role)
{
    switch (role) {
    case Role::Installer:
        return QT_TRANSLATE_NOOP("core", "an installer");
    case Role::Dispatcher:
        return QT_TRANSLATE_NOOP("core", "a dispatcher");
    case Role::Supervisor:
        break;
    }
    return QT_TRANSLATE_NOOP("core", "a supervisor");
}

} // namespace

Role leastRoleFor(Act act)
{
    return rowOf(act).least;
}

bool needsSupervisorAlways(Act act)
{
    return rowOf(act).needsSupervisorAlways;
}

Text whyNot(const Actor &actor, Act act)
{
    const ActRow &row = rowOf(act);
    if (!actor.registerHasSupervisor && !row.needsSupervisorAlways)
        return {};
    if (!actor.person)
        return Text(QT_TRANSLATE_NOOP("core", "\"%1\" is not in the register and may not %2: say "
                                              "who acts, %3 at least."))
            .arg(actor.said.left(60))
            .arg(Text(row.words))
            .arg(Text(roleInWords(row.least)));
    if (actor.person->role >= row.least)
        return {};
    return Text(QT_TRANSLATE_NOOP("core", "%1 is registered as %2 and may not %3: that needs %4."))
        .arg(nameOf(*actor.person))
        .arg(Text(roleInWords(actor.person->role)))
        .arg(Text(row.words))
        .arg(Text(roleInWords(row.least)));
}

} // namespace loopwright
