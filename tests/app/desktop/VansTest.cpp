// An office and a van in two windows, each on records of its own: orders are taken along from the
// board, worked on, brought back and taken in, and what the two say otherwise is settled.

#include "app/actions/BringBack.h"
#include "app/actions/Keys.h"
#include "app/actions/OpenBundles.h"
#include "app/actions/Orders.h"
#include "app/actions/ReceiveBundles.h"
#include "app/actions/TakeAlong.h"
#include "app/desktop/widgets/SignLine.h"
#include "core/acceptance/BoardQuery.h"
#include "tests/support/DeskWindow.h"

#include <QAbstractButton>
#include <QLabel>

using namespace loopwright;

namespace {

/// Done, or the test ends.
template<class T>
T need(Result<T> done)
{
    if (!done)
        qFatal("%s", qPrintable(done.error().text()));
    return *std::move(done);
}

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class VansTest : public QObject, private DeskWindow
{
    Q_OBJECT

    std::unique_ptr<DeskRecords> m_van;

    Records &office() const { return m_records->records(); }
    Records &van() const { return m_van->records(); }
    QString keyOfVan() const
    {
        return m_van->file("key.txt", need(publicKeyFile(m_van->records())));
    }
    void addVanHere() const
    {
        need(addVan(office(), "van-7", contentOf(keyOfVan()), "key.txt", false));
    }
    void takeAlongHere(const QStringList &orders) const
    {
        TakingAlong wish;
        wish.orders = orders;
        wish.station = "van-7";
        wish.out = m_records->path("out.json");
        need(takeAlong(office(), wish));
    }
    /// What the van did with O-1001, on the pair that it knew.
    void workInVan() const
    {
        need(openBundles(van(), {{"out.json", contentOf(m_records->path("out.json"))}}));
        need(recordFile(van(), R"({"order":"O-1001","installer":"rivera","facts":[
            {"id":"00000000-0000-4000-8000-000000000011","kind":"layer",
             "at":"2026-03-04T09:00:00-06:00","layer":1,"interface":"u","outcome":"up"}]})",
                        "work"));
        need(bringBack(van(), {m_van->path("back.json")}));
    }
    void changePairInOffice() const
    {
        OrderFields fields = need(showOrder(office(), "O-1001")).order.fields();
        fields["pair"] = "17-301";
        need(putOrder(office(), fields, true));
    }
    QModelIndex cellOf(const QString &order) const
    {
        return table()->model()->index(int(orders().indexOf(order)), boardColumn(u"order"));
    }
    QAbstractButton *chip(BoardFacet facet) const
    {
        return named<QAbstractButton>("chip." + toText(facet) + ".1");
    }
    SignLine *line(const char *name) const { return named<SignLine>(name); }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        m_van = std::make_unique<DeskRecords>(false);
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
        m_van.reset();
    }

    void theBoardSaysWhatIsOutAndSinceWhen()
    {
        addVanHere();
        openWindow();
        QTRY_COMPARE(orders().size(), 8);
        QCOMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 0 orders");
        QVERIFY(cellOf("O-1002").data(Qt::DecorationRole).isNull());
        takeAlongHere({"O-1001", "O-1002"});
        m_window->screen("board")->refresh();
        QTRY_COMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 2 orders");
        QVERIFY(!cellOf("O-1002").data(Qt::DecorationRole).isNull());
        QVERIFY(cellOf("O-1003").data(Qt::DecorationRole).isNull());
        QCOMPARE(cellOf("O-1002").data(Qt::ToolTipRole).toString(), "With van-7 since 4 Mar");
        QCOMPARE(cellOf("O-1002").data(Qt::AccessibleTextRole).toString(),
                 "O-1002, With van-7 since 4 Mar");
        chip(BoardFacet::Away)->click();
        QTRY_COMPARE(orders(), (QStringList{"O-1001", "O-1002"}));
        table()->setCurrentIndex(cellOf("O-1002"));
        QTRY_COMPARE(line("side.out")->text(), "With van-7 since 4 Mar");
        QVERIFY(line("side.out")->isVisible() && !line("side.conflicts")->isVisible());
        m_window->openOrder("O-1002");
        QCOMPARE(line("head.stations")->text(), "With van-7 since 4 Mar");
        QVERIFY(line("head.stations")->isVisible());
        m_window->openOrder("O-1003");
        QVERIFY(!line("head.stations")->isVisible());
    }

    void theBoardSaysWhatIsToBeSettled()
    {
        addVanHere();
        takeAlongHere({"O-1001"});
        workInVan();
        changePairInOffice();
        need(receiveBundles(office(), {{"back.json", contentOf(m_van->path("back.json"))}}));
        openWindow();
        QTRY_COMPARE(chip(BoardFacet::Conflict)->accessibleName(), "To be settled, 1 orders");
        QCOMPARE(chip(BoardFacet::Away)->accessibleName(), "Out, 0 orders");
        QCOMPARE(cellOf("O-1001").data(Qt::ToolTipRole).toString(),
                 "1 thing to settle between stations");
        chip(BoardFacet::Conflict)->click();
        QTRY_COMPARE(orders(), QStringList{"O-1001"});
        QTRY_COMPARE(line("side.conflicts")->text(), "1 thing to settle between stations");
        QVERIFY(!line("side.out")->isVisible());
        m_window->openOrder("O-1001");
        QCOMPARE(line("head.stations")->text(), "1 thing to settle between stations");
        QCOMPARE(line("head.stations")->sign(), Status::Doubtful);
    }
};

QTEST_MAIN(VansTest)
#include "VansTest.moc"
