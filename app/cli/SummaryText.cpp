#include "app/cli/SummaryText.h"

#include "app/cli/Layout.h"
#include "core/errortest/Bounds.h"
#include "core/errortest/CountText.h"

namespace loopwright {

namespace {

QString ratio(const std::optional<double> &value)
{
    return value ? shortNumber(*value) : QString("undefined");
}

} // namespace

QString summaryText(const ErrorSummary &summary)
{
    return LabelledLines()
        .add("Seconds", QString("%1 (%2)").arg(summary.seconds).arg(durationText(summary.seconds)))
        .add("Available", QString::number(summary.availableSeconds))
        .add("Unavailable", QString::number(summary.unavailableSeconds))
        .add("Errored seconds",
             QString("%1, ratio %2").arg(summary.erroredSeconds).arg(ratio(summary.esr)))
        .add("Severely errored",
             QString("%1, ratio %2").arg(summary.severelyErroredSeconds).arg(ratio(summary.sesr)))
        .add("Error-free", QString::number(summary.errorFreeSeconds))
        .add("Longest error-free", durationText(summary.longestErrorFree))
        .add("Worst second", summary.bits > 0
                                 ? countText(summary.worstSecond, Counted::BitError).english()
                                 : QString())
        .add("Errors together",
             summary.errorsPerErroredSecond
                 ? shortNumber(*summary.errorsPerErroredSecond) + " in a second with bit errors"
                 : QString())
        .add("Losses of sync",
             QString("%1, in all %2 s").arg(summary.syncLosses).arg(summary.outOfSyncSeconds))
        .add("Bit errors", QString("%1 in %2 of available time, ratio %3")
                               .arg(summary.availableBitErrors)
                               .arg(countText(summary.availableBits, Counted::Bit).english())
                               .arg(ratio(summary.ber)))
        .add("In sync", summary.unavailableSeconds == 0
                            ? QString()
                            : QString("%1 in %2 of all time in sync, ratio %3")
                                  .arg(summary.bitErrors)
                                  .arg(countText(summary.bits, Counted::Bit).english())
                                  .arg(ratio(summary.berAll)))
        .add("True ratio",
             summary.berUpper95
                 ? QString("below %1 with 95 % confidence").arg(shortNumber(*summary.berUpper95))
                 : QString())
        .text();
}

} // namespace loopwright
