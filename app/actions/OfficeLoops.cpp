#include "app/actions/OfficeLoops.h"

#include "app/actions/LimitSets.h"
#include "app/actions/OutFile.h"
#include "core/acceptance/Fact.h"
#include "core/base/Csv.h"
#include "core/loop/LoopFact.h"
#include "db/Connection.h"
#include "db/FactStore.h"
#include "db/OfficeStore.h"

#include <atomic>
#include <thread>

namespace loopwright {

namespace {

using StoredMakeup = FactStore::StoredMakeup;

constexpr std::size_t loopsAtOnce = 2048; // some tens of milliseconds on every core

Result<OfficeLoop> judged(const StoredMakeup &stored, const LimitSet &limits)
{
    LOOPWRIGHT_ASSIGN(const auto object, parseJsonObject(stored.content, stored.order));
    LOOPWRIGHT_ASSIGN(const auto fact, Fact::fromJson(object, stored.order));
    const auto *loop = fact.as<LoopFact>();
    if (!loop || !loop->makeup)
        return failure(ErrorCode::DatabaseTrouble, "A make-up cannot be read.", stored.order);
    return OfficeLoop{stored.circuit,
                      stored.order,
                      stored.pair,
                      stored.kind,
                      qualify(*loop->makeup, limits),
                      remedies(*loop->makeup, limits)};
}

/// Each at its own place, by whichever core is free.
std::vector<Result<OfficeLoop>> judgedTogether(const std::vector<StoredMakeup> &stored,
                                               const LimitSet &limits)
{
    std::vector<Result<OfficeLoop>> loops(stored.size());
    std::atomic<std::size_t> next = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < stored.size(); i = next++)
            loops[i] = judged(stored[i], limits);
    };
    std::vector<std::jthread> others;
    for (unsigned i = 1; i < std::thread::hardware_concurrency(); ++i)
        others.emplace_back(work);
    work();
    others.clear(); // waits for them
    return loops;
}

/// Collects make-ups until it is worth while to wake all cores.
class Qualifying
{
public:
    Qualifying(const LimitSet &limits, const std::function<Result<void>(const OfficeLoop &)> &take,
               const Progress &progress, qint64 total)
        : m_limits(limits)
        , m_take(take)
        , m_progress(progress)
        , m_total(total)
    {
    }

    Result<void> add(const StoredMakeup &stored)
    {
        m_waiting.push_back(stored);
        return m_waiting.size() < loopsAtOnce ? Result<void>() : judge();
    }
    Result<void> judge()
    {
        const std::vector<Result<OfficeLoop>> loops = judgedTogether(m_waiting, m_limits);
        m_waiting.clear();
        for (const auto &loop : loops) {
            LOOPWRIGHT_TRY(loop);
            count(loop->judged.verdict);
            LOOPWRIGHT_TRY(m_take(*loop));
        }
        if (m_progress && !m_progress(m_count.loops(), m_total))
            return failure(ErrorCode::Refused, "The qualification was stopped.");
        return {};
    }
    OfficeLoopCount counted() const
    {
        OfficeLoopCount all = m_count;
        all.withoutMakeup = m_total - all.loops();
        return all;
    }

private:
    void count(Suitability verdict)
    {
        switch (verdict) {
        case Suitability::Suitable:
            ++m_count.suitable;
            break;
        case Suitability::Marginal:
            ++m_count.marginal;
            break;
        case Suitability::NotSuitable:
            ++m_count.notSuitable;
            break;
        }
    }

    const LimitSet &m_limits;
    const std::function<Result<void>(const OfficeLoop &)> &m_take;
    const Progress &m_progress;
    qint64 m_total;
    std::vector<StoredMakeup> m_waiting;
    OfficeLoopCount m_count;
};

QByteArray loopRow(const OfficeLoop &loop, bool spreadsheet)
{
    QStringList cells = officeLoopCells(loop);
    if (spreadsheet)
        for (QString &cell : cells)
            cell = spreadsheetSafe(cell);
    return csvRecord(cells);
}

QString decimals(double value, int count)
{
    return QString::number(value, 'f', count);
}

} // namespace

