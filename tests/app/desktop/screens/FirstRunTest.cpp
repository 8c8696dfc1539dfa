// The three ways to begin with empty records, each to its end.

#include "app/desktop/screens/FirstRun.h"

#include "app/actions/FileForms.h"
#include "app/actions/Register.h"
#include "app/desktop/DesktopApplication.h"
#include "app/desktop/screens/AskDialog.h"
#include "app/desktop/screens/ColumnsDialog.h"
#include "tests/support/DeskWindow.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

using namespace loopwright;

class FirstRunTest : public QObject, private DeskWindow
{
    Q_OBJECT

    QPushButton *button(const QString &name) const { return named<QPushButton>(name); }
    void type(const QString &field, const QString &text)
    {
        auto *edit = named<QLineEdit>("office." + field);
        QVERIFY2(edit, qPrintable(field));
        edit->setFocus();
        QTest::keyClick(edit, Qt::Key_A, Qt::ControlModifier);
        QTest::keyClicks(edit, text);
    }
    void importSample(const char *form)
    {
        const QString path = m_records->file(QString(form) + ".csv", sampleOf(*findFileForm(form)));
        m_window->showScreen("import", path);
        button("import.start")->click();
        QTRY_VERIFY(button("import.start")->isEnabled());
    }

private slots:
    void init() { m_records = std::make_unique<DeskRecords>(false); }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    /// Its records are others; the window stands on its day, and on its board.
    void theDemoOpensInTheWindow()
    {
        const QByteArray home = qgetenv("XDG_DATA_HOME");
        qputenv("XDG_DATA_HOME", m_records->path("home").toUtf8());
        QVERIFY(QDir().mkpath(m_records->path("home/loopwright")));
        QSettings settings(m_records->path("settings.ini"), QSettings::IniFormat);
        StartOptions options;
        options.database = m_records->path("own.sqlite");
        DesktopApplication desk(*qApp, options, settings);
        desk.start();
        const auto find = [&desk](const char *name) {
            return desk.shown()->findChild<QWidget *>(name);
        };
        QVERIFY(find("empty.demo"));
        QTRY_VERIFY(find("empty.demo")->isVisible());
        static_cast<QPushButton *>(find("empty.demo"))->click();
        const auto shown = [&desk] {
            const auto *where = desk.shown()->findChild<QLabel *>("records");
            return where ? where->text() : QString();
        };
        QTRY_COMPARE_WITH_TIMEOUT(shown(), "demo.sqlite", 300'000);
        const auto *table = desk.shown()->findChild<QTableView *>("orders");
        QTRY_VERIFY(table->model()->rowCount() > 100);
        QVERIFY(QFile::exists(m_records->path("home/loopwright/demo.sqlite")));
        QVERIFY(desk.shown()->findChild<QLabel *>("said")->text().contains("demo"));
        qputenv("XDG_DATA_HOME", home);
    }

    /// From the list of columns to orders on the board, with the samples alone.
    void filesBringOrders()
    {
        openWindow();
        QTRY_VERIFY(button("empty.columns")->isVisible());
        button("empty.columns")->click();
        auto *columns = named<ColumnsDialog>("columns");
        QVERIFY(columns && columns->isVisible());
        const QString path = m_records->path("sample.csv");
        columns->saveSample(path);
        columns->close();
        button("empty.import")->click();
        QCOMPARE(m_window->current()->key(), "import");
        importSample("offices");
        m_window->showScreen("import", path);
        button("import.start")->click();
        QTRY_VERIFY(button("import.start")->isEnabled());
        m_window->showScreen("board");
        QTRY_COMPARE(orders(), (QStringList{"27-0001", "27-0002"}));
        QVERIFY(!button("empty.demo")->isVisible());
    }

    void anOfficeIsMadeByForm()
    {
        openWindow();
        QTRY_VERIFY(button("empty.office")->isVisible());
        QVERIFY(!button("empty.new")->isVisible()); // it would have no office
        button("empty.office")->click();
        auto *dialog = named<AskDialog>("office");
        QVERIFY(dialog && dialog->isVisible());
        // Every field has room, to the last one.
        const auto *last = named<QLineEdit>("office.trouble_telephone");
        QTRY_VERIFY(last->mapTo(dialog->form(), last->rect().bottomLeft()).y() <
                    dialog->form()->height());
        type("office", "north");
        type("name", "North Street");
        type("test_lines", "loopback");
        auto *variants = named<QComboBox>("office.protocol_variant");
        QVERIFY(variants);
        variants->setCurrentIndex(variants->findData("ni2"));
        emit variants->activated(variants->currentIndex());
        // What the import refuses is told at its field, and nothing is made.
        dialog->form()->button()->click();
        QVERIFY(dialog->isVisible());
        QVERIFY(offices(m_records->records())->isEmpty());
        type("test_lines", "loopback=217-555-0198");
        dialog->form()->button()->click();
        QTRY_COMPARE(m_window->current()->key(), "order");
        const auto made = offices(m_records->records());
        QVERIFY(made && made->size() == 1);
        QCOMPARE(made->first().name, "North Street");
        QCOMPARE(made->first().protocolVariant, "ni2");
        const auto lines = testLinesOf(m_records->records(), "north");
        QVERIFY(lines && lines->size() == 1);
        m_window->showScreen("board");
        QTRY_VERIFY(button("empty.new")->isVisible());
        QVERIFY(!button("empty.office")->isVisible());
    }
};

QTEST_MAIN(FirstRunTest)
#include "FirstRunTest.moc"
