// The job from the order file to the certificate through the command line, on the demo scenario, by
// the fields and statuses of the contract. Longer than 400 lines: the commands share one job.

#include "core/acceptance/Stage.h"
#include "core/base/Csv.h"
#include "tests/support/CommandRun.h"
#include "tests/support/SmallDisk.h"

#include <QDirIterator>
#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";
/// The unpublished numbers of the scenario's office, as they stand in offices.csv and bare.
const QByteArrayList unpublished{"217-555-0198", "2175550198", "217-555-0199", "2175550199"};

bool hasKeys(const QJsonObject &object, const QStringList &keys)
{
    return std::all_of(keys.begin(), keys.end(),
                       [&object](const QString &key) { return object.contains(key); });
}

bool hasUnpublished(const QByteArray &text)
{
    return std::any_of(unpublished.begin(), unpublished.end(),
                       [&text](const QByteArray &number) { return text.contains(number); });
}

} // namespace

class JobCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_start, m_folder;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    QString file(const QString &name, const QByteArray &content) const
    {
        return written(path(name), content);
    }
    QString m_by = "moss"; ///< who acts

    Answered at(const QStringList &words) const
    {
        return call(words + QStringList{"--json", "--db", path("records.sqlite"), "--now",
                                        "2026-03-12T17:00:00-06:00", "--by", m_by});
    }
    Answered text(const QStringList &words) const
    {
        return call(words + QStringList{"--db", path("records.sqlite"), "--now",
                                        "2026-03-12T17:00:00-06:00"});
    }
    void record(const QString &name) const
    {
        COMPARE_STATUS(at({"record", scenario + "records/" + name + ".json"}), ExitStatus::Yes);
    }
    QString outcome(const QString &order) const
    {
        return at({"decide", order}).object()["outcome"].toString();
    }

