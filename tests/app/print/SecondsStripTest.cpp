#include "app/print/SecondsStrip.h"

#include "tests/support/Pictures.h"

#include <QImage>
#include <QTest>
#include <QXmlStreamReader>

using namespace loopwright;

namespace {

constexpr QSize size(900, 260);

QImage strip(const SecondList &seconds, qint64 planned, const PictureStyle &style,
             const QSize &picture = size)
{
    const std::vector<SecondMark> marks = classify(seconds, 64000);
    return pictures::draw(picture, [&](QPainter &painter, const QRectF &rect) {
        const bool running = planned > qint64(seconds.size());
        paintStrip(painter, rect, {seconds, marks, 64000, planned, running}, style);
    });
}

SecondList clean(int length)
{
    return SecondList(std::size_t(length));
}

/// Columns of pixels in which the two pictures differ.
QList<int> differingColumns(const QImage &a, const QImage &b)
{
    QList<int> columns;
    for (int x = 0; x < a.width(); ++x)
        for (int y = 0; y < a.height(); ++y)
            if (a.pixel(x, y) != b.pixel(x, y)) {
                columns << x;
                break;
            }
    return columns;
}

/// The words of the picture as a file.
QStringList words(const StripData &data)
{
    QStringList found;
    QXmlStreamReader reader(stripSvg(data));
    while (!reader.atEnd()) {
        reader.readNext();
        if (reader.isCharacters())
            found << reader.text().toString().trimmed();
    }
    if (reader.hasError())
        qFatal("%s", qPrintable(reader.errorString()));
    return found;
}

int highestInk(const QImage &with, const QImage &without)
{
    for (int y = 0; y < with.height(); ++y)
        for (int x = 0; x < with.width(); ++x)
            if (with.pixel(x, y) != without.pixel(x, y))
                return y;
    return with.height();
}

} // namespace

class SecondsStripTest : public QObject
{
    Q_OBJECT

private slots:
    void whatNobodyWatchedIsLeftEmpty()
    {
        const SecondList seconds(900);
        const std::vector<SecondMark> marks = classify(seconds, 64000);
        const std::vector<Stretch> gaps{{300, 600}};
        const auto draw = [&](std::span<const Stretch> notWatched) {
            return pictures::draw(size, [&](QPainter &painter, const QRectF &rect) {
                paintStrip(painter, rect, {seconds, marks, 64000, 900, false, notWatched},
                           paperStyle(12));
            });
        };
        const QImage with = draw(gaps), without = draw({});
        // Grid and base line are gone in the middle third alone; the legend below is another
        // matter.
        const QRect plot(0, 0, size.width(), size.height() * 2 / 3);
        const QList<int> differing = differingColumns(with.copy(plot), without.copy(plot));
        QVERIFY(!differing.isEmpty());
        QVERIFY(differing.front() > size.width() / 3 && differing.front() < size.width() * 2 / 5);
        QVERIFY(differing.back() > size.width() * 3 / 5 &&
                differing.back() < size.width() * 7 / 10);
        StripData data{seconds, marks, 64000, 900};
        QVERIFY(!words(data).contains("not watched"));
        data.notWatched = gaps;
        QCOMPARE(words(data).count("not watched"), 2); // in the plot, and in the legend
    }

    void aSecondStandsAtItsTime()
    {
        const PictureStyle style = paperStyle(12);
        const QImage empty = strip(clean(900), 900, style);
        int before = 0;
        for (const int second : {0, 100, 450, 899}) {
            SecondList seconds = clean(900);
            seconds[std::size_t(second)] = 5;
            const QList<int> columns = differingColumns(empty, strip(seconds, 900, style));
            QVERIFY(!columns.isEmpty() && columns.size() < 8);
            QVERIFY(columns.front() > before);
            before = columns.front();
        }
    }

    void theScaleIsLogarithmic()
    {
        const PictureStyle style = paperStyle(12);
        const QImage empty = strip(clean(900), 900, style);
        QList<int> tops;
        for (const qint64 errors : {1, 6, 36}) { // below 64: no triangle on top
            SecondList seconds = clean(900);
            seconds[300] = errors;
            tops << highestInk(strip(seconds, 900, style), empty);
        }
        QVERIFY(tops[0] > tops[1] && tops[1] > tops[2]);
        // The same factor is the same distance, to the pixel.
        QVERIFY(std::abs((tops[0] - tops[1]) - (tops[1] - tops[2])) <= 1);
    }

