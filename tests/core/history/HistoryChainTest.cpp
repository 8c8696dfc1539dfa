#include "core/history/HistoryChain.h"

#include "core/base/Json.h"

#include <QTest>

#include <functional>
#include <rapidcheck.h>

using namespace loopwright;
using Events = std::vector<Event>;

namespace {

Event sample(int number)
{
    Event event;
    event.order = QString("SO-%1").arg(number);
    event.by = "A. Rivera";
    event.at = *Moment::parse(u"2026-03-04T09:15:00-06:00");
    event.recordedAt = *Moment::parse(u"2026-03-04T17:00:00.250Z");
    event.kind = "order_taken";
    event.detail = {{"number", number}};
    return event;
}

Events chainOf(int length)
{
    Events events;
    HistoryChain chain(circuitSubject("C-1"));
    for (int i = 0; i < length; ++i)
        events.push_back(chain.append(sample(i)));
    return events;
}

struct Break
{
    qint64 sequence = 0;
    QString what;
};

std::vector<Break> breaksOf(const Events &events)
{
    std::vector<Break> breaks;
    HistoryChain chain(circuitSubject("C-1"));
    for (const Event &event : events)
        if (const auto what = chain.follow(event))
            breaks.push_back({event.sequence, *what});
    return breaks;
}

} // namespace

Q_DECLARE_METATYPE(std::function<void(Events &)>)

class HistoryChainTest : public QObject
{
    Q_OBJECT
private slots:
    // Computed with Python's hashlib over the JSON text written out by hand, keys sorted.
    void digestIsSha256OverCanonicalJson()
    {
        Event event = sample(7);
        event = HistoryChain("circuit:C-1").append(event);
        QCOMPARE(event.digest, "5d48417904772b00442bcdcbc5337515acf3d39ff44dd562b3556c1f4b5f86cb");
    }

    void anUntouchedChainIsWhole()
    {
        const Events events = chainOf(5);
        QVERIFY(breaksOf(events).empty());
        QCOMPARE(events[4].sequence, 5);
        QCOMPARE(events[4].previous, events[3].digest);
    }

    void anEditIsNamedOnce_data()
    {
        QTest::addColumn<std::function<void(Events &)>>("edit");
        QTest::addColumn<qint64>("sequence");
        QTest::addColumn<QString>("what");
        const auto row = [](const char *name, std::function<void(Events &)> edit, qint64 sequence,
                            const char *what) {
            QTest::newRow(name) << edit << sequence << QString(what);
        };
        const char *changed = "was changed after it was recorded";
        row(
            "by", [](Events &e) { e[2].by = "B. Ode"; }, 3, changed);
        row(
            "detail", [](Events &e) { e[2].detail["number"] = 9; }, 3, changed);
        row(
            "at", [](Events &e) { e[2].at.msUtc += 1; }, 3, changed);
        row(
            "offset", [](Events &e) { e[2].at.offsetSeconds = 0; }, 3, changed);
        row(
            "recorded at", [](Events &e) { e[2].recordedAt.msUtc += 1; }, 3, changed);
        row(
            "order", [](Events &e) { e[0].order.clear(); }, 1, changed);
        row(
            "left out", [](Events &e) { e.erase(e.begin() + 1); }, 3, "event 2 was expected here");
        row(
            "other subject", [](Events &e) { e[3].subject = "register"; }, 4,
            "belongs to register");
        row(
            "replaced and computed anew",
            [](Events &e) {
                e[2].kind = "other";
                e[2].digest = e[2].computedDigest();
            },
            4, "does not follow the event before it");
    }
    void anEditIsNamedOnce()
    {
        QFETCH(std::function<void(Events &)>, edit);
        QFETCH(qint64, sequence);
        QFETCH(QString, what);
        Events events = chainOf(5);
        edit(events);
        const auto breaks = breaksOf(events);
        QCOMPARE(breaks.size(), 1u);
        QCOMPARE(breaks[0].sequence, sequence);
        QCOMPARE(breaks[0].what, what);
    }

    void aChainGoesOnFromItsHead()
    {
        Events events = chainOf(3);
        HistoryChain chain(circuitSubject("C-1"), 3, events.back().digest);
        events.push_back(chain.append(sample(3)));
        QVERIFY(breaksOf(events).empty());
        QCOMPARE(events.back().digest, chain.head());
    }

    void sealsComeBack()
    {
        Event event = sample(1);
        QVERIFY(event.seals().empty());
        event.addSeals({{"fact", "id-1", "aa"}});
        event.addSeals({{"decision", "id-2", "bb"}});
        QCOMPARE(event.seals(),
                 (std::vector<Seal>{{"fact", "id-1", "aa"}, {"decision", "id-2", "bb"}}));
    }

    void anyExchangeOfTwoEventsIsSeen()
    {
        QVERIFY(rc::check("exchanging two events breaks the chain", [] {
            const int length = *rc::gen::inRange(2, 12);
            const int a = *rc::gen::inRange(0, length);
            const int b = (a + *rc::gen::inRange(1, length)) % length;
            Events events = chainOf(length);
            std::swap(events[std::size_t(a)], events[std::size_t(b)]);
            RC_ASSERT(!breaksOf(events).empty());
        }));
    }
};

QTEST_APPLESS_MAIN(HistoryChainTest)
#include "HistoryChainTest.moc"
