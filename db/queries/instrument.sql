-- Instruments and their calibrations.

-- name: find
SELECT id, instrument, serial, kind, as_labelled, label_on, label_due FROM instrument
WHERE instrument = :instrument

-- name: all
SELECT id, instrument, serial, kind, as_labelled, label_on, label_due FROM instrument
ORDER BY instrument

-- name: put
INSERT INTO instrument (instrument, serial, kind, as_labelled, label_on, label_due, digest)
VALUES (:instrument, :serial, :kind, :as_labelled, :label_on, :label_due, :digest)
ON CONFLICT (instrument) DO UPDATE SET serial = excluded.serial, kind = excluded.kind,
    as_labelled = excluded.as_labelled, label_on = excluded.label_on,
    label_due = excluded.label_due, digest = excluded.digest

-- name: calibrations
SELECT calibrated_on, calibration_due FROM calibration WHERE instrument = :id
ORDER BY calibrated_on NULLS FIRST, id

-- name: all_calibrations
SELECT instrument AS id, calibrated_on, calibration_due FROM calibration
ORDER BY instrument, calibrated_on NULLS FIRST, id

-- name: has_calibration
SELECT 1 AS there FROM calibration WHERE digest = :digest

-- name: add_calibration
INSERT INTO calibration (instrument, calibrated_on, calibration_due, digest)
VALUES ((SELECT id FROM instrument WHERE instrument = :instrument), :calibrated_on,
        :calibration_due, :digest)
