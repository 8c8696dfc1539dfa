#pragma once
// What makes a whole statement of one that is put together.

#include <string>
#include <string_view>
#include <vector>

namespace loopwright {

/// Statements of the board are put together (db/BoardStatement.cpp, whose test prepares every way
/// to do so): of these, the parts that say from where they read.
inline std::vector<std::string_view> partsOf(const std::string &label)
{
    for (const char *tallied :
         {"sum", "tallied", "stages", "outcomes", "criteria", "installers", "waited_on"})
        if (label == std::string("board.") + tallied)
            return {"board.from_tally"};
    if (label == "board.number")
        return {"board.from_due"};
    if (label == "board.grouped")
        return {"board.from_due", "board.with_order", "board.where", "board.by_combination"};
    if (label == "board.lines" || label == "board.count")
        return {"board.from_due", "board.with_order"};
    if (label == "report.figures" || label == "report.orders")
        return {"report.first_visit",
                label == "report.figures" ? "report.by_key" : "report.behind"};
    return {};
}

} // namespace loopwright
