// Longer than 400 lines: one paper, read back in every way that it has.
#include "app/print/CertificatePainter.h"

#include "app/print/PdfFile.h"
#include "core/certificate/CertificateNumber.h"
#include "tests/support/Certificates.h"

#include <QBuffer>
#include <QImage>
#include <QPdfWriter>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;
using certificates::run;

namespace {

const IssueMark firstIssue{0, certificates::moment("2026-03-04T15:20:00-06:00")};
const IssueMark secondCopy{2, certificates::moment("2026-05-05T09:00:00-05:00")};

/// As many terminals, criteria, runs and words as a certificate can be asked to hold.
CertificateContent crowded()
{
    OrderFields fields = jobs::briFields();
    fields["customer"] = "Maple Street Printing and Bookbinding Cooperative, Department of Fine "
                         "Editions and Commercial Stationery";
    fields["premises"] = "Building 14, third floor, north wing, 1200 Commerce Park Boulevard West, "
                         "near the old freight station";
    for (int n = 3; n <= 8; ++n) {
        const QString dn = QString("21755501%1").arg(42 + n);
        fields[QString("dn_%1").arg(n)] = dn;
        fields[QString("spid_%1").arg(n)] = dn + "0101";
        fields[QString("tei_%1").arg(n)] = "auto";
        fields[QString("dn_%1_services").arg(n)] = "voice";
    }
    CertificateContent content =
        certificates::content(certificates::sources(jobs::briFields(), jobs::briFacts()));
    content.customer = fields["customer"];
    content.premises = fields["premises"];
    content.terminals = terminalLines(jobs::order(fields));
    content.outcome = OrderOutcome::AcceptedWithException;
    content.criteria[1].outcome = CriterionOutcome::NotMet;
    content.criteria[1].excepted = CertificateException{
        "Robin Sample", "The spare pair is out of order until the new cable is laid.",
        content.issuedAt};
    content.runs.insert(content.runs.begin(), 3, {"2026-03-03, self-call on B1 and B2", "failed"});
    content.signatures = {
        {"installer", "Pat Example", content.issuedAt, {{{200, 700}, {900, 250}, {2600, 550}}}},
        {"customer", "Alex Customer", content.issuedAt, {{{300, 500}, {1400, 300}}}}};
    return content;
}

struct Printed
{
    QTemporaryDir folder;
    QString path;
    QByteArray bytes;

    QByteArray text(const QStringList &options = {}) const
    {
        return run("pdftotext", options + QStringList{path, "-"}).text;
    }
};

std::unique_ptr<Printed> print(const CertificateContent &content, const IssueMark &mark,
                               Paper paper)
{
    auto printed = std::make_unique<Printed>();
    const auto made = certificatePaper(content, mark, paper);
    if (!made)
        qFatal("%s", qPrintable(made.error().text()));
    printed->bytes = made->pdf;
    printed->path = printed->folder.filePath("certificate.pdf");
    QFile file(printed->path);
    if (!file.open(QIODevice::WriteOnly) || file.write(made->pdf) != made->pdf.size())
        qFatal("the temporary folder cannot be written");
    return printed;
}

int pages(const Printed &printed)
{
    const QString info = QString::fromUtf8(run("pdfinfo", {printed.path}).text);
    return QRegularExpression("Pages: +(\\d+)").match(info).captured(1).toInt();
}

/// With every quantity of an analog line.
CertificateContent fullAnalog()
{
    QList<QJsonObject> facts = jobs::analogFacts();
    facts << jobs::analog(20, 12, "slope", 3.2, "dB")
          << jobs::analog(21, 12, "insulation", 12e6, "ohm")
          << jobs::analog(22, 12, "foreign_voltage", 0.2, "V")
          << jobs::analog(23, 12, "on_hook_voltage", 50.1, "V")
          << jobs::analog(24, 12, "ringing_voltage", 84, "V");
    return certificates::content(certificates::sources(jobs::analogFields(), facts));
}

/// Words without regard to where lines break.
QString simplified(const QByteArray &text)
{
    return QString::fromUtf8(text).simplified();
}

} // namespace

Q_DECLARE_METATYPE(Paper)

