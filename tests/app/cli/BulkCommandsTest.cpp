// Bulk changes on the command line, by the contract's fields and statuses.

#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "tests/support/CommandRun.h"
#include "tests/support/Office.h"

#include <QDir>
#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class BulkCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    Answered at(const QStringList &words, const QString &by = "S1") const
    {
        return call(words + QStringList{"--db", path("records.sqlite"), "--now",
                                        "2026-03-05T12:00:00-06:00", "--by", by, "--json"});
    }
    static QStringList split(const QStringList &more = {})
    {
        return QStringList{"bulk",   "area_code", "--office", "NORTH",
                           "--from", "217",       "--to",     "447"} +
               more;
    }
    QString dn(const QString &number) const
    {
        const auto shown = at({"order", "show", number}).object();
        return shown["terminals"].toArray()[0].toObject()["dn"].toString();
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        const auto records = office(path("records.sqlite"));
        OrderFields mine = briFields(), analog = analogFields();
        mine["installer"] = analog["installer"] = "K7";
        QVERIFY(importOrders(*records, csv({mine, analog}), {"orders.csv"}));
    }

    void showsWhatWouldBe()
    {
        const Answered shown = at(split({"--spids"}));
        COMPARE_STATUS(shown, ExitStatus::Yes);
        const QJsonObject answer = shown.object();
        QCOMPARE(answer["applied"].toBool(true), false);
        QCOMPARE(answer["changes"].toArray().size(), 5);
        QCOMPARE(answer["changes"].toArray()[0].toObject(), (QJsonObject{{"circuit", "C-77"},
                                                                         {"order", "A-1001"},
                                                                         {"what", "dn_1"},
                                                                         {"old", "217-555-0143"},
                                                                         {"new", "447-555-0143"}}));
        QCOMPARE(answer["cannot"].toArray().size(), 0);
        QCOMPARE(dn("A-1001"), "217-555-0143");
        // Looking is anybody's, and leaves the file as it is.
        const QByteArray before = contentOf(path("records.sqlite"));
        COMPARE_STATUS(at(split({"--spids"}), "K7"), ExitStatus::Yes);
        QCOMPARE(contentOf(path("records.sqlite")), before);
    }
    void whatIsKeptIsNamed()
    {
        const Answered applied = at(split({"--apply"}));
        COMPARE_STATUS(applied, ExitStatus::No); // some cannot be
        const QJsonObject answer = applied.object();
        QCOMPARE(answer["applied"].toBool(), true);
        QCOMPARE(answer["changes"].toArray().size(), 3);
        const QJsonObject kept = answer["cannot"].toArray()[0].toObject();
        for (const char *key : {"circuit", "what", "old", "because"})
            QVERIFY2(!kept[key].toString().isEmpty(), key);
        QCOMPARE(kept["what"].toString(), "spid_1");
        QCOMPARE(dn("A-1001"), "447-555-0143");
        COMPARE_STATUS(at({"history", "verify"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"bulk", "undo"}), ExitStatus::Yes);
        QCOMPARE(dn("A-1001"), "217-555-0143");
        COMPARE_STATUS(at({"bulk", "undo"}), ExitStatus::No); // there is none
        COMPARE_STATUS(at({"history", "verify"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"audit"}), ExitStatus::Yes);
    }
    void converts()
    {
        const QStringList words{"bulk", "variant", "--office", "NORTH", "--to", "ni-generic"};
        const Answered shown = at(words);
        COMPARE_STATUS(shown, ExitStatus::Yes);
        QCOMPARE(shown.object()["changes"].toArray()[0].toObject()["what"].toString(),
                 "protocol_variant");
        const Answered applied = at(words + QStringList{"--apply"});
        COMPARE_STATUS(applied, ExitStatus::Yes);
        QCOMPARE(applied.object()["changes"], shown.object()["changes"]);
        const QJsonObject order = at({"order", "show", "A-1001"}).object()["order"].toObject();
        QCOMPARE(order["protocol_variant"].toString(), "ni-generic");
        QCOMPARE(at({"office", "list"}).array()[0].toObject()["protocol_variant"].toString(),
                 "ni-generic");
        // It is so now.
        COMPARE_STATUS(at(words), ExitStatus::BadInput);
    }
    void cards()
    {
        const QString file = path("cards.pdf");
        const Answered applied = at(split({"--spids", "--apply", "--out", file}));
        COMPARE_STATUS(applied, ExitStatus::Yes);
        QCOMPARE(applied.object()["cards"].toObject()["cards"].toInt(), 2);
        QVERIFY(contentOf(file).startsWith("%PDF-"));
        const Answered again = at({"bulk", "cards", "--cards", path("folder")}, "K7");
        COMPARE_STATUS(again, ExitStatus::Yes);
        QCOMPARE(QDir(path("folder")).entryList(QDir::Files),
                 (QStringList{"card-A-1001.pdf", "card-A-2001.pdf"}));
    }
    void aPlaceThatTakesNoCardsStopsItBefore()
    {
        written(path("mine.txt"), "mine");
        COMPARE_STATUS(at(split({"--apply", "--out", path("mine.txt")})), ExitStatus::Usage);
        for (const char *folder : {"mine.txt", "mine.txt/cards"})
            COMPARE_STATUS(at(split({"--apply", "--cards", path(folder)})),
                           ExitStatus::DiskTrouble);
        COMPARE_STATUS(at(split({"--apply", "--cards", path("records.sqlite-wal")})),
                       ExitStatus::Usage);
        QCOMPARE(dn("A-1001"), "217-555-0143");
        QCOMPARE(contentOf(path("mine.txt")), "mine");
    }
    void cardsThatFailLeaveTheChange()
    {
        QVERIFY(QDir(path("")).mkpath("folder/card-A-2001.pdf")); // a folder in its place
        const Answered applied = at(split({"--spids", "--apply", "--cards", path("folder")}));
        COMPARE_STATUS(applied, ExitStatus::DiskTrouble);
        const QString told = applied.error()["message"].toString();
        QVERIFY2(told.contains("The change stands, but its cards could not be made") &&
                     told.contains("bulk cards"),
                 qPrintable(told));
        QCOMPARE(dn("A-1001"), "447-555-0143");
        COMPARE_STATUS(at({"bulk", "cards", "--out", path("cards.pdf")}), ExitStatus::Yes);
    }

    void refused_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<QString>("by");
        QTest::addColumn<int>("status");
        const auto row = [](const char *name, const QStringList &words, const char *by,
                            ExitStatus status) {
            QTest::newRow(name) << words << QString(by) << int(status);
        };
        const auto area = [](const char *office, const char *from, const char *to) {
            return QStringList{"bulk", "area_code", "--office", office, "--from", from, "--to", to};
        };
        row("no area code", area("NORTH", "217", "911"), "S1", ExitStatus::BadInput);
        row("no area code from", area("NORTH", "117", "447"), "S1", ExitStatus::BadInput);
        row("the same", area("NORTH", "217", "217"), "S1", ExitStatus::BadInput);
        row("unknown office", area("WEST", "217", "447"), "S1", ExitStatus::BadInput);
        row("unknown variant", {"bulk", "variant", "--office", "NORTH", "--to", "ni9"}, "S1",
            ExitStatus::BadInput);
        row("half said", {"bulk", "area_code", "--office", "NORTH", "--from", "217"}, "S1",
            ExitStatus::Usage);
        row("cards of nothing", split({"--out", "x.pdf"}), "S1", ExitStatus::Usage);
        row("a dispatcher", split({"--apply"}), "D4", ExitStatus::No);
        row("no place for cards", {"bulk", "cards"}, "S1", ExitStatus::Usage);
        row("no change to print", {"bulk", "cards", "--out", "x.pdf"}, "S1", ExitStatus::No);
    }
    void refused()
    {
        QFETCH(QStringList, words);
        QFETCH(QString, by);
        QFETCH(int, status);
        const Answered answered = at(words, by);
        COMPARE_STATUS(answered, ExitStatus(status));
        QCOMPARE(dn("A-1001"), "217-555-0143");
    }

    void certificatesThatWillStandNoLonger()
    {
        {
            const auto records = std::move(*Records::open(path("records.sqlite")));
            records->actAs("K7");
            records->setNow(Moment::parse(u"2026-03-05T12:00:00-06:00"));
            QVERIFY(recordFile(*records, recordBytes(briFields(), briFacts()), "job.json"));
            QVERIFY(issueCertificate(*records, {"A-1001"}));
        }
        QCOMPARE(at(split()).object()["certificates"].toInt(), 1);
        const Answered shown = call(split({"--db", path("records.sqlite")}));
        QVERIFY2(shown.out.contains("\n1 certificate will stand no longer\n"),
                 shown.out.constData());
    }
    void inWords()
    {
        const Answered shown = call(split({"--db", path("records.sqlite")}));
        QVERIFY2(shown.out.contains("C-77 A-1001 dn_1: 217-555-0143 -> 447-555-0143\n"),
                 shown.out.constData());
        QVERIFY(shown.out.contains("C-77 A-1001 spid_1 stays 21755501430101: It holds area"));
        QVERIFY(shown.out.endsWith("nothing was changed: --apply does it\n"));
    }
};

QTEST_MAIN(BulkCommandsTest)
#include "BulkCommandsTest.moc"
