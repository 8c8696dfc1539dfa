// What comes on standard input damaged (a NUL, a carriage return alone, marks of a file where none
// belong, ten megabytes in one line, no UTF-8) is refused by every import and by `record`: with the
// status of the contract, by a short line that names the place, and nothing is changed.

#include "app/actions/Orders.h"
#include "db/EventStore.h"
#include "tests/support/CommandRun.h"
#include "tests/support/Office.h"

#include <QTemporaryDir>

using namespace loopwright;

namespace {

constexpr qsizetype vast = 10'000'000;

struct Intake
{
    const char *name;
    QStringList words; ///< with - for the file
    QByteArray good;
    QByteArray text;  ///< in it, that a person typed
    QByteArray place; ///< of that text
    bool isJson = false;

    QByteArray with(const QByteArray &other) const { return QByteArray(good).replace(text, other); }
    /// The text with that within.
    QByteArray around(const QByteArray &within) const
    {
        return with(QByteArray(text).insert(4, within));
    }
    QByteArray behind(const QByteArray &other) const { return other + good; }
};

const QList<Intake> &intakes()
{
    static const QList<Intake> all{
        {"office import",
         {"office", "import", "-"},
         "office,name,protocol_variant\nSOUTH,South Street,ni2\n",
         "South Street",
         "row 2, column name"},
        {"issuer import",
         {"issuer", "import", "-"},
         "name,address,telephone,trouble_telephone\nPrairie Line,4 Hill,555-0170,555-0171\n",
         "Prairie Line",
         "row 2, column name"},
        {"installer import",
         {"installer", "import", "-"},
         "installer,name\nK8,Jo Reed\n",
         "Jo Reed",
         "row 2, column name"},
        {"instrument import",
         {"instrument", "import", "-"},
         "instrument,serial,kind,calibrated_on,calibration_due\n"
         "TS-5,S-2,loss set,2025-09-01,2026-09-01\n",
         "loss set",
         "row 2, column kind"},
        {"order import",
         {"order", "import", "-"},
         jobs::csv({jobs::analogFields()}),
         "Quiet Cafe",
         "row 2, column customer"},
        {"order set",
         {"order", "set", "--in", "-"},
         "order_number,column,value\nA-1001,remarks,ring twice\n",
         "ring twice",
         "row 2, column remarks"},
        {"record",
         {"record", "-"},
         R"({"order":"A-1001","installer":"K7","facts":[)"
         R"({"kind":"note","at":"2026-03-04T09:00:00-06:00","text":"ring twice"}]})",
         "ring twice",
         "facts[0].text",
         true},
    };
    return all;
}

struct Fault
{
    const char *name;
    QByteArray (*damage)(const Intake &intake);
    const char *place; ///< of a table; null: of the text, then the row alone is refused
    const char *says;
    const char *placeInJson; ///< likewise; empty: a record is taken with it
    const char *saysInJson;
};

constexpr const char *mark = "\xEF\xBB\xBF";

const Fault faults[] = {
    {"a NUL in a text", [](const Intake &intake) { return intake.around(QByteArray(1, '\0')); },
     nullptr, "holds a control character", nullptr, "holds a control character"},
    {"a NUL before all", [](const Intake &intake) { return intake.behind(QByteArray(1, '\0')); },
     "row 1", "holds a character that is not seen", "line 1, column", "is not valid JSON"},
    {"a carriage return in a text", [](const Intake &intake) { return intake.around("\r"); },
     "row 2", "has a carriage return inside a field", nullptr, "holds a control character"},
    {"a carriage return in quotation marks",
     [](const Intake &intake) {
         return intake.isJson ? intake.around("\\r")
                              : intake.with('"' + QByteArray(intake.text).insert(4, '\r') + '"');
     },
     nullptr, "holds a control character", nullptr, "holds a control character"},
    {"two marks", [](const Intake &intake) { return intake.behind(QByteArray(mark).repeated(2)); },
     "row 1", "holds a character that is not seen", "", ""},
    {"UTF-16",
     [](const Intake &intake) {
         const QString text = QChar(QChar::ByteOrderMark) + QString::fromUtf8(intake.good);
         return QByteArray(reinterpret_cast<const char *>(text.utf16()), text.size() * 2);
     },
     "standard input", "is UTF-16", "standard input", "is UTF-16"},
    {"10 MB in a text", [](const Intake &intake) { return intake.with(QByteArray(vast, 'x')); },
     nullptr, "is longer than", nullptr, "is longer than"},
    {"10 MB before all", [](const Intake &intake) { return intake.behind(QByteArray(vast, 'x')); },
     "row 1", "is not known", "line 1, column", "is not valid JSON"},
    {"no UTF-8", [](const Intake &intake) { return intake.around("\xff"); }, "line 2",
     "is not UTF-8", "line 1, column", "is not valid JSON"},
    {"cut within a letter",
     [](const Intake &intake) { return QByteArray(intake.good).append('\xc3'); }, "line 3",
     "is not UTF-8", "line 1, column", "is not valid JSON"},
};

/// That the rest of the file is taken as it is.
bool isOfARow(const Fault &fault)
{
    return !fault.place || QByteArray(fault.place) == "row 2";
}

} // namespace

class DamagedInputTest : public QObject
{
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_database;

