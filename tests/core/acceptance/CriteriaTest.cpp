#include "core/acceptance/Judging.h"
#include "tests/support/Jobs.h"

#include <QDir>
#include <QTest>

using namespace loopwright;

Q_DECLARE_METATYPE(OrderScope)

class CriteriaTest : public QObject
{
    Q_OBJECT

    /// The shipped sets, oldest first.
    static std::vector<LimitSet> shipped()
    {
        std::vector<LimitSet> sets;
        const QDir folder(LOOPWRIGHT_SOURCE_DIR "/resources/limits");
        for (const QString &name : folder.entryList({"*.json"}, QDir::Files)) {
            QFile file(folder.filePath(name));
            if (file.open(QIODevice::ReadOnly))
                sets.push_back(
                    LimitSet::fromJson(parseJsonObject(file.readAll(), name).value(), name)
                        .value());
        }
        std::sort(sets.begin(), sets.end(), [](const LimitSet &a, const LimitSet &b) {
            return a.validFrom() < b.validFrom();
        });
        return sets;
    }

private slots:
    // A key that only the newest set has must not shut out the others: old decisions need them.
    void everyShippedSetIsRead() { QVERIFY(!shipped().empty()); }
    void everyCriterionSaysItAllAndOnce()
    {
        QStringList keys;
        for (const Criterion &criterion : criteria()) {
            QVERIFY(!keys.contains(QString(criterion.key)));
            keys << criterion.key;
            QCOMPARE(findCriterion(criterion.key), &criterion);
            const PlainWords &words = criterion.words;
            for (const char *sentence : {words.met, words.marginal, words.failed, words.notShown})
                QVERIFY2(QString(sentence).endsWith('.') && QString(sentence).size() <= 110,
                         sentence);
            QVERIFY(QString(words.met) != words.failed && QString(words.failed) != words.notShown);
            QVERIFY(*criterion.check && *criterion.name);
        }
        QCOMPARE(findCriterion("no such"), nullptr);
    }
    void needsFollowFromTheOrder_data()
    {
        QTest::addColumn<OrderFields>("fields");
        QTest::addColumn<OrderScope>("scope");
        QTest::addColumn<QString>("criterion");
        QTest::addColumn<QString>("keys");
        const auto row = [](const char *name, const char *criterion, const char *keys,
                            const OrderFields &changes = {},
                            const OrderFields &order = jobs::briFields(),
                            OrderScope scope = OrderScope::Full) {
            OrderFields fields = order;
            fields.insert(changes);
            QTest::newRow(name) << fields << scope << QString(criterion) << QString(keys);
        };
        row("calls", "calls",
            "call.out.B1.voice call.out.B1.data call.out.B2.data call.in.1.voice call.in.1.data "
            "call.in.2.data");
        row("calls of the line", "calls", "call.out.B1.voice call.in.1.voice", {},
            jobs::analogFields());
        row("packet on the D channel", "calls",
            "call.out.B1.voice call.out.B1.data call.out.B2.data call.out.D.packet call.in.1.voice "
            "call.in.1.data call.in.2.data",
            {{"d_services", "packet"}});
        row("one number for two terminals", "calls",
            "call.out.B1.voice call.out.B1.data call.out.B2.data call.in.1.voice call.in.1.data",
            {{"dn_2", "(217) 555 0143"}});
        row("the NT is supplied", "layer1", "layer.1.u layer.1.st");
        row("the NT is the customer's", "layer1", "layer.1.u", {{"nt_supplied", "no"}});
        row("each terminal", "layer2", "layer.2.1 layer.2.2");
        row("each SPID", "layer3", "layer.3.1", {{"spid_2", ""}});
        row("no SPID", "layer3", "", {{"spid_1", ""}, {"spid_2", ""}});
        row("data on one channel", "run", "cleared run.B1", {{"b2_services", "voice"}});
        row("no data", "run", "", {{"b1_services", "voice"}, {"b2_services", "voice"}});
        row("within the premises", "loop", "", {}, jobs::briFields(), OrderScope::MoveWithin);
        row("within the premises, layer 1", "layer1", "layer.1.u layer.1.st", {}, jobs::briFields(),
            OrderScope::MoveWithin);
        row("numbers alone, layer 1", "layer1", "", {}, jobs::briFields(), OrderScope::NumbersOnly);
        row("numbers alone, layer 3", "layer3", "layer.3.1 layer.3.2", {}, jobs::briFields(),
            OrderScope::NumbersOnly);
        row("record only, safety", "safety", "", {}, jobs::briFields(), OrderScope::RecordOnly);
        row("record only", "identifiers", "identifiers", {}, jobs::briFields(),
            OrderScope::RecordOnly);
        row("disconnect", "identifiers", "", {}, jobs::briFields(), OrderScope::Nothing);
    }
    void needsFollowFromTheOrder()
    {
        QFETCH(OrderFields, fields);
        QFETCH(OrderScope, scope);
        QFETCH(QString, criterion);
        QStringList keys;
        for (const Need &need : needsOf(jobs::order(fields), scope, jobs::limits()))
            if (need.criterion == criterion)
                keys << need.key;
        QTEST(keys.join(' '), "keys");
    }
    void aNeedSpeaksOfACriterionAndOfFieldsThatItsFactHas()
    {
        for (const OrderFields &fields : {jobs::briFields(), jobs::analogFields()}) {
            const auto needs = needsOf(jobs::order(fields), OrderScope::Full, jobs::limits());
            QVERIFY(needs.size() > 15);
            QStringList keys;
            for (const Need &need : needs) {
                QVERIFY2(!keys.contains(need.key), qPrintable(need.key));
                keys << need.key;
                QVERIFY(need.isOffer() || findCriterion(need.criterion));
                QVERIFY(!need.label.isEmpty());
            }
            for (const Need &need : needs)
                for (const QString &before : need.after)
                    QVERIFY2(keys.contains(before) && keys.indexOf(before) < keys.indexOf(need.key),
                             qPrintable(need.key + " after " + before));
        }
    }
};

QTEST_APPLESS_MAIN(CriteriaTest)
#include "CriteriaTest.moc"
