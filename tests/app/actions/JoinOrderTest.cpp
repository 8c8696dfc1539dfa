// Records of a van that are there twice: an older copy that goes on, two copies in use. It is
// noticed, whatever the copies work on.

#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/trust/BundleFile.h"
#include "core/certificate/CertificateNumber.h"
#include "db/EventStore.h"
#include "tests/support/Vans.h"

#include <QDir>
#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class JoinOrderTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Site> m_office, m_van, m_copy;

    Site &office() { return *m_office; }
    Site &van() { return *m_van; }
    Site &copy() { return *m_copy; }

    static void reopen(Site &site, const QString &path, const QString &keys)
    {
        site.records = std::move(*Records::open(path));
        site.records->setKeys(KeyFolder(keys));
        site.records->actAs("K7");
        site.at("2026-03-04T20:00:00-06:00");
    }
    static void copyFolder(const QString &from, const QString &to)
    {
        QVERIFY(QDir().mkpath(to));
        const QFileInfoList files = QDir(from).entryInfoList(QDir::Files);
        for (const QFileInfo &file : files)
            QVERIFY(QFile::copy(file.filePath(), to + '/' + file.fileName()));
    }
    /// The van's records and keys on a second machine.
    void copyVan()
    {
        const QString path = van().records->database().path(), keys = van().file("keys");
        m_copy = std::make_unique<Site>(false);
        const QString other = copy().file("copy.sqlite");
        van().records.reset();
        copy().records.reset();
        QVERIFY(QFile::copy(path, other));
        copyFolder(keys, copy().file("copied"));
        reopen(van(), path, keys);
        reopen(copy(), other, copy().file("copied"));
    }
    static QList<QJsonObject> analogWork()
    {
        QList<QJsonObject> facts = analogFacts();
        for (QJsonObject &each : facts)
            each["id"] = each["id"].toString().replace(9, 4, "0001");
        return facts;
    }
    static QString issue(Site &site, const QString &order)
    {
        return good(issueCertificate(
                        *site.records,
                        {order, Paper::A4, {}, [](const auto &) { return Result<void>(); }}))
            .number;
    }
    std::vector<ShownConflict> conflicts(const QString &order, ConflictCode code)
    {
        auto all = good(stationConflicts(*office().records, order));
        std::erase_if(all, [code](const auto &each) { return each.conflict.code != code; });
        return all;
    }
    static bool tells(const JoinedOrder &joined, const QString &code)
    {
        return std::ranges::find(joined.findings, code, &Finding::code) != joined.findings.end();
    }

