#include "app/desktop/Theme.h"

#include "app/desktop/DeskStyle.h"

#include <QFontInfo>
#include <QImage>
#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <QStyleOptionSlider>
#include <QTest>

#include <cmath>

using namespace loopwright;

namespace {

/// Relative luminance and contrast ratio after WCAG 2.1 (definitions of "relative luminance" and
/// "contrast ratio").
double linear(double part)
{
    return part <= 0.03928 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
}

double luminance(const QColor &colour)
{
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast(const QColor &a, const QColor &b)
{
    const double la = luminance(a), lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

} // namespace

class ThemeTest : public QObject
{
    Q_OBJECT

private slots:
    void aScrollBarHasItsWholeLength()
    {
        applyTheme(*qApp, Look::Light, 100);
        QStyleOptionSlider bar;
        bar.rect = QRect(0, 0, 400, 14);
        bar.orientation = Qt::Horizontal;
        bar.state = QStyle::State_Horizontal;
        bar.maximum = 100;
        bar.pageStep = 100;
        const auto handle = [&bar] {
            return QApplication::style()->subControlRect(QStyle::CC_ScrollBar, &bar,
                                                         QStyle::SC_ScrollBarSlider);
        };
        QCOMPARE(handle(), QRect(0, 0, 200, 14));
        bar.sliderPosition = bar.sliderValue = 100;
        QCOMPARE(handle(), QRect(200, 0, 200, 14));
    }

    void contrastFormula()
    {
        // WCAG 2.1: black on white is 21:1, the most there is; #777 on white is 4.48:1, the usual
        // example of a grey that just fails.
        QCOMPARE(contrast(Qt::black, Qt::white), 21.0);
        QVERIFY(std::abs(contrast(QColor(0x77, 0x77, 0x77), Qt::white) - 4.48) < 0.005);
    }

    void textIsReadable_data()
    {
        QTest::addColumn<QString>("look");
        for (const QString &look : allWords<Look>())
            QTest::newRow(qPrintable(look)) << look;
    }
    void textIsReadable()
    {
        QFETCH(QString, look);
        const Colours &c = coloursOf(*fromText<Look>(look));
        for (const QColor &ground : {c.window, c.base, c.raised}) {
            for (const QColor &ink : {c.text, c.muted, c.accent, c.good, c.bad, c.doubtful})
                QVERIFY2(contrast(ink, ground) >= 4.5,
                         qPrintable(QString("%1 on %2: %3")
                                        .arg(ink.name(), ground.name())
                                        .arg(contrast(ink, ground))));
            QVERIFY2(contrast(c.frame, ground) >= 3.0, qPrintable(ground.name()));
        }
        QVERIFY(contrast(c.onAccent, c.accent) >= 4.5);
        QVERIFY(contrast(c.onSelected, c.selected) >= 4.5);
        QVERIFY(contrast(c.good, c.goodGround) >= 4.5);
        QVERIFY(contrast(c.bad, c.badGround) >= 4.5);
        QVERIFY(contrast(c.doubtful, c.doubtfulGround) >= 4.5);
        QVERIFY(contrast(c.text, c.goodGround) >= 4.5);
        QVERIFY(contrast(c.text, c.badGround) >= 4.5);
        QVERIFY(contrast(c.text, c.doubtfulGround) >= 4.5);
        // Signs in a selected row are drawn on its ground.
        for (const QColor &ink : {c.good, c.bad, c.doubtful})
            QVERIFY2(*fromText<Look>(look) == Look::HighContrast ||
                         contrast(ink, c.selected) >= 3.0,
                     qPrintable(ink.name()));
    }

    void aRadioButtonIsSeen_data() { textIsReadable_data(); }
    void aRadioButtonIsSeen()
    {
        QFETCH(QString, look);
        applyTheme(*qApp, *fromText<Look>(look), 100);
        const auto contrasts = [](QStyle::State state) {
            QStyleOptionButton option;
            option.rect = QRect(0, 0, 16, 16);
            option.state = QStyle::State_Enabled | state;
            QImage image(option.rect.size(), QImage::Format_RGB32);
            image.fill(colours().base);
            QPainter painter(&image);
            QApplication::style()->drawPrimitive(QStyle::PE_IndicatorRadioButton, &option,
                                                 &painter);
            double most = 0;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x)
                    most = std::max(most, contrast(image.pixelColor(x, y), colours().base));
            return std::pair(most, contrast(image.pixelColor(8, 8), colours().base));
        };
        QVERIFY(contrasts(QStyle::State_Off).first >= 3);
        QVERIFY(contrasts(QStyle::State_Off).second < 1.1);
        QVERIFY(contrasts(QStyle::State_On).second >= 3);
    }

    void aMenuHasAnEdge_data() { textIsReadable_data(); }
    void aMenuHasAnEdge()
    {
        QFETCH(QString, look);
        applyTheme(*qApp, *fromText<Look>(look), 100);
        const QColor ground = QApplication::palette().color(QPalette::Window);
        QImage image(60, 20, QImage::Format_RGB32);
        image.fill(ground);
        QPainter painter(&image);
        QStyleOptionFrame frame;
        frame.rect = image.rect();
        frame.lineWidth = 1;
        QApplication::style()->drawPrimitive(QStyle::PE_FrameMenu, &frame, &painter);
        for (const QPoint at : {QPoint(0, 10), QPoint(59, 10), QPoint(30, 0), QPoint(30, 19)})
            QVERIFY(contrast(image.pixelColor(at), ground) >= 3);
        QCOMPARE(image.pixelColor(30, 10), ground);
        QStyleOptionMenuItem between;
        between.menuItemType = QStyleOptionMenuItem::Separator;
        between.rect = image.rect();
        QApplication::style()->drawControl(QStyle::CE_MenuItem, &between, &painter);
        double most = 0;
        for (int y = 5; y < 15; ++y)
            most = std::max(most, contrast(image.pixelColor(30, y), ground));
        QVERIFY(most >= 3);
        QCOMPARE(QApplication::style()->pixelMetric(QStyle::PM_MenuPanelWidth), 1);
    }

    void signsAndFramesGrow()
    {
        const auto arrowWidth = [](int percent) {
            applyTheme(*qApp, Look::Light, percent);
            QImage image(40, 40, QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            QStyleOption option;
            option.rect = image.rect();
            option.state = QStyle::State_Enabled;
            QApplication::style()->drawPrimitive(QStyle::PE_IndicatorArrowDown, &option, &painter);
            int inked = 0;
            for (int x = 0; x < image.width(); ++x) {
                bool any = false;
                for (int y = 0; y < image.height(); ++y)
                    any |= contrast(image.pixelColor(x, y), Qt::white) > 3;
                inked += any;
            }
            return inked;
        };
        const int small = arrowWidth(100);
        QVERIFY(small >= 6);
        QVERIFY(arrowWidth(200) >= 2 * small - 1);
        const auto metric = [](QStyle::PixelMetric of) {
            return QApplication::style()->pixelMetric(of);
        };
        QCOMPARE(metric(QStyle::PM_DefaultFrameWidth), 2);
        QCOMPARE(metric(QStyle::PM_ComboBoxFrameWidth), 2);
        QCOMPARE(metric(QStyle::PM_MenuPanelWidth), 2);
    }

    void nothingTouchesTheFrameOfAList()
    {
        applyTheme(*qApp, Look::Light, 200);
        QStyleOptionComboBox list;
        list.rect = QRect(0, 0, 300, 60);
        const auto part = [&list](QStyle::SubControl of) {
            return QApplication::style()->subControlRect(QStyle::CC_ComboBox, &list, of);
        };
        const QRect text = part(QStyle::SC_ComboBoxEditField);
        const QRect sign = part(QStyle::SC_ComboBoxArrow);
        QVERIFY(text.left() >= 10);
        QVERIFY(!text.intersects(sign));
        QVERIFY(sign.width() >= 20 && sign.right() <= 296);
        list.direction = Qt::RightToLeft;
        QVERIFY(part(QStyle::SC_ComboBoxArrow).left() >= 3);
    }

    void headingsStandApart()
    {
        applyTheme(*qApp, Look::Light, 100);
        const auto widthOf = [](const QString &text) {
            QStyleOptionHeader heading;
            heading.text = text;
            heading.fontMetrics = QFontMetrics(QApplication::font());
            return QApplication::style()
                ->sizeFromContents(QStyle::CT_HeaderSection, &heading, QSize())
                .width();
        };
        const QString text = "Last in";
        const int needed = QFontMetrics(QApplication::font()).horizontalAdvance(text);
        QVERIFY(widthOf(text) >= needed + em(0.8));
    }

    void paletteTellsItsLook_data() { textIsReadable_data(); }
    void paletteTellsItsLook()
    {
        QFETCH(QString, look);
        const Look wanted = *fromText<Look>(look);
        QCOMPARE(lookOf(paletteOf(wanted)), wanted);
        const QPalette palette = paletteOf(wanted);
        QVERIFY(contrast(palette.color(QPalette::Disabled, QPalette::Text),
                         palette.color(QPalette::Base)) >= 4.5);
        QVERIFY(contrast(palette.color(QPalette::ToolTipText),
                         palette.color(QPalette::ToolTipBase)) >= 4.5);
        QVERIFY(contrast(palette.color(QPalette::ButtonText), palette.color(QPalette::Button)) >=
                4.5);
    }

    void sizeScalesEverything()
    {
        applyTheme(*qApp, Look::Light, 100);
        QVERIFY(!QFontInfo(QApplication::font()).family().isEmpty());
        const int small = em(10);
        const int indicator = QApplication::style()->pixelMetric(QStyle::PM_IndicatorWidth);
        QLabel label("Loop");
        label.show();
        int told = 0;
        whenThemed(&label, [&] { told = em(1); });
        const int before = label.sizeHint().height();
        applyTheme(*qApp, Look::Dark, 200);
        QVERIFY(std::abs(em(10) - 2 * small) <= 15); // fonts have whole pixels
        QCOMPARE(QApplication::style()->pixelMetric(QStyle::PM_IndicatorWidth), 2 * indicator);
        QLabel big("Loop");
        big.ensurePolished();
        QVERIFY(big.sizeHint().height() >= 1.8 * before); // fonts have whole pixels
        QTRY_COMPARE(told, em(1));
        QCOMPARE(lookOf(QApplication::palette()), Look::Dark);
    }

    void sizeIsKeptInBounds()
    {
        applyTheme(*qApp, Look::Light, 200);
        const int most = em(10);
        applyTheme(*qApp, Look::Light, 100'000);
        QCOMPARE(em(10), most);
        applyTheme(*qApp, Look::Light, -3);
        QVERIFY(em(10) < most);
    }
};

QTEST_MAIN(ThemeTest)
#include "ThemeTest.moc"
