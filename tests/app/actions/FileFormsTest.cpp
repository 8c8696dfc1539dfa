// What is said of the files that are read is held against their readers: each column has a
// meaning, and each sample is taken in by the reader that it is for.

#include "app/actions/FileForms.h"

#include "app/actions/Board.h"
#include "app/actions/Import.h"
#include "app/actions/LimitChanges.h"
#include "core/errortest/SecondsFile.h"
#include "core/identifiers/IdentifierList.h"
#include "core/loop/LoopMakeup.h"

#include <QTest>

using namespace loopwright;

class FileFormsTest : public QObject
{
    Q_OBJECT

    static QByteArray sample(const char *key) { return sampleOf(*findFileForm(key)); }

private slots:
    void everyColumnHasAMeaning()
    {
        for (const FileForm &form : fileForms()) {
            const auto columns = columnsOf(form);
            const CsvLayout layout = form.layout();
            QCOMPARE(qsizetype(columns.size()), layout.required.size() + layout.optional.size());
            for (const FileColumn &column : columns) {
                const QString place = QString("%1: %2").arg(form.key, column.name);
                QVERIFY2(!column.meaning.isEmpty(), qPrintable(place));
                QVERIFY2(!column.name.contains('#'), qPrintable(place));
            }
        }
        QVERIFY(meaningOfColumn("orders", "colour").isEmpty());
        QVERIFY(!findFileForm("colours"));
        QCOMPARE(fileFormKeys().size(), qsizetype(fileForms().size()));
    }

    void wordsAreThoseOfTheReader()
    {
        const auto words = [](const char *form, const char *column) {
            return wordsOfColumn(form, column);
        };
        QCOMPARE(words("orders", "order_type"),
                 (QStringList{"new", "change", "move", "disconnect", "record_only", "repair"}));
        QCOMPARE(words("installers", "role"),
                 (QStringList{"installer", "dispatcher", "supervisor"}));
        QVERIFY(words("offices", "protocol_variant").contains("ni2"));
        QVERIFY(words("instruments", "kind").isEmpty());
        QVERIFY(words("orders", "customer").isEmpty());
    }

    void everySampleOfAnImportIsTakenIn()
    {
        auto records = Records::open(QStringLiteral(":memory:"));
        QVERIFY2(records, records ? "" : qPrintable(records.error().text()));
        QVERIFY(bringShippedLimits(**records));
        (*records)->actAs("quill");
        (*records)->setNow(Moment::parse(u"2027-03-01T08:00:00-06:00"));
        const std::pair<const char *, decltype(&importOrders)> imports[] = {
            {"offices", importOffices},         {"issuer", importIssuer},
            {"instruments", importInstruments}, {"installers", importInstallers},
            {"orders", importOrders},           {"changes", importPlans}};
        for (const auto &[key, import] : imports) {
            const auto report = import(**records, sample(key), {QString(key) + ".csv"});
            QVERIFY2(report, report ? "" : qPrintable(report.error().text()));
            QVERIFY2(report->clean() && report->findings.empty(),
                     report->findings.empty()
                         ? key
                         : qPrintable(report->findings.front().reason.english()));
            QCOMPARE(qsizetype(report->accepted), sample(key).trimmed().count('\n'));
        }
        const auto rows = boardRows(**records, {});
        QVERIFY(rows && rows->size() == 2);
    }

    void everyOtherSampleIsRead()
    {
        const auto seconds = readSecondsFile(sample("seconds"), "s.csv", 64000);
        QVERIFY2(seconds, seconds ? "" : qPrintable(seconds.error().text()));
        const auto makeup = LoopMakeup::fromCsv(sample("makeup"), "m.csv");
        QVERIFY2(makeup, makeup ? "" : qPrintable(makeup.error().text()));
        QCOMPARE(makeup->elements.size(), 3u);
        const QByteArray list = sample("identifiers");
        const auto count =
            checkIdentifierList(list, "i.csv", [](QByteArrayView) { return Result<void>(); });
        QVERIFY2(count, count ? "" : qPrintable(count.error().text()));
        QCOMPARE(count->ok, 2);
    }
};

QTEST_GUILESS_MAIN(FileFormsTest)
#include "FileFormsTest.moc"
