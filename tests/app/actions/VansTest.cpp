// Longer than 400 lines: one way after another in which the two may disagree.
// Work that is done apart: handed out, opened, brought back, joined.

#include "tests/support/Vans.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Audit.h"
#include "app/actions/Board.h"
#include "app/actions/InstrumentLabels.h"
#include "app/actions/Plans.h"
#include "app/actions/Register.h"
#include "app/actions/VerifyCertificate.h"
#include "app/trust/BundleFile.h"
#include "core/base/Json.h"
#include "db/SqliteConnection.h"
#include "tests/support/Tamper.h"

#include <QScopeGuard>
#include <QTest>

#include <algorithm>
#include <random>

using namespace loopwright;
using namespace loopwright::jobs;

class VansTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Site> m_office, m_van;

    Site &office() { return *m_office; }
    Site &van() { return *m_van; }

    /// Taken along, opened, and worked on there.
    void work(const QList<QJsonObject> &facts = briFacts())
    {
        QCOMPARE(van().open(take(office(), {"A-1001"})).verdict, BundleVerdict::Taken);
        van().record(briFields(), facts);
    }
    /// The only conflict of the order; it must have the code.
    ShownConflict conflict(ConflictCode code)
    {
        const auto all = good(stationConflicts(*office().records, "A-1001"));
        if (all.size() != 1 || all.front().conflict.code != code)
            qFatal("%zu conflicts", all.size());
        return all.front();
    }
    void settle(const ShownConflict &conflict, const QString &side)
    {
        good(settleConflict(*office().records, conflict.conflict.id, side, "asked on the phone"));
    }
    void set(const QString &column, const QString &value)
    {
        office().records->changeWhatIsOut(true);
        good(changePlans(*office().records, {{"A-1001", {{column, value}}}}));
    }
    QString codeOf(const TakenBundle &taken)
    {
        return taken.verdict == BundleVerdict::Refused ? taken.code
               : taken.orders.empty()                  ? QString()
                                                       : taken.orders.front().code;
    }

