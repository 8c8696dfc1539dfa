#include "app/desktop/widgets/Glyph.h"

#include <QImage>
#include <QSet>
#include <QTest>

using namespace loopwright;

namespace {

QImage drawn(GlyphShape shape, const QColor &colour, const QColor &inner, int side = 56)
{
    QImage image(side, side, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    drawGlyph(painter, shape, QRectF(0, 0, side, side), colour, inner);
    return image;
}

int pixelsOf(const QImage &image, const QColor &colour)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y) == colour ? 1 : 0;
    return count;
}

} // namespace

class GlyphTest : public QObject
{
    Q_OBJECT

private slots:
    void everySignHasItsOwnShapeInTheColourAskedFor()
    {
        QSet<QByteArray> shapes;
        for (int shape = 0; shape <= int(GlyphShape::Note); ++shape) {
            const QImage image = drawn(GlyphShape(shape), QColor("#1d6b35"), Qt::white);
            QVERIFY2(pixelsOf(image, QColor("#1d6b35")) > 20, qPrintable(QString::number(shape)));
            shapes << QByteArray(reinterpret_cast<const char *>(image.constBits()),
                                 image.sizeInBytes());
        }
        QCOMPARE(shapes.size(), int(GlyphShape::Note) + 1);
    }

    void whatIsCutOutHasTheInnerColour()
    {
        for (const GlyphShape shape : {GlyphShape::Done, GlyphShape::Failed, GlyphShape::Doubtful})
            QVERIFY(pixelsOf(drawn(shape, Qt::black, Qt::yellow), Qt::yellow) > 20);
        // Black and white swapped, as on a strong selection: neither is taken for the other.
        const QImage image = drawn(GlyphShape::Done, Qt::white, Qt::black);
        QVERIFY(pixelsOf(image, Qt::white) > pixelsOf(image, Qt::black));
        QVERIFY(pixelsOf(image, Qt::black) > 20);
    }

    void theSizeIsThatOfTheSquare()
    {
        const QImage small = drawn(GlyphShape::Open, Qt::red, Qt::white, 14);
        const QImage large = drawn(GlyphShape::Open, Qt::red, Qt::white, 140);
        QVERIFY(pixelsOf(large, Qt::red) > 50 * pixelsOf(small, Qt::red) ||
                pixelsOf(small, Qt::red) == 0);
        QCOMPARE(large.pixelColor(70, 20), QColor(Qt::red)); // the top of the ring
        QCOMPARE(large.pixelColor(70, 70).alpha(), 0);
    }
};

QTEST_MAIN(GlyphTest)
#include "GlyphTest.moc"
