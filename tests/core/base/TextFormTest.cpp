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
};

QTEST_APPLESS_MAIN(TextFormTest)
#include "TextFormTest.moc"
