// Longer than 400 lines: one content, and all that it is made from.

#include "core/certificate/MakeCertificate.h"

#include "core/certificate/ContentParts.h"
#include "core/certificate/PlainWords.h"
#include "core/certificate/SettingsLines.h"
#include "core/identifiers/ProtocolVariant.h"
#include "tests/support/Certificates.h"

#include <QTest>

using namespace loopwright;
using certificates::sources;

namespace {

const QString sentinel = "217-555-0199";
const char *const sentinelDigits = "2175550199";

bool holdsSentinel(const QByteArray &text)
{
    QByteArray plain = text;
    for (const char mark : {' ', '-', '.', '(', ')', '/'})
        plain.replace(QByteArray(1, mark), QByteArray());
    return plain.contains(sentinelDigits) || plain.contains("5550199");
}

} // namespace

class MakeCertificateTest : public QObject
{
    Q_OBJECT

private slots:
    void saysWhatWasOrdered()
    {
        const CertificateContent content = certificates::bri();
        QCOMPARE(content.order, "A-1001");
        QCOMPARE(content.orderType, "new line");
        QCOMPARE(content.customer, "Bright Bakery");
        QCOMPARE(content.premises, "12 Mill Lane");
        QCOMPARE(content.circuit, "C-77");
        QCOMPARE(content.office, "North Hill");
        QCOMPARE(content.variant, "ni2");
        QCOMPARE(content.variantName, findVariant(u"ni2")->name);
        const std::vector<CertificateLine> service{{"B1", "voice, data at 64 kbit/s"},
                                                   {"B2", "data at 64 kbit/s"},
                                                   {"NT", "supplied with the line"}};
        QCOMPARE(content.service, service);
        const CertificateTerminal first{1,
                                        "217-555-0143",
                                        "217 555 0143",
                                        "2175550143",
                                        "21755501430101",
                                        "217 555 0143 01 01",
                                        "automatic",
                                        "voice, data"};
        QCOMPARE(content.terminals.size(), std::size_t(2));
        QCOMPARE(content.terminals.front(), first);
    }

    void saysWhatTheDecisionSays()
    {
        const CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const CertificateContent content = certificates::content(from);
        QCOMPARE(content.decision, from.decision.id);
        QCOMPARE(content.outcome, OrderOutcome::Accepted);
        QCOMPARE(content.criteria.size(), from.decision.criteria.size());
        for (std::size_t i = 0; i < content.criteria.size(); ++i) {
            QCOMPARE(content.criteria[i].key, from.decision.criteria[i].key);
            QCOMPARE(content.criteria[i].outcome, from.decision.criteria[i].outcome);
            QCOMPARE(content.criteria[i].measured,
                     from.decision.criteria[i].measuredText.english());
            QCOMPARE(content.criteria[i].limit, from.decision.criteria[i].limitText.english());
        }
        QCOMPARE(content.runsSentence(), "1 run was made");
        QCOMPARE(content.proves, from.decision.proves.english());
        QVERIFY(content.provesPlainly.contains("19 million"));
        QCOMPARE(std::size_t(content.notes.size()), from.decision.notes.size());
        QVERIFY(!content.notes.join(' ').contains("self-call"));
    }

    void saysByWhomAndWithWhat()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const CertificateContent content = certificates::content(from);
        QCOMPARE(content.testedFrom, "2026-03-04");
        QCOMPARE(content.testedTo, "2026-03-04");
        QCOMPARE(content.installers, QStringList{"Pat Example"});
        const std::vector<CertificateInstrument> used{
            {"TS-4", "basic-rate test set", "S-1021",
             Calibration{QDate(2025, 9, 1), QDate(2026, 9, 1)}, true}};
        QCOMPARE(content.instruments, used);

