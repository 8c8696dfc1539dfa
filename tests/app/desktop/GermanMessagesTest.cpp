// Errors, findings and sentences of the actions in the language of the window. That each has a
// translation is the test `language`; here each is read backwards, and none for another.

#include "app/actions/Acceptance.h"
#include "app/actions/BulkChange.h"
#include "app/actions/Certificates.h"
#include "app/actions/Circuits.h"
#include "app/actions/HazardRegister.h"
#include "app/actions/InFile.h"
#include "app/actions/LimitSets.h"
#include "app/actions/Maintenance.h"
#include "app/actions/OrderPapers.h"
#include "app/actions/Orders.h"
#include "app/actions/Plans.h"
#include "app/actions/Register.h"
#include "app/actions/SparePairs.h"
#include "app/actions/Troubles.h"
#include "app/desktop/Language.h"
#include "app/desktop/OpenErrorPage.h"
#include "app/desktop/UndoNotice.h"
#include "app/desktop/screens/HandoffScreen.h"
#include "app/desktop/widgets/SignLine.h"
#include "tests/support/Bracketed.h"
#include "tests/support/DeskWindow.h"

#include <QLabel>
#include <QTextBrowser>
#include <QXmlStreamReader>

using namespace loopwright;

namespace {

struct Translated
{
    QString source;
    QStringList said; ///< the forms of a plural
};

std::vector<Translated> catalogue()
{
    std::vector<Translated> all;
    QFile file(":/language/de.ts");
    if (!file.open(QIODevice::ReadOnly))
        return all;
    bool counts = false;
    QXmlStreamReader reader(&file);
    while (!reader.atEnd()) {
        if (!reader.readNextStartElement())
            continue;
        if (reader.name() == u"source")
            all.push_back({reader.readElementText(), {}});
        else if (reader.name() == u"numerusform")
            all.back().said << reader.readElementText();
        else if (reader.name() == u"message")
            counts = reader.attributes().hasAttribute("numerus");
        else if (reader.name() == u"translation" && !counts)
            all.back().said << reader.readElementText();
    }
    return all;
}

/// Values that are the same in each language.
QString filled(QString text)
{
    text.replace("%n", "3");
    for (int i = 1; i < 10; ++i)
        text.replace(QString("%%1").arg(i), QString("70%1").arg(i));
    return text;
}

/// By fewer letters of its own nothing is known as a whole, but by its parts: "%1: %2", "by %1".
bool isReadWhole(QString source)
{
    static const QRegularExpression place("%(\\d|n)"), letter("[A-Za-z]");
    return source.contains(place) && source.remove(place).count(letter) >= 10;
}

const QByteArray hazardJson =
    R"({"order":"O-1003","installer":"okafor","instrument":"TS-1","facts":[
        {"kind":"visit","at":"2026-03-04T08:00:00-06:00","arrived":"2026-03-04T08:00:00-06:00","left":"2026-03-04T09:00:00-06:00",
         "result":"no_access"},
        {"id":"00000000-0000-4000-8000-000000000011","kind":"safety",
         "at":"2026-03-04T08:30:00-06:00","office_connected":true,
         "ac_v":{"tip_ground":214,"ring_ground":0.1,"tip_ring":0.1},
         "dc_v":{"tip_ground":0.1,"ring_ground":50.2,"tip_ring":50.1},
         "confirmed":["foreign_voltage","bonding_ground","storm","work_position"]},
        {"kind":"hazard_closed","at":"2026-03-04T08:50:00-06:00",
         "hazard":"00000000-0000-4000-8000-000000000011","source":"power",
         "by":"K. Watt","reference":"R-7"}]})";

template<class T>
Error errorOf(const Result<T> &result)
{
    return result ? Error{ErrorCode::Usage, "nothing was refused", {}} : result.error();
}

/// Names, keys and numbers of the records, and what was typed.
QString withoutTyped(QString text)
{
    static const QRegularExpression typed("„⟧[^⟦]*⟦“|"
                                          "[-\\w/.]*\\.(csv|json|sqlite|txt)|/\\S+|"
                                          "([a-z_]+, )*[a-z]+_[a-z_]+(, [a-z_]+)*|(S\\. Lind|N\\. "
                                          "Okafor|K\\. Watt)|\\b[A-Z]-[A-Z]?\\d+|\\b(SPID|UTC)\\b");
    return text.remove(typed);
}

