#include "app/desktop/widgets/SpidParts.h"

#include <QTest>

using namespace loopwright;

class SpidPartsTest : public QObject
{
    Q_OBJECT

private slots:
    void saysWhatItDraws()
    {
        const ProtocolVariant *variant = findVariant(u"ni1");
        QVERIFY(variant);
        const SpidCheck check = checkSpid(*variant, "21755501430101");
        SpidParts parts;
        parts.setCheck(check);
        QCOMPARE(parts.spoken(), check.inWords());
        QVERIFY(parts.spoken().contains("217"));
        parts.setCheck(checkSpid(*variant, "no digits"));
        QCOMPARE(parts.spoken(), "nothing to take apart");
    }

    void drawsEachPart()
    {
        const ProtocolVariant *variant = findVariant(u"ni1");
        SpidParts parts;
        parts.setCheck({});
        parts.resize(400, parts.sizeHint().height());
        const QImage empty = parts.grab().toImage();
        parts.setCheck(checkSpid(*variant, "21755501430101"));
        QVERIFY(parts.grab().toImage() != empty);
        QVERIFY(parts.sizeHint().width() > 100);
    }
};

QTEST_MAIN(SpidPartsTest)
#include "SpidPartsTest.moc"
