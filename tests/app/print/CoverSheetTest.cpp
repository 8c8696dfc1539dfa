#include "app/print/CoverSheet.h"

#include "app/print/CertificateDocument.h"
#include "app/print/PdfFile.h"
#include "tests/support/PaperSamples.h"

using namespace loopwright;

namespace {

using papers::cover;

QString textOf(const CoverContent &content, Paper paper)
{
    const auto pdf = coverPdf(coverSheet(content, paper), content.made);
    if (!pdf)
        qFatal("%s", qPrintable(pdf.error().text()));
    papers::keep(*pdf, QString("cover-%1-%2").arg(content.lines.size()).arg(toText(paper)));
    return papers::textOfPdf(*pdf);
}

} // namespace

class CoverSheetTest : public QObject
{
    Q_OBJECT

private slots:
    void everyLineIsNamed()
    {
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const QString text = textOf(cover(), paper);
            for (const char *piece :
                 {"1 of 2 lines have a certificate", "Bright Bakery", "12 Mill Lane",
                  "10:00 to 10:05 (UTC-06:00), Kim Carver: no access",
                  "08:02 to 09:40 (UTC-06:00), Kim Carver: worked", "ISDN basic-rate line",
                  "217-555-0144", "Accepted", "26-K7M4QP-00001-43, code 4f2a",
                  "2 pages, tested 4 March 2026", "Analog line", "Circuit C-91, order A-3001",
                  "Incomplete", "Stands at: Safety", "No safety card was made for this pair.",
                  "it is no certificate", "Page 1 of 1"})
                QVERIFY2(text.contains(piece), qPrintable(QString(piece) + " in " + text));
        }
    }
    void manyLinesGoOnOnFurtherPages()
    {
        CoverContent content = cover();
        for (int i = 0; i < 40; ++i) {
            content.lines.push_back(content.lines[1]);
            content.lines.back().order = QString("A-4%1").arg(i, 3, 10, QChar('0'));
        }
        QVERIFY(coverSheet(content, Paper::Letter).pages.size() > 2);
        const QString text = textOf(content, Paper::Letter);
        for (const CoverLine &line : content.lines)
            QVERIFY2(text.contains("order " + line.order), qPrintable(line.order));
    }
    /// Twelve lines: none stands apart from what belongs to it, and no page has a line alone.
    void noOrphanLine()
    {
        CoverContent content = cover();
        while (content.lines.size() < 12)
            content.lines.push_back(content.lines[content.lines.size() % 2]);
        for (std::size_t i = 0; i < content.lines.size(); ++i)
            content.lines[i].order = QString("A-50%1").arg(i, 2, 10, QChar('0'));
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const auto pdf = coverPdf(coverSheet(content, paper), content.made);
            QVERIFY(pdf);
            textOf(content, paper);
            const int pages = int(coverSheet(content, paper).pages.size());
            for (int page = 1; page <= pages; ++page) {
                const QString text = papers::textOfPdf(
                    *pdf, {"-raw", "-f", QString::number(page), "-l", QString::number(page)});
                // Each line begins with its kind and ends with its certificate or its reason.
                const auto kinds = text.count("ISDN basic-rate line") + text.count("Analog line");
                QCOMPARE(text.count("Circuit C-"), kinds);
                QCOMPARE(text.count("code 4f2a") + text.count("was made for this pair"), kinds);
                QVERIFY(kinds > 1);
            }
        }
    }
    void aCoverIsKnownAsOne()
    {
        QVERIFY(isCover(readPdf(*coverPdf(coverSheet(cover(), Paper::A4), cover().made))));
        const auto certificate = certificatePaper(certificates::bri(), {}, Paper::A4);
        QVERIFY(certificate);
        QVERIFY(!isCover(readPdf(certificate->pdf)));
    }
};

QTEST_MAIN(CoverSheetTest)
#include "CoverSheetTest.moc"
