#include "core/certificate/Slips.h"

#include "core/certificate/CertificateNumber.h"
#include "tests/support/Certificates.h"

#include <QTest>

using namespace loopwright;
using certificates::sources;

namespace {

/// The job up to its measurements of the pair, then handed on.
QList<QJsonObject> begun(double acVolts)
{
    QList<QJsonObject> facts = jobs::briFacts().first(3);
    facts[0] = jobs::safety(1, 5, acVolts);
    return facts;
}

LeaveBehindSlip slipOf(const QList<QJsonObject> &facts, OrderFields fields = jobs::briFields())
{
    const auto slip = leaveBehindSlip(sources(fields, facts), {});
    if (!slip)
        qFatal("%s", qPrintable(slip.error().text()));
    return *slip;
}

QJsonObject referred(const char *waitingOn)
{
    return jobs::fact(40, "referred", 60,
                      {{"to", "the trouble desk"},
                       {"reference", "T-44"},
                       {"waiting_on", QString::fromLatin1(waitingOn)}});
}

} // namespace

class SlipsTest : public QObject
{
    Q_OBJECT

private slots:
    void saysWhatWasDoneAndWhatIsMissing()
    {
        const LeaveBehindSlip slip = slipOf(begun(0.2));
        QVERIFY(slip.done.join(' ').contains("is fit for this service"));
        QVERIFY(slip.missing.join(' ').contains("how many errors the line makes"));
        QCOMPARE(slip.visited, "4 March 2026, by Pat Example");
        QCOMPARE(slip.call.name, "order A-1001");
        QCOMPARE(slip.next, QStringList{"The line is due on 6 March 2026."});
    }

    /// Of wires that nobody may touch no slip says that they are fit.
    void besideAHazardNothingOfThePairIsDone()
    {
        const LeaveBehindSlip slip = slipOf(begun(120));
        QVERIFY2(!slip.done.join(' ').contains("fit"), qPrintable(slip.done.join(' ')));
        QVERIFY(!slip.done.isEmpty()); // its numbers are in order all the same
        QVERIFY(slip.next.front().startsWith("A dangerous voltage was read on the pair of wires."));
    }

    void saysWhatItWaitsFor_data()
    {
        QTest::addColumn<QString>("says");
        QTest::newRow("customer") << "it waits for you: please call the number below.";
        QTest::newRow("plant") << "it waits for the cable crew.";
        QTest::newRow("power_utility") << "it waits for the power company.";
    }
    void saysWhatItWaitsFor()
    {
        QFETCH(QString, says);
        QList<QJsonObject> facts = begun(0.2);
        facts << referred(QTest::currentDataTag());
        const QString next = slipOf(facts).next.front();
        QVERIFY2(next.startsWith("On 4 March 2026, 09:00 (UTC-06:00) your order was handed on to: "
                                 "the trouble desk, reference T-44; "),
                 qPrintable(next));
        QVERIFY2(next.endsWith(says), qPrintable(next));
    }

    void whatTestSetsWereUsedIsNotDenied()
    {
        // Named, and read before the day of its calibration: it was said which one.
        CertificateSources from = sources(jobs::briFields(), begun(0.2));
        from.input.instruments.clear();
        from.decision = decide(from.input, from.limits);
        const auto slip = leaveBehindSlip(from, {});
        QVERIFY(slip);
        QVERIFY2(!slip->missing.join(' ').contains("It was not said"),
                 qPrintable(slip->missing.join(' ')));
    }

    void refused_data()
    {
        QTest::addColumn<QString>("column");
        QTest::addColumn<QString>("says");
        QTest::newRow("no premises") << "premises"
                                     << "names no premises";
        QTest::newRow("no customer") << "customer"
                                     << "names no customer";
    }
    void refused()
    {
        QFETCH(QString, column);
        QFETCH(QString, says);
        OrderFields fields = jobs::briFields();
        fields.remove(column);
        const auto slip = leaveBehindSlip(sources(fields, begun(0.2)), {});
        QVERIFY(!slip);
        QVERIFY2(slip.error().message.contains(says), qPrintable(slip.error().message));
    }

    void eachSlipForItsOutcome()
    {
        const CertificateSources accepted = sources(jobs::briFields(), jobs::briFacts());
        const CertificateSources open = sources(jobs::briFields(), begun(0.2));
        QVERIFY(!leaveBehindSlip(accepted, {}));
        QVERIFY(!closeOutSlip(open, {}));
        const auto slip = closeOutSlip(accepted, {});
        QVERIFY(slip);
        QCOMPARE(slip->completionNumber, completionNumber(accepted.decision));
        QCOMPARE(slip->outcome, "Accepted");
        QVERIFY(std::ranges::any_of(slip->readings, [](const auto &each) {
            return each.first == u"Loop" && each.second.value == u"612 ohm";
        }));
    }
};

QTEST_APPLESS_MAIN(SlipsTest)
#include "SlipsTest.moc"
