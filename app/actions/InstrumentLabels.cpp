#include "app/actions/InstrumentLabels.h"

#include "app/actions/Acting.h"
#include "app/actions/BoardRefresh.h"
#include "app/actions/Events.h"
#include "db/InstrumentStore.h"

namespace loopwright {

Result<Instrument> labelInstrument(Records &records, const InstrumentLabel &label)
{
    LOOPWRIGHT_TRY(allow(records, Act::LabelInstrument));
    if (const Findings findings = checkLabel(label, records.now().localDate()); !findings.empty())
        return failure(ErrorCode::BadInput, findings.front().reason.english(),
                       findings.front().field);
    const Instrument instrument = instrumentFrom(label);
    LOOPWRIGHT_ASSIGN(auto transaction, Transaction::begin(records.database()));
    LOOPWRIGHT_ASSIGN(const auto before, InstrumentStore(transaction.database()).find(label.key));
    if (before && !before->asLabelled)
        return failure(ErrorCode::Refused,
                       QString("%1 is in the register: its calibration is the office's to record.")
                           .arg(label.key));
    if (before == instrument)
        return instrument;
    LOOPWRIGHT_TRY(InstrumentStore::put(transaction, instrument));
    LOOPWRIGHT_TRY(refreshOrdersUsing(records, transaction, instrument.key));
    LOOPWRIGHT_TRY(
        transaction.commit(registerEvent(records, "instrument_labelled", instrument.toJson())));
    return instrument;
}

} // namespace loopwright