/// The texts of a widget and all in it.
QString textsOf(const QWidget &widget)
{
    QStringList texts;
    for (const QWidget *each : widget.findChildren<QWidget *>()) {
        texts << each->accessibleName() << each->accessibleDescription();
        if (const auto *label = qobject_cast<const QLabel *>(each))
            texts << label->text();
    }
    return texts.join('\n');
}

} // namespace

class GermanMessagesTest : public QObject, DeskWindow
{
    Q_OBJECT

private:
    /// What the actions refuse, each by its own way.
    std::vector<Error> refusals()
    {
        Records &records = m_records->records();
        const QString text = m_records->file("plain.txt", "no database at all");
        const auto csv = [&](const QByteArray &bytes) {
            return errorOf(importOrders(records, bytes, {.fileName = "orders.csv"}));
        };
        const auto record = [&](const QByteArray &json) {
            return errorOf(recordFile(records, json, "job.json"));
        };
        return {errorOf(showOrder(records, "nope")),
                errorOf(completeOrder(records, "O-1002")),
                errorOf(cancelOrder(records, "O-1002", " ")),
                errorOf(decideAgain(records, "nope")),
                errorOf(acceptWithException(records, "O-1002", {"safety"}, "because")),
                errorOf(acceptWithException(records, "O-1002", {"odd"}, "because")),
                errorOf(acceptWithException(records, "O-1002", {"run"}, {})),
                errorOf(issueCertificate(records, {"O-1002", Paper::A4})),
                errorOf(showCircuit(records, "C-50")),
                errorOf(showCircuit(records, "elsewhere")),
                errorOf(limitSet(records, "2099")),
                errorOf(registeredPerson(records, "nobody")),
                errorOf(sparePairs(records, "nope")),
                errorOf(resumeOrders(records, {"O-1002"})),
                errorOf(holdOrders(records, {"O-1002"}, WaitingOn::Customer, {})),
                errorOf(assignOrders(records, {{"O-1002"}, "nobody"})),
                errorOf(changePlans(records, {{"O-1002", {{"odd", "x"}}}})),
                errorOf(changePlans(records, {{"O-1002", {{"due_date", "soon"}}}})),
                errorOf(changePlans(records, {{"O-1002", {{"order_number", "x"}}}})),
                errorOf(openTrouble(records, {"C-999", "no tone"})),
                errorOf(openTrouble(records, {"C-501", "no tone"})),
                errorOf(closeTrouble(records, {"O-1002", "a break", "joint re-made"})),
                errorOf(papersOf(records, {{"O-1002", "O-1003"}, OrderPaper::Certificates})),
                errorOf(undoBulk(records)),
                errorOf(previewBulk(records, {OfficeChangeKind::AreaCode, "NORTH", "217", "911"})),
                errorOf(backupTo(records, m_records->path())),
                errorOf(backupTo(records, text)),
                errorOf(fillWithInvented(records, 10, 1)),
                errorOf(readFile(m_records->path("missing.csv"), 100)),
                errorOf(readFile(QFileInfo(text).absolutePath(), 100)),
                errorOf(Records::open(text)),
                errorOf(Records::open(QFileInfo(text).absolutePath())),
                errorOf(Records::open(m_records->file("cut.sqlite", {}))),
                csv({}),
                csv("\xff\xfe"),
                csv("order_number,odd\n"),
                csv("order_number,order_number\n"),
                csv("customer\n"),
                record("{"),
                record("[]"),
                record(R"({"order":"O-1002"})"),
                record(R"({"order":"O-9","installer":"rivera","facts":[]})"),
                record(R"({"order":"O-1002","installer":"rivera","facts":[{"kind":"odd"}]})"),
                record(R"({"order":"O-1002","installer":7,"facts":[]})")};
    }

private slots:
    void init()
    {
        speak("de");
        m_records = std::make_unique<DeskRecords>();
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
        speakBy({});
    }

