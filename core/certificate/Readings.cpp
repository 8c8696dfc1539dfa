// The figures behind each criterion, as they were read.

#include "core/acceptance/Evidence.h"
#include "core/acceptance/RunWords.h"
#include "core/base/PaperTime.h"
#include "core/certificate/ContentParts.h"
#include "core/errortest/CountText.h"
#include "core/errortest/RunEvaluation.h"
#include "core/order/OrderIdentifiers.h"

#include <algorithm>
#include <cmath>

namespace loopwright {

namespace {

QString number(double value)
{
    return QString::number(value, 'g', 7);
}

/// Makes the readings of one criterion.
class Reader
{
public:
    Reader(const CriterionResult &criterion, const CertificateSources &sources)
        : m_criterion(criterion)
        , m_limits(sources.limits)
        , m_order(sources.input.order)
    {
    }

    /// `instrument`: named with the fact, or afterwards.
    void read(const Fact &fact, const QString &instrument)
    {
        m_instrument = instrument;
        m_when = whenOf(fact.at);
        // Both rest on what other criteria print.
        if (m_criterion.key == u"instrument" || m_criterion.key == u"calls")
            return;
        if (const auto *card = fact.as<SafetyFact>())
            readCard(*card);
        else if (const auto *loop = fact.as<LoopFact>())
            readLoop(*loop);
        else if (const auto *analog = fact.as<AnalogFact>())
            readAnalog(*analog);
        else if (const auto *layer = fact.as<LayerFact>())
            readLayer(*layer);
        else if (const auto *check = fact.as<DetectorFact>())
            readCheck(*check);
        else if (const auto *run = fact.as<RunFact>())
            readRun(*run);
    }

    /// More than one card: each says when.
    enum class Times
    {
        None,
        Clock,
        Day ///< with the clock
    };
    void tellTimes(Times times) { m_times = times; }
    /// More than one run or check: each says over which channels.
    void tellChannels() { m_tellChannels = true; }
    std::vector<CertificateReading> take() { return std::move(m_readings); }

private:
    QString whenOf(const Moment &at) const
    {
        if (m_times == Times::None)
            return {};
        const QString clock = ", " + at.localClock();
        return m_times == Times::Clock ? clock : ", " + paperDay(at.localDate()) + clock;
    }
    QString over(const QList<Channel> &channels) const
    {
        return m_tellChannels ? ", " + channelsText(channels) : QString();
    }
    void add(const QString &what, const QString &value, const QString &limit = {},
             const QString &uncertainty = {})
    {
        m_readings.push_back({what, value, limit, m_instrument, sure(uncertainty)});
    }
    /// What the limit set says of the instrument, as an office may add it; else nothing is known.
    QString sure(const QString &key) const
    {
        if (key.isEmpty())
            return {};
        const QString limit = "uncertainty_" + key;
        return m_limits.has(limit) ? QString("± %1 %2").arg(number(m_limits.value(limit)),
                                                            m_limits.limit(limit).unit)
                                   : QString("as read");
    }
    QString atMost(const char *key) const
    {
        const Limit &limit = m_limits.limit(key);
        return QString("at most %1 %2").arg(number(limit.value), limit.unit);
    }

    void readVoltages(const QString &kind, const std::optional<Voltages> &volts,
                      const QString &limit)
    {
        if (!volts)
            return;
        QStringList parts;
        for (const auto &[name, value] : {std::pair("tip to ground", volts->tipGround),
                                          std::pair("ring to ground", volts->ringGround),
                                          std::pair("tip to ring", volts->tipRing)})
            if (value)
                parts << QString("%1 %2 V").arg(name, number(*value));
        add(kind, parts.join(", "), limit, "voltage");
    }
    void readCard(const SafetyFact &card)
    {
        readVoltages("AC voltage" + m_when, card.acV, stopLimit(m_limits, card, true));
        readVoltages("DC voltage" + m_when, card.dcV, stopLimit(m_limits, card, false));
    }

    void readLoop(const LoopFact &loop)
    {
        const bool bri = m_order.kind == LineKind::Bri;
        if (loop.dcResistanceOhm)
            add("DC resistance", number(*loop.dcResistanceOhm) + " ohm",
                bri                          ? atMost("bri_resistance_max")
                : m_criterion.unit == u"ohm" ? m_criterion.limitText.english()
                                             : QString(),
                "resistance");
        if (loop.lossDb && loop.frequencyHz)
            add(QString("Loss at %1 kHz").arg(number(*loop.frequencyHz / 1000)),
                number(*loop.lossDb) + " dB",
                bri && *loop.frequencyHz == m_limits.value("bri_loss_frequency")
                    ? atMost("bri_loss_max")
                    : QString(),
                "loss");
        if (loop.makeup && !m_criterion.measuredText.isEmpty() &&
            m_criterion.measuredText.english().contains(u"predicted"))
            m_readings.push_back({"From the make-up on record",
                                  m_criterion.measuredText.english(),
                                  m_criterion.limitText.english(),
                                  {},
                                  "predicted"});
    }

    void readAnalog(const AnalogFact &analog)
    {
        QString what = QString::fromLatin1(info(analog.quantity).name);
        what[0] = what[0].toUpper();
        // Balance rests on two readings, which are printed where they belong.
        if (toText(analog.quantity) != m_criterion.key)
            return;
        add(what, valueText(analog.quantity, analog.value()).english(),
            limitText(analog.quantity, m_limits).english(),
            analog.number() ? toText(analog.quantity) : QString()); // dial tone is heard
    }

