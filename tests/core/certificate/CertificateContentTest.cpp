#include "core/certificate/CertificateContent.h"

#include "tests/support/AnyJson.h"
#include "tests/support/Certificates.h"

#include <QTest>

using namespace loopwright;

namespace {

/// With every part that a certificate may have.
CertificateContent full()
{
    CertificateContent content = certificates::bri();
    content.outcome = OrderOutcome::AcceptedWithException;
    content.criteria[1].outcome = CriterionOutcome::NotMet;
    content.criteria[1].excepted =
        CertificateException{"Robin Sample", "The spare pair is out of order.", content.issuedAt};
    content.signatures = {{"customer", "Alex Customer", content.issuedAt, {{{0, 0}, {4000, 1000}}}},
                          {"installer", "Pat Example", content.issuedAt, {{{10, 20}}, {}}}};
    content.instruments.front().kind = QString(1000, QChar('k')); // a register sets no length
    return content;
}

} // namespace

class CertificateContentTest : public QObject
{
    Q_OBJECT

private slots:
    void writingAndReadingIsTheIdentity()
    {
        for (const CertificateContent &content :
             {certificates::bri(), certificates::analog(), full()}) {
            const auto read = CertificateContent::fromJson(content.toJson(), "record");
            QVERIFY2(read, read ? "" : qPrintable(read.error().text()));
            QCOMPARE(*read, content);
            QCOMPARE(read->record(), content.record());
        }
    }

    void digestIsThatOfTheRecord()
    {
        const CertificateContent content = full();
        QCOMPARE(content.digest(), sha256Hex(content.record()));
        CertificateContent other = content;
        other.criteria[2].measured += ' ';
        QVERIFY(other.digest() != content.digest());
    }

    void refused_data()
    {
        QTest::addColumn<QString>("key");
        QTest::addColumn<QJsonValue>("value");
        QTest::addColumn<QString>("place");
        QTest::newRow("another format") << "format" << QJsonValue("other") << "record.format";
        QTest::newRow("unknown key") << "extra" << QJsonValue(1) << "record.extra";
        QTest::newRow("a number for a text") << "proves" << QJsonValue(1) << "record.proves";
        QTest::newRow("no time") << "issued_at" << QJsonValue("today") << "record.issued_at";
        QTest::newRow("a time that is written otherwise")
            << "issued_at" << QJsonValue("2026-03-04T20:00-06:00") << "record";
        QTest::newRow("no outcome") << "outcome" << QJsonValue("fine") << "record.outcome";
        QTest::newRow("terminal 9")
            << "terminals" << QJsonValue(QJsonArray{QJsonObject{{"terminal", 9}}})
            << "record.terminals[0].terminal";
        QTest::newRow("a note that is no text")
            << "notes" << QJsonValue(QJsonArray{"one", 2}) << "record.notes[1]";
        const QJsonObject stroke{{"role", "customer"},
                                 {"name", "A"},
                                 {"at", "2026-03-04T10:00:00Z"},
                                 {"strokes", QJsonArray{QJsonArray{1, 2, 5000, 2}}}};
        QTest::newRow("a stroke outside")
            << "signatures" << QJsonValue(QJsonArray{stroke}) << "record.signatures[0].strokes[0]";
        QTest::newRow("proven a list") << "proven" << QJsonValue(QJsonArray()) << "record.proven";
    }
    void refused()
    {
        QFETCH(QString, key);
        QFETCH(QJsonValue, value);
        QJsonObject object = full().toJson();
        object.insert(key, value);
        const auto read = CertificateContent::fromJson(object, "record");
        QVERIFY(!read);
        QCOMPARE(read.error().code, ErrorCode::BadInput);
        QTEST(read.error().place, "place");
    }

    void everyKeyIsNeeded()
    {
        const QJsonObject object = full().toJson();
        for (const QString &key : object.keys()) {
            QJsonObject less = object;
            less.remove(key);
            QVERIFY2(!CertificateContent::fromJson(less, "record"), qPrintable(key));
        }
    }

    void anyJsonIsReadOrRefused()
    {
        const QStringList keys =
            full().toJson().keys() + QStringList{"role", "strokes", "excepted"};
        QVERIFY(rc::check("no text makes the reader crash", [&keys] {
            const QJsonObject object = anyJsonObject(keys, {"met", "bri", "accepted"});
            const auto read = CertificateContent::fromJson(object, "record");
            if (read)
                RC_ASSERT(CertificateContent::fromJson(read->toJson(), "again").has_value());
        }));
    }

    void runsSentence()
    {
        CertificateContent content;
        content.runs.resize(2);
        QCOMPARE(content.runsSentence(), QString());
        content.runNeeded = true;
        QCOMPARE(content.runsSentence(), "2 runs were made");
        content.runs.front().struckOut = true;
        QCOMPARE(content.runsSentence(), "2 runs were made, 1 of them struck out");
    }
};

QTEST_APPLESS_MAIN(CertificateContentTest)
#include "CertificateContentTest.moc"
