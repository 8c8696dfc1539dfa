-- Every table as it stands, for the export to CSV. A test holds that none is left out.

-- name: meta
SELECT * FROM meta ORDER BY key
-- name: office
SELECT * FROM office ORDER BY id
-- name: issuer
SELECT * FROM issuer
-- name: office_test_line
SELECT * FROM office_test_line ORDER BY office, label
-- name: installer
SELECT id, installer, name, role, login, digest FROM installer ORDER BY id -- no PIN leaves
-- name: instrument
SELECT * FROM instrument ORDER BY id
-- name: calibration
SELECT * FROM calibration ORDER BY id
-- name: public_key
SELECT * FROM public_key ORDER BY id
-- name: circuit
SELECT * FROM circuit ORDER BY id
-- name: service_order
SELECT * FROM service_order ORDER BY id
-- name: order_terminal
SELECT * FROM order_terminal ORDER BY service_order, number
-- name: assignment
SELECT * FROM assignment ORDER BY id
-- name: fact
SELECT * FROM fact ORDER BY id
-- name: limit_set
SELECT * FROM limit_set ORDER BY id
-- name: decision
SELECT * FROM decision ORDER BY id
-- name: certificate
SELECT * FROM certificate ORDER BY id
-- name: certificate_issue
SELECT * FROM certificate_issue ORDER BY certificate, issue
-- name: event
SELECT * FROM event ORDER BY log_position
-- name: chain_head
SELECT * FROM chain_head ORDER BY subject
-- name: order_state
SELECT * FROM order_state ORDER BY service_order
-- name: board_tally
SELECT * FROM board_tally ORDER BY id
-- name: hazard_order
SELECT * FROM hazard_order ORDER BY pair, office, service_order
-- name: told_hazard
SELECT * FROM told_hazard ORDER BY id
-- name: paper_due
SELECT * FROM paper_due
-- name: draft
SELECT * FROM draft ORDER BY order_number, part
-- name: tables_there
SELECT name FROM sqlite_schema
WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'order_search%' ORDER BY name

-- name: station
SELECT * FROM station ORDER BY id

-- name: bundle
SELECT * FROM bundle ORDER BY id

-- name: carried_order
SELECT * FROM carried_order ORDER BY id

-- name: foreign_event
SELECT * FROM foreign_event ORDER BY station, subject, sequence

-- name: told_order
SELECT * FROM told_order ORDER BY id

-- name: foreign_fact
SELECT * FROM foreign_fact ORDER BY id

-- name: conflict
SELECT * FROM conflict ORDER BY id

-- name: settlement
SELECT * FROM settlement ORDER BY id