private slots:
    void init()
    {
        m_office = std::make_unique<Site>(true);
        m_van = std::make_unique<Site>(false);
        good(importOrders(*office().records, csv({briFields(), analogFields()}), {"o.csv"}));
        join(office(), van());
    }
    void cleanup()
    {
        QCOMPARE(office().faults(), QStringList());
        QCOMPARE(van().faults(), QStringList());
    }

    /// Its events are what their digests say, whatever a text begins with.
    void aTextMayBeginWithTheMarkOfAFile()
    {
        work();
        good(voidFact(*van().records, uuid(10), QString(QChar(QChar::ByteOrderMark)) + "misread"));
        QCOMPARE(codeOf(office().receive(van().bring())), QString());
        QCOMPARE(office().faults(), QStringList());
    }

    void anOrderGoesOutAndComesHome()
    {
        const QByteArray out = take(office(), {"A-1001"});
        QVERIFY2(!out.contains(sentinel.toLatin1()), "a number of a test line is readable");
        QCOMPARE(office().show().out.front().station, QString("van-7"));
        QCOMPARE(van().open(out).verdict, BundleVerdict::Taken);
        QCOMPARE(van().open(out).verdict, BundleVerdict::AlreadyThere);
        QCOMPARE(van().show().testLines.front().number.forInstallersOnly(), sentinel);
        QCOMPARE(van().show().status, OrderStatus::Open);
        QVERIFY(van().show().out.empty()); // it is at hand
        QCOMPARE(van().show().input.takenIn, office().show().input.takenIn);

        van().record(briFields(), briFacts());
        QByteArray pdf;
        const auto issued =
            good(issueCertificate(*van().records, {"A-1001", Paper::A4, {}, [&](const auto &paper) {
                                                       pdf = paper.pdf;
                                                       return Result<void>();
                                                   }}));
        QCOMPARE(office().outcome(), OrderOutcome::Incomplete);
        const QByteArray back = van().bring();
        QCOMPARE(van().bring(), back); // the same work is the same bundle
        QVERIFY(!back.contains(sentinel.toLatin1()));
        const TakenBundle received = office().receive(back);
        QCOMPARE(received.verdict, BundleVerdict::Taken);
        QCOMPARE(received.station, QString("van-7"));
        const JoinedOrder &joined = received.orders.front();
        QCOMPARE(joined.added.size(), briFacts().size());
        QCOMPARE(joined.certificates, QStringList{issued.number});
        QCOMPARE(joined.conflicts, QStringList());

        const OrderView view = office().show();
        QCOMPARE(view.decision.outcome, OrderOutcome::Accepted);
        QVERIFY(view.out.empty());
        QCOMPARE(view.facts.front().station, QString("van-7"));
        QCOMPARE(canonicalJson(view.decision.toJson()["criteria"]),
                 canonicalJson(van().show().decision.toJson()["criteria"]));
        QCOMPARE(good(verifyCertificateFile(*office().records, pdf)).verdict,
                 CertificateVerdict::Genuine);
        QVERIFY(good(auditDerived(*office().records)).empty());

        QCOMPARE(office().receive(back).verdict, BundleVerdict::AlreadyThere);
    }

    /// The issuer's public key alone is enough for what a van issued.
    void aVansCertificateHasTheIssuersWord()
    {
        work();
        QByteArray pdf;
        good(issueCertificate(*van().records, {"A-1001", Paper::A4, {}, [&](const auto &paper) {
                                                   pdf = paper.pdf;
                                                   return Result<void>();
                                               }}));
        const QByteArray all = good(publicKeyFile(*office().records));
        const QByteArray issuersAlone = all.left(all.indexOf('\n') + 1); // its first line
        const auto keys = good(readPublicKeys(issuersAlone, "keys"));
        QCOMPARE(keys.size(), std::size_t(1));
        QCOMPARE(verifyByKeys(pdf, keys).verdict, CertificateVerdict::Genuine);
    }

    void takingAgainMakesTheSameBundle()
    {
        const QByteArray first = take(office(), {"A-1001"});
        QCOMPARE(take(office(), {"A-1001"}), first);
    }

    void whatAnotherVanHasStays()
    {
        Site other(false);
        join(office(), other, "van-8");
        take(office(), {"A-1001"});
        TakingAlong wish;
        wish.orders = QStringList{"A-1001", "A-2001"};
        wish.station = "van-8";
        wish.out = office().file("two.json");
        const TakenAlong taken = good(takeAlong(*office().records, wish));
        QCOMPARE(taken.orders, QStringList{"A-2001"});
        QCOMPARE(taken.stays.front().finding.code, QString("order_out"));
        wish.anyway = true;
        QCOMPARE(good(takeAlong(*office().records, wish)).orders.size(), 2);
        QCOMPARE(office().show().out.size(), std::size_t(2));
    }

    /// The disk fills up in the middle: what is said of it is true, and the next time takes the
    /// rest.
    void whatIsInIsSaidWhenTheDiskIsFull()
    {
        van().open(take(office(), {"A-1001", "A-2001"}));
        van().record(briFields(), briFacts());
        QList<QJsonObject> others = analogFacts();
        for (QJsonObject &each : others)
            each["id"] = each["id"].toString().replace(9, 4, "0001");
        van().record(analogFields(), others);
        const QByteArray back = van().bring();
        SqliteConnection &disk = office().records->database().file();
        int cut = 0;
        Result<std::vector<TakenBundle>> received;
        for (qint64 pages = *disk.number("PRAGMA page_count");; ++pages) {
            good(disk.number("PRAGMA max_page_count = " + QByteArray::number(pages)));
            const qint64 before = good(logHead(*office().records)).head.position;
            received = receiveBundles(*office().records, {{"back.json", back}});
            if (received)
                break;
            const bool changed = good(logHead(*office().records)).head.position > before;
            const QString said = received.error().text();
            QCOMPARE(received.error().code, ErrorCode::DiskTrouble);
            QCOMPARE(said.contains("the disk is full; nothing was changed"), !changed);
            QCOMPARE(said.contains("in the middle of back.json: the disk is full. What came"),
                     changed);
            cut += changed;
        }
        QVERIFY(cut > 0);
        QVERIFY(!received->front().refuses());
        QCOMPARE(office().show().facts.size(), briFacts().size());
        QCOMPARE(office().show("A-2001").facts.size(), others.size());
    }

    /// The names of parts are held against what stands there only as they are written.
    void whatIsDoneIsSaidWhenTheFileIsMissing()
    {
        QVERIFY(QDir().mkpath(office().file("p-1.json")) && QDir().mkpath(van().file("p-1.json")));
        TakingAlong wish;
        wish.orders = QStringList{"A-1001", "A-2001"};
        wish.station = "van-7";
        wish.out = office().file("p.json");
        wish.split = 1;
        const auto taken = takeAlong(*office().records, wish);
        QCOMPARE(taken.error().code, ErrorCode::DiskTrouble);
        QCOMPARE(taken.error().message,
                 QString("The orders are out at station van-7, and the file is missing: %1: is a "
                         "folder; give the name of a file. The same command writes it again.")
                     .arg(office().file("p-1.json")));
        QVERIFY(!office().show().out.empty());
        QVERIFY(QDir().rmdir(office().file("p-1.json")));
        for (const QString &file : good(takeAlong(*office().records, wish)).files)
            van().open(contentOf(file));

        const auto brought = bringBack(*van().records, {van().file("p.json"), {}, 1, false});
        QCOMPARE(brought.error().code, ErrorCode::DiskTrouble);
        QVERIFY2(brought.error().message.startsWith("It is noted what goes back, and the file is "
                                                    "missing: "),
                 qPrintable(brought.error().message));
        QVERIFY(QDir().rmdir(van().file("p-1.json")));
        const auto again = good(bringBack(*van().records, {van().file("p.json"), {}, 1, false}));
        QCOMPARE(again.files.size(), 2);
        for (const QString &file : again.files)
            QCOMPARE(office().receive(contentOf(file)).verdict, BundleVerdict::Taken);
    }

    void partsAreOpenedOneByOne()
    {
        TakingAlong wish;
        wish.orders = QStringList{"A-1001", "A-2001"};
        wish.station = "van-7";
        wish.out = office().file("p.json");
        wish.split = 1;
        const TakenAlong taken = good(takeAlong(*office().records, wish));
        QCOMPARE(taken.files.size(), 2);
        QVERIFY(taken.files.front().endsWith("p-1.json"));
        QCOMPARE(van().open(contentOf(taken.files.back())).orders.front().order, QString("A-2001"));
        QCOMPARE(van().open(contentOf(taken.files.front())).orders.size(), std::size_t(1));
    }

    /// An order that is out is changed only if that is said.
    void whatIsOutIsChangedOnlyIfSaid()
    {
        take(office(), {"A-1001"});
        const auto changed = changePlans(*office().records, {{"A-1001", {{"contact", "Ada"}}}});
        QCOMPARE(changed.error().code, ErrorCode::OrderOut);
        QCOMPARE(cancelOrder(*office().records, "A-1001", "moved").error().code,
                 ErrorCode::OrderOut);
        OrderFields fields = briFields();
        fields["contact"] = "Ada";
        QCOMPARE(putOrder(*office().records, fields, true).error().code, ErrorCode::OrderOut);
        ImportOptions options{"o.csv"};
        options.update = true;
        const auto report = good(importOrders(*office().records, csv({fields}), options));
        QCOMPARE(report.findings.front().code, QString("order_out"));
        set("contact", "Ada");
        QCOMPARE(office().show().order.contact, QString("Ada"));
    }

    void badFilesAreRefused_data()
    {
        QTest::addColumn<QString>("code");
        for (const char *code : {"damaged", "cut", "signature", "stranger", "wrong_kind", "lost"})
            QTest::newRow(code) << QString(code);
    }
    void badFilesAreRefused()
    {
        QFETCH(QString, code);
        work();
        QByteArray back = van().bring();
        QString wanted = code;
        if (code == u"damaged")
            back.replace("28.4", "28.5");
        if (code == u"cut") {
            back.chop(back.size() / 3);
            wanted = "damaged";
        }
        if (code == u"signature") {
            auto file = readBundle(back, "b");
            file->signature = SigningKey::make()->sign("another");
            back = file->bytes();
        }
        if (code == u"stranger") {
            auto file = readBundle(back, "b");
            back = signedBundle(file->bundle, *SigningKey::make()).bytes();
        }
        if (code == u"wrong_kind")
            back = take(office(), {"A-2001"});
        if (code == u"lost") {
            good(loseVan(*office().records, "van-7", "stolen"));
            wanted = "stranger";
        }
        QCOMPARE(codeOf(office().receive(back)), wanted);
        QVERIFY(office().show().facts.empty());
    }

    void aBundleForAnotherVanIsRefused()
    {
        Site other(false);
        join(office(), other, "van-8");
        QCOMPARE(codeOf(other.open(take(office(), {"A-1001"}))), QString("other_station"));
    }

    /// A second office has another issuer: the van goes on working for the first.
    void aVanWorksForOneIssuer()
    {
        van().open(take(office(), {"A-1001"}));
        Site second(true);
        good(importOrders(*second.records, csv({analogFields()}), {"o.csv"}));
        join(second, van());
        QCOMPARE(codeOf(van().open(take(second, {"A-2001"}))), QString("other_issuer"));
    }

    /// The key of the issuer is not the van's to believe: a person says that it is the right one.
    void aNewKeyOfTheIssuerIsSaid()
    {
        van().open(take(office(), {"A-1001"}));
        good(renewKeys(*office().records, {true, "the old one lay on a stolen laptop", true}));
        const QByteArray out = take(office(), {"A-2001"});
        const QString issuer = readBundle(out, "o")->bundle.issuer;
        const auto said = [&](const QString &key) {
            return codeOf(good(openBundles(*van().records, {{"out.json", out}}, key)).front());
        };
        QCOMPARE(said({}), QString("other_issuer"));
        QCOMPARE(said(QString(32, 'a')), QString("other_issuer"));
        QCOMPARE(openBundles(*van().records, {{"out.json", out}}, "31 of").error().code,
                 ErrorCode::BadInput);
        QCOMPARE(van().open(out).verdict, BundleVerdict::Refused);
        QCOMPARE(good(openBundles(*van().records, {{"out.json", out}},
                                  groupedFingerprint(issuer).toUpper()))
                     .front()
                     .verdict,
                 BundleVerdict::Taken);
        // From now on without being said, and what comes back is the office's.
        QCOMPARE(van().open(take(office(), {"A-2001"}, "van-7", true)).code, QString());
        van().record(briFields(), briFacts());
        QCOMPARE(office().receive(van().bring()).verdict, BundleVerdict::Taken);
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    void whatIsNewerAloneNeedsWhatCameBefore()
    {
        work(briFacts().mid(0, 4));
        const QByteArray first = van().bring(true);
        const QString id = readBundle(first, "b")->id;
        van().record(briFields(), briFacts().mid(4));
        const QByteArray second = van().bring(false, id);
        QVERIFY(second.size() < first.size() * 4);
        QCOMPARE(codeOf(office().receive(second)), QString("earlier_missing"));
        QVERIFY(office().show().facts.empty());
        const QString later = readBundle(second, "b")->id;
        QVERIFY(
            !good(StationStore(office().records->database()).bundle(later))); // is offered again
        QCOMPARE(office().receive(first).orders.front().added.size(), 4);
        QCOMPARE(office().show().out.size(), std::size_t(1)); // kept
        QCOMPARE(office().receive(second).orders.front().added.size(), briFacts().size() - 4);
        QVERIFY(good(StationStore(office().records->database()).bundle(later)));
        QCOMPARE(good(StationStore(office().records->database()).logOf(van().tag())),
                 readBundle(second, "b")
                     ->bundle.log.continuing(readBundle(first, "b")->bundle.log.continuing({})));
        QVERIFY(office().show().out.empty());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    /// An older copy of the van's records, put back past restore, tells another history.
    void aForkIsRefused()
    {
        van().open(take(office(), {"A-1001"}));
        const QString copy = van().file("copy.sqlite");
        {
            const QString path = van().records->database().path();
            van().records.reset();
            QVERIFY(QFile::copy(path, copy));
            van().records = std::move(*Records::open(path));
            van().records->setKeys(KeyFolder(van().folder.filePath("keys")));
            van().records->actAs("K7");
            van().at("2026-03-04T20:00:00-06:00");
        }
        van().record(briFields(), briFacts().mid(0, 3));
        QCOMPARE(office().receive(van().bring(true)).verdict, BundleVerdict::Taken);
        auto older = std::move(*Records::open(copy));
        older->setKeys(KeyFolder(van().folder.filePath("keys")));
        older->actAs("K7");
        older->setNow(Moment::parse(u"2026-03-04T21:00:00-06:00"));
        good(recordFile(*older, recordBytes(briFields(), briFacts().mid(0, 5)), "job.json"));
        good(bringBack(*older, {van().file("fork.json")}));
        const TakenBundle forked = office().receive(contentOf(van().file("fork.json")));
        QCOMPARE(codeOf(forked), QString("forked"));
        QCOMPARE(office().show().facts.size(), std::size_t(3));
    }

    void anEventThatWasRewrittenBreaksTheChain()
    {
        work();
        auto file = readBundle(van().bring(), "b");
        BundledOrder &entry = file->bundle.orders.front();
        const QString by = entry.events.back().event.by;
        entry.events.back().event.by = "somebody";
        const auto key = van().records->keys().find(file->key);
        const QByteArray forged = signedBundle(file->bundle, **key).bytes();
        QCOMPARE(codeOf(office().receive(forged)), QString("broken_chain"));
        entry.events.back().event.by = by;
        entry.facts.front().station = "A2B3C4"; // as the work of somebody else
        QCOMPARE(codeOf(office().receive(signedBundle(file->bundle, **key).bytes())),
                 QString("broken_chain"));
        entry.events.pop_back();
        entry.facts.front().content.replace("0.2", "0.3");
        QCOMPARE(codeOf(office().receive(signedBundle(file->bundle, **key).bytes())),
                 QString("broken_chain"));
    }

    /// The pair was changed in the office after the van had gone: by the clock the work would
    /// count.
    void workOnAnotherPairCountsForNothing_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("accepted");
        QTest::newRow("open") << QString() << false;
        QTest::newRow("office") << QString("office") << false;
        QTest::newRow("van") << QString("van-7") << true;
        QTest::newRow("both") << QString("both") << true;
    }
    void workOnAnotherPairCountsForNothing()
    {
        QFETCH(QString, side);
        QFETCH(bool, accepted);
        van().open(take(office(), {"A-1001"}));
        office().at("2026-03-04T08:01:00-06:00");
        set("pair", "17-299");
        van().record(briFields(), briFacts()); // from 08:05 on, no fact names its pair
        office().at("2026-03-05T08:00:00-06:00");
        const TakenBundle received = office().receive(van().bring());
        QCOMPARE(received.orders.front().conflicts.size(), 1);
        QCOMPARE(office().outcome(), OrderOutcome::Incomplete);
        const auto shown = conflict(ConflictCode::OrderChanged);
        QVERIFY(shown.sides[1].says.english().contains("pair 17-204"));
        if (!side.isEmpty()) {
            settle(shown, side);
            QVERIFY(good(stationConflicts(*office().records, "A-1001")).empty());
        }
        QCOMPARE(office().outcome() == OrderOutcome::Accepted, accepted);
        QCOMPARE(office().show().order.pair,
                 side == u"van-7" ? QString("17-204") : QString("17-299"));
        QVERIFY(good(auditDerived(*office().records)).empty());
    }

    void otherNumbersMeanwhileSetTheCallsAside_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("accepted");
        QTest::newRow("open") << QString() << false;
        QTest::newRow("office") << QString("office") << false;
        QTest::newRow("van") << QString("van-7") << true;
    }
    void otherNumbersMeanwhileSetTheCallsAside()
    {
        QFETCH(QString, side);
        QFETCH(bool, accepted);
        van().open(take(office(), {"A-1001"}));
        office().at("2026-03-04T08:01:00-06:00");
        office().records->changeWhatIsOut(true);
        good(changePlans(*office().records, {{"A-1001", {{"spid_1", "21755501430102"}}}}));
        van().record(briFields(), briFacts());
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        const auto shown = conflict(ConflictCode::OrderChanged);
        if (!side.isEmpty())
            settle(shown, side);
        QCOMPARE(office().outcome() == OrderOutcome::Accepted, accepted);
        // The loop is the same, whatever the numbers are.
        const OrderView view = office().show();
        const auto *loop = view.decision.criterion("loop");
        QVERIFY(loop && loop->outcome == CriterionOutcome::Met);
    }

    /// Due date, contact and remarks are no evidence's measure.
    void whatNothingHangsOnIsNoConflict()
    {
        van().open(take(office(), {"A-1001"}));
        set("contact", "Ada");
        van().record(briFields(), briFacts());
        QCOMPARE(office().receive(van().bring()).orders.front().conflicts, QStringList());
        QCOMPARE(office().show().order.contact, QString("Ada"));
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    /// What only the van changed is the office's too.
    void theVansOwnChangeComesBack()
    {
        van().open(take(office(), {"A-1001"}));
        van().records->actAs("D4");
        good(changePlans(*van().records, {{"A-1001", {{"pair", "17-288"}, {"contact", "Bo"}}}}));
        van().records->actAs("K7");
        OrderFields fields = briFields();
        fields["pair"] = "17-288";
        van().record(fields, briFacts());
        set("access_notes", "ring twice");
        QCOMPARE(office().receive(van().bring()).orders.front().conflicts, QStringList());
        const ServiceOrder order = office().show().order;
        QCOMPARE(order.pair, QString("17-288"));
        QCOMPARE(order.contact, QString("Bo"));
        QCOMPARE(order.accessNotes, QString("ring twice"));
    }

    /// What the office hands out the second time is its own, whoever told it the first time.
    void whatTheFirstTripBroughtStaysOnTheSecond()
    {
        Site other(false);
        join(office(), other, "van-8");
        const auto trip = [this](Site &site, const QString &name, const OrderFields &change) {
            site.open(take(office(), {"A-1001"}, name));
            site.records->actAs("D4");
            if (!change.isEmpty())
                good(changePlans(*site.records, {{"A-1001", change}}));
            site.records->actAs("K7");
            QJsonObject note{
                {"kind", "note"}, {"at", "2026-03-04T20:00:00-06:00"}, {"text", "was there"}};
            note["id"] = QUuid::createUuid().toString(QUuid::WithoutBraces);
            OrderFields fields = briFields();
            fields["pair"] = "17-288";
            site.record(fields, {note});
            QCOMPARE(office().receive(site.bring()).orders.front().conflicts, QStringList());
        };
        trip(van(), "van-7", {{"pair", "17-288"}, {"contact", "Bo"}});
        trip(van(), "van-7", {});
        QCOMPARE(office().show().order.pair, QString("17-288"));
        QCOMPARE(office().show().order.contact, QString("Bo"));
        trip(other, "van-8", {{"contact", "Cy"}});
        QCOMPARE(office().show().order.pair, QString("17-288"));
        QCOMPARE(office().show().order.contact, QString("Cy"));
    }

    /// Each entry of a bundle tells the whole chain of its circuit.
    void twoOrdersOfOneCircuitComeHome()
    {
        OrderFields second = briFields();
        second["order_number"] = "A-1002";
        second["order_type"] = "change";
        good(importOrders(*office().records, csv({second}), {"o.csv"}));
        van().open(take(office(), {"A-1001", "A-1002"}));
        van().record(briFields(), briFacts());
        QList<QJsonObject> facts = briFacts();
        for (int i = 0; i < facts.size(); ++i)
            facts[i]["id"] = uuid(500 + i);
        van().record(second, facts);
        const TakenBundle taken = office().receive(van().bring());
        QCOMPARE(taken.orders.size(), std::size_t(2));
        for (const JoinedOrder &order : taken.orders)
            QCOMPARE(order.added.size(), briFacts().size());
        QVERIFY(office().show("A-1001").out.empty());
        QVERIFY(office().show("A-1002").out.empty());
    }

    /// The calls after its change are made with the new numbers.
    void whatTheVanMeasuredAfterItsChangeCounts()
    {
        van().open(take(office(), {"A-1001"}));
        van().at("2026-03-04T08:01:00-06:00");
        van().records->actAs("D4");
        good(changePlans(*van().records, {{"A-1001", {{"spid_1", "21755501430102"}}}}));
        van().records->actAs("K7");
        van().at("2026-03-04T20:00:00-06:00");
        van().record(briFields(), briFacts());
        QCOMPARE(office().receive(van().bring()).orders.front().conflicts, QStringList());
        QCOMPARE(office().show().order.terminals.front().spid, QString("21755501430102"));
        QCOMPARE(office().outcome(), van().outcome());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    void aClosedOrderKeepsWhatComesAndDecidesNothing()
    {
        work();
        office().records->changeWhatIsOut(true);
        good(cancelOrder(*office().records, "A-1001", "the customer moved"));
        office().receive(van().bring());
        const auto shown = conflict(ConflictCode::OrderClosed);
        QCOMPARE(office().show().facts.size(), std::size_t(briFacts().size()));
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        settle(shown, "office");
        QVERIFY(!settleConflict(*office().records, shown.conflict.id, "office", "again"));
    }

    void twoWorkedOnIt_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("accepted");
        QTest::newRow("open") << QString() << true;
        QTest::newRow("office") << QString("office") << false;
        QTest::newRow("van") << QString("van-7") << true;
        QTest::newRow("both") << QString("both") << true;
    }
    void twoWorkedOnIt()
    {
        QFETCH(QString, side);
        QFETCH(bool, accepted);
        work();
        QJsonObject loop = briFacts()[2];
        loop["id"] = uuid(77);
        office().record(briFields(), {loop});
        office().at("2026-03-05T08:00:00-06:00");
        office().receive(van().bring());
        const auto shown = conflict(ConflictCode::TwoStations);
        QVERIFY(!settleConflict(*office().records, shown.conflict.id, "van-9", "no such"));
        QCOMPARE(settleConflict(*office().records, shown.conflict.id, "both", " ").error().code,
                 ErrorCode::Usage);
        if (!side.isEmpty())
            settle(shown, side);
        QCOMPARE(office().outcome() == OrderOutcome::Accepted, accepted);
    }

    /// Who saw what the other did worked after him, not beside him.
    void workThatWasSeenIsNoConflict()
    {
        work(briFacts().mid(0, 5));
        office().receive(van().bring());
        Site other(false);
        join(office(), other, "van-8");
        other.open(take(office(), {"A-1001"}, "van-8"));
        QCOMPARE(other.show().facts.size(), std::size_t(5));
        QCOMPARE(other.show().facts.front().station, van().tag());
        other.record(briFields(), briFacts().mid(5));
        QCOMPARE(office().receive(other.bring()).orders.front().conflicts, QStringList());
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    void oneIdTwoContents_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<double>("loss");
        QTest::newRow("open") << QString() << 0.0;
        QTest::newRow("office") << QString("office") << 30.1;
        QTest::newRow("van") << QString("van-7") << 28.4;
    }
    void oneIdTwoContents()
    {
        QFETCH(QString, side);
        QFETCH(double, loss);
        van().open(take(office(), {"A-1001"}));
        QJsonObject loop = briFacts()[2];
        loop["loss_db"] = 30.1;
        office().record(briFields(), {briFacts()[0], loop});
        van().record(briFields(), briFacts());
        office().receive(van().bring());
        const auto all = good(stationConflicts(*office().records, "A-1001"));
        const auto differs = std::ranges::find(all, ConflictCode::FactDiffers,
                                               [](const auto &c) { return c.conflict.code; });
        QVERIFY(differs != all.end());
        if (!side.isEmpty())
            settle(*differs, side);
        const OrderView view = office().show();
        const auto counting = [&](const FactView &fact) {
            return fact.fact.as<LoopFact>() && !fact.voided;
        };
        const auto found = std::ranges::find_if(view.facts, counting);
        QVERIFY(found != view.facts.end());
        if (loss > 0)
            QCOMPARE(found->fact.as<LoopFact>()->lossDb.value(), loss);
        QCOMPARE(view.decision.criterion("loop")->outcome == CriterionOutcome::Missing,
                 side.isEmpty());
    }

    /// Also where the van brings nothing else.
    void theOnlyFactThatDiffersCountsForNothing()
    {
        van().open(take(office(), {"A-1001"}));
        office().record(briFields(), briFacts());
        QJsonObject loop = briFacts()[2];
        loop["loss_db"] = 30.1;
        van().record(briFields(), {loop});
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        office().receive(van().bring());
        const auto shown = conflict(ConflictCode::FactDiffers);
        QVERIFY2(!shown.sides[0].says.english().contains("30.1") &&
                     shown.sides[1].says.english().contains("30.1"),
                 qPrintable(shown.sides[0].says.english() + '\n' + shown.sides[1].says.english()));
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        settle(shown, "office");
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    void aClockAheadCountsOnlyIfSomebodySaysSo()
    {
        van().at("2026-03-20T20:00:00-06:00");
        van().open(take(office(), {"A-1001"}));
        QList<QJsonObject> facts = briFacts();
        for (QJsonObject &fact : facts)
            for (const char *key : {"at", "started", "ended"})
                if (fact.contains(key))
                    fact[key] = fact[key].toString().replace("03-04", "03-20");
        van().record(briFields(), facts);
        QCOMPARE(office().receive(van().bring()).orders.front().conflicts.size(), 1);
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        settle(conflict(ConflictCode::ClockAhead), "van-7");
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
    }

    /// Of two certificates the later one stands, until somebody says otherwise.
    void twoCertificates_data()
    {
        QTest::addColumn<QString>("side");
        QTest::addColumn<bool>("vans");
        QTest::newRow("open") << QString() << true;
        QTest::newRow("office") << QString("office") << false;
        QTest::newRow("van") << QString("van-7") << true;
    }
    void twoCertificates()
    {
        QFETCH(QString, side);
        QFETCH(bool, vans);
        const auto issue = [](Site &site, QByteArray &pdf) {
            return good(issueCertificate(*site.records, {"A-1001",
                                                         Paper::A4,
                                                         {},
                                                         [&](const auto &p) {
                                                             pdf = p.pdf;
                                                             return Result<void>();
                                                         }}))
                .number;
        };
        QByteArray there, here;
        office().record(briFields(), briFacts());
        office().at("2026-03-04T19:00:00-06:00");
        take(office(), {"A-1001"});
        const QString ours = issue(office(), here);
        van().open(take(office(), {"A-1001"}));
        QJsonObject note = fact(90, "note", 60, {{"text", "label on the NT"}});
        van().record(briFields(), {note});
        const QString theirs = issue(van(), there);
        const JoinedOrder joined = office().receive(van().bring()).orders.front();
        QCOMPARE(joined.certificates, QStringList{theirs});
        const auto shown = conflict(ConflictCode::CertificateSuperseded);
        if (!side.isEmpty())
            settle(shown, side);
        QCOMPARE(office().show().certificates.back().number, vans ? theirs : ours);
        const auto verdict = [&](const QByteArray &pdf) {
            return good(verifyCertificateFile(*office().records, pdf)).verdict;
        };
        QCOMPARE(verdict(vans ? there : here), CertificateVerdict::Genuine);
        QCOMPARE(verdict(vans ? here : there), CertificateVerdict::Superseded);
    }

    void aCertificateOfAVanThatIsNotHomeIsGenuine()
    {
        work();
        QByteArray pdf;
        good(issueCertificate(*van().records, {"A-1001", Paper::A4, {}, [&](const auto &paper) {
                                                   pdf = paper.pdf;
                                                   return Result<void>();
                                               }}));
        const auto check = good(verifyCertificateFile(*office().records, pdf));
        QCOMPARE(check.verdict, CertificateVerdict::Genuine);
        QVERIFY(!check.stands);
        QVERIFY2(check.because.contains("van-7"), qPrintable(check.because));
    }

    void anOrderOfTheVansOwnJoins()
    {
        van().open(take(office(), {"A-1001"}));
        OrderFields own = otherBriFields("V-1", "C-500", "9", "217-555-0181", "217-555-0182");
        good(putOrder(*van().records, own, false));
        QList<QJsonObject> facts = briFacts().mid(0, 3);
        van().record(own, facts);
        office().at("2026-03-05T12:00:00-06:00");
        const TakenBundle received = office().receive(van().bring());
        QCOMPARE(received.orders.size(), std::size_t(2));
        const OrderView view = office().show("V-1");
        QCOMPARE(view.facts.size(), std::size_t(3));
        QVERIFY(!view.held);
        QCOMPARE(view.input.takenIn, van().show("V-1").input.takenIn); // there, not at home
        QVERIFY(good(auditDerived(*office().records)).empty());
        QCOMPARE(office().receive(van().bring()).verdict, BundleVerdict::AlreadyThere);
    }

    void aNumberInUseHoldsTheVansOrder()
    {
        van().open(take(office(), {"A-1001"}));
        OrderFields own = otherBriFields("V-1", "C-500", "9", "217-555-0150", "217-555-0182");
        good(putOrder(*van().records, own, false)); // 0150 is that of A-2001, which the van lacks
        const TakenBundle received = office().receive(van().bring());
        QVERIFY(office().show("V-1").held);
        const auto all = good(stationConflicts(*office().records, "V-1"));
        QCOMPARE(all.size(), std::size_t(1));
        QCOMPARE(all.front().conflict.code, ConflictCode::ValueInUse);
        QVERIFY2(all.front().sides[0].says.english().startsWith(
                     "Number 217-555-0150 is in use on circuit C-90. "),
                 qPrintable(all.front().sides[0].says.english()));
        QCOMPARE(office().show("V-1").conflicts.size(), std::size_t(1));
        const auto refused =
            settleConflict(*office().records, all.front().conflict.id, "van-7", "they say so");
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        settle(all.front(), "office");
    }

    void anInstrumentFromItsLabelComesAlong()
    {
        van().open(take(office(), {"A-1001"}));
        good(labelInstrument(*van().records,
                             {"TS-9", "S-77", "basic-rate test set", "2025-10-01", "2026-10-01"}));
        van().record(briFields(), briFacts());
        office().receive(van().bring());
        const auto all = good(instruments(*office().records));
        const auto found = std::ranges::find(all, QString("TS-9"), &Instrument::key);
        QVERIFY(found != all.end() && found->asLabelled);
    }

    /// An open hazard is never lost on the way, whatever else is in doubt.
    void aHazardComesHomeInAnyCase()
    {
        QList<QJsonObject> facts{safety(1, 5, 90.0)};
        work(facts);
        office().records->changeWhatIsOut(true);
        good(cancelOrder(*office().records, "A-1001", "no longer wanted"));
        OrderFields next =
            otherBriFields("A-1002", "C-78", "17-204", "217-555-0161", "217-555-0162");
        good(importOrders(*office().records, csv({next}), {"o.csv"}));
        office().receive(van().bring());
        QVERIFY(!office().show("A-1002").judged.cards.open().empty());
        const auto rows = good(boardRows(*office().records, {}));
        QVERIFY(std::ranges::find(rows, QString("A-1002"), &BoardRow::order)->hazard);
    }

    void theBoardFiltersWhatIsOutAndInConflict()
    {
        take(office(), {"A-1001"});
        BoardFilter out;
        out.facets.insert(BoardFacet::Away, "1");
        QCOMPARE(good(boardRows(*office().records, out)).size(), std::size_t(1));
        QCOMPARE(good(boardRows(*office().records, out)).front().out.front().station,
                 QString("van-7"));
        m_van->open(take(office(), {"A-1001"}));
        van().record(briFields(), briFacts());
        office().record(briFields(), {[] {
                            QJsonObject loop = briFacts()[2];
                            loop["id"] = uuid(77);
                            return loop;
                        }()});
        office().receive(van().bring());
        QVERIFY(good(boardRows(*office().records, out)).empty());
        BoardFilter disputed;
        disputed.facets.insert(BoardFacet::Conflict, "1");
        QCOMPARE(good(boardRows(*office().records, disputed)).front().conflicts, 1);
    }

    void aForeignEventThatIsEditedIsFound()
    {
        work();
        office().receive(van().bring());
        const QString path = office().records->database().path();
        office().records.reset();
        tamper(path, "UPDATE foreign_event SET actor = 'nobody' WHERE sequence = 2");
        office().records = std::move(*Records::open(path));
        const QStringList faults = office().faults();
        QVERIFY2(faults.join('\n').contains("is not what its digest says"),
                 qPrintable(faults.join('\n')));
        QVERIFY(faults.join('\n').contains("foreign_event"));
        m_office = std::make_unique<Site>(true); // cleanup looks at a whole one
    }

    /// Two vans change one order, each otherwise: neither value stands, and nobody's turn decides.
    void twoVansChangeOneOrder_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::addColumn<QString>("side");
        QTest::addColumn<QString>("pair");
        for (const bool otherFirst : {false, true}) {
            QTest::addRow("open %d", otherFirst) << otherFirst << QString() << QString("17-204");
            QTest::addRow("van %d", otherFirst)
                << otherFirst << QString("van-7") << QString("17-288");
        }
    }
    void twoVansChangeOneOrder()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        QFETCH(QString, pair);
        Site other(false);
        join(office(), other, "van-8");
        van().open(take(office(), {"A-1001"}));
        other.open(take(office(), {"A-1001"}, "van-8", true));
        good(putOrder(*office().records,
                      otherBriFields("A-3001", "C-31", "17-204", "217-555-0181", "217-555-0182"),
                      false));
        QVERIFY(office().show("A-3001").held);
        const auto change = [](Site &site, const QString &to, int from) {
            site.records->actAs("D4");
            good(changePlans(*site.records, {{"A-1001", {{"pair", to}}}}));
            site.records->actAs("K7");
            OrderFields fields = briFields();
            fields["pair"] = to;
            QList<QJsonObject> facts = briFacts();
            for (qsizetype n = 0; n < facts.size(); ++n)
                facts[n]["id"] = uuid(from + int(n) + 1);
            site.record(fields, facts);
        };
        change(van(), "17-288", 0);
        change(other, "17-299", 300);
        const QByteArray mine = van().bring(), theirs = other.bring();
        office().receive(otherFirst ? theirs : mine);
        QCOMPARE(office().outcome(), OrderOutcome::Accepted); // of the one that is here
        office().receive(otherFirst ? mine : theirs);
        QCOMPARE(office().show().order.pair, QString("17-204"));
        QCOMPARE(office().outcome(), OrderOutcome::Incomplete);
        auto all = good(stationConflicts(*office().records, "A-1001"));
        std::erase_if(all, [](const ShownConflict &each) { // both worked on it, too
            return each.conflict.code == ConflictCode::TwoStations;
        });
        QCOMPARE(all.size(), std::size_t(2));
        for (const ShownConflict &each : all) {
            QCOMPARE(each.conflict.code, ConflictCode::OrderChanged);
            if (!side.isEmpty())
                settle(each, each.stations.front() == side ? side : QString("office"));
        }
        QCOMPARE(office().show().order.pair, pair);
        QCOMPARE(office().show("A-3001").held, side.isEmpty()); // until its pair is given up
        QCOMPARE(office().outcome() == OrderOutcome::Accepted, !side.isEmpty());
        QVERIFY(good(auditDerived(*office().records)).empty());
        if (side.isEmpty())
            return;
        // More from the one that was decided against asks nothing anew.
        other.record(other.show().order.fields(), {fact(90, "note", 60, {{"text", "done"}})});
        office().receive(other.bring(true));
        for (const ShownConflict &each : good(stationConflicts(*office().records, "A-1001")))
            QVERIFY(each.conflict.code != ConflictCode::OrderChanged);
        QCOMPARE(office().show().order.pair, pair);
    }

    /// A van changes the order twice, and brings both: that is no disagreement.
    void aVanMayChangeItsMind()
    {
        van().open(take(office(), {"A-1001"}));
        for (const QString pair : {"17-288", "17-299"}) {
            van().records->actAs("D4");
            good(changePlans(*van().records, {{"A-1001", {{"pair", pair}}}}));
            van().records->actAs("K7");
            OrderFields fields = briFields();
            fields["pair"] = pair;
            van().record(fields, briFacts());
            QCOMPARE(office().receive(van().bring(true)).orders.front().conflicts, QStringList());
            QCOMPARE(office().show().order.pair, pair);
        }
    }

    /// Two vans have one id with two contents: whoever came first, the same stands in the end.
    void oneIdOfTwoVans_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::addColumn<QString>("side");
        QTest::addColumn<double>("loss");
        for (const bool otherFirst : {false, true}) {
            QTest::addRow("open %d", otherFirst) << otherFirst << QString() << 0.0;
            QTest::addRow("van %d", otherFirst) << otherFirst << QString("van-7") << 28.4;
            QTest::addRow("other %d", otherFirst) << otherFirst << QString("van-8") << 30.1;
        }
    }
    void oneIdOfTwoVans()
    {
        QFETCH(bool, otherFirst);
        QFETCH(QString, side);
        QFETCH(double, loss);
        Site other(false);
        join(office(), other, "van-8");
        work();
        other.open(take(office(), {"A-1001"}, "van-8", true));
        QJsonObject loop = briFacts()[2];
        loop["loss_db"] = 30.1;
        other.record(briFields(), {loop});
        const QByteArray mine = van().bring(), theirs = other.bring();
        office().receive(otherFirst ? theirs : mine);
        office().receive(otherFirst ? mine : theirs);
        const auto shown = conflict(ConflictCode::FactDiffers);
        QCOMPARE(shown.stations, (QStringList{"van-7", "van-8"}));
        QCOMPARE(shown.sides.size(), std::size_t(2));
        for (const ShownConflict::Side &each : shown.sides)
            QVERIFY2(each.says.english().contains(each.side == u"van-7" ? "28.4" : "30.1"),
                     qPrintable(each.says.english()));
        QVERIFY(!settleConflict(*office().records, shown.conflict.id, "office", "it was first"));
        if (!side.isEmpty())
            settle(shown, side);
        const OrderView view = office().show();
        const CriterionResult *judged = view.decision.criterion("loop");
        QCOMPARE(judged->outcome == CriterionOutcome::Missing, side.isEmpty());
        QCOMPARE(view.decision.outcome == OrderOutcome::Accepted, !side.isEmpty());
        if (!side.isEmpty())
            QVERIFY2(canonicalJson(view.decision.toJson()["criteria"])
                         .contains(QByteArray::number(loss)),
                     canonicalJson(view.decision.toJson()["criteria"]));
        QVERIFY(good(auditDerived(*office().records)).empty());
    }

    /// A third content comes after two were settled: all three are asked about, under a new id, and
    /// what was settled before counts no longer.
    void aThirdContentIsAskedAnew()
    {
        std::vector<std::unique_ptr<Site>> others;
        std::vector<QByteArray> bundles;
        for (const double loss : {30.1, 31.2}) {
            const QString name = QString("van-%1").arg(8 + others.size());
            others.push_back(std::make_unique<Site>(false));
            join(office(), *others.back(), name);
            others.back()->open(take(office(), {"A-1001"}, name, true));
            QJsonObject loop = briFacts()[2];
            loop["loss_db"] = loss;
            others.back()->record(briFields(), {loop});
            bundles.push_back(others.back()->bring());
        }
        van().open(take(office(), {"A-1001"}, "van-7", true));
        van().record(briFields(), briFacts());
        office().receive(van().bring());
        office().receive(bundles[0]);
        const auto first = conflict(ConflictCode::FactDiffers);
        settle(first, "van-8");
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        office().receive(bundles[1]);
        const auto second = conflict(ConflictCode::FactDiffers);
        QCOMPARE(second.sides.size(), std::size_t(3));
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        const auto over =
            settleConflict(*office().records, first.conflict.id, "van-7", "the older one");
        QCOMPARE(over.error().code, ErrorCode::Refused);
        settle(second, "van-7");
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        QVERIFY(good(auditDerived(*office().records)).empty());
        for (const QByteArray &again : bundles)
            QCOMPARE(office().receive(again).verdict, BundleVerdict::AlreadyThere);
    }

    /// It was settled for the van, then a third content came: the office's counts again if that is
    /// settled so.
    void theOfficesOwnCanComeBack()
    {
        Site other(false);
        join(office(), other, "van-8");
        van().open(take(office(), {"A-1001"}));
        other.open(take(office(), {"A-1001"}, "van-8", true));
        office().record(briFields(), briFacts());
        const auto deliver = [this](Site &site, double loss) {
            QJsonObject loop = briFacts()[2];
            loop["loss_db"] = loss;
            site.record(briFields(), {loop});
            office().receive(site.bring());
        };
        deliver(van(), 30.1);
        settle(conflict(ConflictCode::FactDiffers), "van-7");
        QCOMPARE(office().outcome(), OrderOutcome::Accepted);
        deliver(other, 31.2);
        QVERIFY(office().outcome() != OrderOutcome::Accepted);
        settle(conflict(ConflictCode::FactDiffers), "office");
        const OrderView view = office().show();
        QCOMPARE(view.decision.outcome, OrderOutcome::Accepted);
        QVERIFY(canonicalJson(view.decision.toJson()["criteria"]).contains("28.4"));
        QVERIFY(good(auditDerived(*office().records)).empty());
    }

    /// The hazard that one of two contents reads stands, whichever came first.
    void aHazardOfEitherContentStands_data()
    {
        QTest::addColumn<bool>("hazardFirst");
        QTest::newRow("first") << true;
        QTest::newRow("second") << false;
    }
    void aHazardOfEitherContentStands()
    {
        QFETCH(bool, hazardFirst);
        Site other(false);
        join(office(), other, "van-8");
        work({safety(1, 5)});
        other.open(take(office(), {"A-1001"}, "van-8", true));
        other.record(briFields(), {safety(1, 5, 90.0)});
        const QByteArray clear = van().bring(), hazard = other.bring();
        office().receive(hazardFirst ? hazard : clear);
        office().receive(hazardFirst ? clear : hazard);
        QVERIFY(!office().show().judged.cards.open().empty());
        QVERIFY(good(boardRows(*office().records, {})).front().hazard);
        settle(conflict(ConflictCode::FactDiffers), "van-7");
        QVERIFY(!office().show().judged.cards.open().empty());
    }

    /// Of one instrument two vans read two labels: the one that is due sooner stands.
    void twoLabelsOfOneInstrument_data()
    {
        QTest::addColumn<bool>("otherFirst");
        QTest::newRow("one") << false;
        QTest::newRow("other") << true;
    }
    void twoLabelsOfOneInstrument()
    {
        QFETCH(bool, otherFirst);
        Site other(false);
        join(office(), other, "van-8");
        van().open(take(office(), {"A-1001"}));
        other.open(take(office(), {"A-1001"}, "van-8", true));
        const auto label = [](Site &site, const char *due) {
            good(labelInstrument(*site.records,
                                 {"TS-9", "S-77", "basic-rate test set", "2025-10-01", due}));
            site.record(briFields(), {fact(90, "note", 60, {{"text", due}})});
        };
        label(van(), "2026-10-01");
        label(other, "2026-03-01");
        const QByteArray mine = van().bring(), theirs = other.bring();
        office().receive(otherFirst ? theirs : mine);
        office().receive(otherFirst ? mine : theirs);
        const auto all = good(instruments(*office().records));
        const auto found = std::ranges::find(all, QString("TS-9"), &Instrument::key);
        QCOMPARE(found->calibrations.last().due, QDate(2026, 3, 1));
    }

    /// What an office makes of what was delivered, and nothing that depends on who came when.
    static QString stateOf(Records &records)
    {
        QStringList state;
        for (const char *order : {"A-1001", "A-2001"}) {
            const OrderView view = good(showOrder(records, order));
            state << QString(canonicalJson(view.decision.toJson()["criteria"]))
                  << toText(view.decision.outcome) << QString(canonicalJson(view.order.toJson()));
            if (!view.certificates.empty())
                state << view.certificates.back().number;
        }
        QStringList conflicts;
        for (const ShownConflict &each : good(stationConflicts(records))) {
            QJsonObject shown = each.toJson();
            shown.remove("since");
            conflicts << QString(canonicalJson(shown));
        }
        conflicts.sort();
        for (const BoardRow &row : good(boardRows(records, {})))
            state << QString("%1 %2 %3 %4 %5 %6 %7 %8")
                         .arg(row.order, toText(row.outcome), row.criterion, row.reason)
                         .arg(row.conflicts)
                         .arg(row.hazard)
                         .arg(row.paper)
                         .arg(row.out.size());
        return (state + conflicts).join('\n');
    }

    /// Where two states part; empty if they are the same.
    static QString parting(const QString &now, const QString &then)
    {
        const auto [a, b] = std::ranges::mismatch(now, then);
        if (a == now.end() && b == then.end())
            return QString();
        const qsizetype at = std::max<qsizetype>(0, a - now.begin() - 300);
        return now.mid(at, 500) + "\n--- and not\n" + then.mid(at, 500);
    }

    /// Everything that is open, one after the other by its id, each for the same side.
    static int settleAll(Records &records)
    {
        int settled = 0;
        for (bool more = true; more;) {
            more = false;
            auto open = good(stationConflicts(records));
            std::ranges::sort(open, {}, [](const auto &each) { return each.conflict.id; });
            for (const ShownConflict &each : open) {
                const std::size_t side =
                    each.conflict.id.right(2).toUInt(nullptr, 16) % each.sides.size();
                const auto done =
                    settleConflict(records, each.conflict.id, each.sides[side].side, "asked");
                more = more || done;
                settled += done ? 1 : 0;
            }
        }
        return settled;
    }

    /// Under the id of what the van before it tells of the other order.
    static void recordElsewhere(Site &van, int night, int i)
    {
        QJsonObject card = safety(10000 + night * 100 + i, 5), other = analogFacts()[1];
        other["id"] = uuid(2000 + night * 100 + i - 1);
        other["dc_resistance_ohm"] = 700 + i;
        van.record(analogFields(), {card, other});
    }

    /// One night of a van: work of its own, work under an id that others use too, for the same
    /// order or for another, and values of the order that others change too.
    static void workANight(Site &van, int night, int i)
    {
        van.records->actAs("D4");
        van.at("2026-03-04T07:50:00-06:00");
        const QString pair = i % 3 == 2 ? QString("17-204") : QString("17-3%1").arg(i % 3);
        good(changePlans(*van.records,
                         {{"A-1001",
                           {{"pair", night % 2 ? pair : QString("17-40%1").arg(i % 2)},
                            {"contact", QString("Ada %1").arg(night)},
                            {"remarks", QString("said by %1").arg(i)},
                            {"spid_1", i % 4 == 1 ? "21755501430102" : "21755501430101"}}}}));
        van.records->actAs("K7");
        van.at("2026-03-04T20:00:00-06:00");
        QJsonObject own = briFacts()[2], shared = own, alike = own, card = safety(0, 5, 0.2 + i);
        own["id"] = uuid(2000 + night * 100 + i);
        own["loss_db"] = 20.0 + night + double(i) / 10;
        shared["id"] = uuid(1000 + night);
        shared["loss_db"] = 30.0 + i % 3;
        alike["id"] = uuid(1100 + night);
        card["id"] = uuid(1200 + night);
        OrderFields fields = good(showOrder(*van.records, "A-1001")).order.fields();
        van.record(fields, {own, shared, alike, card});
        if (i % 2 == 0)
            van.record(fields, briFacts());
        else
            recordElsewhere(van, night, i);
        if (night == 0 && i < 2)
            good(labelInstrument(*van.records, {"TS-9", "S-77", "basic-rate test set", "2025-10-01",
                                                QString("2026-0%1-01").arg(5 + i)}));
    }

    /// Nights of vans that work at the same order, and disagree about everything; whatever order
    /// the bundles come in, and however often, damaged or whole, the end is the same, and so is
    /// what comes of settling it alike. Longer by hand: LOOPWRIGHT_NIGHTS=20 LOOPWRIGHT_VANS=10.
    void everyOrderOfDeliveryEndsAlike()
    {
        const auto asked = [](const char *name, int otherwise) {
            return qEnvironmentVariableIsSet(name) ? qEnvironmentVariableIntValue(name) : otherwise;
        };
        const int nights = asked("LOOPWRIGHT_NIGHTS", 2), many = asked("LOOPWRIGHT_VANS", 3);
        std::vector<std::unique_ptr<Site>> vans;
        std::vector<QByteArray> bundles;
        const QString path = office().records->database().path();
        for (int i = 0; i < many; ++i) {
            vans.push_back(std::make_unique<Site>(false));
            join(office(), *vans.back(), QString("night-%1").arg(i));
            vans.back()->open(
                take(office(), {"A-1001", "A-2001"}, QString("night-%1").arg(i), true));
        }
        int issued = 0;
        for (int night = 0; night < nights; ++night)
            for (std::size_t i = 0; i < vans.size(); ++i) {
                workANight(*vans[i], night, int(i));
                const auto paper = [](const auto &) { return Result<void>(); };
                if (issueCertificate(*vans[i]->records, {"A-1001", Paper::A4, {}, paper}))
                    ++issued;
                bundles.push_back(vans[i]->bring(true));
            }
        QVERIFY(issued >= 2);
        office().records.reset();
        const auto whole = qScopeGuard([this] { m_office = std::make_unique<Site>(true); });
        QString end, settled;
        for (int turn = 0; turn < 6; ++turn) {
            const QString copy = office().file(QString("turn-%1.sqlite").arg(turn));
            QVERIFY(QFile::copy(path, copy));
            auto records = std::move(*Records::open(copy));
            records->actAs("Dana");
            records->setNow(Moment::parse(u"2026-03-05T08:00:00-06:00"));
            std::vector<QByteArray> delivered;
            for (int times = 0; times < 3; ++times)
                delivered.insert(delivered.end(), bundles.begin(), bundles.end());
            std::shuffle(delivered.begin(), delivered.end(), std::mt19937(unsigned(turn)));
            for (const QByteArray &bytes : delivered) {
                if (bytes.size() % 7 == turn % 7)
                    good(receiveBundles(*records, {{"d.json", bytes.left(bytes.size() / 2)}}));
                good(receiveBundles(*records, {{"b.json", bytes}}));
            }
            const QString now = stateOf(*records);
            if (turn == 0)
                end = now;
            QVERIFY2(now == end, qPrintable(parting(now, end)));
            QVERIFY(settleAll(*records) > 2);
            const QString then = stateOf(*records);
            if (turn == 0)
                settled = then;
            QVERIFY2(then == settled, qPrintable(parting(then, settled)));
            QVERIFY(then != now);
            QCOMPARE(faultsOf(*records), QStringList());
            QVERIFY(good(auditDerived(*records)).empty());
        }
    }
};

QTEST_MAIN(VansTest)
#include "VansTest.moc"
