#pragma once
// The papers of several orders in one go: settings cards, slips, day lists, copies of certificates.

#include "app/actions/Records.h"
#include "app/print/Sheet.h"
#include "core/base/EnumCodes.h"

#include <QDate>

namespace loopwright {

enum class OrderPaper
{
    Settings,
    DayLists,     ///< of the installers whom the orders are assigned to
    Certificates, ///< that stand: each issued again, as a copy
    LeaveBehind,  ///< slips, of lines that are not accepted
    CloseOut      ///< slips, of accepted ones
};
template<>
struct EnumCodes<OrderPaper>
{
    static constexpr std::pair<OrderPaper, const char *> table[] = {
        {OrderPaper::Settings, "settings"},
        {OrderPaper::DayLists, "day_lists"},
        {OrderPaper::Certificates, "certificates"},
        {OrderPaper::LeaveBehind, "leave_behind"},
        {OrderPaper::CloseOut, "close_out"}};
};

struct PapersRequest
{
    QStringList orders;
    OrderPaper kind = OrderPaper::Settings;
    Paper paper = Paper::A4;
    QDate day = {}; ///< of the day lists
    /// Where each certificate, card or slip goes as a file of its own (cards and slips then into no
    /// sheet); empty: into none.
    QString folder = {};
};

struct OrderPapers
{
    Sheet sheet; ///< all of them, for one job of a printer or one file
    int papers = 0;
    QStringList without; ///< "O-1003: why it has none"
    QStringList doubts;  ///< of copies that stand no longer
};
/// Refused, with the reasons, if none of the orders has one, and if it was stopped, with what there
/// is of it all the same. A file that went into the folder is whole, and stays there if a later one
/// fails.
Result<OrderPapers> papersOf(Records &records, const PapersRequest &request,
                             const Progress &progress = {});

} // namespace loopwright
