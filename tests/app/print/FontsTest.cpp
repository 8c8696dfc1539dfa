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
        const QFontInfo info(printFont(Face(face), 90));
        QTEST(info.family(), "family");
        QCOMPARE(info.pixelSize(), 90);
        const bool strong = Face(face) == Face::Strong || Face(face) == Face::StrongDigits;
        QCOMPARE(info.bold(), strong);
    }

    void charactersThatNoFontHas()
    {
        // Cuneiform: no font of the packages that are named has it.
        const QString cuneiform = QString::fromUcs4(U"\U00012000\U00012001");
        const QString text = "Łódź Ελλάδα مخبز " + cuneiform + cuneiform + "\n\t\u200b";
        QCOMPARE(missingCharacters(text), (QStringList{cuneiform.left(2), cuneiform.right(2)}));
        QCOMPARE(missingCharacters("Bright Bakery – 12 °C"), QStringList());
        QCOMPARE(characterName(cuneiform.left(2)), cuneiform.left(2) + " (U+12000)");
        QCOMPARE(characterName("A"), "A (U+0041)");
    }

    void packagesThatHelp()
    {
        QCOMPARE(fontPackageFor(U'東'), "fonts-noto-cjk");
        QCOMPARE(fontPackageFor(U'ひ'), "fonts-noto-cjk");
        QCOMPARE(fontPackageFor(U'한'), "fonts-noto-cjk");
        QCOMPARE(fontPackageFor(0xFF11), "fonts-noto-cjk"); // a full-width digit
        QCOMPARE(fontPackageFor(U'ท'), "fonts-noto-core");
        QCOMPARE(fontPackageFor(U'م'), "fonts-noto-core");
        QCOMPARE(fontPackageFor(0x1F600), "fonts-symbola");
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