private slots:
    void init()
    {
        m_office = std::make_unique<Site>(true);
        m_van = std::make_unique<Site>(false);
        good(importOrders(*office().records, csv({briFields(), analogFields()}), {"o.csv"}));
        join(office(), van());
        van().open(take(office(), {"A-1001", "A-2001"}));
        copyVan();
    }
    void cleanup()
    {
        QCOMPARE(office().faults(), QStringList());
        QVERIFY(good(auditDerived(*office().records)).empty());
    }

    /// Both go on in one circuit: what comes second is refused, and the dispatcher sees why.
    void aForkInOneCircuitStandsOnTheBoard()
    {
        van().record(briFields(), briFacts().mid(0, 3));
        office().receive(van().bring());
        copy().record(briFields(), briFacts().mid(0, 5));
        const QByteArray fork = copy().bring();
        const JoinedOrder refused = office().receive(fork).orders.front();
        QCOMPARE(refused.code, QString("forked"));
        QVERIFY2(refused.reason.startsWith("Station van-7 tells another history than before"),
                 qPrintable(refused.reason));
        QCOMPARE(office().show().facts.size(), std::size_t(3));
        QCOMPARE(conflicts("A-1001", ConflictCode::Forked).size(), std::size_t(1));
        office().receive(fork); // again, and it is one and the same
        const auto shown = conflicts("A-1001", ConflictCode::Forked);
        QCOMPARE(shown.size(), std::size_t(1));
        BoardFilter disputed;
        disputed.facets.insert(BoardFacet::Conflict, "1");
        QCOMPARE(good(boardRows(*office().records, disputed)).front().order, QString("A-1001"));
        good(settleConflict(*office().records, shown.front().conflict.id, "office", "restored"));
        office().receive(fork);
        QVERIFY(conflicts("A-1001", ConflictCode::Forked).empty());
    }

    /// Each works on a circuit of its own, and no chain is told twice: the log of the station says
    /// it.
    void aForkOnOtherCircuitsIsNoticed_data()
    {
        QTest::addColumn<bool>("copyFirst");
        QTest::newRow("the van first") << false;
        QTest::newRow("the copy first") << true;
    }
    void aForkOnOtherCircuitsIsNoticed()
    {
        QFETCH(bool, copyFirst);
        van().record(briFields(), briFacts());
        copy().record(analogFields(), analogWork());
        const QByteArray mine = van().bring(true), theirs = copy().bring(true);
        for (const JoinedOrder &each : office().receive(copyFirst ? theirs : mine).orders)
            QVERIFY(!tells(each, "forked"));
        const TakenBundle second = office().receive(copyFirst ? mine : theirs);
        const QString worked = copyFirst ? "A-1001" : "A-2001";
        const auto joined = std::ranges::find(second.orders, worked, &JoinedOrder::order);
        QVERIFY(joined != second.orders.end());
        QVERIFY(joined->verdict == BundleVerdict::Taken);
        QVERIFY(tells(*joined, "forked"));
        const auto shown = conflicts(worked, ConflictCode::Forked);
        QCOMPARE(shown.size(), std::size_t(1));
        QCOMPARE(shown.front().stations, QStringList{"van-7"});
        QCOMPARE(office().outcome("A-1001"), OrderOutcome::Accepted);
        QCOMPARE(office().outcome("A-2001"), OrderOutcome::Accepted);
    }

    /// Also where only what is newer is told, and the older copy has told the same before.
    void anOlderCopyIsNoticedByWhatIsNewer()
    {
        copy().record(briFields(), briFacts().mid(0, 2));
        const QByteArray first = copy().bring(true);
        const QString id = readBundle(first, "b")->id;
        office().receive(first);
        // The copy's file again, as it is now, goes on in two places.
        const QString path = copy().records->database().path();
        const QString older = van().file("older.sqlite");
        copy().records.reset();
        QVERIFY(QFile::copy(path, older));
        reopen(copy(), path, copy().file("copied"));
        copy().record(briFields(), briFacts().mid(2));
        QVERIFY(!tells(office().receive(copy().bring(true, id)).orders.front(), "forked"));
        Site restored(false);
        restored.records.reset();
        reopen(restored, older, van().file("keys"));
        restored.record(analogFields(), analogWork());
        const TakenBundle taken = office().receive(restored.bring(true, id));
        QCOMPARE(taken.orders.size(), std::size_t(1));
        QVERIFY(tells(taken.orders.front(), "forked"));
        restored.records.reset();
    }

    /// Who only goes on, with more or with nothing new, is no fork.
    void whoGoesOnIsNoFork()
    {
        for (int n = 0; n < 3; ++n) {
            van().record(briFields(), briFacts().mid(n * 3, 3));
            van().bring(true); // brought, and never delivered
            for (int times = 0; times < 2; ++times) {
                const TakenBundle taken = office().receive(van().bring(true));
                for (const JoinedOrder &each : taken.orders)
                    QVERIFY(!tells(each, "forked"));
            }
        }
        QVERIFY(conflicts("A-1001", ConflictCode::Forked).empty());
    }

    /// Each issues a certificate under the same number: the second one stays out, and both orders
    /// say so; all else of the bundle is taken in.
    void aNumberGivenOutTwiceIsSaid()
    {
        van().record(briFields(), briFacts());
        copy().record(analogFields(), analogWork());
        const QString number = issue(van(), "A-1001");
        QCOMPARE(issue(copy(), "A-2001"), number);
        office().receive(van().bring());
        const TakenBundle second = office().receive(copy().bring());
        QVERIFY(second.verdict == BundleVerdict::Taken);
        const auto joined =
            std::ranges::find(second.orders, QString("A-2001"), &JoinedOrder::order);
        QVERIFY(joined != second.orders.end() && joined->verdict == BundleVerdict::Taken);
        QCOMPARE(joined->added.size(), analogFacts().size());
        QCOMPARE(joined->certificates, QStringList());
        const auto said =
            std::ranges::find(joined->findings, QString("certificate_twice"), &Finding::code);
        QVERIFY(said != joined->findings.end());
        const QString sentence = said->reason.english();
        const auto code = [](Site &site, const QString &order) {
            return site.show(order).certificates.front().code;
        };
        for (const QString &named : {number, QString("A-1001"), QString("A-2001"),
                                     code(van(), "A-1001"), code(copy(), "A-2001")})
            QVERIFY2(sentence.contains(named), qPrintable(sentence + "\n" + named));
        QCOMPARE(office().show("A-1001").certificates.size(), std::size_t(1));
        QVERIFY(office().show("A-2001").certificates.empty());
        for (const char *order : {"A-1001", "A-2001"}) {
            const auto shown = conflicts(order, ConflictCode::CertificateTwice);
            QCOMPARE(shown.size(), std::size_t(1));
            QVERIFY2(shown.front().sides.front().says.english().contains(number),
                     qPrintable(shown.front().sides.front().says.english()));
        }
        const auto events = good(EventStore(office().records->database()).ofOrder("A-1001"));
        QCOMPARE(events.back().kind, QString("conflict_noticed")); // nothing else came of it there
        QCOMPARE(events.back().detail.value("codes").toArray(), QJsonArray{"certificate_twice"});
        const auto rows = good(boardRows(*office().records, {}));
        const auto row = std::ranges::find(rows, QString("A-2001"), &BoardRow::order);
        QVERIFY(row->paper && row->conflicts > 0); // to be issued anew
    }
};

QTEST_MAIN(JoinOrderTest)
#include "JoinOrderTest.moc"
