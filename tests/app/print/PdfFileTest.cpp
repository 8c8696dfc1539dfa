#include "app/print/PdfFile.h"

#include "app/print/SheetBuilder.h"
#include "tests/support/Certificates.h"

#include <QTemporaryDir>
#include <QTest>

#include <rapidcheck.h>

using namespace loopwright;
using certificates::run;

namespace {

Sheet sheet()
{
    SheetBuilder builder(Paper::A4, "Trial");
    builder.paragraph("Some words", {Face::Text, 90, Qt::black});
    builder.newPage();
    builder.paragraph("More words", {Face::Digits, 90, Qt::black});
    return builder.finish("foot", {}, {Face::Text, 70, Qt::black});
}

PdfInfo info()
{
    return {"Title (with) brackets \\ and Łódź",
            "Subject",
            certificates::moment("2026-03-04T23:30:00-06:00"),
            "en",
            {{"record.json", "{\"a\":1}", "application/json"}, {"b.txt", "b", "text/plain"}},
            "Prairie & Sons <Telephone>"};
}

/// The path of the PDF in the folder.
QString written(const QTemporaryDir &folder, const QByteArray &pdf)
{
    QFile file(folder.filePath("a.pdf"));
    if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
        qFatal("the temporary folder cannot be written");
    return file.fileName();
}

} // namespace

