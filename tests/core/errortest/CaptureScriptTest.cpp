// Captures that another program wrote: tests/support/make_captures.py plants errors, slips and
// outages at known places.

#include "core/base/Json.h"
#include "core/errortest/Capture.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace loopwright;

class CaptureScriptTest : public QObject
{
    Q_OBJECT
private:
    QTemporaryDir m_folder;
    QJsonArray m_truth;

    QByteArray contents(const QString &name) const
    {
        QFile file(m_folder.filePath(name));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    static CaptureOptions options(const QJsonObject &truth)
    {
        CaptureOptions options;
        if (truth["told"].toBool())
            options.pattern = fromText<PatternKey>(truth["pattern"].toString());
        options.rate = truth["rate"].toInt();
        if (truth["lsb_first"].toBool())
            options.order = BitOrder::LsbFirst;
        return options;
    }

private slots:
    void initTestCase()
    {
        QProcess script;
        script.start("python3",
                     {LOOPWRIGHT_SOURCE_DIR "/tests/support/make_captures.py", m_folder.path()});
        QVERIFY2(script.waitForFinished(120'000), "python3 makes the captures");
        QVERIFY2(script.exitCode() == 0, script.readAllStandardError().constData());
        m_truth = parseJson(contents("truth.json"), "truth.json")->toArray();
        QCOMPARE(m_truth.size(), 31);
    }

    void findsWhatWasPlanted_data()
    {
        QTest::addColumn<QJsonObject>("truth");
        for (const QJsonValue &truth : std::as_const(m_truth))
            QTest::newRow(qPrintable(truth["file"].toString())) << truth.toObject();
    }
    void findsWhatWasPlanted()
    {
        QFETCH(QJsonObject, truth);
        const QByteArray octets = contents(truth["file"].toString());
        QVERIFY(!octets.isEmpty());
        const auto result = analyseCapture(octets, options(truth));
        QVERIFY(result);
        const QJsonObject found = result->toJson();
        for (const char *key : {"pattern", "inverted", "rate", "slips", "sync_losses"})
            QCOMPARE(found.value(QLatin1StringView(key)), truth.value(QLatin1StringView(key)));
        QCOMPARE(toText(result->found->order),
                 truth["lsb_first"].toBool() ? "lsb_first" : "msb_first");
        QVERIFY(*result->synchronisedAtBit < 1000);
        QStringList slipSeconds;
        for (const QJsonValue &slip : truth["slips"].toArray())
            slipSeconds << QString::number(slip["second"].toInt());
        const QJsonArray planted = truth["per_second"].toArray();
        const QJsonArray counted = found["per_second"].toArray();
        QCOMPARE(counted.size(), planted.size());
        for (qsizetype i = 0; i < planted.size(); ++i) {
            const QString where = QString("second %1: planted %2, counted %3")
                                      .arg(i)
                                      .arg(planted[i].toInt(-1))
                                      .arg(counted[i].toInt(-1));
            QVERIFY2(planted[i].isNull() == counted[i].isNull(), qPrintable(where));
            // A slip costs at most 64 bit errors.
            const int slips = int(slipSeconds.count(QString::number(i)));
            const int extra = counted[i].toInt() - planted[i].toInt();
            QVERIFY2(extra >= 0 && extra <= 64 * slips, qPrintable(where));
        }
    }
};

QTEST_APPLESS_MAIN(CaptureScriptTest)
#include "CaptureScriptTest.moc"
