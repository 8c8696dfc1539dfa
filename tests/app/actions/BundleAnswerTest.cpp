// Many orders go along, come home, are opened: how far it is is told, and it can be stopped.

#include "tests/support/Vans.h"

#include <QTest>

#include <algorithm>

using namespace loopwright;
using namespace loopwright::jobs;

class BundleAnswerTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Site> m_office, m_van;
    QStringList m_orders;

    Site &office() { return *m_office; }
    Site &van() { return *m_van; }
    static constexpr int many = 5;

    TakingAlong wish()
    {
        TakingAlong wish;
        wish.orders = m_orders;
        wish.station = "van-7";
        wish.out = office().file("out.json");
        return wish;
    }
    void workInTheVan()
    {
        van().open(take(office(), m_orders));
        for (int n = 0; n < many; ++n) {
            QJsonObject loop = briFacts()[2];
            loop["id"] = uuid(100 + n);
            van().record(van().show(m_orders[n]).order.fields(), {loop});
        }
    }
    /// A folder that is watched offers what is not.
    static bool isKnown(Site &site, const BundleInput &file)
    {
        const QString id = readBundle(file.bytes, file.name)->id;
        return good(StationStore(site.records->database()).bundle(id)).has_value();
    }
    static qint64 events(Site &site) { return good(logHead(*site.records)).head.position; }

    /// Stops it after so many answers; `told` gets what was reported.
    struct Stopping
    {
        int after = 0;
        std::vector<std::pair<qint64, qint64>> told = {};
        Progress progress()
        {
            return [this](qint64 done, qint64 total) {
                told.emplace_back(done, total);
                return int(told.size()) <= after;
            };
        }
    };
    /// It never goes back, nor beyond the end.
    static bool rises(const Stopping &stopping)
    {
        return std::ranges::is_sorted(stopping.told) && stopping.told.back().second > 0 &&
               std::ranges::all_of(stopping.told,
                                   [](const auto &each) { return each.first <= each.second; });
    }

private slots:
    void init()
    {
        m_office = std::make_unique<Site>(true);
        m_van = std::make_unique<Site>(false);
        m_orders.clear();
        QList<OrderFields> rows;
        for (int n = 0; n < many; ++n) {
            m_orders << QString("M-%1").arg(n + 1);
            rows << otherBriFields(m_orders.last(), QString("C-M%1").arg(n),
                                   QString("18-30%1").arg(n), QString("217-555-017%1").arg(n),
                                   QString("217-555-018%1").arg(n));
        }
        good(importOrders(*office().records, csv(rows), {"o.csv"}));
        join(office(), van());
    }
    void cleanup()
    {
        QCOMPARE(office().faults(), QStringList());
        QCOMPARE(van().faults(), QStringList());
    }

    /// While they are read, and while they are noted as out.
    void takingThatIsStoppedChangesNothing()
    {
        good(takeAlong(*office().records, [this] {
            auto first = wish(); // makes the keys
            first.orders = QStringList{m_orders.last()};
            return first;
        }()));
        QVERIFY(QFile::remove(wish().out));
        const qint64 before = events(office());
        for (const int after : {0, 2, many + 1}) {
            Stopping stopping{after};
            const auto taken = takeAlong(*office().records, wish(), stopping.progress());
            QCOMPARE(taken.error().text(), QString("It was stopped; nothing was changed."));
            QCOMPARE(taken.error().code, ErrorCode::Refused);
            QVERIFY(rises(stopping));
            QCOMPARE(events(office()), before);
            QVERIFY(!QFile::exists(wish().out));
            QVERIFY(office().show(m_orders.front()).out.empty());
        }
        Stopping whole{1000};
        QCOMPARE(good(takeAlong(*office().records, wish(), whole.progress())).orders.size(), many);
        QVERIFY(rises(whole));
    }

    void bringingThatIsStoppedChangesNothing()
    {
        workInTheVan();
        const qint64 before = events(van());
        for (const int after : {0, 3}) {
            Stopping stopping{after};
            const auto brought = bringBack(*van().records, {van().file("b.json"), {}, 0, false},
                                           stopping.progress());
            QCOMPARE(brought.error().text(), QString("It was stopped; nothing was changed."));
            QVERIFY(rises(stopping));
            QCOMPARE(events(van()), before);
            QVERIFY(!QFile::exists(van().file("b.json")));
        }
        Stopping whole{1000};
        QCOMPARE(
            good(bringBack(*van().records, {van().file("b.json"), {}, 0, false}, whole.progress()))
                .orders.size(),
            many);
    }

    /// The orders that were done are in, whole, and the same file again takes in the rest.
    void receivingThatIsStoppedKeepsWhatIsIn()
    {
        workInTheVan();
        const std::vector<BundleInput> files{{"back.json", van().bring()}};
        const qint64 before = events(office());
        Stopping atOnce{0};
        QCOMPARE(receiveBundles(*office().records, files, atOnce.progress()).error().text(),
                 QString("It was stopped; nothing was changed."));
        QCOMPARE(events(office()), before);
        Stopping later{3}; // the file, two orders
        QCOMPARE(receiveBundles(*office().records, files, later.progress()).error().text(),
                 QString("It was stopped. Orders taken in: 2. They stay, and the same files again "
                         "take in the rest."));
        QVERIFY(rises(later));
        for (int n = 0; n < many; ++n) {
            QCOMPARE(office().show(m_orders[n]).facts.size(), std::size_t(n < 2 ? 1 : 0));
            QCOMPARE(office().show(m_orders[n]).out.empty(), n < 2);
        }
        QVERIFY(!isKnown(office(), files.front()));
        Stopping whole{1000};
        const TakenBundle rest =
            good(receiveBundles(*office().records, files, whole.progress())).front();
        QVERIFY(rises(whole));
        QVERIFY(rest.verdict == BundleVerdict::Taken);
        QVERIFY(isKnown(office(), files.front()));
        for (int n = 0; n < many; ++n) {
            QVERIFY((rest.orders[std::size_t(n)].verdict == BundleVerdict::AlreadyThere) ==
                    (n < 2));
            QCOMPARE(office().show(m_orders[n]).facts.size(), std::size_t(1));
        }
    }

    /// In the van likewise, over two files.
    void openingThatIsStoppedKeepsWhatIsIn()
    {
        auto split = wish();
        split.split = 3;
        std::vector<BundleInput> files;
        for (const QString &file : good(takeAlong(*office().records, split)).files)
            files.push_back({file, contentOf(file)});
        QCOMPARE(files.size(), std::size_t(2));
        Stopping later{6}; // the file and three orders; the file and one
        QCOMPARE(openBundles(*van().records, files, {}, later.progress()).error().text(),
                 QString("It was stopped. Orders taken in: 4. They stay, and the same files again "
                         "take in the rest."));
        QVERIFY(rises(later));
        QVERIFY(OrderStore(van().records->database()).get(m_orders[3]));
        QVERIFY(!OrderStore(van().records->database()).get(m_orders[4]));
        good(openBundles(*van().records, files));
        QVERIFY(OrderStore(van().records->database()).get(m_orders[4]));
    }
};

QTEST_MAIN(BundleAnswerTest)
#include "BundleAnswerTest.moc"
