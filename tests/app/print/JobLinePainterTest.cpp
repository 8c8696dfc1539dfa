#include "app/print/JobLinePainter.h"

#include "tests/support/Pictures.h"

#include <QTest>

using namespace loopwright;

namespace {

QImage mark(const StationState &state)
{
    const PictureStyle style = pictures::blackOnWhite(20);
    return pictures::draw({60, 60}, [&](QPainter &painter, const QRectF &rect) {
        paintStationMark(painter, rect.center(), 20, state, style);
    });
}

std::vector<StationState> line()
{
    std::vector<StationState> states;
    states.reserve(9);
    for (int i = 0; i < 9; ++i)
        states.push_back({Station(i), StationMark(i % 4), false, i == 4});
    return states;
}

} // namespace

class JobLinePainterTest : public QObject
{
    Q_OBJECT

private slots:
    /// In one colour alone every mark still differs from every other.
    void marksDifferByShape()
    {
        QList<QImage> marks;
        for (const auto &[value, word] : EnumCodes<StationMark>::table)
            marks << mark({Station::Loop, value, false, false});
        marks << mark({Station::Loop, StationMark::Done, true, false});
        for (qsizetype i = 0; i < marks.size(); ++i)
            for (qsizetype j = i + 1; j < marks.size(); ++j) {
                QImage difference = marks[i];
                qint64 differing = 0;
                for (int y = 0; y < difference.height(); ++y)
                    for (int x = 0; x < difference.width(); ++x)
                        differing += marks[i].pixel(x, y) != marks[j].pixel(x, y);
                QVERIFY2(differing > 40,
                         qPrintable(QString("%1 %2: %3").arg(i).arg(j).arg(differing)));
            }
    }

    void staysInside_data()
    {
        QTest::addColumn<int>("width");
        for (const int width : {30, 200, 420, 900, 2000})
            QTest::addRow("%d", width) << width;
    }
    void staysInside()
    {
        QFETCH(int, width);
        const QRect inner(40, 40, width, 60);
        const QImage image =
            pictures::draw({width + 80, 140}, [&](QPainter &painter, const QRectF &) {
                paintJobLine(painter, inner, line(), paperStyle(12));
            });
        QCOMPARE(pictures::ink(image, {0, 0, image.width(), 40}), 0);
        QCOMPARE(pictures::ink(image, {0, 100, image.width(), 40}), 0);
        QCOMPARE(pictures::ink(image, {0, 0, 40, 140}), 0);
        QCOMPARE(pictures::ink(image, {40 + width, 0, 40, 140}), 0);
        QVERIFY(width < 36 || pictures::ink(image) > 300);
    }

    void anEmptyLineDrawsNothing()
    {
        const QImage image = pictures::draw({100, 60}, [](QPainter &painter, const QRectF &rect) {
            paintJobLine(painter, rect, {}, paperStyle(12));
        });
        QCOMPARE(pictures::ink(image), 0);
    }
};

QTEST_MAIN(JobLinePainterTest)
#include "JobLinePainterTest.moc"