    /// Each phrase is read for itself: none is taken for another that says something else.
    void noPhraseIsTakenForAnother()
    {
        const auto all = catalogue();
        QVERIFY(all.size() > 3000);
        QStringList wrong;
        for (const Translated &each : all) {
            if (!isReadWhole(each.source))
                continue;
            const QString said = localizedSentence(filled(each.source));
            QStringList right;
            for (const QString &form : each.said)
                right << filled(form);
            if (!right.contains(said))
                wrong << QString("%1\n    is read as  %2\n    and not as  %3")
                             .arg(each.source, said, right.join(" / "));
        }
        QVERIFY2(wrong.isEmpty(), qPrintable('\n' + wrong.join('\n')));
    }

    void whatTheActionsRefuse()
    {
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
        static const QRegularExpression word("[A-Za-z]{3,}");
        QStringList left;
        for (const Error &error : refusals()) {
            const QString said = localizedSentence(error.message);
            if (word.match(outsideOfBrackets(withoutTyped(said))).hasMatch())
                left << error.message + "  →  " + said;
        }
        QVERIFY2(left.isEmpty(), qPrintable('\n' + left.join('\n')));
    }

    /// A job whose pair has a dangerous voltage, its circuit, and who is to hear of it.
    void whatIsTold()
    {
        Records &records = m_records->records();
        const auto recorded = recordFile(records, hazardJson, "hazard");
        QVERIFY2(recorded, qPrintable(recorded ? QString() : recorded.error().text()));
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
        HandoffScreen screen(m_records->workplace());
        screen.show();
        screen.open("O-1003");
        QStringList told =
            screen.findChild<QTextBrowser *>("handoff.words")->toPlainText().split('\n');
        const auto view = showCircuit(records, "C-503");
        QVERIFY(view);
        for (const LifeEntry &entry : view->life)
            told << localizedSentence(entry.text);
        const auto hazards = hazardRegister(records, false);
        QVERIFY(hazards && hazards->size() == 1);
        told << localizedSentences(hazards->front().volts)
             << localizedSentence(hazards->front().state);
        static const QRegularExpression word("[A-Za-z]{3,}");
        QStringList left;
        for (const QString &each : told)
            if (word.match(outsideOfBrackets(withoutTyped(each))).hasMatch())
                left << each;
        QVERIFY2(left.isEmpty(), qPrintable('\n' + left.join('\n')));
    }

    void whatIsSaid_data()
    {
        QTest::addColumn<QString>("english");
        QTest::addColumn<QString>("german");
        const auto row = [](const char *english, const char *german) {
            QTest::newRow(english) << QString(english) << QString(german);
        };
        // A message within a message.
        row("None of these has such a paper. O-1: its certificate was not issued yet; O-2: order "
            "O-2 is not accepted: a certificate is issued for an accepted order",
            "Keiner von diesen hat ein solches Papier. O-1: sein Zertifikat wurde noch nicht "
            "ausgestellt; O-2: Auftrag O-2 ist nicht abgenommen: ein Zertifikat wird für einen "
            "abgenommenen Auftrag ausgestellt");
        row("Order O-1 is not accepted: Run: not shown.",
            "Auftrag O-1 ist nicht abgenommen: Messlauf: nicht gezeigt.");
        row("the backup cannot be written there: the disk is full; nothing was changed",
            "die Sicherung lässt sich dort nicht schreiben: der Datenträger ist voll; nichts wurde "
            "geändert");
        row("It stopped in the middle of van-7.json: the disk is full. What came before is in; the "
            "same command takes in the rest.",
            "Mitten in van-7.json brach es ab: der Datenträger ist voll. Was davor kam, ist "
            "aufgenommen; derselbe Befehl nimmt den Rest auf.");
        // Several, as the orders of a list are told.
        row("Circuit C-66: order taken since then (order A-2). Circuit C-31: order A-1 was taken "
            "in since then, with 447-555-0131. Nothing was taken back.",
            "Anschluss C-66: seither Auftrag angenommen (Auftrag A-2). Anschluss C-31: seither "
            "wurde Auftrag A-1 aufgenommen, mit 447-555-0131. Nichts wurde zurückgenommen.");
        // What was done on a circuit.
        row("Referred to Outside plant, reference R-7, waiting on plant",
            "Weitergegeben an Outside plant, Zeichen R-7, wartet auf: Leitungsnetz");
        row("Run on B1+B2, 15 min, stopped early: 12 bit errors, 3 errored seconds, 1 severely "
            "errored: failed",
            "Messlauf auf B1+B2, 15 min, vorzeitig beendet: 12 Bitfehler, 3 fehlerhafte Sekunden, "
            "1 davon stark fehlerhaft: fehlgeschlagen");
        row("Layer 3 of terminal 1 down, cause 88",
            "Schicht 3 des Endgeräts 1 nicht aktiv, Ursache 88");
        // A name with a full stop is no sentence.
        row("This needs the PIN of S. Lind.", "Dazu ist die PIN von S. Lind nötig.");
        // What was typed stays, though it may be a word of the program.
        row("There is no order \"not met\".", "Es gibt keinen Auftrag „not met“.");
        row("column \"customer\" is missing", "Spalte „customer“ fehlt");
        // What no phrase fits stays.
        row("the hamster ran off", "the hamster ran off");
    }
    void whatIsSaid()
    {
        QFETCH(QString, english);
        QTEST(localizedSentence(english), "german");
    }

