#include "core/certificate/MakeCertificate.h"

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
        const CertificateTerminal first{
            1,           "217-555-0143", "217 555 0143", "21755501430101", "217 555 0143 01 01",
            "automatic", "voice, data"};
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
            QCOMPARE(content.criteria[i].measured, from.decision.criteria[i].measuredText);
            QCOMPARE(content.criteria[i].limit, from.decision.criteria[i].limitText);
        }
        QCOMPARE(content.runsSentence(), "1 run was made");
        QCOMPARE(content.proves, from.decision.proves);
        QVERIFY(content.provesPlainly.contains("19 million"));
        QCOMPARE(content.notes, from.decision.notes);
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
             Calibration{QDate(2025, 9, 1), QDate(2026, 9, 1)}}};
        QCOMPARE(content.instruments, used);

        // A later calibration does not hold on the day; one that needs none says so.
        from.instruments.front().calibrations << Calibration{QDate(2026, 4, 1), QDate(2027, 4, 1)};
        QCOMPARE(certificates::content(from).instruments, used);
        from.instruments.front().calibrations = {{QDate(2020, 1, 1), {}}};
        QCOMPARE(certificates::content(from).instruments.front().calibration->due, std::nullopt);
        from.people.clear();
        QCOMPARE(certificates::content(from).installers, QStringList{"K7"});
    }

    void failedRunsAreListed()
    {
        QList<QJsonObject> facts = jobs::briFacts();
        facts.removeLast();
        facts << jobs::run(20, 32, 900, 120)
              << jobs::fact(21, "cleared", 50, {{"what", "wiring"}, {"text", "pair re-spliced"}})
              << jobs::detector(22, 52) << jobs::run(23, 54);
        const CertificateContent content = certificates::content(sources(jobs::briFields(), facts));
        QCOMPARE(content.runsSentence(), "2 runs were made");
        QCOMPARE(content.runs.front().result, "failed");
        QCOMPARE(content.runs.back().result, "counted");
        QVERIFY(!content.record().contains("re-spliced"));
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
        QCOMPARE(content.runs.front().result, "failed, struck out: " + why);
        QVERIFY(content.runs.front().struckOut);
        QVERIFY(!content.runs.back().struckOut);
        const auto run = std::find_if(content.criteria.begin(), content.criteria.end(),
                                      [](const auto &c) { return c.key == u"run"; });
        QVERIFY2(run->reason.endsWith("A run of 2026-03-04 08:14 was struck out: " + why + '.'),
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
        from.decision.notes << "by way of " + sentinel;
        from.decision.runs.front().text += ", to 9 " + sentinel;
        from.decision.criteria.front().measuredText += " 2175550199";
        from.decision.criteria.front().reason += " 217.555.0199";

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
            QCOMPARE(lines[i].value, variant->settings[i].value);
        QCOMPARE(lines.back(), (CertificateLine{"Prefix to dial", "9"}));
    }
};

QTEST_APPLESS_MAIN(MakeCertificateTest)
#include "MakeCertificateTest.moc"
