#include "app/print/PdfFile.h"

#include "app/print/SheetBuilder.h"
#include "tests/support/Certificates.h"

#include <QElapsedTimer>
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
        for (const auto &[name, bytes] :
             {std::pair("record.json", "{\"a\":1}"), std::pair("b.txt", "b")})
            QCOMPARE(run("qpdf", {path, QString("--show-attachment=%1").arg(name)}).text, bytes);
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
        QCOMPARE(contents.attachment("record.json"), "{\"a\":1}");
        QCOMPARE(contents.attachment("b.txt"), "b");
        QCOMPARE(contents.attachment("other"), "");
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

    /// A few kilobytes can unpack to gigabytes; none of it is made beyond the bound, and what is
    /// there beside it is read.
    void anAttachmentIsUnpackedUpToItsBound()
    {
        const auto attached = [](qsizetype size) {
            PdfInfo vast = info();
            vast.attachments.push_back({"a.txt", QByteArray(size, ' '), "text/plain"});
            const auto pdf = sheetPdf(sheet(), vast);
            return pdf ? *pdf : QByteArray();
        };
        const PdfContents at = readPdf(attached(largestAttachment));
        QCOMPARE(at.attachment("a.txt").size(), largestAttachment);
        const PdfContents above = readPdf(attached(largestAttachment + 1));
        QVERIFY(above.attachment("a.txt").isEmpty());
        QCOMPARE(above.attachment("b.txt"), "b");
        const QByteArray vast = attached(90'000'000);
        QVERIFY(vast.size() < 200'000);
        QElapsedTimer timer;
        timer.start();
        QVERIFY(readPdf(vast).attachment("a.txt").isEmpty());
        QVERIFY2(timer.elapsed() < 2000, qPrintable(QString::number(timer.elapsed())));
        QCOMPARE(readPdf(vast).title, info().title);
    }

    /// Readers show what the catalog names; a stream that only lies in the file is none of its
    /// attachments.
    void anAttachmentThatTheCatalogDoesNotNameIsNone()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QByteArray unnamed = *pdf;
        unnamed.replace("/EmbeddedFiles", "/EmbeddedFilez");
        QVERIFY(unnamed.contains("/EF"));
        QVERIFY(readPdf(unnamed).attachments.empty());
        QCOMPARE(readPdf(unnamed).title, info().title);
    }

    void anAttachmentUnderTwoOfOneNameIsNone()
    {
        PdfInfo twice = info();
        twice.attachments[1] = {"record.json", "{\"a\":2}", "application/json"};
        const auto pdf = sheetPdf(sheet(), twice);
        QVERIFY(pdf);
        QCOMPARE(readPdf(*pdf).attachments.size(), 2U);
        QVERIFY(readPdf(*pdf).attachment("record.json").isEmpty());
    }

    /// A tree of names that leads back to itself is not walked without end.
    void aTreeOfNamesInACircleEnds()
    {
        const auto pdf = sheetPdf(sheet(), info());
        QVERIFY(pdf);
        QByteArray circle = *pdf;
        circle.replace("/EmbeddedFiles 10 0 R",
                       "/EmbeddedFiles 6 0 R /Kids [6 0 R 6 0 R 6 0 R 6 0 R]");
        QVERIFY(circle != *pdf && circle.contains("6 0 obj\n<< /EmbeddedFiles 6 0 R"));
        QVERIFY(readPdf(circle).attachments.empty());
        QCOMPARE(readPdf(circle).title, info().title);
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