class PdfFileTest : public QObject
{
    Q_OBJECT

private slots:
    void titleDateAndAttachments()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QTemporaryDir folder;
        const QString path = written(folder, *pdf);
        const auto check = run("qpdf", {"--check", path});
        QVERIFY2(check.status == 0, check.text);
        const QString text = QString::fromUtf8(run("pdfinfo", {path}).text);
        QVERIFY(text.contains("Title (with) brackets \\ and Łódź"));
        QVERIFY(text.contains("CreationDate:    Thu Mar  5 05:30:00 2026 UTC"));
        QVERIFY(run("pdfdetach", {"-list", path}).text.contains("2 embedded files"));
    }

    /// XMP says the same as the information that readers show, and each attachment says what it is.
    void metadataAndRelationships()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QTemporaryDir folder;
        const QString path = written(folder, *pdf);
        const QString xmp = QString::fromUtf8(run("pdfinfo", {"-meta", path}).text);
        QVERIFY2(xmp.contains("Title (with) brackets \\ and Łódź"), qPrintable(xmp));
        QVERIFY(xmp.contains("<rdf:li>Prairie &amp; Sons &lt;Telephone&gt;</rdf:li>"));
        QVERIFY(xmp.contains("<xmp:CreateDate>2026-03-05T05:30:00Z</xmp:CreateDate>"));
        QVERIFY(xmp.contains("<rdf:li>en</rdf:li>"));
        QVERIFY(QString::fromUtf8(run("pdfinfo", {path}).text)
                    .contains("Author:          Prairie & Sons <Telephone>"));
        QCOMPARE(pdf->count("/AFRelationship /Data"), 2);
        QVERIFY(pdf->contains("/AF ["));
    }

    /// The clock leaves no trace in the file; what differs from run to run is the order of fonts.
    void noClock()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QCOMPARE(pdf->count("/CreationDate"), 1);
        QVERIFY(pdf->contains("(D:20260305053000Z)"));
    }

    void sameInputSameBytes()
    {
        // Within one process the hashing of fonts is the same.
        const auto one = sheetPdf(sheet(), info());
        const auto two = sheetPdf(sheet(), info());
        QVERIFY(one && two);
        QCOMPARE(*one, *two);
    }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::newRow("empty") << QByteArray();
        QTest::newRow("no PDF") << QByteArray("hello");
        QTest::newRow("only a table") << QByteArray("%PDF-1.4\nxref\n0 2\n");
        QTest::newRow("a table without end")
            << QByteArray("%PDF-1.4\nxref\n0 999999999\ntrailer\n/Info 1 0 R /Root 2 0 R");
        QTest::newRow("nothing behind it")
            << QByteArray("%PDF-1.4\nxref\n0 1\n0000000000 65535 f \ntrailer\n<</Info 0 0 R /Root "
                          "0 0 R>>");
    }
    void refused()
    {
        QFETCH(QByteArray, bytes);
        const auto changed = withPdfInfo(bytes, info());
        QVERIFY(!changed);
        QCOMPARE(changed.error().code, ErrorCode::BadInput);
    }

    /// What was set before is replaced and leaves nothing behind.
    void canBeSetAnew()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        PdfInfo other = info();
        other.title = "Another";
        other.language = "fr";
        const auto changed = withPdfInfo(*pdf, other);
        QVERIFY(changed);
        QCOMPARE(readPdf(*changed).title, "Another");
        QVERIFY(changed->contains("/Lang (fr)") && !changed->contains("/Lang (en)"));
        QCOMPARE(changed->count("/CreationDate"), 1);
        QCOMPARE(*withPdfInfo(*changed, info()), *withPdfInfo(*pdf, info()));
    }

    void readsBack()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        const PdfContents contents = readPdf(*pdf);
        QCOMPARE(contents.title, info().title);
        QCOMPARE(contents.subject, info().subject);
        QVERIFY(contents.attachments == std::vector<QByteArray>({"{\"a\":1}", "b"}));
    }

    /// Of a file without its table, of half a file and of no PDF at all.
    void readsWhatIsLeft()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QByteArray noTable = *pdf;
        noTable.replace("startxref", "startyref");
        QCOMPARE(readPdf(noTable).title, info().title);
        QCOMPARE(readPdf(noTable).attachments.size(), 2U);
        QCOMPARE(readPdf(pdf->first(pdf->size() / 2)).title, QString());
        QCOMPARE(readPdf("hello").title, QString());
        QVERIFY(readPdf({}).attachments.empty());
    }

    /// A few kilobytes can unpack to gigabytes; what is packed too large is left alone.
    void aVastAttachmentIsNotUnpacked()
    {
        const auto attached = [](qsizetype size) {
            PdfInfo vast = info();
            vast.attachments = {{"a.txt", QByteArray(size, ' '), "text/plain"}};
            return sheetPdf(sheet(), vast);
        };
        const auto large = attached(10'000'000);
        QVERIFY(large && large->size() < 100'000);
        QCOMPARE(readPdf(*large).attachments.at(0).size(), 10'000'000);
        const auto vast = attached(150'000'000);
        QVERIFY(vast && vast->size() < 500'000);
        QVERIFY(readPdf(*vast).attachments.empty());
        QCOMPARE(readPdf(*vast).title, info().title);
    }

    void damagedFilesAreRefusedOrRead()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        const QByteArray &plain = *pdf;
        QVERIFY(rc::check("a file cut or changed anywhere makes nothing crash", [&plain] {
            QByteArray damaged = plain;
            const int changes = *rc::gen::inRange(1, 20);
            for (int i = 0; i < changes; ++i)
                damaged[*rc::gen::inRange(0, int(damaged.size()))] =
                    char(*rc::gen::inRange(0, 256));
            damaged.truncate(*rc::gen::inRange(0, int(damaged.size()) + 1));
            const auto changed = withPdfInfo(damaged, info());
            RC_ASSERT(changed || changed.error().code == ErrorCode::BadInput);
            readPdf(damaged);
        }));
    }

    /// Damage where it hurts: in the table of objects and the trailer.
    void damagedTables()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        const QByteArray &plain = *pdf;
        const int table = int(plain.lastIndexOf("xref\n0"));
        QVERIFY(table > 0);
        QVERIFY(rc::check("any digits in the table", [&plain, table] {
            QByteArray damaged = plain;
            const int changes = *rc::gen::inRange(1, 30);
            for (int i = 0; i < changes; ++i)
                damaged[*rc::gen::inRange(table, int(damaged.size()))] =
                    *rc::gen::element('0', '9', ' ', '\n', '-', 'n', 'f');
            const auto changed = withPdfInfo(damaged, info());
            RC_ASSERT(changed || changed.error().code == ErrorCode::BadInput);
            readPdf(damaged);
        }));
    }
};

QTEST_MAIN(PdfFileTest)
#include "PdfFileTest.moc"
