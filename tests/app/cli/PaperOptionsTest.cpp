// Papers for people in another language by --language, read back by pdftotext: their sentences are
// German, numbers and what was typed are as they are.

#include "app/cli/PaperOptions.h"

#include "tests/support/CommandRun.h"
#include "tests/support/Papers.h"

using namespace loopwright;

class PaperOptionsTest : public QObject
{
    Q_OBJECT

    const QString m_scenario = LOOPWRIGHT_SOURCE_DIR "/demo/scenario/";
    QTemporaryDir m_folder;

    QString path(const QString &name) const { return m_folder.filePath(name); }
    Answered at(const QStringList &words) const
    {
        return call(words + QStringList{"--json", "--db", path("records.sqlite"), "--now",
                                        "2026-03-12T17:00:00-06:00", "--by", "moss"});
    }
    QString textOf(const QString &name) const { return papers::textOfPdf(contentOf(path(name))); }

private slots:
    void initTestCase()
    {
        for (const char *kind : {"office", "installer", "instrument"})
            COMPARE_STATUS(at({kind, "import", m_scenario + kind + "s.csv"}), ExitStatus::Yes);
        COMPARE_STATUS(at({"order", "import", m_scenario + "orders.csv"}), ExitStatus::No);
        for (const char *order : {"26-0006", "26-0007"})
            COMPARE_STATUS(at({"record", m_scenario + "records/" + order + ".json"}),
                           ExitStatus::Yes);
    }
    void cleanup()
    {
        QVERIFY(!paperLanguage().say); // what comes after is not concerned
    }

    void eachPaper_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<QString>("german");
        QTest::addColumn<QString>("english");
        QTest::newRow("card") << QStringList{"card", "26-0007"} << "Protokollvariante"
                              << "Protocol variant";
        QTest::newRow("leave-behind")
            << QStringList{"card", "26-0006", "--kind", "leave_behind"} << "Auftrag"
            << "Order";
        QTest::newRow("handoff") << QStringList{"handoff", "26-0006"} << "Was fehlschlug"
                                 << "What failed";
        QTest::newRow("day list") << QStringList{"day", "--installer", "rivera"} << "fällig"
                                  << "due";
        QTest::newRow("report") << QStringList{"report", "failing"} << "Kriterium"
                                << "Criterion";
        QTest::newRow("certificate")
            << QStringList{"certificate", "issue", "26-0007"} << "Zertifikat"
            << "certificate";
    }
    void eachPaper()
    {
        QFETCH(QStringList, words);
        QFETCH(QString, german);
        QFETCH(QString, english);
        COMPARE_STATUS(at(words + QStringList{"--out", path("de.pdf"), "--language", "de"}),
                       ExitStatus::Yes);
        COMPARE_STATUS(at(words + QStringList{"--out", path("en.pdf")}), ExitStatus::Yes);
        const QString inGerman = textOf("de.pdf"), inEnglish = textOf("en.pdf");
        QVERIFY2(inGerman.contains(german), qPrintable(inGerman));
        QVERIFY2(!inGerman.contains(english), qPrintable(inGerman));
        QVERIFY2(inEnglish.contains(english) && !inEnglish.contains(german), qPrintable(inEnglish));
        QVERIFY(contentOf(path("de.pdf")).contains("/Lang"));
        if (words.first() == "certificate")
            for (const char *name : {"de.pdf", "en.pdf"})
                COMPARE_STATUS(at({"certificate", "verify", path(name)}), ExitStatus::Yes);
    }

    void aLanguageThatIsNotSpoken()
    {
        const Answered refused =
            at({"card", "26-0007", "--out", path("x.pdf"), "--language", "xx"});
        COMPARE_STATUS(refused, ExitStatus::Usage);
        QVERIFY2(refused.all().contains("--language") && refused.all().contains("de"),
                 refused.all());
        QVERIFY(!QFile::exists(path("x.pdf")));
    }
};

QTEST_MAIN(PaperOptionsTest)
#include "PaperOptionsTest.moc"
