#include "app/print/Fonts.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QTest>

using namespace loopwright;

class FontsTest : public QObject
{
    Q_OBJECT

private slots:
    /// Without its font a page is full of boxes, and nothing else shows it.
    void theFamiliesAreThere_data()
    {
        QTest::addColumn<int>("face");
        QTest::addColumn<QString>("family");
        QTest::newRow("text") << int(Face::Text) << "DejaVu Sans";
        QTest::newRow("strong") << int(Face::Strong) << "DejaVu Sans";
        QTest::newRow("title") << int(Face::Title) << "DejaVu Serif";
        QTest::newRow("digits") << int(Face::Digits) << "DejaVu Sans Mono";
        QTest::newRow("strong digits") << int(Face::StrongDigits) << "DejaVu Sans Mono";
    }
    void theFamiliesAreThere()
    {
        QFETCH(int, face);
        QVERIFY(fontsAreThere());
        const QFontInfo info(printFont(Face(face), 90));
        QTEST(info.family(), "family");
        QCOMPARE(info.pixelSize(), 90);
        const bool strong = Face(face) == Face::Strong || Face(face) == Face::StrongDigits;
        QCOMPARE(info.bold(), strong);
    }

    void digitsHaveOneWidth()
    {
        const QFontMetricsF metrics(printFont(Face::Digits, 1000));
        for (const QChar digit : QString("0123456789"))
            QCOMPARE(metrics.horizontalAdvance(digit), metrics.horizontalAdvance(u'0'));
    }
};

QTEST_MAIN(FontsTest)
#include "FontsTest.moc"
