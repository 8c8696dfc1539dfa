// Two lines at one premises: one visit, one set of certificates.

#include "tests/support/Premises.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Board.h"
#include "app/actions/CertificateSet.h"
#include "app/actions/History.h"
#include "app/actions/VerifyCertificate.h"

#include <QDir>
#include <QGuiApplication>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using namespace loopwright::jobs;

class PremisesTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;
    QTemporaryDir m_folder;

    QString outcome(const QString &order, const QString &key = {})
    {
        const auto decision = decisionNow(*m_records, order);
        if (!decision)
            qFatal("%s", qPrintable(decision.error().text()));
        return toText(decision->outcome) +
               (key.isEmpty() ? QString() : ' ' + toText(decision->criterion(key)->outcome));
    }
    BoardRow row(const QString &order)
    {
        BoardFilter filter;
        filter.text = order;
        return boardRows(*m_records, filter)->front();
    }
    /// The set of the order as files in a folder of their own.
    Result<IssuedSet> issue(const QString &order, const QString &folder, Signatures signatures = {})
    {
        return issueCertificateSet(*m_records, {order, Paper::A4, std::move(signatures),
                                                [this, folder](const SetPapers &papers) {
                                                    m_sheets = papers.sheets.size();
                                                    return writeSet(path(folder), papers.files);
                                                },
                                                [this, folder](const SetPapers &papers) {
                                                    return checkSet(path(folder), papers.files);
                                                }});
    }
    QString path(const QString &name) const { return m_folder.filePath(name); }
    QByteArray bytes(const QString &name) const
    {
        QFile file(path(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    QString verdict(const QString &name)
    {
        return toText(verifyCertificateFile(*m_records, bytes(name))->verdict);
    }

    std::size_t m_sheets = 0;

private slots:
    void init()
    {
        m_records = office();
        takeOrders(*m_records, {briFields(), secondLine(), thirdLine()});
    }

    void eachOrderKnowsTheOthers()
    {
        const auto view = showOrder(*m_records, "A-1001");
        QVERIFY(view);
        QCOMPARE(view->alsoHere.size(), 2u);
        QCOMPARE(view->alsoHere[0].order, "A-2001");
        QCOMPARE(view->alsoHere[1].order, "A-3001");
        QCOMPARE(view->toJson()["also_here"].toArray()[0].toObject()["kind"].toString(), "analog");
        QVERIFY(cancelOrder(*m_records, "A-3001", "not wanted"));
        QCOMPARE(showOrder(*m_records, "A-1001")->alsoHere.size(), 1u);
    }

    void oneVisitForBoth()
    {
        take(*m_records, briFields(), QList{arrival(50, 2)} + briFacts());
        take(*m_records, secondLine(), secondFacts());
        QCOMPARE(outcome("A-2001", "safety"), "accepted met");
        const auto input = evidenceOf(*m_records, "A-2001");
        QCOMPARE(input->visits.size(), 1u);
        QCOMPARE(input->visits[0].orders, QStringList{"A-1001"});
        const auto view = showOrder(*m_records, "A-2001");
        QCOMPARE(view->visits.size(), 1u);
        QVERIFY(!view->visits[0].left);
        // He leaves: recorded in the order where he arrived, ended for both.
        take(*m_records, briFields(), {leaving(51, 2, 90)});
        QVERIFY(showOrder(*m_records, "A-2001")->visits[0].left);
        // The card of the one pair is none of the other.
        QVERIFY(voidFact(*m_records, uuid(101), "read on the wrong pair"));
        QCOMPARE(outcome("A-2001", "safety"), "incomplete missing");
        QCOMPARE(outcome("A-1001"), "accepted");
    }

    void theBoardFollowsWhatIsToldElsewhere()
    {
        take(*m_records, secondLine(), secondFacts());
        QCOMPARE(row("A-2001").stage, stageAt(Station::Certificate));
        take(*m_records, secondLine(),
             {call(140, 310, "B1", "out", "voice", "2175550150", "failed")});
        QCOMPARE(row("A-2001").stage, stageAt(Station::Calls));
        QVERIFY(row("A-2001").reason.contains("failed"));
        // He came twice: the call that failed lies on the second visit, without a card.
        take(*m_records, briFields(), {leaving(50, 2, 90), leaving(51, 300, 330)});
        QCOMPARE(row("A-2001").stage, stageAt(Station::Certificate));
        QVERIFY(voidFact(*m_records, uuid(51), "was another day"));
        QCOMPARE(row("A-2001").stage, stageAt(Station::Calls));
        // The other order was for other premises after all.
        take(*m_records, briFields(), {leaving(52, 300, 330)});
        QCOMPARE(row("A-2001").stage, stageAt(Station::Certificate));
        OrderFields moved = briFields();
        moved["premises"] = "14 Mill Lane";
        QVERIFY(putOrder(*m_records, moved, true));
        QCOMPARE(row("A-2001").stage, stageAt(Station::Calls));
    }

    void anOldDecisionRepeatsItself()
    {
        take(*m_records, secondLine(), secondFacts());
        const auto before = decideOrder(*m_records, "A-2001");
        take(*m_records, briFields(),
             QList{arrival(50, 2), fact(51, "self_test", 3, {{"outcome", "failed"}})});
        const auto after = decideOrder(*m_records, "A-2001");
        QVERIFY(before->id != after->id);
        QCOMPARE(toText(after->outcome), "incomplete"); // the meter had failed on this visit
        for (const auto &decision : {before, after})
            QCOMPARE(canonicalJson(decideAgain(*m_records, decision->id)->toJson()),
                     canonicalJson(decision->toJson()));
    }

    void aSetHasAFileForEachLineAndACover()
    {
        take(*m_records, briFields(), QList{arrival(50, 2)} + briFacts());
        take(*m_records, secondLine(), secondFacts());
        const auto set = issue("A-1001", "set");
        QVERIFY2(set, set ? "" : qPrintable(set.error().text()));
        QCOMPARE(
            QDir(path("set")).entryList(QDir::Files),
            (QStringList{"certificate-A-1001.pdf", "certificate-A-2001.pdf", "cover-A-1001.pdf"}));
        QCOMPARE(set->certificates.size(), 2u);
        QVERIFY(set->certificates[0].issued.number != set->certificates[1].issued.number);
        QCOMPARE(verdict("set/certificate-A-1001.pdf"), "genuine");
        QCOMPARE(verdict("set/certificate-A-2001.pdf"), "genuine");
        QCOMPARE(verdict("set/cover-A-1001.pdf"), "unknown");
        QVERIFY(verifyCertificateFile(*m_records, bytes("set/cover-A-1001.pdf"))
                    ->reason.contains("cover"));
        QCOMPARE(m_sheets, 3u); // the cover, then the certificates
        // The third order is named with what it lacks, and the others have their certificates.
        QCOMPARE(set->without.size(), 1u);
        QCOMPARE(set->without[0].order, "A-3001");
        QCOMPARE(set->without[0].stage, stageAt(Station::Safety));
        QVERIFY(!set->without[0].why.isEmpty());
        for (const char *order : {"A-1001", "A-2001"})
            QCOMPARE(showOrder(*m_records, order)->stage, Stage::Done);
        QCOMPARE(verifyHistory(*m_records)->broken.size(), 0u);

        // Again it is the same certificates as copies, even if one order is completed by then.
        QVERIFY(completeOrder(*m_records, "A-2001"));
        const auto again = issue("A-1001", "again");
        QCOMPARE(again->certificates.size(), 2u);
        for (std::size_t i = 0; i < 2; ++i) {
            QVERIFY(again->certificates[i].issued.copy);
            QCOMPARE(again->certificates[i].issued.digest, set->certificates[i].issued.digest);
        }
        QCOMPARE(verdict("again/certificate-A-2001.pdf"), "genuine");
        QCOMPARE(verdict("set/certificate-A-2001.pdf"), "genuine");
    }

    void aCompletedOrderOfAnotherDayIsNotInTheSet()
    {
        take(*m_records, secondLine(), secondFacts());
        QVERIFY(completeOrder(*m_records, "A-2001"));
        QCOMPARE(linesOfSet(*m_records, "A-1001")->size(), 2u); // itself and A-3001
        QJsonObject nextDay = safety(50, 5);
        nextDay["at"] = "2026-03-05T09:00:00-06:00";
        take(*m_records, briFields(), briFacts() << nextDay);
        QCOMPARE(linesOfSet(*m_records, "A-1001")->size(), 2u);
        QVERIFY(voidFact(*m_records, uuid(50), "was another pair"));
        QCOMPARE(linesOfSet(*m_records, "A-1001")->size(), 3u);
    }

    void nothingIsIssuedWhereAFileCannotBeWritten()
    {
        take(*m_records, briFields(), briFacts());
        take(*m_records, secondLine(), secondFacts());
        QVERIFY(QDir(path("")).mkpath("full/certificate-A-2001.pdf")); // a folder in its place
        const auto set = issue("A-1001", "full");
        QVERIFY(!set);
        QCOMPARE(set.error().code, ErrorCode::DiskTrouble);
        QCOMPARE(QDir(path("full")).entryList(QDir::Files), QStringList());
        QVERIFY(showOrder(*m_records, "A-1001")->certificates.empty());
        QVERIFY(showOrder(*m_records, "A-2001")->certificates.empty());
    }

    void withoutAnAcceptedLineThereIsNoSet()
    {
        const auto set = issue("A-1001", "none");
        QVERIFY(!set);
        QCOMPARE(set.error().code, ErrorCode::Refused);
        for (const char *order : {"A-1001", "A-2001", "A-3001"})
            QVERIFY2(set.error().message.contains(order), qPrintable(set.error().message));
        QVERIFY(!QDir(path("none")).exists());
        QCOMPARE(linesOfSet(*m_records, "A-9").error().code, ErrorCode::NotFound);
    }

    void eachCustomerHasACoverOfHisOwn()
    {
        OrderFields neighbour = thirdLine();
        neighbour["customer"] = "Quiet Cafe";
        QVERIFY(putOrder(*m_records, neighbour, true));
        take(*m_records, briFields(), briFacts());
        take(*m_records, secondLine(), secondFacts());
        QList<QJsonObject> third = secondFacts();
        int id = 201;
        for (QJsonObject &each : third) {
            each["id"] = uuid(id++);
            if (each.contains("dn"))
                each["dn"] = "2175550151";
        }
        take(*m_records, neighbour, third);
        const std::vector<std::vector<QPoint>> strokes{{{1, 1}, {900, 400}}};
        const auto set = issue("A-1001", "both",
                               {{"installer", "Kim Carver", m_records->now(), strokes},
                                {"customer", "B. Baker", m_records->now(), strokes}});
        QVERIFY2(set, set ? "" : qPrintable(set.error().text()));
        QCOMPARE(set->covers, (QStringList{"cover-A-1001.pdf", "cover-A-3001.pdf"}));
        QCOMPARE(set->certificates.size(), 3u);
        QCOMPARE(set->certificates[1].issued.content.signatures.size(), 2u);
        QCOMPARE(set->certificates[2].issued.content.order, "A-3001");
        QCOMPARE(set->certificates[2].issued.content.signatures.size(), 1u);
        QCOMPARE(set->certificates[2].issued.content.signatures[0].role, "installer");
    }
};

QTEST_MAIN(PremisesTest)
#include "PremisesTest.moc"
