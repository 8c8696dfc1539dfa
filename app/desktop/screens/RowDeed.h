#pragma once
// What the desk does to the orders that are selected on the board: what it asks, what it does and
// how it says so. A deed is one function here and one row of the table in RowActions.cpp.

#include "app/desktop/DoneStep.h"
#include "app/desktop/form/FieldSpec.h"
#include "core/acceptance/BoardRow.h"
#include "core/base/Finding.h"

#include <optional>
#include <vector>

namespace loopwright {

/// What came of it, all or none.
struct DeedReport
{
    QStringList changed;                             ///< orders
    QStringList unchanged;                           ///< were so already
    QString sentence;                                ///< of a deed that has none itself
    QString remark;                                  ///< what is doubtful about it
    std::function<Result<void>(Records &)> takeBack; ///< empty: nothing is to be taken back
};

/// A list of the form that says more about each choice by what is typed in another field.
struct DeedList
{
    QString field; ///< the list
    QString by;
    /// Called beside the window's thread.
    std::function<Result<std::vector<KeyedOption>>(Records &, const QString &typed)> options;
};

struct Deed
{
    QString title;
    QString confirm;                    ///< text of the button
    std::vector<FieldSpec> fields = {}; ///< none: it is done without asking
    QString letGo = {};                 ///< text of the button that does nothing, if it has one
    QJsonObject proposed = {};
    std::optional<DeedList> list = {};
    /// Of the values of the form; `field` is a key of it.
    std::function<Findings(const QJsonObject &values)> check = {};
    /// Called beside the window's thread: holds copies alone. Long work asks the progress.
    std::function<Result<DeedReport>(Records &, const QJsonObject &values, const Progress &)>
        carryOut = {};
    /// "3 orders assigned to A. Rivera for Tue 1 Dec."
    std::function<QString(const QStringList &changed, const QJsonObject &values)> sentence = {};
    bool prints = false; ///< its papers can go to a printer too
};

/// What a deed is made from; `rows` is not empty.
struct DeedGround
{
    std::vector<BoardRow> rows;
    QList<Person> people; ///< the registered ones
    QString by;           ///< who works, by name
    Moment now;
    QStringList related = {};             ///< further orders that are released together with these
    std::vector<BoardRow> alsoThere = {}; ///< further open ones at the same premises

    QStringList orders() const;
};

/// What is missing at a field of a deed, in a sentence.
Finding lackAt(const QString &field, const QString &sentence);

/// "Order O-1001", "12 orders"; begins a sentence.
QString deedSubject(const QStringList &orders);
/// "O-1001, O-1002 and 3 more"
QString firstOrders(const QStringList &orders);

/// With what each installer has on the day; offers the others at the same premises.
Deed assigning(const DeedGround &ground);
Deed redating(const DeedGround &ground);
Deed holding(const DeedGround &ground);
Deed resuming(const DeedGround &ground);
/// No way back: what they held is free for others at once.
Deed cancelling(const DeedGround &ground);
/// What the office did for the lines, with who and when; releasing offers the related orders.
Deed deskWork(const DeedGround &ground);
// What is read before they ask, beside the window's thread.
Result<DeedGround> withOthersThere(Records &records, DeedGround ground);
Result<DeedGround> withRelated(Records &records, DeedGround ground);

} // namespace loopwright
