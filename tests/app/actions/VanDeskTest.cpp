// What a face is told of vans before anything is done.

#include "app/actions/VanDesk.h"

#include "app/actions/BringBack.h"
#include "app/actions/Keys.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/Orders.h"
#include "app/actions/TakeAlong.h"
#include "tests/support/Office.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

namespace {

template<class T>
T need(Result<T> done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
    return *std::move(done);
}

} // namespace

class VanDeskTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    std::unique_ptr<Records> m_office, m_van;

    BundleInput bundle(const QString &name) const
    {
        QFile file(m_folder.filePath(name));
        return file.open(QIODevice::ReadOnly) ? BundleInput{name, file.readAll()} : BundleInput();
    }
    void takeAlongHere() const
    {
        TakingAlong wish;
        wish.orders = QStringList{"A-1001", "A-2001"};
        wish.station = "van-7";
        wish.out = m_folder.filePath("out.json");
        need(takeAlong(*m_office, wish));
    }

private slots:
    void init()
    {
        m_office = jobs::office();
        need(importOrders(*m_office, jobs::csv({jobs::briFields(), jobs::analogFields()}),
                          {"orders.csv"}));
        m_van = need(Records::open(":memory:"));
        m_van->actAs("Dana");
        m_van->setNow(Moment::parse(u"2026-03-05T13:00:00-06:00"));
        need(addVan(*m_office, "van-7", need(publicKeyFile(*m_van)), "key.txt", false));
    }

    void vansAreListedWithoutThoseThatAreLost()
    {
        const auto spare = need(Records::open(":memory:"));
        spare->actAs("Dana");
        need(addVan(*m_office, "van-9", need(publicKeyFile(*spare)), "key.txt", false));
        QCOMPARE(need(vanDesk(*m_office)).vans.size(), 2U);
        QVERIFY(loseVan(*m_office, "van-9", "stolen"));
        const VanDesk desk = need(vanDesk(*m_office));
        QCOMPARE(desk.vans.size(), 1U);
        QCOMPARE(desk.vans.front().name, "van-7");
        QCOMPARE(desk.vans.front().tag, need(vanDesk(*m_van)).tag);
        QVERIFY(!desk.isVan && desk.orders.isEmpty());
    }

    void aVanIsOneOnceItOpenedSomething()
    {
        takeAlongHere();
        QVERIFY(!need(vanDesk(*m_van)).isVan);
        const BundleOutline outline = need(outlineOf(*m_van, bundle("out.json")));
        QCOMPARE(outline.code, QString());
        QCOMPARE(outline.kind, BundleKind::Out);
        QCOMPARE(outline.station, need(vanDesk(*m_office)).tag);
        QCOMPARE(outline.orders, (QStringList{"A-1001", "A-2001"}));
        need(openBundles(*m_van, {bundle("out.json")}));
        const VanDesk desk = need(vanDesk(*m_van));
        QVERIFY(desk.isVan && desk.vans.empty());
        QCOMPARE(desk.orders, (QStringList{"A-1001", "A-2001"}));
    }

    void anOrderSaysWhoHasItAndABundleWhoMadeIt()
    {
        const OrderView before = need(showOrder(*m_office, "A-1001"));
        QVERIFY(before.out.empty() && before.conflicts.empty());
        takeAlongHere();
        const OrderView after = need(showOrder(*m_office, "A-1001"));
        QCOMPARE(after.out.size(), 1U);
        QCOMPARE(after.out.front().station, "van-7");
        need(openBundles(*m_van, {bundle("out.json")}));
        QVERIFY(need(showOrder(*m_van, "A-1001")).out.empty()); // it is at hand
        BringingBack wish;
        wish.out = m_folder.filePath("back.json");
        wish.keep = true;
        need(bringBack(*m_van, wish));
        const BundleOutline outline = need(outlineOf(*m_office, bundle("back.json")));
        QCOMPARE(outline.kind, BundleKind::Back);
        QCOMPARE(outline.station, "van-7");
        QVERIFY(outline.keep);
    }

    void whatIsNoBundleSaysWhy()
    {
        const BundleOutline outline = need(outlineOf(*m_office, {"letter.json", "{}"}));
        QCOMPARE(outline.code, "damaged");
        QVERIFY(!outline.reason.isEmpty() && outline.orders.isEmpty());
    }
};

QTEST_GUILESS_MAIN(VanDeskTest)
#include "VanDeskTest.moc"
