#include "db/Sha256.h"

#include <QTest>

using namespace loopwright;

class Sha256Test : public QObject
{
    Q_OBJECT
private slots:
    // FIPS 180-2, appendix B: "abc", and the empty text.
    void knownDigests()
    {
        Sha256 sha;
        for (int round = 0; round < 2; ++round) {
            QCOMPARE(QByteArray(view(sha.hexOf("abc")).toByteArray()),
                     "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
            QCOMPARE(QByteArray(view(sha.hexOf({})).toByteArray()),
                     "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
        }
    }
    void readsWhatItWrites()
    {
        Sha256 sha;
        Sha256::Digest digest;
        QVERIFY(Sha256::read(view(sha.hexOf("abc")), digest));
        QVERIFY(digest == sha.of("abc"));
        QVERIFY(!Sha256::read(QByteArray(63, 'a'), digest));
        QVERIFY(!Sha256::read(QByteArray(64, 'A'), digest));
        QVERIFY(!Sha256::read(QByteArray(64, 'g'), digest));
        for (const char no : {'g', '/', ':', '`', 'F', '\0', '\x80', '\xff'})
            for (const qsizetype place : {0, 1, 31, 62, 63}) {
                QByteArray hex = view(sha.hexOf("abc")).toByteArray();
                hex[place] = no;
                QVERIFY(!Sha256::read(hex, digest));
            }
    }
};

QTEST_APPLESS_MAIN(Sha256Test)
#include "Sha256Test.moc"
