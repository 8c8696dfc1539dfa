// Papers in the language of the window: each text of theirs is in the catalogue, and what people
// typed, the number and the digest are as they are in English.

#include "app/desktop/Language.h"
#include "app/print/CertificateDocument.h"
#include "app/print/CoverSheet.h"
#include "app/print/HandoffDocument.h"
#include "app/print/PaperLanguage.h"
#include "app/print/ReportDocument.h"
#include "app/print/WorkSheets.h"
#include "tests/support/Bracketed.h"
#include "tests/support/Handoffs.h"
#include "tests/support/PaperSamples.h"
#include "tests/support/WindowTexts.h"

using namespace loopwright;

namespace {

const IssueMark firstIssue{0, certificates::moment("2026-03-04T15:20:00-06:00")};

/// Names and addresses of the examples, what was typed, units, names of protocols, digests.
QString withoutNames(QString text)
{
    static const QRegularExpression names(
        "“[^”]*”|Bright Bakery|(\\d+ )?Mill Lane|Quiet Cafe|(\\d+ )?Quay Street|North "
        "(Hill|Street)|"
        "Pat Example|Robin Sample|Alex Customer|Kim Carver|Prairie[\\w ]*|basic-rate test set|"
        "two people, bucket truck|Ring at the back door|Bring the long ladder|Lee of the power "
        "company|\\b(SPIDs?|TEIs?|BER|UTC|National ISDN|ISDN|DSS|ETSI|dBrnC|[kM]?ohm|kHz|kbit|Mill "
        "Lane|switch desk)\\b|"
        "[-0-9]+ and|\\b[0-9a-f]{4,}\\b|\\b\\d\\d-[0-9A-Z]{6}-\\d+-\\d+\\b|SHA|Hawaii Adm\\. "
        "Rules|(S\\.C|Ill|Adm)"
        "\\.|Code Regs?|Regs|Rules|Adm|NT|wrong pair was measured|Illinois");
    return text.remove(names);
}

QStringList englishLeft(const doc::Document &english)
{
    QStringList left;
    doc::Document document = english;
    eachText(document, [&](QString &text) {
        static const QRegularExpression word("[A-Za-z]{3,}");
        const QString said = onPaper(text, english.typed);
        if (word.match(withoutNames(outsideOfBrackets(said))).hasMatch())
            left << text + "  →  " + said;
    });
    return left;
}

doc::Document certificate(const CertificateContent &content)
{
    return certificateDocument(content, firstIssue, Paper::A4);
}

CertificateContent excepted()
{
    CertificateContent content = certificates::bri();
    content.outcome = OrderOutcome::AcceptedWithException;
    content.criteria[1].outcome = CriterionOutcome::NotMet;
    content.criteria[1].excepted =
        CertificateException{"Robin Sample", "The spare pair is out of order.", content.issuedAt};
    content.replaces = CertificateReplaced{"26-K7M4QP-00041-20",
                                           content.issuedAt,
                                           {"the premises were changed", "a further run was made"}};
    content.signatures = {
        {"installer", "Pat Example", content.issuedAt, {{{200, 700}, {900, 250}}}}};
    return content;
}

CertificateSources hazardous()
{
    QList<QJsonObject> facts = jobs::briFacts().first(2);
    facts << jobs::safety(50, 300, 214);
    return certificates::sources(jobs::briFields(), facts);
}

LeaveBehindSlip leftBehind(const CertificateSources &sources)
{
    auto slip = leaveBehindSlip(sources, NumberGuard());
    if (!slip)
        qFatal("%s", qPrintable(slip.error().text()));
    return *slip;
}

CloseOutSlip closedOut()
{
    auto slip =
        closeOutSlip(certificates::sources(jobs::briFields(), jobs::briFacts()), NumberGuard());
    if (!slip)
        qFatal("%s", qPrintable(slip.error().text()));
    return *slip;
}

doc::Document firstVisits()
{
    ReportContent report;
    report.picture = {"Accepted at the first visit by month",
                      "3 of 4 orders were accepted at the first visit (75.5 %)",
                      {{"2026-03", "75.5 %", 1}, {"2026-04", "12,345", 0.5}},
                      true};
    report.columns = {{"Month"}, {"Share", true}};
    report.rows = {{"2026-03", "75.5 %"}, {"2026-04", "12,345"}};
    report.made = papers::today;
    return reportDocument(report);
}

doc::Document jobsOfADay()
{
    DayJob job = papers::dayJob(1);
    job.circuit = "C-77";
    job.service = "voice, data at 64 kbit/s";
    job.hazards = {"HAZARD open on this pair: 72 V AC, tip to ground; see its handoff first."};
    job.due = QDate(2026, 3, 1);
    job.next = "Make the safety card before the pair is touched.";
    DayJob paper = job;
    paper.needsVisit = false;
    return dayList("Pat Example", papers::today, {job, paper});
}

} // namespace

class GermanPapersTest : public QObject
{
    Q_OBJECT

private slots:
    void cleanup() { speakBy({}); }

