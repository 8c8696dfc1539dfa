#include "app/desktop/LettersMatch.h"

#include <QTest>

using namespace loopwright;

class LettersMatchTest : public QObject
{
    Q_OBJECT

private slots:
    void meant_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("asked");
        QTest::newRow("nothing asked") << "New order"
                                       << "";
        QTest::newRow("beginning") << "New order"
                                   << "new o";
        QTest::newRow("a word") << "New order"
                                << "ORD";
        QTest::newRow("words in another order") << "New order"
                                                << "order new";
        QTest::newRow("initials") << "Take the repair that is offered"
                                  << "ttr";
        QTest::newRow("in a word") << "Identifiers"
                                   << "enti";
        QTest::newRow("letters in order") << "Certificates"
                                          << "crtf";
        QTest::newRow("letters across words") << "Import a file"
                                              << "imfi";
        QTest::newRow("accents") << "Übersicht öffnen"
                                 << "uber off";
        QTest::newRow("sharp s") << "Größe"
                                 << "grosse";
        QTest::newRow("digits") << "Size 150 %"
                                << "15";
    }
    void meant()
    {
        QFETCH(QString, name);
        QFETCH(QString, asked);
        QVERIFY(lettersMatch(name, asked));
    }

    void notMeant_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("asked");
        QTest::newRow("another order") << "Import"
                                       << "tropmi";
        QTest::newRow("a letter twice") << "Undo"
                                        << "unndo";
        QTest::newRow("longer") << "Keys"
                                << "keyss";
        QTest::newRow("signs") << "Keys"
                               << "?";
        QTest::newRow("no name") << ""
                                 << "a";
    }
    void notMeant()
    {
        QFETCH(QString, name);
        QFETCH(QString, asked);
        QVERIFY(!lettersMatch(name, asked));
    }

    void theNearestComesFirst()
    {
        const QStringList nearestFirst{"Run that is over", "Last run", "Read until now",
                                       "Prune a tree", "Register unit one"};
        for (qsizetype i = 1; i < nearestFirst.size(); ++i)
            QVERIFY2(*lettersMatch(nearestFirst[i - 1], "run") <
                         *lettersMatch(nearestFirst[i], "run"),
                     qPrintable(nearestFirst[i]));
    }
};

QTEST_APPLESS_MAIN(LettersMatchTest)
#include "LettersMatchTest.moc"
