#pragma once
// What the forms list: offices, people, instruments; and the audit of identifiers over the whole
// database.

#include "app/actions/Records.h"
#include "core/base/LimitSet.h"
#include "core/office/Office.h"

#include <vector>

namespace loopwright {

Result<QList<ServingOffice>> offices(Records &records);
/// Unpublished: for installers, never on a paper for a customer. Empty for an unknown office.
Result<QList<TestLine>> testLinesOf(Records &records, const QString &office);
Result<QList<Person>> people(Records &records);
Result<QList<Instrument>> instruments(Records &records);
/// NotFound, in a sentence, if the register has no person of this key.
Result<Person> registeredPerson(Records &records, const QString &key);

/// One thing that the audit found, with the circuits that it concerns.
struct AuditFinding
{
    QString code;   ///< "dn_twice", "spid_twice", "pair_twice", "identifier_error"
    QString reason; ///< one sentence
    QString value;
    QStringList circuits;
    QStringList orders;

    QJsonObject toJson() const;
};
/// Every DN, SPID and pair over the whole database, and every open order's identifiers by the
/// rules.
Result<std::vector<AuditFinding>> auditIdentifiers(Records &records, const Progress &progress = {});

} // namespace loopwright
