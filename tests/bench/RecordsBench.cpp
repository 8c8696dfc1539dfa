// How long the questions take that a person waits for, as the records grow: pages and counts of the
// board, searches, a job among 500 lines at its premises, a day list, the check of an order that is
// typed ("is this number, SPID or pair taken?"), the audit. Databases of invented circuits are made
// in FOLDER if they are not there yet (a million: ten gigabytes, and the better part of an hour of
// one core), and kept for the next time.
//
//   bench.records FOLDER [CIRCUITS…]      (10000 100000 1000000 unless said)
//
// Each figure is a median of several rounds, in milliseconds; beside it its ratio to the same rows
// out of the same connection by SQL that is written by hand, and its growth since the smallest
// database. Of many questions the median one and the worst are told.

#include "app/actions/Board.h"
#include "app/actions/BulkChange.h"
#include "app/actions/DayList.h"
#include "app/actions/LimitChanges.h"
#include "app/actions/Maintenance.h"
#include "app/actions/OfficeLoops.h"
#include "app/actions/Orders.h"
#include "app/actions/Register.h"
#include "app/actions/Reports.h"
#include "db/BoardStatement.h"
#include "db/OrderStore.h"
#include "tests/bench/Measured.h"

#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>

#include <functional>
#include <random>

using namespace loopwright;

