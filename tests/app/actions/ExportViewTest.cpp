#include "app/actions/ExportView.h"

#include "app/actions/Orders.h"
#include "core/base/Csv.h"
#include "tests/support/Office.h"

#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class ExportViewTest : public QObject
{
    Q_OBJECT
    std::unique_ptr<Records> m_records;
    QTemporaryDir m_folder;

    /// So many that they fill more than one page.
    static constexpr int many = 210, page = 50;

    Result<CsvTable> exported(const BoardFilter &filter, bool spreadsheet = false)
    {
        const QString path = m_folder.filePath("view.csv");
        const auto written = exportView(*m_records, {filter, path, spreadsheet, {}, page});
        if (!written)
            return failure(written.error());
        QFile file(path);
        if (!file.open(QIODevice::ReadOnly))
            return failure(ErrorCode::DiskTrouble, "not there");
        auto table = readCsv(file.readAll(), "view.csv", {viewColumns(), {}, {}});
        if (table && qint64(table->rows.size()) != *written)
            return failure(ErrorCode::BadInput, "another number of rows was told");
        return table;
    }

private slots:
    void initTestCase()
    {
        m_records = office();
        QByteArray orders;
        QStringList header;
        for (int i = 0; i < many; ++i) {
            OrderFields fields = briFields();
            const QString n = QString::number(10'000 + i);
            fields["order_number"] = "B-" + n;
            fields["order_type"] = "record_only";
            fields["due_date"] = QDate(2026, 3, 1).addDays(i % 60).toString(Qt::ISODate);
            fields["customer"] = i == 7   ? QString("=cmd|' /C calc'!A0")
                                 : i == 8 ? QString("Call %1, \"the\" loopback").arg(sentinel)
                                 : i == 9 ? QString("Two\"quotes\", and a comma")
                                          : QString("Customer %1").arg(i % 97);
            fields["circuit_number"] = "C-" + n;
            fields["pair"] = "9-" + n;
            fields["b2_services"] = "";
            fields["spid_1"] = fields["spid_2"] = fields["dn_2"] = fields["tei_2"] = "";
            fields["dn_2_services"] = fields["dn_1_services"] = "";
            fields["dn_1"] = "3125" + QString::number(550'000 + i);
            if (header.isEmpty()) {
                header = fields.keys();
                orders = csvRecord(header);
            }
            orders += csvRecord(fields.values());
        }
        const auto report = importOrders(*m_records, orders, {"orders.csv"});
        QVERIFY2(report && report->refused == 0, report ? report->rejects.left(300).constData()
                                                        : qPrintable(report.error().text()));
    }

    /// Every order once, in the order of the board, whatever it is sorted by.
    void isTheBoard_data()
    {
        QTest::addColumn<int>("sort");
        QTest::addColumn<bool>("descending");
        QTest::newRow("urgency") << int(BoardSort::Urgency) << false;
        QTest::newRow("due, downwards") << int(BoardSort::Due) << true;
        QTest::newRow("stage") << int(BoardSort::Stage) << false;
        QTest::newRow("customer") << int(BoardSort::Customer) << false;
    }
    void isTheBoard()
    {
        QFETCH(int, sort);
        QFETCH(bool, descending);
        BoardFilter filter;
        filter.sort = BoardSort(sort);
        filter.descending = descending;
        const auto rows = boardRows(*m_records, filter);
        const auto table = exported(filter);
        QVERIFY2(table, table ? "" : qPrintable(table.error().text()));
        QCOMPARE(table->rows.size(), std::size_t(many));
        QCOMPARE(rows->size(), std::size_t(many));
        for (std::size_t i = 0; i < rows->size(); ++i) {
            const CsvRow &row = table->rows[i];
            QVERIFY2(row.trouble.isEmpty(), qPrintable(row.trouble));
            QCOMPARE(table->value(row, "order_number"), (*rows)[i].order);
        }
        const QJsonObject first = rows->front().toJson(m_records->now().localDate());
        for (const QString &column : viewColumns()) {
            if (column == u"out" || column == u"conflicts")
                continue; // numbers and lists there
            const QJsonValue value = first[column];
            QCOMPARE(table->value(table->rows.front(), column),
                     value.isBool() ? QString(value.toBool() ? "true" : "false")
                                    : value.toString());
        }
    }
    void keepsToTheFilters()
    {
        BoardFilter filter;
        filter.dueFrom = QDate(2026, 3, 2);
        filter.dueBefore = QDate(2026, 4, 20);
        filter.limit = 120;
        const auto table = exported(filter);
        QCOMPARE(table->rows.size(), boardRows(*m_records, filter)->size());
        QCOMPARE(table->rows.size(), 120u);
        for (const CsvRow &row : table->rows)
            QVERIFY(table->value(row, "due_date") >= "2026-03-02" &&
                    table->value(row, "due_date") < "2026-04-20");
        filter.facets.insert(BoardFacet::Office, "NOWHERE");
        QCOMPARE(exported(filter)->rows.size(), 0u); // a header all the same
        BoardFilter bounded;
        bounded.limit = 101;
        QCOMPARE(exported(bounded)->rows.size(), 101u);
        BoardFilter unknown;
        unknown.after = "none such";
        QCOMPARE(exported(unknown).error().code, ErrorCode::NotFound);
    }
    void quotesCoversAndTamesCells()
    {
        BoardFilter filter;
        filter.sort = BoardSort::Number;
        filter.limit = 10;
        const auto plain = exported(filter), safe = exported(filter, true);
        const auto customer = [](const CsvTable &table, std::size_t row) {
            return table.value(table.rows[row], "customer");
        };
        QCOMPARE(customer(*plain, 7), "=cmd|' /C calc'!A0");
        QCOMPARE(customer(*safe, 7), "'=cmd|' /C calc'!A0");
        QCOMPARE(customer(*plain, 8), "Call [number not published], \"the\" loopback");
        QCOMPARE(customer(*plain, 9), "Two\"quotes\", and a comma");
    }
    void stoppedItLeavesWhatWasThere()
    {
        const QString path = m_folder.filePath("kept.csv");
        BoardFilter few;
        few.limit = 1;
        QCOMPARE(*exportView(*m_records, {few, path}), 1);
        const auto stopped =
            exportView(*m_records, {{}, path, false, [](qint64, qint64) { return false; }, page});
        QCOMPARE(stopped.error().code, ErrorCode::Refused);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll().count('\n'), 2);
        QCOMPARE(QDir(m_folder.path()).entryList({".*part*"}, QDir::Files | QDir::Hidden).size(),
                 0);
    }
};

QTEST_MAIN(ExportViewTest)
#include "ExportViewTest.moc"