    /// All in black: an errored, a severely errored, an out-of-sync, an unavailable and a
    /// provisional second still differ.
    void classesDifferWithoutColour()
    {
        const PictureStyle style = pictures::blackOnWhite(12);
        QList<QImage> images;
        SecondList errored = clean(900), severe = clean(900), lost = clean(900),
                   unavailable = clean(900);
        for (std::size_t i = 100; i < 112; ++i) {
            errored[i] = 63;
            severe[i] = 64; // one more
            lost[i] = Second(std::nullopt);
            unavailable[i] = 64;
        }
        severe[105] = 63; // breaks the ten: severe but available
        SecondList provisional(unavailable.begin(), unavailable.begin() + 105);
        SecondList settled(provisional);
        settled.insert(settled.end(), 10, Second());
        for (const SecondList &seconds : {errored, severe, lost, unavailable, provisional, settled})
            images << strip(seconds, 900, style);
        for (qsizetype i = 0; i < images.size(); ++i)
            for (qsizetype j = i + 1; j < images.size(); ++j)
                QVERIFY2(!differingColumns(images[i], images[j]).isEmpty(),
                         qPrintable(QString("%1 %2").arg(i).arg(j)));
    }

    void aRunThatIsOverHasNothingProvisional()
    {
        SecondList seconds = clean(900);
        std::fill(seconds.end() - 5, seconds.end(), Second(100));
        const std::vector<SecondMark> marks = classify(seconds, 64000);
        QVERIFY(marks.back().provisional);
        QVERIFY(!words({seconds, marks, 64000, 900, false}).contains("may yet change"));
        const SecondList quiet = clean(900);
        QVERIFY(
            !words({quiet, classify(quiet, 64000), 64000, 1000, true}).contains("may yet change"));
        QVERIFY(words({seconds, marks, 64000, 1000, true}).contains("may yet change"));
        const auto drawn = [&](bool running) {
            return pictures::draw(size, [&](QPainter &painter, const QRectF &rect) {
                paintStrip(painter, rect, {seconds, marks, 64000, 900, running},
                           pictures::blackOnWhite(12));
            });
        };
        QVERIFY(differingColumns(drawn(true), drawn(false)).back() > size.width() * 9 / 10);
    }

    void timeThatIsNotRunIsEmpty()
    {
        // Black alone: half of the plan is run, then all of it, without an error both times.
        const PictureStyle style = pictures::blackOnWhite(12);
        const QImage half = strip(clean(450), 900, style);
        const QImage whole = strip(clean(900), 900, style);
        const QImage none = strip(clean(0), 900, style);
        const QRect plot(60, 30, 780, 150); // within the axes, above the base line
        const QRect left(plot.topLeft(), QSize(380, 150)), right(QPoint(470, 30), QSize(370, 150));
        QVERIFY(pictures::ink(whole, right) > 1000); // its scale
        QCOMPARE(pictures::ink(half, right), 0);
        QCOMPARE(pictures::ink(half, left), pictures::ink(whole, left));
        QCOMPARE(pictures::ink(none, right), 0);
        // The mark stands between, over the whole height.
        const QRect middle(430, 30, 35, 150);
        int mast = 0;
        for (int x = middle.left(); x <= middle.right(); ++x)
            mast = std::max<int>(mast, int(pictures::ink(half, QRect(x, 30, 1, 150))));
        QCOMPARE(mast, 150);
    }

    void theLegendNamesTimeThatIsNotRun()
    {
        const SecondList seconds = clean(450);
        const std::vector<SecondMark> marks = classify(seconds, 64000);
        QVERIFY(words({seconds, marks, 64000, 900, true}).contains("not yet run"));
        QVERIFY(words({seconds, marks, 64000, 900, false}).contains("not run")); // stopped early
        QVERIFY(words({{}, {}, 64000, 900, false}).contains("not yet run"));
        for (const qint64 planned : {0, 300, 450}) {
            const QString all = words({seconds, marks, 64000, planned, true}).join('|');
            QVERIFY2(!all.contains("run"), qPrintable(all));
        }
    }

