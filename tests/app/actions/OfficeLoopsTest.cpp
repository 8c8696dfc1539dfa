// Which loops of an office are fit: what each is judged by is tested beside the rules of loops;
// here it is which make-up counts, that none is left out, and that many come in order.

#include "app/actions/OfficeLoops.h"

#include "app/actions/Evidence.h"
#include "app/actions/Orders.h"
#include "core/base/Csv.h"
#include "tests/support/Loops.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

#include <QFile>
#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

QJsonObject found(int id, double minute, const LoopMakeup &makeup)
{
    return fact(id, "loop", minute, {{"makeup", makeup.toJson()}});
}

const LoopMakeup nearby = loops::makeup({loops::section(26, 6000)});
const LoopMakeup tapped =
    loops::makeup({loops::section(26, 12000), loops::tap(26, 2900), loops::section(26, 4000)});
const LoopMakeup loaded =
    loops::makeup({loops::section(22, 3000), loops::coil(), loops::section(22, 3000)});

} // namespace

class OfficeLoopsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    void take(const OrderFields &fields, const QList<QJsonObject> &facts)
    {
        QVERIFY_RESULT(recordFile(*m_records, recordBytes(fields, facts), "job.json"));
    }
    std::vector<OfficeLoop> loops(OfficeLoopCount *count = nullptr) const
    {
        std::vector<OfficeLoop> all;
        const auto counted = qualifyOffice(*m_records, "NORTH", [&all](const OfficeLoop &loop) {
            all.push_back(loop);
            return Result<void>();
        });
        if (!counted)
            qFatal("%s", qPrintable(counted.error().text()));
        if (count)
            *count = *counted;
        return all;
    }

private slots:
    void init()
    {
        m_records = office();
        QVERIFY_RESULT(importOrders(
            *m_records,
            csv({briFields(), analogFields(),
                 otherBriFields("A-0999", "C-66", "9", "217-555-0181", "217-555-0182")}),
            {"o.csv"}));
    }

    void theNewestMakeupOfEachPairCounts()
    {
        take(briFields(), {found(1, 1, tapped), found(2, 2, nearby), found(3, 3, loaded)});
        QVERIFY_RESULT(voidFact(*m_records, uuid(3), "another pair"));
        take(analogFields(), {found(5, 1, loaded)});
        OfficeLoopCount count;
        const std::vector<OfficeLoop> all = loops(&count);
        QCOMPARE(all.size(), std::size_t(2));
        QCOMPARE(count.withoutMakeup, 1);
        QCOMPARE(count.suitable, 1);
        QCOMPARE(count.notSuitable, 1);
        for (const OfficeLoop &loop : all) {
            const bool isBri = loop.order == u"A-1001";
            const LoopMakeup &makeup = isBri ? nearby : loaded;
            QCOMPARE(loop.judged.toJson(), qualify(makeup, limits()).toJson());
            QCOMPARE(loop.kind, isBri ? LineKind::Bri : LineKind::Analog);
            QCOMPARE(loop.circuit,
                     isBri ? briFields()["circuit_number"] : analogFields()["circuit_number"]);
            QCOMPARE(loop.mends.size(), remedies(makeup, limits()).size());
        }
    }

    void whatWasMeasuredOnAnotherPairIsNotToldOfThisOne()
    {
        QJsonObject here = found(1, 1, nearby);
        here["pair"] = briFields()["pair"];
        take(briFields(), {here});
        QCOMPARE(loops().size(), std::size_t(1));
        OrderFields moved = briFields();
        moved["pair"] = "17-299";
        QVERIFY_RESULT(putOrder(*m_records, moved, true, false));
        QVERIFY(loops().empty());
        QJsonObject there = found(2, 2, tapped);
        there["pair"] = "17-299";
        take(moved, {there});
        QCOMPARE(loops().size(), std::size_t(1));
        QCOMPARE(loops().front().judged.toJson(), qualify(tapped, limits()).toJson());
    }

    void aReleasedPairIsLeftOut()
    {
        take(briFields(), {found(1, 1, nearby)});
        QCOMPARE(loops().size(), std::size_t(1));
        QVERIFY_RESULT(cancelOrder(*m_records, "A-1001", "not wanted any more"));
        QVERIFY(loops().empty());
    }

    void manyAreToldInOrder()
    {
        QList<OrderFields> orders;
        for (int i = 0; i < 60; ++i) {
            const QString n = QString::number(100 + i);
            OrderFields fields = analogFields();
            fields["order_number"] = "M-" + n;
            fields["circuit_number"] = "M-" + n;
            fields["pair"] = "M-" + n;
            fields["dn_1"] = "309-555-0" + n;
            orders << fields;
        }
        const auto report = importOrders(*m_records, csv(orders), {"m.csv"});
        QVERIFY(report && report->clean());
        for (int i = 0; i < 60; ++i)
            take(orders[i],
                 {found(100 + i, 1, loops::makeup({loops::section(26, 500 + 300 * i)}))});
        const std::vector<OfficeLoop> all = loops();
        QCOMPARE(all.size(), std::size_t(60));
        for (std::size_t i = 0; i < all.size(); ++i) {
            QCOMPARE(all[i].pair, QString("M-%1").arg(100 + i));
            QCOMPARE(all[i].judged.workingLengthFt, 500 + 300.0 * double(i));
        }
    }

    void toAFile()
    {
        take(briFields(), {found(1, 1, tapped)});
        QTemporaryDir folder;
        const QString path = folder.filePath("loops.csv");
        QVERIFY_RESULT(writeOfficeLoops(*m_records, "NORTH", path));
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const auto table = readCsv(file.readAll(), path, {officeLoopColumns(), {}, {}});
        QVERIFY_RESULT(table);
        QCOMPARE(table->rows.size(), std::size_t(1));
        const CsvRow &row = table->rows.front();
        QCOMPARE(table->value(row, "pair"), briFields()["pair"]);
        const auto mends = remedies(tapped, limits());
        QVERIFY(!mends.empty());
        QCOMPARE(table->value(row, "would_mend"), mends.front().text.english());
        QCOMPARE(table->value(row, "verdict"), toText(qualify(tapped, limits()).verdict));
    }

    void whatEndsIt()
    {
        take(briFields(), {found(1, 1, nearby)});
        const auto nothing = [](const OfficeLoop &) { return Result<void>(); };
        const auto unknown = qualifyOffice(*m_records, "NOWHERE", nothing);
        QVERIFY(!unknown);
        QCOMPARE(unknown.error().code, ErrorCode::NotFound);
        const auto stopped =
            qualifyOffice(*m_records, "NORTH", nothing, [](qint64, qint64) { return false; });
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().code, ErrorCode::Refused);
        QTemporaryDir folder;
        const QString path = folder.filePath("loops.csv");
        QVERIFY(!writeOfficeLoops(*m_records, "NORTH", path, [](qint64, qint64) { return false; }));
        QVERIFY(!QFile::exists(path));
    }
};

QTEST_GUILESS_MAIN(OfficeLoopsTest)
#include "OfficeLoopsTest.moc"
