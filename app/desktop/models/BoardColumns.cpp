// The columns of the board: what each says of an order.

#include "app/desktop/Language.h"
#include "app/desktop/Names.h"
#include "app/desktop/models/BoardModel.h"

#include <algorithm>

namespace loopwright {

namespace {

/// A cancelled order has no outcome to wait for; a held one is told apart from an open one.
QString outcomeText(const BoardRow &row)
{
    if (row.status == OrderStatus::Cancelled)
        return BoardModel::tr("Cancelled");
    if (row.hazard)
        return BoardModel::tr("Hazard");
    return row.held ? BoardModel::tr("Held") : outcomeName(row.outcome);
}

QString dueText(const BoardRow &row, QDate today)
{
    const QString words = dueWords(row.due, today, !row.isPending());
    const QString day = dayText(row.due, today);
    return words.isEmpty() ? day : day + " · " + words;
}

/// What stands in the way: an open hazard before all else; of what is accepted, its paper.
QString whyText(const BoardRow &row, QDate today)
{
    if (row.hazard)
        return QString(hazardAge(row.hazardDays(today)) + u' ' + localizedSentence(row.reason))
            .trimmed();
    if (row.status == OrderStatus::Cancelled)
        return BoardModel::tr("Cancelled");
    if (row.paper)
        return BoardModel::tr("Accepted; its certificate is not issued");
    return localizedSentence(row.reason);
}

QString installerText(const BoardRow &row, QDate)
{
    return row.installerName.isEmpty() ? row.installer : row.installerName;
}

QString waitingText(const BoardRow &row, QDate)
{
    return waitingOnName(row.waitingOn);
}

constexpr BoardColumn columnTable[] = {
    {"order", QT_TRANSLATE_NOOP("BoardModel", "Order"), 7, true, BoardSort::Number,
     [](const BoardRow &row, QDate) { return row.order; }},
    {"due", QT_TRANSLATE_NOOP("BoardModel", "Due"), 15, true, BoardSort::Urgency, dueText},
    {"customer", QT_TRANSLATE_NOOP("BoardModel", "Customer"), 10, true, BoardSort::Customer,
     [](const BoardRow &row, QDate) { return row.customer; }},
    {"why", QT_TRANSLATE_NOOP("BoardModel", "Why not accepted"), 26, true, BoardSort::Criterion,
     whyText},
    {"stage", QT_TRANSLATE_NOOP("BoardModel", "Stage"), 7, true, BoardSort::Stage,
     [](const BoardRow &row, QDate) { return localizedWord(stageName(row.stage)); }},
    {"outcome", QT_TRANSLATE_NOOP("BoardModel", "Outcome"), 10, true, BoardSort::Outcome,
     [](const BoardRow &row, QDate) { return outcomeText(row); }},
    {"installer", QT_TRANSLATE_NOOP("BoardModel", "Installer"), 8, true, BoardSort::Installer,
     installerText},
    {"office", QT_TRANSLATE_NOOP("BoardModel", "Office"), 6, true, BoardSort::Office,
     [](const BoardRow &row, QDate) { return row.office; }},
    {"circuit", QT_TRANSLATE_NOOP("BoardModel", "Circuit"), 8, true, BoardSort::Circuit,
     [](const BoardRow &row, QDate) { return row.circuit; }},
    {"pair", QT_TRANSLATE_NOOP("BoardModel", "Pair"), 7, false, BoardSort::Pair,
     [](const BoardRow &row, QDate) { return row.pair; }},
    {"waiting_on", QT_TRANSLATE_NOOP("BoardModel", "Waits on"), 8, true, BoardSort::WaitingOn,
     waitingText}};

} // namespace

std::span<const BoardColumn> boardColumns()
{
    return columnTable;
}

int boardColumn(QStringView key)
{
    const auto found = std::ranges::find_if(
        columnTable, [key](const BoardColumn &column) { return key == QLatin1String(column.key); });
    return found == std::end(columnTable) ? -1 : int(found - std::begin(columnTable));
}

} // namespace loopwright
