#pragma once
// What the words of a search name beside orders: circuits and people, so that one who looks for
// either need not read it off a row.

#include "app/actions/Records.h"
#include "core/office/Office.h"

namespace loopwright {

struct FoundCircuit
{
    QString number;
    QString customer, premises; ///< of its newest order that was found
};

struct FoundKinds
{
    std::vector<FoundCircuit> circuits; ///< whose number, pair, DNs or SPIDs hold the words
    QList<Person> people;               ///< who were given an order
};
inline constexpr int mostOfAKind = 3;

/// Of each kind mostOfAKind. Circuits that are named whole come first, then by number; none of
/// either for an empty text.
Result<FoundKinds> foundKinds(Records &records, const QString &text);

} // namespace loopwright
