// The help that the command line prints: stations, words, columns of files.

#include "app/actions/FileForms.h"
#include "core/acceptance/PartHelp.h"
#include "core/base/Glossary.h"
#include "core/safety/Cautions.h"
#include "tests/support/CommandRun.h"

#include <QTemporaryDir>

using namespace loopwright;

class HelpCommandsTest : public QObject
{
    Q_OBJECT

    static QString plain(const QStringList &words)
    {
        return QString::fromUtf8(call(words).out).simplified();
    }

private slots:
    void everyStationIsExplained()
    {
        const QString all = plain({"help", "station"});
        for (const PartHelp &part : partHelps()) {
            QVERIFY2(all.contains(part.whatFor().english()), part.key);
            QVERIFY2(all.contains("When it fails: " + part.whenItFails().english()), part.key);
            const Answered one = call({"help", "station", part.key, "--json"});
            COMPARE_STATUS(one, ExitStatus::Yes);
            QCOMPARE(one.array().last().toObject()["what_for"].toString().isEmpty(), false);
        }
        const QJsonArray turnup = call({"help", "station", "turnup", "--json"}).array();
        QCOMPARE(turnup.size(), 3);
        COMPARE_STATUS(call({"help", "station", "lunch"}), ExitStatus::Usage);
    }
    /// The cautions are printed with it, as they stand on the card.
    void safetyComesWithItsCautions()
    {
        const QString safety = plain({"help", "station", "safety"});
        QVERIFY(safety.contains(cautionsDisclaimer().simplified()));
        for (const Caution &caution : cautions())
            QVERIFY2(safety.contains(QString::fromUtf8(caution.text).simplified()), caution.key);
        QVERIFY(!plain({"help", "station", "calls"}).contains(cautionsDisclaimer().simplified()));
    }
    void everyWordIsExplained()
    {
        const QString all = plain({"help", "glossary"});
        for (const Term &term : glossary())
            QVERIFY2(all.contains(QString::fromUtf8(term.meaning).simplified()), term.word);
        const QJsonArray spid = call({"help", "glossary", "spid", "--json"}).array();
        QCOMPARE(spid.size(), 1);
        QCOMPARE(spid[0]["term"], QJsonValue("SPID"));
        QCOMPARE(spid[0]["also"], QJsonValue("service profile identifier"));
        const Answered unknown = call({"help", "glossary", "zebra", "--json"});
        COMPARE_STATUS(unknown, ExitStatus::BadInput);
        QCOMPARE(unknown.errorPlace(), "term");
    }
    void columnsAreThoseOfTheReader()
    {
        const QString all = plain({"help", "columns"});
        for (const FileForm &form : fileForms()) {
            QVERIFY2(all.contains(form.command), form.command);
            const QJsonObject json = call({"help", "columns", form.key, "--json"}).object();
            const CsvLayout layout = form.layout();
            QStringList required;
            const QJsonArray columns = json["columns"].toArray();
            for (const QJsonValue &column : columns)
                if (column["required"].toBool())
                    required << column["column"].toString();
            QCOMPARE(required, layout.required);
            QCOMPARE(columns.size(), layout.required.size() + layout.optional.size());
            QCOMPARE(call({"help", "columns", form.key, "--sample"}).out, sampleOf(form));
        }
        COMPARE_STATUS(call({"help", "columns", "--sample"}), ExitStatus::Usage);
    }
    /// As somebody tries it who has nothing yet: each sample is saved, then taken in.
    void aSampleIsTakenInByItsCommand()
    {
        QTemporaryDir folder;
        for (const FileForm &form : fileForms()) {
            const QString file = written(folder.filePath(QString(form.key) + ".csv"),
                                         call({"help", "columns", form.key, "--sample"}).out);
            QStringList words = QString(form.command).split(' ');
            words << file << "--db" << folder.filePath("records.sqlite") << "--by"
                  << "quill";
            if (QString(form.key) == "seconds")
                words << "--rate"
                      << "64000";
            const Answered taken = call(words);
            COMPARE_STATUS(taken, ExitStatus::Yes);
        }
        QCOMPARE(call({"order", "list", "--json", "--db", folder.filePath("records.sqlite")})
                     .array()
                     .size(),
                 2);
    }
};

QTEST_MAIN(HelpCommandsTest)
#include "HelpCommandsTest.moc"
