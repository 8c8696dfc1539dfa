#include "app/print/HandoffDocument.h"

#include "tests/support/Handoffs.h"
#include "tests/support/PaperSamples.h"

using namespace loopwright;

namespace {

Handoff handoffOf(const OrderFields &fields, const QList<QJsonObject> &facts)
{
    return jobs::handoffOf(fields, facts, certificates::issuer());
}

} // namespace

class HandoffDocumentTest : public QObject
{
    Q_OBJECT

private slots:
    void isReadFromTheTop()
    {
        const QList<QJsonObject> facts = papers::factsOfATerminalThatIsDown();
        const QString text =
            papers::textOf(handoffPage(handoffOf(jobs::briFields(), facts), Paper::A4));
        VERIFY_IN_ORDER(text, {"Handoff",
                               "Order A-1001 is not accepted",
                               "What failed",
                               "Layer 3, terminal 2",
                               "Cause",
                               "100, ",
                               "from the serving switch",
                               "Whose part",
                               "terminal equipment",
                               "Call",
                               "whoever supplied",
                               "What was seen",
                               "Check first",
                               "The SPID in the terminal",
                               "Handed on to",
                               "switch desk",
                               "Their reference",
                               "S-9",
                               "It waits for",
                               "office",
                               "Handed on by",
                               "Pat Example",
                               "When",
                               "4 March 2026, 09:00 (UTC-06:00)",
                               "Circuit",
                               "C-77",
                               "Layers",
                               "layer 3, terminal 2",
                               "down",
                               "Readings",
                               "28.4 dB measured",
                               "Last entry 4 March 2026, 09:00 (UTC-06:00) by Pat Example"});
    }

    void theHazardIsTheBiggestThing()
    {
        QJsonObject card = jobs::safety(1, 5, 214);
        card["place"] = "terminal 4";
        card["wet"] = true;
        const Handoff handoff = handoffOf(jobs::briFields(), {card});
        const Sheet sheet = handoffPage(handoff, Paper::Letter);
        const QString text = papers::textOf(sheet);
        VERIFY_IN_ORDER(text, {"HAZARD: do not touch the pair",
                               "214 V AC, tip to ground (stop above "
                               "25 V)",
                               "Where", "terminal 4, wet", "Pair", "17-204", "Read",
                               "4 March 2026, 08:05 (UTC-06:00), by Pat Example",
                               "Nobody has said yet that it is closed.", "Who was told",
                               "Who was kept away", "What failed"});
        // The largest letters of the page are the alarm's: found by the height of its words.
        const QByteArray boxes = [&] {
            QTemporaryDir folder;
            QFile file(folder.filePath("a.pdf"));
            PdfInfo info;
            info.title = "a";
            if (!file.open(QIODevice::WriteOnly) || file.write(*sheetPdf(sheet, info)) < 0)
                qFatal("the temporary folder cannot be written");
            file.close();
            return certificates::run("pdftotext", {"-bbox", "-l", "1", file.fileName(), "-"}).text;
        }();
        static const QRegularExpression word(
            R"re(yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">([^<]*)<)re");
        QString largest;
        double most = 0;
        auto words = word.globalMatch(QString::fromUtf8(boxes));
        while (words.hasNext()) {
            const auto match = words.next();
            const double height = match.captured(2).toDouble() - match.captured(1).toDouble();
            if (height > most + 0.01) {
                most = height;
                largest = match.captured(3);
            }
        }
        QCOMPARE(largest, "HAZARD:");
    }

    void whoWasToldOfAHazardStandsInItsBox()
    {
        const QJsonObject told = jobs::fact(
            2, "referred", 9,
            {{"to", "power company"}, {"reference", "P-7"}, {"waiting_on", "power_utility"}});
        const QJsonObject later = jobs::fact(3, "referred", 12, {{"to", "cable desk"}});
        const Handoff handoff =
            handoffOf(jobs::briFields(), {jobs::safety(1, 5, 214), told, later});
        const QString text = papers::textOf(handoffPage(handoff, Paper::A4));
        VERIFY_IN_ORDER(text,
                        {"Who was told", "power company", "Their reference", "P-7", "Who told them",
                         "Pat Example", "Who was kept away", "Handed on to", "cable desk"});
    }

    void whatFailedAndWhatWasOnlyNotTried()
    {
        QList<QJsonObject> facts = jobs::briFacts().first(8);
        facts[2] = jobs::fact(
            3, "loop", 10, {{"dc_resistance_ohm", 1700}, {"loss_db", 51}, {"frequency_hz", 40000}});
        facts << jobs::fact(9, "layer", 20, {{"layer", 3}, {"terminal", 2}, {"outcome", "down"}});
        const Handoff handoff = handoffOf(jobs::briFields(), facts);
        QCOMPARE(handoff.criterion, "loop");
        const QString text = papers::textOf(handoffPage(handoff, Paper::A4));
        VERIFY_IN_ORDER(text, {"What failed", "Loop", "outside plant repair", "217-555-0172",
                               "Failed too", "Layer 3:", "Only not tried yet",
                               "Calls:", "Error-rate run:", "Handed on"});
    }

    void nothingOpenIsNoRefusal()
    {
        const QString text =
            papers::textOf(handoffPage(handoffOf(jobs::briFields(), jobs::briFacts()), Paper::A4));
        QVERIFY(text.contains("By these records nothing is open on this order."));
        QVERIFY(!text.contains("not accepted"));
    }

    /// It is never refused: what cannot be printed stands as its number.
    void charactersWithoutAFont()
    {
        Handoff handoff = handoffOf(jobs::briFields(), jobs::briFacts().first(3));
        handoff.customer = QString::fromUcs4(U"\U00012000") + " Bakery";
        const Sheet sheet = handoffPage(handoff, Paper::A4);
        QVERIFY(checkCharacters(sheet));
        const QString text = papers::textOf(sheet);
        QVERIFY(text.contains("[U+12000] Bakery"));
        QVERIFY(text.contains("the Debian package fonts-noto-core has them."));
    }

    void aLongHandoffGoesOn()
    {
        Handoff handoff;
        handoff.order = "A-1";
        handoff.criterion = "loop";
        handoff.failed = "Loop";
        for (int i = 0; i < 120; ++i)
            handoff.done << QString("Step %1 of the search.").arg(i);
        const Sheet sheet = handoffPage(handoff, Paper::Letter);
        QVERIFY(sheet.pages.size() > 1);
        QVERIFY(papers::textOf(sheet).contains("Step 119 of the search."));
        QVERIFY(papers::textOf(sheet).contains("Nothing was recorded yet"));
        QVERIFY(papers::textOf(sheet).contains("End of handoff"));
    }
};

QTEST_MAIN(HandoffDocumentTest)
#include "HandoffDocumentTest.moc"
