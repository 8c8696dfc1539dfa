// An instrument that the register does not know, entered from its label: it counts, is told as
// labelled everywhere, and is confirmed or corrected by the office. The rules are the project's.

#include "app/actions/InstrumentLabels.h"

#include "app/actions/Acceptance.h"
#include "app/actions/Evidence.h"
#include "app/actions/Register.h"
#include "db/Connection.h"
#include "tests/support/Office.h"
#include "tests/support/Records.h"

using namespace loopwright;
using namespace loopwright::jobs;

namespace {

const InstrumentLabel good{"TS-9", "S-900", "loss set", "2025-09-01", "2026-09-01"};

InstrumentLabel with(QString InstrumentLabel::*field, const QString &value)
{
    InstrumentLabel label = good;
    label.*field = value;
    return label;
}

} // namespace

class InstrumentLabelsTest : public QObject
{
    Q_OBJECT

    std::unique_ptr<Records> m_records;

    CriterionResult judged() const
    {
        const auto decision = decideOrder(*m_records, "A-1001");
        if (!decision)
            qFatal("%s", qPrintable(decision.error().text()));
        for (const CriterionResult &each : decision->criteria)
            if (each.key == u"instrument")
                return each;
        qFatal("there is no criterion of the instrument");
    }
    Result<ImportReport> take(const QString &row, bool update) const
    {
        ImportOptions options{"instruments.csv"};
        options.update = update;
        return importInstruments(*m_records,
                                 "instrument,serial,kind,calibrated_on,calibration_due\n" +
                                     row.toUtf8() + '\n',
                                 options);
    }
    qint64 labelEvents() const
    {
        return m_records->database()
            .connection()
            .number(
                "SELECT count(*) FROM event WHERE kind = 'instrument_labelled' AND actor = 'K7'")
            .value_or(-1);
    }
    Instrument stored() const
    {
        const auto all = instruments(*m_records);
        for (const Instrument &each : *all)
            if (each.key == good.key)
                return each;
        return {};
    }

private slots:
    /// A job that is measured with a set that nobody registered.
    void init()
    {
        m_records = office();
        QVERIFY(importOrders(*m_records, csv({briFields()}), {"orders.csv"}));
        QJsonObject job = record(order(briFields()), briFacts());
        job["instrument"] = good.key;
        m_records->setNow(Moment::parse(u"2026-03-04T10:00:00-06:00"));
        QVERIFY(recordFile(*m_records, canonicalJson(job), "job.json"));
        m_records->actAs("K7");
    }

    void countsAndSaysSo()
    {
        QCOMPARE(judged().outcome, CriterionOutcome::NotMet);
        const auto labelled = labelInstrument(*m_records, good);
        QVERIFY2(labelled, labelled ? "" : qPrintable(labelled.error().text()));
        QVERIFY(labelled->asLabelled);
        QCOMPARE(stored(), *labelled);
        const CriterionResult result = judged();
        QCOMPARE(result.outcome, CriterionOutcome::Met);
        QVERIFY2(result.plain.english().contains("As labelled, until the office confirms it: TS-9"),
                 qPrintable(result.plain.english()));
        QCOMPARE(decideOrder(*m_records, "A-1001")->outcome, OrderOutcome::Accepted);
        QCOMPARE(labelEvents(), 1);
        // The same again writes nothing; another reading of the label corrects it.
        QVERIFY(labelInstrument(*m_records, good));
        QCOMPARE(labelEvents(), 1);
        QVERIFY(labelInstrument(*m_records, with(&InstrumentLabel::calibrationDue, "2026-03-03")));
        QCOMPARE(judged().outcome, CriterionOutcome::NotMet);
        QCOMPARE(stored().calibrations.size(), 1);
    }

    void theOfficeConfirms()
    {
        QVERIFY(labelInstrument(*m_records, good));
        m_records->actAs("D4");
        const QString row = "TS-9,S-900,loss set,2025-09-01,2026-09-01";
        const auto refused = take(row, false);
        QVERIFY(refused && !refused->clean());
        QVERIFY(stored().asLabelled);
        QVERIFY(take(row, true)->clean());
        QVERIFY(!stored().asLabelled);
        QVERIFY(!judged().plain.english().contains("labelled"));
        QCOMPARE(judged().outcome, CriterionOutcome::Met);
        m_records->actAs("K7");
        const auto late = labelInstrument(*m_records, good);
        QVERIFY(!late);
        QCOMPARE(late.error().code, ErrorCode::Refused);
    }

    /// What the office says stands in the place of what was read off the label, not beside it.
    void theOfficeCorrects()
    {
        QVERIFY(labelInstrument(*m_records, good));
        m_records->actAs("D4");
        QVERIFY(take("TS-9,S-900,loss set,2024-02-01,2025-02-01", true)->clean());
        QCOMPARE(stored().calibrations,
                 (QList<Calibration>{{QDate(2024, 2, 1), QDate(2025, 2, 1)}}));
        QCOMPARE(judged().outcome, CriterionOutcome::NotMet);
    }

    void whatIsNoLabel_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QString>("serial");
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("on");
        QTest::addColumn<QString>("due");
        QTest::addColumn<QString>("place");
        const auto row = [](const char *name, const InstrumentLabel &label, const char *place) {
            QTest::newRow(name) << label.key << label.serial << label.kind << label.calibratedOn
                                << label.calibrationDue << QString(place);
        };
        using L = InstrumentLabel;
        row("no key", with(&L::key, ""), "instrument");
        row("a key of two scripts", with(&L::key, u"TS-\u0410B"_qs), "instrument");
        row("a key too long", with(&L::key, QString(61, 'x')), "instrument");
        row("no serial", with(&L::serial, " "), "serial");
        row("a control character", with(&L::serial, "a\x01z"), "serial");
        row("a kind too long", with(&L::kind, QString(201, 'x')), "kind");
        row("no day", with(&L::calibratedOn, ""), "calibrated_on");
        row("a day that is none", with(&L::calibratedOn, "2025-02-30"), "calibrated_on");
        row("a day to come", with(&L::calibratedOn, "2026-03-05"), "calibrated_on");
        row("no end", with(&L::calibrationDue, ""), "calibration_due");
        row("an end before it began", with(&L::calibrationDue, "2025-08-31"), "calibration_due");
    }
    void whatIsNoLabel()
    {
        QFETCH(QString, key);
        QFETCH(QString, serial);
        QFETCH(QString, kind);
        QFETCH(QString, on);
        QFETCH(QString, due);
        const auto labelled = labelInstrument(*m_records, {key, serial, kind, on, due});
        QVERIFY(!labelled);
        QCOMPARE(labelled.error().code, ErrorCode::BadInput);
        QTEST(labelled.error().place, "place");
        QCOMPARE(instruments(*m_records)->size(), 1);
    }

    void oneThatNeedsNoCalibration()
    {
        InstrumentLabel label = with(&InstrumentLabel::calibrationDue, "not_required");
        label.calibratedOn.clear();
        QVERIFY(labelInstrument(*m_records, label));
        QCOMPARE(stored().calibrations, (QList<Calibration>{{QDate(), {}}}));
        QCOMPARE(judged().outcome, CriterionOutcome::Met);
    }
};

QTEST_GUILESS_MAIN(InstrumentLabelsTest)
#include "InstrumentLabelsTest.moc"