    void readLayer(const LayerFact &layer)
    {
        const QString state = layer.outcome == LayerOutcome::Up ? QString("up") : QString("down");
        if (layer.layer == 1)
            add(layer.interfaceOrU() == LineInterface::U ? "At U, on the pair"
                                                         : "At S/T, behind the NT",
                layer.outcome == LayerOutcome::Up ? "in step" : "not in step");
        else if (layer.layer == 2)
            add(QString("Terminal %1").arg(layer.terminalOrFirst()),
                layer.tei ? QString("TEI %1").arg(*layer.tei) : state);
        else
            add(QString("Terminal %1").arg(layer.terminalOrFirst()),
                layer.outcome == LayerOutcome::Up ? "SPID accepted" : "SPID not accepted");
    }

    void readCheck(const DetectorFact &check)
    {
        if (check.quietSeconds)
            add("Quiet before it" + over(check.channels),
                QString("%1 s, %2")
                    .arg(*check.quietSeconds)
                    .arg(countText(check.quietBitErrors.value_or(0), Counted::BitError).english()),
                QString("at least %1 s without an error")
                    .arg(number(m_limits.value("detector_quiet_seconds_min"))));
        const QString bits = check.injected
                                 ? QString(" (%1 in all)")
                                       .arg(countText(*check.injected, Counted::BitError).english())
                                 : QString();
        add("Errors sent on purpose" + over(check.channels),
            QString("sent %1 times%2, %3 seen")
                .arg(check.injections.value_or(0))
                .arg(bits)
                .arg(check.seenBitErrors.value_or(0)),
            "each one seen");
    }

    void readRun(const RunFact &run)
    {
        const RunEvaluation evaluation = evaluateRun(run, m_limits.value("run_confidence"));
        const ErrorSummary &sum = evaluation.summary;
        const double bits = std::max<double>(double(sum.bits), m_limits.value("run_seconds_min") *
                                                                   double(run.bitsPerSecond()));
        const double available =
            std::max<double>(double(sum.availableSeconds), m_limits.value("run_seconds_min"));
        const auto most = [this](const char *key, double of) {
            return qint64(std::floor(m_limits.value(key) * of * (1 + 1e-12)));
        };
        const QString channels = over(run.channels);
        add("Bit errors" + channels,
            QString("%1 in %2 bits").arg(paperCount(sum.bitErrors), paperCount(sum.bits)),
            QString("at most %1 (%2)")
                .arg(paperCount(most("run_ber_max", bits)),
                     paperRatio(m_limits.value("run_ber_max"))),
            "count");
        const QString typed = severelyErroredToo(run, sum).english();
        add("Errored seconds" + channels,
            QString("%1 of %2%3")
                .arg(paperCount(sum.erroredSeconds), paperCount(sum.seconds),
                     typed.isEmpty() ? QString() : " " + typed),
            QString("at most %1 (%2 %)")
                .arg(paperCount(most("run_esr_max", available)),
                     number(m_limits.value("run_esr_max") * 100)),
            "count");
        add("Severely errored, unavailable" + channels,
            paperCount(sum.severelyErroredSeconds + sum.unavailableSeconds),
            QString("at most %1").arg(number(m_limits.value("run_ses_max"))), "count");
        add("Losses of synchronisation" + channels, paperCount(sum.syncLosses),
            QString("at most %1").arg(number(m_limits.value("run_sync_losses_max"))), "count");
        if (run.slips)
            add("Slips" + channels, paperCount(*run.slips),
                QString("at most %1").arg(number(m_limits.value("run_slips_max"))), "count");
    }

    const CriterionResult &m_criterion;
    const LimitSet &m_limits;
    const ServiceOrder &m_order;
    QString m_instrument, m_when;
    bool m_tellChannels = false;
    Times m_times = Times::None;
    std::vector<CertificateReading> m_readings;
};

} // namespace

QString stopLimit(const LimitSet &limits, const SafetyFact &card, bool alternating)
{
    const char *key = !alternating               ? "hazard_dc_v"
                      : card.wet.value_or(false) ? "hazard_ac_wet_v"
                                                 : "hazard_ac_v";
    return QString("stop above %1 V").arg(limits.value(key));
}

std::vector<CertificateReading> readingsOf(const CriterionResult &criterion,
                                           const CertificateSources &sources)
{
    Reader reader(criterion, sources);
    std::vector<const Fact *> facts;
    for (const Fact &fact : sources.input.facts)
        if (criterion.evidence.contains(fact.id))
            facts.push_back(&fact);
    std::ranges::stable_sort(facts, {}, [](const Fact *fact) { return timeOf(*fact).msUtc; });
    std::vector<QDate> days;
    for (const Fact *fact : facts)
        if (fact->as<SafetyFact>())
            days.push_back(fact->at.localDate());
    if (days.size() > 1)
        reader.tellTimes(days.front() == days.back() ? Reader::Times::Clock : Reader::Times::Day);
    for (const FactKind kind : {FactKind::Run, FactKind::Detector})
        if (std::ranges::count(facts, kind, [](const Fact *fact) { return fact->kind(); }) > 1)
            reader.tellChannels();
    const Evidence evidence(sources.input, sources.limits);
    for (const Fact *fact : facts)
        reader.read(*fact, evidence.instrumentOf(*fact));
    std::vector<CertificateReading> readings = reader.take();
    if (readings.empty() && !criterion.measuredText.isEmpty())
        readings.push_back(
            {{},
             criterion.key == u"readback"
                 ? NumberKey(sources.input.order).shown(criterion.measuredText.english())
                 : inPlainWords(criterion.measuredText.english()),
             criterion.limitText.english(),
             {},
             {}});
    return readings;
}

} // namespace loopwright
