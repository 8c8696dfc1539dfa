#include "app/print/SheetBuilder.h"

#include <QFontMetricsF>
#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;

namespace {

const TextStyle style{Face::Text, 90, Qt::black};

} // namespace

class SheetBuilderTest : public QObject
{
    Q_OBJECT

private slots:
    void papersHaveTheirSize()
    {
        // ISO 216: 210 by 297 mm. ANSI A: 8.5 by 11 inches. Qt keeps A4 in whole points.
        QVERIFY(std::abs(paperSize(Paper::A4).width() - mm(210)) < mm(0.2));
        QVERIFY(std::abs(paperSize(Paper::A4).height() - mm(297)) < mm(0.2));
        QCOMPARE(paperSize(Paper::Letter), QSizeF(8.5 * unitsPerInch, 11 * unitsPerInch));
        QCOMPARE(Sheet({Paper::Letter, "", {{}}, {}}).image(0, 100).size(), QSize(850, 1100));
    }

    void wrappingKeepsEveryWordAndTheWidth()
    {
        QVERIFY(rc::check("any words, any width", [] {
            QString text;
            const int words = *rc::gen::inRange(0, 30);
            for (int i = 0; i < words; ++i)
                text += QString(*rc::gen::inRange(1, 25), QChar(u'a' + i % 26)) + ' ';
            const double width = *rc::gen::inRange(300, 4000);
            const QStringList lines = wrapped(text, style.font(), width);
            RC_ASSERT(lines.join("").remove(' ') == QString(text).remove(' '));
            for (const QString &line : lines)
                RC_ASSERT(QFontMetricsF(style.font()).horizontalAdvance(line) <= width + 1);
        }));
    }

    void aNewLineIsKept()
    {
        QCOMPARE(wrapped("one\ntwo", style.font(), 10000), (QStringList{"one", "two"}));
    }

    void rowsAreAsHighAsTheirTallestCell()
    {
        const TextStyle large{Face::Text, 200, Qt::black};
        const double one = SheetBuilder::rowHeight({{0, 5000, "word", style}});
        QCOMPARE(SheetBuilder::rowHeight({{0, 5000, "word\nword", style}}), 2 * one);
        QVERIFY(SheetBuilder::rowHeight({{0, 5000, "word", style}, {0, 5000, "word", large}}) >
                2 * one);
        QCOMPARE(SheetBuilder::rowHeight({{0, 5000, "", style}}), 0.0);
        // A small cell hangs on the base line of the large one beside it.
        QVERIFY(SheetBuilder::rowHeight({{0, 5000, "a\na\na\na", style}, {0, 5000, "a", large}}) >
                4 * one);
    }

    void pagesBreakWhereNothingFits()
    {
        SheetBuilder sheet(Paper::A4, "Trial");
        int begun = 0;
        sheet.setOnNewPage([&begun](SheetBuilder &next) {
            ++begun;
            next.y += 100;
        });
        QVERIFY(!sheet.ensure(sheet.bottom() - sheet.top()));
        sheet.y = sheet.bottom() - 50;
        QVERIFY(!sheet.ensure(50));
        QVERIFY(sheet.ensure(51));
        QCOMPARE(begun, 1);
        QCOMPARE(sheet.pageCount(), std::size_t(2));
        QCOMPARE(sheet.y, sheet.top() + 100);
        QCOMPARE(sheet.finish("foot", "end", style).pages.size(), std::size_t(2));
    }

    void nothingLiesOnAFold()
    {
        SheetBuilder sheet(Paper::A4, "Trial");
        sheet.setFolds({1000, 2000});
        sheet.y = 990;
        sheet.clearFold(50);
        QCOMPARE(sheet.y, 1000.0);
        sheet.y = 900;
        sheet.clearFold(50);
        QCOMPARE(sheet.y, 900.0);
    }

    void allThatIsWrittenIsKnown()
    {
        SheetBuilder sheet(Paper::A4, "Trial");
        sheet.paragraph("Some words", style);
        const Sheet made = sheet.finish("foot", "end", style);
        for (const char *text : {"Some words", "foot", "end"})
            QVERIFY(made.texts.contains(text));
    }
};

QTEST_MAIN(SheetBuilderTest)
#include "SheetBuilderTest.moc"
