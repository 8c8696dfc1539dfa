#include "app/trust/Signing.h"

#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

namespace {

QByteArray base64url(const QByteArray &hex)
{
    return QByteArray::fromHex(hex).toBase64(QByteArray::Base64UrlEncoding |
                                             QByteArray::OmitTrailingEquals);
}

} // namespace

class SigningTest : public QObject
{
    Q_OBJECT

private slots:
    void standardsExamples_data()
    {
        QTest::addColumn<QByteArray>("seed");
        QTest::addColumn<QByteArray>("publicKey");
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<QByteArray>("signature");
        // RFC 8032 clause 7.1, tests 1, 2 and 3.
        QTest::newRow("test 1")
            << QByteArray("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")
            << QByteArray("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")
            << QByteArray()
            << QByteArray("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821"
                          "590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b");
        QTest::newRow("test 2")
            << QByteArray("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")
            << QByteArray("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray("72")
            << QByteArray("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e"
                          "43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00");
        QTest::newRow("test 3")
            << QByteArray("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7")
            << QByteArray("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025")
            << QByteArray("af82")
            << QByteArray("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b5"
                          "38d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a");
    }
    void standardsExamples()
    {
        QFETCH(QByteArray, seed);
        QFETCH(QByteArray, publicKey);
        QFETCH(QByteArray, text);
        QFETCH(QByteArray, signature);
        const auto key = SigningKey::fromSeed(QByteArray::fromHex(seed));
        QVERIFY(key);
        QCOMPARE(key->publicKey().toHex(), publicKey);
        const QByteArray message = QByteArray::fromHex(text);
        QCOMPARE(key->sign(message), base64url(signature));
        QVERIFY(isSignedBy(key->publicKey(), message, base64url(signature)));
        QVERIFY(!isSignedBy(key->publicKey(), message + ' ', base64url(signature)));
    }
    /// What OpenSSL makes of a signature of ours.
    void anotherLibraryAgrees()
    {
        const auto key = SigningKey::make();
        QVERIFY(key);
        QTemporaryDir folder;
        const auto write = [&folder](const char *name, const QByteArray &bytes) {
            QFile file(folder.filePath(name));
            return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
        };
        const QByteArray text = "26-K7M4QP-00042-17\n2026-03-04\n";
        // SubjectPublicKeyInfo of RFC 8410 clause 4.
        QVERIFY(
            write("key.der", QByteArray::fromHex("302a300506032b6570032100") + key->publicKey()));
        QVERIFY(write("text", text));
        QVERIFY(write("signature",
                      QByteArray::fromBase64(key->sign(text), QByteArray::Base64UrlEncoding)));
        QCOMPARE(QProcess::execute("openssl", {"pkeyutl", "-verify", "-pubin", "-keyform", "DER",
                                               "-inkey", folder.filePath("key.der"), "-rawin",
                                               "-in", folder.filePath("text"), "-sigfile",
                                               folder.filePath("signature")}),
                 0);
    }
    void oneSpellingOfASignature()
    {
        const auto key = SigningKey::make();
        QVERIFY(key);
        const QByteArray good = key->sign("text");
        QCOMPARE(good.size(), 86);
        QVERIFY(isSignedBy(key->publicKey(), "text", good));
        // 86 characters hold 516 bits, 4 more than the signature: they must be 0.
        const QByteArray alphabet =
            "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
        int accepted = 0;
        for (const char last : alphabet)
            accepted += isSignedBy(key->publicKey(), "text", good.chopped(1) + last);
        QCOMPARE(accepted, 1);
        for (const QByteArray &bad : QByteArrayList{good + '=', good + '\n', ' ' + good,
                                                    good.chopped(1), QByteArray(), good + good})
            QVERIFY(!isSignedBy(key->publicKey(), "text", bad));
        QVERIFY(!isSignedBy(key->publicKey().chopped(1), "text", good));
    }
    void keysDiffer()
    {
        const auto one = SigningKey::make(), other = SigningKey::make();
        QVERIFY(one && other);
        QVERIFY(one->publicKey() != other->publicKey());
        QVERIFY(!isSignedBy(other->publicKey(), "text", one->sign("text")));
        QCOMPARE(SigningKey::fromSeed("short").error().code, ErrorCode::BadInput);
    }
    void endorsements()
    {
        const auto issuer = SigningKey::make(), station = SigningKey::make();
        const PublicKey known{issuerHolder, issuer->publicKey(), {}, {}};
        PublicKey key{"K7M4QP", station->publicKey(), known.fingerprint(), {}};
        key.endorsement = issuer->sign(key.endorsedText());
        QVERIFY(isEndorsedBy(known, key));
        PublicKey other = key;
        other.holder = "K7M4QR";
        QVERIFY(!isEndorsedBy(known, other));
        other = key;
        other.endorsement = station->sign(key.endorsedText());
        QVERIFY(!isEndorsedBy(known, other));
        QVERIFY(!isEndorsedBy(key, known));
        PublicKey posing = known;
        posing.holder = "K7M4QR"; // a station does not endorse
        QVERIFY(!isEndorsedBy(posing, key));
    }
};

QTEST_APPLESS_MAIN(SigningTest)
#include "SigningTest.moc"