namespace {

constexpr int checks = 500;

/// Of questions that take turns, so that a busy machine slows both; fewer rounds of what takes
/// seconds.
std::pair<double, double> medians(int rounds, const std::function<void()> &ours,
                                  const std::function<void()> &byHand)
{
    std::vector<double> mine, theirs;
    constexpr double longMs = 2000;
    double spent = 0;
    for (int round = 0; round < rounds && spent < longMs; ++round) {
        mine.push_back(msOf(ours));
        theirs.push_back(msOf(byHand));
        spent += mine.back() + theirs.back();
    }
    return {median(mine), median(theirs)};
}

std::unique_ptr<Records> opened(const QString &path)
{
    auto records = good(Records::open(path));
    good(bringShippedLimits(*records));
    return records;
}

QString databaseOf(const QDir &folder, int circuits)
{
    const QString path = folder.filePath(QString("circuits-%1.sqlite").arg(circuits));
    if (QFileInfo::exists(path))
        return path;
    const QString unfinished = path + ".unfinished";
    const double ms = msOf([&] { good(fillWithInvented(*opened(unfinished), circuits, 1)); });
    std::fprintf(stderr, "%d circuits invented within %.0f s\n", circuits, ms / 1000);
    if (!QFile::rename(unfinished, path))
        stop({ErrorCode::DiskTrouble, "cannot be renamed", unfinished});
    return path;
}

struct Filter
{
    QString name;
    BoardQuery query;
    QByteArray where;
};

/// One value of each filter, some rows or many; values that no order has.
std::vector<Filter> oneFilter()
{
    const auto facet = [](BoardFacet facet, const char *value) {
        BoardQuery query;
        query.facets.insert(facet, value);
        return query;
    };
    return {
        {"all", {}, ""},
        {"open", facet(BoardFacet::Open, "1"), " WHERE s.status = 'open'"},
        {"stage done", facet(BoardFacet::Stage, "done"), " WHERE s.stage = 'done'"},
        {"stage calls", facet(BoardFacet::Stage, "calls"), " WHERE s.stage = 'calls'"},
        {"not accepted", facet(BoardFacet::Outcome, "not_accepted"),
         " WHERE s.outcome = 'not_accepted'"},
        {"with exception (none)", facet(BoardFacet::Outcome, "accepted_with_exception"),
         " WHERE s.outcome = 'accepted_with_exception'"},
        {"failing safety", facet(BoardFacet::Criterion, "safety"), " WHERE s.criterion = 'safety'"},
        {"largest office", facet(BoardFacet::Office, "OFFICE01"), " WHERE s.office = 'OFFICE01'"},
        {"small office", facet(BoardFacet::Office, "OFFICE70"), " WHERE s.office = 'OFFICE70'"},
        {"installer", facet(BoardFacet::Installer, "P011"), " WHERE s.installer = 'P011'"},
        {"nobody's installer (none)", facet(BoardFacet::Installer, "NONE"),
         " WHERE s.installer = 'NONE'"},
        {"waiting on plant", facet(BoardFacet::WaitingOn, "plant"),
         " WHERE s.waiting_on = 'plant'"},
        {"waiting on weather (none)", facet(BoardFacet::WaitingOn, "weather"),
         " WHERE s.waiting_on = 'weather'"},
        {"paper", facet(BoardFacet::Paper, "1"), " WHERE s.paper = 1"},
        {"hazard", facet(BoardFacet::Hazard, "1"), " WHERE s.hazard = 1 AND s.stage <> 'done'"}};
}

QByteArray orderOf(BoardSort sort)
{
    static const QMap<BoardSort, QByteArray> first{
        {BoardSort::Urgency, "s.hazard = 1 AND s.stage <> 'done' DESC, "},
        {BoardSort::Stage, "s.stage, "},
        {BoardSort::Outcome, "s.outcome, "},
        {BoardSort::Criterion, "s.criterion, "},
        {BoardSort::Office, "s.office, "},
        {BoardSort::Installer, "i.name IS NULL, i.name, "},
        {BoardSort::Customer, "s.customer, "},
        {BoardSort::Circuit, "s.circuit_number, "},
        {BoardSort::Pair, "s.pair, "},
        {BoardSort::WaitingOn, "s.waiting_on = '', s.waiting_on, "}};
    if (sort == BoardSort::Number)
        return "s.order_number";
    return first.value(sort) + "s.due_date, s.order_number";
}

BoardFilter page(const BoardQuery &query)
{
    BoardFilter filter;
    static_cast<BoardQuery &>(filter) = query;
    filter.limit = pageRows;
    return filter;
}

/// Each filter with each sort.
void measurePages(Records &records, int circuits, Figures &table)
{
    std::vector<Figures::Asked> asked;
    for (const Filter &filter : oneFilter())
        for (const auto &[sort, code] : EnumCodes<BoardSort>::table) {
            BoardFilter query = page(filter.query);
            query.sort = sort;
            const ByHand byHand(records, filter.where, orderOf(sort));
            const auto [ours, theirs] = medians(
                5, [&] { good(boardRows(records, query)); }, [&] { byHand.rows(); });
            asked.push_back({filter.name + " by " + code, ours, theirs, byHand.rows()});
        }
    table.addAll("first page, a filter and a sort", circuits, asked);
}

/// Every two filters, and their counts.
void measureCombinations(Records &records, int circuits, Figures &table)
{
    std::vector<Figures::Asked> rows, counts;
    const auto filters = oneFilter();
    for (std::size_t i = 1; i < filters.size(); ++i)
        for (std::size_t j = i + 1; j < filters.size(); ++j) {
            BoardFilter query = page(filters[i].query);
            query.facets.insert(filters[j].query.facets);
            const QString name = filters[i].name + " and " + filters[j].name;
            std::vector<double> pages, sums;
            std::size_t found = 0;
            for (int round = 0; round < 3; ++round) {
                pages.push_back(msOf([&] { found = good(boardRows(records, query)).size(); }));
                sums.push_back(msOf([&] { good(boardCounts(records, query)); }));
            }
            rows.push_back({name, median(pages), 0, int(found)});
            counts.push_back({name, median(sums)});
        }
    table.addAll("first page, two filters", circuits, rows);
    table.addAll("exact counts, two filters", circuits, counts);
    std::vector<double> none;
    for (int round = 0; round < 9; ++round)
        none.push_back(msOf([&] { good(boardCounts(records, BoardFilter())); }));
    table.add("exact counts, no filter", circuits, median(none));
}

/// The last page of all rows and the first again, as keys of the window ask for them.
void measureEnds(Records &records, int circuits, Figures &table)
{
    BoardFilter first = page({}), last = first;
    first.sort = last.sort = BoardSort::Due;
    last.descending = true;
    std::vector<double> times;
    for (int round = 0; round < 9; ++round)
        times.push_back(msOf([&] {
            good(boardRows(records, last));
            good(boardRows(records, first));
        }));
    table.add("last page and back to the first", circuits, median(times));
}

void measureSearches(Records &records, int circuits, Figures &table)
{
    const QString middle = QString("T%1").arg(circuits / 2, 8, 10, QChar('0'));
    const StoredOrder order = good(OrderStore(records.database()).get(middle));
    const OrderedTerminal &terminal = order.order.terminals.front();
    const auto search = [&](const QString &what, const QString &text, const QByteArray &where) {
        BoardFilter query = page({});
        query.text = text;
        const ByHand byHand(records, where, orderOf(BoardSort::Urgency));
        const auto [ours, theirs] = medians(
            9, [&] { good(boardRows(records, query)); }, [&] { byHand.rows(); });
        table.add("search: " + what, circuits, ours, theirs);
        std::vector<double> counts;
        for (int round = 0; round < 3; ++round)
            counts.push_back(msOf([&] { good(boardCounts(records, query)); }));
        table.add("counts under search: " + what, circuits, median(counts));
    };
    const auto fragments = [](const QByteArray &text) -> QByteArray {
        return " JOIN (SELECT rowid FROM order_search WHERE order_search MATCH '\"" + text +
               "\"' ORDER BY rowid DESC LIMIT " + QByteArray::number(mostFound) +
               ") AS f ON f.rowid = s.service_order";
    };
    const QByteArray dn = terminal.dn.toLatin1();
    search("a whole number", terminal.dn,
           " JOIN order_terminal AS t ON t.service_order = s.service_order AND t.dn_key = '+1" +
               dn + "'");
    if (!terminal.spid.isEmpty())
        search("a whole SPID", terminal.spid,
               " JOIN order_terminal AS t ON t.service_order = s.service_order AND t.spid = '" +
                   terminal.spid.toLatin1() + "'");
    search("an order number", middle, fragments(middle.toLower().toLatin1()));
    search("bak", "bak", fragments("bak"));
    search("kery", "kery", fragments("kery"));
    search("ba kery", "ba kery", fragments("kery"));
    search("mill lane kestrel", "mill lane kestrel",
           " JOIN (SELECT rowid FROM order_search WHERE order_search MATCH"
           " '\"mill\" AND \"lane\" AND \"kestrel\"' ORDER BY rowid DESC LIMIT 2000) AS f"
           " ON f.rowid = s.service_order");
    search("555", "555", fragments("555"));
}

/// The premises with the most lines is that of the first circuit.
void measureJob(Records &records, int circuits, Figures &table)
{
    const QString number = "T00000001";
    const StoredOrder order = good(OrderStore(records.database()).get(number));
    std::vector<double> show, neighbours;
    std::size_t lines = 0;
    for (int round = 0; round < 5; ++round) {
        show.push_back(msOf([&] { good(showOrder(records, number)); }));
        neighbours.push_back(
            msOf([&] { lines = good(rowsAtPremises(records, order.order.premises)).size(); }));
    }
    table.add("order show, many lines at its premises", circuits, median(show));
    std::printf("%54s %10zu orders there\n", "", lines);
    table.add("the other lines at its premises", circuits, median(neighbours));
    table.add("day list of all installers", circuits,
              msOf([&] { good(daySheet(records, {}, records.now().localDate(), Paper::Letter)); }));
}

QString orderNumber(int circuit)
{
    return QString("T%1").arg(circuit + 1, 8, 10, QChar('0'));
}

/// The fields of a stored order as a new one of another circuit, so that all of it is taken.
OrderFields taken(Records &records, int circuit)
{
    const StoredOrder stored = good(OrderStore(records.database()).get(orderNumber(circuit)));
    OrderFields fields = stored.order.fields();
    fields["order_number"] = "NEW-1";
    fields["circuit_number"] = "NEW-1";
    return fields;
}

/// The same with numbers, SPIDs and pair that nobody has.
OrderFields freed(OrderFields fields)
{
    for (auto it = fields.begin(); it != fields.end(); ++it)
        if (it.key().startsWith("dn_") || it.key().startsWith("spid_"))
            it.value().replace(0, 6, "298555");
    fields["pair"] = "0-" + fields["pair"];
    return fields;
}

void measureChecks(Records &records, int circuits, Figures &table)
{
    std::mt19937 random(2);
    std::vector<OrderFields> all; // taking the fields is no part of the question
    for (int i = 0; i < checks; ++i)
        all.push_back(taken(records, int(random() % unsigned(circuits))));
    std::vector<double> takenMs, freeMs;
    int held = 0, free = 0;
    for (const OrderFields &fields : all) {
        takenMs.push_back(msOf([&] { held += good(checkOrder(records, fields)).held; }));
        const OrderFields other = freed(fields);
        freeMs.push_back(msOf([&] { free += !good(checkOrder(records, other)).held; }));
    }
    // What was cancelled or disconnected holds nothing.
    if (held < checks * 9 / 10 || free != checks)
        stop({ErrorCode::Refused, "a number that is taken or free was not found so", {}});
    table.add("check of an order, all of it taken", circuits, median(takenMs));
    table.add("check of an order, all of it free", circuits, median(freeMs));
    table.add("audit of numbers, SPIDs and pairs", circuits,
              msOf([&] { good(auditIdentifiers(records)); }));
}

/// What the desk asks now and then: the reports over all orders, the loops of the largest office,
/// what a split of its area code would change.
void measureDesk(Records &records, int circuits, Figures &table)
{
    for (const ReportDescription &report : allReports()) {
        const auto made = [&] {
            return msOf([&] { good(makeReport(records, {report.kind, report.per})); });
        };
        table.add("report " + toText(report.kind), circuits, median({made(), made(), made()}));
    }
    qint64 loops = 0;
    const auto count = [&loops](const OfficeLoop &) {
        ++loops;
        return Result<void>();
    };
    const double ms = msOf([&] { good(qualifyOffice(records, "OFFICE01", count)); });
    table.add(QString("loops of an office, each (%1)").arg(loops), circuits,
              loops > 0 ? ms / double(loops) : ms);
    OfficeChange split;
    split.office = "OFFICE01";
    split.from = "217";
    split.to = "447";
    qsizetype lines = 0;
    const double preview = msOf([&] { lines = good(previewBulk(records, split)).changes.size(); });
    table.add(QString("preview of a split (%1 lines)").arg(lines), circuits, preview);
}

void measure(const QString &path, int circuits, Figures &table)
{
    std::unique_ptr<Records> records = opened(path); // may bring the file into its form
    records.reset();
    table.add("opening the records", circuits, msOf([&] { records = opened(path); }));
    measurePages(*records, circuits, table);
    measureCombinations(*records, circuits, table);
    measureEnds(*records, circuits, table);
    measureSearches(*records, circuits, table);
    measureJob(*records, circuits, table);
    measureChecks(*records, circuits, table);
    measureDesk(*records, circuits, table);
}

} // namespace

int main(int argc, char *argv[])
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    QStringList words = application.arguments().mid(1);
    if (words.isEmpty()) {
        std::fprintf(stderr, "usage: %s FOLDER [CIRCUITS...]\n", argv[0]);
        return 2;
    }
    const QDir folder(words.takeFirst());
    if (!folder.mkpath("."))
        stop({ErrorCode::DiskTrouble, "cannot be made", folder.path()});
    if (words.isEmpty())
        words = {"10000", "100000", "1000000"};
    Figures table;
    for (const QString &word : words) {
        const int circuits = std::max(1, word.toInt());
        measure(databaseOf(folder, circuits), circuits, table);
    }
    return 0;
}
