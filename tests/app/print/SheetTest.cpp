#include "app/print/Sheet.h"

#include "app/print/Document.h"
#include "tests/support/Papers.h"

#include <QPdfWriter>

using namespace loopwright;

namespace {

Sheet threePages(Paper paper)
{
    doc::Document document;
    document.title = "Trial";
    document.blocks = {doc::Paragraph{"one"}, doc::NewPage{}, doc::Paragraph{"two"}, doc::NewPage{},
                       doc::Paragraph{"three"}};
    return layOut(document, paper);
}

} // namespace

class SheetTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;

    static QPageLayout whole(QPageSize::PageSizeId size)
    {
        QPageLayout layout(QPageSize(size), QPageLayout::Portrait, QMarginsF(30, 30, 30, 30));
        layout.setMode(QPageLayout::FullPageMode);
        return layout;
    }
    QString wordsOf(const QString &path) const
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? papers::textOfPdf(file.readAll()) : QString();
    }

private slots:
    void theNearestPaperIsLaidOut_data()
    {
        QTest::addColumn<QSizeF>("page");
        QTest::addColumn<Paper>("paper");
        const auto size = [](QPageSize::PageSizeId id) {
            return QPageSize(id).size(QPageSize::Point);
        };
        QTest::newRow("A4") << size(QPageSize::A4) << Paper::A4;
        QTest::newRow("A4 on its side") << size(QPageSize::A4).transposed() << Paper::A4;
        QTest::newRow("letter") << size(QPageSize::Letter) << Paper::Letter;
        QTest::newRow("letter on its side")
            << size(QPageSize::Letter).transposed() << Paper::Letter;
        QTest::newRow("A5") << size(QPageSize::A5) << Paper::A4;
        QTest::newRow("A3") << size(QPageSize::A3) << Paper::A4;
        QTest::newRow("of a letter's shape") << QSizeF(306, 396) << Paper::Letter;
    }
    void theNearestPaperIsLaidOut()
    {
        QFETCH(QSizeF, page);
        QFETCH(Paper, paper);
        QCOMPARE(paperFor(page), paper);
    }

    void pagesAreChosenAndFit_data()
    {
        QTest::addColumn<QPageSize::PageSizeId>("page");
        QTest::addColumn<double>("fit");
        QTest::newRow("its own") << QPageSize::A4 << 1.0;
        QTest::newRow("a larger one") << QPageSize::A3 << 1.0;
        QTest::newRow("a smaller one") << QPageSize::A5 << 420.0 / 595;
    }
    void pagesAreChosenAndFit()
    {
        QFETCH(QPageSize::PageSizeId, page);
        QFETCH(double, fit);
        Sheet sheet;
        sheet.title = "Trial";
        QList<QRectF> drawn;
        const QSizeF own = paperSize(Paper::A4);
        for (int i = 0; i < 3; ++i)
            sheet.pages.push_back({{[&drawn, own](QPainter &painter) {
                drawn << painter.combinedTransform().mapRect(QRectF(QPointF(), own));
            }}});
        QPdfWriter writer(m_folder.filePath("fit.pdf"));
        writer.setResolution(72);
        writer.setPageLayout(whole(page));
        QVERIFY(sheet.paintPages(writer, {2, 0}));
        QCOMPARE(drawn.size(), 2);
        const QSizeF room = QPageSize(page).size(QPageSize::Point);
        for (const QRectF &rect : std::as_const(drawn)) {
            QVERIFY(std::abs(rect.width() - 595 * fit) < 0.01);
            QVERIFY(std::abs(rect.center().x() - room.width() / 2) < 0.01);
            QVERIFY(std::abs(rect.center().y() - room.height() / 2) < 0.01);
        }
    }

    void chosenPagesInTheirOrder()
    {
        const Sheet sheet = threePages(Paper::A4);
        QCOMPARE(sheet.pages.size(), 3U);
        const QString path = m_folder.filePath("chosen.pdf");
        {
            QPdfWriter writer(path);
            writer.setPageLayout(whole(QPageSize::A4));
            QVERIFY(sheet.paintPages(writer, {2, 1}));
        }
        const QString words = wordsOf(path);
        QVERIFY2(words.indexOf("three") >= 0 && words.indexOf("three") < words.indexOf("two") &&
                     !words.contains("one"),
                 qPrintable(words));
    }

    void noPageIsRefused()
    {
        const QString path = m_folder.filePath("none.pdf");
        QPdfWriter writer(path);
        const auto painted = threePages(Paper::A4).paintPages(writer, {});
        QVERIFY(!painted);
        QCOMPARE(painted.error().code, ErrorCode::Refused);
        QVERIFY(!QFile::exists(path) || QFileInfo(path).size() == 0);
    }
};

QTEST_MAIN(SheetTest)
#include "SheetTest.moc"
