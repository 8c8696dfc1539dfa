-- The board: derived state of orders, and how many there are of each combination of filters. The
-- statements that end in FROM's place are put together in db/BoardStatement.cpp: where from (which
-- index), a condition that always holds, the parts of a filter, and the order.

-- Of values, for the reason given in assignment.sql. No order has the id 0: the foreign key refuses it.
-- name: put
INSERT INTO order_state (service_order, order_number, status, stage, outcome, criterion, reason,
                         waiting_on, paper, hazard, hazard_at, away, away_at, conflict, conflicts,
                         due_date, promised_date, office, installer, circuit_number,
                         pair, cable, variant, order_type, kind, customer, premises, taken_on,
                         accepted_on, visits, facts, runs, search)
VALUES (coalesce((SELECT id FROM service_order WHERE order_number = :order_number), 0),
        :order_number, :status, :stage, :outcome, :criterion, :reason, :waiting_on, :paper,
        :hazard, :hazard_at, :away, :away_at, :conflict, :conflicts, :due_date, :promised_date, :office, :installer, :circuit_number, :pair, :cable, :variant,
        :order_type, :kind, :customer, :premises, :taken_on, :accepted_on, :visits, :facts, :runs,
        :search)
ON CONFLICT (service_order) DO UPDATE SET
    status = excluded.status, stage = excluded.stage, outcome = excluded.outcome,
    criterion = excluded.criterion, reason = excluded.reason, waiting_on = excluded.waiting_on,
    paper = excluded.paper, hazard = excluded.hazard, hazard_at = excluded.hazard_at,
    away = excluded.away,
    away_at = excluded.away_at, conflict = excluded.conflict, conflicts = excluded.conflicts,
    due_date = excluded.due_date,
    promised_date = excluded.promised_date,
    office = excluded.office, installer = excluded.installer,
    circuit_number = excluded.circuit_number, pair = excluded.pair, cable = excluded.cable,
    variant = excluded.variant, order_type = excluded.order_type, kind = excluded.kind,
    customer = excluded.customer, premises = excluded.premises, taken_on = excluded.taken_on,
    accepted_on = excluded.accepted_on, visits = excluded.visits, facts = excluded.facts,
    runs = excluded.runs, search = excluded.search

-- name: put_identifiers
UPDATE order_state SET search = :search, variant = :variant
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)

-- name: columns
SELECT order_number, status, stage, outcome, criterion, reason, waiting_on, paper, hazard,
       hazard_at, away, away_at, conflict, conflicts,
       due_date, promised_date, office, installer, circuit_number, pair, cable, variant,
       order_type, kind, customer, premises, taken_on, accepted_on, visits, facts, runs, search
FROM order_state WHERE service_order =
    (SELECT id FROM service_order WHERE order_number = :order_number)

-- name: check_search
INSERT INTO order_search (order_search, rank) VALUES ('integrity-check', 1)

-- The combinations of which the tally says another number than the orders do.
-- name: check_tally
SELECT count(*) AS wrong FROM (
    SELECT status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard, away,
           conflict
    FROM (SELECT status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard, away,
                 conflict,
                 orders FROM board_tally
          UNION ALL
          SELECT status, stage, outcome, criterion, office, installer, waiting_on, paper, hazard, away,
                 conflict,
                 -1 FROM order_state) AS t
    GROUP BY 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 HAVING sum(orders) <> 0) AS w

-- name: lines
SELECT s.order_number, s.circuit_number, s.pair, s.customer, s.premises, s.kind, s.office, s.status,
       s.stage, s.outcome, s.criterion, s.reason, s.waiting_on, s.paper, s.hazard,
       s.hazard_at, s.away_at, s.conflicts, s.installer,
       s.due_date, s.promised_date, s.facts, s.runs, o.held, coalesce(i.name, '') AS installer_name
-- Of what a search found, to say where its words are.
-- part: and_content
, o.content
-- name: stages
SELECT DISTINCT s.stage AS value
-- name: outcomes
SELECT DISTINCT s.outcome AS value
-- name: criteria
SELECT DISTINCT s.criterion AS value
-- name: installers
SELECT DISTINCT s.installer AS value
-- name: waited_on
SELECT DISTINCT s.waiting_on AS value
-- name: number
SELECT s.order_number
-- name: count
SELECT count(*) AS orders
-- name: found
SELECT count(*) AS orders FROM (SELECT 1 FROM order_search WHERE order_search MATCH :match
                                LIMIT :most_found)
