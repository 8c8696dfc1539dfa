#include "app/print/QrCode.h"

#include "tests/support/Certificates.h"

#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

namespace {

QImage picture(const QrCode &code, int side)
{
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.fillPath(code.in(QRectF(0, 0, side, side)), Qt::black);
    return image;
}

} // namespace

class QrCodeTest : public QObject
{
    Q_OBJECT

private slots:
    void isReadBack_data()
    {
        QTest::addColumn<QString>("text");
        QTest::newRow("short") << "A";
        QTest::newRow("as a certificate's")
            << "26-K7M4QP-00042-17 sha256:" + QString(64, QChar('e'));
        QTest::newRow("long") << QString("0123456789abcdef").repeated(40);
    }
    void isReadBack()
    {
        QFETCH(QString, text);
        const auto code = qrCode(text);
        QVERIFY(code);
        QTemporaryDir folder;
        const QString path = folder.filePath("code.png");
        QVERIFY(picture(*code, code->modules * 4).save(path));
        const auto read = certificates::run("zbarimg", {"--quiet", "--raw", path});
        QCOMPARE(QString::fromUtf8(read.text).section('\n', 0, 0), text);
    }

    /// ISO/IEC 18004: four modules of quiet zone on every side.
    void quietZone()
    {
        const auto code = qrCode("26-K7M4QP-00042-17");
        QVERIFY(code);
        QVERIFY(
            QRectF(4, 4, code->modules - 8, code->modules - 8).contains(code->dark.boundingRect()));
        QCOMPARE(code->dark.boundingRect(), QRectF(4, 4, code->modules - 8, code->modules - 8));
    }

    void tooLong()
    {
        const auto code = qrCode(QString(5000, QChar('x')));
        QVERIFY(!code);
        QCOMPARE(code.error().code, ErrorCode::BadInput);
    }
};

QTEST_MAIN(QrCodeTest)
#include "QrCodeTest.moc"
