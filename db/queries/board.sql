-- The board: derived state of orders. The statements end in a condition that always holds, so that
-- the parts of a filter can follow.

-- Of values, for the reason given in assignment.sql. No order has the id 0: the foreign key refuses it.
-- name: put
INSERT INTO order_state (service_order, order_number, stage, outcome, reason, hazard, due_date, office,
                         installer, circuit_number, kind, customer, premises, facts, runs, search)
VALUES (coalesce((SELECT id FROM service_order WHERE order_number = :order_number), 0),
        :order_number, :stage, :outcome, :reason, :hazard, :due_date, :office, :installer,
        :circuit_number, :kind, :customer, :premises, :facts, :runs, :search)
ON CONFLICT (service_order) DO UPDATE SET stage = excluded.stage, outcome = excluded.outcome,
    reason = excluded.reason, hazard = excluded.hazard, due_date = excluded.due_date, office = excluded.office,
    installer = excluded.installer, circuit_number = excluded.circuit_number,
    kind = excluded.kind, customer = excluded.customer, premises = excluded.premises,
    facts = excluded.facts, runs = excluded.runs, search = excluded.search

-- name: find
SELECT order_number, stage, outcome, reason, hazard, facts, runs
FROM order_state WHERE service_order =
    (SELECT id FROM service_order WHERE order_number = :order_number)

-- name: columns
SELECT order_number, stage, outcome, reason, hazard, due_date, office, installer, circuit_number,
       kind, customer, premises, facts, runs, search
FROM order_state WHERE service_order =
    (SELECT id FROM service_order WHERE order_number = :order_number)

-- name: check_search
INSERT INTO order_search (order_search, rank) VALUES ('integrity-check', 1)

-- name: lines
SELECT s.order_number, s.circuit_number, s.customer, s.premises, s.kind, s.office, s.stage,
       s.outcome, s.reason, s.hazard, s.installer, s.due_date, s.facts, s.runs, o.status, o.held
FROM order_state AS s
CROSS JOIN service_order AS o ON o.id = s.service_order -- in this order: s decides which rows
WHERE true

-- name: at_premises
SELECT s.order_number, s.circuit_number, s.customer, s.premises, s.kind, s.office, s.stage,
       s.outcome, s.reason, s.hazard, s.installer, s.due_date, s.facts, s.runs, o.status, o.held
FROM service_order AS o CROSS JOIN order_state AS s ON s.service_order = o.id
WHERE o.premises_key = :premises_key AND o.premises_key <> '' AND o.status <> 'cancelled'
ORDER BY s.due_date, s.order_number

-- name: ids
SELECT s.service_order AS id FROM order_state AS s WHERE true

-- name: count
SELECT count(*) AS orders FROM order_state AS s WHERE true

-- name: stages
SELECT s.stage AS value, count(*) AS orders FROM order_state AS s WHERE true

-- name: offices
SELECT s.office AS value, count(*) AS orders FROM order_state AS s WHERE true

-- name: installers
SELECT s.installer AS value, count(*) AS orders FROM order_state AS s WHERE true

-- part: id
AND s.service_order = :id
-- part: stage
AND s.stage = :stage
-- part: office
AND s.office = :office
-- part: installer
AND s.installer = :installer
-- part: outcome
AND s.outcome = :outcome
-- part: due_from
AND s.due_date >= :due_from
-- part: due_before
AND s.due_date < :due_before
-- part: hazard
AND s.hazard = 1 AND s.stage <> 'done'
-- part: no_hazard
AND NOT (s.hazard = 1 AND s.stage <> 'done')
-- part: not_done
AND s.stage <> 'done'
-- part: open
AND EXISTS (SELECT 1 FROM service_order AS w WHERE w.id = s.service_order AND w.status = 'open')
-- part: match
AND s.service_order IN (SELECT rowid FROM order_search WHERE order_search MATCH :match)
-- part: short_words
AND NOT EXISTS (SELECT 1 FROM json_each(:short_words) AS w WHERE instr(s.search, w.value) = 0)
-- part: after
AND (s.due_date, s.order_number) > (:after_due, :after_number)
-- part: sorted
ORDER BY s.due_date, s.order_number LIMIT :limit
-- part: by_stage
GROUP BY s.stage
-- part: by_office
GROUP BY s.office
-- part: by_installer
GROUP BY s.installer
