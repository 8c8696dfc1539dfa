#include "core/base/Folding.h"

#include <QTest>

using namespace loopwright;

class FoldingTest : public QObject
{
    Q_OBJECT

private slots:
    void folds_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("folded");
        const auto row = [](const char *text, const char *folded) {
            QTest::newRow(text) << QString::fromUtf8(text) << QString::fromUtf8(folded);
        };
        row("Müller & Söhne", "muller & sohne");
        row("ŁÓDŹ", "lodz");
        row("Straße", "strasse");
        row("Ørsted  Ærø\tby", "orsted aero by");
        row("ﬁne", "fine");
        row("東京", "東京");
    }
    void folds()
    {
        QFETCH(QString, text);
        QFETCH(QString, folded);
        QCOMPARE(foldForSearch(text), folded);
        QCOMPARE(foldForSearch(folded), folded);
    }
};

QTEST_GUILESS_MAIN(FoldingTest)
#include "FoldingTest.moc"
