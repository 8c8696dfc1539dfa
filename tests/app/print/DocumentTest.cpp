#include "app/print/Document.h"

#include "tests/support/Papers.h"

#include <QBuffer>
#include <QPdfWriter>

using namespace loopwright;
using namespace loopwright::doc;

namespace {

Table longTable(int rows)
{
    Table table{{0.5, 0.5}, {{"Left head"}, {"Right head"}}};
    for (int i = 0; i < rows; ++i)
        table.rows.push_back({{{QString("row %1 left").arg(i)}, {QString("row %1 right").arg(i)}}});
    return table;
}

QString onPage(const Sheet &sheet, int page)
{
    PdfInfo info;
    info.title = sheet.title;
    return papers::textOfPdf(*sheetPdf(sheet, info),
                             {"-raw", "-f", QString::number(page), "-l", QString::number(page)});
}

} // namespace

class DocumentTest : public QObject
{
    Q_OBJECT

private slots:
    void aTableRepeatsItsHead()
    {
        Document document{"Trial", {longTable(120)}, "continued", "foot", "the end"};
        const Sheet sheet = layOut(document, Paper::A4);
        QVERIFY(sheet.pages.size() > 2);
        const int last = int(sheet.pages.size());
        for (int page = 1; page <= last; ++page) {
            const QString text = onPage(sheet, page);
            QCOMPARE(text.count("Left head"), 1);
            QCOMPARE(text.contains("continued"), page > 1);
            QCOMPARE(text.contains("the end"), page == last);
            QVERIFY(text.contains(QString("Page %1 of %2").arg(page).arg(last)));
            QCOMPARE(text.count(" left"), text.count(" right")); // no row is cut in two
        }
    }

    void rowsThatBelongTogetherStayTogether()
    {
        Table table = longTable(60);
        for (std::size_t i = 0; i < table.rows.size(); i += 3)
            table.rows[i].withNext = table.rows[i + 1].withNext = true;
        const Sheet sheet = layOut({"Trial", {table}}, Paper::Letter);
        for (int page = 1; page <= int(sheet.pages.size()); ++page)
            QCOMPARE(onPage(sheet, page).count(" left") % 3, 0);
    }

    /// Rows keep clear of the folds of a letter; without folds the same table lies over them.
    void noRowOnAFold()
    {
        const auto darkAt = [](const Document &document) {
            const QImage page = layOut(document, Paper::A4).image(0, 254); // ten dots a millimetre
            int dark = 0;
            for (const int fold : {990, 1980})
                for (int y = fold - 1; y <= fold; ++y)
                    for (int x = 0; x < page.width(); ++x)
                        dark += qGray(page.pixel(x, y)) < 100;
            return dark;
        };
        int over = 0;
        for (int gap = 0; gap < 12; ++gap) {
            Document document{"Trial", {Gap{mm(gap * 0.5)}, longTable(40)}};
            over += darkAt(document) > 0;
            document.folds = true;
            QCOMPARE(darkAt(document), 0);
        }
        QVERIFY(over > 3); // the test would see it
    }

    void aBoxGoesOn()
    {
        Box box;
        for (int i = 0; i < 120; ++i)
            box.inside.push_back(Paragraph{QString("sentence %1.").arg(i)});
        const Sheet sheet = layOut({"Trial", {box}}, Paper::A4);
        QVERIFY(sheet.pages.size() > 1);
        const QString text = papers::textOf(sheet);
        for (int i = 0; i < 120; ++i)
            QVERIFY(text.contains(QString("sentence %1.").arg(i)));
    }

    void whatStaysTogetherRepeatsWhatItSpeaksOf()
    {
        const Together signs{{SignatureFields{{{"I have tested it.", "Installer"}}}},
                             {Paragraph{"What is declared"}}};
        QVERIFY(
            !papers::textOf(layOut({"Trial", {signs}}, Paper::A4)).contains("What is declared"));
        const Sheet sheet = layOut({"Trial", {longTable(50), signs}}, Paper::A4);
        const QString last = onPage(sheet, int(sheet.pages.size()));
        VERIFY_IN_ORDER(last, {"What is declared", "I have tested it.", "Installer"});
    }

    void twoColumnsInTheOrderOfReading()
    {
        SideBySide both{{Paragraph{"left"}}, {Paragraph{"right"}}, 0.5};
        VERIFY_IN_ORDER(papers::textOf(layOut({"Trial", {both}}, Paper::A4)), {"left", "right"});
        both.rightFirst = true;
        both.leftFrom = mm(60);
        const Sheet sheet = layOut({"Trial", {both, Paragraph{"below"}}}, Paper::A4);
        VERIFY_IN_ORDER(papers::textOf(sheet), {"right", "left", "below"});
    }

    void paintingStopsAfterAPage()
    {
        const Sheet sheet = layOut({"Trial", {longTable(120)}}, Paper::A4);
        const qint64 pages = qint64(sheet.pages.size());
        QVERIFY(pages > 2);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        QVERIFY(buffer.open(QIODevice::WriteOnly));
        QPdfWriter writer(&buffer);
        qint64 told = 0;
        const auto stopped = sheet.paint(writer, [&](qint64 done, qint64 total) {
            told = done;
            return total == pages && done < 2;
        });
        QVERIFY(!stopped && stopped.error().code == ErrorCode::Refused);
        QCOMPARE(stopped.error().message,
                 QString("It was stopped; pages printed: 2 of %1.").arg(pages));
        QCOMPARE(told, 2);
    }

    void everyTextIsSeen()
    {
        Document document{"title",
                          {Paragraph{"paragraph"}, Facts{{{"name", "value"}}},
                           Table{{1}, {{"head"}}, {{{{"cell"}}}}}, Box{{Paragraph{"boxed"}}},
                           Together{{Paragraph{"together"}}, {Paragraph{"later"}}},
                           SideBySide{{Paragraph{"left"}}, {Paragraph{"right"}}},
                           SignatureFields{{{"declares", "caption"}}}, FillIn{"label", "already"}},
                          "continued",
                          "foot",
                          "end"};
        QStringList seen;
        eachText(document, [&seen](QString &text) { seen << text; });
        for (const char *text : {"title", "paragraph", "name", "value", "head", "cell", "boxed",
                                 "together", "later", "left", "right", "declares", "caption",
                                 "label", "already", "continued", "foot", "end"})
            QVERIFY2(seen.contains(QLatin1StringView(text)), text);
    }
};

QTEST_MAIN(DocumentTest)
#include "DocumentTest.moc"
