#include "app/print/WorkSheets.h"

#include "app/print/PdfFile.h"
#include "tests/support/Certificates.h"

#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

namespace {

QString textOf(const Sheet &sheet)
{
    PdfInfo info;
    info.title = sheet.title;
    const auto pdf = sheetPdf(sheet, info);
    if (!pdf)
        qFatal("%s", qPrintable(pdf.error().text()));
    QTemporaryDir folder;
    QFile file(folder.filePath("sheet.pdf"));
    if (!file.open(QIODevice::WriteOnly) || file.write(*pdf) != pdf->size())
        qFatal("the temporary folder cannot be written");
    file.close();
    return QString::fromUtf8(certificates::run("pdftotext", {"-layout", file.fileName(), "-"}).text)
        .simplified();
}

DayJob dayJob(int number)
{
    DayJob job;
    job.appointment = "09:00-11:00";
    job.order = QString("A-%1").arg(number);
    job.customer = "Bright Bakery";
    job.premises = "12 Mill Lane";
    job.circuit = "C-77";
    job.accessNotes = "Ring at the back door.";
    job.line = jobLine({}, stageAt(Station::Identifiers));
    job.next = "Next: make the safety card.";
    return job;
}

} // namespace

class WorkSheetsTest : public QObject
{
    Q_OBJECT

private slots:
    void settingsCardHasEveryNumber()
    {
        const ServiceOrder order = jobs::order(jobs::briFields());
        for (const auto &[paper, name] : EnumCodes<Paper>::table) {
            const QString text = textOf(settingsCard(order, "North Hill", paper));
            for (const char *piece : {"National ISDN-2", "217 555 0143", "217 555 0144 01 01",
                                      "21755501440101", "Bright Bakery", "C-77", "North Hill"})
                QVERIFY2(text.contains(piece), qPrintable(QString(piece) + " in " + text));
        }
    }

    void dayListHoldsEveryJobWhole()
    {
        std::vector<DayJob> list;
        for (int i = 100; i < 120; ++i)
            list.push_back(dayJob(i));
        const Sheet sheet = dayList("Pat Example", QDate(2026, 3, 4), list, Paper::Letter);
        QVERIFY(sheet.pages.size() > 4);
        const QString text = textOf(sheet);
        qsizetype from = 0;
        for (const DayJob &job : list) {
            const qsizetype at = text.indexOf(job.order, from);
            QVERIFY2(at >= 0, qPrintable(job.order));
            from = at;
        }
        QCOMPARE(text.count("Next: make the safety card."), 20);
        QVERIFY(text.contains("Jobs of 4 March 2026"));
        QVERIFY(text.contains("Pat Example, 20 jobs"));
    }

    void anEmptyDay()
    {
        const QString text = textOf(dayList({}, QDate(2026, 3, 4), {}, Paper::A4));
        QVERIFY(text.contains("No job is due on this day."));
        QVERIFY(text.contains("0 jobs"));
    }

    void handoffIsReadFromTheTop()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[8] = jobs::fact(9, "layer", 20,
                              {{"layer", 3}, {"terminal", 2}, {"outcome", "down"}, {"cause", 100}});
        const DecisionInput input = jobs::input(jobs::briFields(), facts);
        const auto handoff = makeHandoff(input, decide(input, jobs::limits()), {}, "North Hill");
        QVERIFY(handoff);
        const QString text = textOf(handoffPage(*handoff, Paper::A4));
        qsizetype from = 0;
        for (const char *piece :
             {"Handoff", "Order A-1001 is not accepted", "What failed Layer 3, terminal 2",
              "Cause 100, ", "Whose part terminal equipment", "Call whoever supplied", "Reason",
              "Check first The SPID in the terminal", "Circuit C-77", "Readings",
              "28.4 dB measured", "Last entry 2026-03-04 08:47 by K7"}) {
            const qsizetype at = text.indexOf(QLatin1StringView(piece), from);
            QVERIFY2(at >= 0, qPrintable(QString(piece) + " in " + text));
            from = at;
        }
    }

    void aLongHandoffGoesOn()
    {
        Handoff handoff;
        handoff.order = "A-1";
        handoff.failed = "Loop";
        for (int i = 0; i < 120; ++i)
            handoff.done << QString("Step %1 of the search.").arg(i);
        const Sheet sheet = handoffPage(handoff, Paper::Letter);
        QVERIFY(sheet.pages.size() > 1);
        QVERIFY(textOf(sheet).contains("Step 119 of the search."));
        QVERIFY(textOf(sheet).contains("Nothing was recorded yet"));
    }
};

QTEST_MAIN(WorkSheetsTest)
#include "WorkSheetsTest.moc"
