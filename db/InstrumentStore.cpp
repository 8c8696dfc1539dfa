#include "db/InstrumentStore.h"

#include "db/Statement.h"

#include <QHash>

namespace loopwright {

namespace {

const QString calibrationDay = QStringLiteral("yyyy-MM-dd");

struct InstrumentRow
{
    qint64 id;
    Instrument instrument;
};

Calibration calibrationOf(const Statement &row, const char *on, const char *due)
{
    Calibration calibration{QDate::fromString(row.text(on), calibrationDay), {}};
    if (!row.isNull(due))
        calibration.due = QDate::fromString(row.text(due), calibrationDay);
    return calibration;
}

InstrumentRow readInstrument(const Statement &row)
{
    Instrument instrument{row.text("instrument"), row.text("serial"), row.text("kind"), {}};
    if (row.boolean("as_labelled")) {
        instrument.asLabelled = true;
        instrument.calibrations << calibrationOf(row, "label_on", "label_due");
    }
    return {row.integer("id"), instrument};
}

Calibration readCalibration(const Statement &row)
{
    return calibrationOf(row, "calibrated_on", "calibration_due");
}

/// Day of calibration and last day, empty where there is none.
std::pair<QString, QString> daysOf(const Calibration &calibration)
{
    return {calibration.on.toString(calibrationDay),
            calibration.due ? calibration.due->toString(calibrationDay) : QString()};
}

Result<void> addCalibration(Transaction &transaction, const QString &key,
                            const Calibration &calibration)
{
    const auto [on, due] = daysOf(calibration);
    const QString digest =
        digestOf(QJsonObject{{"instrument", key}, {"calibrated_on", on}, {"calibration_due", due}});
    Statement known(transaction, "instrument.has_calibration");
    LOOPWRIGHT_ASSIGN(const auto there, known.bind("digest", digest).next());
    if (there)
        return {};
    Statement add(transaction, "instrument.add_calibration");
    add.bind("instrument", key)
        .bindOrNull("calibrated_on", on)
        .bindOrNull("calibration_due", due)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(add.write());
    transaction.seal(registerSubject(), {"calibration", digest, digest});
    return {};
}

} // namespace

Result<std::optional<Instrument>> InstrumentStore::withCalibrations(qint64 id,
                                                                    Instrument instrument) const
{
    if (instrument.asLabelled)
        return std::optional(instrument);
    Statement statement(m_database, "instrument.calibrations");
    statement.bind("id", id);
    LOOPWRIGHT_ASSIGN(const auto calibrations, rows(statement, readCalibration));
    instrument.calibrations = QList<Calibration>(calibrations.begin(), calibrations.end());
    return std::optional(instrument);
}

Result<std::optional<Instrument>> InstrumentStore::find(const QString &key) const
{
    Statement statement(m_database, "instrument.find");
    statement.bind("instrument", key);
    LOOPWRIGHT_ASSIGN(const auto found, firstRow(statement, readInstrument));
    if (!found)
        return std::optional<Instrument>();
    return withCalibrations(found->id, found->instrument);
}

Result<std::vector<Instrument>> InstrumentStore::all() const
{
    Statement statement(m_database, "instrument.all");
    LOOPWRIGHT_ASSIGN(const auto found, rows(statement, readInstrument));
    QHash<qint64, QList<Calibration>> calibrations;
    Statement all(m_database, "instrument.all_calibrations");
    LOOPWRIGHT_TRY(rows(all, [&calibrations](const Statement &row) {
        calibrations[row.integer("id")] << readCalibration(row);
        return true;
    }));
    std::vector<Instrument> instruments;
    for (const auto &[id, instrument] : found) {
        instruments.push_back(instrument);
        if (!instrument.asLabelled)
            instruments.back().calibrations = calibrations.value(id);
    }
    return instruments;
}

Result<void> InstrumentStore::put(Transaction &transaction, const Instrument &instrument)
{
    const auto [labelOn, labelDue] = instrument.asLabelled ? daysOf(instrument.calibrations.first())
                                                           : std::pair<QString, QString>();
    const QString digest = digestOf(QJsonObject{{"instrument", instrument.key},
                                                {"serial", instrument.serial},
                                                {"kind", instrument.kind},
                                                {"as_labelled", instrument.asLabelled},
                                                {"label_on", labelOn},
                                                {"label_due", labelDue}});
    Statement put(transaction, "instrument.put");
    put.bind("instrument", instrument.key)
        .bind("serial", instrument.serial)
        .bind("kind", instrument.kind)
        .bind("as_labelled", instrument.asLabelled)
        .bindOrNull("label_on", labelOn)
        .bindOrNull("label_due", labelDue)
        .bind("digest", digest);
    LOOPWRIGHT_TRY(put.write());
    transaction.seal(registerSubject(), {"instrument", instrument.key, digest});
    if (instrument.asLabelled)
        return {};
    for (const Calibration &calibration : instrument.calibrations)
        LOOPWRIGHT_TRY(addCalibration(transaction, instrument.key, calibration));
    return {};
}

} // namespace loopwright
