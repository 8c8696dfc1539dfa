#include "db/SearchText.h"

#include "core/base/Folding.h"
#include "tests/support/Jobs.h"

#include <QTest>

using namespace loopwright;

class SearchTextTest : public QObject
{
    Q_OBJECT
private slots:
    void aNumberIsFoundWithAndWithoutSeparators()
    {
        OrderFields fields = jobs::briFields();
        fields["circuit_number"] = "HRBR/01-10";
        const QString text = searchTextOf(jobs::order(fields));
        for (const char *typed : {"hrbr0110", "HRBR/01-10", "br01-10", "rbr/0110"}) {
            bool found = false;
            for (const QString &word :
                 searchTerms(typed).match().remove('(').remove(')').split(" OR "))
                found = found || text.contains(word.mid(1, word.size() - 2));
            QVERIFY2(found, typed);
        }
    }
    void holdsNumbersAndNames()
    {
        const QStringList words = searchTextOf(jobs::order(jobs::briFields())).split('\n');
        for (const char *word : {"a-1001", "a1001", "c-77", "bright bakery", "12 mill lane",
                                 "17-204", "217-555-0143", "2175550143", "21755501440101"})
            QVERIFY2(words.contains(word), word);
    }
    /// Each of the texts that are searched, and no other column.
    void saysWhichColumnsHoldTheWords()
    {
        OrderFields fields = jobs::briFields();
        for (const char *column : {"related_order", "feeder_pair", "installer", "contact", "crew",
                                   "access_notes", "appointment", "terminal_location", "symptom"})
            fields[column] = QString("x%1x").arg(column).remove('_');
        fields["remarks"] = "Ring & wait";
        const ServiceOrder order = jobs::order(fields);
        const QJsonObject document = order.toJson();
        const QString text = searchTextOf(order);
        for (auto it = document.begin(); it != document.end(); ++it) {
            const QString value = it->toString();
            if (value.size() < 4 || it.key().endsWith("_services"))
                continue; // in others too
            const QString word = foldForSearch(value).section(' ', 0, 0);
            const bool isSearched = text.split('\n').contains(foldForSearch(value));
            QVERIFY2(columnsWith(document, {}, word).contains(it.key()) == isSearched,
                     qPrintable(it.key() + ": " + value));
        }
        const auto in = [&document](const QString &typed, const QString &installer = {}) {
            return columnsWith(document, installer, typed);
        };
        const QStringList second{"dn_2", "spid_2"}; // its SPID begins with the number
        QCOMPARE(in("2175550144"), second);
        QCOMPARE(in("(217) 555-0144"), second);
        QCOMPARE(in("c77"), QStringList("circuit_number")); // without its separator
        QCOMPARE(in("mill bakery"), (QStringList{"customer", "premises"}));
        QCOMPARE(in("rivera", "A. Rivera"), QStringList("installer"));
        QCOMPARE(in("nowhere"), QStringList());
    }
    void whoIsNamedInASearch()
    {
        const QList<Person> people{{"K7", "Zoë Rivera", Role::Installer},
                                   {"K8", "Ann Mill", Role::Installer}};
        using Named = std::vector<NamedInstaller>;
        QCOMPARE(installersNamed(people, "RIV"), (Named{{"K7", {}}}));
        QCOMPARE(installersNamed(people, "zoe lane 12"), (Named{{"K7", {"lane", "12"}}}));
        QCOMPARE(installersNamed(people, "mill zoe"), (Named{{"K7", {"mill"}}, {"K8", {"zoe"}}}));
        QCOMPARE(installersNamed(people, "ri"), Named()); // no word of the index
        QCOMPARE(installersNamed(people, "ri mill"), (Named{{"K8", {"ri"}}}));
        QCOMPARE(installersNamed(people, "217-555-0143"), Named());
        QCOMPARE(toJson(installersNamed(people, "zoe 17-204")),
                 R"([{"key":"K7","rest":[{"bare":"17204","word":"17-204"}]}])");
    }
    void terms_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<QString>("match");
        QTest::addColumn<QString>("shortWords");
        QTest::newRow("nothing") << " "
                                 << ""
                                 << "[]";
        QTest::newRow("word") << "Bakery"
                              << R"("bakery")"
                              << "[]";
        QTest::newRow("two words") << "bright Bakery"
                                   << R"("bright" AND "bakery")"
                                   << "[]";
        QTest::newRow("number") << "555-0143"
                                << R"(("555-0143" OR "5550143"))"
                                << "[]";
        QTest::newRow("letters and digits") << "C7/102"
                                            << R"(("c7/102" OR "c7102"))"
                                            << "[]";
        QTest::newRow("a name with a sign") << "Smith&Sons"
                                            << R"("smith&sons")"
                                            << "[]";
        QTest::newRow("short") << "7 12 mill"
                               << R"("mill")"
                               << R"(["7","12"])";
        QTest::newRow("quote") << "a\"b OR"
                               << R"("a""b")"
                               << R"(["or"])";
    }
    void terms()
    {
        QFETCH(QString, typed);
        QFETCH(QString, match);
        QFETCH(QString, shortWords);
        const SearchTerms terms = searchTerms(typed);
        QCOMPARE(terms.match(), match);
        QCOMPARE(terms.shortWords, shortWords);
        QCOMPARE(terms.isEmpty(), typed.trimmed().isEmpty());
    }
};

QTEST_APPLESS_MAIN(SearchTextTest)
#include "SearchTextTest.moc"
