#include "app/print/TrendPlot.h"

#include "tests/support/Pictures.h"

#include <QTest>

using namespace loopwright;

namespace {

QStringList asked;

QString inAnotherLanguage(const QString &word)
{
    asked << word;
    return "<" + word + ">";
}

CircuitFigure figure()
{
    CircuitFigure figure{"loss_40000", Text::verbatim("loss"), "dB", 42, {}, {}};
    for (const char *at : {"2026-03-04T09:00:00-06:00", "2026-05-11T09:00:00-06:00"})
        figure.readings.push_back(
            {*Moment::parse(QString(at)), "A-1", "fact", "9-14", 28.4, ReadingState::Met});
    return figure;
}

} // namespace

class TrendPlotTest : public QObject
{
    Q_OBJECT

private slots:
    /// As the language of the reader writes them.
    void daysAreWords()
    {
        PictureStyle style = paperStyle(12);
        style.word = inAnotherLanguage;
        asked.clear();
        pictures::draw({700, 300}, [&style](QPainter &painter, const QRectF &rect) {
            paintTrend(painter, rect, figure(), style);
        });
        QVERIFY(asked.contains("4 March 2026"));
        QVERIFY(asked.contains("11 May 2026"));
        QVERIFY(asked.contains("dB"));
    }
    void anyRoom()
    {
        for (const QSize &room : {QSize(1, 1), QSize(60, 40), QSize(900, 420)})
            pictures::draw(room, [](QPainter &painter, const QRectF &rect) {
                paintTrend(painter, rect, figure(), paperStyle(12));
            });
    }
};

QTEST_MAIN(TrendPlotTest)
#include "TrendPlotTest.moc"
