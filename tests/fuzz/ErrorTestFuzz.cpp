// Throws damaged input at the readers of the error test: files of seconds, run and detector facts,
// captures, times and bounds. Any crash, hang, sanitizer report or broken promise ends it.
//
//   fuzz.errortest [EXECUTIONS [START [READER]]]

#include "core/errortest/Capture.h"
#include "core/errortest/DetectorFact.h"
#include "core/errortest/RunEvaluation.h"
#include "core/errortest/SecondStamp.h"
#include "core/errortest/SecondsFile.h"
#include "tests/fuzz/Fuzz.h"
#include "tests/fuzz/Seeds.h"
#include "tests/support/MadeCapture.h"

#include <cmath>

using namespace loopwright;
using namespace loopwright::fuzz;

namespace {

bool isRatio(std::optional<double> ratio)
{
    return !ratio || (std::isfinite(*ratio) && *ratio >= 0 && *ratio <= 1);
}

void checkSummary(const ErrorSummary &summary)
{
    promise(summary.availableSeconds + summary.unavailableSeconds == summary.seconds,
            "available and unavailable seconds make the whole");
    promise(summary.severelyErroredSeconds <= summary.erroredSeconds &&
                summary.erroredSeconds <= summary.availableSeconds,
            "severely errored <= errored <= available");
    promise(isRatio(summary.esr) && isRatio(summary.sesr) && isRatio(summary.berUpper95),
            "ratios lie between 0 and 1");
}

void secondsFile(Random &random)
{
    static constexpr const char *files[] = {
        "second,bit_errors,sync_lost\n0,0,0\n1,5,0\n2,,1\n3,64000,no\n",
        "# export\nTime;Errors\n09:15:00;0\n09:15:01;3\n09:15:02;L\n",
        "2026-03-04 09:15:00 1\n2026-03-04 09:15:01 2\n",
        "0\n0\n17\nL\n",
        "\"second\"\t\"bit_errors\"\n\"1\"\t\"0\"\n\"2\"\t\"0\"\n",
        "3/1/2026 11:59:59 PM,1\n3/2/2026 0:00:00,2\n",
    };
    const qint64 rate = 1 + below(random, 200'000);
    const auto file =
        readSecondsFile(damaged(seed(random, oneOf(random, files)), random), "f", rate);
    if (!file) {
        promise(!file.error().message.isEmpty(), "an error says something");
        return;
    }
    promise(!file->seconds.empty() || !file->findings.empty(), "there is something");
    for (const Second second : file->seconds)
        promise(second.bitErrors() <= rate, "no more errors than bits");
    const auto accepted = file->accepted("f");
    promise(accepted.has_value() == file->findings.empty(), "odd rows are refused");
    checkSummary(evaluateSeconds(file->seconds, rate));
    promise(classify(file->seconds, rate).size() == file->seconds.size(), "a mark a second");
}

template<class Fact>
std::optional<Fact> readFact(const QJsonObject &object)
{
    JsonReader reader(object, "fact");
    Fact fact = Fact::read(reader);
    reader.done();
    if (!reader.result())
        return std::nullopt;
    return fact;
}

template<class Fact>
std::optional<Fact> readDamaged(const QByteArray &bytes)
{
    const auto object = parseJsonObject(bytes, "f");
    if (!object)
        return std::nullopt;
    const auto fact = readFact<Fact>(*object);
    if (fact) {
        QJsonObject written;
        fact->write(written);
        promise(readFact<Fact>(written) == fact, "what was written reads the same");
        QJsonObject again;
        fact->write(again);
        promise(canonicalJson(again) == canonicalJson(written), "written twice the same");
    }
    return fact;
}

void runFact(Random &random)
{
    static constexpr const char *facts[] = {
        R"({"path":"self_call","channels":["B1","B2"],"started":"2026-03-04T09:15:00-06:00",
"ended":"2026-03-04T09:30:00-06:00","bit_errors":3,"errored_seconds":2,
"severely_errored_seconds":0,"sync_losses":0,"stopped_early":false})",
        R"({"path":"test_line","channels":["B2"],"started":"2026-03-04T09:15:00Z",
"ended":"2026-03-04T09:15:05.5Z","rate":56000,"seconds":[0,1,null,56000,0]})",
        R"({"path":"far_end","channels":["B1"],"from_dn":"555-0100","to_dn":"555-0101",
"interface":"st","pattern":"prbs11","started":"2026-03-04T09:15:00Z",
"ended":"2026-03-04T09:15:02Z","seconds":[0,2],"bit_errors":2})",
    };
    const auto run = readDamaged<RunFact>(damaged(seed(random, oneOf(random, facts)), random));
    if (!run)
        return;
    promise(run->durationSeconds() >= 0, "a run does not end before it starts");
    const RunEvaluation evaluation = evaluateRun(*run, 0.95);
    checkSummary(evaluation.summary);
    promise(!evaluation.sentence.isEmpty(), "a run has its sentence");
}

