#include "app/desktop/GlossaryDialog.h"

#include "app/desktop/Language.h"
#include "core/base/Glossary.h"
#include "tests/support/DeskWindow.h"

#include <QAction>
#include <QDialog>
#include <QLineEdit>
#include <QPushButton>
#include <QTextBrowser>

using namespace loopwright;

class GlossaryDialogTest : public QObject, private DeskWindow
{
    Q_OBJECT

    QString shown() const { return named<QTextBrowser>("glossary.words")->toPlainText(); }

private slots:
    void init() { m_records = std::make_unique<DeskRecords>(); }
    void cleanup()
    {
        m_window.reset();
        m_records.reset();
        speakBy({});
    }

    void theMenuShowsEveryWord()
    {
        openWindow();
        named<QAction>("action.glossary")->trigger();
        QVERIFY(named<QDialog>("glossary")->isVisible());
        for (const Term &term : glossary())
            QVERIFY2(shown().contains(QString::fromUtf8(term.meaning)), term.word);
        QTest::keyClicks(named<QLineEdit>("glossary.find"), "spid");
        QVERIFY(shown().startsWith("SPID (service profile identifier)"));
        QVERIFY(!shown().contains("Bridged tap"));
        QTest::keyClicks(named<QLineEdit>("glossary.find"), "<b>");
        QCOMPARE(shown(), "No word is called so.");
    }
    void itSpeaksTheLanguageOfTheWindow()
    {
        speak("de");
        openWindow();
        named<QAction>("action.glossary")->trigger();
        QCOMPARE(named<QDialog>("glossary")->windowTitle(), "Begriffe");
        for (const Term &term : glossary())
            QVERIFY2(!shown().contains(QString::fromUtf8(term.meaning)), term.word);
        QStringList buttons;
        for (const QPushButton *button : named<QDialog>("glossary")->findChildren<QPushButton *>())
            buttons << button->text();
        QCOMPARE(buttons, QStringList("Schließen"));
        QTest::keyClicks(named<QLineEdit>("glossary.find"), "pupin");
        QVERIFY(shown().startsWith("Pupinspule"));
    }
};

QTEST_MAIN(GlossaryDialogTest)
#include "GlossaryDialogTest.moc"