-- name: has_whole_number
SELECT EXISTS (SELECT 1 FROM order_terminal
               WHERE dn_key IN ('+' || :digits, '+1' || :digits) AND dn_key <> '')
    OR EXISTS (SELECT 1 FROM order_terminal WHERE spid = :digits AND spid <> '') AS there
-- name: load
SELECT s.installer, count(*) AS orders FROM order_state AS s INDEXED BY order_state_open
WHERE s.status = 'open' AND s.due_date = :day GROUP BY s.installer
-- name: sum
SELECT coalesce(sum(s.orders), 0) AS orders
-- name: tallied
SELECT s.status, s.stage, s.outcome, s.criterion, s.office, s.installer, s.waiting_on, s.paper,
       CASE WHEN s.hazard = 1 AND s.stage <> 'done' THEN 1 ELSE 0 END AS hazard, s.away, s.conflict, s.orders, 0 AS past, 0 AS today, 0 AS soon,
       0 AS this_week, 0 AS missed
-- name: grouped
SELECT s.status, s.stage, s.outcome, s.criterion, s.office, s.installer, s.waiting_on, s.paper,
       CASE WHEN s.hazard = 1 AND s.stage <> 'done' THEN 1 ELSE 0 END AS hazard, s.away, s.conflict, count(*) AS orders,
       s.due_date < :today AS past, s.due_date = :today AS today,
       s.due_date >= :today AND s.due_date < :risk_ends AS soon,
       s.due_date >= :monday AND s.due_date < :next_monday AS this_week,
       s.promised_date < :today AND s.status <> 'cancelled'
           AND (s.status = 'open' OR s.promised_date <> s.due_date) AS missed

-- The newest orders with all the words, up to :most_found: what a fragment finds in a grown database
-- nobody reads, and a search must not take longer the more there is.
-- part: from_search
FROM (SELECT rowid AS id FROM order_search WHERE order_search MATCH :match
      ORDER BY rowid DESC LIMIT :most_found) AS f
CROSS JOIN order_state AS s ON s.service_order = f.id
-- Likewise, and the orders of those in whose names words of it are (:named), the latest up to
-- :most_each for each of them, where the other words are in theirs.
-- part: from_search_or_named
FROM (SELECT id, max(named) AS named FROM (
          SELECT id, 0 AS named FROM (SELECT rowid AS id FROM order_search
                                      WHERE order_search MATCH :match
                                      ORDER BY rowid DESC LIMIT :most_found)
          UNION ALL
          SELECT p.service_order, 1 FROM json_each(:named) AS w
          CROSS JOIN order_state AS p ON p.service_order IN (
              SELECT x.service_order FROM order_state AS x INDEXED BY order_state_installer
              WHERE x.installer = w.value ->> 'key' ORDER BY x.due_date DESC LIMIT :most_each)
          WHERE NOT EXISTS (SELECT 1 FROM json_each(w.value, '$.rest') AS r
                            WHERE instr(p.search, r.value ->> 'word') = 0
                              AND instr(p.search, r.value ->> 'bare') = 0))
      GROUP BY id) AS f
CROSS JOIN order_state AS s ON s.service_order = f.id
-- A whole number goes by its key: the orders of every circuit that has or had it.
-- part: from_whole_number
FROM (SELECT o.id FROM service_order AS o WHERE o.circuit IN
          (SELECT w.circuit FROM order_terminal AS t JOIN service_order AS w ON w.id = t.service_order
           WHERE t.dn_key IN ('+' || :digits, '+1' || :digits) AND t.dn_key <> ''
           UNION ALL
           SELECT w.circuit FROM order_terminal AS t JOIN service_order AS w ON w.id = t.service_order
           WHERE t.spid = :digits AND t.spid <> '')) AS f
