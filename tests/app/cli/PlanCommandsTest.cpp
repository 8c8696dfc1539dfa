// What `record` makes of each fact, and the plan of `order show`: by the fields and codes of the
// contract, on the demo scenario. Longer than 400 lines: the commands share one job.

#include "core/base/Csv.h"
#include "core/base/Moment.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

const QString scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";

QJsonObject card(double acVolts = 0.4)
{
    return {
        {"kind", "safety"},
        {"office_connected", true},
        {"ac_v", QJsonObject{{"tip_ground", acVolts}, {"ring_ground", 0.4}, {"tip_ring", 0.2}}},
        {"dc_v", QJsonObject{{"tip_ground", 0}, {"ring_ground", -48}, {"tip_ring", 48}}},
        {"confirmed", QJsonArray{"foreign_voltage", "bonding_ground", "storm", "work_position"}}};
}

/// Puts the value under a key that may name one within another: "ac_v.tip_ground".
void put(QJsonObject &object, const QString &key, const QJsonValue &value)
{
    const QString outer = key.section('.', 0, 0), inner = key.section('.', 1);
    if (inner.isEmpty()) {
        object.insert(outer, value);
        return;
    }
    QJsonObject within = object[outer].toObject();
    put(within, inner, value);
    object.insert(outer, within);
}

/// What somebody enters if all is well.
QJsonValue goodValue(const QJsonObject &step, const QString &key, const Moment &now)
{
    const QJsonObject preset = step["preset"].toObject();
    if (key == "outcome")
        return step["kind"] == "layer" ? "up" : "ok";
    if (key == "value")
        return QMap<QString, QJsonValue>{
            {"loop_current", 30}, {"loss_1004", 5},    {"noise", 12},    {"power_influence", 75},
            {"polarity", true},   {"dial_tone", true}, {"ringing", true}}
            .value(preset["quantity"].toString());
    return QMap<QString, QJsonValue>{
        {"tei", 63 + preset["terminal"].toInt()},
        {"office_connected", true},
        {"ac_v.tip_ground", 0.4},
        {"ac_v.ring_ground", 0.4},
        {"ac_v.tip_ring", 0.2},
        {"dc_v.tip_ground", 0},
        {"dc_v.ring_ground", -48},
        {"dc_v.tip_ring", 48},
        {"confirmed", QJsonArray{"foreign_voltage", "bonding_ground", "storm", "work_position"}},
        {"dc_resistance_ohm", 600},
        {"loss_db", 25},
        {"quiet_seconds", 12},
        {"quiet_bit_errors", 0},
        {"injections", 3},
        {"seen_bit_errors", 3},
        {"seen_errored_seconds", 3},
        {"cleared", true},
        {"started", now.text()},
        {"ended", now.plusSeconds(900).text()},
        {"bit_errors", 0},
        {"errored_seconds", 0},
        {"severely_errored_seconds", 0},
        {"sync_losses", 0},
        {"source", "ringing"},
        {"by", "P. Lane, power company"},
        {"reference", "T-7"},
        {"what", "contact"},
        {"text", "joint remade"},
        {"instrument", "set-1"}}
        .value(key);
}

} // namespace

class PlanCommandsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<QTemporaryDir> m_start, m_folder;
    Moment m_now;

    QString path(const QString &name) const { return m_folder->filePath(name); }
    QString m_by = "moss"; ///< who acts

    Answered at(const QStringList &words) const
    {
        return call(words + QStringList{"--json", "--db", path("records.sqlite"), "--now",
                                        m_now.text(), "--by", m_by});
    }
    void setNow(const char *text) { m_now = *Moment::parse(QString::fromLatin1(text)); }
    /// Each fact a minute after the other, the last of them now.
    Answered record(const QString &order, QList<QJsonObject> facts,
                    const QJsonObject &head = {}) const
    {
        QJsonObject object = head;
        object.insert("order", order);
        object.insert("installer", "rivera");
        if (!object.contains("instrument"))
            object.insert("instrument", "set-1");
        QJsonArray list;
        for (qsizetype i = 0; i < facts.size(); ++i) {
            if (!facts[i].contains("at"))
                facts[i]["at"] = m_now.plusSeconds(60.0 * double(i + 1 - facts.size())).text();
            list << facts[i];
        }
        object.insert("facts", list);
        return at({"record", written(path("record.json"), QJsonDocument(object).toJson())});
    }
    QJsonArray plan(const QString &order) const
    {
        return at({"order", "show", order}).object()["plan"].toArray();
    }
    QJsonObject step(const QString &order, const QString &need) const
    {
        for (const QJsonValue &each : plan(order))
            if (each["need"] == need)
                return each.toObject();
        return {};
    }
    QString outcome(const QString &order) const
    {
        return at({"decide", order}).object()["outcome"].toString();
    }
    /// "code" of each finding, in their order.
    static QStringList codes(const Answered &answered)
    {
        QStringList list;
        for (const QJsonValue &each : answered.object()["findings"].toArray())
            list << each["code"].toString();
        return list;
    }
    /// Changes one column of an order of the scenario.
    Answered change(const QString &order, const QString &column, const QString &value,
                    const QStringList &more = {}) const
    {
        const QByteArray rows = contentOf(scenario + "orders.csv");
        const auto table =
            readCsv(rows, "orders", {{}, QString(rows.left(rows.indexOf('\r'))).split(','), {}});
        QStringList words{"order", "put", "--update"};
        for (const CsvRow &row : table->rows)
            if (table->value(row, "order_number") == order)
                for (const QString &each : table->header)
                    words << "--set"
                          << each + '=' + (each == column ? value : table->value(row, each));
        return at(words + more);
    }

