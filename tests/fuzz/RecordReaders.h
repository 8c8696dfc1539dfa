#pragma once
// The readers that open records, and what they have in common with those that do not.

#include "core/base/Result.h"
#include "tests/fuzz/Fuzz.h"

namespace loopwright::fuzz {

template<class T>
void promiseWords(const Result<T> &result)
{
    promise(result || !result.error().message.isEmpty(), "an error says something");
}

/// A job record with a fact of each kind.
QByteArray wholeRecord();
/// It, or one with a single fact of it, so that the damage goes deep; or a seed.
QByteArray damagedRecord(Random &random);

void orders(Random &random);
void plans(Random &random);
void offices(Random &random);
void issuer(Random &random);
void installers(Random &random);
void instruments(Random &random);
void recordOnRecords(Random &random);
void pdf(Random &random);
void number(Random &random);
void square(Random &random);
void keys(Random &random);
void heads(Random &random);
void receive(Random &random);

/// Looks at the history of what is still open for the last time.
void closeRecords();
/// The records that receive() copies.
void closeDepot();

} // namespace loopwright::fuzz