    void everyTextIsInTheCatalogue_data()
    {
        QTest::addColumn<doc::Document>("paper");
        QTest::newRow("certificate, ISDN") << certificate(certificates::bri());
        QTest::newRow("certificate, analog") << certificate(certificates::analog());
        QTest::newRow("certificate with an exception") << certificate(excepted());
        QTest::newRow("settings") << settingsCard(papers::card());
        QTest::newRow("day list") << jobsOfADay();
        QTest::newRow("day without a job") << dayList({}, papers::today, {});
        QTest::newRow("left behind") << leaveBehindDocument(
            leftBehind(certificates::sources(jobs::briFields(), jobs::briFacts().first(3))));
        QTest::newRow("left behind at a hazard") << leaveBehindDocument(leftBehind(hazardous()));
        QTest::newRow("close-out") << closeOutDocument(closedOut());
    }
    void everyTextIsInTheCatalogue()
    {
        QFETCH(doc::Document, paper);
        speak("de"); // the resource is there from now on
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
        const QStringList left = englishLeft(paper);
        QVERIFY2(left.isEmpty(), qPrintable("\n" + left.join('\n')));
    }

    void everyFigureHasTheComma_data()
    {
        everyTextIsInTheCatalogue_data();
        QTest::newRow("report") << firstVisits();
    }
    /// As it is painted, pictures too.
    void everyFigureHasTheComma()
    {
        QFETCH(doc::Document, paper);
        speak("de");
        const Sheet sheet = doc::layOut(paper, Paper::A4);
        const QString text = papers::textOf(sheet);
        QVERIFY(!text.isEmpty());
        const QStringList left = englishFigures(text);
        QVERIFY2(left.isEmpty(), qPrintable(left.join(u' ') + "\n" + text));
    }
    void keysOfAReportStay()
    {
        ReportContent report;
        report.picture = {"Instruments by day of calibration", "1 of 2 is overdue", {}, false};
        ReportContent::Column key{"Instrument"}, share{"Share", true};
        key.typed = true;
        report.columns = {key, share};
        report.rows = {{"12.345", "75.5 %"}, {"17,204", "24.5 %"}};
        report.made = papers::today;
        speak("de");
        const QString text = papers::textOf(doc::layOut(reportDocument(report), Paper::A4));
        for (const char *shown : {"12.345", "17,204", "75,5 %"})
            QVERIFY2(text.contains(QLatin1StringView(shown)), qPrintable(text));
    }
    void figuresAreOnTheCertificate()
    {
        speak("de");
        const auto paper = certificatePaper(certificates::bri(), firstIssue, Paper::A4);
        QVERIFY(paper);
        const QString text = papers::textOfPdf(paper->pdf);
        QVERIFY(text.contains("28,4 dB"));
        QVERIFY(!text.contains("28.4 dB"));
        speak("en");
        const auto english = certificatePaper(certificates::bri(), firstIssue, Paper::A4);
        QVERIFY(english);
        QVERIFY(papers::textOfPdf(english->pdf).contains("28.4 dB"));
    }

    /// A sheet keeps its lines, so a text may be cut at the end of one.
    void handoffAndCover()
    {
        speak("de");
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
        const QList<QJsonObject> facts = papers::factsOfATerminalThatIsDown()
                                         << jobs::safety(50, 300, 214);
        const Sheet sheets[] = {
            handoffPage(jobs::handoffOf(jobs::briFields(), facts, certificates::issuer()),
                        Paper::A4),
            coverSheet(papers::cover(), Paper::A4)};
        static const QRegularExpression word("[A-Za-z]{3,}[^⟦]*");
        for (const Sheet &sheet : sheets) {
            const auto match = word.match(withoutNames(outsideOfBrackets(sheet.texts.join(u' '))));
            QVERIFY2(!match.hasMatch(), qPrintable(match.captured()));
            const QStringList english =
                englishFigures(sheet.texts.join(u' ').remove(QRegularExpression("[⟦⟧]")));
            QVERIFY2(english.isEmpty(), qPrintable(english.join(u' ')));
        }
    }

    void theCertificateIsTheSameInGerman()
    {
        const CertificateContent content = excepted();
        const auto english = certificatePaper(content, firstIssue, Paper::A4);
        QVERIFY(english);
        speak("de");
        const auto german = certificatePaper(content, firstIssue, Paper::A4);
        QVERIFY(german);
        QCOMPARE(readPdf(german->pdf).attachment("record.json"),
                 readPdf(english->pdf).attachment("record.json"));
        QVERIFY(german->pdf.contains("/Lang"));
        papers::keep(german->pdf, "German certificate");
        const QString text = papers::textOfPdf(german->pdf);
        VERIFY_IN_ORDER(text,
                        {"Zertifikat des Anschlusses", content.number, "Mit Ausnahme abgenommen",
                         "Ergebnisse", "Anschlussleitung", "The spare pair is out of order.",
                         "Der Datensatz dieses Zertifikats ist englisch, und er gilt",
                         "Einstellungen für Ihr Gerät"});
        QVERIFY(QString(text).replace(QChar::Nbsp, u' ').contains("4. März 2026"));
        QVERIFY(text.contains("Seite 1 von"));
        QVERIFY(text.contains(content.digest().left(20)));
        QVERIFY(!papers::textOfPdf(english->pdf).contains("The record of this certificate is in"));
    }

    /// A name that reads like a phrase of the program is a name.
    void whatWasTypedStays()
    {
        speak("de");
        CertificateContent content = certificates::bri();
        content.customer = "Customer";
        content.contact = "not met";
        content.installers = {"Serving office"};
        const auto paper = certificatePaper(content, firstIssue, Paper::A4);
        QVERIFY(paper);
        const QString text = papers::textOfPdf(paper->pdf);
        VERIFY_IN_ORDER(text, {"Customer", "Kontakt not met", "Serving office"});
    }
};

QTEST_MAIN(GermanPapersTest)
#include "GermanPapersTest.moc"
