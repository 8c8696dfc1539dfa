#include "core/base/Text.h"

#include <QTest>

using namespace loopwright;

class TextTest : public QObject
{
    Q_OBJECT

    static QString german(const char *source, std::optional<qint64> count)
    {
        const QString text = QString::fromUtf8(source);
        if (text == "%1 of %2")
            return "%2, davon %1";
        if (text == "%n errors")
            return count == 1 ? QString("%n Fehler (einer)") : QString("%n Fehler");
        return text == "up" ? QString("aktiv") : text;
    }

private slots:
    void fillsAllPlacesAtOnce()
    {
        QCOMPARE(Text("%1 of %2").arg(QString("%2")).arg(7).english(), "%2 of 7");
        QCOMPARE(Text("95 % of %1").arg(0.5).english(), "95 % of 0.5");
        QCOMPARE(Text("%1 %2").arg(QString("a")).english(), "a %2");
    }
    void countsInOneAndInMany()
    {
        QCOMPARE(Text::counted("%n error", "%n errors", 1).english(), "1 error");
        QCOMPARE(Text::counted("%n error", "%n errors", 0).english(), "0 errors");
        QCOMPARE(Text::counted("%n error in %1", "%n errors in %1", 2).arg(QString("x")).english(),
                 "2 errors in x");
    }
    void joinsSentences()
    {
        Text text;
        QVERIFY(text.isEmpty());
        text += "One.";
        text += Text();
        text += Text("%1.").arg(QString("Two"));
        QCOMPARE(text.english(), "One. Two.");
        QVERIFY(text.contains("Two."));
        QVERIFY(!text.contains("Three."));
        QCOMPARE(Text::joined({"a", Text::verbatim("b"), {}, "c"}, "; ").english(), "a; b; c");
    }
    void speaksAnotherLanguage()
    {
        QCOMPARE(Text("%1 of %2").arg(Text("up")).arg(QString("up")).in(german), "up, davon aktiv");
        QCOMPARE(Text::counted("%n error", "%n errors", 1).in(german), "1 Fehler (einer)");
        QCOMPARE(Text::verbatim("up").in(german), "up"); // as it was typed
        QCOMPARE(Text::message("up").in(german), german("up", {}));
        QCOMPARE(Text::message("up").english(), "up");
        QVERIFY(Text::message({}).isEmpty());
    }
};

QTEST_APPLESS_MAIN(TextTest)
#include "TextTest.moc"
