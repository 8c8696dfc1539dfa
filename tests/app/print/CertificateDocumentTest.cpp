// Longer than 400 lines: one paper, and all that it can be asked to be.

#include "app/print/CertificateDocument.h"

#include "app/print/PdfFile.h"
#include "core/acceptance/Criteria.h"
#include "core/certificate/CertificateNumber.h"
#include "tests/support/Papers.h"

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
    CertificateRun failed;
    failed.when = "3 March 2026, 08:32 to 08:47 (UTC-06:00)";
    failed.text = "call from channel B1 to channel B2 of this line, 15 minutes at 64 kbit/s";
    failed.counts = "900 bit errors";
    failed.result = "Failed: 900 bit errors where 5 are the most";
    failed.outcome = RunOutcome::Failed;
    content.runs.insert(content.runs.begin(), 3, failed);
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

std::unique_ptr<Printed> print(const CertificateContent &content, IssueMark mark, Paper paper)
{
    if (!content.number.isEmpty())
        mark.proof = certificates::proof(content);
    auto printed = std::make_unique<Printed>();
    const auto made = certificatePaper(content, mark, paper);
    if (!made)
        qFatal("%s", qPrintable(made.error().text()));
    printed->bytes = made->pdf;
    papers::keep(made->pdf, QString("certificate-%1-%2-%3")
                                .arg(QTest::currentTestFunction(),
                                     QString::fromLatin1(QTest::currentDataTag()), toText(paper)));
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

class CertificateDocumentTest : public QObject
{
    Q_OBJECT

    /// What stands beside each other agrees: marks of outcome, sentences, counts, limits.
    static void agrees(const CertificateContent &content, const QString &text)
    {
        QVERIFY2(text.contains(content.verdictSentence()), qPrintable(text));
        for (const CertificateCriterion &criterion : content.criteria) {
            const Criterion *row = findCriterion(criterion.key);
            QVERIFY(row);
            const bool asked = criterion.outcome != CriterionOutcome::NotNeeded;
            QCOMPARE(text.contains(criterion.meaning) || !asked, true);
            for (const CertificateReading &reading : criterion.readings)
                QVERIFY2(text.contains(reading.value) || !asked,
                         qPrintable(reading.value + " in " + text));
        }
        for (const CertificateRun &run : content.runs) {
            QVERIFY2(text.contains(run.result), qPrintable(run.result + " in " + text));
            QVERIFY2(text.contains(run.counts), qPrintable(run.counts + " in " + text));
        }
        for (const char *never :
             {"self-call", "No other line has them", "in order.", "calibrated on the day", "1e-07",
              "arrives wrong", "can carry this service"})
            QVERIFY2(!text.contains(QLatin1StringView(never)), never);
    }

private slots:
    void pdf_data()
    {
        QTest::addColumn<CertificateContent>("content");
        QTest::addColumn<Paper>("paper");
        QTest::addColumn<int>("mostPages");
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            QTest::addRow("basic rate, %s", name) << certificates::bri() << paper << 4;
            QTest::addRow("analog, %s", name) << certificates::analog() << paper << 4;
            QTest::addRow("analog, all quantities, %s", name) << fullAnalog() << paper << 5;
            QTest::addRow("crowded, %s", name) << crowded() << paper << 6;
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
        const QString text = simplified(printed->text({"-raw"}));
        // In this order, with words that are whole.
        VERIFY_IN_ORDER(text, {"Line certificate",
                               content.number,
                               "code " + shortCode(content.digest()),
                               "Issued on 4 March 2026, 15:20 (UTC-06:00) for order A-1001",
                               "Accepted",
                               "points that this line was checked for is met.",
                               "Customer Bright Bakery",
                               "Premises 12 Mill Lane",
                               "Circuit C-77",
                               "Order A-1001, new line",
                               "Tested 4 March 2026, by Pat Example",
                               "Ordered Delivered",
                               "voice, data at 64 kbit/s",
                               "217-555-0143 answered when it was called",
                               "Results",
                               "Identifiers",
                               "Loop",
                               "is fit for this service",
                               "DC resistance 612 ohm at most 1300 ohm TS-4 as read",
                               "Loss at 40 kHz 28.4 dB at most 42 dB TS-4 as read",
                               "AC voltage tip to ground 0.2 V",
                               "Layer 1",
                               "Detector check",
                               "Error-rate run",
                               "0 in 57,600,000 bits at most 5 (1 in 10 million)",
                               "A figure is met when it is within the limit as read",
                               "Error test",
                               "1 run was made.",
                               "08:32 to 08:47 (UTC-06:00)",
                               "call from channel B1 to channel B2 of this line",
                               "It counts for this certificate",
                               "arrived wrong in this run.",
                               "serial S-1021",
                               "What is not covered",
                               "point of demarcation",
                               "beyond the serving switch",
                               "What you must know",
                               "has no power, this line is dead",
                               "12 Mill Lane",
                               "When the line fails",
                               "call 217-555-0171",
                               "circuit C-77",
                               "Issued by",
                               "Prairie Telephone Cooperative",
                               "4 North Hill",
                               "217-555-0170",
                               "What is declared here",
                               "Bright Bakery",
                               "C-77",
                               "Accepted",
                               "I have tested this line",
                               "not signed when this was issued",
                               "I have received this line",
                               "not signed when this was issued",
                               "To check this certificate",
                               content.digest(),
                               "Settings for your equipment",
                               "C-77",
                               "A-1001",
                               "issue 1",
                               "National ISDN-2",
                               "217 555 0143",
                               "217 555 0143 01 01",
                               "key in 2175550143",
                               "key in 21755501430101",
                               "End of certificate"});
        QVERIFY2(!text.contains("self-call"), "our own word");
        const int count = pages(*printed);
        for (int page = 1; page <= count; ++page)
            QVERIFY(text.contains(QString("Page %1 of %2").arg(page).arg(count)));
        QCOMPARE(text.count("Certificate " + content.number + " · code"), count);
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
        QTest::addColumn<int>("dotsPerInch");
        QTest::addColumn<int>("exceptions");
        for (const auto &[paper, name] : EnumCodes<Paper>::table)
            for (const int dotsPerInch : {150, 200, 300})
                QTest::addRow("%s at %d", name, dotsPerInch) << paper << dotsPerInch << 1;
        QTest::addRow("a larger square") << Paper::A4 << 150 << 12;
    }
    void qrCodeIsReadFromPaper()
    {
        QFETCH(Paper, paper);
        QFETCH(int, dotsPerInch);
        QFETCH(int, exceptions);
        CertificateContent content = crowded();
        const CertificateCriterion excepted = content.criteria.front();
        for (int i = 1; i < exceptions; ++i) {
            content.criteria.push_back(excepted);
            content.criteria.back().key = QString("an_excepted_criterion_%1").arg(i);
            content.criteria.back().excepted = CertificateException{"S1", "it may", {}};
        }
        const auto printed = print(content, secondCopy, paper);
        const QString picture = printed->folder.filePath("page");
        QCOMPARE(run("pdftoppm", {"-r", QString::number(dotsPerInch), "-f", "1", "-l", "1",
                                  "-singlefile", "-png", printed->path, picture})
                     .status,
                 0);
        const auto read =
            run("zbarimg", {"--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture + ".png"});
        const auto claims =
            SignedClaims::parse(read.text.split('\n').first(9).join('\n'), "square");
        QVERIFY2(claims, read.text);
        QCOMPARE(*claims, certificates::proof(content).claims);
        QCOMPARE(claims->claims.digest, content.digest());
    }

    void recordIsAttached()
    {
        const CertificateContent content = crowded();
        const auto printed = print(content, firstIssue, Paper::A4);
        const QByteArray list = run("pdfdetach", {"-list", printed->path}).text;
        for (const char *name : {"record.json", "claims.txt", "keys.txt", "head.json"})
            QVERIFY2(list.contains(name), list);
        const QString target = printed->folder.filePath("record.json");
        QCOMPARE(run("pdfdetach", {"-savefile", "record.json", "-o", target, printed->path}).status,
                 0);
        QFile file(target);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray record = file.readAll();
        QCOMPARE(record, content.record());
        QVERIFY(printed->text().contains(sha256Hex(record).toLatin1()));
        const auto read = CertificateContent::fromJson(*parseJsonObject(record, "record.json"), "");
        QVERIFY(read);
        QCOMPARE(*read, content);
    }

    void aCopyIsMarked()
    {
        const CertificateContent content = certificates::bri();
        const QByteArray first = print(content, firstIssue, Paper::A4)->text();
        const QByteArray copy = print(content, secondCopy, Paper::A4)->text();
        QVERIFY(!first.contains("Copy"));
        QVERIFY(copy.contains("Copy 2, issued on 5 May 2026"));
        QVERIFY(copy.contains("Issued on 4 March 2026")); // the certificate itself
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
                               "Accepted by Robin Sample on",
                               "until the new cable is laid.",
                               "Installer: Pat Example",
                               "Customer: Alex Customer"};
            for (const CertificateTerminal &terminal : content.terminals)
                pieces << terminal.dnGrouped << terminal.spidGrouped << terminal.spid;
            for (const CertificateCriterion &criterion : content.criteria)
                pieces << criterion.name << criterion.meaning;
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
        QVERIFY(text.count("never ends") >= 40);
    }

    /// However long the rest is: how to check it stands on one page, and no line of it alone.
    void howToCheckStaysTogether()
    {
        for (int remarks = 0; remarks < 24; remarks += 2) {
            CertificateContent content = certificates::bri();
            for (int i = 0; i < remarks; ++i)
                content.notes << QString("Remark number %1 of the path.").arg(i);
            const QString text = simplified(print(content, firstIssue, Paper::A4)->text());
            const auto begin = text.indexOf("To check this certificate"),
                       end = text.indexOf("Log of station");
            QVERIFY(begin > 0 && end > begin);
            QVERIFY2(!text.mid(begin, end - begin).contains("Page "),
                     qPrintable(QString::number(remarks)));
        }
    }

    void drawnSignaturesAreInk()
    {
        CertificateContent content = certificates::bri();
        const auto ink = [](const Sheet &sheet) {
            qint64 dark = 0;
            for (std::size_t i = 0; i < sheet.pages.size(); ++i) {
                const QImage page = sheet.image(i, 72);
                for (int y = 0; y < page.height(); ++y)
                    for (int x = 0; x < page.width(); ++x)
                        dark += qGray(page.pixel(x, y)) < 128;
            }
            return dark;
        };
        content.number.clear(); // a preview: no code, which would differ
        content.signatures = crowded().signatures;
        const qint64 signedInk = ink(certificateSheet(content, firstIssue, Paper::A4));
        for (Signature &signature : content.signatures)
            signature.strokes.clear();
        const qint64 empty = ink(certificateSheet(content, firstIssue, Paper::A4));
        QVERIFY2(signedInk > empty + 100, qPrintable(QString("%1 %2").arg(empty).arg(signedInk)));
    }

    /// With the sentence that it was signed later; the certificate itself stays as it is.
    void countersignedLater()
    {
        const CertificateContent content = certificates::bri();
        IssueMark mark = secondCopy;
        mark.countersigns = true;
        mark.later = {
            {"customer", "Alex Customer", secondCopy.issuedAt, {{{200, 700}, {900, 250}}}}};
        const QString text = simplified(print(content, mark, Paper::A4)->text({"-raw"}));
        QVERIFY(text.contains("Issue 3, signed on 5 May 2026"));
        QVERIFY(
            text.contains("Customer: Alex Customer, signed after the first issue, on 5 May 2026, "
                          "09:00 (UTC-05:00)"));
        QVERIFY(text.contains("Installer: not signed when this was issued"));
        QVERIFY(text.contains(content.digest()));
        QVERIFY(!text.contains("Copy"));
    }

    /// Each paper that a certificate can be asked to be: read back, no sentence contradicts the
    /// figures beside it, and nothing is lost.
    void papers_data()
    {
        QTest::addColumn<CertificateContent>("content");
        QTest::addColumn<QStringList>("says");
        QTest::addColumn<QStringList>("neverSays");
        namespace c = certificates;
        const auto certified = [](const OrderFields &fields, const QList<QJsonObject> &facts) {
            return c::content(c::sources(fields, facts));
        };

        QList<QJsonObject> facts = jobs::briFacts();
        OrderFields fields = jobs::briFields();
        fields["customer"] = QString::fromUtf8("مخبز النور");
        fields["premises"] = QString::fromUtf8("شارع الطاحونة 12");
        QTest::newRow("Arabic names") << certified(fields, facts) << QStringList{} << QStringList{};

        fields = jobs::briFields();
        CertificateContent content = certified(fields, facts);
        content.outcome = OrderOutcome::AcceptedWithException;
        int excepted = 0;
        for (CertificateCriterion &criterion : content.criteria)
            if (criterion.key != u"safety" && criterion.outcome == CriterionOutcome::Met &&
                excepted++ < 7) {
                criterion.outcome =
                    excepted % 2 ? CriterionOutcome::NotMet : CriterionOutcome::Missing;
                const PlainWords &words = findCriterion(criterion.key)->words;
                criterion.meaning = QString::fromUtf8(excepted % 2 ? words.failed : words.notShown);
                criterion.excepted = CertificateException{
                    "Robin Sample",
                    excepted < 4 ? "The spare pair is out of order until the new cable is laid."
                                 : "The office will mend the translation tonight.",
                    content.issuedAt};
            }
        QTest::newRow("seven exceptions")
            << content
            << QStringList{"Exceptions", "The spare pair is out of order", "The office will mend",
                           "and I know the exceptions"}
            << QStringList{"is met.", "at most one bit in 19 million arrives wrong"};

        facts = jobs::briFacts();
        facts.removeLast();
        facts.removeLast();
        for (int i = 0; i < 39; ++i) {
            const int at = 32 + 20 * i;
            facts << jobs::detector(100 + 3 * i, at) << jobs::run(101 + 3 * i, at + 1, 900, 120)
                  << jobs::fact(102 + 3 * i, "cleared", at + 18,
                                {{"what", "wiring"}, {"text", "joint remade"}});
        }
        facts << jobs::detector(300, 32 + 20 * 39) << jobs::run(301, 33 + 20 * 39);
        QTest::newRow("forty runs") << certified(jobs::briFields(), facts)
                                    << QStringList{"40 runs were made, 39 of them failed.",
                                                   "Failed: 900 bit errors where 5 are the most",
                                                   "It counts for this certificate"}
                                    << QStringList{};

        facts = jobs::briFacts();
        facts.removeLast();
        facts.removeLast();
        QJsonObject bad = jobs::run(101, 33, 0, 0);
        QJsonArray seconds;
        for (int i = 0; i < 900; ++i)
            seconds << (i < 300 ? QJsonValue(20000) : i < 600 ? QJsonValue() : QJsonValue(0));
        for (const char *key :
             {"bit_errors", "errored_seconds", "severely_errored_seconds", "sync_losses"})
            bad.remove(key);
        bad["seconds"] = seconds;
        bad["slips"] = 4;
        facts << jobs::detector(100, 32) << bad
              << jobs::fact(102, "cleared", 50, {{"what", "pair"}, {"text", "pair changed back"}})
              << jobs::detector(103, 52) << jobs::run(104, 53);
        QTest::newRow("a wholly bad run")
            << certified(jobs::briFields(), facts)
            << QStringList{"2 runs were made, 1 of them failed.", "600 unavailable seconds",
                           "1 loss of synchronisation", "4 slips",
                           "Failed: 6,000,000 bit errors where 5 are the most"}
            << QStringList{};

        facts = jobs::briFacts();
        QJsonObject card = jobs::safety(90, -20 + 21, 214);
        facts.prepend(jobs::fact(91, "hazard_closed", 2,
                                 {{"hazard", jobs::uuid(90)},
                                  {"source", "power"},
                                  {"by", "Lee of the power company"},
                                  {"reference", "PU-7"}}));
        facts.prepend(card);
        QTest::newRow("a hazard that was closed")
            << certified(jobs::briFields(), facts)
            << QStringList{"Dangerous voltage",
                           "214 V AC, tip to ground",
                           "contact with the power lines",
                           "Lee of the power company",
                           "reference PU-7",
                           "No reading was above the stop limits on 4 March 2026"}
            << QStringList{"checked for dangerous voltage before any work; no reading"};

        QTest::newRow("an analog line") << certified(jobs::analogFields(), jobs::analogFacts())
                                        << QStringList{"31.5 mA", "good from 23 mA", "as read",
                                                       "the jack or terminal where the line ends"}
                                        << QStringList{"run was made", "NT", "Error test"};

        facts = jobs::analogFacts();
        facts[4] = jobs::analog(5, 12, "noise", 24, "dBrnC");
        facts[5] = jobs::analog(6, 13, "power_influence", 84, "dBrnC");
        QTest::newRow("a noisy analog line")
            << certified(jobs::analogFields(), facts)
            << QStringList{"24 dBrnC", "marginal", "met, near the limit",
                           "A little noise can be heard while nobody speaks.", "of those met"}
            << QStringList{"The line is quiet"};

        fields = jobs::briFields();
        fields["b1_services"] = fields["b2_services"] = "voice";
        fields["dn_1_services"] = fields["dn_2_services"] = "voice";
        facts = jobs::briFacts().first(9);
        facts << jobs::call(10, 22, "B1", "out", "voice", "2175550143")
              << jobs::call(11, 23, "B1", "in", "voice", "2175550143")
              << jobs::call(12, 24, "B2", "out", "voice", "2175550144")
              << jobs::call(13, 25, "B2", "in", "voice", "2175550144");
        QTest::newRow("a voice-only line") << certified(fields, facts)
                                           << QStringList{"Detector check, Error-rate run: The "
                                                          "line carries no circuit-switched data."}
                                           << QStringList{"run was made", "Data rate", "bit in"};

        fields = jobs::briFields();
        fields["protocol_variant"] = "dss1-p2p";
        fields["line"] = "point_to_point";
        fields["dn_1"] = "+49 30 23125 0";
        fields["dn_2"] = "";
        fields["spid_1"] = fields["spid_2"] = "";
        fields["tei_1"] = "0";
        fields["tei_2"] = "";
        fields["head_number"] = "+49 30 23125 0";
        fields["number_range"] = "00-49";
        content = certificates::bri();
        content.settings = terminalSettings(jobs::order(fields));
        content.terminals = terminalLines(jobs::order(fields));
        content.variantName = findVariant(u"dss1-p2p")->name;
        QTest::newRow("point-to-point with a number range")
            << content
            << QStringList{"Line point-to-point", "TEI fixed, 0", "Head number +49 30231250",
                           "Number range 00-49"}
            << QStringList{"multipoint or", "automatic; fixed"};

        content = certificates::bri();
        content.replaces = CertificateReplaced{
            "26-K7M4QP-00041-20",
            content.issuedAt,
            {"evidence was struck out: wrong pair was measured", "new evidence for: Loop"}};
        QTest::newRow("a replacement")
            << content
            << QStringList{"It takes the place of certificate 26-K7M4QP-00041-20, issued on 4 "
                           "March "
                           "2026, 15:20 (UTC-06:00), because: evidence was struck out: wrong pair "
                           "was measured; new evidence for: Loop."}
            << QStringList{};

        content = certificates::bri();
        content.issuer = {};
        content.call = {{}, {}, "circuit C-77"};
        QTest::newRow("no issuer, no telephone")
            << content
            << QStringList{"Call the issuer of this certificate, and name circuit C-77.",
                           "The records do not say who issues this certificate."}
            << QStringList{"call ,"};
    }
    void papers()
    {
        QFETCH(CertificateContent, content);
        QFETCH(QStringList, says);
        QFETCH(QStringList, neverSays);
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const auto printed = print(content, firstIssue, paper);
            const QString text = simplified(printed->text({"-raw"}));
            for (const QString &piece : says)
                QVERIFY2(text.contains(piece), qPrintable(piece + " in " + text));
            for (const QString &piece : neverSays)
                QVERIFY2(!text.contains(piece), qPrintable(piece + " in " + text));
            agrees(content, text);
            if (QTest::currentTestFailed())
                return;
        }
    }

    /// A character that no font has is named with the package that would help, and nothing is made.
    void charactersWithoutAFont()
    {
        CertificateContent content = certificates::bri();
        content.customer = QString::fromUcs4(U"\U00012000") + " Bakery";
        auto refused = certificatePaper(content, firstIssue, Paper::A4);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("U+12000") &&
                     refused.error().message.contains("fonts-noto-core"),
                 qPrintable(refused.error().message));
        // With a font for it, it is printed; without, refused: never a box.
        content.customer = QString::fromUtf8("東京ベーカリー");
        const auto chinese = certificatePaper(content, firstIssue, Paper::A4);
        if (missingCharacters(content.customer).isEmpty()) {
            QVERIFY(chinese);
            papers::keep(chinese->pdf, "certificate-cjk");
            QVERIFY(papers::textOfPdf(chinese->pdf).contains(content.customer));
        } else {
            QVERIFY(!chinese);
            QVERIFY2(chinese.error().message.contains("fonts-noto-cjk"),
                     qPrintable(chinese.error().message));
        }
    }

    void noTestLineInAnyPartOfTheFile()
    {
        const QString number = "217-555-0199";
        CertificateSources sources = certificates::sources(jobs::briFields(), jobs::briFacts());
        sources.decision.notes.push_back(Text::verbatim("through " + number));
        sources.decision.criteria.front().reason += "2175550199";
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
        const QByteArray before = certificates::proof(content).claims.text();
        content.criteria.front().measured = "something else";
        QVERIFY(certificates::proof(content).claims.text() != before);
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

QTEST_MAIN(CertificateDocumentTest)
#include "CertificateDocumentTest.moc"