    Answered run(const QStringList &words, const QByteArray &input) const
    {
        QProcess program;
        program.start(LOOPWRIGHT_BIN_DIR "/loopwright-cli",
                      words + QStringList{"--json", "--db", m_database, "--by", "Dana", "--now",
                                          "2026-03-05T12:00:00-06:00"});
        program.write(input);
        program.closeWriteChannel();
        Answered answered;
        if (program.waitForFinished(60'000) && program.exitStatus() == QProcess::NormalExit)
            answered.status = program.exitCode();
        answered.out = program.readAllStandardOutput();
        answered.messages = program.readAllStandardError();
        return answered;
    }
    qint64 events() const
    {
        const auto database = Database::open(m_database, Database::Access::ReadOnly);
        return database ? EventStore(*database).count().value_or(-1) : -1;
    }
    /// Said in both places, and short whatever was read.
    static void verifySaid(const Answered &answered, const QByteArray &place, const char *says)
    {
        QVERIFY2(answered.messages.startsWith("loopwright-cli: standard input") &&
                     answered.messages.contains(place) && answered.messages.contains(says),
                 answered.all().left(2000).constData());
        QVERIFY(answered.messages.size() < 1000);
        QVERIFY(answered.out.size() < 1000);
        QVERIFY(!answered.messages.contains("Sanitizer"));
    }

private slots:
    void initTestCase()
    {
        m_database = m_folder.filePath("records.sqlite");
        auto records = jobs::office(m_database);
        const auto taken = importOrders(*records, jobs::csv({jobs::briFields()}), {"orders.csv"});
        QVERIFY(taken && taken->clean());
    }

    void whatIsDamagedIsRefused_data()
    {
        QTest::addColumn<int>("intake");
        QTest::addColumn<int>("fault");
        for (int i = 0; i < int(intakes().size()); ++i)
            for (int j = 0; j < int(std::size(faults)); ++j) {
                const char *place = faults[j].placeInJson;
                if (!intakes()[i].isJson || !place || *place)
                    QTest::addRow("%s: %s", intakes()[i].name, faults[j].name) << i << j;
            }
    }
    void whatIsDamagedIsRefused()
    {
        QFETCH(int, intake);
        QFETCH(int, fault);
        const Intake &asked = intakes()[intake];
        const Fault &given = faults[fault];
        QCOMPARE(asked.good.count(asked.text), 1);
        const qint64 before = events();
        QVERIFY(before > 0);
        const Answered answered = run(asked.words, given.damage(asked));
        QCOMPARE(events(), before);
        const char *place = asked.isJson ? given.placeInJson : given.place;
        verifySaid(answered, place ? QByteArray(place) : asked.place,
                   asked.isJson ? given.saysInJson : given.says);
        if (asked.isJson || !isOfARow(given)) {
            COMPARE_STATUS(answered, ExitStatus::BadInput);
            QCOMPARE(answered.errorCode(), "bad_input");
            QVERIFY(answered.errorPlace().startsWith("standard input"));
            return;
        }
        COMPARE_STATUS(answered, ExitStatus::No);
        QCOMPARE(answered.object()["accepted"], 0);
        QCOMPARE(answered.object()["refused"], 1);
        QCOMPARE(answered.object()["findings"][0]["row"], 2);
    }

    /// One such row refuses all, if that is asked for.
    void orAllOfItIsRefused()
    {
        for (const Intake &intake : intakes()) {
            if (intake.isJson)
                continue;
            const qint64 before = events();
            const Answered answered = run(intake.words + QStringList{"--all-or-nothing"},
                                          intake.good + QByteArray(1, '\0') + '\n');
            COMPARE_STATUS(answered, ExitStatus::BadInput);
            verifySaid(answered, "row 3", "fields where the header has");
            QCOMPARE(events(), before);
        }
    }

    /// The same faults in a map of columns.
    void norIsADamagedMapTaken()
    {
        const QString orders =
            written(m_folder.filePath("orders.csv"), jobs::csv({jobs::analogFields()}));
        const qint64 before = events();
        for (const auto &[map, place] : std::initializer_list<std::pair<QByteArray, const char *>>{
                 {QByteArray("{\"ignore\":[]}\0", 14), "line 1, column"},
                 {QByteArray("\xFF\xFE{\0}\0", 6), "standard input"},
                 {"{\"columns\":{\"A\xff\":\"pair\"}}", "line 1, column"},
                 {"{\"columns\":{\"A\rB\":\"pair\"}}", "columns.A"},
                 {QByteArray(vast, ' '), "standard input"}}) {
            const Answered answered = run({"order", "import", orders, "--map", "-"}, map);
            COMPARE_STATUS(answered, ExitStatus::BadInput);
            verifySaid(answered, place, "");
        }
        QCOMPARE(events(), before);
    }

    /// The last: what is as it should be is taken, with the mark of a file before it too.
    void theMarkOfAFileIsNoDamage()
    {
        for (const Intake &intake : intakes()) {
            const qint64 before = events();
            COMPARE_STATUS(run(intake.words, mark + intake.good), ExitStatus::Yes);
            QCOMPARE(events(), before + 1);
        }
    }
};

QTEST_GUILESS_MAIN(DamagedInputTest)
#include "DamagedInputTest.moc"