class CertificatePainterTest : public QObject
{
    Q_OBJECT

private slots:
    void pdf_data()
    {
        QTest::addColumn<CertificateContent>("content");
        QTest::addColumn<Paper>("paper");
        QTest::addColumn<int>("mostPages");
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            QTest::addRow("basic rate, %s", name) << certificates::bri() << paper << 2;
            QTest::addRow("analog, %s", name) << certificates::analog() << paper << 2;
            QTest::addRow("analog, all quantities, %s", name) << fullAnalog() << paper << 2;
            QTest::addRow("crowded, %s", name) << crowded() << paper << 3;
        }
    }
    void pdf()
    {
        QFETCH(CertificateContent, content);
        QFETCH(Paper, paper);
        QFETCH(int, mostPages);
        const auto printed = print(content, firstIssue, paper);

        const auto check = run("qpdf", {"--check", printed->path});
        QVERIFY2(check.status == 0 && !check.text.contains("WARNING"), check.text);
        const QString catalog =
            QString::fromLatin1(run("qpdf", {"--show-object=trailer", printed->path}).text);
        const QString root = QRegularExpression("/Root (\\d+) 0 R").match(catalog).captured(1);
        const QByteArray rootText = run("qpdf", {"--show-object=" + root, printed->path}).text;
        QVERIFY2(rootText.contains("/Lang (en)"), rootText);
        QVERIFY2(rootText.contains("/DisplayDocTitle true"), rootText);

        const QByteArray info = run("pdfinfo", {printed->path}).text;
        QVERIFY(
            info.contains(QByteArray("Title:           Certificate " + content.number.toUtf8())));
        QVERIFY2(pages(*printed) >= 2 && pages(*printed) <= mostPages, info);
        QVERIFY(info.contains(paper == Paper::A4 ? "(A4)" : "(letter)"));
        QVERIFY(info.contains("CreationDate:    Wed Mar  4 21:20:00 2026 UTC"));

        const QByteArray fonts = run("pdffonts", {printed->path}).text;
        const QList<QByteArray> lines = fonts.split('\n').mid(2);
        QVERIFY(lines.size() > 3);
        for (const QByteArray &line : lines)
            QVERIFY2(line.isEmpty() || QRegularExpression(" yes +(yes|no) +yes ")
                                           .match(QString::fromLatin1(line))
                                           .hasMatch(),
                     line);
    }

    void textIsReadRowByRow()
    {
        const CertificateContent content = certificates::bri();
        const auto printed = print(content, firstIssue, Paper::A4);
        const QString text = simplified(printed->text({"-layout"}));
        // In this order, with words that are whole.
        const QStringList order{"Line certificate",
                                content.number,
                                "code " + shortCode(content.digest()),
                                "Accepted",
                                "issued on 4 March 2026",
                                "Customer Bright Bakery Circuit C-77",
                                "Premises 12 Mill Lane Order A-1001, new line",
                                "Office North Hill Tested 4 March 2026, by Pat Example",
                                "Service B1: voice, data at 64 kbit/s; B2: data at 64 kbit/s",
                                "Numbers 217-555-0143, 217-555-0144",
                                "What was checked Measured Limit Result",
                                "Identifiers",
                                "Loop 28.4 dB measured",
                                "is fit for this service",
                                "Safety card clear",
                                "Layer 1 in sync",
                                "Detector check every error sent was seen",
                                "Error-rate run",
                                "Error test 1 run was made.",
                                "self-call on B1 and B2",
                                "at most one bit in 19 million arrives wrong.",
                                "serial S-1021",
                                "Settings for your equipment",
                                "National ISDN-2",
                                "217 555 0143",
                                "217 555 0143 01 01",
                                "21755501430101",
                                "Installer: name, date and signature",
                                "To check this certificate",
                                content.digest()};
        qsizetype from = 0;
        for (const QString &piece : order) {
            const qsizetype at = text.indexOf(piece, from);
            QVERIFY2(at >= 0, qPrintable(piece + " is not behind the one before it in: " + text));
            from = at;
        }
    }

    void noLigatures()
    {
        CertificateContent content = certificates::bri();
        content.customer = "Office Traffic Flow, Fjord Affiliates";
        const QByteArray text = print(content, firstIssue, Paper::A4)->text();
        QVERIFY(text.contains("Office Traffic Flow, Fjord Affiliates"));
        QVERIFY(text.contains("Certificate"));
        for (const char *ligature : {"\uFB00", "\uFB01", "\uFB02", "\uFB03", "\uFB04"})
            QVERIFY(!text.contains(ligature));
    }

    void qrCodeIsReadFromPaper_data()
    {
        QTest::addColumn<Paper>("paper");
        for (const auto &[paper, name] : EnumCodes<Paper>::table)
            QTest::addRow("%s", name) << paper;
    }
    void qrCodeIsReadFromPaper()
    {
        QFETCH(Paper, paper);
        const CertificateContent content = crowded();
        const auto printed = print(content, secondCopy, paper);
        const QString picture = printed->folder.filePath("page");
        QCOMPARE(run("pdftoppm", {"-r", "150", "-f", "1", "-l", "1", "-singlefile", "-png",
                                  printed->path, picture})
                     .status,
                 0);
        const auto read = run("zbarimg", {"--quiet", "--raw", picture + ".png"});
        const QString text = QString::fromUtf8(read.text).section('\n', 0, 0);
        QVERIFY2(text.startsWith(content.number), read.text);
        QVERIFY2(text.contains(content.digest()), read.text);
    }

    void recordIsAttached()
    {
        const CertificateContent content = crowded();
        const auto printed = print(content, firstIssue, Paper::A4);
        QVERIFY(run("pdfdetach", {"-list", printed->path}).text.contains("1: record.json"));
        const QString target = printed->folder.filePath("record.json");
        QCOMPARE(run("pdfdetach", {"-save", "1", "-o", target, printed->path}).status, 0);
        QFile file(target);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray record = file.readAll();
        QCOMPARE(record, content.record());
        QVERIFY(printed->text().contains(sha256Hex(record).toLatin1()));
        const auto read = CertificateContent::fromJson(*parseJsonObject(record, "record.json"), "");
        QVERIFY(read);
        QCOMPARE(*read, content);
    }

    void aFurtherIssueSaysWhichItIsAndBearsTheSignature()
    {
        const CertificateContent content = certificates::bri();
        const Signature signature{
            "customer", "Pat Doe", secondCopy.issuedAt, {{{100, 100}, {3000, 800}}}};
        const IssueMark mark{1, secondCopy.issuedAt, true, {signature}};
        const QByteArray first = print(content, firstIssue, Paper::A4)->text();
        const QByteArray further = print(content, mark, Paper::A4)->text();
        QVERIFY(first.contains("issue 1"));
        QVERIFY(first.contains("Customer: name, date and signature"));
        QVERIFY(further.contains("Issue 2, signed on 5 May 2026"));
        QVERIFY(further.contains("issue 2"));
        QVERIFY(further.contains("Customer: Pat Doe, 5 May 2026"));
        QVERIFY(!further.contains("Copy"));
        QVERIFY(further.contains(content.digest().toLatin1())); // the same certificate
    }

    void aCopyIsMarked()
    {
        const CertificateContent content = certificates::bri();
        const QByteArray first = print(content, firstIssue, Paper::A4)->text();
        const QByteArray copy = print(content, secondCopy, Paper::A4)->text();
        QVERIFY(!first.contains("Copy"));
        QVERIFY(copy.contains("Copy 2, issued on 5 May 2026"));
        QVERIFY(copy.contains("issued on 4 March 2026")); // the certificate itself
        QVERIFY(copy.contains(content.digest().toLatin1()));
        QVERIFY(first.contains(content.digest().toLatin1()));
    }

    void aPreviewSaysSo()
    {
        CertificateContent content = certificates::bri();
        content.number.clear();
        const auto printed = print(content, firstIssue, Paper::A4);
        const QByteArray text = printed->text();
        QVERIFY(text.contains("Preview, not issued"));
        QVERIFY(text.contains("Bright Bakery"));
        QVERIFY(!text.contains("code "));
        QVERIFY(!text.contains(content.digest().toLatin1()));
        const QString picture = printed->folder.filePath("page");
        run("pdftoppm",
            {"-r", "150", "-f", "1", "-l", "1", "-singlefile", "-png", printed->path, picture});
        QCOMPARE(run("zbarimg", {"--quiet", "--raw", picture + ".png"}).status, 4); // no symbol
    }

    void nothingIsCut()
    {
        const CertificateContent content = crowded();
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const QString text = simplified(print(content, secondCopy, paper)->text({"-raw"}));
            QStringList pieces{"Commercial Stationery",
                               "freight station",
                               "4 runs were made",
                               "authorised by Robin Sample",
                               "until the new cable is laid.",
                               "Installer: Pat Example",
                               "Customer: Alex Customer"};
            for (const CertificateTerminal &terminal : content.terminals)
                pieces << terminal.dnGrouped << terminal.spidGrouped << terminal.spid;
            for (const CertificateCriterion &criterion : content.criteria)
                pieces << criterion.name << criterion.meaning << criterion.measured;
            for (const QString &piece : pieces)
                QVERIFY2(text.contains(piece), qPrintable(piece));
        }
    }

    /// More than any page holds: it continues on a further one, and every word is still there.
    void moreThanAPageGoesOn()
    {
        CertificateContent content = crowded();
        for (int i = 0; i < 60; ++i)
            content.notes << QString("Remark number %1 of the path.").arg(i);
        content.customer = QString("A name that never ends ").repeated(40);
        const auto printed = print(content, firstIssue, Paper::Letter);
        const int count = pages(*printed);
        QVERIFY(count > 3);
        const QString text = simplified(printed->text());
        for (int i = 0; i < 60; ++i)
            QVERIFY(text.contains(QString("Remark number %1 of").arg(i)));
        QVERIFY(text.contains(QString("Page %1 of %1").arg(count)));
        QVERIFY(text.contains("continued"));
        QCOMPARE(text.count("never ends"), 40);
    }

    void drawnSignaturesAreInk()
    {
        CertificateContent content = certificates::bri();
        const auto ink = [](const Sheet &sheet) {
            const QImage page = sheet.image(1, 72);
            qint64 dark = 0;
            // Where the signatures are, above their lines.
            for (int y = page.height() * 70 / 100; y < page.height() * 79 / 100; ++y)
                for (int x = 0; x < page.width(); ++x)
                    dark += qGray(page.pixel(x, y)) < 128;
            return dark;
        };
        const qint64 empty = ink(certificateSheet(content, firstIssue, Paper::A4));
        content.signatures = crowded().signatures;
        const qint64 signedInk = ink(certificateSheet(content, firstIssue, Paper::A4));
        QVERIFY2(signedInk > empty + 100, qPrintable(QString("%1 %2").arg(empty).arg(signedInk)));
    }

    void noTestLineInAnyPartOfTheFile()
    {
        const QString number = "217-555-0199";
        CertificateSources sources = certificates::sources(jobs::briFields(), jobs::briFacts());
        sources.decision.notes << "through " + number;
        sources.decision.criteria.front().reason += " 2175550199";
        const NumberGuard guard(*testLinesFromText("loopback=" + number));
        const auto printed =
            print(certificates::content(sources, guard), firstIssue, Paper::Letter);
        // Every stream taken apart, the attachment included.
        const QString open = printed->folder.filePath("open.pdf");
        QCOMPARE(run("qpdf", {"--qdf", "--object-streams=disable", printed->path, open}).status, 0);
        QFile file(open);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        for (const QByteArray &text : {bytes, printed->text(), printed->bytes}) {
            QVERIFY(!text.contains(number.toLatin1()));
            QVERIFY(!text.contains("2175550199"));
            QVERIFY(!text.contains("555-0199"));
        }
    }

    void oneChangedWordChangesTheCode()
    {
        CertificateContent content = certificates::bri();
        const QString before = certificateQrText(content);
        content.criteria.front().measured = "something else";
        QVERIFY(certificateQrText(content) != before);
    }

    /// The same painter serves any paged device: a plain writer gives the same words.
    void anyPagedDevice()
    {
        const Sheet sheet = certificateSheet(certificates::bri(), firstIssue, Paper::Letter);
        QTemporaryDir folder;
        const QString path = folder.filePath("plain.pdf");
        QPdfWriter writer(path);
        writer.setResolution(300);
        QVERIFY(sheet.paint(writer));
        const QByteArray text = run("pdftotext", {path, "-"}).text;
        QVERIFY(text.contains("Line certificate"));
        QVERIFY(run("pdfinfo", {path}).text.contains("(letter)"));
    }

    void aDeviceThatCannotBeWritten()
    {
        const Sheet sheet = certificateSheet(certificates::bri(), firstIssue, Paper::A4);
        QPdfWriter writer("/nowhere/certificate.pdf");
        const auto painted = sheet.paint(writer);
        QVERIFY(!painted);
        QCOMPARE(painted.error().code, ErrorCode::DiskTrouble);
    }
};

QTEST_MAIN(CertificatePainterTest)
#include "CertificatePainterTest.moc"
