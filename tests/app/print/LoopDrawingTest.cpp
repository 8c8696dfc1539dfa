#include "app/print/LoopDrawing.h"

#include "app/print/PictureFile.h"
#include "tests/support/Pictures.h"

#include <QTest>
#include <QXmlStreamReader>

using namespace loopwright;

namespace {

QImage drawing(const LoopMakeup &makeup, const QSize &room = {900, 220}, int fontSize = 13)
{
    return pictures::draw(room, [&](QPainter &painter, const QRectF &rect) {
        paintLoop(painter, rect, makeup, paperStyle(fontSize));
    });
}

QString words(const LoopMakeup &makeup)
{
    QXmlStreamReader reader(
        pictureSvg({900, 220}, "loop", [&](QPainter &painter, const QRectF &rect) {
            paintLoop(painter, rect, makeup, paperStyle(13));
        }));
    QString text;
    while (!reader.atEnd())
        if (reader.readNext() == QXmlStreamReader::Characters)
            text += reader.text() + ' ';
    return reader.hasError() ? reader.errorString() : text.simplified();
}

/// Longest run of pixels of a colour in one row: the length of a line.
int longestRun(const QImage &image, const QColor &colour)
{
    int longest = 0;
    for (int y = 0; y < image.height(); ++y) {
        int run = 0;
        for (int x = 0; x < image.width(); ++x) {
            run = QColor(image.pixel(x, y)) == colour ? run + 1 : 0;
            longest = std::max(longest, run);
        }
    }
    return longest;
}

LoopMakeup loop(std::vector<LoopElement> elements)
{
    LoopMakeup makeup;
    makeup.elements = std::move(elements);
    return makeup;
}

} // namespace

class LoopDrawingTest : public QObject
{
    Q_OBJECT

private slots:
    /// Taps hang to the same scale: one of half the loop is half as long as the loop.
    void tapsAreToScale()
    {
        const PictureStyle style = paperStyle(13);
        const QImage image = drawing(loop({LoopElement::tap(Wire::awg(24), {6000}),
                                           LoopElement::section(Wire::awg(24), {12000})}));
        const double ratio =
            double(longestRun(image, style.doubtful)) / longestRun(image, style.accent);
        QVERIFY2(std::abs(ratio - 0.5) < 0.02, qPrintable(QString::number(ratio)));
    }

    void coarserWireIsThicker()
    {
        const PictureStyle style = paperStyle(13);
        qint64 before = 0;
        for (const int gauge : {26, 24, 22, 19}) {
            const QImage image =
                drawing(loop({LoopElement::section(Wire::awg(gauge), {9000})}), {3000, 900}, 60);
            const qint64 ink = pictures::count(image, style.accent);
            QVERIFY(ink > before);
            before = ink;
        }
    }

    void saysEveryPart()
    {
        const QString text = words(loop(
            {LoopElement::section(Wire::awg(26), {9000}), LoopElement::tap(Wire::awg(24), {1500}),
             LoopElement::section(Wire::awg(24), {6000}), LoopElement::coil(88)}));
        for (const char *piece :
             {"Office", "Premises", "26 AWG, 9000 ft", "24 AWG, 6000 ft", "tap of 24 AWG, 1500 ft",
              "88 mH", "15000 ft, taps 1500 ft, 1 load coil", "2000 ft"})
            QVERIFY2(text.contains(piece), qPrintable(QString(piece) + " in " + text));
    }

    void metres()
    {
        const QString text =
            words(loop({LoopElement::section(Wire::millimetres(0.4), {2000, LengthUnit::Metre})}));
        QVERIFY(text.contains("0.40 mm, 2000 m"));
        QVERIFY(text.contains("500 m"));
    }

    void anyLoop_data()
    {
        QTest::addColumn<LoopMakeup>("makeup");
        std::vector<LoopElement> many;
        for (int i = 0; i < 100; ++i) {
            many.push_back(LoopElement::section(Wire::awg(26), {double(1 + i)}));
            many.push_back(i % 2 ? LoopElement::tap(Wire::awg(24), {3000}) : LoopElement::coil(88));
        }
        QTest::newRow("nothing") << LoopMakeup();
        QTest::newRow("two hundred parts") << loop(many);
        QTest::newRow("a coil alone") << loop({LoopElement::coil(88)});
        QTest::newRow("a tap alone") << loop({LoopElement::tap(Wire::awg(26), {300000})});
        QTest::newRow("a tap longer than the loop")
            << loop({LoopElement::section(Wire::awg(26), {100}),
                     LoopElement::tap(Wire::awg(26), {300000})});
        QTest::newRow("an inch") << loop({LoopElement::section(Wire::awg(26), {0.08})});
    }
    void anyLoop()
    {
        QFETCH(LoopMakeup, makeup);
        for (const QSize &room : {QSize(1, 1), QSize(120, 50), QSize(900, 220)})
            drawing(makeup, room);
        QVERIFY(!words(makeup).isEmpty());
    }
};

QTEST_MAIN(LoopDrawingTest)
#include "LoopDrawingTest.moc"
