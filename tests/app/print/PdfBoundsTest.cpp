#include "app/print/PdfBounds.h"

#include "app/print/PdfFile.h"
#include "app/print/SheetBuilder.h"
#include "tests/support/Certificates.h"

#include <QElapsedTimer>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using certificates::run;

namespace {

QByteArray packed(const QByteArray &bytes)
{
    return qCompress(bytes, 9).sliced(4); // without the length that Qt puts before it
}

/// A PDF whose objects are found by a stream with those bytes, packed as `filter` says.
QByteArray withTable(const QByteArray &table, const QByteArray &type = "/XRef",
                     const QByteArray &filter = "/FlateDecode")
{
    QByteArray pdf = "%PDF-1.5\n1 0 obj\n<< /Type /Catalog /Pages 2 0 R >>\nendobj\n"
                     "2 0 obj\n<< /Type /Pages /Kids [] /Count 0 >>\nendobj\n";
    const QByteArray at = QByteArray::number(pdf.size());
    pdf += "3 0 obj\n<< /Type " + type + " /Size 4 /Root 1 0 R /W [1 4 2] /Index [0 4] /Filter " +
           filter + " /Length " + QByteArray::number(table.size()) + " >>\nstream\n" + table +
           "\nendstream\nendobj\n";
    return pdf + "startxref\n" + at + "\n%%EOF\n";
}

QByteArray someSheet()
{
    SheetBuilder builder(Paper::A4, "Trial");
    builder.paragraph("Some words", {Face::Text, 90, Qt::black});
    const auto pdf = sheetPdf(builder.finish("foot", {}, {Face::Text, 70, Qt::black}),
                              {"Trial",
                               "Subject",
                               certificates::moment("2026-03-04T23:30:00-06:00"),
                               "en",
                               {{"record.json", "{\"a\":1}", "application/json"}}});
    return pdf ? *pdf : QByteArray();
}

} // namespace

class PdfBoundsTest : public QObject
{
    Q_OBJECT

private slots:
    void inflatesUpToItsBound()
    {
        const QByteArray bytes(100'000, 'x');
        QCOMPARE(*inflated(packed(bytes), 100'000), bytes);
        QCOMPARE(*inflated(QByteArray(packed(bytes) + "more"), 100'000), bytes);
        QVERIFY(!inflated(packed(bytes), 99'999));
        QVERIFY(!inflated(packed(bytes).chopped(3), 100'000));
        QVERIFY(!inflated("no such thing", 100'000));
    }

    /// Of two gigabytes nothing is made.
    void aTableThatUnpacksToTooMuch_data()
    {
        QTest::addColumn<QByteArray>("pdf");
        const QByteArray vast = packed(QByteArray(mostUnpacked + 1, '\0'));
        QTest::newRow("once") << withTable(vast);
        QTest::newRow("its kind written with a code") << withTable(vast, "/XR#65f");
        QTest::newRow("twice") << withTable(packed(vast), "/XRef", "[/FlateDecode /FlateDecode]");
        QTest::newRow("twice, by the names of others")
            << withTable(packed(vast), "/XRef", "[4 0 R 4 0 R]") + "4 0 obj /FlateDecode endobj";
        QTest::newRow("six times") << withTable(packed(packed(packed(packed(packed(packed("x")))))),
                                                "/XRef", "/FlateDecode");
        QTest::newRow("many streams")
            << withTable("") +
                   QByteArray("stream\n" + packed(QByteArray(1'000'000, '\0'))).repeated(5);
        QTest::newRow("by a filter that is not looked into")
            << withTable("z", "/XRef", "/LZWDecode");
    }
    void aTableThatUnpacksToTooMuch()
    {
        QFETCH(QByteArray, pdf);
        QVERIFY(pdf.size() < 100'000);
        QVERIFY(!isModestPdf(pdf));
        QVERIFY(readPdf(pdf).attachments.empty());
    }

    void aGigabyteIsRefusedAtOnce()
    {
        QByteArray bytes = packed(QByteArray(500'000'000, '\0'));
        const QByteArray pdf = withTable(bytes);
        QVERIFY(pdf.size() < 1'000'000);
        QElapsedTimer timer;
        timer.start();
        QVERIFY(readPdf(pdf).title.isEmpty());
        QVERIFY2(timer.elapsed() < 2000, qPrintable(QString::number(timer.elapsed())));
    }

    /// As another program saves it, with streams of objects: it is read like our own.
    void whatAnotherProgramSavedAnewIsRead()
    {
        const QByteArray pdf = someSheet();
        QVERIFY(isModestPdf(pdf));
        QTemporaryDir folder;
        QFile file(folder.filePath("a.pdf"));
        QVERIFY(file.open(QIODevice::WriteOnly) && file.write(pdf) == pdf.size());
        file.close();
        const QString anew = folder.filePath("b.pdf");
        QCOMPARE(run("qpdf", {"--object-streams=generate", file.fileName(), anew}).status, 0);
        QFile saved(anew);
        QVERIFY(saved.open(QIODevice::ReadOnly));
        const QByteArray bytes = saved.readAll();
        QVERIFY(bytes.contains("/XRef"));
        QVERIFY(isModestPdf(bytes));
        QCOMPARE(readPdf(bytes).title, "Trial");
        QCOMPARE(readPdf(bytes).attachment("record.json"), "{\"a\":1}");
    }
};

QTEST_MAIN(PdfBoundsTest)
#include "PdfBoundsTest.moc"
