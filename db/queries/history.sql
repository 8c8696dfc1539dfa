-- What the check of the history asks.

-- What a row is called when it is named as broken, table by table.

-- name: name_meta
SELECT key AS name FROM meta WHERE id = :id

-- name: name_office
SELECT office AS name FROM office WHERE id = :id

-- name: name_issuer
SELECT 'issuer' AS name FROM issuer WHERE id = :id

-- name: name_office_test_line
SELECT coalesce(o.office, '?') || '/' || t.label AS name
FROM office_test_line AS t LEFT JOIN office AS o ON o.id = t.office WHERE t.id = :id

-- name: name_installer
SELECT installer AS name FROM installer WHERE id = :id

-- name: name_instrument
SELECT instrument AS name FROM instrument WHERE id = :id

-- name: name_calibration
SELECT digest AS name FROM calibration WHERE id = :id

-- name: name_public_key
SELECT fingerprint AS name FROM public_key WHERE id = :id

-- name: name_circuit
SELECT circuit_number AS name FROM circuit WHERE id = :id

-- name: name_service_order
SELECT order_number AS name FROM service_order WHERE id = :id

-- name: name_order_terminal
SELECT coalesce(o.order_number, '?') || '/' || t.number AS name
FROM order_terminal AS t LEFT JOIN service_order AS o ON o.id = t.service_order WHERE t.id = :id

-- name: name_assignment
SELECT a.kind || ' ' || a.value AS name FROM assignment AS a WHERE a.id = :id

-- name: name_fact
SELECT uuid AS name FROM fact WHERE id = :id

-- name: name_limit_set
SELECT version AS name FROM limit_set WHERE id = :id

-- name: name_decision
SELECT decision AS name FROM decision WHERE id = :id

-- name: name_certificate
SELECT number AS name FROM certificate WHERE id = :id

-- name: name_certificate_issue
SELECT coalesce(t.number, '?') || '/' || i.issue AS name
FROM certificate_issue AS i LEFT JOIN certificate AS t ON t.id = i.certificate WHERE i.id = :id

-- name: name_station
SELECT station || '/' || tag AS name FROM station WHERE id = :id

-- name: name_bundle
SELECT bundle AS name FROM bundle WHERE id = :id

-- name: name_carried_order
SELECT coalesce(o.order_number, '?') || '/' || c.station AS name
FROM carried_order AS c LEFT JOIN service_order AS o ON o.id = c.service_order WHERE c.id = :id

-- name: name_foreign_event
SELECT station || '/' || subject || '/' || sequence AS name FROM foreign_event WHERE id = :id

-- name: name_foreign_fact
SELECT fact || '/' || station AS name FROM foreign_fact WHERE id = :id

-- name: name_told_order
SELECT coalesce(o.order_number, '?') || '/' || t.station AS name
FROM told_order AS t LEFT JOIN service_order AS o ON o.id = t.service_order WHERE t.id = :id

-- name: name_conflict
SELECT conflict AS name FROM conflict WHERE id = :id

-- name: name_settlement
SELECT conflict AS name FROM settlement WHERE id = :id

-- name: name_order_state
SELECT order_number AS name FROM order_state WHERE service_order = :id

-- name: name_hazard_order
SELECT coalesce(o.order_number, '?') || '/' || h.pair AS name
FROM hazard_order AS h LEFT JOIN service_order AS o ON o.id = h.service_order WHERE h.id = :id

-- name: name_told_hazard
SELECT order_number || '/' || pair AS name FROM told_hazard WHERE id = :id

-- What an event of the log sealed: the rows by table and id, and in its detail by name.
-- name: sealed_by
SELECT subject, sequence, sealed, CASE WHEN json_valid(detail) = 1 THEN detail ELSE '{}' END AS detail
FROM event WHERE log_position = :log_position
