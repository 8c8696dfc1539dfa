#pragma once
// What makes a whole statement of one that is put together.

#include "db/PostgresSession.h"
#include "db/PostgresSql.h"

#include <algorithm>
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

/// As it is prepared where nothing is bound: whole numbers are told to be such as they are bound.
inline std::string typedText(const std::string &label, const PostgresSql &made)
{
    std::string typed = made.text;
    if (label != "certificate.add_issue")
        return typed;
    const auto issue = std::ranges::find(made.parameters, "issue") - made.parameters.begin();
    const std::string number = "$" + std::to_string(issue + 1);
    typed.replace(typed.find(number), number.size(), "CAST(" + number + " AS bigint)");
    return typed;
}

/// Has the server prepare it, under a name of its own.
inline Result<std::string> prepared(PostgresSession &session, const std::string &label,
                                    const std::string &sql)
{
    const std::string name = session.newName();
    const std::string text = "PREPARE " + name + " AS " + typedText(label, toPostgres(sql));
    LOOPWRIGHT_TRY(session.execute(QByteArray::fromStdString(text), "test"));
    return name;
}

} // namespace loopwright
