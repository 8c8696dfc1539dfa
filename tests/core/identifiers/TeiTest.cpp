#include "core/identifiers/Tei.h"

#include <QTest>

using namespace loopwright;

class TeiTest : public QObject
{
    Q_OBJECT
private slots:
    // Ranges: Q.921 3.3.4, as two open-source stacks have them (0-63, 64-126, 127 the group).
    void checks_data()
    {
        QTest::addColumn<QString>("variant");
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("verdict");
        QTest::addColumn<QString>("code");
        QTest::addColumn<int>("fixed"); // -1: automatic, or none
        const auto row = [](const char *variant, const char *typed, const char *verdict,
                            const char *code, int fixed) {
            QTest::addRow("%s %s", variant, typed) << variant << typed << verdict << code << fixed;
        };
        row("ni1", "", "ok", "", -1);
        row("ni1", " AUTO ", "ok", "", -1);
        row("ni1", "automatic", "ok", "", -1);
        row("ni1", "1", "ok", "", 1);
        row("ni1", "063", "ok", "", 63);
        row("ni1", "0", "warning", "tei_zero", 0);
        row("ni1", "64", "warning", "tei_not_fixed", 64);
        row("ni1", "126", "warning", "tei_not_fixed", 126);
        row("ni1", "127", "error", "tei_range", -1);
        row("ni1", "99999999999999999999", "error", "tei_range", -1);
        row("ni1", "-1", "error", "tei_form", -1);
        row("ni1", "+1", "error", "tei_form", -1);
        row("ni1", "1.0", "error", "tei_form", -1);
        row("dss1-p2p", "0", "ok", "", 0);
        row("dss1-p2p", "1", "warning", "tei_not_zero", 1);
        row("dss1-p2p", "auto", "warning", "tei_not_zero", -1);
        row("dss1-p2p", "64", "warning", "tei_not_zero", 64);
        row("custom-5ess-p2p", "0", "ok", "", 0);
        row("ins64", "0", "ok", "", 0);
        row("ins64", "auto", "ok", "", -1);
        row("analog", "", "ok", "", -1);
        row("analog", "0", "error", "tei_not_used", -1);
        row("analog", "auto", "error", "tei_not_used", -1);
    }
    void checks()
    {
        QFETCH(QString, variant);
        QFETCH(QString, typed);
        const TeiCheck check = checkTei(*findVariant(variant), typed);
        QTEST(check.verdict(), "verdict");
        QTEST(check.findings.empty() ? QString() : check.findings.front().code, "code");
        QTEST(check.fixed.value_or(-1), "fixed");
    }
};

QTEST_APPLESS_MAIN(TeiTest)
#include "TeiTest.moc"
