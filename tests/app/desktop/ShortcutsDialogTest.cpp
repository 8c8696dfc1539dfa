#include "app/desktop/ShortcutsDialog.h"

#include "app/desktop/ActionCatalogue.h"
#include "tests/support/DeskWindow.h"

#include <QAction>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>

#include <algorithm>

using namespace loopwright;

class ShortcutsDialogTest : public QObject, DeskWindow
{
    Q_OBJECT

private:
    QStringList shownTexts(const char *dialog) const
    {
        QStringList texts;
        for (const QLabel *label : named<QDialog>(dialog)->findChildren<QLabel *>())
            texts << label->text();
        return texts;
    }

private slots:
    void init()
    {
        m_records = std::make_unique<DeskRecords>();
        openWindow();
    }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
    }

    /// No key of any action is missing, whichever screen it is on.
    void everyKeyIsInTheList()
    {
        m_window->openOrder("O-1002"); // its panels have keys
        auto *added = new QAction("Just added", m_window->screen("audit"));
        added->setShortcut(Qt::CTRL | Qt::ALT | Qt::Key_J);
        QTest::keyClick(m_window.get(), Qt::Key_F1);
        QTRY_VERIFY(named<QDialog>("keys") && named<QDialog>("keys")->isVisible());
        const QString all = shownTexts("keys").join('\n');
        int counted = 0;
        for (const QAction *action : m_window->findChildren<QAction *>())
            for (const QKeySequence &key : action->shortcuts()) {
                if (action->text().isEmpty()) // of a field, made by Qt
                    continue;
                QVERIFY2(all.contains(key.toString(QKeySequence::NativeText)),
                         qPrintable(action->text() + ' ' + key.toString()));
                ++counted;
            }
        QVERIFY(counted > 30);
        QVERIFY(all.contains("Just added"));
        QTest::keyClick(named<QDialog>("keys"), Qt::Key_Escape);
        QTRY_VERIFY(!named<QDialog>("keys"));
    }

    void byWhereTheyHold()
    {
        const QList<QWidget *> screens{m_window->screen("board"), m_window->screen("order")};
        const std::vector<KeyGroup> groups = keysOf(*m_window, screens);
        const auto rowsOf = [&groups](const QString &where) {
            QStringList does;
            for (const KeyGroup &group : groups)
                if (group.where == where)
                    for (const KeyRow &row : group.rows)
                        does << row.does;
            return does;
        };
        QVERIFY(rowsOf("Everywhere").contains("Quit"));
        QVERIFY(rowsOf("Board").contains("Desk work"));
        QVERIFY(rowsOf("Order form").contains("Save the order"));
        QVERIFY(!rowsOf("Order form").contains("Desk work"));
        QCOMPARE(rowsOf("In a table or list").count("Copy the rows"), 1); // once, not of each table
        QCOMPARE(std::ranges::count(groups, "Board", &KeyGroup::where), 1);
    }

    /// Two actions that hold at one place have not one key.
    void noKeyIsTakenTwice()
    {
        m_window->openOrder("O-1002");
        QList<QWidget *> screens;
        for (const ScreenEntry &entry : allScreens())
            screens << m_window->screen(entry.key);
        QMap<QString, QString> everywhere;
        for (const KeyGroup &group : keysOf(*m_window, screens)) {
            QMap<QString, QString> here = everywhere;
            for (const KeyRow &row : group.rows)
                for (const QString &key : row.keys.split(",  ")) {
                    // The cards, papers and parts of a job have a print key each.
                    if (here.contains(key) && key != "Ctrl+P")
                        QFAIL(qPrintable(group.where + ": " + key + ": " + row.does + ", " +
                                         here.value(key)));
                    here.insert(key, row.does);
                }
            if (group.where == "Everywhere")
                everywhere = here;
        }
    }

    void fitsASmallWindow()
    {
        m_window->resize(1024, 600);
        m_window->findChild<QAction *>("action.keys")->trigger();
        auto *dialog = named<QDialog>("keys");
        QVERIFY(m_window->height() >= dialog->height());
        QVERIFY(m_window->width() >= dialog->width());
    }

    void aboutTellsVersionAndRecords()
    {
        QCoreApplication::setApplicationVersion("7.8.9");
        m_window->findChild<QAction *>("action.about")->trigger();
        auto *dialog = named<QDialog>("about");
        QVERIFY(dialog && dialog->isVisible());
        QCOMPARE(dialog->findChild<QLabel *>("about.version")->text(), "7.8.9");
        QCOMPARE(dialog->findChild<QLabel *>("about.records")->text(), m_records->path());
        const QStringList texts = shownTexts("about");
        for (const char *library : {"Qt", "SQLite", "libsodium", "libqpdf", "libqrencode"})
            QVERIFY2(texts.contains(library), library);
        QVERIFY(dialog->findChild<QPushButton *>("about.qt"));
        QTest::keyClick(dialog, Qt::Key_Escape);
        QTRY_VERIFY(!named<QDialog>("about"));
    }
};

QTEST_MAIN(ShortcutsDialogTest)
#include "ShortcutsDialogTest.moc"
