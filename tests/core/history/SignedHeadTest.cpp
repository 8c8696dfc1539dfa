#include "core/history/SignedHead.h"

#include <QJsonArray>
#include <QTest>

using namespace loopwright;

class SignedHeadTest : public QObject
{
    Q_OBJECT

    const LogHead m_head{"K7M4QP", 41, QString(64, u'd'),
                         *Moment::parse(u"2026-03-04T15:20:00-06:00")};

private slots:
    void withAndWithoutSignature()
    {
        for (const SignedHead &head :
             {SignedHead{m_head, "0011", "AAAA"}, SignedHead{m_head, {}, {}}}) {
            const auto read = SignedHead::fromJson(head.toJson(), "head");
            QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
            QCOMPARE(*read, head);
        }
        QVERIFY(!SignedHead({m_head, {}, {}}).toJson().contains("key"));
    }
    void halfASignatureIsRefused()
    {
        for (const char *missing : {"key", "signature"}) {
            QJsonObject object = SignedHead{m_head, "0011", "AAAA"}.toJson();
            object.remove(missing);
            QVERIFY(!SignedHead::fromJson(object, "head"));
            object.insert(missing, 7);
            QVERIFY(!SignedHead::fromJson(object, "head"));
        }
        QJsonObject more = SignedHead{m_head, "0011", "AAAA"}.toJson();
        more.insert("witness", "me");
        QVERIFY(!SignedHead::fromJson(more, "head"));
    }
};

QTEST_APPLESS_MAIN(SignedHeadTest)
#include "SignedHeadTest.moc"
