#include "core/acceptance/FactWords.h"

#include "core/acceptance/RunWords.h"
#include "core/errortest/CountText.h"
#include "core/errortest/RunEvaluation.h"

namespace loopwright {

namespace {

QString words(QString code)
{
    return code.replace(u'_', u' ');
}

/// "1 element", "2 elements"
QString counted(qint64 count, const char *one)
{
    return QString("%1 %2%3").arg(QString::number(count), one, count == 1 ? "" : "s");
}

QString causeText(const std::optional<int> &cause, const std::optional<CauseLocation> &location)
{
    return (cause ? QString(", cause %1").arg(*cause) : QString()) +
           (location ? ", location " + words(toText(*location)) : QString());
}

QString remark(const std::optional<QString> &text, const char *before = ". ")
{
    return text ? before + *text : QString();
}

/// One overload for each kind of fact.
struct FactTeller
{
    LineKind kind;
    const QString &instrument;
    bool inMetres;

    QString operator()(const VisitFact &visit) const
    {
        QStringList parts;
        if (visit.arrived)
            parts << "arrived " + visit.arrived->localClock();
        if (visit.left)
            parts << "left " + visit.left->localClock();
        if (visit.result)
            parts << words(toText(*visit.result));
        return "Visit: " + parts.join(", ");
    }

    QString operator()(const SafetyFact &safety) const
    {
        QStringList readings;
        for (const auto &[name, volts] :
             {std::pair("ac", &safety.acV), std::pair("dc", &safety.dcV)})
            if (*volts)
                for (const auto &[pair, word] : EnumCodes<WirePair>::table)
                    if (const auto read = (*volts)->at(pair))
                        readings << QString("%1 V %2 %3").arg(*read).arg(name, wirePairName(pair));
        const auto confirmed = safety.confirmed ? safety.confirmed->size() : 0;
        return QString("Safety card: %1; %2 of %3 confirmed")
            .arg(readings.isEmpty() ? "no voltage read" : readings.join(", "))
            .arg(confirmed)
            .arg(std::size(EnumCodes<CardKey>::table));
    }

    QString operator()(const ChangedFact &changed) const
    {
        return QString("Changed: %1%2%3")
            .arg(words(toText(changed.what)), remark(changed.to, " to "), remark(changed.text));
    }

    QString operator()(const SelfTestFact &test) const
    {
        return "Self-test of the instrument " + toText(test.outcome);
    }

    QString operator()(const LoopFact &loop) const
    {
        QStringList parts;
        if (loop.dcResistanceOhm)
            parts << QString("%1 ohm").arg(*loop.dcResistanceOhm);
        if (loop.lossDb)
            parts << QString("%1 dB at %2 kHz")
                         .arg(*loop.lossDb)
                         .arg(loop.frequencyHz.value_or(40000) / 1000);
        if (loop.makeup)
            parts << "make-up of " + counted(qint64(loop.makeup->elements.size()), "element")
                  << lengthText(loop.makeup->workingLengthFt(), inMetres)
                  << "taps " + lengthText(loop.makeup->bridgedTapFt(), inMetres)
                  << counted(loop.makeup->loadCoils(), "load coil");
        return "Loop: " + parts.join(", ");
    }

    QString operator()(const LayerFact &layer) const
    {
        const QString where =
            layer.layer == 1 ? QString(layer.interfaceOrU() == LineInterface::U ? "at U" : "at S/T")
                             : QString("of terminal %1").arg(layer.terminalOrFirst());
        return QString("Layer %1 %2 %3%4%5")
            .arg(layer.layer)
            .arg(where, toText(layer.outcome),
                 layer.tei ? QString(", TEI %1").arg(*layer.tei) : QString(),
                 causeText(layer.cause, layer.causeLocation));
    }

    QString operator()(const CallFact &call) const
    {
        QString text =
            QString("%1 %2 call %3%4 %5%6")
                .arg(kind == LineKind::Analog ? "Line" : toText(call.channel), toText(call.service),
                     toText(call.direction), call.dn ? ", " + *call.dn + "," : QString(),
                     call.outcome == CallOutcome::Ok ? "went through" : "failed",
                     causeText(call.cause, call.causeLocation));
        if (call.announcedDn)
            text += QString("; announced %1").arg(*call.announcedDn);
        return text;
    }

    QString operator()(const DetectorFact &detector) const
    {
        return QString("Detector check on %1: %2 s quiet with %3, %4 sent, %5 seen, %6")
            .arg(channelsText(detector.channels))
            .arg(detector.quietSeconds.value_or(0))
            .arg(countText(detector.quietBitErrors.value_or(0), Counted::Error).english())
            .arg(detector.injections.value_or(0))
            .arg(detector.seenBitErrors.value_or(0))
            .arg(detector.cleared.value_or(false) ? "counters cleared" : "counters not cleared");
    }

    QString operator()(const RunFact &run) const
    {
        const RunEvaluation evaluation = evaluateRun(run, 0.95);
        return QString("Run on %1, %2%3: %4, %5, %6 severely errored")
            .arg(channelsText(run.channels), durationText(qint64(run.durationSeconds())),
                 run.wasStoppedEarly() ? ", stopped early" : "")
            .arg(countText(evaluation.summary.bitErrors, Counted::BitError).english(),
                 countText(evaluation.summary.erroredSeconds, Counted::ErroredSecond).english())
            .arg(evaluation.summary.severelyErroredSeconds);
    }

    QString operator()(const AnalogFact &analog) const
    {
        return QString("%1: %2").arg(QString::fromUtf8(info(analog.quantity).name),
                                     valueText(analog.quantity, analog.value()).english());
    }

    QString operator()(const ClearedFact &cleared) const
    {
        return QString("Cleared: %1%2%3")
            .arg(words(toText(cleared.what)), remark(cleared.text),
                 remark(cleared.found, ". Found: "));
    }

    QString operator()(const HazardClosedFact &closed) const
    {
        return QString("Hazard closed: %1, says %2%3")
            .arg(words(toText(closed.source)), closed.by, remark(closed.reference, ", reference "));
    }

    QString operator()(const ReferredFact &referred) const
    {
        return QString("Referred to %1%2%3")
            .arg(referred.to, remark(referred.reference, ", reference "),
                 referred.waitingOn ? ", waiting on " + words(toText(*referred.waitingOn))
                                    : QString());
    }

    QString operator()(const MadeWithFact &made) const
    {
        return QString("%1 made with instrument %2")
            .arg(made.facts.size() == 1 ? QString("1 reading")
                                        : QString("%1 readings").arg(made.facts.size()),
                 instrument);
    }

    QString operator()(const DeskFact &desk) const
    {
        return QString("Desk: %1%2%3")
            .arg(words(toText(desk.what)), remark(desk.by, ", by "), remark(desk.text));
    }

    QString operator()(const NoteFact &note) const { return "Note: " + note.text; }

    QString operator()(const VoidFact &voided) const
    {
        return QString("Voided by %1: %2").arg(voided.by, voided.because);
    }

    QString operator()(const ExceptionFact &exception) const
    {
        return QString("Exception for %1 by %2: %3")
            .arg(words(exception.criteria.join(", ")), exception.by, exception.because);
    }
};

} // namespace

QString factText(const Fact &fact, LineKind kind, bool inMetres)
{
    QString text = std::visit(FactTeller{kind, fact.instrument, inMetres}, fact.body);
    text[0] = text[0].toUpper();
    return text;
}

} // namespace loopwright