CROSS JOIN order_state AS s ON s.service_order = f.id AND instr(s.search, :digits) > 0
-- part: from_due
FROM order_state AS s INDEXED BY order_state_due
-- part: from_number
FROM order_state AS s INDEXED BY order_state_number
-- part: from_stage
FROM order_state AS s INDEXED BY order_state_stage
-- part: from_outcome
FROM order_state AS s INDEXED BY order_state_outcome
-- part: from_criterion
FROM order_state AS s INDEXED BY order_state_criterion
-- part: from_office
FROM order_state AS s INDEXED BY order_state_office
-- part: from_installer
FROM order_state AS s INDEXED BY order_state_installer
-- part: from_customer
FROM order_state AS s INDEXED BY order_state_customer
-- part: from_circuit
FROM order_state AS s INDEXED BY order_state_circuit
-- part: from_pair
FROM order_state AS s INDEXED BY order_state_pair
-- part: from_open
FROM order_state AS s INDEXED BY order_state_open
-- part: from_pending
FROM order_state AS s INDEXED BY order_state_pending
-- part: from_missed
FROM order_state AS s INDEXED BY order_state_missed
-- part: from_waiting_on
FROM order_state AS s INDEXED BY order_state_waiting_on
-- part: from_paper
FROM order_state AS s INDEXED BY order_state_paper
-- part: from_away
FROM order_state AS s INDEXED BY order_state_away
-- part: from_conflict
FROM order_state AS s INDEXED BY order_state_conflict
-- part: from_hazard
FROM order_state AS s INDEXED BY order_state_hazard
-- part: from_tally
FROM board_tally AS s
-- part: with_order
CROSS JOIN service_order AS o ON o.id = s.service_order -- in this order: s decides which rows
LEFT JOIN installer AS i ON i.installer = s.installer
-- part: from_order
FROM service_order AS o CROSS JOIN order_state AS s ON s.service_order = o.id
LEFT JOIN installer AS i ON i.installer = s.installer
-- part: of_number
WHERE o.order_number = :order_number
-- part: at_premises
WHERE o.premises_key = :premises_key AND o.premises_key <> '' AND o.status <> 'cancelled'
ORDER BY s.due_date, s.order_number
-- part: from_cable
FROM assignment AS a CROSS JOIN service_order AS o ON o.circuit = a.circuit
CROSS JOIN order_state AS s ON s.service_order = o.id
LEFT JOIN installer AS i ON i.installer = s.installer
-- part: in_trouble
WHERE a.kind = 'pair' AND a.scope = :office AND a.value >= :from AND a.value < :before
  AND a.state <> 'released' AND s.circuit_number <> :circuit_number
  AND ((o.id = a.service_order AND (s.outcome = 'not_accepted' OR s.hazard = 1))
       OR (o.order_type = 'repair' AND o.status = 'open'))
ORDER BY a.value, s.order_number
-- part: where
WHERE true

-- part: stage
AND s.stage = :stage
-- part: outcome
AND s.outcome = :outcome
-- part: criterion
AND s.criterion = :criterion
-- part: office
AND s.office = :office
-- part: installer
AND s.installer = :installer
-- part: waiting_on
AND s.waiting_on = :waiting_on AND s.waiting_on <> ''
-- part: on_nobody
AND s.waiting_on = ''
-- part: open
AND s.status = 'open'
-- part: paper
AND s.paper = 1
-- part: at_home
AND s.away = 0
-- part: no_conflict
AND s.conflict = 0
-- part: away
AND s.away = 1
-- part: conflict
AND s.conflict = 1
-- part: hazard
AND s.hazard = 1 AND s.stage <> 'done'
-- part: no_hazard
AND NOT (s.hazard = 1 AND s.stage <> 'done')
-- part: pending
AND s.status = 'open' AND s.outcome <> 'accepted' AND s.outcome <> 'accepted_with_exception'
-- The first date that was promised has passed, and it is another now or nothing is done yet.
-- part: missed
AND s.promised_date < :missed_before AND s.status <> 'cancelled'
AND (s.status = 'open' OR s.promised_date <> s.due_date)
-- part: due_from
AND s.due_date >= :due_from
-- part: due_before
AND s.due_date < :due_before
-- part: short_words
AND NOT EXISTS (SELECT 1 FROM json_each(:short_words) AS w WHERE instr(s.search, w.value) = 0)
-- part: short_words_or_named
AND (f.named = 1
     OR NOT EXISTS (SELECT 1 FROM json_each(:short_words) AS w WHERE instr(s.search, w.value) = 0))
