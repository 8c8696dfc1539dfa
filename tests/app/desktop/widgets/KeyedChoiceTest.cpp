#include "app/desktop/widgets/KeyedChoice.h"

#include <QSignalSpy>
#include <QTest>

using namespace loopwright;

// The key of an answer can be read in its label, in whatever language that is.
class KeyedChoiceTest : public QObject
{
    Q_OBJECT

    static QString chosenBy(KeyedChoice &choice, char key)
    {
        choice.setCode({});
        QTest::keyClick(&choice, key);
        return choice.code();
    }

private slots:
    void theLetterOfTheLabelStays()
    {
        KeyedChoice choice({{u'Y', "true", "Yes"}, {u'N', "false", "No"}});
        QCOMPARE(chosenBy(choice, 'y'), "true");
        QCOMPARE(chosenBy(choice, 'n'), "false");
    }
    void anotherLanguageHasItsOwn()
    {
        KeyedChoice choice({{u'Y', "true", "Ja"}, {u'N', "false", "Nein"}});
        QCOMPARE(chosenBy(choice, 'j'), "true");
        QCOMPARE(chosenBy(choice, 'y'), "true"); // for who has learned it
        QCOMPARE(chosenBy(choice, 'n'), "false");
    }
    void noTwoAnswersHaveOneKey()
    {
        KeyedChoice choice({{u'S', "section", "Abschnitt"},
                            {u'T', "tap", "Abzweig"},
                            {u'C', "coil", "Pupinspule"}});
        QCOMPARE(chosenBy(choice, 's'), "section");
        QCOMPARE(chosenBy(choice, 'a'), "tap");
        QCOMPARE(chosenBy(choice, 'p'), "coil");
    }
    void theBeginningOfAWordIsTakenFirst()
    {
        KeyedChoice choice({{u'U', "up", "Steht"}, {u'D', "down", "Steht nicht"}});
        QCOMPARE(chosenBy(choice, 's'), "up");
        QCOMPARE(chosenBy(choice, 'n'), "down");
    }
    void aDigitIsNoLetterOfItsLabel()
    {
        KeyedChoice choice({{u'1', "one", "Hin"}, {u'2', "two", "Zurück"}});
        QCOMPARE(chosenBy(choice, '1'), "one");
        QCOMPARE(chosenBy(choice, '2'), "two");
    }
    void theChosenAnswerIsTold()
    {
        KeyedChoice choice({{u'Y', "true", "Ja"}, {u'N', "false", "Nein"}});
        const QSignalSpy told(&choice, &KeyedChoice::chosen);
        QTest::keyClick(&choice, 'j');
        QCOMPARE(told.size(), 1);
        QCOMPARE(told.front().front().toString(), "true");
    }
};

QTEST_MAIN(KeyedChoiceTest)
#include "KeyedChoiceTest.moc"
