#include "app/actions/OrderPapers.h"

#include "app/actions/Certificates.h"
#include "app/actions/Evidence.h"
#include "app/actions/Import.h"
#include "app/actions/Plans.h"
#include "tests/support/Office.h"
#include "tests/support/Papers.h"

#include <QDir>
#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class OrderPapersTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;
    QTemporaryDir m_folder;

    Result<OrderPapers> papers(OrderPaper kind, const QString &folder = {}) const
    {
        return papersOf(
            *m_records,
            {{"A-1001", "A-1002"}, kind, Paper::A4, m_records->now().localDate(), folder});
    }

private slots:
    void init()
    {
        m_records = office();
        const auto taken =
            importOrders(*m_records,
                         csv({briFields(), otherBriFields("A-1002", "C-78", "17-206",
                                                          "217-555-0145", "217-555-0146")}),
                         {"orders.csv"});
        QVERIFY(taken && taken->refused == 0);
        QVERIFY(recordFile(*m_records, recordBytes(briFields(), briFacts()), "job.json"));
    }

    void cardsOfThoseThatHaveOne()
    {
        const auto cards = papers(OrderPaper::Settings);
        QVERIFY2(cards, cards ? "" : qPrintable(cards.error().message));
        QCOMPARE(cards->papers, 1);
        QVERIFY(papers::textOf(cards->sheet).contains("A-1001"));
        QCOMPARE(cards->without.size(), 1);
        QVERIFY2(cards->without[0].startsWith("A-1002: order A-1002 names no installer"),
                 qPrintable(cards->without[0]));
        QVERIFY(assignOrders(*m_records, {{"A-1002"}, "K7"}));
        const auto both = papers(OrderPaper::Settings);
        QVERIFY(both);
        QCOMPARE(both->papers, 2);
        QVERIFY(both->without.isEmpty());
        QVERIFY(both->sheet.pages.size() >= 2);
    }
    void aDayListForEachInstaller()
    {
        QVERIFY(!papers(OrderPaper::DayLists)); // nobody is assigned
        QVERIFY(assignOrders(
            *m_records, {{"A-1001"}, "K7", m_records->now().localDate(), "the customer asked"}));
        QVERIFY(assignOrders(
            *m_records, {{"A-1002"}, "D4", m_records->now().localDate(), "the customer asked"}));
        const auto lists = papers(OrderPaper::DayLists);
        QVERIFY2(lists, lists ? "" : qPrintable(lists.error().message));
        QCOMPARE(lists->papers, 2);
        const QString text = papers::textOf(lists->sheet);
        QVERIFY(text.contains("Kim Carver") && text.contains("Lee Ward"));
    }
    void copiesOfTheCertificatesThatStand()
    {
        const auto none = papers(OrderPaper::Certificates);
        QVERIFY(!none);
        QVERIFY2(none.error().message.contains("A-1001: its certificate was not issued yet"),
                 qPrintable(none.error().message));
        QVERIFY(issueCertificate(*m_records, {"A-1001", Paper::A4, {}, {}}));
        const QString folder = m_folder.filePath("certificates");
        const auto copies = papers(OrderPaper::Certificates, folder);
        QVERIFY2(copies, copies ? "" : qPrintable(copies.error().message));
        QCOMPARE(copies->papers, 1);
        QCOMPARE(copies->without.size(), 1);
        QFile file(folder + "/certificate-A-1001.pdf");
        QVERIFY(file.open(QIODevice::ReadOnly));
        QVERIFY(file.read(5) == "%PDF-");
    }
    /// For the customer or for the desk, by how the order stands.
    void slipsAsTheOrdersStand()
    {
        QVERIFY(assignOrders(*m_records, {{"A-1002"}, "K7"}));
        const auto left = papers(OrderPaper::LeaveBehind);
        QVERIFY2(left, left ? "" : qPrintable(left.error().message));
        QCOMPARE(left->papers, 1);
        QVERIFY2(left->without.value(0).startsWith("A-1001: order A-1001 is accepted"),
                 qPrintable(left->without.value(0)));
        QVERIFY(papers::textOf(left->sheet).contains("A-1002"));
        const auto closed = papers(OrderPaper::CloseOut);
        QVERIFY2(closed, closed ? "" : qPrintable(closed.error().message));
        QCOMPARE(closed->papers, 1);
        QVERIFY2(closed->without.value(0).startsWith("A-1002: order A-1002 is not accepted"),
                 qPrintable(closed->without.value(0)));
        const QString text = papers::textOf(closed->sheet);
        QVERIFY2(text.contains("Close-out") && text.contains("A-1001"), qPrintable(text));
        const QString folder = m_folder.filePath("slips");
        QVERIFY(papers(OrderPaper::LeaveBehind, folder));
        QVERIFY(papers(OrderPaper::CloseOut, folder));
        QCOMPARE(QDir(folder).entryList(QDir::Files),
                 (QStringList{"close-out-A-1001.pdf", "leave-behind-A-1002.pdf"}));
    }
    void stopsWhereItIsTold()
    {
        const auto stopped = papersOf(*m_records, {{"A-1001", "A-1002"}, OrderPaper::Settings},
                                      [](qint64, qint64) { return false; });
        QVERIFY(!stopped);
        QCOMPARE(stopped.error().message, "It was stopped; nothing was written.");
    }
    /// Each file is whole or not there, and how many are there is said.
    void saysWhatIsWrittenWhenItIsStopped()
    {
        QVERIFY(assignOrders(*m_records, {{"A-1002"}, "K7"}));
        const QString folder = m_folder.filePath("stopped");
        QList<qint64> told;
        const auto afterOne = [&told](qint64 done, qint64 total) {
            told << done;
            return done < 1 && total == 2;
        };
        const auto stopped =
            papersOf(*m_records,
                     {{"A-1001", "A-1002"}, OrderPaper::Settings, Paper::A4, {}, folder}, afterOne);
        QVERIFY(!stopped && stopped.error().code == ErrorCode::Refused);
        QCOMPARE(stopped.error().message, "It was stopped; papers in the folder: 1 of 2.");
        QCOMPARE(told, (QList<qint64>{0, 1}));
        QCOMPARE(QDir(folder).entryList(QDir::AllEntries | QDir::NoDotAndDotDot | QDir::Hidden),
                 QStringList("card-A-1001.pdf"));
        QFile whole(QDir(folder).filePath("card-A-1001.pdf"));
        QVERIFY(whole.open(QIODevice::ReadOnly) && whole.readAll().trimmed().endsWith("%%EOF"));
        // For a printer a copy is recorded as soon as it is made.
        QVERIFY(issueCertificate(*m_records, {"A-1001", Paper::A4, {}, {}}));
        const auto unprinted =
            papersOf(*m_records, {{"A-1001", "A-1002"}, OrderPaper::Certificates}, afterOne);
        QVERIFY(!unprinted);
        QCOMPARE(unprinted.error().message,
                 "It was stopped; nothing was printed. Copies that are recorded: 1.");
        // Each list of a day asks too.
        const auto lists = papersOf(
            *m_records, {{"A-1001", "A-1002"}, OrderPaper::DayLists, Paper::A4, QDate(2026, 12, 1)},
            [](qint64, qint64) { return false; });
        QVERIFY(!lists);
        QCOMPARE(lists.error().message, "It was stopped; nothing was written.");
    }
};

QTEST_MAIN(OrderPapersTest)
#include "OrderPapersTest.moc"
