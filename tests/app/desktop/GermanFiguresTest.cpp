// Measured numbers in the German window: shown with the comma, typed with either mark, stored as in
// English. That every screen shows them so is seen by the test "pictures".

#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/form/FieldSpec.h"
#include "app/desktop/form/Form.h"
#include "app/desktop/job/MakeupTable.h"
#include "app/desktop/widgets/SignLine.h"
#include "app/desktop/widgets/SignList.h"
#include "core/loop/LoopMakeup.h"
#include "db/Connection.h"
#include "tests/support/JobBench.h"
#include "tests/support/Jobs.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

const QString lossField = QStringLiteral("pair.loop.measured.loss_db");
const QString resistanceField = QStringLiteral("pair.loop.measured.dc_resistance_ohm");

void safetyCard(JobBench &bench)
{
    bench.go("safety.office_connected");
    JobBench::keys("n");
    for (int i = 0; i < 6; ++i)
        JobBench::enter(decimalMark() == u',' ? "0,2" : "0.2");
    JobBench::keys("yyyy");
    bench.go("safety.confirm");
    JobBench::enter();
}

void openWithSafetyCard(JobBench &bench)
{
    bench.at(5);
    bench.openJob("A-1001");
    safetyCard(bench);
    bench.at(10);
    bench.go(resistanceField);
    JobBench::enter("612");
}

/// What is below the field.
QString said(JobBench &bench, const QString &field)
{
    return qobject_cast<FieldMark *>(bench.find<QLineEdit>(field)->parentWidget())->sentence();
}

std::optional<double> lossOf(Records &records)
{
    std::optional<double> loss;
    const auto view = showOrder(records, "A-1001");
    if (!view)
        qFatal("%s", qPrintable(view.error().text()));
    for (const FactView &each : view->facts)
        if (const auto *loop = each.fact.as<LoopFact>(); loop && !each.voided && loop->lossDb)
            loss = loop->lossDb;
    return loss;
}

/// All facts and what the board says of them, as they lie in the file; ids are made by chance.
QString stored(Records &records)
{
    static const QRegularExpression id("[0-9a-f]{8}-[0-9a-f-]{27}");
    const auto text = records.database().connection().text(
        "SELECT group_concat(row, char(10)) FROM ("
        "SELECT kind || ' ' || content AS row FROM fact UNION ALL "
        "SELECT reason AS row FROM order_state)");
    if (!text)
        qFatal("%s", qPrintable(text.error().text()));
    return QString(*text).replace(id, "ID");
}

} // namespace

class GermanFiguresTest : public QObject
{
    Q_OBJECT

private slots:
    void init() { speak("de"); }
    void cleanup() { speak("en"); }