private slots:
    /// The records of the scenario, once for all tests.
    void initTestCase()
    {
        m_by = "moss";
        m_folder = std::make_unique<QTemporaryDir>();
        qputenv("XDG_DATA_HOME", path("home").toUtf8());
        COMPARE_STATUS(at({"office", "import", scenario + "offices.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"installer", "import", scenario + "installers.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"instrument", "import", scenario + "instruments.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "import", scenario + "orders.csv"}), ExitStatus::No);
        m_start = std::move(m_folder);
    }
    void init()
    {
        m_by = "moss";
        m_folder = std::make_unique<QTemporaryDir>();
        // With its home: this machine remembers how far it signed.
        QCOMPARE(QProcess::execute("cp", {"-a", m_start->filePath("."), m_folder->path()}), 0);
        qputenv("XDG_DATA_HOME", path("home").toUtf8());
    }

    void ordersComeIn()
    {
        const Answered again = at({"order", "import", scenario + "orders.csv"});
        COMPARE_STATUS(again, ExitStatus::Yes);
        QCOMPARE(again.object()["unchanged"].toInt(), 200);

        const QString rejects = path("rejects.csv");
        const Answered bad =
            at({"order", "import", scenario + "bad-orders.csv", "--rejects", rejects});
        COMPARE_STATUS(bad, ExitStatus::No);
        const QJsonObject report = bad.object();
        QCOMPARE(report["accepted"].toInt() + report["refused"].toInt(), 15);
        QVERIFY(report["refused"].toInt() > 0 && report["held"].toInt() > 0);
        QSet<int> rows;
        for (const QJsonValue &value : report["findings"].toArray()) {
            QVERIFY(hasKeys(value.toObject(), {"row", "column", "code", "severity", "reason"}));
            rows << value["row"].toInt();
        }
        for (int row = 2; row <= 15; ++row) // row 16 has no defect
            QVERIFY2(rows.contains(row), qPrintable(QString::number(row)));
        QVERIFY(!rows.contains(16));
        QCOMPARE(bad.messages.count('\n'), report["findings"].toArray().size());
        QVERIFY(
            bad.messages.contains("loopwright-cli: bad-orders.csv: row 2, column order_number: "));

        const QByteArray written = contentOf(rejects);
        QCOMPARE(written.count("\r\n"), report["refused"].toInt() + 1);
        QVERIFY(written.left(written.indexOf("\r\n")).contains("reason"));
    }

    void allOrNothing()
    {
        const int before = at({"order", "list"}).array().size();
        COMPARE_STATUS(at({"order", "import", scenario + "bad-orders.csv", "--all-or-nothing"}),
                       ExitStatus::BadInput);
        QCOMPARE(at({"order", "list"}).array().size(), before);
    }

    void theBoard()
    {
        const QJsonArray all = at({"order", "list"}).array();
        QCOMPARE(all.size(), 200);
        for (const QJsonValue &row : all)
            QVERIFY(hasKeys(row.toObject(), {"order_number", "circuit_number", "customer", "office",
                                             "stage", "outcome", "due_date", "installer"}));
        const QJsonArray held = at({"order", "list", "--stage", "identifiers"}).array();
        QCOMPARE(held.size(), 2);
        QCOMPARE(at({"order", "list", "--limit", "7"}).array().size(), 7);
        QCOMPARE(at({"order", "list", "--text", "HR-BR-0001"}).array().size(), 1);
        QCOMPARE(at({"order", "list", "--office", "nowhere"}).document(),
                 QJsonDocument(QJsonArray()));
        for (const QJsonValue &row : at({"order", "list", "--due-before", "2026-03-01"}).array())
            QVERIFY(row["due_date"].toString() < "2026-03-01");
        QVERIFY(text({"order", "list", "--limit", "3"}).out.contains("26-0"));
    }

    void theBoardIsFilteredAndSorted()
    {
        const QJsonArray all = at({"order", "list"}).array();
        for (const QJsonValue &row : all)
            QVERIFY(hasKeys(row.toObject(), {"reason", "criterion", "late", "waiting_on",
                                             "premises", "pair", "hazard"}));
        using Holds = bool (*)(const QJsonObject &);
        const std::pair<QStringList, Holds> filters[] = {
            {{"--criterion", "run"},
             [](const QJsonObject &row) { return row["criterion"] == "run"; }},
            {{"--outcome", "not_accepted"},
             [](const QJsonObject &row) { return row["outcome"] == "not_accepted"; }},
            {{"--late"}, [](const QJsonObject &row) { return row["late"].toBool(); }},
            {{"--open"}, [](const QJsonObject &row) { return row["status"] == "open"; }},
            {{"--paper-outstanding"},
             [](const QJsonObject &row) { return row["paper_outstanding"].toBool(); }},
            {{"--waiting-on", "plant"},
             [](const QJsonObject &row) { return row["waiting_on"] == "plant"; }},
            {{"--installer", "okafor"},
             [](const QJsonObject &row) { return row["installer"] == "okafor"; }},
            {{"--due-from", "2026-03-05"},
             [](const QJsonObject &row) { return row["due_date"].toString() >= "2026-03-05"; }}};
        for (const auto &[words, holds] : filters) {
            const QJsonArray found = at(QStringList{"order", "list"} + words).array();
            QCOMPARE(found.size(), std::ranges::count_if(all, [holds = holds](const auto &row) {
                         return holds(row.toObject());
                     }));
            for (const QJsonValue &row : found)
                QVERIFY2(holds(row.toObject()), qPrintable(words.join(' ')));
        }
        const QJsonArray byStage = at({"order", "list", "--sort", "stage"}).array();
        QCOMPARE(byStage.size(), all.size());
        const QStringList stages = allWords<Stage>();
        for (qsizetype i = 1; i < byStage.size(); ++i) {
            const auto key = [&](const QJsonValue &row) {
                return std::tuple(stages.indexOf(row["stage"].toString()),
                                  row["due_date"].toString(), row["order_number"].toString());
            };
            QVERIFY(key(byStage[i - 1]) < key(byStage[i]));
        }
        for (const char *column : {"due", "office", "customer", "pair"}) {
            const QString key = qstrcmp(column, "due") == 0 ? "due_date" : column;
            const QJsonArray sorted = at({"order", "list", "--sort", column}).array();
            for (qsizetype i = 1; i < sorted.size(); ++i)
                QVERIFY(sorted[i - 1].toObject()[key].toString() <=
                        sorted[i].toObject()[key].toString());
            const QString third = sorted[2].toObject()["order_number"].toString();
            const QJsonArray page =
                at({"order", "list", "--sort", column, "--after", third, "--limit", "5"}).array();
            QCOMPARE(page.size(), 5);
            for (qsizetype i = 0; i < page.size(); ++i)
                QCOMPARE(page[i].toObject(), sorted[i + 3].toObject());
        }
        COMPARE_STATUS(at({"order", "list", "--after", "no-such"}), ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "list", "--sort", "colour"}), ExitStatus::Usage);
    }

    void aHeldOrderIsMended()
    {
        const QJsonObject shown = at({"order", "show", "26-0191"}).object();
        QVERIFY(hasKeys(shown, {"order", "circuit", "terminals", "facts", "decision", "events"}));
        // The whole row again, with the SPID mended.
        const QByteArray rows = contentOf(scenario + "orders.csv");
        const QStringList columns = QString(rows.left(rows.indexOf('\r'))).split(',');
        const auto table = readCsv(rows, "orders", {{}, columns, {}});
        QVERIFY(table);
        QStringList words{"order", "put", "--update"};
        for (const CsvRow &row : table->rows)
            if (table->value(row, "order_number") == "26-0191")
                for (const QString &column : table->header)
                    words << "--set"
                          << column + "=" +
                                 (column == "spid_1" ? table->value(row, "dn_1") + "0101"
                                                     : table->value(row, column));
        COMPARE_STATUS(at(words), ExitStatus::Yes);
        QCOMPARE(at({"order", "list", "--stage", "identifiers"}).array().size(), 1);
    }

    void aRecordTwiceAddsNothing()
    {
        const QString name = scenario + "records/26-0003.json";
        const Answered first = at({"record", name});
        COMPARE_STATUS(first, ExitStatus::Yes);
        QVERIFY(first.object()["added"].toArray().size() > 5);
        QCOMPARE(first.object()["already_there"].toArray(), QJsonArray());
        const qint64 events = at({"history", "verify"}).object()["events"].toInteger();
        const Answered second = at({"record", name});
        COMPARE_STATUS(second, ExitStatus::Yes);
        QCOMPARE(second.object()["added"].toArray(), QJsonArray());
        QCOMPARE(second.object()["already_there"], first.object()["added"]);
        QCOMPARE(at({"history", "verify"}).object()["events"].toInteger(), events);
    }

    void theDecision()
    {
        record("26-0001-first-run");
        const Answered failed = at({"decide", "26-0001"});
        COMPARE_STATUS(failed, ExitStatus::No);
        QCOMPARE(failed.object()["outcome"].toString(), QString("not_accepted"));
        QVERIFY(
            hasKeys(failed.object(), {"decision", "order", "outcome", "limit_set", "criteria"}));
        for (const QJsonValue &criterion : failed.object()["criteria"].toArray())
            QVERIFY(hasKeys(criterion.toObject(), {"key", "outcome", "measured", "limit", "unit",
                                                   "source", "reason", "evidence"}));
        record("26-0001-second-run");
        COMPARE_STATUS(at({"decide", "26-0001"}), ExitStatus::Yes);

        const Answered again = at({"decide", "--again", failed.object()["decision"].toString()});
        COMPARE_STATUS(again, ExitStatus::No);
        QCOMPARE(again.out, failed.out);
        COMPARE_STATUS(at({"decide", "--again", "00000000-0000-0000-0000-000000000000"}),
                       ExitStatus::BadInput);
    }

    void everyOutcomeOfTheScenario()
    {
        for (const char *name : {"26-0002", "26-0003", "26-0004", "26-0005", "26-0006", "26-0007",
                                 "26-0009", "26-0010"})
            record(name);
        QCOMPARE(outcome("26-0002"), QString("not_accepted"));
        QCOMPARE(outcome("26-0003"), QString("incomplete"));
        QCOMPARE(outcome("26-0004"), QString("accepted"));
        QCOMPARE(outcome("26-0005"), QString("not_accepted"));
        QCOMPARE(outcome("26-0006"), QString("not_accepted"));
        QCOMPARE(outcome("26-0007"), QString("accepted"));
        QCOMPARE(outcome("26-0009"), QString("incomplete"));
        QCOMPARE(outcome("26-0010"), QString("not_accepted"));
    }

    void anException()
    {
        record("26-0005");
        const auto accept = [this](const QStringList &words) {
            return call(QStringList{"--json", "--db", path("records.sqlite"), "--now",
                                    "2026-03-12T17:00:00-06:00", "accept"} +
                        words);
        };
        COMPARE_STATUS(accept({"26-0005", "--except", "safety", "--because", "x", "--by", "hale"}),
                       ExitStatus::No);
        COMPARE_STATUS(accept({"26-0005", "--except", "lunch", "--because", "x", "--by", "hale"}),
                       ExitStatus::Usage);
        COMPARE_STATUS(accept({"26-0005", "--except", "loop", "--because", "x", "--by", "rivera"}),
                       ExitStatus::No);
        const Answered accepted = accept({"26-0005", "--except", "loop", "--because",
                                          "The pair is to be changed in April.", "--by", "hale"});
        COMPARE_STATUS(accepted, ExitStatus::Yes);
        QCOMPARE(accepted.object()["outcome"].toString(), QString("accepted_with_exception"));
    }

    void aVoidedFactNoLongerCounts()
    {
        record("26-0007");
        QCOMPARE(outcome("26-0007"), QString("accepted"));
        QString run;
        for (const QJsonValue &fact : at({"order", "show", "26-0007"}).object()["facts"].toArray())
            if (fact["kind"].toString() == "run")
                run = fact["id"].toString();
        m_by = "hale"; // another recorded it
        COMPARE_STATUS(at({"void", run, "--because", "The set was on another line."}),
                       ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), QString("incomplete"));
        COMPARE_STATUS(at({"void", run, "--because", "again"}), ExitStatus::No);
        COMPARE_STATUS(at({"void", "none", "--because", "x"}), ExitStatus::BadInput);
    }

    void aCorrectionTakesThePlaceOfAFact()
    {
        const auto note = [this](const char *text) {
            const QJsonObject fact{
                {"kind", "note"}, {"at", "2026-03-12T09:00:00-06:00"}, {"text", text}};
            return file("note.json", QJsonDocument(QJsonObject{{"order", "26-0007"},
                                                               {"facts", QJsonArray{fact}}})
                                         .toJson());
        };
        const QString wrong =
            at({"record", note("dog")}).object()["added"].toArray().first().toString();
        const Answered right = at({"record", note("no dog"), "--corrects", wrong});
        COMPARE_STATUS(right, ExitStatus::Yes);
        QCOMPARE(right.object()["added"].toArray().size(), 1);
        const QJsonArray facts = at({"order", "show", "26-0007"}).object()["facts"].toArray();
        QCOMPARE(facts.size(), 3); // both notes, and the void
        COMPARE_STATUS(at({"record", note("cat"), "--corrects", wrong}), ExitStatus::No);
        COMPARE_STATUS(at({"record", note("cat"), "--corrects", "none"}), ExitStatus::BadInput);
        QCOMPARE(at({"order", "show", "26-0007"}).object()["facts"].toArray(), facts);
    }

    void theCertificate()
    {
        const QString pdf = path("c.pdf");
        COMPARE_STATUS(at({"certificate", "issue", "26-0007", "--out", pdf}), ExitStatus::No);
        QVERIFY(!QFile::exists(pdf));
        record("26-0007");
        const Answered issued = at({"certificate", "issue", "26-0007", "--out", pdf});
        COMPARE_STATUS(issued, ExitStatus::Yes);
        QVERIFY(hasKeys(issued.object(), {"certificate", "digest", "pages", "copy"}));
        QCOMPARE(issued.object()["copy"].toBool(true), false);
        QCOMPARE(issued.object()["digest"].toString().size(), 64);

        const Answered genuine = at({"certificate", "verify", pdf});
        COMPARE_STATUS(genuine, ExitStatus::Yes);
        QCOMPARE(genuine.object()["verdict"].toString(), QString("genuine"));
        QCOMPARE(genuine.object()["certificate"], issued.object()["certificate"]);
        COMPARE_STATUS(
            at({"certificate", "verify", "--number", issued.object()["certificate"].toString(),
                "--code", issued.object()["digest"].toString()}),
            ExitStatus::Yes);
        COMPARE_STATUS(at({"certificate", "verify", "--number",
                           issued.object()["certificate"].toString(), "--code", "0000 0000 0000"}),
                       ExitStatus::No);

        const Answered copy =
            at({"certificate", "issue", "26-0007", "--out", path("d.pdf"), "--paper", "letter"});
        COMPARE_STATUS(copy, ExitStatus::Yes);
        QCOMPARE(copy.object()["copy"].toBool(), true);
        QCOMPARE(copy.object()["digest"], issued.object()["digest"]);
        COMPARE_STATUS(at({"certificate", "verify", path("d.pdf")}), ExitStatus::Yes);

        QByteArray altered = contentOf(pdf);
        altered[altered.size() / 2] = char(altered[altered.size() / 2] ^ 1);
        const Answered refused = at({"certificate", "verify", file("e.pdf", altered)});
        COMPARE_STATUS(refused, ExitStatus::No);
        QCOMPARE(refused.object()["verdict"].toString(), QString("altered"));
        const Answered unknown = at({"certificate", "verify", file("f.pdf", "%PDF-1.6\n")});
        COMPARE_STATUS(unknown, ExitStatus::No);
        QCOMPARE(unknown.object()["verdict"].toString(), QString("unknown"));
        COMPARE_STATUS(at({"order", "complete", "26-0007"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"certificate", "verify", pdf}), ExitStatus::Yes);
    }

    void unpublishedNumbersStayInside()
    {
        record("26-0007");
        COMPARE_STATUS(at({"certificate", "issue", "26-0007", "--out", path("c.pdf")}),
                       ExitStatus::Yes);
        QProcess reader;
        reader.start("pdftotext", {path("c.pdf"), "-"});
        if (!reader.waitForFinished())
            QSKIP("pdftotext is not installed");
        const QByteArray words = reader.readAllStandardOutput();
        QVERIFY(words.contains("26-0007"));
        QVERIFY(!hasUnpublished(words));
        for (const QStringList &words :
             {QStringList{"order", "show", "26-0007"}, QStringList{"order", "list"},
              QStringList{"office", "list"}, QStringList{"history", "26-0007"}}) {
            QVERIFY(!hasUnpublished(at(words).all()));
            QVERIFY(!hasUnpublished(text(words).all()));
        }
        COMPARE_STATUS(at({"export", "--out", path("open")}), ExitStatus::Yes);
        COMPARE_STATUS(at({"export", "--out", path("internal"), "--internal"}), ExitStatus::Yes);
        const auto all = [](const QString &folder) {
            QByteArray all;
            QDirIterator files(folder, QDir::Files);
            while (files.hasNext())
                all += contentOf(files.next());
            return all;
        };
        QVERIFY(all(path("open")).contains("26-0007"));
        QVERIFY(!hasUnpublished(all(path("open"))));
        QVERIFY(hasUnpublished(all(path("internal"))));
    }

    void papersOfTheDay()
    {
        record("26-0006");
        const Answered handoff =
            at({"handoff", "26-0006", "--out", path("h.pdf"), "--paper", "letter"});
        COMPARE_STATUS(handoff, ExitStatus::Yes);
        QCOMPARE(handoff.object()["criterion"].toString(), QString("layer3"));
        QVERIFY(handoff.object()["cause"].toString().contains("98"));
        QVERIFY(contentOf(path("h.pdf")).startsWith("%PDF"));
        COMPARE_STATUS(at({"card", "26-0006", "--out", path("k.pdf")}), ExitStatus::Yes);
        QVERIFY(contentOf(path("k.pdf")).startsWith("%PDF"));
        record("26-0007"); // accepted: a handoff is never refused
        const Answered nothing = at({"handoff", "26-0007"});
        COMPARE_STATUS(nothing, ExitStatus::Yes);
        QCOMPARE(nothing.object()["criterion"].toString(), QString());
    }

    void handedOnIsRecorded()
    {
        record("26-0006");
        const Answered handed = at({"handoff", "26-0006", "--to", "cable desk", "--reference",
                                    "T-44", "--waiting-on", "plant", "--out", path("h.pdf")});
        COMPARE_STATUS(handed, ExitStatus::Yes);
        for (const QJsonObject &answer : {handed.object(), at({"handoff", "26-0006"}).object()}) {
            const QJsonObject referred = answer["referred"].toObject();
            QCOMPARE(referred["to"].toString(), QString("cable desk"));
            QCOMPARE(referred["reference"].toString(), QString("T-44"));
            QCOMPARE(referred["waiting_on"].toString(), QString("plant"));
        }
        COMPARE_STATUS(at({"handoff", "26-0006", "--reference", "T-44"}), ExitStatus::Usage);
        COMPARE_STATUS(at({"handoff", "26-0006", "--to", "x", "--waiting-on", "luck"}),
                       ExitStatus::Usage);
    }

    void whoIsNotRegisteredIsMarked()
    {
        const QJsonObject stranger{
            {"order", "26-0006"},
            {"installer", "K99"},
            {"facts",
             QJsonArray{QJsonObject{
                 {"kind", "note"}, {"text", "seen"}, {"at", "2026-03-04T09:15:00-06:00"}}}}};
        COMPARE_STATUS(at({"record", file("k99.json", QJsonDocument(stranger).toJson())}),
                       ExitStatus::Yes);
        const Answered shown = text({"order", "show", "26-0006"});
        QVERIFY2(shown.out.contains("K99 (not registered)"), shown.all().constData());
        bool marked = false;
        for (const QJsonValue &fact : at({"order", "show", "26-0006"}).object()["facts"].toArray())
            marked =
                marked || (fact["installer"] == "K99" && fact["installer_registered"] == false);
        QVERIFY(marked);
        const Answered decided = text({"decide", "26-0006"});
        QVERIFY2(decided.messages.contains("K99") && decided.messages.contains("not registered"),
                 decided.all().constData());
    }

    void aPageThatCannotBeWrittenRefersNothing()
    {
        record("26-0006");
        const Answered nowhere =
            at({"handoff", "26-0006", "--to", "cable desk", "--out", path("no/such/folder/h.pdf")});
        COMPARE_STATUS(nowhere, ExitStatus::DiskTrouble);
        QVERIFY(at({"handoff", "26-0006"}).object()["referred"].isNull());
        // The place could be opened and the disk refuses the page: the referral stands and says so.
        SmallDisk disk("64k");
        if (!disk.mounted())
            QSKIP("only root can mount a small disk");
        disk.fill("all");
        const QStringList full{"handoff",    "26-0006", "--to",
                               "cable desk", "--out",   disk.file("h.pdf")};
        for (int time = 0; time < 2; ++time) {
            const Answered refused = at(full);
            COMPARE_STATUS(refused, ExitStatus::DiskTrouble);
            QVERIFY2(refused.error()["message"].toString().contains("repeat the command"),
                     refused.all().constData());
        }
        int referrals = 0;
        for (const QJsonValue &fact : at({"order", "show", "26-0006"}).object()["facts"].toArray())
            referrals += fact["kind"] == "referred";
        QCOMPARE(referrals, 1);
        for (const char *option : {"--to", "--out"})
            for (const char *nothing : {"", " "})
                COMPARE_STATUS(at({"handoff", "26-0006", option, nothing}), ExitStatus::Usage);
    }

    void slips()
    {
        record("26-0006");
        COMPARE_STATUS(at({"card", "26-0006", "--kind", "leave_behind", "--out", path("l.pdf")}),
                       ExitStatus::Yes);
        QVERIFY(contentOf(path("l.pdf")).startsWith("%PDF"));
        COMPARE_STATUS(at({"card", "26-0006", "--kind", "close_out", "--out", path("c.pdf")}),
                       ExitStatus::No);
        QVERIFY(!QFile::exists(path("c.pdf")));
        record("26-0007");
        COMPARE_STATUS(at({"card", "26-0007", "--kind", "close_out", "--out", path("c.pdf")}),
                       ExitStatus::Yes);
        QVERIFY(contentOf(path("c.pdf")).startsWith("%PDF"));
    }

    void whoIssues()
    {
        m_by = "hale";
        const QString once = file("issuer.csv", "name,address,telephone,trouble_telephone\n"
                                                "Prairie,1 Road,309-555-0198,309-555-0199\n");
        COMPARE_STATUS(at({"issuer", "import", once}), ExitStatus::Yes);
        QCOMPARE(at({"issuer", "import", once}).object()["unchanged"].toInt(), 1);
        const QString other = file("other.csv", "name,address,telephone,trouble_telephone\n"
                                                "Other,1 Road,309-555-0198,309-555-0199\n");
        COMPARE_STATUS(at({"issuer", "import", other}), ExitStatus::No);
        COMPARE_STATUS(at({"issuer", "import", other, "--update"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"issuer", "import", file("b.csv", "name,fax\nPrairie,1\n")}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(at({"history", "verify"}), ExitStatus::Yes);
    }

    void listOfADay()
    {
        const Answered day = at({"day", "--installer", "okafor", "--out", path("d.pdf")});
        COMPARE_STATUS(day, ExitStatus::Yes);
        QVERIFY(contentOf(path("d.pdf")).startsWith("%PDF"));
        QStringList due; // as the board has it: due by today, and not done
        for (const QJsonValue &row :
             at({"order", "list", "--installer", "okafor", "--due-before", "2026-03-13"}).array())
            if (row["status"] == "open")
                due << row["order_number"].toString();
        QStringList listed = day.object()["orders"].toVariant().toStringList();
        QVERIFY(!due.isEmpty() && listed.contains("26-0001"));
        due.sort();
        listed.sort();
        QCOMPARE(listed, due);
        COMPARE_STATUS(at({"order", "cancel", "26-0001", "--because", "The customer moved."}),
                       ExitStatus::Yes);
        QVERIFY(!at({"day", "--installer", "okafor", "--out", path("d.pdf")})
                     .object()["orders"]
                     .toArray()
                     .contains("26-0001"));
        COMPARE_STATUS(at({"day", "--installer", "nobody", "--out", path("n.pdf")}),
                       ExitStatus::BadInput);
        QVERIFY(!QFile::exists(path("n.pdf")));
    }

    void limitsOfTheOffice()
    {
        m_by = "hale";
        record("26-0007");
        QCOMPARE(outcome("26-0007"), QString("accepted"));
        const QString before = at({"decide", "26-0007"}).object()["decision"].toString();
        QJsonObject set = at({"limits", "show"}).object();
        set["version"] = "own-1";
        set["valid_from"] = "2026-03-01";
        QJsonArray limits = set["limits"].toArray();
        for (QJsonValueRef each : limits)
            if (QJsonObject limit = each.toObject(); limit["key"] == "bri_loss_max") {
                limit["value"] = 1;
                limit["source"] = "common practice";
                each = limit;
            }
        set["limits"] = limits;
        const QString own = file("own.json", QJsonDocument(set).toJson());
        COMPARE_STATUS(at({"limits", "add", own}), ExitStatus::Yes);
        QCOMPARE(at({"limits", "show"}).object()["version"].toString(), QString("own-1"));
        QCOMPARE(at({"limits", "show", "--set", "2026-1"}).object()["version"].toString(),
                 QString("2026-1"));
        // The board knows at once; the decision made before stays as it was.
        QCOMPARE(at({"order", "list", "--text", "26-0007"})
                     .array()
                     .at(0)
                     .toObject()["outcome"]
                     .toString(),
                 QString("not_accepted"));
        QCOMPARE(outcome("26-0007"), QString("not_accepted"));
        QCOMPARE(at({"decide", "--again", before}).object()["outcome"].toString(),
                 QString("accepted"));
        COMPARE_STATUS(at({"history", "verify"}), ExitStatus::Yes);

        QVERIFY(!at({"limits", "add", own}).object()["added"].toBool());
        set["valid_from"] = "2026-03-02";
        COMPARE_STATUS(at({"limits", "add", file("own.json", QJsonDocument(set).toJson())}),
                       ExitStatus::BadInput);
        set["version"] = "own-2";
        set["limits"] = QJsonArray();
        COMPARE_STATUS(at({"limits", "add", file("own.json", QJsonDocument(set).toJson())}),
                       ExitStatus::BadInput);
    }

    void aChangedLimitDoesNotKeepItsPublishedSource()
    {
        m_by = "hale";
        QJsonObject set = at({"limits", "show"}).object();
        set["version"] = "own-1";
        const auto with = [&](const char *key, const QJsonObject &changes) {
            QJsonArray limits = set["limits"].toArray();
            for (QJsonValueRef each : limits)
                if (QJsonObject limit = each.toObject(); limit["key"] == key) {
                    for (auto it = changes.begin(); it != changes.end(); ++it)
                        limit[it.key()] = it.value();
                    each = limit;
                }
            QJsonObject other = set;
            other["limits"] = limits;
            return at({"limits", "add", file("own.json", QJsonDocument(other).toJson())});
        };
        const Answered kept = with("csa_length_26_max", {{"value", 9500}});
        COMPARE_STATUS(kept, ExitStatus::BadInput);
        QVERIFY2(kept.errorPlace().contains("csa_length_26_max"), kept.all().constData());
        // It holds by common practice, and beyond its value by a text.
        COMPARE_STATUS(with("balance_good_min", {{"value", 59}}), ExitStatus::BadInput);
        COMPARE_STATUS(at({"limits", "show", "--set", "own-1"}), ExitStatus::BadInput);
        COMPARE_STATUS(with("csa_length_26_max", {{"value", 9500}, {"source", ""}}),
                       ExitStatus::Yes);
        set["version"] = "own-2";
        COMPARE_STATUS(
            with("csa_length_26_max", {{"value", 9500}, {"source", "practice of this office"}}),
            ExitStatus::Yes);
        set["version"] = "own-3";
        COMPARE_STATUS(with("run_seconds_min", {{"value", 800}}), ExitStatus::Yes); // practice
    }

    /// The desk hears ten digits, and asks whether they are the order's.
    void aCompletionNumberIsChecked()
    {
        record("26-0007");
        const QString number =
            at({"order", "show", "26-0007"}).object()["completion_number"].toString();
        const auto verdict = [this](const QStringList &told, ExitStatus status) {
            const Answered answer = at(QStringList{"order", "check-completion", "26-0007"} + told);
            [&] { COMPARE_STATUS(answer, status); }();
            return answer.object()["verdict"].toString();
        };
        QCOMPARE(verdict({number}, ExitStatus::Yes), "stands");
        QCOMPARE(verdict(number.split(u' '), ExitStatus::Yes), "stands");
        QCOMPARE(verdict({QString(number).remove(u' ')}, ExitStatus::Yes), "stands");
        // One digit misheard.
        QString other = number;
        other[0] = other[0] == u'1' ? u'2' : u'1';
        QCOMPARE(verdict({other}, ExitStatus::No), "misheard");
        QCOMPARE(verdict({number.left(9)}, ExitStatus::No), "misheard");
        // Well formed, and of another order.
        record("26-0004");
        const QString another =
            at({"order", "show", "26-0004"}).object()["completion_number"].toString();
        QCOMPARE(verdict({another}, ExitStatus::No), "another");
        // The decision of then is kept; what it rested on counts no more.
        COMPARE_STATUS(at({"decide", "26-0007"}), ExitStatus::Yes);
        const QJsonArray facts = at({"order", "show", "26-0007"}).object()["facts"].toArray();
        QString run;
        for (const QJsonValue &fact : facts)
            if (fact["kind"] == "run")
                run = fact["id"].toString();
        m_by = "hale";
        COMPARE_STATUS(at({"void", run, "--because", "read of another line"}), ExitStatus::Yes);
        QCOMPARE(verdict({number}, ExitStatus::No), "superseded");
        COMPARE_STATUS(at({"order", "check-completion", "26-9999", number}), ExitStatus::BadInput);
    }

    /// One installer is at one place at a time.
    void overlappingVisitsAreTold()
    {
        const auto visit = [this](const QString &order, const char *arrived, const char *left,
                                  const char *installer = "rivera") {
            const QJsonObject told{{"kind", "visit"},
                                   {"at", QString("2026-03-11T%1:00-06:00").arg(left)},
                                   {"arrived", QString("2026-03-11T%1:00-06:00").arg(arrived)},
                                   {"left", QString("2026-03-11T%1:00-06:00").arg(left)}};
            const QJsonObject job{
                {"order", order}, {"installer", installer}, {"facts", QJsonArray{told}}};
            const Answered answer = at({"record", file("visit.json", QJsonDocument(job).toJson())});
            [&] { COMPARE_STATUS(answer, ExitStatus::Yes); }();
            QStringList said;
            for (const QJsonValue &finding : answer.object()["findings"].toArray())
                said << finding["code"].toString() + ": " + finding["reason"].toString();
            return said.filter("overlap");
        };
        QCOMPARE(visit("26-0002", "08:00", "09:00"), QStringList());
        QCOMPARE(visit("26-0003", "09:00", "10:00"), QStringList()); // from one to the next
        QCOMPARE(visit("26-0004", "09:30", "10:30", "okafor"), QStringList());
        QCOMPARE(visit("26-0005", "08:30", "08:45"),
                 QStringList{"visits_overlap: The visits of rivera from 11 March 2026, 08:30 "
                             "(UTC-06:00) and, at the premises of order 26-0002, from 11 March "
                             "2026, 08:00 (UTC-06:00) overlap."});
        QCOMPARE(visit("26-0003", "09:45", "09:50"),
                 QStringList{"visits_overlap: The visits of rivera from 11 March 2026, 09:45 "
                             "(UTC-06:00) and from 11 March 2026, 09:00 (UTC-06:00) overlap."});
    }

    void completingAndCancelling()
    {
        COMPARE_STATUS(at({"order", "complete", "26-0007"}), ExitStatus::No);
        COMPARE_STATUS(at({"order", "cancel", "26-0007", "--because", "The customer moved."}),
                       ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "cancel", "26-0007", "--because", "again"}), ExitStatus::No);
        COMPARE_STATUS(at({"circuit", "show", "HR-BR-0007"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"circuit", "show", "none"}), ExitStatus::BadInput);
    }

    void historyBackupAndRestore()
    {
        m_by = "hale";
        record("26-0003");
        const Answered whole = at({"history", "verify"});
        COMPARE_STATUS(whole, ExitStatus::Yes);
        QCOMPARE(whole.object()["verdict"].toString(), QString("whole"));
        QVERIFY(whole.object()["events"].toInt() > 200);
        QCOMPARE(whole.object()["broken"].toArray(), QJsonArray());
        QVERIFY(at({"history", "26-0003"}).array().size() >= 2);
        COMPARE_STATUS(at({"history", "none"}), ExitStatus::BadInput);

        const Answered head = at({"history", "head", "--out", path("head.json")});
        COMPARE_STATUS(head, ExitStatus::Yes);
        QCOMPARE(head.object()["position"], whole.object()["events"]);
        QCOMPARE(QJsonDocument::fromJson(contentOf(path("head.json"))).object(), head.object());
        COMPARE_STATUS(at({"history", "verify", "--head", path("head.json")}), ExitStatus::Yes);
        QJsonObject other = head.object();
        other["position"] = other["position"].toInt() + 1;
        const Answered shorter =
            at({"history", "verify", "--head", file("later.json", canonicalJson(other))});
        COMPARE_STATUS(shorter, ExitStatus::No);
        QCOMPARE(shorter.object()["verdict"].toString(), QString("broken"));
        QVERIFY(hasKeys(shorter.object()["broken"][0].toObject(), {"subject", "event", "what"}));
        COMPARE_STATUS(at({"history", "verify", "--head", file("none.json", "{}")}),
                       ExitStatus::BadInput);
        COMPARE_STATUS(at({"history", "26-0003", "--head", path("head.json")}), ExitStatus::Usage);
        COMPARE_STATUS(at({"history", "verify", "--out", path("x.json")}), ExitStatus::Usage);
        const Answered audit = at({"audit"});
        QVERIFY(hasKeys(audit.object(), {"findings", "broken"}));
        QCOMPARE(audit.object()["broken"].toArray(), QJsonArray());

        COMPARE_STATUS(at({"backup", path("b.sqlite")}), ExitStatus::Yes);
        COMPARE_STATUS(at({"backup", path("head.json")}), ExitStatus::Usage);
        const QByteArray before = at({"order", "show", "26-0003"}).out;
        record("26-0007");
        COMPARE_STATUS(at({"restore", path("b.sqlite")}), ExitStatus::Yes);
        QCOMPARE(at({"order", "show", "26-0003"}).out, before);
        QCOMPARE(outcome("26-0007"), QString("incomplete"));
        const Answered restored = at({"history", "head"});
        QVERIFY(restored.object()["station"] != head.object()["station"]);
        COMPARE_STATUS(at({"history", "verify", "--head", path("head.json")}), ExitStatus::Yes);
        COMPARE_STATUS(at({"restore", file("no.sqlite", "no database")}),
                       ExitStatus::DatabaseTrouble);
        QCOMPARE(at({"order", "show", "26-0003"}).out, before);
    }

    void inventedRecords()
    {
        const QStringList database{"--json", "--db", path("other.sqlite")};
        COMPARE_STATUS(call(QStringList{"fill", "--circuits", "25", "--seed", "3"} + database),
                       ExitStatus::Yes);
        QVERIFY(call(QStringList{"order", "list"} + database).array().size() >= 20);
        COMPARE_STATUS(call(QStringList{"history", "verify"} + database), ExitStatus::Yes);
        COMPARE_STATUS(call(QStringList{"fill", "--circuits", "25"} + database), ExitStatus::No);
    }

    void everyCommandAnswersInTextToo()
    {
        record("26-0005");
        for (const QStringList &words :
             {QStringList{"order", "show", "26-0005"}, QStringList{"decide", "26-0005"},
              QStringList{"history", "26-0005"}, QStringList{"history", "verify"},
              QStringList{"office", "list"}, QStringList{"installer", "list"},
              QStringList{"instrument", "list"}, QStringList{"circuit", "show", "HR-BR-0005"},
              QStringList{"handoff", "26-0005"}, QStringList{"audit"}}) {
            const Answered answered = text(words);
            QVERIFY2(answered.status == 0 || answered.status == 1, answered.all().constData());
            QVERIFY2(!answered.out.isEmpty(), qPrintable(words.join(' ')));
            QVERIFY(!answered.out.startsWith("{") && !answered.out.startsWith("["));
        }
    }
};

QTEST_MAIN(JobCommandsTest)
#include "JobCommandsTest.moc"