        // A later calibration does not hold on the day; one that needs none says so.
        from.instruments.front().calibrations << Calibration{QDate(2026, 4, 1), QDate(2027, 4, 1)};
        QCOMPARE(certificates::content(from).instruments, used);
        from.instruments.front().calibrations = {{QDate(2020, 1, 1), {}}};
        QCOMPARE(certificates::content(from).instruments.front().calibration->due, std::nullopt);
        from.people.clear();
        QCOMPARE(certificates::content(from).installers, QStringList{"K7"});
    }

    void aTestSetOutOfItsCalibrationSaysSo()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const Calibration old{QDate(2024, 2, 1), QDate(2025, 2, 1)};
        from.instruments.front().calibrations = {
            {QDate(2022, 2, 1), QDate(2023, 2, 1)}, old, {QDate(2026, 4, 1), QDate(2027, 4, 1)}};
        CertificateInstrument told = certificates::content(from).instruments.front();
        QVERIFY(!told.held);
        QCOMPARE(told.calibration, std::optional(old)); // the newest before it was used
        from.instruments.front().calibrations = {{QDate(2026, 4, 1), QDate(2027, 4, 1)}};
        QCOMPARE(certificates::content(from).instruments.front().calibration, std::nullopt);
    }

    void failedRunsAreListed()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts.removeLast();
        facts << jobs::run(20, 32, 900, 120)
              << jobs::fact(21, "cleared", 50, {{"what", "wiring"}, {"text", "pair re-spliced"}})
              << jobs::detector(22, 52) << jobs::run(23, 54);
        const CertificateContent content = certificates::content(sources(jobs::briFields(), facts));
        QCOMPARE(content.runsSentence(), "2 runs were made, 1 of them failed");
        QCOMPARE(content.runs.front().outcome, RunOutcome::Failed);
        QVERIFY2(content.runs.front().result.startsWith("Failed: 900 bit errors where 5"),
                 qPrintable(content.runs.front().result));
        QCOMPARE(content.runs.back().outcome, RunOutcome::Counted);
        QVERIFY2(content.runs.front().result.endsWith(
                     ". Then, 4 March 2026, 08:50 (UTC-06:00): wiring was mended"),
                 qPrintable(content.runs.front().result));
        QVERIFY(!content.record().contains("re-spliced"));
    }

    void aRunBeforeTheNtDoesNotCoverIt()
    {
        const auto covers = [](const char *interface, const char *supplied) {
            OrderFields fields = jobs::briFields();
            fields["nt_supplied"] = QString::fromLatin1(supplied);
            QList<QJsonObject> facts = jobs::briFacts();
            facts.last().insert("interface", QString::fromLatin1(interface));
            return !certificates::content(sources(fields, facts))
                        .notCovered.join(' ')
                        .contains("in the error test");
        };
        QVERIFY(covers("st", "yes"));
        QVERIFY(!covers("u", "yes"));
        QVERIFY(covers("u", "no")); // the customer's NT is on his side
    }

    void aRunThatWasStruckOutIsTold()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts << jobs::run(20, 14, 900, 120)
              << jobs::voiding(21, 80, 20, "typing error, dialled 102 and " + sentinel);
        CertificateSources from = sources(jobs::briFields(), facts);
        from.people.push_back({"Dana", "Dana Sample", Role::Supervisor});
        const NumberGuard guard(*testLinesFromText("loopback=" + sentinel + ";milliwatt=102"));
        const CertificateContent content = certificates::content(from, guard);
        QCOMPARE(content.runsSentence(), "2 runs were made, 1 of them struck out");
        const QString why =
            QString("typing error, dialled %1 and %1 (by Dana Sample)").arg(NumberGuard::covered());
        QVERIFY2(content.runs.front().result.startsWith("Failed, struck out: " + why),
                 qPrintable(content.runs.front().result));
        QVERIFY(content.runs.front().struckOut);
        QVERIFY(!content.runs.back().struckOut);
        const auto run = std::find_if(content.criteria.begin(), content.criteria.end(),
                                      [](const auto &c) { return c.key == u"run"; });
        QVERIFY2(run->reason.endsWith(
                     "A run of 4 March 2026, 08:14 (UTC-06:00) was struck out: " + why + '.'),
                 qPrintable(run->reason));
        QVERIFY(!holdsSentinel(content.record()));
        const auto again = CertificateContent::fromJson(content.toJson(), "record");
        QVERIFY2(again, again ? "" : qPrintable(again.error().text()));
        QCOMPARE(*again, content);
        QVERIFY(!certificates::bri().record().contains("struck out"));
    }

    void exceptionsSayWhoAndWhy()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[2] = jobs::fact(
            3, "loop", 10, {{"dc_resistance_ohm", 1500}, {"loss_db", 45}, {"frequency_hz", 40000}});
        CertificateSources from = sources(jobs::briFields(), facts);
        QCOMPARE(from.decision.outcome, OrderOutcome::NotAccepted);
        QVERIFY(!makeCertificate(from, {}));

        DecisionInput input = jobs::input(jobs::briFields(), facts);
        input.facts.push_back(
            certificates::exception(30, input, {"loop"}, "No other pair is free."));
        from.decision = decide(input, jobs::limits());
        const CertificateContent content = certificates::content(from);
        QCOMPARE(content.outcome, OrderOutcome::AcceptedWithException);
        const auto loop = std::find_if(content.criteria.begin(), content.criteria.end(),
                                       [](const auto &c) { return c.key == u"loop"; });
        QCOMPARE(loop->outcome, CriterionOutcome::NotMet);
        QVERIFY(loop->excepted.has_value());
        QCOMPARE(loop->excepted->by, "Robin Sample");
        QCOMPARE(loop->excepted->because, "No other pair is free.");
    }

    void refusedUnlessAccepted()
    {
        CertificateSources from = sources(jobs::briFields(), {});
        QCOMPARE(from.decision.outcome, OrderOutcome::Incomplete);
        const auto made = makeCertificate(from, {});
        QVERIFY(!made);
        QCOMPARE(made.error().code, ErrorCode::Refused);
        QVERIFY(made.error().message.contains("incomplete"));
    }

    /// The number of a test line, planted wherever a person can type.
    void unpublishedNumbersNeverShow()
    {
        OrderFields fields = jobs::briFields();
        fields["remarks"] = "loop at " + sentinel;
        fields["access_notes"] = sentinel;
        fields["dial_prefix"] = sentinel;
        fields["premises"] = "12 Mill Lane, " + sentinel;
        QList<QJsonObject> facts = jobs::briFacts();
        facts[9].insert("dn", sentinel);
        facts << jobs::fact(40, "note", 55, {{"text", QString("called " + sentinel)}});
        facts << jobs::fact(
            41, "loop", 11,
            {{"dc_resistance_ohm", 1500}, {"loss_db", 45}, {"frequency_hz", 40000}});
        DecisionInput input = jobs::input(fields, facts);
        input.facts.push_back(certificates::exception(
            42, input, {"loop"}, "loop back at 1 (217) 555 0199, or 555-0199"));
        CertificateSources from = sources(fields, facts);
        from.decision = decide(input, jobs::limits());
        from.decision.notes.push_back(Text::verbatim("by way of " + sentinel));
        from.decision.runs.front().counts += ", to 9 " + sentinel;
        from.decision.criteria.front().measuredText += "2175550199";
        from.decision.criteria.front().reason += "217.555.0199";

        QVERIFY(holdsSentinel(certificates::content(from).record())); // the test would notice
        const NumberGuard guard(*testLinesFromText("loopback=" + sentinel + ";milliwatt=102"));
        const CertificateContent content = certificates::content(from, guard);
        QVERIFY(!holdsSentinel(content.record()));
        QVERIFY(content.record().contains(NumberGuard::covered().toUtf8()));
        QCOMPARE(content.terminals.front().dn, "217-555-0143");
    }

    void analogLine()
    {
        const CertificateContent content = certificates::analog();
        QVERIFY(!content.runNeeded);
        QCOMPARE(content.runsSentence(), QString());
        QCOMPARE(content.terminals.front().tei, QString());
        QCOMPARE(content.terminals.front().spid, QString());
        const std::vector<CertificateLine> service{{"Line", "voice"}};
        QCOMPARE(content.service, service);
    }

    void automaticTeiIsSoHoweverItWasTyped()
    {
        OrderFields fields = jobs::briFields();
        fields["tei_1"] = "AUTO";
        fields["tei_2"] = "automatic";
        const CertificateContent content = certificates::content(sources(fields, jobs::briFacts()));
        QCOMPARE(content.terminals.front().tei, "automatic");
        QCOMPARE(content.terminals.back().tei, "automatic");
    }

    void channelsThatWereNotOrderedSaySo()
    {
        OrderFields fields = jobs::briFields();
        fields["b2_services"] = "";
        fields["d_services"] = "packet";
        fields["data_rate"] = "56000";
        const std::vector<CertificateLine> lines{{"B1", "voice, data at 56 kbit/s"},
                                                 {"B2", "not ordered"},
                                                 {"D", "packet"},
                                                 {"NT", "supplied with the line"}};
        QCOMPARE(serviceLines(jobs::order(fields)), lines);
    }

    void settingsNameTheVariantsOwn()
    {
        OrderFields fields = jobs::briFields();
        fields["dial_prefix"] = "9";
        const std::vector<CertificateLine> lines = terminalSettings(jobs::order(fields));
        const ProtocolVariant *variant = findVariant(u"ni2");
        QVERIFY(lines.size() == variant->settings.size() + 2);
        for (std::size_t i = 0; i < variant->settings.size(); ++i)
            QCOMPARE(lines[i].name, variant->settings[i].name);
        QCOMPARE(lines.back(), (CertificateLine{"Prefix to dial", "9"}));
    }

    /// No setting offers two choices, whatever the variant and the order.
    void everySettingHasOneValue_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("line");
        for (const ProtocolVariant &variant : allVariants())
            for (const char *line : {"", "multipoint", "point_to_point"})
                if (!variant.isAnalog)
                    QTest::addRow("%s %s", qPrintable(variant.key), line) << variant.key << line;
    }
    void everySettingHasOneValue()
    {
        QFETCH(QString, variant);
        QFETCH(QString, line);
        OrderFields fields = jobs::briFields();
        fields["protocol_variant"] = variant;
        fields["line"] = line;
        fields["spid_1"] = fields["spid_2"] = "";
        const ServiceOrder order = jobs::order(fields);
        for (const CertificateLine &setting : terminalSettings(order)) {
            QVERIFY2(!setting.value.contains(" or ") && !setting.value.contains("where one") &&
                         !setting.value.contains("as ordered") && !setting.value.contains("often"),
                     qPrintable(setting.name + ": " + setting.value));
            if (setting.name == u"TEI")
                QCOMPARE(setting.value, order.isPointToPoint() ? "fixed, 0" : "automatic");
            if (setting.name == u"Line")
                QCOMPARE(setting.value, order.isPointToPoint() ? "point-to-point" : "multipoint");
        }
    }

    /// By the plan of its country; a number of a country whose plan is not known is not grouped.
    void numbersAreGroupedByTheirPlan_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("grouped");
        QTest::addColumn<QString>("keyed");
        QTest::newRow("North America") << "ni2"
                                       << "(217) 555-0143"
                                       << "217 555 0143"
                                       << "2175550143";
        QTest::newRow("France") << "vn"
                                << "01 99 00 12 34"
                                << "+33 1 99 00 12 34"
                                << "0199001234";
        QTest::newRow("Australia") << "ts013"
                                   << "+61 2 5550 0143"
                                   << "+61 2 5550 0143"
                                   << "0255500143";
        QTest::newRow("Germany") << "dss1"
                                 << "+49 30 23125 001"
                                 << "+49 3023125001"
                                 << "MSN 23125001, national 03023125001";
        QTest::newRow("Germany, 1TR6") << "1tr6"
                                       << "+49 30 23125007"
                                       << "+49 3023125007"
                                       << "EAZ 7, national 03023125007";
        QTest::newRow("Japan") << "ins64"
                               << "+81 3 5550 0143"
                               << "+81 355500143"
                               << "0355500143";
    }
    void numbersAreGroupedByTheirPlan()
    {
        QFETCH(QString, variant);
        QFETCH(QString, typed);
        OrderFields fields = jobs::briFields();
        fields["protocol_variant"] = variant;
        fields["dn_1"] = typed;
        const CertificateTerminal line = terminalLines(jobs::order(fields)).front();
        QTEST(line.dnGrouped, "grouped");
        QTEST(line.toKey, "keyed");
    }

    void headNumberAndRange()
    {
        OrderFields fields = jobs::briFields();
        fields["line"] = "point_to_point";
        fields["protocol_variant"] = "ins64";
        fields["head_number"] = "+81 3 5550 0140";
        fields["number_range"] = "00-49";
        const std::vector<CertificateLine> lines = terminalSettings(jobs::order(fields));
        QVERIFY(std::ranges::find(lines, CertificateLine{"Head number", "+81 355500140"}) !=
                lines.end());
        QVERIFY(std::ranges::find(lines, CertificateLine{"Number range", "00-49"}) != lines.end());
    }

    void everyReadingIsTold()
    {
        const CertificateContent content = certificates::bri();
        QStringList told;
        for (const CertificateCriterion &criterion : content.criteria)
            for (const CertificateReading &reading : criterion.readings)
                told << QString("%1: %2: %3 (%4)")
                            .arg(criterion.key, reading.what, reading.value, reading.limit);
        for (const char *piece :
             {"loop: DC resistance: 612 ohm (at most 1300 ohm)",
              "loop: Loss at 40 kHz: 28.4 dB (at most 42 dB)",
              "safety: AC voltage: tip to ground 0.2 V, ring to ground 0.2 V, tip to ring 0.2 V "
              "(stop above 50 V)",
              "safety: DC voltage: tip to ground 0.1 V", "layer2: Terminal 1: TEI 64 ()",
              "run: Bit errors: 0 in 57,600,000 bits (at most 5 (1 in 10 million))",
              "run: Errored seconds: 0 of 900 (at most 10 (1.2 %))"})
            QVERIFY2(told.join('\n').contains(piece), qPrintable(piece + ("\n" + told.join('\n'))));
    }

    /// The limit set of an office may say how sure its instruments are.
    void uncertaintyWhereItIsKnown()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const auto sure = [&from](const char *what) {
            for (const CertificateCriterion &criterion : certificates::content(from).criteria)
                for (const CertificateReading &reading : criterion.readings)
                    if (reading.what == QLatin1StringView(what))
                        return reading.sure;
            return QString("no such reading");
        };
        QCOMPARE(sure("DC resistance"), "as read");
        QJsonObject limits = jobs::limits().toJson();
        QJsonArray list = limits["limits"].toArray();
        list << QJsonObject{{"key", "uncertainty_resistance"},
                            {"value", 2},
                            {"unit", "ohm"},
                            {"name", "Uncertainty of resistance"},
                            {"source", "the maker's sheet"}};
        limits["limits"] = list;
        from.limits = *LimitSet::fromJson(limits, "limits");
        QCOMPARE(sure("DC resistance"), "± 2 ohm");
        QCOMPARE(sure("Loss at 40 kHz"), "as read");
    }

    /// An instrument that was named afterwards is the one that measured.
    void anInstrumentNamedAfterwardsIsPrinted()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        QJsonArray ids;
        for (QJsonObject &fact : facts) {
            fact["instrument"] = "";
            ids << fact["id"];
        }
        facts << jobs::fact(60, "made_with", 70, {{"facts", ids}, {"instrument", "TS-4"}});
        CertificateSources from = sources(jobs::briFields(), facts);
        for (Fact &fact : from.input.facts)
            if (!fact.as<MadeWithFact>())
                fact.instrument.clear();
        from.decision = decide(from.input, from.limits);
        QVERIFY2(!from.decision.firstOpen(),
                 from.decision.firstOpen()
                     ? qPrintable(from.decision.firstOpen()->sentence().english())
                     : "");
        const CertificateContent content = certificates::content(from);
        QCOMPARE(content.instruments.size(), std::size_t(1));
        QCOMPARE(content.instruments.front().key, "TS-4");
        for (const CertificateCriterion &criterion : content.criteria)
            if (criterion.key == u"loop" || criterion.key == u"run")
                for (const CertificateReading &reading : criterion.readings)
                    QCOMPARE(reading.instrument, "TS-4");
    }

    /// Two runs, one on each channel, with the same figures: two rows that say which.
    void aRunOfEachChannelSaysWhich()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts = facts.first(facts.size() - 2);
        int n = 20;
        for (const char *channel : {"B1", "B2"}) {
            const int minute = 20 + n;
            for (QJsonObject fact : {jobs::detector(n, minute), jobs::run(n + 1, minute + 2)}) {
                fact["path"] = "far_end";
                fact["channels"] = QJsonArray{QLatin1StringView(channel)};
                fact["from_dn"] = QJsonValue::Undefined;
                fact["to_dn"] = QJsonValue::Undefined;
                facts << fact;
            }
            n += 20;
        }
        facts << jobs::call(80, 90, "B2", "in", "data", "2175550144");
        const CertificateSources from = sources(jobs::briFields(), facts);
        const CriterionResult *run = from.decision.criterion("run");
        QCOMPARE(run->outcome, CriterionOutcome::Met);
        QStringList names;
        for (const CertificateReading &reading : readingsOf(*run, from))
            names << reading.what;
        QCOMPARE(names.filter("Bit errors"), (QStringList{"Bit errors, B1", "Bit errors, B2"}));
        QStringList checks;
        for (const CertificateReading &reading :
             readingsOf(*from.decision.criterion("detector"), from))
            checks << reading.what + ": " + reading.value;
        QVERIFY2(checks.contains(
                     "Errors sent on purpose, B1: sent 3 times (3 bit errors in all), 3 seen"),
                 qPrintable(checks.join('\n')));
    }

    /// Dial tone is heard and no figure is read.
    void whatIsHeardIsNotAsRead()
    {
        for (const CertificateCriterion &criterion : certificates::analog().criteria)
            for (const CertificateReading &reading : criterion.readings) {
                if (criterion.key == u"dial_tone" || criterion.key == u"ringing")
                    QCOMPARE(reading.sure, "");
                if (criterion.key == u"noise")
                    QCOMPARE(reading.sure, "as read");
            }
    }

    /// A severely errored second is an errored one, whatever was typed.
    void whatIsCountedBesideWhatWasTypedIsSaid()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts.last()["severely_errored_seconds"] = 1;
        facts.last()["sync_losses"] = 1;
        const CertificateSources from = sources(jobs::briFields(), facts);
        QVERIFY2(from.decision.runs.front().text().contains(
                     "1 errored second, 1 severely errored second (0 errored typed; each severely "
                     "errored one counts)"),
                 qPrintable(from.decision.runs.front().text()));
    }

    /// A number whose call failed was called, and a call that was lost to errors went through.
    void aNumberThatWasCalledIsNotUncalled()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[10] = jobs::call(11, 23, "B1", "in", "voice", "2175550143", "failed");
        facts[11] = jobs::call(12, 24, "B1", "in", "data", "2175550143", "failed");
        facts.last()["bit_errors"] = 900;
        facts.last()["errored_seconds"] = 120;
        const CertificateSources from = sources(jobs::briFields(), facts);
        QCOMPARE(from.decision.outcome, OrderOutcome::NotAccepted);
        QStringList rows;
        for (const CertificateDelivery &row : deliveryOf(from))
            rows << row.name + ": " + row.delivered;
        for (const char *row :
             {"Number 1: a call for voice and data did not go through",
              "Number 2: answered in the error test", "B2: data, shown by calls; its run failed"})
            QVERIFY2(rows.contains(QString(row)), qPrintable(rows.join('\n')));
    }

    /// One call that was answered hides none that was not.
    void aFailedCallIsToldBesideAGoodOne()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts[11] = jobs::call(12, 24, "B1", "in", "data", "2175550143", "failed");
        QStringList rows;
        for (const CertificateDelivery &row : deliveryOf(sources(jobs::briFields(), facts)))
            rows << row.name + ": " + row.delivered;
        QVERIFY2(rows.contains("Number 1: answered when it was called; a call for data did not go "
                               "through"),
                 qPrintable(rows.join('\n')));
    }

    /// No test set that needs no calibration was within it, and no word is said of a meter that
    /// nobody judges.
    void calibrationIsSaidOnlyOfWhatHasOne()
    {
        const auto words = [](const CertificateSources &from) {
            return plainMeaning(*from.decision.criterion("instrument"));
        };
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        QCOMPARE(words(from), "The test sets are known, and were within their calibration.");
        from.input.instruments[0].calibrations = {{QDate(2025, 9, 1), {}}};
        from.decision = decide(from.input, from.limits);
        QCOMPARE(words(from),
                 "The test sets are known, and were within their calibration, or need none.");
        QList<QJsonObject> facts = jobs::briFacts();
        facts[0]["instrument"] = "OLD";
        QCOMPARE(words(sources(jobs::briFields(), facts)),
                 "The test sets are known, and were within their calibration. The meter of the "
                 "safety card is not judged by its calibration.");
    }

    void orderedBesideDelivered()
    {
        OrderFields fields = jobs::briFields();
        fields["nt_make"] = "Prairie NT1";
        fields["nt_serial"] = "88-4";
        fields["terminal_location"] = "jack by the counter";
        QList<QJsonObject> facts = jobs::briFacts();
        for (QJsonObject &fact : facts)
            fact["pair"] = "17-204";
        const CertificateContent content = certificates::content(sources(fields, facts));
        const auto delivered = [&content](const char *name) {
            for (const CertificateDelivery &row : content.delivery)
                if (row.name == QLatin1StringView(name))
                    return QString(row.ordered + " | " + row.delivered);
            return QString();
        };
        QCOMPARE(delivered("B1"), "voice, data at 64 kbit/s | voice and data, shown by calls and a "
                                  "run at 64 kbit/s");
        QCOMPARE(delivered("Number 1"), "217-555-0143 | answered when it was called");
        QCOMPARE(delivered("TEI 2"), "automatic | 65");
        QCOMPARE(delivered("Pair"), "17-204 | measured on 17-204");
        QCOMPARE(delivered("Jack or terminal"), "jack by the counter | –");
        QCOMPARE(delivered("NT"), "supplied with the line | Prairie NT1, serial 88-4");
    }

    void customerPremisesAndInstallerAreNamed_data()
    {
        QTest::addColumn<QString>("lacks");
        QTest::newRow("customer") << "customer";
        QTest::newRow("premises") << "premises";
    }
    void customerPremisesAndInstallerAreNamed()
    {
        QFETCH(QString, lacks);
        OrderFields fields = jobs::briFields();
        fields[lacks] = "";
        const auto refused = makeCertificate(sources(fields, jobs::briFacts()), {});
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::Refused);
        QVERIFY2(refused.error().message.contains("names no " + lacks),
                 qPrintable(refused.error().message));
        QCOMPARE(lacksForPaper(jobs::order(jobs::briFields()), false), QStringList{"installer"});
        QCOMPARE(lacksForPaper(jobs::order(jobs::briFields()), true), QStringList());
    }

    void whatTheCustomerMustKnow()
    {
        OrderFields fields = jobs::briFields();
        const auto told = [&fields](const QList<QJsonObject> &facts) {
            return certificates::content(sources(fields, facts)).mustKnow.join(' ');
        };
        QString text = told(jobs::briFacts());
        QVERIFY(text.contains("What feeds the NT was not recorded"));
        QVERIFY(
            text.contains("Emergency calls (911) are answered for the service address as it was "
                          "ordered: 12 Mill Lane."));
        QVERIFY(text.contains("No emergency call is tested without arrangement"));
        fields["nt_power"] = "mains socket in the hall, no battery";
        QVERIFY(told(jobs::briFacts()).contains("fed by: mains socket in the hall, no battery."));
        fields = jobs::analogFields();
        QVERIFY(!told(jobs::analogFacts()).contains("NT"));
    }

    void lateRecordingIsTold()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        for (const Fact &fact : from.input.facts)
            from.recordedAt.insert(fact.id, fact.at.plusSeconds(3600));
        QVERIFY(certificates::content(from).late.isEmpty());
        from.recordedAt[jobs::uuid(3)] = certificates::moment("2026-03-08T10:00:00-06:00");
        QCOMPARE(certificates::content(from).late,
                 QStringList{"One entry dated 4 March 2026 was recorded on 8 March 2026."});
    }

    void aReplacementSaysWhatAndWhy()
    {
        CertificateSources from = sources(jobs::briFields(), jobs::briFacts());
        const CertificateContent before = certificates::content(from);
        QList<QJsonObject> facts = jobs::briFacts();
        facts << jobs::detector(20, 60) << jobs::run(21, 62, 1, 1);
        from = sources(jobs::briFields(), facts);
        from.number = CertificateNumber{2026, "K7M4QP", 43}.text();
        from.replaces = before;
        from.replacedBecause = {"evidence was struck out: typing error, dialled " + sentinel};
        const CertificateContent content =
            certificates::content(from, NumberGuard(*testLinesFromText("loopback=" + sentinel)));
        QVERIFY(content.replaces);
        QCOMPARE(content.replaces->number, before.number);
        const QString why = content.replaces->because.join("; ");
        QVERIFY2(why.contains("a further run was made"), qPrintable(why));
        QVERIFY2(why.contains("Error-rate run"), qPrintable(why));
        QVERIFY(why.contains(NumberGuard::covered()));
        const auto again = CertificateContent::fromJson(content.toJson(), "record");
        QVERIFY(again);
        QCOMPARE(*again, content);
    }

    /// The sentence of the verdict counts what the criteria say.
    void theVerdictAgreesWithTheCriteria()
    {
        CertificateContent content = certificates::bri();
        const auto asked = std::ranges::count_if(content.criteria, [](const auto &criterion) {
            return criterion.outcome != CriterionOutcome::NotNeeded;
        });
        QCOMPARE(
            content.verdictSentence(),
            QString("Each of the %1 points that this line was checked for is met.").arg(asked));
        content.criteria[0].outcome = CriterionOutcome::NotMet;
        content.criteria[1].outcome = CriterionOutcome::Missing;
        content.criteria[2].grade = "marginal";
        content.outcome = OrderOutcome::AcceptedWithException;
        const QString text = content.verdictSentence();
        QVERIFY2(text.startsWith(QString("Of the %1 points that this line was checked for, %2 are "
                                         "met, 1 is not, 1 was not shown; 1 of those met is near "
                                         "the limit. They were accepted by exception")
                                     .arg(asked)
                                     .arg(asked - 2)),
                 qPrintable(text));
    }
};

QTEST_APPLESS_MAIN(MakeCertificateTest)
#include "MakeCertificateTest.moc"