-- part: by_combination
GROUP BY 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 14, 15, 16, 17

-- Of what a search found: by the place of the value among :ranks, each between two marks.
-- part: by_stage_rank
ORDER BY instr(:ranks, '|' || s.stage || '|'), s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: after_stage_rank
AND (instr(:ranks, '|' || s.stage || '|'), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)
-- part: by_outcome_rank
ORDER BY instr(:ranks, '|' || s.outcome || '|'), s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: after_outcome_rank
AND (instr(:ranks, '|' || s.outcome || '|'), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)
-- part: by_criterion_rank
ORDER BY instr(:ranks, '|' || s.criterion || '|'), s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: after_criterion_rank
AND (instr(:ranks, '|' || s.criterion || '|'), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)
-- part: by_installer_rank
ORDER BY instr(:ranks, '|' || s.installer || '|'), s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: after_installer_rank
AND (instr(:ranks, '|' || s.installer || '|'), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)
-- part: by_waiting_on_rank
ORDER BY instr(:ranks, '|' || s.waiting_on || '|'), s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: after_waiting_on_rank
AND (instr(:ranks, '|' || s.waiting_on || '|'), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)
-- part: by_hazard_rank
ORDER BY instr(:ranks, CASE WHEN s.hazard = 1 AND s.stage <> 'done' THEN '|1|' ELSE '|0|' END), s.due_date,
    s.order_number LIMIT :limit OFFSET :offset
-- part: after_hazard_rank
AND (instr(:ranks, CASE WHEN s.hazard = 1 AND s.stage <> 'done' THEN '|1|' ELSE '|0|' END), s.due_date, s.order_number)
    > (:after_rank, :after_due, :after_number)

-- The sorts, each upwards and downwards, and what follows a row.
-- part: by_due
ORDER BY s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: by_due_down
ORDER BY s.due_date DESC, s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_due
AND (s.due_date, s.order_number) > (:after_due, :after_number)
-- part: after_due_down
AND (s.due_date, s.order_number) < (:after_due, :after_number)
-- part: by_number
ORDER BY s.order_number LIMIT :limit OFFSET :offset
-- part: by_number_down
ORDER BY s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_number
AND (s.order_number) > (:after_number)
-- part: after_number_down
AND (s.order_number) < (:after_number)
-- part: by_office
ORDER BY s.office, s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: by_office_down
ORDER BY s.office DESC, s.due_date DESC, s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_office
AND (s.office, s.due_date, s.order_number) > (:after_key, :after_due, :after_number)
-- part: after_office_down
AND (s.office, s.due_date, s.order_number) < (:after_key, :after_due, :after_number)
-- part: by_customer
ORDER BY s.customer, s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: by_customer_down
ORDER BY s.customer DESC, s.due_date DESC, s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_customer
AND (s.customer, s.due_date, s.order_number) > (:after_key, :after_due, :after_number)
-- part: after_customer_down
AND (s.customer, s.due_date, s.order_number) < (:after_key, :after_due, :after_number)
-- part: by_circuit
ORDER BY s.circuit_number, s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: by_circuit_down
ORDER BY s.circuit_number DESC, s.due_date DESC, s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_circuit
AND (s.circuit_number, s.due_date, s.order_number) > (:after_key, :after_due, :after_number)
-- part: after_circuit_down
AND (s.circuit_number, s.due_date, s.order_number) < (:after_key, :after_due, :after_number)
-- part: by_pair
ORDER BY s.pair, s.due_date, s.order_number LIMIT :limit OFFSET :offset
-- part: by_pair_down
ORDER BY s.pair DESC, s.due_date DESC, s.order_number DESC LIMIT :limit OFFSET :offset
-- part: after_pair
AND (s.pair, s.due_date, s.order_number) > (:after_key, :after_due, :after_number)
-- part: after_pair_down
AND (s.pair, s.due_date, s.order_number) < (:after_key, :after_due, :after_number)
