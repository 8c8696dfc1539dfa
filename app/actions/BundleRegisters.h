#pragma once
// What a van must know to work apart: offices, people, instruments, limit sets, who issues. PINs
// stay where they are, and the numbers of test lines go sealed.

#include "app/actions/Records.h"
#include "db/Transaction.h"

namespace loopwright {

Result<QJsonObject> registersOf(const Database &database);
/// {OFFICE: {label: number}}: for the van alone.
Result<QByteArray> testLinesOfAll(const Database &database);

/// Takes over what differs; whether anything did. What the van added itself stays.
Result<bool> takeRegisters(Transaction &transaction, const QJsonObject &registers,
                           const QByteArray &testLines, const QString &place);
/// Instruments that a van entered from their label, where nobody knows them here yet, or another
/// van read a later day from the label.
Result<QStringList> takeNewInstruments(Transaction &transaction, const QJsonObject &registers,
                                       const QString &place);

} // namespace loopwright