void detectorFact(Random &random)
{
    static constexpr const char *facts[] = {
        R"({"path":"self_call","channels":["B1","B2"],"quiet_seconds":10,"quiet_bit_errors":0,
"injections":3,"injected":3,"seen_bit_errors":3,"seen_errored_seconds":3,"cleared":true})",
        R"({"path":"nt_loop","channels":["B1"],"injections":1})",
    };
    const auto fact =
        readDamaged<DetectorFact>(damaged(seed(random, oneOf(random, facts)), random));
    if (fact && fact->everyInjectionSeen())
        promise(fact->seenBitErrors >= fact->injections, "no more injections than seen");
}

QByteArray damagedCapture(Random &random)
{
    const Pattern &pattern = patterns()[std::size_t(below(random, qint64(patterns().size())))];
    MadeCapture made(pattern.key, random() & 1, quint32(1 + below(random, pattern.period())));
    for (int pieces = int(below(random, 5)); pieces > 0; --pieces) {
        made.add(below(random, 9000));
        switch (below(random, 4)) {
        case 0:
            made.lose(below(random, 100));
            break;
        case 1:
            made.addNoise(below(random, 5000), random);
            break;
        case 2:
            made.addConstant(below(random, 20'000), random() & 1);
            break;
        case 3:
            made.repeat(std::min<qint64>(made.size(), below(random, 100)));
            break;
        }
    }
    made.add(below(random, 40'000));
    const QByteArray octets =
        made.octets(random() & 1 ? BitOrder::MsbFirst : BitOrder::LsbFirst, random() & 1);
    return damaged(octets.repeated(1 + int(below(random, 3))), random);
}

void capture(Random &random)
{
    constexpr std::optional<qint64> rates[] = {std::nullopt, 56000, 64000, 112000, 128000};
    CaptureOptions options;
    options.rate = rates[below(random, std::size(rates))];
    if (random() & 1)
        options.pattern = patterns()[std::size_t(below(random, qint64(patterns().size())))].key;
    if (random() & 1)
        options.order = random() & 1 ? BitOrder::MsbFirst : BitOrder::LsbFirst;
    const QByteArray octets = damagedCapture(random);
    auto analyser = CaptureAnalyser::make(options);
    promise(analyser.has_value(), "these rates are known");
    for (qsizetype at = 0; at < octets.size();) {
        const qsizetype size = std::min<qsizetype>(octets.size() - at, below(random, 20'000));
        // On its own, so that reading beside it is seen.
        analyser->feed(QByteArray(octets.constData() + at, size));
        at += size;
    }
    const CaptureResult result = analyser->finish();
    const qint64 rate = result.found ? result.found->rate : 64000;
    checkSummary(result.summary);
    promise(result.summary.bits <= qint64(result.seconds.size()) * rate, "no more bits than fed");
    promise(result.summary.bitErrors <= result.summary.bits, "no more errors than bits");
    promise(result.found || result.summary.bits == 0, "nothing is compared with nothing");
    promise(result.found.has_value() == result.synchronisedAtBit.has_value(), "found somewhere");
    for (const Slip &slip : result.slips)
        promise(slip.bits != 0 && slip.second < qint64(result.seconds.size()), "a slip is one");
    promise(!result.toJson().isEmpty() && !result.sentence().isEmpty(), "it can be told");
}

void stamp(Random &random)
{
    static constexpr const char *stamps[] = {"12",
                                             "12.5",
                                             "09:15:00.25",
                                             "9:15:00 PM",
                                             "59:59",
                                             "2026-03-04T09:15:00+05:30",
                                             "3/4/2026 9:15:00 AM",
                                             "04.03.2026 09:15:00"};
    const QString text = QString::fromUtf8(damaged(seed(random, oneOf(random, stamps)), random));
    const auto found = SecondStamp::parse(text);
    promise(!found || std::abs(found->milliseconds) < 1'000'000'000'000'000, "a time is a time");
}

void bounds(Random &random)
{
    BoundInput input;
    input.bits = qint64(random() >> below(random, 63)) >> 1;
    input.errors = qint64(random() >> below(random, 63)) >> 1;
    input.confidence = double(random() >> 11) * 0x1p-53 * (below(random, 9) == 0 ? 3 : 1);
    const auto found = upperBounds(input);
    promise(found.has_value() == checkBoundInput(input).has_value(), "checked input is taken");
    if (!found)
        return;
    promise(std::isfinite(found->poissonUpper) && found->poissonUpper >= 0, "a Poisson bound");
    promise(found->clopperPearsonUpper >= 0 && found->clopperPearsonUpper <= 1, "a ratio");
    promise(poissonLower(input) <= found->poissonUpper * (1 + 1e-9) || input.confidence < 0.5,
            "lower is below upper");
}

constexpr Reader readers[] = {{"seconds", secondsFile},   {"run", runFact},
                              {"detector", detectorFact}, {"capture", capture},
                              {"stamp", stamp},           {"bounds", bounds}};

} // namespace

int main(int argc, char **argv)
{
    return readSeeds() ? runReaders(argc, argv, readers) : 2;
}
