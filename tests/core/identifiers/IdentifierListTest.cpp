#include "core/identifiers/IdentifierList.h"

#include "core/base/Csv.h"
#include "core/identifiers/Spid.h"

#include <QFile>
#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

struct Written
{
    Result<IdentifierListCount> count;
    QByteArray bytes;
};

Written checked(const QByteArray &csv)
{
    QByteArray bytes;
    auto count = checkIdentifierList(csv, "in.csv", [&bytes](QByteArrayView piece) -> Result<void> {
        bytes.append(piece);
        return {};
    });
    return {count, bytes};
}

} // namespace

class IdentifierListTest : public QObject
{
    Q_OBJECT
private slots:
    void writesVerdictsBehindTheRows()
    {
        const Written written = checked("\xEF\xBB\xBF"
                                        "dn,variant,spid\n"
                                        "217-555-0143,ni-generic,217-555-0143 01 01\n"
                                        "\n"
                                        "217-555-0143,ni1-5ess,O15550143000\r\n"
                                        "217-555-0144,ni-generic,21755501430101\n"
                                        "217-555-0143,NI-2,21755501430101\n"
                                        "217-555-0143,,21755501430101\n"
                                        "\"217-555-0143\",\"dss1\",\"\"\n"
                                        "217-555-0143,ni2\n"
                                        "217-555-0143,ni2,1,2\n");
        QVERIFY(written.count);
        QCOMPARE(written.count->rows, 8);
        QCOMPARE(written.count->ok, 2);
        QCOMPARE(written.count->warnings, 1);
        QCOMPARE(written.count->errors, 5);
        QCOMPARE(
            written.bytes,
            QByteArray(
                "dn,variant,spid,verdict,code,reason,repair\r\n"
                "217-555-0143,ni-generic,217-555-0143 01 01,ok,,,\r\n"
                "217-555-0143,ni1-5ess,O15550143000,error,spid_character,Character 1 is the letter "
                "O: type the digit 0,015550143000\r\n"
                "217-555-0144,ni-generic,21755501430101,warning,spid_dn_mismatch,\"The SPID holds "
                "217-555-0143, the DN is 217-555-0144: confirm which one is right\",\r\n"
                "217-555-0143,NI-2,21755501430101,error,unknown_variant,\"There is no protocol "
                "variant \"\"NI-2\"\": write ni2\",\r\n"
                "217-555-0143,,21755501430101,error,unknown_variant,The protocol variant is "
                "missing,\r\n"
                "217-555-0143,dss1,,ok,,,\r\n"
                "217-555-0143,ni2,,error,row_form,The row has 2 fields where the header has 3,\r\n"
                "217-555-0143,ni2,1,error,row_form,The row has 4 fields where the header has "
                "3,\r\n"));
    }