    /// Wide bars do not hide that the time is unavailable.
    void outOfSyncAndUnavailableShowsBoth()
    {
        const PictureStyle style = pictures::blackOnWhite(12);
        SecondList unavailable(12, Second(std::nullopt));
        SecondList available = unavailable;
        available[9] = 0;
        const auto inkInFirstBar = [&](const SecondList &seconds) {
            const QImage picture = strip(seconds, 12, style);
            const QList<int> plot = differingColumns(strip(clean(12), 12, style), picture);
            int ink = 0; // in the middle of the first bar, away from its outline
            for (int y = size.height() / 4; y < size.height() / 2; ++y)
                for (int x = plot.front() + 8; x < plot.front() + 40; ++x)
                    ink += qGray(picture.pixel(x, y)) < 128;
            return ink;
        };
        QCOMPARE(inkInFirstBar(available), 0);
        QVERIFY(inkInFirstBar(unavailable) > 50);
    }

    /// In a file too, where nothing is clipped.
    void hatchingStaysInItsTime()
    {
        SecondList seconds = clean(900);
        std::fill(seconds.begin(), seconds.begin() + 20, Second(64000));
        const std::vector<SecondMark> marks = classify(seconds, 64000);
        int slanted = 0;
        QXmlStreamReader reader(stripSvg({seconds, marks, 64000, 900}));
        while (!reader.atEnd()) {
            if (reader.readNext() != QXmlStreamReader::StartElement || reader.name() != u"polyline")
                continue;
            const QStringList points =
                reader.attributes().value("points").toString().simplified().split(' ');
            const QStringList from = points.first().split(','), to = points.last().split(',');
            const double height = from[1].toDouble() - to[1].toDouble();
            const double width = to[0].toDouble() - from[0].toDouble();
            if (height <= 1 || std::abs(width - height) > 0.1)
                continue;
            ++slanted;
            QVERIFY(width < 20); // of 800 for 900 s
        }
        QVERIFY(slanted > 10);
    }

    void theShortestRunHasItsTimes()
    {
        const SecondList seconds = clean(1);
        const QStringList found = words({seconds, classify(seconds, 64000), 64000});
        QVERIFY2(found.contains("0:01"), qPrintable(found.join('|')));
    }

    void noSecondIsLostWhereManyShareABar()
    {
        SecondList seconds = clean(86400);
        seconds[43210] = 7;
        const PictureStyle style = paperStyle(12);
        QVERIFY(
            !differingColumns(strip(seconds, 0, style), strip(clean(86400), 0, style)).isEmpty());
    }

    void anyLengthAndAnyRoom_data()
    {
        QTest::addColumn<int>("seconds");
        QTest::addColumn<QSize>("room");
        for (const int seconds : {0, 1, 9, 10, 899, 100000})
            for (const QSize &room : {QSize(1, 1), QSize(40, 30), QSize(200, 90), QSize(3000, 200)})
                QTest::addRow("%d s, %d by %d", seconds, room.width(), room.height())
                    << seconds << room;
    }
    void anyLengthAndAnyRoom()
    {
        QFETCH(int, seconds);
        QFETCH(QSize, room);
        SecondList list = clean(seconds);
        for (std::size_t i = 0; i < list.size(); i += 3)
            list[i] = i % 2 ? Second(qint64(i)) : Second(std::nullopt);
        strip(list, 0, paperStyle(12), room);
    }

    void files()
    {
        SecondList seconds = clean(900);
        seconds[10] = 100;
        const std::vector<SecondMark> marks = classify(seconds, 64000);
        const StripData data{seconds, marks, 64000, 900};
        const QImage png = QImage::fromData(stripPng(data), "PNG");
        QCOMPARE(png.size(), QSize(1800, 520));
        QVERIFY(words(data).contains("unavailable"));
    }
};

QTEST_MAIN(SecondsStripTest)
#include "SecondsStripTest.moc"
