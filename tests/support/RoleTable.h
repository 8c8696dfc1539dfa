#pragma once
// The table of roles, written out once more for the tests of core and of both faces: what nobody
// meant to change there fails here.

#include "core/office/Acts.h"

#include <algorithm>

namespace loopwright::roles {

struct Row
{
    Act act;
    Role least;
};
inline constexpr Row table[] = {
    {Act::RecordFacts, Role::Installer},     {Act::LabelInstrument, Role::Installer},
    {Act::TakeOrderOnSite, Role::Installer}, {Act::IssueCertificate, Role::Installer},
    {Act::HandOn, Role::Installer},          {Act::VoidOwnFact, Role::Installer},
    {Act::WorkApart, Role::Installer},       {Act::KeepOrders, Role::Dispatcher},
    {Act::KeepRegister, Role::Dispatcher},   {Act::ExportInternal, Role::Dispatcher},
    {Act::SendVans, Role::Dispatcher},       {Act::VoidAnothersFact, Role::Supervisor},
    {Act::Except, Role::Supervisor},         {Act::KeepLimits, Role::Supervisor},
    {Act::KeepPeople, Role::Supervisor},     {Act::KeepIssuer, Role::Supervisor},
    {Act::Restore, Role::Supervisor},        {Act::KeepKeys, Role::Supervisor},
    {Act::LoseVan, Role::Supervisor},        {Act::ChangeOffice, Role::Supervisor},
};

/// Somebody who tries all acts, in records whose register has a supervisor or none.
struct Worker
{
    const char *key;
    std::optional<Role> role; ///< none: he is not in the register
    bool supervised = true;
};
inline constexpr Worker workers[] = {{"K9", Role::Installer}, // not who recorded the jobs
                                     {"D4", Role::Dispatcher},
                                     {"S1", Role::Supervisor},
                                     {"somebody", std::nullopt},
                                     {"somebody", std::nullopt, false}};

/// While nobody supervises everybody may do all, but what only a supervisor can answer for.
inline bool may(const Worker &worker, Act act)
{
    if (!worker.supervised)
        return act != Act::Except;
    return worker.role && *worker.role >= std::ranges::find(table, act, &Row::act)->least;
}

/// Of a row of a test: "keep_orders by K9".
inline QByteArray nameOfTry(const char *what, const Worker &worker)
{
    return QByteArray(what) + " by " + worker.key + (worker.supervised ? "" : ", unsupervised");
}

/// The acts of which `rows` has none: a new one is to be tried too.
template<class Rows>
QStringList actsWithout(const Rows &rows)
{
    QStringList missing;
    for (const auto &[act, word] : EnumCodes<Act>::table)
        if (std::ranges::none_of(rows, [act = act](const auto &row) { return row.act == act; }))
            missing << QString::fromLatin1(word);
    return missing;
}

} // namespace loopwright::roles
