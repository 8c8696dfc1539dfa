-- Numbers, SPIDs and pairs in use. `(SELECT :kind)`: there is an index of pairs alone, and SQLite would make the plan
-- of a statement that compares `kind` with a value anew each time that value is bound.

-- name: holder
SELECT c.circuit_number, o.order_number, a.state
FROM assignment AS a JOIN circuit AS c ON c.id = a.circuit
JOIN service_order AS o ON o.id = a.service_order
WHERE a.kind = (SELECT :kind) AND a.scope = :scope AND a.value = :value AND a.state <> 'released'
  AND o.order_number <> :except_order
ORDER BY a.state DESC, a.id -- the working one before a planned one

-- name: of_order
SELECT a.kind, a.scope, a.value, a.state, c.circuit_number, o.order_number
FROM assignment AS a JOIN circuit AS c ON c.id = a.circuit
JOIN service_order AS o ON o.id = a.service_order
WHERE o.order_number = :order_number ORDER BY a.id

-- name: of_circuit
SELECT a.kind, a.scope, a.value, a.state, c.circuit_number, o.order_number
FROM assignment AS a JOIN circuit AS c ON c.id = a.circuit
JOIN service_order AS o ON o.id = a.service_order
WHERE c.circuit_number = :circuit_number ORDER BY a.id

-- Of every pair of a cable that an order ever had, who had it and what became of that order, oldest
-- first.
-- name: of_cable
SELECT a.value, a.state, s.order_number, s.circuit_number, s.pair, s.status, s.outcome, s.criterion,
       s.reason,
       s.hazard = 1 AND EXISTS (SELECT 1 FROM hazard_order AS h
                                WHERE h.service_order = s.service_order) AS hazard
FROM assignment AS a CROSS JOIN order_state AS s ON s.service_order = a.service_order
WHERE a.kind = 'pair' AND a.scope = :office AND a.value >= :from AND a.value < :before
ORDER BY a.value, a.id

-- Of values, not of a SELECT: into a table with triggers that would go by way of a temporary table,
-- which costs more than all the rest.
-- name: plan
INSERT INTO assignment (kind, scope, value, circuit, service_order, state)
VALUES (:kind, :scope, :value,
        (SELECT circuit FROM service_order WHERE order_number = :order_number),
        (SELECT id FROM service_order WHERE order_number = :order_number), 'planned')

-- name: release_value
UPDATE assignment SET state = 'released'
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'planned' AND kind = (SELECT :kind) AND scope = :scope AND value = :value

-- name: release_held
UPDATE assignment SET state = 'released'
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state <> 'released' AND kind = (SELECT :kind) AND scope = :scope AND value = :value

-- Likewise of values.
-- name: hold
INSERT INTO assignment (kind, scope, value, circuit, service_order, state)
VALUES (:kind, :scope, :value,
        (SELECT circuit FROM service_order WHERE order_number = :order_number),
        (SELECT id FROM service_order WHERE order_number = :order_number), :state)

-- Who holds the values from one up to another.
-- name: held_between
SELECT a.value, c.circuit_number
FROM assignment AS a JOIN circuit AS c ON c.id = a.circuit
WHERE a.kind = (SELECT :kind) AND a.scope = :scope AND a.value >= :from AND a.value < :before
  AND a.state <> 'released'

-- What a change that is taken back had claimed, and the row that it had released.
-- name: forget
DELETE FROM assignment
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state <> 'released' AND kind = (SELECT :kind) AND scope = :scope AND value = :value

-- name: last_released
SELECT max(id) AS id FROM assignment
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'released' AND kind = (SELECT :kind) AND scope = :scope AND value = :value

-- name: remove
DELETE FROM assignment WHERE id = :id

-- name: put_back
INSERT INTO assignment (id, kind, scope, value, circuit, service_order, state)
VALUES (:id, :kind, :scope, :value,
        (SELECT circuit FROM service_order WHERE order_number = :order_number),
        (SELECT id FROM service_order WHERE order_number = :order_number), :state)

-- name: release_planned
UPDATE assignment SET state = 'released'
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'planned'

-- name: release_working
UPDATE assignment SET state = 'released'
WHERE circuit = (SELECT circuit FROM service_order WHERE order_number = :order_number)
  AND service_order <> (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'working'

-- name: start_working
UPDATE assignment SET state = 'working'
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'planned'

-- Every value that two circuits want or have, with each order that asks for it.
-- name: doubles
WITH doubled AS (
    SELECT kind, scope, value, json_group_array(service_order) AS orders FROM wanted_value
    GROUP BY kind, scope, value HAVING min(circuit) <> max(circuit)
)
SELECT DISTINCT d.kind, d.scope, d.value, c.circuit_number, o.order_number
FROM doubled AS d JOIN json_each(d.orders) AS j JOIN service_order AS o ON o.id = j.value
JOIN circuit AS c ON c.id = o.circuit
ORDER BY d.kind, d.scope, d.value, c.circuit_number, o.order_number

-- Every value of an order that is not held which its circuit does not hold: somebody changed the
-- assignments or the order's terminals past this program.
-- name: unassigned
SELECT w.kind, w.scope, w.value, c.circuit_number, o.order_number
FROM wanted_value AS w JOIN service_order AS o ON o.id = w.service_order
JOIN circuit AS c ON c.id = w.circuit
WHERE w.held = 0 AND NOT EXISTS (
    SELECT 1 FROM assignment AS a
    WHERE a.kind = w.kind AND a.scope = w.scope AND a.value = w.value AND a.circuit = w.circuit
      AND a.state <> 'released')
ORDER BY w.kind, w.scope, w.value, c.circuit_number, o.order_number

-- Every row that holds a value which its order does not ask for, or no longer.
-- name: unwanted
SELECT a.kind, a.scope, a.value, coalesce(c.circuit_number, '') AS circuit_number,
       coalesce(o.order_number, '') AS order_number
FROM (SELECT kind, scope, value, circuit, service_order FROM assignment WHERE state <> 'released'
      EXCEPT SELECT kind, scope, value, circuit, service_order FROM wanted_value) AS a
LEFT JOIN circuit AS c ON c.id = a.circuit LEFT JOIN service_order AS o ON o.id = a.service_order
ORDER BY a.kind, a.scope, a.value, order_number
