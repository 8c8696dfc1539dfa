#include "app/desktop/Language.h"

#include "app/actions/FileForms.h"
#include "app/desktop/AccessibleParts.h"
#include "app/desktop/MainWindow.h"
#include "core/errortest/CountText.h"
#include "db/Connection.h"
#include "tests/support/DeskWalk.h"
#include "tests/support/WindowTexts.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QPushButton>
#include <QRegularExpression>
#include <QTextBrowser>

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
               "terminal id 01-08|\\bkbit/s|\\bQRSS\\b|\\b\\d+ (CFR|CCR) \\S+");

/// The same of one dialog alone: keys, whose works are in the program, buttons of Qt, the columns
/// of files.
QRegularExpression onlyAt(const QString &place)
{
    if (place == u"keys" || place == u"find_action")
        return QRegularExpression(
            "\\b(Esc|Return|Enter|Del|Backspace|Space|PgUp|PgDown|Left|Right|Up|Down)\\b");
    if (place == u"about")
        return QRegularExpression(
            "Loopwright|SQLite|OpenSSL|libcrypto|libsodium|libqpdf|libqrencode|Boost\\.Math|"
            "tl::expected|\\bzlib\\b|\\bZlib\\b|\\bISC\\b|(LGPL|Apache|BSL)-");
    if (place == u"pin" || place == u"name")
        return QRegularExpression("&?(OK|Cancel)");
    if (place != u"columns" && place != u"map")
        return QRegularExpression("^$");
    QStringList columns{"\\b[a-z]+(_[a-z0-9]+)+\\b"};
    for (const FileForm &form : fileForms())
        for (const FileColumn &column : columnsOf(form))
            for (const QString &each : column.words + QStringList(column.name))
                columns << "\\b" + QRegularExpression::escape(each) + "\\b";
    std::ranges::sort(columns, std::greater(), [](const QString &each) { return each.size(); });
    return QRegularExpression(columns.join('|'));
}

/// What textsOf() passes over: what draws its words itself, and pages to be read.
QStringList furtherTextsOf(const QWidget &top)
{
    QStringList texts;
    for (const QWidget *widget : top.findChildren<QWidget *>()) {
        if (const auto *parts = dynamic_cast<const AccessibleParts *>(widget))
            for (int part = 0; part < parts->partCount(); ++part)
                texts << parts->partName(part);
        if (const auto *page = qobject_cast<const QTextBrowser *>(widget))
            texts << page->toPlainText().split('\n');
    }
    return texts;
}

/// Reads each text once, and keeps those with English in them.
class Reader
{
public:
    explicit Reader(QStringList data)
        : m_data(std::move(data))
    {
    }

    void read(const QString &place, const QWidget &shown)
    {
        const QRegularExpression there = onlyAt(place);
        for (const QString &text : textsOf(shown) + furtherTextsOf(shown)) {
            if (m_read.contains(text))
                continue;
            m_read.insert(text);
            if (isEnglish(untranslated(text).remove(there)))
                m_found << QString("%1: %2").arg(place, text);
        }
    }
    qsizetype texts() const { return m_read.size(); }
    const QStringList &found() const { return m_found; }

private:
    bool isEnglish(QString rest) const
    {
        static const QRegularExpression word("[A-Za-z]{3,}");
        for (const QString &each : m_data)
            if (each.size() > 12) // whole sentences, before a name within them goes
                rest.remove(each);
        rest.remove(everywhere);
        for (const QString &each : m_data)
            rest.remove(each);
        return word.match(rest).hasMatch();
    }

    QStringList m_data; ///< what was typed
    QSet<QString> m_read;
    QStringList m_found;
};

} // namespace

class LanguageTest : public QObject
{
    Q_OBJECT

    static void speakInBrackets()
    {
        speak("de"); // the resource is there from now on
        auto bracketed = std::make_unique<Bracketed>();
        QVERIFY(bracketed->load("de", ":/language"));
        speakBy(std::move(bracketed));
    }
    /// Large, so that nothing is left out for want of room; a dialog needs an active one.
    static void showWindow(MainWindow &window)
    {
        window.resize(1300, 750);
        window.show();
        window.activateWindow();
        QVERIFY(QTest::qWaitForWindowActive(&window));
    }

private slots:
    void cleanup() { speakBy({}); }

    void everyTextOfTheWindowIsInTheCatalogue()
    {
        speakInBrackets();
        DeskRecords records;
        MainWindow window(records.workplace());
        showWindow(window);
        const QStringList data = kept(records.records().database());
        QVERIFY(data.contains("North Street"));
        Reader reader(data);
        DeskWalk walk(window, records, [&reader](const QString &place, const QWidget &shown) {
            reader.read(place, shown);
        });
        walk.screens();
        walk.dialogs();
        QVERIFY2(reader.texts() > 1000, qPrintable(QString::number(reader.texts())));
        QVERIFY2(reader.found().isEmpty(), qPrintable("\n" + reader.found().join('\n')));
    }
    void everyTextOfTheFirstRunIsInTheCatalogue()
    {
        speakInBrackets();
        DeskRecords records(false);
        MainWindow window(records.workplace());
        showWindow(window);
        Reader reader(kept(records.records().database()) << "lind");
        DeskWalk(window, records, [&reader](const QString &place, const QWidget &shown) {
            reader.read(place, shown);
        }).firstRun();
        QVERIFY2(reader.found().isEmpty(), qPrintable("\n" + reader.found().join('\n')));
    }
    void aWordOfACode()
    {
        QCOMPARE(localizedWord("Power utility"), "Power utility");
        speak("de");
        QCOMPARE(localizedWord("power utility"), "Stromversorger");
        QCOMPARE(localizedWord("Taken back"), "Zurückgenommen"); // listed small
        QCOMPARE(localizedWord("Certificate issued"), "Zertifikat ausgestellt");
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
