// Longer than 400 lines: one case for each thing that can happen on a channel.
#include "core/errortest/Capture.h"

#include "tests/support/BitwiseCapture.h"
#include "tests/support/MadeCapture.h"

#include <QJsonArray>
#include <QTest>

#include <cmath>

using namespace loopwright;

namespace {

using Random = std::mt19937_64;

qint64 between(Random &random, qint64 from, qint64 to)
{
    return from + qint64(random() % quint64(to - from + 1));
}
bool oneIn(Random &random, int n)
{
    return random() % quint64(n) == 0;
}

struct Case
{
    QByteArray octets;
    CaptureOptions options;
};

/// Bits in error, at random or close together.
void disturb(MadeCapture &made, Random &random)
{
    static constexpr double ratios[] = {0, 0, 1e-5, 1e-4, 1e-3, 1e-2, 5e-2, 0.15};
    const double ratio = ratios[random() % std::size(ratios)];
    if (ratio > 0) {
        std::geometric_distribution<qint64> gap(ratio);
        for (qint64 at = gap(random); at < made.size(); at += 1 + gap(random))
            made.flip(at);
    }
    for (int bursts = int(random() % 3); bursts > 0; --bursts) {
        const qint64 from = between(random, 0, made.size() - 1);
        const qint64 to = std::min(made.size(), from + between(random, 1, 3000));
        for (qint64 at = from; at < to; ++at)
            if (random() & 1)
                made.flip(at);
    }
    if (oneIn(random, 25)) // the eighth bit of each octet stands still
        for (qint64 at = 7; at < made.size(); at += 8)
            made.set(at, true);
}

/// A slip or an outage.
void interrupt(MadeCapture &made, Random &random)
{
    const qint64 lengths[] = {1, between(random, 1, 16), 8 * between(random, 1, 20),
                              between(random, 1, 5000)};
    const qint64 length = lengths[random() % std::size(lengths)];
    const qint64 outage = oneIn(random, 2) ? between(random, 1, 2000) : between(random, 1, 150'000);
    switch (random() % 7) {
    case 0:
    case 1:
        made.lose(length);
        break;
    case 2:
        made.repeat(std::min(length, made.size()));
        break;
    case 3:
        made.addNoise(length, random);
        break;
    case 4: // noise in place of the pattern, which goes on after it
        made.addNoise(outage, random);
        made.lose(outage);
        break;
    case 5:
        made.addConstant(outage, random() & 1);
        made.lose(oneIn(random, 2) ? outage : 0);
        break;
    case 6: // two slips close together
        made.lose(8);
        made.add(between(random, 1, 700));
        made.repeat(std::min<qint64>(8, made.size()));
        break;
    }
}

Case randomCase(Random &random)
{
    const Pattern &pattern = patterns()[random() % patterns().size()];
    const bool seven = oneIn(random, 3);
    const bool wide = oneIn(random, 6);
    const BitOrder order = oneIn(random, 3) ? BitOrder::LsbFirst : BitOrder::MsbFirst;
    const qint64 second = (wide ? 2 : 1) * (seven ? 56000 : 64000);

    MadeCapture made(pattern.key, random() & 1, quint32(between(random, 1, pattern.period())));
    if (oneIn(random, 3))
        made.addNoise(between(random, 1, oneIn(random, 3) ? 100'000 : 500), random);
    else if (oneIn(random, 4))
        made.addConstant(between(random, 1, 70'000), random() & 1);
    const qint64 length = between(random, 1, 3 * second);
    while (made.size() < length) {
        const qint64 next = made.size() + between(random, 1, length);
        const qint64 edge = (next / second + 1) * second; // near the end of a second now and then
        made.add((oneIn(random, 4) ? edge + between(random, -300, 300) : next) - made.size());
        if (!oneIn(random, 3))
            interrupt(made, random);
    }
    disturb(made, random);

    Case one;
    one.octets = made.octets(order, seven);
    if (!oneIn(random, 3))
        one.options.pattern = pattern.key;
    if (wide || !oneIn(random, 4))
        one.options.rate = second;
    if (oneIn(random, 3))
        one.options.order = order;
    return one;
}

CaptureResult inPieces(const Case &one, Random &random)
{
    auto analyser = CaptureAnalyser::make(one.options);
    const qint64 longest = oneIn(random, 3) ? 40'000 : oneIn(random, 2) ? 9'000 : 300;
    for (qsizetype at = 0; at < one.octets.size();) {
        const qsizetype size =
            std::min<qsizetype>(one.octets.size() - at, between(random, 0, longest));
        analyser->feed(QByteArrayView(one.octets).sliced(at, size));
        at += size;
    }
    return analyser->finish();
}

QString textOf(const CaptureResult &result)
{
    QString text = result.found ? QString("%1 %2 %3 %4")
                                      .arg(toText(result.found->pattern))
                                      .arg(result.found->inverted)
                                      .arg(result.found->rate)
                                      .arg(toText(result.found->order))
                                : QString("nothing");
    text += QString(" at %1, %2 errors in %3 bits; slips")
                .arg(result.synchronisedAtBit.value_or(-1))
                .arg(result.summary.bitErrors)
                .arg(result.summary.bits);
    for (const Slip &slip : result.slips)
        text += QString(" %1:%2").arg(slip.second).arg(slip.bits);
    text += "; losses";
    for (const SyncLoss &loss : result.losses)
        text += QString(" %1").arg(loss.second);
    text += "; seconds";
    for (const Second second : result.seconds)
        text += QString(" %1").arg(second.code());
    return text;
}

QByteArray repeated(const char *hex, int times)
{
    return QByteArray::fromHex(hex).repeated(times);
}

QByteArray randomOctets(qsizetype count, quint64 start)
{
    Random random(start);
    QByteArray octets(count, Qt::Uninitialized);
    for (char &octet : octets)
        octet = char(random());
    return octets;
}

} // namespace

class CaptureTest : public QObject
{
    Q_OBJECT
private slots:
    void agreesWithTheBitwiseAnalysis()
    {
        Random random(2024);
        int found = 0;
        int slips = 0;
        int losses = 0;
        for (int i = 0; i < 10'000; ++i) {
            const Case one = randomCase(random);
            const QString expected = textOf(bitwise::Analysis(one.octets, one.options).run());
            const auto whole = analyseCapture(one.octets, one.options);
            QVERIFY(whole);
            QVERIFY2(textOf(*whole) == expected,
                     qPrintable(QString("case %1:\n%2\n%3").arg(i).arg(textOf(*whole), expected)));
            const CaptureResult pieces = inPieces(one, random);
            QCOMPARE(textOf(pieces), expected);
            QCOMPARE(pieces.toJson(), whole->toJson());
            found += whole->found.has_value();
            slips += int(whole->slips.size());
            losses += int(whole->losses.size());
        }
        qInfo("%d found, %d slips, %d losses", found, slips, losses);
        QVERIFY(found > 8000 && slips > 3000 && losses > 500);
    }

    void findsEachPatternEachWay_data()
    {
        QTest::addColumn<int>("pattern");
        QTest::addColumn<bool>("inverted");
        QTest::addColumn<bool>("lsb");
        QTest::addColumn<bool>("seven");
        for (int pattern = 0; pattern < int(patterns().size()); ++pattern)
            for (const bool inverted : {false, true})
                for (const bool lsb : {false, true})
                    for (const bool seven : {false, true})
                        QTest::addRow("%s%s%s%s", patterns()[std::size_t(pattern)].name,
                                      inverted ? " inverted" : "", lsb ? " lsb" : "",
                                      seven ? " seven" : "")
                            << pattern << inverted << lsb << seven;
    }
    void findsEachPatternEachWay()
    {
        QFETCH(int, pattern);
        QFETCH(bool, inverted);
        QFETCH(bool, lsb);
        QFETCH(bool, seven);
        const Pattern &sent = patterns()[std::size_t(pattern)];
        const BitOrder order = lsb ? BitOrder::LsbFirst : BitOrder::MsbFirst;
        const qint64 rate = seven ? 56000 : 64000;
        MadeCapture made(sent.key, inverted, 0x2d5c3b & sent.period());
        made.add(20 * rate);
        const CaptureResult result = *analyseCapture(made.octets(order, seven), {});
        QCOMPARE(result.channel, ChannelState::Pattern);
        QCOMPARE(*result.found, (PatternSeen{sent.key, inverted, rate, order}));
        QCOMPARE(*result.synchronisedAtBit, sent.stages + 64);
        QCOMPARE(result.seconds, SecondList(20, Second(0)));
        QCOMPARE(result.summary.bits, 20 * rate - *result.synchronisedAtBit);
        QCOMPARE(result.summary.bitErrors, 0);
        QVERIFY(result.slips.empty() && result.losses.empty());
        // The same when it is told what to look for.
        const CaptureResult told =
            *analyseCapture(made.octets(order, seven), {sent.key, rate, order});
        QCOMPARE(told.toJson(), result.toJson());
    }

    void countsEachError()
    {
        MadeCapture made(PatternKey::Prbs11, false, 1);
        made.add(10 * 64000 + 777);
        Random random(5);
        SecondList expected(10);
        std::vector<int> counts(10);
        std::vector<bool> hit(10 * 64000);
        for (int i = 0; i < 3000; ++i) {
            const qint64 at = between(random, 1000, 10 * 64000 - 1);
            if (!hit[std::size_t(at)]) {
                hit[std::size_t(at)] = true;
                made.flip(at);
                ++counts[std::size_t(at / 64000)];
            }
        }
        made.flip(10 * 64000 + 5); // in the incomplete second, which is dropped
        for (std::size_t i = 0; i < 10; ++i)
            expected[i] = Second(counts[i]);
        const CaptureResult result =
            *analyseCapture(made.octets(BitOrder::MsbFirst, false), {PatternKey::Prbs11, {}, {}});
        QCOMPARE(result.seconds, expected);
        QCOMPARE(result.summary.seconds, 10);
        QCOMPARE(result.summary.unavailableSeconds, 10); // some 300 errors in each
        QVERIFY(result.slips.empty() && result.losses.empty());
    }

    void tellsSlips_data()
    {
        QTest::addColumn<int>("pattern");
        QTest::addColumn<qint64>("at");
        QTest::addColumn<int>("bits");
        const qint64 places[] = {
            2 * 64000,          2 * 64000 + 1,   2 * 64000 + 40,  2 * 64000 + 511, 2 * 64000 + 512,
            2 * 64000 + 30'001, 3 * 64000 - 600, 3 * 64000 - 100, 3 * 64000 - 20,  3 * 64000 - 1};
        for (int pattern = 0; pattern < int(patterns().size()); ++pattern)
            for (const qint64 at : places)
                for (const int bits : {1, -1, 8, -8, 13, -64, 200})
                    QTest::addRow("%s at %lld by %d", patterns()[std::size_t(pattern)].name,
                                  static_cast<long long>(at), bits)
                        << pattern << at << bits;
    }
    void tellsSlips()
    {
        QFETCH(int, pattern);
        QFETCH(qint64, at);
        QFETCH(int, bits);
        const Pattern &sent = patterns()[std::size_t(pattern)];
        MadeCapture made(sent.key, false, 0x2d5c3b & sent.period());
        made.add(at);
        if (bits > 0)
            made.lose(bits);
        else
            made.repeat(-bits);
        made.add(5 * 64000 - made.size());
        for (const bool noisy : {false, true}) {
            if (noisy) // one error in a thousand bits
                for (qint64 i = 1500; i < made.size(); i += 1000)
                    made.flip(i);
            const CaptureResult result =
                *analyseCapture(made.octets(BitOrder::MsbFirst, false), {});
            QCOMPARE(result.slips.size(), 1u);
            QCOMPARE(result.slips[0].bits, bits);
            // Bits next to the slip may fit both phases, so that it may lie a few bits off.
            QVERIFY(std::abs(result.slips[0].second * 64000 + 32000 - at) <= 32000 + 40);
            QVERIFY(result.losses.empty());
            const qint64 planted = noisy ? (made.size() - 1500 + 999) / 1000 : 0;
            const qint64 cost = result.summary.bitErrors - planted;
            // At most 64; repeated bits that are compared are the slip's own.
            QVERIFY2(cost >= -2 && cost <= 64, qPrintable(QString::number(cost)));
        }
    }

    /// Too few of the second's bits are in error to be trouble; the bits after it tell.
    void tellsSlipsJustBeforeTheEndOfASecond()
    {
        for (const Pattern &pattern : patterns()) {
            for (const bool seven : {false, true}) {
                const qint64 second = seven ? 56000 : 64000;
                for (const qint64 before : {16, 40, 60}) {
                    for (const qint64 behind : {second, qint64(2000)}) { // or the capture ends
                        MadeCapture made(pattern.key, false, 0x1234 % pattern.period());
                        made.add(2 * second - before);
                        made.lose(3);
                        made.add(before + behind);
                        const CaptureResult result = *analyseCapture(
                            made.octets(BitOrder::MsbFirst, seven), {{}, second, {}});
                        QCOMPARE(result.slips, (std::vector<Slip>{{1, 3}}));
                        QVERIFY2(result.summary.bitErrors <= 3,
                                 qPrintable(QString("%1, %2 bits before the end: %3")
                                                .arg(toText(pattern.key))
                                                .arg(before)
                                                .arg(result.summary.bitErrors)));
                    }
                }
            }
        }
    }

    /// So near the end that the old phase may fit to the last bit: then the next second shows it,
    /// and no error is left behind in this one.
    void tellsSlipsInTheLastBitsOfASecond()
    {
        int inThisSecond = 0;
        for (const Pattern &pattern : patterns()) {
            for (const bool seven : {false, true}) {
                const qint64 second = seven ? 56000 : 64000;
                for (qint64 before = 1; before <= 12; ++before) {
                    MadeCapture made(pattern.key, false, 0x1234 % pattern.period());
                    made.add(2 * second - before);
                    made.lose(5);
                    made.add(before + second);
                    const CaptureResult result =
                        *analyseCapture(made.octets(BitOrder::MsbFirst, seven), {{}, second, {}});
                    QCOMPARE(result.slips.size(), 1U);
                    QCOMPARE(result.slips[0].bits, 5);
                    QCOMPARE(result.seconds, (SecondList{0, 0, 0}));
                    inThisSecond += result.slips[0].second == 1;
                }
            }
        }
        QVERIFY2(inThisSecond > 12 * 9, qPrintable(QString::number(inThisSecond)));
    }

    void tellsSlipsInSevenBitOctets()
    {
        MadeCapture made(PatternKey::Prbs15, false, 3);
        made.add(100'002);
        made.lose(7);
        made.add(56000);
        made.repeat(7);
        made.add(5 * 56000 - made.size());
        const CaptureResult result =
            *analyseCapture(made.octets(BitOrder::MsbFirst, true), {{}, 56000, {}});
        QCOMPARE(result.slips, (std::vector<Slip>{{1, 7}, {2, -7}}));
        QVERIFY(result.summary.bitErrors <= 2 * 64);
    }

    void losesAndRegains_data()
    {
        QTest::addColumn<qint64>("from");
        QTest::addColumn<qint64>("length");
        QTest::addColumn<QString>("fill");
        QTest::addColumn<QString>("seconds"); // . in sync and clean, E errors, x out of sync
        QTest::addColumn<QString>("cause");
        QTest::newRow("three whole seconds of noise")
            << qint64(2 * 64000) << qint64(3 * 64000) << "noise"
            << "..xxxx..."
            << "unknown";
        QTest::newRow("zeros") << qint64(2 * 64000 + 10'000) << qint64(3 * 64000) << "zeros"
                               << "..xxxx..."
                               << "dead";
        QTest::newRow("ones") << qint64(2 * 64000 + 10'000) << qint64(3 * 64000) << "ones"
                              << "..xxxx..."
                              << "dead";
        QTest::newRow("half a second") << qint64(3 * 64000 + 10'000) << qint64(32'000) << "noise"
                                       << "...x....."
                                       << "unknown";
        QTest::newRow("a tenth") << qint64(3 * 64000 + 10'000) << qint64(6'400) << "noise"
                                 << "...E....."
                                 << "";
        // The last tenth of the second before belongs to the outage.
        QTest::newRow("begins late") << qint64(4 * 64000 - 6'400) << qint64(2 * 64000) << "noise"
                                     << "...xxx..."
                                     << "unknown";
        QTest::newRow("to the end") << qint64(6 * 64000) << qint64(3 * 64000) << "zeros"
                                    << "......xxx"
                                    << "dead";
    }
    void losesAndRegains()
    {
        QFETCH(qint64, from);
        QFETCH(qint64, length);
        QFETCH(QString, fill);
        QFETCH(QString, seconds);
        QFETCH(QString, cause);
        for (const qint64 lost : {qint64(0), qint64(8)}) { // bits that the outage swallowed
            Random random(9);
            MadeCapture made(PatternKey::Prbs11, false, 3);
            made.add(from);
            if (fill == "noise")
                made.addNoise(length, random);
            else
                made.addConstant(length, fill == "ones");
            made.lose(length + lost);
            made.add(9 * 64000 - made.size());
            const CaptureResult result =
                *analyseCapture(made.octets(BitOrder::MsbFirst, false), {});
            QString told;
            for (const Second second : result.seconds)
                told += !second.inSync() ? 'x' : second.bitErrors() > 0 ? 'E' : '.';
            QCOMPARE(told, seconds);
            QCOMPARE(result.losses.size(), std::size_t(cause.isEmpty() ? 0 : 1));
            QCOMPARE(result.summary.syncLosses, qint64(result.losses.size()));
            if (!cause.isEmpty())
                QCOMPARE(toText(result.losses[0].channel), cause);
            const bool regained = !seconds.endsWith('x');
            QCOMPARE(result.slips.size(), std::size_t(lost > 0 && regained ? 1 : 0));
            if (!result.slips.empty())
                QCOMPARE(result.slips[0].bits, lost);
        }
    }

    void tellsWhatElseIsThere_data()
    {
        QTest::addColumn<QByteArray>("octets");
        QTest::addColumn<QString>("channel");
        QTest::addColumn<QString>("fixed");
        QTest::newRow("empty") << QByteArray() << "empty"
                               << "";
        QTest::newRow("zeros") << repeated("00", 40'000) << "dead"
                               << "00";
        QTest::newRow("ones") << repeated("ff", 40'000) << "dead"
                              << "FF";
        QTest::newRow("ones, less than a second") << repeated("ff", 900) << "dead"
                                                  << "FF";
        QTest::newRow("1:1") << repeated("55", 40'000) << "fixed"
                             << "55";
        QTest::newRow("idle") << repeated("7f", 40'000) << "fixed"
                              << "7F";
        QTest::newRow("one octet in two") << repeated("ff00", 20'000) << "fixed"
                                          << "00 FF";
        QTest::newRow("three in 24") << repeated("448000", 20'000) << "fixed"
                                     << "00 44 80";
        QTest::newRow("four octets") << repeated("deadbeef", 9'000) << "fixed"
                                     << "AD BE EF DE";
        QTest::newRow("random") << randomOctets(100'000, 1) << "unknown"
                                << "";
        QTest::newRow("one octet") << QByteArray(1, 'x') << "unknown"
                                   << "";
        QByteArray disturbed = repeated("ff", 40'000);
        for (int i = 500; i < 40'000; i += 499)
            disturbed[i] = '\x7f';
        QTest::newRow("ones, disturbed") << disturbed << "dead"
                                         << "FF";
    }
    void tellsWhatElseIsThere()
    {
        QFETCH(QByteArray, octets);
        QFETCH(QString, channel);
        QFETCH(QString, fixed);
        for (const auto rate : {std::optional<qint64>(), std::optional<qint64>(64000),
                                std::optional<qint64>(56000)}) {
            const CaptureResult result = *analyseCapture(octets, {{}, rate, {}});
            QCOMPARE(toText(result.channel), channel);
            QVERIFY(!result.found && !result.other);
            QCOMPARE(QString::fromLatin1(result.fixedOctets.toHex(' ').toUpper()), fixed);
            QVERIFY(!result.sentence().isEmpty());
            const QJsonObject json = result.toJson();
            QVERIFY(json.contains("pattern") && json["pattern"].isNull());
            QVERIFY(json["synchronised_at_bit"].isNull());
            QCOMPARE(json["bits"].toInt(-1), 0);
            QCOMPARE(json["per_second"].toArray().size(), octets.size() / 8000);
        }
    }

    void randomDataNeverLocks()
    {
        const QByteArray octets = randomOctets(8'000'000, 77);
        QVERIFY(!analyseCapture(octets, {})->found);
        for (const Pattern &pattern : patterns())
            QVERIFY(!analyseCapture(octets, {pattern.key, {}, {}})->found);
    }

    void tellsTheWrongPattern()
    {
        MadeCapture made(PatternKey::Prbs15, false, 3);
        made.add(4 * 64000);
        const QByteArray octets = made.octets(BitOrder::MsbFirst, false);
        const CaptureResult result = *analyseCapture(octets, {PatternKey::Prbs11, 64000, {}});
        QCOMPARE(result.channel, ChannelState::OtherPattern);
        QVERIFY(!result.found);
        QCOMPARE(*result.other,
                 (PatternSeen{PatternKey::Prbs15, false, 64000, BitOrder::MsbFirst}));
        QCOMPARE(result.sentence(), "not the pattern asked for, but 2^15-1 at 64000 bit/s");
        const CaptureResult seven = *analyseCapture(octets, {PatternKey::Prbs15, 56000, {}});
        QCOMPARE(seven.channel, ChannelState::OtherRate);
        QCOMPARE(seven.other->rate, 64000);
        const CaptureResult order =
            *analyseCapture(octets, {PatternKey::Prbs15, 64000, BitOrder::LsbFirst});
        QCOMPARE(order.channel, ChannelState::OtherRate);
        QCOMPARE(order.other->order, BitOrder::MsbFirst);
    }

    void tellsWhatCameAfterALoss_data()
    {
        QTest::addColumn<QByteArray>("then");
        QTest::addColumn<QString>("sentence");
        const QString lost = "Synchronisation lost in second 3: then ";
        const auto of = [](PatternKey key, bool inverted, BitOrder order, bool seven) {
            MadeCapture made(key, inverted, 77);
            made.add(5 * (seven ? 56000 : 64000));
            return made.octets(order, seven);
        };
        const auto msb = BitOrder::MsbFirst, lsb = BitOrder::LsbFirst;
        QTest::newRow("another pattern") << of(PatternKey::Prbs15, false, msb, false)
                                         << lost + "another pattern, 2^15-1 at 64000 bit/s";
        QTest::newRow("the complement") << of(PatternKey::Prbs11, true, msb, false)
                                        << lost + "the pattern is there with every bit inverted";
        QTest::newRow("seven bits in an octet")
            << of(PatternKey::Prbs11, false, msb, true)
            << lost + "the pattern lies otherwise in the octets, 2047 at 56000 bit/s";
        QTest::newRow("the other bit order")
            << of(PatternKey::Prbs11, false, lsb, false)
            << lost + "the pattern lies otherwise in the octets, 2047 at 64000 bit/s, least "
                      "significant bit first";
        QTest::newRow("zeros") << QByteArray(40'000, '\0')
                               << lost + "the channel is dead: nothing but zeros";
        QTest::newRow("ones, then zeros")
            << QByteArray(20'000, '\xff') + QByteArray(20'000, '\0')
            << lost + "the channel is dead: nothing but stretches of ones and of zeros";
        QTest::newRow("an octet over and over")
            << QByteArray(40'000, '\x7e') << lost + "a fixed pattern: 7E over and over";
        Random random(5);
        QByteArray noise(40'000, Qt::Uninitialized);
        for (char &octet : noise)
            octet = char(random());
        QTest::newRow("noise") << noise << "Synchronisation lost in second 3";
    }
    void tellsWhatCameAfterALoss()
    {
        QFETCH(QByteArray, then);
        QFETCH(QString, sentence);
        MadeCapture made(PatternKey::Prbs11, false, 3);
        made.add(3 * 64000 + 8'000);
        const QByteArray octets = made.octets(BitOrder::MsbFirst, false) + then;
        const CaptureResult result = *analyseCapture(octets, {});
        QCOMPARE(result.found->pattern, PatternKey::Prbs11);
        QCOMPARE(result.losses.size(), 1U);
        QCOMPARE(result.lossSentence(result.losses[0]), sentence);
        const QJsonObject loss = result.toJson()["losses"][0].toObject();
        QCOMPARE(loss["channel"].toString(), toText(result.losses[0].channel));
        QCOMPARE(loss["other"].isObject(), result.losses[0].other.has_value());
    }
    void tellsADeadChannelThatChangedSides()
    {
        const QByteArray octets = QByteArray(24'000, '\xff') + QByteArray(8'000, '\0');
        const CaptureResult result = *analyseCapture(octets, {});
        QCOMPARE(result.channel, ChannelState::Dead);
        QCOMPARE(result.sentence(),
                 "the channel is dead: nothing but stretches of ones and of zeros");
        QVERIFY(result.toJson()["fixed_octets"].isNull());
    }

    void tellsARestrictedPath()
    {
        MadeCapture made(PatternKey::Prbs11, false, 3);
        made.add(20 * 64000);
        for (qint64 at = 7; at < made.size(); at += 8)
            made.set(at, true);
        const CaptureResult result = *analyseCapture(made.octets(BitOrder::MsbFirst, false), {});
        QCOMPARE(result.channel, ChannelState::EighthBitStuck);
        QVERIFY(std::abs(*result.summary.berAll - 1.0 / 16) < 0.002);
        QVERIFY(!result.summary.ber); // every second is severely errored: no time was available
        QVERIFY(result.losses.empty());
    }

    void countsFromTheFilesFirstBit()
    {
        Random random(4);
        MadeCapture made(PatternKey::Prbs11, false, 3);
        made.addNoise(2 * 64000 + 20'000, random);
        made.add(5 * 64000 - made.size());
        const CaptureResult result = *analyseCapture(made.octets(BitOrder::MsbFirst, false), {});
        QCOMPARE(result.seconds, (SecondList{std::nullopt, std::nullopt, 0, 0, 0}));
        QVERIFY(*result.synchronisedAtBit >= 2 * 64000 + 20'000 + 11 + 64 - 8);
        QVERIFY(*result.synchronisedAtBit <= 2 * 64000 + 20'000 + 11 + 64);
        QCOMPARE(result.summary.bits, 5 * 64000 - *result.synchronisedAtBit);
        QCOMPARE(result.summary.syncLosses, 0);
        // The seconds before are no part of the test.
        QCOMPARE(result.summary.seconds, 3);
        QCOMPARE(result.summary.availableSeconds, 3);
        QCOMPARE(result.summary.severelyErroredSeconds, 0);
    }

    void findsAPatternInLessThanASecond()
    {
        MadeCapture made(PatternKey::Prbs11, false, 3);
        made.add(2000);
        const CaptureResult result = *analyseCapture(made.octets(BitOrder::MsbFirst, false), {});
        QVERIFY(result.found);
        QVERIFY(result.seconds.empty());
        QCOMPARE(result.summary.bits, 0);
        QVERIFY(result.toJson()["ber"].isNull());
    }

    void holdsTheFieldsOfTheContract()
    {
        MadeCapture made(PatternKey::Prbs15, true, 3);
        made.add(90'000);
        made.lose(8);
        made.add(3 * 64000 - made.size());
        const QJsonObject json =
            analyseCapture(made.octets(BitOrder::MsbFirst, false), {})->toJson();
        QCOMPARE(json["pattern"].toString(), "prbs15");
        QCOMPARE(json["inverted"].toBool(), true);
        QCOMPARE(json["synchronised_at_bit"].toInt(), 79);
        QCOMPARE(json["slips"].toArray(), (QJsonArray{QJsonObject{{"second", 1}, {"bits", 8}}}));
        QCOMPARE(json["sync_losses"].toInt(-1), 0);
        QCOMPARE(json["per_second"].toArray(), (QJsonArray{0, 0, 0}));
        for (const char *key :
             {"bits", "bit_errors", "seconds", "available_seconds", "unavailable_seconds",
              "errored_seconds", "severely_errored_seconds", "error_free_seconds", "esr", "sesr",
              "ber", "ber_upper_95"})
            QVERIFY2(json.value(QLatin1StringView(key)).isDouble(), key);
    }

    void refusesOtherRates()
    {
        for (const qint64 rate : {0, 1, 63999, 192000, -64000}) {
            const auto result = analyseCapture("x", {{}, rate, {}});
            QVERIFY(!result);
            QCOMPARE(result.error().code, ErrorCode::Usage);
        }
    }
};

QTEST_APPLESS_MAIN(CaptureTest)
#include "CaptureTest.moc"