QJsonObject OfficeLoopCount::toJson() const
{
    return {{"loops", loops()},
            {"suitable", suitable},
            {"marginal", marginal},
            {"not_suitable", notSuitable},
            {"without_makeup", withoutMakeup}};
}

Result<OfficeLoopCount> qualifyOffice(Records &records, const QString &office,
                                      const std::function<Result<void>(const OfficeLoop &)> &take,
                                      const Progress &progress)
{
    LOOPWRIGHT_ASSIGN(const auto known, OfficeStore(records.database()).find(office));
    if (!known)
        return failure(ErrorCode::NotFound,
                       QString("There is no office \"%1\" in the register.").arg(office.left(60)));
    LOOPWRIGHT_ASSIGN(const auto limits, limitsInForce(records));
    const ReadSnapshot snapshot(
        records.database().connection()); // count and make-ups of one moment
    LOOPWRIGHT_TRY(snapshot.result());
    const FactStore facts(records.database());
    LOOPWRIGHT_ASSIGN(const auto total, facts.countPairs(office));
    Qualifying qualifying(limits, take, progress, total);
    LOOPWRIGHT_TRY(facts.eachMakeup(
        office, [&](const StoredMakeup &stored) { return qualifying.add(stored); }));
    LOOPWRIGHT_TRY(qualifying.judge());
    return qualifying.counted();
}

QStringList officeLoopColumns()
{
    return {"circuit_number",
            "order_number",
            "pair",
            "kind",
            "verdict",
            "insertion_loss_db",
            "frequency_hz",
            "margin_db",
            "hot_insertion_loss_db",
            "dc_resistance_ohm",
            "hot_dc_resistance_ohm",
            "working_length_ft",
            "bridged_tap_ft",
            "load_coils",
            "reasons",
            "would_mend",
            "loss_after_db",
            "verdict_after"};
}

QStringList officeLoopCells(const OfficeLoop &loop)
{
    const LoopQualification &judged = loop.judged;
    QStringList reasons;
    for (const Text &reason : judged.reasons)
        reasons << reason.english();
    QStringList cells{loop.circuit,
                      loop.order,
                      loop.pair,
                      toText(loop.kind),
                      toText(judged.verdict),
                      decimals(judged.insertionLossDb, 2),
                      decimals(judged.frequencyHz, 0),
                      decimals(judged.marginDb, 2),
                      decimals(judged.hotLossDb, 2),
                      decimals(judged.dcResistanceOhm, 1),
                      decimals(judged.hotDcResistanceOhm, 1),
                      decimals(judged.workingLengthFt, 0),
                      decimals(judged.bridgedTapFt, 0),
                      QString::number(judged.loadCoils),
                      reasons.join("; ")};
    if (loop.mends.empty())
        return cells << QStringList{{}, {}, {}};
    const Remedy &best = loop.mends.front();
    return cells << best.text.english() << decimals(best.lossAfterDb, 2)
                 << toText(best.verdictAfter);
}

Result<OfficeLoopCount> writeOfficeLoops(Records &records, const QString &office,
                                         const QString &path, const Progress &progress,
                                         bool spreadsheet)
{
    LOOPWRIGHT_ASSIGN(auto file, OutFile::open(path, FileKind::Csv));
    LOOPWRIGHT_TRY(file.write(csvRecord(officeLoopColumns())));
    LOOPWRIGHT_ASSIGN(const auto count, qualifyOffice(
                                            records, office,
                                            [&](const OfficeLoop &loop) {
                                                return file.write(loopRow(loop, spreadsheet));
                                            },
                                            progress));
    LOOPWRIGHT_TRY(file.commit());
    return count;
}

Result<void> writeOfficeLoops(const std::vector<OfficeLoop> &loops, const QString &path,
                              bool spreadsheet)
{
    LOOPWRIGHT_ASSIGN(auto file, OutFile::open(path, FileKind::Csv));
    LOOPWRIGHT_TRY(file.write(csvRecord(officeLoopColumns())));
    for (const OfficeLoop &loop : loops)
        LOOPWRIGHT_TRY(file.write(loopRow(loop, spreadsheet)));
    return file.commit();
}

} // namespace loopwright