    void commaAndPointAreTyped_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::newRow("comma") << "28,4";
        QTest::newRow("point") << "28.4";
    }
    void commaAndPointAreTyped()
    {
        QFETCH(QString, typed);
        JobBench bench({briFields()});
        openWithSafetyCard(bench);
        bench.go(lossField);
        JobBench::enter(typed);
        QCOMPARE(lossOf(bench.records()), std::optional(28.4));
        QString all;
        for (const QLabel *label : bench.window().findChildren<QLabel *>())
            all += label->text() + '\n';
        QVERIFY(!all.contains("28.4"));
        QVERIFY(!all.contains("tip to ground") && !all.contains("connected to the pair"));
        QVERIFY(bench.find<SignList>("pair.recorded")->items().front().text.contains("28,4 dB"));
    }

    void whatHasTwoReadingsIsRefused_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::newRow("point") << "1.200";
        QTest::newRow("comma") << "1,200";
    }
    void whatHasTwoReadingsIsRefused()
    {
        QFETCH(QString, typed);
        JobBench bench({briFields()});
        openWithSafetyCard(bench);
        bench.go(lossField);
        JobBench::enter(typed);
        QCOMPARE(lossOf(bench.records()), std::optional<double>());
        QCOMPARE(JobBench::focus(), lossField);
        QCOMPARE(bench.find<QLineEdit>(lossField)->text(), typed); // as it was typed
        QCOMPARE(said(bench, lossField),
                 QString("„%1“ kann als 1,2 oder als 1200 gelesen werden: Geben Sie ein, was "
                         "gemeint ist")
                     .arg(typed));
        // The draft is what was typed, in any language.
        bench.close();
        bench.open();
        bench.openJob("A-1001");
        QCOMPARE(bench.find<QLineEdit>(lossField)->text(), typed);
        bench.go(lossField);
        JobBench::key(Qt::Key_A, Qt::ControlModifier);
        JobBench::enter("1,2");
        QCOMPARE(lossOf(bench.records()), std::optional(1.2));
    }

    /// English reads the point as ever; a comma that may group thousands is no decimal mark.
    void inEnglish()
    {
        speak("en");
        const auto read = [](const QString &typed) {
            return valueOf({"k", "label"}, typed, *Moment::parse(u"2026-03-04T15:15:00-06:00"));
        };
        QCOMPARE(read("1.200"), QJsonValue(1.2));
        QCOMPARE(read("28,4"), QJsonValue(28.4));
        QCOMPARE(read("1,200"), QJsonValue("1,200"));
        speak("de");
        QCOMPARE(read("1.200"), QJsonValue("1.200"));
        QCOMPARE(read("1,2000"), QJsonValue(1.2));
    }

    void aCorrectionIsFilledInTheMannerOfTheReader()
    {
        JobBench bench({briFields()});
        openWithSafetyCard(bench);
        bench.go(lossField);
        JobBench::enter("28,4");
        bench.at(11);
        bench.go("pair.recorded");
        JobBench::key(Qt::Key_C);
        QCOMPARE(bench.find<QLineEdit>(lossField)->text(), "28,4");
        QCOMPARE(bench.find<Form>("safety")->typed(), QJsonObject());
        bench.go("safety.recorded");
        JobBench::key(Qt::Key_C);
        QCOMPARE(bench.find<Form>("safety")->typed().value("ac_v.tip_ground").toString(), "0,2");
    }

    void theMakeupOfAPair()
    {
        MakeupTable table("part");
        const auto typed = [&table](const char *wire, const char *length) {
            table.setTyped({{"rows", QJsonArray{QJsonArray{"section", wire, length}}}});
            return LoopMakeup::fromJson(table.makeup(), {});
        };
        for (const char *wire : {"0,40", "0.40"}) {
            const auto read = typed(wire, "2700 m");
            QVERIFY(read);
            QCOMPARE(read->elements.front().wire.diameterMm, 0.4);
        }
        const auto unclear = typed("0,40", "2.700 m");
        QVERIFY(!unclear);
        table.mark(unclear.error().place, unclear.error().message);
        QVERIFY(table.findChild<SignLine *>()->text().contains(
            "„2.700“ kann als 2,7 oder als 2700 gelesen werden"));
        table.setMakeup(
            {{"elements", QJsonArray{QJsonObject{
                              {"type", "section"}, {"diameter_mm", 0.4}, {"length_m", 1234.5}}}},
             {"temperature_c", 21.125}});
        const QJsonArray row = table.typed().value("rows").toArray().at(0).toArray();
        QCOMPARE(row, (QJsonArray{"section", "0,4 mm", "1234,5 m"}));
        QCOMPARE(table.typed().value("temperature").toString(), "21,1250 C");
        QCOMPARE(table.makeup().value("temperature_c").toDouble(), 21.125);
    }

    /// Beside the drawing, with the longer German words.
    void aMakeupIsTypedIntoFieldsThatShowIt()
    {
        MakeupTable table("part");
        table.resize(table.minimumSizeHint());
        table.show();
        for (const char *field : {"part.1.wire", "part.1.length"}) {
            const auto *edit = table.findChild<QLineEdit *>(field);
            QVERIFY2(edit->width() >= em(7), field);
            QVERIFY2(edit->fontMetrics().horizontalAdvance("2700,5 m") < edit->width(), field);
        }
        for (const QLabel *label : table.findChildren<QLabel *>())
            if (!label->wordWrap())
                QVERIFY2(label->width() >= label->sizeHint().width(), qPrintable(label->text()));
    }

    void daysAndWordsWithinASentence()
    {
        const Text day = Text::message("4 March 2026, 15:20 (UTC-06:00)");
        QCOMPARE(localized(Text("%1 Read %2.").arg(Text("Quiet seconds")).arg(day)),
                 "Ruhige Sekunden Gemessen am 4.\u00a0März 2026, 15:20 (UTC-06:00).");
        QCOMPARE(localizedSentence("1e-6 is not proved yet: 12:30 more without an error"),
                 "1e-6 ist noch nicht nachgewiesen: noch 12:30 ohne Fehler");
        QCOMPARE(localizedWord("Up"), "Steht");
        QCOMPARE(localizedWord("B1"), "B1");
    }

    /// Only what is shown has another mark.
    void whatIsStoredIsTheSame()
    {
        QStringList files;
        for (const char *language : {"en", "de"}) {
            speak(language);
            JobBench bench({briFields()});
            openWithSafetyCard(bench);
            bench.go(lossField);
            JobBench::enter(decimalMark() == u',' ? "28,4" : "28.4");
            files << stored(bench.records()) + canonicalJson(bench.decision("A-1001"));
        }
        QVERIFY(files[0].contains("28.4"));
        QCOMPARE(files[1], files[0]);
    }
};

QTEST_MAIN(GermanFiguresTest)
#include "GermanFiguresTest.moc"
