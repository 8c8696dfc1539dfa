#pragma once
// Who may do what: one table, read by every action before it changes anything. While the register
// has no supervisor everybody may do everything but what only a supervisor can answer for.

#include "core/base/EnumCodes.h"
#include "core/base/Text.h"
#include "core/office/Office.h"

#include <optional>

namespace loopwright {

/// What changes the records, as far as people differ in it. To read, verify, decide, back up and
/// export a public key is anybody's.
enum class Act
{
    RecordFacts,
    LabelInstrument, ///< on site, from what stands on it
    TakeOrderOnSite,
    IssueCertificate,
    HandOn,
    VoidOwnFact,  ///< recorded by who voids it, on the same visit or the same day
    KeepOrders,   ///< take in, change, assign, complete, cancel
    KeepRegister, ///< offices and instruments
    ExportInternal,
    VoidAnothersFact, ///< or a hazard
    Except,
    KeepLimits,
    KeepPeople,
    KeepIssuer,
    Restore,
    KeepKeys,
    WorkApart,    ///< open what the office hands out, and bring it back
    SendVans,     ///< add vans, hand orders out, take their work in, settle what differs
    LoseVan,      ///< believe nothing more that it signs
    ChangeOffice, ///< all lines of an office at once
};
template<>
struct EnumCodes<Act>
{
    static constexpr std::pair<Act, const char *> table[] = {
        {Act::RecordFacts, "record_facts"},
        {Act::LabelInstrument, "label_instrument"},
        {Act::TakeOrderOnSite, "take_order_on_site"},
        {Act::IssueCertificate, "issue_certificate"},
        {Act::HandOn, "hand_on"},
        {Act::VoidOwnFact, "void_own_fact"},
        {Act::KeepOrders, "keep_orders"},
        {Act::KeepRegister, "keep_register"},
        {Act::ExportInternal, "export_internal"},
        {Act::VoidAnothersFact, "void_anothers_fact"},
        {Act::Except, "except"},
        {Act::KeepLimits, "keep_limits"},
        {Act::KeepPeople, "keep_people"},
        {Act::KeepIssuer, "keep_issuer"},
        {Act::Restore, "restore"},
        {Act::KeepKeys, "keep_keys"},
        {Act::WorkApart, "work_apart"},
        {Act::SendVans, "send_vans"},
        {Act::LoseVan, "lose_van"},
        {Act::ChangeOffice, "change_office"}};
};

/// Who acts: what was said (a key, or the login), and the person of the register, if there is one.
struct Actor
{
    QString said;
    std::optional<Person> person;
    bool registerHasSupervisor = false;
};

/// The least of the roles that may do it.
Role leastRoleFor(Act act);
/// Needed also while the register has no supervisor: then nobody may.
bool needsSupervisorAlways(Act act);
/// Why not, in one sentence that says who may; empty if the actor may.
Text whyNot(const Actor &actor, Act act);

} // namespace loopwright
