#include "app/desktop/Language.h"

#include "app/desktop/MainWindow.h"
#include "core/errortest/CountText.h"
#include "db/SqliteConnection.h"
#include "tests/support/DeskRecords.h"
#include "tests/support/WindowTexts.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QPushButton>
#include <QRegularExpression>

using namespace loopwright;

namespace {

/// The German of the program, in brackets: so each text that it has can be told from all others.
class Bracketed : public QTranslator
{
public:
    QString translate(const char *, const char *source, const char *comment, int n) const override
    {
        const QString said = QTranslator::translate("loopwright", source, comment, n);
        return said.isNull() ? said : QStringLiteral("⟦%1⟧").arg(said);
    }
};

/// What is outside of all brackets.
QString untranslated(const QString &text)
{
    QString rest;
    int depth = 0;
    for (const QChar c : text) {
        depth += c == u'⟦';
        if (depth == 0)
            rest += c;
        depth -= c == u'⟧';
    }
    return rest;
}

/// What was typed, and what the records keep in English: reasons, names of limits.
QStringList kept(const Database &database)
{
    const auto lines = database.connection().text(
        "SELECT group_concat(word, char(10)) FROM ("
        "SELECT name AS word FROM office UNION SELECT office FROM office UNION "
        "SELECT name FROM installer UNION SELECT installer FROM installer UNION "
        "SELECT kind FROM instrument UNION SELECT reason FROM order_state UNION "
        "SELECT label FROM office_test_line UNION "
        "SELECT v.value FROM limit_set, json_tree(content) AS v WHERE v.type = 'text' UNION "
        "SELECT v.key FROM limit_set, json_tree(content) AS v WHERE v.type IN ('real', 'integer') "
        "UNION SELECT v.value FROM service_order, json_tree(content) AS v WHERE v.type = 'text')");
    QStringList words = lines ? lines->split(u'\n') : QStringList();
    words.removeIf([](const QString &word) { return word.size() < 3; });
    std::ranges::sort(words, std::greater(), [](const QString &word) { return word.size(); });
    return words;
}

/// Words that no language changes: names of languages and protocols, keys of variants, days, keys
/// of the keyboard, files; and those that Qt says.
const QRegularExpression
    everywhere("English|Deutsch|National ISDN-1 on (5ESS|DMS-100|EWSD)|National ISDN|DMS-100 "
               "custom|INS-64|ins64|"
               "\\b[a-z0-9]+(-[a-z0-9]+)+\\b|\\banalog —|\\bdss1\\b|"
               "\\d\\.? "
               "(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec|März|Mai|Okt|Dez)\\b|(Ctrl|Shift|"
               "Alt)\\+|/\\S+|"
               "records\\.sqlite|Scroll (Left|Right)|14 digits: number 10, sharing id 01-32, "
               "terminal id 01-08");

} // namespace

class LanguageTest : public QObject
{
    Q_OBJECT

private slots:
    void cleanup() { speakBy({}); }

    void everyTextOfTheWindowIsInTheCatalogue()
    {
        speak("de"); // the resource is there from now on
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
        DeskRecords records;
        MainWindow window(records.workplace());
        window.show();
        const QStringList data = kept(records.workplace().records().database());
        QVERIFY(data.contains("North Street"));
        static const QRegularExpression word("[A-Za-z]{3,}");
        QStringList found;
        for (const ScreenEntry &entry : allScreens()) {
            window.showScreen(entry.key);
            QTest::qWait(50);
            for (const QString &text : textsOf(window)) {
                QString rest = untranslated(text);
                for (const QString &each : data)
                    if (each.size() > 12) // whole sentences, before a name within them goes
                        rest.remove(each);
                rest.remove(everywhere);
                for (const QString &each : data)
                    rest.remove(each);
                if (word.match(rest).hasMatch())
                    found << QString("%1: %2").arg(entry.key, text);
            }
        }
        found.removeDuplicates();
        QVERIFY2(found.isEmpty(), qPrintable("\n" + found.join('\n')));
    }
    void aWordOfACode()
    {
        QCOMPARE(localizedWord("Power utility"), "Power utility");
        speak("de");
        QCOMPARE(localizedWord("power utility"), "Stromversorger");
        QCOMPARE(localizedWord("Taken back"), "Zurückgenommen"); // listed small
        QCOMPARE(localizedWord("26-0001"), "26-0001");
        QCOMPARE(localizedWord({}), QString());
        speak("en");
        QCOMPARE(localizedWord("power utility"), "power utility");
    }
    void aSentenceOfCore()
    {
        const auto seconds = [](qint64 n) { return countText(n, Counted::ErroredSecond); };
        const Text next =
            Text("Next: %1").arg(Text("Make the %1.").arg(QString("call")).continued());
        QCOMPARE(localized(seconds(1)), "1 errored second");
        QCOMPARE(localized(next), "Next: make the call.");
        speak("de");
        QCOMPARE(localized(seconds(1)), "1 fehlerhafte Sekunde");
        QCOMPARE(localized(seconds(2)), "2 fehlerhafte Sekunden");
        QCOMPARE(seconds(2).english(), "2 errored seconds"); // what is stored stays
        QCOMPARE(localized(Text("Make the %1.").arg(QString("x"))),
                 "Make the x."); // not in the catalogue
    }
    /// By Qt's own catalogue, which is a package of its own.
    void qtsButtonsAndDialogsSpeakTheLanguage()
    {
        speak("de");
        const QDialogButtonBox buttons(QDialogButtonBox::Cancel);
        QString cancel = buttons.button(QDialogButtonBox::Cancel)->text();
        QVERIFY2(cancel.remove('&') == "Abbrechen",
                 qPrintable(cancel + ": is qt6-translations-l10n installed?"));
        QFileDialog files;
        files.setOption(QFileDialog::DontUseNativeDialog);
        QCOMPARE(files.labelText(QFileDialog::LookIn), "Suchen in:");
        QCOMPARE(files.labelText(QFileDialog::FileType), "Dateien des Typs:");
        QCOMPARE(QKeySequence("Ctrl+Z").toString(QKeySequence::NativeText), "Strg+Z");
    }
    void aCodeThatIsNoLanguage()
    {
        QVERIFY(findLanguage("de"));
        QVERIFY(!findLanguage("xx") && !findLanguage(""));
        QVERIFY(findLanguage(languageOfSystem()));
    }
};

QTEST_MAIN(LanguageTest)
#include "LanguageTest.moc"
