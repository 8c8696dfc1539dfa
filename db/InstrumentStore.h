#pragma once
// Test sets and meters with their calibrations. An instrument may be corrected; a calibration is
// only ever added. The days of one that is entered from its label stand with it, and go as the
// office confirms or corrects it.

#include "core/office/Office.h"
#include "db/Transaction.h"

namespace loopwright {

class InstrumentStore
{
public:
    explicit InstrumentStore(const Database &database)
        : m_database(database)
    {
    }

    /// With its calibrations, oldest first.
    Result<std::optional<Instrument>> find(const QString &key) const;
    Result<std::vector<Instrument>> all() const; ///< by key

    /// Adds the instrument, or changes serial and kind of the one of this key. Each calibration
    /// that is not there yet is added; none is taken away. What is as labelled has one calibration.
    static Result<void> put(Transaction &transaction, const Instrument &instrument);

private:
    Result<std::optional<Instrument>> withCalibrations(qint64 id, Instrument instrument) const;

    const Database &m_database;
};

} // namespace loopwright