private slots:
    /// The records of the scenario, once for all tests.
    void initTestCase()
    {
        m_by = "moss";
        m_folder = std::make_unique<QTemporaryDir>();
        setNow("2026-03-12T09:00:00-06:00");
        COMPARE_STATUS(at({"office", "import", scenario + "offices.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"installer", "import", scenario + "installers.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"instrument", "import", scenario + "instruments.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "import", scenario + "orders.csv"}), ExitStatus::No);
        m_start = std::move(m_folder);
    }
    void init()
    {
        m_by = "moss";
        m_folder = std::make_unique<QTemporaryDir>();
        setNow("2026-03-12T09:00:00-06:00");
        QVERIFY(QFile::copy(m_start->filePath("records.sqlite"), path("records.sqlite")));
    }

    void everyStepHasTheFieldsOfTheContract()
    {
        for (const char *order : {"26-0001", "26-0004"}) {
            QStringList before;
            for (const QJsonValue &value : plan(order)) {
                const QJsonObject each = value.toObject();
                const QSet<QString> keys = keysOf(each);
                for (const char *key : {"criterion", "station", "need", "group", "kind", "preset",
                                        "fields", "after", "before", "state", "counts", "because"})
                    QVERIFY2(keys.contains(key), key);
                QVERIFY(QStringList({"open", "done", "failed", "closed", "not_needed"})
                            .contains(each["state"].toString()));
                for (const QJsonValue &field : each["fields"].toArray())
                    for (const char *key :
                         {"key", "type", "unit", "minimum", "maximum", "words", "required"})
                        QVERIFY2(field.toObject().contains(key), key);
                for (const QJsonValue &after : each["after"].toArray())
                    QVERIFY2(before.contains(after.toString()), qPrintable(after.toString()));
                before << each["need"].toString();
            }
            QVERIFY(before.size() > 10);
            QCOMPARE(before.size(), QSet<QString>(before.begin(), before.end()).size());
        }
        const QJsonObject tei = step("26-0001", "layer.2.1")["fields"].toArray()[1].toObject();
        QCOMPARE(tei["key"].toString(), "tei");
        QCOMPARE(tei["type"].toString(), "whole");
        QCOMPARE(tei["minimum"].toInt(-1), 0);
        QCOMPARE(tei["maximum"].toInt(-1), 127);
        QVERIFY(tei["required"].toBool());
        const QJsonObject outcome = step("26-0001", "layer.1.u")["fields"].toArray()[0].toObject();
        QCOMPARE(outcome["words"].toArray(), (QJsonArray{"up", "down"}));
        const QJsonObject cause = step("26-0001", "layer.1.u")["fields"].toArray()[1].toObject();
        QCOMPARE(cause["key"].toString(), "cause");
        QVERIFY(!cause["required"].toBool(true));
        const QJsonObject current = step("26-0004", "analog.loop_current");
        QCOMPARE(current["preset"]["quantity"].toString(), "loop_current");
        QCOMPARE(current["fields"][0]["type"].toString(), "number");
        QCOMPARE(current["fields"][0]["unit"].toString(), "mA");
        QCOMPARE(step("26-0004", "analog.polarity")["fields"][0]["type"].toString(), "yes_no");
        QCOMPARE(step("26-0004", "analog.polarity")["fields"][0]["minimum"], QJsonValue());
    }

    /// `kind`, `preset` and good values for the required fields of the first open step, until
    /// nothing is open: that is an accepted order.
    void whoDoesWhatThePlanSaysIsDone_data()
    {
        QTest::addColumn<QString>("order");
        QTest::addColumn<QList<QJsonObject>>("history");
        const QList<QJsonObject> nothing;
        QTest::newRow("two channels") << "26-0001" << nothing;
        QTest::newRow("analog") << "26-0004" << nothing;
        QTest::newRow("one channel") << "26-0007" << nothing;
        QTest::newRow("after a hazard") << "26-0001" << QList{card(80)};
        QTest::newRow("measured before the card")
            << "26-0001"
            << QList{QJsonObject{{"kind", "loop"}, {"dc_resistance_ohm", 600}, {"loss_db", 25}}};
        QTest::newRow("after a failed run")
            << "26-0001"
            << QList{card(), QJsonObject{{"kind", "run"},
                                         {"path", "self_call"},
                                         {"channels", QJsonArray{"B1", "B2"}},
                                         {"started", "2026-03-12T08:40:00-06:00"},
                                         {"ended", "2026-03-12T08:55:00-06:00"},
                                         {"bit_errors", 500},
                                         {"errored_seconds", 90}}};
        QTest::newRow("after the pair was changed")
            << "26-0001"
            << QList{QJsonObject{{"kind", "changed"}, {"what", "pair"}, {"text", "cut to pair 9"}}};
    }
    void whoDoesWhatThePlanSaysIsDone()
    {
        QFETCH(QString, order);
        QFETCH(QList<QJsonObject>, history);
        if (!history.isEmpty())
            COMPARE_STATUS(record(order, history), ExitStatus::Yes);
        for (int i = 0; i < 60; ++i) {
            QJsonObject next;
            for (const QJsonValue &each : plan(order))
                if (next.isEmpty() && (each["state"] == "open" || each["state"] == "failed"))
                    next = each.toObject();
            if (next.isEmpty())
                break;
            m_now = m_now.plusSeconds(60);
            QJsonObject fact = next["preset"].toObject();
            fact.insert("kind", next["kind"]);
            for (const QJsonValue &field : next["fields"].toArray())
                if (field["required"].toBool())
                    put(fact, field["key"].toString(),
                        goodValue(next, field["key"].toString(), m_now));
            if (fact["kind"] == "run")
                m_now = m_now.plusSeconds(900);
            const Answered done = record(order, {fact});
            COMPARE_STATUS(done, ExitStatus::Yes);
            QCOMPARE(done.object()["findings"].toArray(), QJsonArray());
            const QJsonObject after = step(order, next["need"].toString());
            QVERIFY2(after["state"] == "done",
                     qPrintable(next["need"].toString() + ": " + after["because"].toString()));
        }
        QCOMPARE(outcome(order), "accepted");
    }

    void nothingIsClosedForWantOfAnInstrument()
    {
        COMPARE_STATUS(record("26-0001", {card()}, {{"instrument", "set-1"}}), ExitStatus::Yes);
        QCOMPARE(step("26-0001", "loop.measured")["state"].toString(), "open");
        QCOMPARE(step("26-0001", "detector.B1")["state"].toString(), "open");
        QCOMPARE(step("26-0001", "run.B1")["state"].toString(), "closed");
        QVERIFY(step("26-0001", "run.B1")["because"].toString().startsWith("Detector check on B1"));
    }

    void aCardIsOfItsDay()
    {
        COMPARE_STATUS(at({"record", scenario + "records/26-0003.json"}), ExitStatus::Yes);
        QCOMPARE(step("26-0003", "safety")["state"].toString(), "open");
        QCOMPARE(step("26-0003", "detector.B1")["state"].toString(), "closed");
        QCOMPARE(step("26-0003", "layer.1.u")["state"].toString(), "done");
        setNow("2026-03-10T11:26:30-06:00");
        QCOMPARE(step("26-0003", "safety")["state"].toString(), "done");
        QCOMPARE(step("26-0003", "detector.B1")["state"].toString(), "open");
        // An accepted order asks for nothing more.
        COMPARE_STATUS(at({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
        for (const QJsonValue &each : plan("26-0007"))
            QVERIFY(each["state"] == "done" || each["state"] == "not_needed");
    }

    void aHazardClosesEverythingElse()
    {
        const Answered told = record("26-0001", {card(), card(80)});
        COMPARE_STATUS(told, ExitStatus::Yes);
        QCOMPARE(codes(told), QStringList{"hazard"});
        const QString id = told.object()["added"][1].toString();
        QCOMPARE(told.object()["findings"][0]["fact"].toString(), id);
        QCOMPARE(told.object()["findings"][0]["severity"].toString(), "warning");
        QVERIFY(told.object()["findings"][0]["reason"].toString().startsWith("Hazard: 80 V AC"));
        QCOMPARE(step("26-0001", "hazard_closed")["state"].toString(), "open");
        QCOMPARE(step("26-0001", "hazard_closed").value("preset")["hazard"].toString(), id);
        for (const QJsonValue &each : plan("26-0001"))
            if (each["need"] != "hazard_closed")
                QVERIFY2(each["state"] != "open" && each["state"] != "failed",
                         qPrintable(each["need"].toString()));
        const Answered measured =
            record("26-0001", {{{"kind", "loop"}, {"dc_resistance_ohm", 600}, {"loss_db", 25}}});
        COMPARE_STATUS(measured, ExitStatus::Yes);
        QCOMPARE(codes(measured), QStringList{"closed_step"});
        COMPARE_STATUS(at({"void", id, "--because", "typing error"}), ExitStatus::No);
        m_by = "hale"; // a hazard is a supervisor's
        COMPARE_STATUS(at({"void", id, "--because", "typing error"}), ExitStatus::Yes);
        QCOMPARE(step("26-0001", "hazard_closed")["state"].toString(), "open");
    }

    /// A decision knows no visit: what is next is the plan's, in every text.
    void nextIsWhatThePlanAsksFor()
    {
        COMPARE_STATUS(record("26-0001", {card(), {{"kind", "changed"}, {"what", "feed"}}}),
                       ExitStatus::Yes);
        for (const QStringList &words :
             {QStringList{"decide", "26-0001"}, QStringList{"order", "show", "26-0001"}}) {
            const Answered told = call(words + QStringList{"--db", path("records.sqlite"), "--now",
                                                           m_now.text(), "--by", m_by});
            QVERIFY2(told.out.contains("Next: make the safety card"), told.out.constData());
        }
    }

    void whatDoesNotCountIsKeptAndTold()
    {
        const QJsonObject loop{
            {"kind", "loop"}, {"dc_resistance_ohm", 600}, {"loss_db", 25}, {"frequency_hz", 40000}};
        const Answered early = record("26-0001", {loop});
        COMPARE_STATUS(early, ExitStatus::Yes);
        QCOMPARE(codes(early), QStringList{"closed_step"});
        const QJsonObject finding = early.object()["findings"][0].toObject();
        QCOMPARE(finding["fact"], early.object()["added"][0]);
        QCOMPARE(finding["reason"].toString(), "Loop reading of 12 March 2026, 09:00 (UTC-06:00) "
                                               "is kept and does not count: made before the "
                                               "safety card of that visit");
        QVERIFY(early.messages.contains("loopwright-cli: record.json: "));
        const QJsonObject shown = step("26-0001", "loop.measured");
        QCOMPARE(shown["before"][0]["fact"], early.object()["added"][0]);
        QVERIFY(shown["before"][0]["why"].toString().startsWith("made before the safety card"));
        QVERIFY(shown["counts"].isNull());

        m_now = m_now.plusSeconds(60);
        const Answered other = record("26-0001", {card(), loop}, {{"pair", "C7-990"}});
        QCOMPARE(codes(other), (QStringList{"other_pair", "other_pair"}));
        QVERIFY(other.object()["findings"][0]["reason"].toString().endsWith(
            "measured on C7-990, the order is for C7-101"));

        m_now = m_now.plusSeconds(300);
        const Answered good = record("26-0001", {card(), loop}, {{"pair", "c7 101"}});
        COMPARE_STATUS(good, ExitStatus::Yes);
        QCOMPARE(codes(good), QStringList());
        QCOMPARE(step("26-0001", "loop.measured")["counts"], good.object()["added"][1]);

        m_now = m_now.plusSeconds(3600);
        const QJsonObject check{{"kind", "detector"},
                                {"path", "self_call"},
                                {"channels", QJsonArray{"B1", "B2"}},
                                {"quiet_seconds", 12},
                                {"quiet_bit_errors", 0},
                                {"injections", 3},
                                {"seen_bit_errors", 3},
                                {"seen_errored_seconds", 3},
                                {"cleared", true},
                                {"at", m_now.plusSeconds(-1000).text()}};
        QJsonObject run{{"kind", "run"},
                        {"path", "self_call"},
                        {"channels", QJsonArray{"B1", "B2"}},
                        {"started", m_now.plusSeconds(-950).text()},
                        {"ended", m_now.plusSeconds(-50).text()},
                        {"bit_errors", 2},
                        {"errored_seconds", 2},
                        {"severely_errored_seconds", 0},
                        {"sync_losses", 0}};
        QCOMPARE(codes(record("26-0001", {run})), QStringList{"closed_step"}); // without a check
        run["errored_seconds"] = 5;
        const Answered doubtful = record("26-0001", {check, run});
        COMPARE_STATUS(doubtful, ExitStatus::Yes);
        QCOMPARE(codes(doubtful), QStringList{"contradiction"});
        QVERIFY(doubtful.object()["findings"][0]["reason"].toString().contains(
            "2 bit errors cannot make 5 errored seconds"));
    }

    void whoIsUnknownIsTold()
    {
        const Answered told = record("26-0001", {card()}, {{"instrument", "set-99"}});
        COMPARE_STATUS(told, ExitStatus::Yes);
        QCOMPARE(codes(told), QStringList{"instrument_not_registered"});
    }

    void anEndedOrderKeepsWhatIsRecorded()
    {
        COMPARE_STATUS(at({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "complete", "26-0007"}), ExitStatus::Yes);
        const auto late = record(
            "26-0007",
            {card(),
             {{"kind", "layer"}, {"layer", 1}, {"interface", "u"}, {"outcome", "down"}},
             {{"kind", "changed"}, {"what", "line_equipment"}, {"text", "moved to another shelf"}},
             {{"kind", "note"}, {"text", "afterwards"}}});
        COMPARE_STATUS(late, ExitStatus::Yes);
        QCOMPARE(late.object()["added"].toArray().size(), 4);
        QCOMPARE(codes(late), QStringList(4, QString("order_not_open")));
        QCOMPARE(outcome("26-0007"), "accepted");
        QVERIFY(at({"order", "show", "26-0007"}).out.contains("afterwards"));

        COMPARE_STATUS(at({"order", "cancel", "26-0001", "--because", "moved away"}),
                       ExitStatus::Yes);
        QCOMPARE(codes(record("26-0001", {card()})), QStringList{"order_not_open"});
        QCOMPARE(outcome("26-0001"), "incomplete");
        for (const QJsonValue &each : plan("26-0001"))
            QVERIFY(each["state"] != "open" && each["state"] != "failed");
        // A hazard is told first, whatever became of the order.
        QCOMPARE(codes(record("26-0001", {card(80)})), QStringList{"hazard"});
    }

    void anotherPairOfTheOrderIsNotCertified()
    {
        COMPARE_STATUS(at({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), "accepted");
        COMPARE_STATUS(change("26-0007", "pair", "C7-990"), ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), "incomplete");
        COMPARE_STATUS(at({"certificate", "issue", "26-0007", "--out", path("c.pdf")}),
                       ExitStatus::No);
        const QJsonObject run = step("26-0007", "run.B1");
        QCOMPARE(run["before"][0]["why"].toString(), "measured on C7-107, the order is for C7-990");
        // Back again, it is what was measured.
        COMPARE_STATUS(change("26-0007", "pair", "C7-107"), ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), "accepted");
    }
    void theSameWiresByAnotherName()
    {
        COMPARE_STATUS(at({"record", scenario + "records/26-0007.json"}), ExitStatus::Yes);
        COMPARE_STATUS(change("26-0007", "pair", "C7-701", {"--same-wires"}), ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), "accepted");
        COMPARE_STATUS(change("26-0007", "pair", "C7-702"), ExitStatus::Yes);
        QCOMPARE(outcome("26-0007"), "incomplete");
        COMPARE_STATUS(at({"history", "verify"}), ExitStatus::Yes);
    }
    void theProgramItself()
    {
        const QStringList common{"--json", "--db", path("records.sqlite"), "--now", m_now.text(),
                                 "--by",   "moss"};
        const QString file =
            written(path("early.json"),
                    R"({"order":"26-0001","instrument":"set-1","facts":[{"kind":"loop",)"
                    R"("at":"2026-03-12T08:00:00-06:00","dc_resistance_ohm":600,"loss_db":20}]})");
        const Answered told = callProgram(QStringList{"record", file} + common);
        COMPARE_STATUS(told, ExitStatus::Yes);
        QCOMPARE(codes(told), QStringList{"closed_step"});
        const Answered shown = callProgram(QStringList{"order", "show", "26-0001"} + common);
        COMPARE_STATUS(shown, ExitStatus::Yes);
        QVERIFY(shown.object()["plan"].toArray().size() > 10);
    }
};

QTEST_MAIN(PlanCommandsTest)
#include "PlanCommandsTest.moc"
