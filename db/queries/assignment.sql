-- Numbers, SPIDs and pairs in use.

-- name: holder
SELECT c.circuit_number, o.order_number, a.state
FROM assignment AS a JOIN circuit AS c ON c.id = a.circuit
JOIN service_order AS o ON o.id = a.service_order
WHERE a.kind = :kind AND a.scope = :scope AND a.value = :value AND a.state <> 'released'
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

-- name: plan
INSERT INTO assignment (kind, scope, value, circuit, service_order, state)
SELECT :kind, :scope, :value, circuit, id, 'planned' FROM service_order
WHERE order_number = :order_number

-- name: release_value
UPDATE assignment SET state = 'released'
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND state = 'planned' AND kind = :kind AND scope = :scope AND value = :value

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

-- Every value that two circuits want or have: what open orders ask for (held ones too) and what the
-- newest completed order of each circuit has. It reads the orders, not the table of assignments,
-- and so finds what is not assigned yet.
-- name: doubles
WITH counted AS (
    SELECT o.id, o.order_number, o.pair_key, c.circuit_number, f.office
    FROM service_order AS o JOIN circuit AS c ON c.id = o.circuit
    JOIN office AS f ON f.id = o.office
    WHERE o.order_type <> 'disconnect'
      AND (o.status = 'open'
           OR o.completed_rank = (SELECT max(w.completed_rank) FROM service_order AS w
                                  WHERE w.circuit = o.circuit))
),
used (kind, scope, value, circuit_number, order_number) AS (
    SELECT 'dn', '', t.dn_key, n.circuit_number, n.order_number
    FROM counted AS n JOIN order_terminal AS t ON t.service_order = n.id WHERE t.dn_key <> ''
    UNION SELECT 'spid', n.office, t.spid, n.circuit_number, n.order_number
    FROM counted AS n JOIN order_terminal AS t ON t.service_order = n.id WHERE t.spid <> ''
    UNION SELECT 'pair', n.office, n.pair_key, n.circuit_number, n.order_number
    FROM counted AS n WHERE n.pair_key <> ''
),
doubled AS (
    SELECT kind, scope, value FROM used GROUP BY kind, scope, value
    HAVING count(DISTINCT circuit_number) > 1
)
SELECT u.kind, u.scope, u.value, u.circuit_number, u.order_number
FROM used AS u JOIN doubled AS d ON d.kind = u.kind AND d.scope = u.scope AND d.value = u.value
ORDER BY u.kind, u.scope, u.value, u.circuit_number, u.order_number