    void aPlaceKeepsItsNames()
    {
        const auto said = [](const QString &place) {
            return localized(Error{ErrorCode::BadInput, "must not be empty", place});
        };
        QCOMPARE(said("orders.csv: row 3, column customer"),
                 "orders.csv: Zeile 3, Spalte customer: darf nicht leer sein");
        QCOMPARE(said("facts[0].order"), "facts[0].order: darf nicht leer sein");
        QCOMPARE(said({}), "darf nicht leer sein");
        speak("en");
        QCOMPARE(said("orders.csv: row 3"), "orders.csv: row 3: must not be empty");
    }

    /// The command line names the option; the window has none.
    void anOptionIsNotNamed()
    {
        QCOMPARE(localized(Error{ErrorCode::Usage, "An exception needs a reason.", "because"}),
                 "Eine Ausnahme braucht einen Grund.");
    }

    void aFindingThatIsAMessage()
    {
        const Text text = Text("%1").arg(Text::message("There is no order \"met\"."));
        QCOMPARE(localized(text), "Es gibt keinen Auftrag „met“.");
        QCOMPARE(text.english(), "There is no order \"met\".");
    }

    void thePageOfRecordsThatCannotBeOpened()
    {
        const QString path = m_records->file("plain.txt", "no database at all");
        const OpenErrorPage page(errorOf(Records::open(path)), path);
        const QString texts = textsOf(page);
        QVERIFY2(texts.contains("ist keine Datenbank"), qPrintable(texts));
        QVERIFY2(!texts.contains("is not"), qPrintable(texts));
    }
    void thePageOfAnEmptyFile()
    {
        const QString path = m_records->file("cut.sqlite", {});
        const OpenErrorPage page(errorOf(Records::open(path)), path);
        const QString texts = textsOf(page);
        QVERIFY2(texts.contains("ist leer und wurde nicht für einen neuen Datenbestand genommen"),
                 qPrintable(texts));
        QVERIFY2(!texts.contains("is empty"), qPrintable(texts));
    }

    void whatTheWindowShows()
    {
        openWindow();
        m_window->openOrder("nope");
        QTRY_VERIFY2(textsOf(*m_window).contains("Es gibt keinen Auftrag „nope“."),
                     qPrintable(textsOf(*m_window)));
        DoneStep step{"O-1002", {}, {}};
        step.takeBack = [](Records &records) -> Result<void> {
            LOOPWRIGHT_TRY(resumeOrders(records, {"O-1002"}));
            return {};
        };
        emit m_window->current()->stepDone(step);
        QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
        QTRY_VERIFY2(textsOf(*m_window).contains("Auftrag O-1002 ist nicht zurückgestellt."),
                     qPrintable(textsOf(*m_window)));
    }
};

QTEST_MAIN(GermanMessagesTest)
#include "GermanMessagesTest.moc"
