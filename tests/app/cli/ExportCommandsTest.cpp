// What leaves the records by the command line, and what comes in with columns of somebody else's.

#include "core/base/Csv.h"
#include "tests/support/CommandRun.h"

#include <QDir>
#include <QTemporaryDir>

#include <algorithm>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

} // namespace

class ExportCommandsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    QString path(const QString &name) const { return m_folder.filePath(name); }
    QString file(const QString &name, const QByteArray &content) const
    {
        return written(path(name), content);
    }
    QStringList at(const QStringList &words, const QString &database = "records.sqlite") const
    {
        return words + QStringList{"--db", path(database), "--now", "2026-03-12T17:00:00-06:00",
                                   "--by", "moss"};
    }
    Answered json(const QStringList &words, const QString &database = "records.sqlite") const
    {
        return call(at(words, database) << "--json");
    }

private slots:
    void initTestCase()
    {
        for (const char *what : {"office", "issuer", "installer", "instrument", "order"}) {
            const QString name(QString(what) == "issuer" ? QString("issuer")
                                                         : QString(what + QString("s")));
            const Answered taken = json({what, "import", scenario + name + ".csv"});
            QVERIFY2(taken.status == 0 || taken.status == 1, taken.all().constData());
        }
        COMPARE_STATUS(json({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
    }

    void theViewHasTheFiltersOfTheList()
    {
        const QString out = path("view.csv");
        for (const QStringList &filter : QList<QStringList>{{},
                                                            {"--open"},
                                                            {"--late"},
                                                            {"--stage", "loop"},
                                                            {"--text", "quarry", "--sort", "pair"},
                                                            {"--limit", "3"}}) {
            const QJsonArray rows = json(QStringList{"order", "list"} + filter).array();
            const Answered written = json(QStringList{"export", "view", "--out", out} + filter);
            COMPARE_STATUS(written, ExitStatus::Yes);
            QCOMPARE(written.object()["orders"].toInt(), rows.size());
            const QStringList header =
                QString::fromUtf8(contentOf(out)).section("\r\n", 0, 0).split(',');
            const auto table = readCsv(contentOf(out), "view.csv", {header, {}, {}});
            QVERIFY2(table, table ? "" : qPrintable(table.error().text()));
            QCOMPARE(qsizetype(table->rows.size()), rows.size());
            for (qsizetype i = 0; i < rows.size(); ++i)
                for (const char *column : {"order_number", "stage", "outcome", "due_date"})
                    QCOMPARE(table->value(table->rows[std::size_t(i)], column),
                             rows[i][column].toString());
        }
        COMPARE_STATUS(json({"export", "view", "--out", out, "--late", "--at-risk"}),
                       ExitStatus::Usage);
        COMPARE_STATUS(json({"export", "view", "--out", out, "--after", "none"}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(json({"export", "view"}), ExitStatus::Usage);
    }
    void theViewGoesToStandardOutput()
    {
        const Answered view = callProgram(at({"export", "view", "--out", "-", "--open"}));
        COMPARE_STATUS(view, ExitStatus::Yes);
        QVERIFY(view.out.startsWith("order_number,"));
        QVERIFY(view.out.endsWith("\r\n"));
        const Answered list = json({"order", "list", "--open"});
        QCOMPARE(view.out.count("\r\n"), list.array().size() + 1);
        COMPARE_STATUS(callProgram(at({"export", "view", "--out", "-", "--json"})),
                       ExitStatus::Usage);
    }
    void allOfItGoesToAFolder()
    {
        COMPARE_STATUS(json({"export"}), ExitStatus::Usage);
        const Answered made = json({"export", "--out", path("all"), "--internal"});
        COMPARE_STATUS(made, ExitStatus::Yes);
        QVERIFY(made.object()["files"].toArray().last().toString().endsWith("manifest.json"));
        for (const char *name : {"offices.csv", "installers.csv", "instruments.csv", "orders.csv",
                                 "records/26-0007@okafor.json", "event.csv", "manifest.json"})
            if (!QString(name).startsWith("records/"))
                QVERIFY2(QFile::exists(path("all/") + name), name);
        QCOMPARE(QDir(path("all/records")).entryList({"26-0007@*.json"}).size(), 1);
        // What was exported is taken in elsewhere; the rows that were refused once were not kept.
        for (const char *what : {"office", "instrument"})
            COMPARE_STATUS(json({what, "import", path("all/") + what + "s.csv"}, "other.sqlite"),
                           ExitStatus::Yes);
        const Answered orders = json({"order", "import", path("all/orders.csv")}, "other.sqlite");
        QCOMPARE(orders.object()["refused"].toInt(), 0);
        const QString record =
            path("all/records/") + QDir(path("all/records")).entryList({"26-0007@*.json"}).first();
        COMPARE_STATUS(json({"record", record}, "other.sqlite"), ExitStatus::Yes);
        QCOMPARE(json({"decide", "26-0007"}, "other.sqlite").object()["outcome"],
                 json({"decide", "26-0007"}).object()["outcome"]);
    }
    void whoMayNotHaveTheUnpublishedNumbersIsInTheHistory()
    {
        const auto events = [this] {
            const Answered verified = json({"history", "verify"});
            return verified.status == 0 ? verified.object()["events"].toInteger() : -1;
        };
        const qint64 before = events();
        QVERIFY(before > 0);
        const Answered refused = call({"export", "--internal", "--out", path("inside"), "--by",
                                       "rivera", "--db", path("records.sqlite"), "--json"});
        COMPARE_STATUS(refused, ExitStatus::No);
        QCOMPARE(refused.errorCode(), "refused");
        QVERIFY(!QFile::exists(path("inside")));
        QCOMPARE(events(), before + 1);
        COMPARE_STATUS(json({"export", "--out", path("outside")}), ExitStatus::Yes);
        const QByteArrayList rows = contentOf(path("outside/event.csv")).split('\n');
        QVERIFY(std::ranges::any_of(rows, [](const QByteArray &row) {
            return row.contains("refused") && row.contains("rivera") &&
                   row.contains("export_internal");
        }));
        QCOMPARE(events(), before + 1);
    }
    void aCircuitGoesToAFolder()
    {
        COMPARE_STATUS(json({"certificate", "issue", "26-0007", "--out", path("c.pdf")}),
                       ExitStatus::Yes);
        const QString circuit = json({"order", "show", "26-0007"})
                                    .object()["circuit"]
                                    .toObject()["circuit_number"]
                                    .toString();
        const Answered made = json({"circuit", "export", circuit, "--out", path("circuit")});
        COMPARE_STATUS(made, ExitStatus::Yes);
        QCOMPARE(made.object()["certificates"].toInt(), 1);
        QCOMPARE(made.object()["lacking"].toArray().size(), 0);
        const QString paper = QDir(path("circuit/certificates")).entryList(QDir::Files).value(0);
        QCOMPARE(contentOf(path("circuit/certificates/") + paper), contentOf(path("c.pdf")));
        COMPARE_STATUS(json({"circuit", "export", "none such", "--out", path("n")}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(json({"circuit", "export", circuit, "--out", "-"}), ExitStatus::Usage);
    }
    void ordersComeInByAMap()
    {
        const QString map = file("map.json", R"({
            "columns":{"Auftrag":"order_number","Art":"order_type","Termin":"due_date",
                "Kunde":"customer","Adresse":"premises","Leitung":"circuit_number",
                "Anschluss":"kind","Amt":"office","Ader":"pair","B1":"b1_services",
                "B2":"b2_services","Rufnummer":"dn_1","NT":"nt_supplied"},
            "values":{"order_type":{"Neu":"new"},"kind":{"a/b":"analog"},
                "nt_supplied":{"nein":"no"}},
            "ignore":["Farbe"]})");
        const QByteArray header = "Auftrag,Art,Termin,Kunde,Adresse,Leitung,Anschluss,Amt,"
                                  "protocol_variant,Ader,B1,B2,Rufnummer,spid_1,tei_1,NT,Farbe\r\n";
        const QString orders =
            file("theirs.csv",
                 header + "M-1,Neu,2026-03-20,Mill Shop,2 Mill Lane,M-C-1,a/b,hollow,,M-1,voice,,"
                          "2175550190,,,nein,red\r\n"
                          "M-2,Umbau,2026-03-20,Mill Shop,2 Mill Lane,M-C-2,a/b,hollow,,M-2,voice,,"
                          "2175550191,,,nein,blue\r\n");
        const QString rejects = path("rejects.csv");
        const Answered taken =
            json({"order", "import", orders, "--map", map, "--rejects", rejects});
        COMPARE_STATUS(taken, ExitStatus::No);
        QCOMPARE(taken.object()["accepted"].toInt(), 1);
        QCOMPARE(taken.object()["refused"].toInt(), 1);
        const QJsonArray findings = taken.object()["findings"].toArray();
        const QJsonObject finding = findings.last().toObject();
        QCOMPARE(finding["row"].toInt(), 3);
        QCOMPARE(finding["column"], "Art");
        QVERIFY(taken.messages.contains("theirs.csv: row 3, column Art: "));
        // The refused row as it was given, in its own columns, with the reason.
        const QByteArray kept = contentOf(rejects);
        QVERIFY2(kept.startsWith(QByteArray(header.chopped(2) + ",reason\r\nM-2,Umbau,")),
                 kept.constData());
        QVERIFY(kept.contains(",blue,\"Art: "));
        QCOMPARE(json({"order", "show", "M-1"}).object()["order"].toObject()["kind"], "analog");

        const Answered without = json({"order", "import", orders});
        COMPARE_STATUS(without, ExitStatus::BadInput);
        const Answered wrong = json(
            {"order", "import", orders, "--map", file("w.json", R"({"columns":{"Art":"x"}})")});
        COMPARE_STATUS(wrong, ExitStatus::BadInput);
        QCOMPARE(wrong.errorPlace(), "w.json: columns.Art");
        COMPARE_STATUS(json({"order", "import", orders, "--map", path("none.json")}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(json({"order", "import", "-", "--map", "-"}), ExitStatus::Usage);
    }
    void secondsComeInByAMap()
    {
        const QString map = file("seconds.json", R"({"columns":{"T":"second","Err":"bit_errors"},
                                                     "ignore":["Temp"]})");
        const QString log = file("log.csv", "T,Temp,Err\n0,20,0\n1,20,4\n2,21,0\n");
        const Answered read =
            call({"analyse", "seconds", log, "--rate", "64000", "--map", map, "--json"});
        COMPARE_STATUS(read, ExitStatus::Yes);
        QCOMPARE(read.object()["errored_seconds"].toInt(), 1);
        QCOMPARE(read.object()["bit_errors"].toInt(), 4);
        COMPARE_STATUS(call({"analyse", "seconds", log, "--rate", "64000", "--json"}),
                       ExitStatus::BadInput);
    }
};

QTEST_MAIN(ExportCommandsTest)
#include "ExportCommandsTest.moc"
