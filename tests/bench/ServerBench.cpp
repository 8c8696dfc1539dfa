// What the same work costs on a server, against the same in a file (SQLite), in one run: a page of
// the board, searches, an import, the record of one fact.
//
//   tests/bench/server BUILD [ORDERS]       10000 orders unless said; starts a server of its own
//
// Each figure is the median of five; ratios and their bounds are those of records on a server.

#include "app/actions/Board.h"
#include "app/actions/Evidence.h"
#include "tests/bench/InventedOrders.h"
#include "tests/bench/Measured.h"
#include "tests/support/Office.h"

#include <QGuiApplication>
#include <QTemporaryDir>

using namespace loopwright;

namespace {

constexpr int rounds = 5;
constexpr int importedRows = 200;

BoardFilter page(const QString &text = {})
{
    BoardFilter filter;
    filter.text = text;
    filter.limit = pageRows;
    return filter;
}

/// Records of one engine, filled by an import.
class Place
{
public:
    Place(const QString &path, int orders)
        : m_records(jobs::office(path))
    {
        m_records->actAs("Dana");
        const double ms = msOf([&] { take(0, orders); });
        std::fprintf(stderr, "%s: %d orders within %.1f s\n", qPrintable(path.section('?', 0, 0)),
                     orders, ms / 1000);
        m_next = orders;
        good(importOrders(*m_records, jobs::csv({jobs::briFields()}), {"o.csv"}));
        m_records->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
    }
    double page(const QString &text, int atLeast)
    {
        return medianOf([&] {
            const auto rows = good(boardRows(*m_records, ::page(text)));
            if (int(rows.size()) < atLeast)
                stop({ErrorCode::NotFound, "fewer rows than there are", text});
        });
    }
    double import()
    {
        return medianOf([this] {
            take(m_next, importedRows);
            m_next += importedRows;
        });
    }
    double record()
    {
        return medianOf([this] {
            const QByteArray job = jobs::recordBytes(
                jobs::briFields(), {jobs::fact(++m_facts, "note", 0, {{"text", "wet cable"}})});
            good(recordFile(*m_records, job, "job.json"));
        });
    }

private:
    void take(int first, int orders)
    {
        const auto report =
            good(importOrders(*m_records, inventedOrders("NORTH", first, orders), {}));
        if (report.accepted != orders || report.held > 0)
            stop({ErrorCode::Refused, QString::fromUtf8(report.rejects), {}});
    }
    static double medianOf(const std::function<void()> &work)
    {
        std::vector<double> times;
        for (int round = 0; round < rounds; ++round)
            times.push_back(msOf(work));
        return median(times);
    }

    std::unique_ptr<Records> m_records;
    int m_next = 0, m_facts = 100;
};

void tell(const char *what, double server, double file, double atMost)
{
    std::printf("%-34s %9.2f ms, in a file %9.2f ms: %5.2f times", what, server, file,
                server / file);
    if (atMost > 0)
        std::printf(" (at most %g)", atMost);
    std::printf("\n");
    std::fflush(stdout);
}

} // namespace

int main(int argc, char **argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const int orders = QGuiApplication::arguments().value(1, "10000").toInt();
    if (testServer().isEmpty() || orders < pageRows || orders > 2'000'000) {
        std::fprintf(stderr, "usage: tests/bench/server BUILD [ORDERS, %d to 2000000]\n", pageRows);
        return 2;
    }
    const QTemporaryDir folder;
    Place file(folder.filePath("records.sqlite"), orders), server(newServerRecords(), orders);
    const auto pages = [&](const char *what, const QString &text, int rows, double atMost) {
        const double there = server.page(text, rows);
        tell(what, there, file.page(text, rows), atMost);
    };
    pages("page of the board", {}, pageRows, 5);
    pages("page of a search, rare word", QString("N%1").arg(orders / 2, 6, 10, QChar('0')), 1, 2);
    pages("page of a search, common word", "bakery", pageRows, 1);
    const double imported = server.import();
    tell("import of 200 rows", imported, file.import(), 4);
    const double recorded = server.record();
    tell("record of one fact", recorded, file.record(), 0);
    return 0;
}
