-- What the check of the history asks.

-- Each row that an event seals, as bytes over which its digest is taken, and whether the columns
-- beside the content say the same as the content.

-- name: facts
SELECT 'fact' AS row, f.uuid AS id, f.content, f.digest,
       f.uuid IS f.content ->> '$.id' AND f.kind IS f.content ->> '$.kind'
           AND o.order_number IS f.content ->> '$.order'
           AND f.installer IS coalesce(f.content ->> '$.installer', '')
           AND f.instrument IS coalesce(f.content ->> '$.instrument', '')
           AND (f.voids IS NULL OR f.voids IS f.content ->> '$.fact')
           AND f.at_utc IS strftime('%Y-%m-%dT%H:%M:%S', f.told)
               || CASE substr(f.told, 20, 1) WHEN '.' THEN substr(f.told, 20, 4) ELSE '.000' END || 'Z'
           AND f.at_offset IS CASE substr(f.told, -1) WHEN 'Z' THEN 0 ELSE (substr(f.told, -6, 1) || '1')
               * (substr(f.told, -5, 2) * 3600 + substr(f.told, -2) * 60) END AS agrees
FROM (SELECT *, content ->> '$.at' AS told FROM fact) AS f
JOIN service_order AS o ON o.id = f.service_order

-- name: decision_inputs
SELECT 'decision_input' AS row, decision AS id, input AS content, input_digest AS digest,
       limit_set IS input ->> '$.limit_set' AS agrees
FROM decision

-- name: decisions
SELECT 'decision' AS row, d.decision AS id, d.result AS content, d.digest,
       d.outcome IS d.result ->> '$.outcome' AND o.order_number IS d.result ->> '$.order' AS agrees
FROM decision AS d JOIN service_order AS o ON o.id = d.service_order

-- The row is written a moment after the content names its time.
-- name: certificates
SELECT 'certificate' AS row, t.number AS id, t.content, t.digest,
       t.number IS t.content ->> '$.certificate' AND d.decision IS t.content ->> '$.decision'
           AND o.order_number IS t.content ->> '$.order.order_number'
           AND abs(julianday(t.at_utc) - julianday(t.content ->> '$.issued_at')) * 86400 < 60
           AS agrees
FROM certificate AS t
LEFT JOIN decision AS d ON d.id = t.decision
LEFT JOIN service_order AS o ON o.id = t.service_order

-- name: limit_sets
SELECT 'limit_set' AS row, version AS id, content, digest,
       version IS content ->> '$.version' AND valid_from IS content ->> '$.valid_from' AS agrees
FROM limit_set

-- name: orders
SELECT 'order' AS row, o.order_number AS id, o.digest,
       '{"content":' || o.content || ',"held":' || CASE o.held WHEN 1 THEN 'true' ELSE 'false' END
           || ',"status":"' || o.status || '"}' AS content,
       o.order_number IS o.content ->> '$.order_number'
           AND c.circuit_number IS o.content ->> '$.circuit_number'
           AND f.office IS o.content ->> '$.office'
           AND o.order_type IS o.content ->> '$.order_type'
           AND o.due_date IS o.content ->> '$.due_date'
           AND o.installer IS coalesce(o.content ->> '$.installer', '')
           AND NOT EXISTS (SELECT 1 FROM order_terminal AS t
                           WHERE t.service_order = o.id
                             AND (t.dn IS NOT coalesce(o.content ->> ('$.dn_' || t.number), '')
                                  OR t.tei IS NOT coalesce(o.content ->> ('$.tei_' || t.number), '')))
           AND NOT EXISTS (SELECT 1 FROM json_each(o.content) AS e
                           WHERE e.value <> ''
                             AND (e.key GLOB 'dn_[1-8]' OR e.key GLOB 'spid_[1-8]'
                                  OR e.key GLOB 'tei_[1-8]')
                             AND NOT EXISTS (SELECT 1 FROM order_terminal AS t
                                             WHERE t.service_order = o.id
                                               AND t.number = CAST(substr(e.key, -1) AS INTEGER)))
           AS agrees
FROM service_order AS o JOIN circuit AS c ON c.id = o.circuit JOIN office AS f ON f.id = o.office

-- name: register
SELECT 'office' AS row, office AS id, digest, 1 AS agrees,
       json_object('address', address, 'name', name, 'office', office,
                   'protocol_variant', protocol_variant, 'telephone', telephone,
                   'trouble_telephone', trouble_telephone) AS content
FROM office
UNION ALL SELECT 'issuer', 'issuer', digest, 1,
       json_object('address', address, 'name', name, 'telephone', telephone,
                   'trouble_hours', trouble_hours, 'trouble_telephone', trouble_telephone)
FROM issuer
UNION ALL SELECT 'installer', installer, digest, 1,
       json_object('installer', installer, 'name', name, 'role', role)
FROM installer
UNION ALL SELECT 'instrument', instrument, digest, 1,
       json_object('instrument', instrument, 'kind', kind, 'serial', serial)
FROM instrument
UNION ALL SELECT 'calibration', k.digest, k.digest, 1,
       json_object('calibrated_on', coalesce(k.calibrated_on, ''),
                   'calibration_due', coalesce(k.calibration_due, ''),
                   'instrument', i.instrument)
FROM calibration AS k JOIN instrument AS i ON i.id = k.instrument

-- Where the rows and the newest seal of each do not agree: both in one list, put together by row in
-- one sort. The newest seal of a row is the one with the highest place: event first, then place
-- within the event; of a group with a single max() SQLite takes the other columns from the row that
-- has it.
-- A row's own time is within a minute of the event's: both ask the clock.
-- name: disagreements
WITH told (row, id, subject, sequence, place, sealed, stored, said_at, stored_at) AS (
    SELECT s.value ->> '$.row', s.value ->> '$.id', e.subject, e.sequence, (e.id << 20) + s.key,
           s.value ->> '$.digest', NULL, e.at_utc, NULL
    FROM event AS e
    JOIN json_each(CASE WHEN json_valid(e.detail) THEN e.detail ELSE '{}' END, '$.seals') AS s
    UNION ALL SELECT row, id, subject, 0, -1, NULL, digest, NULL, at_utc FROM sealed_row
)
SELECT row, id, subject, sequence, max(place) AS place,
       CASE WHEN sealed IS NULL THEN 'is in the records, but no event tells of it'
            WHEN group_concat(stored) IS NULL THEN 'is gone from the records'
            ELSE 'was changed after it was recorded' END AS what
FROM told GROUP BY row, id
HAVING sealed IS NOT group_concat(stored)
    OR (group_concat(stored_at) IS NOT NULL
        AND (abs(julianday(group_concat(stored_at)) - julianday(said_at)) * 86400 < 60) IS NOT TRUE)

-- The event that sealed a row last.
-- name: sealed_by
SELECT e.subject, e.sequence
FROM event AS e
JOIN json_each(CASE WHEN json_valid(e.detail) THEN e.detail ELSE '{}' END, '$.seals') AS s
WHERE s.value ->> '$.row' = :row AND s.value ->> '$.id' = :id
ORDER BY e.id DESC LIMIT 1

-- name: heads_without_events
SELECT subject FROM chain_head AS h
WHERE NOT EXISTS (SELECT 1 FROM event AS e WHERE e.subject = h.subject)
ORDER BY subject
