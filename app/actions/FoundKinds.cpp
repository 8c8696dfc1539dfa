#include "app/actions/FoundKinds.h"

#include "app/actions/Board.h"
#include "app/actions/Register.h"
#include "core/base/Folding.h"
#include "db/BoardStore.h"
#include "db/SearchText.h"

#include <algorithm>

namespace loopwright {

namespace {

constexpr int rowsLooked = 60; ///< of the orders found: of these come the circuits

/// What a circuit is called or known by; not whose it is, or where.
bool isOfLine(const QString &column)
{
    return column == u"circuit_number" || column == u"pair" || column.startsWith(u"dn_") ||
           column.startsWith(u"spid_");
}

} // namespace

Result<FoundKinds> foundKinds(Records &records, const QString &text)
{
    FoundKinds found;
    if (text.trimmed().isEmpty())
        return found;
    BoardFilter filter;
    filter.text = text.trimmed();
    filter.limit = rowsLooked;
    filter.sort = BoardSort::Due;
    filter.descending = true;
    LOOPWRIGHT_ASSIGN(const auto rows, boardRows(records, filter));
    for (const BoardRow &row : rows)
        if (std::ranges::any_of(row.foundIn, isOfLine) &&
            std::ranges::find(found.circuits, row.circuit, &FoundCircuit::number) ==
                found.circuits.end())
            found.circuits.push_back({row.circuit, row.customer, row.premises});
    const QString typed = foldForSearch(filter.text);
    std::ranges::sort(found.circuits, {}, [&typed](const FoundCircuit &each) {
        return std::pair(foldForSearch(each.number) != typed, each.number);
    });
    found.circuits.resize(std::min(found.circuits.size(), std::size_t(mostOfAKind)));
    LOOPWRIGHT_ASSIGN(const auto registered, people(records));
    const std::vector<NamedInstaller> named = installersNamed(registered, filter.text);
    for (const Person &person : registered) {
        if (found.people.size() == mostOfAKind ||
            std::ranges::find(named, person.key, &NamedInstaller::key) == named.end())
            continue;
        BoardQuery his;
        his.facets.insert(BoardFacet::Installer, person.key);
        LOOPWRIGHT_ASSIGN(const auto orders, BoardStore(records.database()).count(his));
        if (orders > 0)
            found.people << person;
    }
    return found;
}

} // namespace loopwright
