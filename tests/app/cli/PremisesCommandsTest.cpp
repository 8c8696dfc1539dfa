// Two lines at one premises on the command line.

#include "tests/support/CommandRun.h"
#include "tests/support/Premises.h"

#include <QDir>
#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class PremisesCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_folder;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    Answered at(const QStringList &words, bool json = true) const
    {
        return call(words +
                    QStringList{"--db", path("records.sqlite"), "--now",
                                "2026-03-05T12:00:00-06:00", "--by", "Dana"} +
                    (json ? QStringList{"--json"} : QStringList()));
    }
    Answered issue(const QString &order, const QString &folder) const
    {
        return at({"certificate", "issue", "--premises-of", order, "--out-folder", path(folder)});
    }

private slots:
    void init()
    {
        m_folder = std::make_unique<QTemporaryDir>();
        const auto records = office(path("records.sqlite"));
        takeOrders(*records, {briFields(), secondLine(), thirdLine()});
        take(*records, briFields(), QList{arrival(50, 2)} + briFacts());
        take(*records, secondLine(), secondFacts());
    }

    void anOrderNamesItsNeighboursAndItsVisits()
    {
        const QJsonObject shown = at({"order", "show", "A-2001"}).object();
        QCOMPARE(shown["also_here"].toArray().size(), 2);
        QCOMPARE(shown["also_here"][0]["order_number"].toString(), "A-1001");
        QCOMPARE(shown["visits"][0]["orders"].toArray(), QJsonArray{"A-1001"});
        const QByteArray text = at({"order", "show", "A-2001"}, false).out;
        QVERIFY2(text.contains("A-1001, basic rate, due 2026-03-06, at certificate"), text);
        QVERIFY2(text.contains("recorded in A-1001"), text);
    }

    void aSetIsIssued()
    {
        const Answered issued = issue("A-2001", "set");
        COMPARE_STATUS(issued, ExitStatus::No); // A-3001 has none
        const QJsonArray certificates = issued.object()["certificates"].toArray();
        QCOMPARE(certificates.size(), 2);
        for (const QJsonValue &each : certificates) {
            for (const char *key : {"certificate", "digest", "pages", "copy", "order", "file"})
                QVERIFY2(each.toObject().contains(key), key);
            const Answered verified =
                at({"certificate", "verify", path("set/" + each["file"].toString())});
            COMPARE_STATUS(verified, ExitStatus::Yes);
            QCOMPARE(verified.object()["certificate"], each["certificate"]);
        }
        const QJsonObject without = issued.object()["without_certificate"][0].toObject();
        QCOMPARE(without["order"].toString(), "A-3001");
        QVERIFY(issued.messages.contains("order A-3001 has no certificate: "));
        const QString cover = issued.object()["covers"][0].toString();
        QVERIFY(QFile::exists(path("set/" + cover)));
        COMPARE_STATUS(at({"certificate", "verify", path("set/" + cover)}), ExitStatus::No);

        // Without the third order every line has its certificate, and the answer is yes.
        COMPARE_STATUS(at({"order", "cancel", "A-3001", "--because", "not wanted"}),
                       ExitStatus::Yes);
        const Answered again =
            at({"certificate", "issue", "--premises-of", "A-1001", "--out-folder", path("again")},
               false);
        COMPARE_STATUS(again, ExitStatus::Yes);
        QVERIFY2(again.out.contains("(copy)") && again.out.contains("cover-A-1001.pdf"), again.out);
    }

    void theUnpublishedNumberIsOnNoPaper()
    {
        QJsonObject note = fact(140, "call", 120,
                                {{"channel", "B1"},
                                 {"direction", "out"},
                                 {"service", "voice"},
                                 {"dn", "2175550151"},
                                 {"outcome", "ok"},
                                 {"announced_dn", sentinel}});
        QFile file(path("third.json"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(canonicalJson(record(order(thirdLine()), {note})));
        file.close();
        COMPARE_STATUS(at({"record", file.fileName()}), ExitStatus::Yes);
        COMPARE_STATUS(issue("A-1001", "set"), ExitStatus::No);
        for (const QString &name : QDir(path("set")).entryList(QDir::Files)) {
            QProcess reader;
            reader.start("pdftotext", {path("set/" + name), "-"});
            if (!reader.waitForFinished())
                QSKIP("pdftotext is not installed");
            const QByteArray words = reader.readAllStandardOutput();
            QVERIFY(words.contains("Bright Bakery"));
            QVERIFY(!words.simplified().replace("-", "").contains(sentinel.toUtf8()));
        }
    }

    void wrongUsage()
    {
        const QList<QStringList> wrong{
            {},
            {"A-1001"},
            {"--out", path("c.pdf")},
            {"--premises-of", "A-1001"},
            {"A-1001", "--out-folder", path("x")},
            {"--premises-of", "A-1001", "--out", path("c.pdf")},
            {"A-1001", "--premises-of", "A-2001", "--out-folder", path("x")},
            {"--premises-of", "", "--out-folder", path("x")}};
        for (const QStringList &words : wrong)
            COMPARE_STATUS(at(QStringList{"certificate", "issue"} + words), ExitStatus::Usage);
        QVERIFY(!QFile::exists(path("x")) && !QFile::exists(path("c.pdf")));
    }
    void refusals()
    {
        COMPARE_STATUS(issue("NO-SUCH", "x"), ExitStatus::BadInput);
        COMPARE_STATUS(at({"order", "cancel", "A-3001", "--because", "x"}), ExitStatus::Yes);
        COMPARE_STATUS(issue("A-3001", "x"), ExitStatus::No);
        QVERIFY(!QFile::exists(path("x")));
        QFile file(path("file"));
        QVERIFY(file.open(QIODevice::WriteOnly));
        COMPARE_STATUS(issue("A-1001", "file"), ExitStatus::DiskTrouble);
        QVERIFY(at({"order", "show", "A-1001"}).object()["certificates"].toArray().isEmpty());
    }
};

QTEST_MAIN(PremisesCommandsTest)
#include "PremisesCommandsTest.moc"
