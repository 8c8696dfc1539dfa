#include "core/base/Glossary.h"

#include <QSet>
#include <QStringList>
#include <QTest>

using namespace loopwright;

class GlossaryTest : public QObject
{
    Q_OBJECT

    static QStringList wordsOf(const std::vector<const Term *> &terms)
    {
        QStringList words;
        for (const Term *term : terms)
            words << term->word;
        return words;
    }

private slots:
    void everyTermHasOneMeaning()
    {
        QSet<QString> seen;
        QString before;
        for (const Term &term : glossary()) {
            const QString word = QString::fromLatin1(term.word);
            QVERIFY2(!seen.contains(word.toLower()), term.word);
            seen << word.toLower();
            QVERIFY2(before.compare(word, Qt::CaseInsensitive) < 0, term.word);
            before = word;
            const QString meaning = QString::fromUtf8(term.meaning);
            QVERIFY2(meaning.endsWith('.') && meaning[0].isUpper(), term.meaning);
            QVERIFY2(meaning.size() < 220, term.meaning);
        }
    }

    void whatInstallersAskForIsThere_data()
    {
        QTest::addColumn<QString>("asked");
        QTest::addColumn<QString>("found");
        const auto row = [](const char *asked, const char *found) {
            QTest::newRow(asked) << asked << found;
        };
        for (const char *term : {"SPID", "TEI", "NT", "U interface", "S/T interface", "DN", "Loop",
                                 "BER", "TID", "Protocol variant", "D channel", "Bridged tap"})
            row(term, term);
        row("spid", "SPID");
        row(" CO ", "Serving office");
        row("wet line", "Sealing current");
        row("BRI", "Basic rate");
        row("ES", "Errored second");
        row("SES", "Severely errored second");
        row("B1", "B channel");
        row("B2", "B channel");
    }
    void whatInstallersAskForIsThere()
    {
        QFETCH(QString, asked);
        QFETCH(QString, found);
        QCOMPARE(wordsOf(termsCalled(asked)), QStringList{found});
    }

    void aPartOfAWordFindsAllThatHaveIt()
    {
        QCOMPARE(wordsOf(termsCalled("interface")), (QStringList{"S/T interface", "U interface"}));
        QCOMPARE(termsCalled("no such thing").size(), 0u);
        QCOMPARE(termsCalled({}).size(), glossary().size());
    }
};

QTEST_APPLESS_MAIN(GlossaryTest)
#include "GlossaryTest.moc"
