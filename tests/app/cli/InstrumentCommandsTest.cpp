// `instrument label` on the command line, by the contract's statuses.

#include "tests/support/CommandRun.h"
#include "tests/support/SmallRecords.h"

#include <QTemporaryDir>

using namespace loopwright;
using namespace loopwright::jobs;

class InstrumentCommandsTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QStringList m_common;

    Answered label(const QString &key, const QStringList &more) const
    {
        return call(QStringList{"instrument", "label", key} + more + m_common);
    }
    const QStringList m_good{"--serial",          "S-900",           "--kind",
                             "loss set",          "--calibrated-on", "2025-09-01",
                             "--calibration-due", "2026-09-01"};

private slots:
    void initTestCase()
    {
        const QString path = m_folder.filePath("records.sqlite");
        makeSmallRecords(path);
        m_common = {"--db", path, "--now", "2026-04-01T12:00:00-06:00", "--by", "K7", "--json"};
    }

    void labelAndList()
    {
        const Answered labelled = label("TS-9", m_good);
        COMPARE_STATUS(labelled, ExitStatus::Yes);
        QCOMPARE(labelled.object()["as_labelled"], QJsonValue(true));
        QCOMPARE(labelled.object()["calibrations"].toArray().size(), 1);
        int found = 0;
        const QJsonArray list = call(QStringList{"instrument", "list"} + m_common).array();
        for (const QJsonValue &each : list)
            found += each["as_labelled"].toBool() ? each["instrument"] == "TS-9" : 0;
        QCOMPARE(found, 1);
        QVERIFY(call({"instrument", "list", "--db", m_common[1]}).out.contains("as labelled"));
    }

    void whatIsRefused()
    {
        QStringList later = m_good;
        later[5] = "2026-04-02";
        const Answered future = label("TS-8", later);
        COMPARE_STATUS(future, ExitStatus::BadInput);
        QVERIFY2(future.all().contains("--calibrated-on"), future.all().constData());
        COMPARE_STATUS(label("TS-8", m_good.mid(0, 4)), ExitStatus::Usage);
        COMPARE_STATUS(label("TS-4", m_good), ExitStatus::No); // in the register
    }
};

QTEST_MAIN(InstrumentCommandsTest)
#include "InstrumentCommandsTest.moc"