    void tellsHowFarItIsAndStopsWhenItIsTold()
    {
        const QByteArray list =
            "variant,spid,dn\n" + QByteArray("ni2,21755501430101,217-555-0143\n").repeated(10'000);
        QList<qint64> told;
        const auto upTo = [&](qsizetype most) {
            return [&told, &list, most](qint64 done, qint64 total) {
                told << done;
                return total == list.size() && told.size() < most;
            };
        };
        qint64 written = 0;
        const auto write = [&written](QByteArrayView piece) -> Result<void> {
            written += piece.size();
            return {};
        };
        const auto whole = checkIdentifierList(list, "in.csv", write, upTo(100));
        QVERIFY(whole && whole->rows == 10'000);
        QCOMPARE(told.size(), 3);
        QVERIFY(told[0] > 0 && told[0] < told[1] && told[1] < told[2]);
        QCOMPARE(told[2], list.size());
        const qint64 all = written;
        for (int most = 1; most <= 3; ++most) { // the last one is of the end
            told.clear();
            written = 0;
            const auto stopped = checkIdentifierList(list, "in.csv", write, upTo(most));
            QVERIFY(!stopped && stopped.error().code == ErrorCode::Refused);
            QVERIFY(written < all);
        }
        told.clear();
        int rows = 0;
        const auto stopped = checkIdentifierRows(
            list, "in.csv", [&rows](const IdentifierListRow &) { ++rows; }, upTo(1));
        QVERIFY(!stopped && stopped.error().code == ErrorCode::Refused);
        QVERIFY(rows > 0 && rows < 10'000);
    }

    void theWorstGivesTheCode()
    {
        const Written written = checked("variant,spid,dn\nni-generic,11715501433401,\n");
        const auto table =
            readCsv(written.bytes, "out.csv",
                    {{"variant", "spid", "dn", "verdict", "code", "reason", "repair"}, {}, {}});
        QVERIFY(table);
        QCOMPARE(table->value(table->rows[0], "code"), QString("spid_area_code"));
        QCOMPARE(table->value(table->rows[0], "reason").count("; "), 2);
    }

    void tellsTheLine()
    {
        std::vector<int> lines;
        const auto count = checkIdentifierRows(
            "variant,spid,dn\n\nni2,\"1\n2\",\nni2,1,\n", "in.csv",
            [&lines](const IdentifierListRow &row) { lines.push_back(row.line); });
        QVERIFY(count);
        QCOMPARE(lines, (std::vector<int>{3, 5}));
    }

    void refusesOtherFiles_data()
    {
        QTest::addColumn<QByteArray>("csv");
        QTest::addColumn<QString>("part");
        QTest::newRow("empty") << QByteArray() << "is empty";
        QTest::newRow("missing column") << QByteArray("variant,spid\n") << "\"dn\" is missing";
        QTest::newRow("unknown column")
            << QByteArray("variant,spid,dn,x\n") << "\"x\" is not known";
        QTest::newRow("not UTF-8") << QByteArray("variant,spid,dn\nni2,\xFF,\n") << "line 2";
    }
    void refusesOtherFiles()
    {
        QFETCH(QByteArray, csv);
        QFETCH(QString, part);
        const Written written = checked(csv);
        QVERIFY(!written.count);
        QCOMPARE(written.count.error().code, ErrorCode::BadInput);
        QVERIFY2(written.count.error().text().contains(part),
                 qPrintable(written.count.error().text()));
        QVERIFY(written.bytes.isEmpty());
    }

    void aFullDiskEndsIt()
    {
        const auto count =
            checkIdentifierList("variant,spid,dn\n", "in.csv", [](QByteArrayView) -> Result<void> {
                return failure(ErrorCode::DiskTrouble, "no space left");
            });
        QVERIFY(!count);
        QCOMPARE(count.error().code, ErrorCode::DiskTrouble);
    }

    // The list and the single check are one set of rules.
    void agreesWithTheSingleCheck()
    {
        QFile file(LOOPWRIGHT_SOURCE_DIR "/tests/data/identifiers/worked-spids.csv");
        QVERIFY(file.open(QIODevice::ReadOnly));
        const CsvTable examples =
            readCsv(file.readAll(), "worked-spids.csv",
                    {{"number", "variant", "spid", "dn", "verdict", "code", "repair", "shape_from"},
                     {},
                     {}})
                .value();
        QByteArray csv = "variant,spid,dn\n";
        for (const CsvRow &row : examples.rows)
            csv += csvRecord({examples.value(row, "variant"), examples.value(row, "spid"),
                              examples.value(row, "dn")});
        std::size_t at = 0;
        const auto count = checkIdentifierRows(csv, "in.csv", [&](const IdentifierListRow &row) {
            const CsvRow &example = examples.rows[at++];
            const auto text = [](std::string_view view) {
                return QString::fromUtf8(view.data(), qsizetype(view.size()));
            };
            QCOMPARE(text(row.verdict), examples.value(example, "verdict"));
            QCOMPARE(text(row.code), examples.value(example, "code"));
            QCOMPARE(text(row.repair), examples.value(example, "repair"));
            const SpidCheck check =
                checkSpid(*findVariant(text(row.variant)), text(row.spid), text(row.dn));
            QStringList reasons;
            for (const Finding &finding : check.findings)
                reasons << finding.reason.english();
            QCOMPARE(text(row.reason), reasons.join("; "));
        });
        QVERIFY(count);
        QCOMPARE(at, 38U);
    }

    void noBytesCrash()
    {
        QVERIFY(rc::check("any bytes give a list or an error", [] {
            const auto bytes = *rc::gen::container<std::string>(
                rc::gen::oneOf(rc::gen::arbitrary<char>(),
                               rc::gen::elementOf(std::string("\",\n\r01234567890O.'E+"))));
            const QByteArray body(bytes.data(), qsizetype(bytes.size()));
            checked(body);
            const Written written = checked("variant,spid,dn\nni-generic," + body);
            if (!written.count)
                return;
            // What was written is a list again, row for row.
            CsvScanner scanner(written.bytes);
            qint64 rows = -1;
            while (scanner.next()) {
                RC_ASSERT(scanner.fields().size() == 7U);
                RC_ASSERT(scanner.trouble().isEmpty());
                ++rows;
            }
            RC_ASSERT(rows == written.count->rows);
        }));
    }
};

QTEST_APPLESS_MAIN(IdentifierListTest)
#include "IdentifierListTest.moc"
