#include "core/certificate/PlainWords.h"

#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class PlainWordsTest : public QObject
{
    Q_OBJECT

private slots:
    /// Whatever a decision holds has words for a customer.
    void everyCriterionHasWords_data()
    {
        QTest::addColumn<DecisionInput>("input");
        QTest::newRow("basic rate") << jobs::input(jobs::briFields(), jobs::briFacts());
        QTest::newRow("analog") << jobs::input(jobs::analogFields(), jobs::analogFacts());
    }
    void everyCriterionHasWords()
    {
        QFETCH(DecisionInput, input);
        const Decision decision = decide(input, jobs::limits());
        QVERIFY(decision.criteria.size() > 8);
        for (CriterionResult criterion : decision.criteria) {
            criterion.outcome = CriterionOutcome::Met;
            const QString met = plainMeaning(criterion);
            criterion.outcome = CriterionOutcome::NotMet;
            const QString notMet = plainMeaning(criterion);
            QVERIFY(met != notMet);
            for (const QString &sentence : {met, notMet})
                QVERIFY2(sentence.endsWith('.') && sentence.size() <= 110, qPrintable(sentence));
        }
    }

    void whatIsNotNeededSaysWhy()
    {
        CriterionResult criterion;
        criterion.key = "run";
        criterion.outcome = CriterionOutcome::NotNeeded;
        criterion.reason = "The line carries no circuit-switched data.";
        QCOMPARE(plainMeaning(criterion), criterion.reason.english());
        criterion.key = "no such key";
        criterion.outcome = CriterionOutcome::Met;
        QCOMPARE(plainMeaning(criterion), criterion.reason.english());
    }

    void proof_data()
    {
        QTest::addColumn<double>("upper");
        QTest::addColumn<QString>("sentence");
        // 1 / 5.2009e-8 = 19,227,420: bits that 900 s at 64 kbit/s without an error prove
        // (-ln 0.05 / N; computed with mpmath, reference table of bounds).
        const QString text =
            "With 95 % confidence, at most one bit in %1 arrived wrong in this run.";
        QTest::newRow("900 s at 64k") << 5.200924086031232e-8 << text.arg("19 million");
        QTest::newRow("900 s at 56k") << 5.943913e-8 << text.arg("16 million");
        QTest::newRow("exactly") << 1e-7 << text.arg("10 million");
        QTest::newRow("a bad line") << 3.3e-5 << text.arg("30,000");
        QTest::newRow("below a million") << 1.5e-6 << text.arg("660,000");
        QTest::newRow("nothing proved") << 1.0 << "";
        QTest::newRow("no figure") << 0.0 << "";
    }
    void proof()
    {
        QFETCH(double, upper);
        QTEST(plainProof({{"ber_upper_95", upper}}), "sentence");
    }
    /// 1 / 7.9950e-8 = 12,507,818: what 900 s at 64 kbit/s without an error prove at 99 %
    /// (-ln 0.01 / N).
    void proofAtAnotherConfidence()
    {
        QCOMPARE(plainProof({{"ber_upper_95", 5.200924086031232e-8},
                             {"ber_upper", 7.995e-8},
                             {"confidence", 0.99}}),
                 "With 99 % confidence, at most one bit in 12 million arrived wrong in this run.");
    }
    void proofOfNothing() { QCOMPARE(plainProof({}), QString()); }

    void outcomes()
    {
        QCOMPARE(plainOutcome(CriterionOutcome::Met), "met");
        QCOMPARE(plainOutcome(CriterionOutcome::Missing), "not shown");
    }
};

QTEST_APPLESS_MAIN(PlainWordsTest)
#include "PlainWordsTest.moc"
