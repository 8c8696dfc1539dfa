// Every screen of the window in the smallest room that is asked for: 1024 by 600, and at twice the
// size 1920 by 1080; in English and in German, whose words are longer. At any size the window
// itself fits into 1024 by 600: what has no room there scrolls.

#include "app/desktop/DeskStyle.h"
#include "app/desktop/Language.h"
#include "app/desktop/screens/BoardFilterBar.h"
#include "tests/support/DeskWindow.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QHeaderView>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>

using namespace loopwright;

class SmallWindowTest : public QObject, DeskWindow
{
    Q_OBJECT

private:
    /// What of the shown screen has less room than it needs.
    QStringList cut() const
    {
        QStringList found;
        const Screen *screen = m_window->current();
        const auto *area = qobject_cast<QScrollArea *>(screen->parentWidget()->parentWidget());
        if (area->horizontalScrollBar()->maximum() > 0)
            found << QString("the page is %1 too wide").arg(area->horizontalScrollBar()->maximum());
        for (const QAbstractButton *button : screen->findChildren<QAbstractButton *>())
            if (button->isVisible() && !button->text().isEmpty() &&
                button->width() < button->minimumSizeHint().width())
                found << QString("%1 “%2”").arg(button->objectName(), button->text());
        for (const Table *table : screen->findChildren<Table *>())
            if (table->isVisible() && !table->horizontalHeader()->isHidden())
                found << cutHeadings(*table);
        return found;
    }
    static QStringList cutHeadings(const Table &table)
    {
        QStringList found;
        const QHeaderView *header = table.horizontalHeader();
        for (int column = 0; column < header->count(); ++column)
            if (!header->isSectionHidden(column) &&
                header->sectionSize(column) < header->sectionSizeHint(column))
                found << table.model()->headerData(column, Qt::Horizontal).toString();
        return found;
    }

    /// Those that something around them does not show whole.
    static QStringList cutFilters(const QWidget &bar)
    {
        QStringList found;
        int seen = 0;
        for (const QWidget *filter : bar.findChildren<QWidget *>()) {
            if (!filter->isVisible() || filter->isWindow() ||
                !(qobject_cast<const QAbstractButton *>(filter) ||
                  qobject_cast<const QComboBox *>(filter)))
                continue;
            ++seen;
            for (const QWidget *around = filter->parentWidget(); around != bar.parentWidget();
                 around = around->parentWidget()) {
                const QRect place(filter->mapTo(around, QPoint()), filter->size());
                if (!around->rect().contains(place))
                    found << filter->objectName();
            }
        }
        return seen > 10 ? found : QStringList("no filters");
    }
    /// 1024 by 600.
    void openSmallWindow(const QString &language, int percent)
    {
        speak(language);
        applyTheme(*qApp, Look::Light, percent);
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        m_window->resize(1024, 600);
    }

private slots:
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
        speak("en");
        applyTheme(*qApp, Look::Light, 100);
    }

    void everyScreenHasRoom_data()
    {
        QTest::addColumn<QString>("language");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<int>("percent");
        for (const char *language : {"en", "de"}) {
            QTest::addRow("%s, small", language) << QString(language) << QSize(1024, 600) << 100;
            QTest::addRow("%s, twice", language) << QString(language) << QSize(1920, 1080) << 200;
        }
    }
    void everyScreenHasRoom()
    {
        QFETCH(QString, language);
        QFETCH(QSize, size);
        QFETCH(int, percent);
        speak(language);
        applyTheme(*qApp, Look::Light, percent);
        m_records = std::make_unique<DeskRecords>();
        openWindow();
        m_window->resize(size);
        QStringList found;
        for (const ScreenEntry &entry : allScreens()) {
            const QString key = entry.key;
            m_window->showScreen(key, DeskRecords::subjects().of(entry));
            QTest::qWait(150);
            QCOMPARE(m_window->size(), size); // no screen makes the window larger
            for (const QString &each : cut())
                found << key + ": " + each;
            // The name of the shown screen is in bold.
            const auto *button = named<QToolButton>("rail." + key);
            const bool narrow = named<QWidget>("rail")->width() < em(6);
            if (button && key != "job" && !narrow)
                if (QFontMetrics(sized(1, QFont::DemiBold)).horizontalAdvance(button->text()) >
                    button->width() - em(3.3))
                    found << "rail: " + button->text();
        }
        QVERIFY2(found.isEmpty(), qPrintable("\n" + found.join('\n')));
    }

    void theWindowFitsAtEverySize_data()
    {
        QTest::addColumn<QString>("language");
        QTest::addColumn<int>("percent");
        for (const char *language : {"en", "de"})
            for (const int percent : {150, 200})
                QTest::addRow("%s, %d", language, percent) << QString(language) << percent;
    }
    void theWindowFitsAtEverySize()
    {
        QFETCH(QString, language);
        QFETCH(int, percent);
        const QSize size(1024, 600);
        openSmallWindow(language, percent);
        for (const ScreenEntry &entry : allScreens()) {
            m_window->showScreen(entry.key, DeskRecords::subjects().of(entry));
            QTest::qWait(100);
            QVERIFY2(m_window->minimumSizeHint().height() <= size.height(), entry.key);
            QVERIFY2(m_window->minimumSizeHint().width() <= size.width(), entry.key);
            QCOMPARE(m_window->size(), size);
            const auto *button = named<QToolButton>(QString("rail.") + entry.key);
            if (!button)
                continue;
            QVERIFY2(button->height() >= em(2) - 1, entry.key);
            QVERIFY2(QRegion(button->rect()) == button->visibleRegion(), entry.key);
        }
    }

    void noFilterIsCut_data() { theWindowFitsAtEverySize_data(); }
    void noFilterIsCut()
    {
        QFETCH(QString, language);
        QFETCH(int, percent);
        openSmallWindow(language, percent);
        QTRY_VERIFY(table()->model()->rowCount() > 0);
        const auto *bar = m_window->current()->findChild<BoardFilterBar *>();
        QTRY_COMPARE(cutFilters(*bar), QStringList());
    }

    void theNumberOfTheJobIsWhole_data() { theWindowFitsAtEverySize_data(); }
    void theNumberOfTheJobIsWhole()
    {
        QFETCH(QString, language);
        QFETCH(int, percent);
        openSmallWindow(language, percent);
        m_window->openOrder("O-1002");
        QTest::qWait(100);
        const auto *line = named<QLabel>("head.order");
        QVERIFY(line->text().startsWith("O-1002 "));
        const int needed = QFontMetrics(line->font()).horizontalAdvance("O-1002…");
        QVERIFY2(line->width() >= needed, qPrintable(QString::number(line->width())));
        if (percent > 150)
            return;
        const auto *head = named<QWidget>("head");
        const int room = m_window->width() - named<QWidget>("rail")->width();
        QVERIFY2(head->minimumSizeHint().width() <= room,
                 qPrintable(QString::number(head->minimumSizeHint().width())));
    }

    void theRailFollowsTheKeyboard()
    {
        openSmallWindow("en", 200);
        m_window->resize(1024, 400); // not even low buttons have room
        auto *last = named<QToolButton>("rail.reports");
        QTRY_VERIFY(last->visibleRegion().isEmpty());
        last->setFocus();
        QTRY_COMPARE(last->visibleRegion(), QRegion(last->rect()));
    }
};

QTEST_MAIN(SmallWindowTest)
#include "SmallWindowTest.moc"
