#include "app/print/LossCurve.h"

#include "tests/support/Jobs.h"
#include "tests/support/Pictures.h"

#include <QTest>
#include <QXmlStreamReader>

using namespace loopwright;

namespace {

LoopMakeup makeup()
{
    LoopMakeup makeup;
    makeup.elements = {LoopElement::section(Wire::awg(26), {9000}),
                       LoopElement::tap(Wire::awg(24), {1500}),
                       LoopElement::section(Wire::awg(24), {3500})};
    return makeup;
}

} // namespace

class LossCurveTest : public QObject
{
    Q_OBJECT

private slots:
    void thePointIsTheOneThatIsJudged()
    {
        const LimitSet limits = jobs::limits();
        const CurveData data = curveData(makeup(), limits);
        QCOMPARE(data.pointHz, 40000.0);
        QCOMPARE(data.limitDb, limits.value("bri_loss_max"));
        QCOMPARE(data.pointDb, insertionLossDb(makeup(), 40000, {135, 135}));
        QCOMPARE(data.predicted.front().x(), 200.0);
        QVERIFY(std::abs(data.predicted.back().x() - 1e6) < 1);
        for (std::size_t i = 1; i < data.predicted.size(); ++i)
            QVERIFY(data.predicted[i].x() > data.predicted[i - 1].x());
    }

    void aReadingIsDrawn()
    {
        CurveData data = curveData(makeup(), jobs::limits());
        const auto paint = [&data] {
            return pictures::draw({600, 300}, [&](QPainter &painter, const QRectF &rect) {
                paintCurve(painter, rect, data, paperStyle(12));
            });
        };
        const QImage without = paint();
        data.measured = {{40000, 30}};
        QVERIFY(paint() != without);
    }

    void anyData_data()
    {
        QTest::addColumn<double>("db");
        QTest::addColumn<QSize>("room");
        const double infinite = std::numeric_limits<double>::infinity();
        for (const double db : {0.0, -5.0, 41.9, 1e6, infinite})
            for (const QSize &room : {QSize(1, 1), QSize(60, 40), QSize(900, 420)})
                QTest::addRow("%g dB, %d wide", db, room.width()) << db << room;
    }
    void anyData()
    {
        QFETCH(double, db);
        QFETCH(QSize, room);
        CurveData data;
        data.pointDb = db;
        data.predicted = {{200, db}, {1000, 10}, {1e6, db}};
        data.measured = {{1, 5}, {1e9, 5}};
        pictures::draw(room, [&](QPainter &painter, const QRectF &rect) {
            paintCurve(painter, rect, data, paperStyle(12));
        });
    }

    void files()
    {
        const CurveData data = curveData(makeup(), jobs::limits());
        QCOMPARE(QImage::fromData(curvePng(data, 1), "PNG").size(), QSize(900, 420));
        QXmlStreamReader reader(curveSvg(data));
        QString words;
        while (!reader.atEnd())
            if (reader.readNext() == QXmlStreamReader::Characters)
                words += reader.text() + ' ';
        QVERIFY2(!reader.hasError(), qPrintable(reader.errorString()));
        QVERIFY(words.contains("40 kHz"));
        QVERIFY(words.contains("limit 42.0 dB"));
    }
};

QTEST_MAIN(LossCurveTest)
#include "LossCurveTest.moc"
