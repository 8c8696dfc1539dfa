#include "core/base/TextForm.h"

#include <QTest>

using namespace loopwright;

class TextFormTest : public QObject
{
    Q_OBJECT
private slots:
    void tellsWhatIsWrong_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("trouble");
        const QString half(QChar(0xd800));
        QTest::newRow("empty") << ""
                               << "";
        QTest::newRow("lines") << "a\nb\tc"
                               << "";
        QTest::newRow("longest") << "1234567"
                                 << "";
        QTest::newRow("too long") << "12345678"
                                  << "is longer than 7 characters";
        QTest::newRow("bell") << "a\x07"
                              << "holds a control character";
        QTest::newRow("carriage return") << "a\r"
                                         << "holds a control character";
        QTest::newRow("delete") << QString(QChar(0x7f)) << "holds a control character";
        QTest::newRow("whole pair") << QString::fromUcs4(U"\U0001F600") << "";
        QTest::newRow("half a pair") << half << "holds half a character";
    }
    void tellsWhatIsWrong()
    {
        QFETCH(QString, text);
        QFETCH(QString, trouble);
        QCOMPARE(textTrouble(text, 7).english(), trouble);
    }

    void aTextIsReadAsItBegins()
    {
        const QString marked = QString(QChar(QChar::ByteOrderMark)) + "x";
        QCOMPARE(textFromUtf8(marked.toUtf8()), marked);
        QCOMPARE(textFromUtf8("x"), "x");
        QCOMPARE(textFromUtf8({}), "");
    }

    void namesThatCouldBeTakenForOthers_data()
    {
        QTest::addColumn<QString>("name");
        QTest::addColumn<QString>("trouble");
        const auto row = [](const char *what, const char16_t *name, const char *trouble) {
            QTest::newRow(what) << QString::fromUtf16(name) << QString(trouble);
        };
        row("latin", u"hale-2", "");
        row("accents", u"M\u00fcller", "");
        row("cyrillic alone", u"\u0418\u0432\u0430\u043d", "");
        row("japanese", u"\u6771\u4eac", "");
        row("cyrillic a among latin", u"h\u0430le", "mixes letters of two scripts that look alike");
        row("zero width space", u"ha\u200ble", "holds a character that is not seen");
        row("private use", u"ha\ue000le", "holds a character that is not seen");
        row("control", u"ha\u0007le", "holds a character that is not seen");
        row("line separator", u"ha\u2028le", "holds a line break");
        row("full width", u"\uff48ale", "is written with characters that stand for others");
        row("accent apart", u"Mu\u0308ller", "is written with characters that stand for others");
    }
    void namesThatCouldBeTakenForOthers()
    {
        QFETCH(QString, name);
        QTEST(identifierTrouble(name).english(), "trouble");
    }
};

QTEST_APPLESS_MAIN(TextFormTest)
#include "TextFormTest.moc"
