#include "core/history/PublicKey.h"

#include <QTest>

using namespace loopwright;

class PublicKeyTest : public QObject
{
    Q_OBJECT

    const PublicKey m_issuer{issuerHolder, QByteArray(32, 'i'), {}, {}};
    const PublicKey m_station{"K7M4QP", QByteArray(32, 's'), m_issuer.fingerprint(),
                              QByteArray(86, 'A')};

private slots:
    void linesAndBack()
    {
        const QByteArray text =
            m_issuer.line(true).toUtf8() + "\n\n" + m_station.line(true).toUtf8() + "\r\n";
        const auto read = readPublicKeys(text, "keys.txt");
        QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
        QCOMPARE(*read, (std::vector<PublicKey>{m_issuer, m_station}));
        const auto bare = readPublicKeys(m_station.line(false).toUtf8(), "keys.txt");
        QVERIFY(bare);
        QCOMPARE(bare->front(), (PublicKey{"K7M4QP", QByteArray(32, 's'), {}, {}}));
    }
    /// Of 32 bytes 's': sha256sum of coreutils 9.1.
    void fingerprint()
    {
        QCOMPARE(m_station.fingerprint(), QString("8fd6a6a78f5857d7ba1cfe9033bffeec"));
        QCOMPARE(groupedFingerprint("0011223344556677"), "0011 2233 4455 6677");
    }
    void whatIsEndorsedNamesStationKeyAndIssuer()
    {
        const QByteArray text = m_station.endorsedText();
        for (const QByteArray &part :
             {QByteArray("K7M4QP"), QByteArray(32, 's').toHex(), m_issuer.fingerprint().toUtf8()})
            QVERIFY2(text.contains(part), part);
    }
    void refused_data()
    {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QString>("place");
        const QString good = m_issuer.line(false);
        QTest::newRow("empty") << QByteArray() << "keys.txt";
        QTest::newRow("words") << QByteArray("hello") << "keys.txt, line 1";
        QTest::newRow("a station without tag")
            << "station " + m_station.line(false).mid(15).toUtf8() << "keys.txt, line 1";
        QTest::newRow("second line") << (good + "\nissuer").toUtf8() << "keys.txt, line 2";
        QTest::newRow("another fingerprint")
            << QString(good).replace(7, 1, good[7] == '0' ? '1' : '0').toUtf8()
            << "keys.txt, line 1";
        QTest::newRow("a digit less") << good.chopped(1).toUtf8() << "keys.txt, line 1";
        QTest::newRow("capitals") << ("issuer " + good.mid(7).toUpper()).toUtf8()
                                  << "keys.txt, line 1";
        QTest::newRow("an issuer that is endorsed")
            << (good + ' ' + m_issuer.fingerprint() + ' ' + QString(86, 'A')).toUtf8()
            << "keys.txt, line 1";
        QTest::newRow("an endorsement cut short")
            << m_station.line(true).chopped(1).toUtf8() << "keys.txt, line 1";
        QTest::newRow("too many") << QString(good + '\n').repeated(101).toUtf8()
                                  << "keys.txt, line 101";
        QTest::newRow("too long") << QByteArray(1000000, 'i') << "keys.txt";
    }
    void refused()
    {
        QFETCH(QByteArray, text);
        const auto read = readPublicKeys(text, "keys.txt");
        QVERIFY(!read);
        QCOMPARE(read.error().code, ErrorCode::BadInput);
        QTEST(read.error().place, "place");
    }
};

QTEST_APPLESS_MAIN(PublicKeyTest)
#include "PublicKeyTest.moc"
