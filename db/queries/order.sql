-- Service orders and the identifiers of their terminals.

-- name: find
SELECT uuid, content, status, held FROM service_order WHERE order_number = :order_number

-- name: of_circuit
SELECT o.uuid, o.content, o.status, o.held
FROM service_order AS o JOIN circuit AS c ON c.id = o.circuit
WHERE c.circuit_number = :circuit_number ORDER BY o.id

-- name: working
SELECT o.uuid, o.content, o.status, o.held
FROM service_order AS o JOIN circuit AS c ON c.id = o.circuit
WHERE c.circuit_number = :circuit_number AND o.completed_rank IS NOT NULL
  AND o.order_type <> 'repair' -- it changes nothing of the line
ORDER BY o.completed_rank DESC LIMIT 1

-- name: open
SELECT uuid, content, status, held FROM service_order WHERE status = 'open' ORDER BY id

-- The orders that say what the lines of an office are, or are to be: open ones, and those by which
-- its circuits work; circuit by circuit.
-- name: of_office
SELECT o.uuid, o.content, o.status, o.held
FROM office AS f JOIN service_order AS o ON o.office = f.id
WHERE f.office = :office
  AND (o.status = 'open'
       OR (o.status = 'completed' AND o.order_type <> 'disconnect' AND o.order_type <> 'repair'
           AND o.completed_rank = (SELECT max(w.completed_rank) FROM service_order AS w
                                   WHERE w.circuit = o.circuit AND w.order_type <> 'repair')))
ORDER BY o.circuit, o.id

-- name: count_of_office
SELECT count(*) AS orders FROM office AS f JOIN service_order AS o ON o.office = f.id
WHERE f.office = :office

-- name: worked_before
SELECT o.uuid, o.content, o.status, o.held
FROM service_order AS later JOIN service_order AS o ON o.circuit = later.circuit
WHERE later.order_number = :order_number AND o.completed_rank < later.completed_rank
  AND o.order_type <> 'repair'
ORDER BY o.completed_rank DESC LIMIT 1

-- name: count
SELECT count(*) AS orders FROM service_order

-- name: count_open
SELECT count(*) AS orders FROM service_order WHERE status = 'open'

-- name: put
INSERT INTO service_order (uuid, order_number, circuit, office, order_type, due_date, installer,
                           premises_key, pair_key, pair_identity, status, held, content, digest)
VALUES (:uuid, :order_number, (SELECT id FROM circuit WHERE circuit_number = :circuit_number),
        (SELECT id FROM office WHERE office = :office), :order_type, :due_date, :installer,
        :premises_key, :pair_key, :pair_identity, 'open', :held, :content, :digest)
ON CONFLICT (order_number) DO UPDATE SET circuit = excluded.circuit, office = excluded.office,
    order_type = excluded.order_type, due_date = excluded.due_date,
    installer = excluded.installer, premises_key = excluded.premises_key,
    pair_key = excluded.pair_key, pair_identity = excluded.pair_identity,
    held = excluded.held, content = excluded.content,
    digest = excluded.digest

-- name: set_status
UPDATE service_order
SET status = :status, held = :held, digest = :digest,
    completed_rank = CASE WHEN :status = 'completed' THEN coalesce(completed_rank,
        (SELECT coalesce(max(completed_rank), 0) + 1 FROM service_order)) END
WHERE order_number = :order_number

-- Terminals whose bit is not set in :kept.
-- name: remove_terminals
DELETE FROM order_terminal
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND (:kept >> CAST(number AS INTEGER)) & 1 = 0

-- name: put_terminal
INSERT INTO order_terminal (service_order, number, dn, dn_key, spid, tei)
VALUES ((SELECT id FROM service_order WHERE order_number = :order_number), :number, :dn, :dn_key,
        :spid, :tei)
ON CONFLICT (service_order, number) DO UPDATE SET dn = excluded.dn, dn_key = excluded.dn_key,
    spid = excluded.spid, tei = excluded.tei

-- name: held
SELECT uuid, content, status, held FROM service_order WHERE held = 1 AND status = 'open' ORDER BY id

-- name: repairs
SELECT uuid, content, status, held FROM service_order WHERE order_type = 'repair' ORDER BY id

-- name: all
SELECT uuid, content, status, held FROM service_order ORDER BY id

-- An office or circuit that is not there gives an empty text.
-- name: columns
SELECT coalesce(c.circuit_number, '') AS circuit, coalesce(f.office, '') AS office, o.order_type,
       o.due_date, o.installer, o.premises_key, o.pair_key, o.pair_identity
FROM service_order AS o LEFT JOIN circuit AS c ON c.id = o.circuit
LEFT JOIN office AS f ON f.id = o.office
WHERE o.order_number = :order_number

-- name: terminals
SELECT t.number, t.dn, t.dn_key, t.spid, t.tei
FROM order_terminal AS t JOIN service_order AS o ON o.id = t.service_order
WHERE o.order_number = :order_number ORDER BY t.number

-- name: wrong_ranks
WITH done AS (
    SELECT o.order_number, o.completed_rank AS rank,
           (SELECT min(e.log_position) FROM event AS e
            WHERE e.order_number = o.order_number AND e.order_number <> ''
              AND e.kind = 'order_completed') AS place
    FROM service_order AS o WHERE o.completed_rank IS NOT NULL
)
SELECT order_number
FROM (SELECT order_number, place, max(place) OVER (ORDER BY rank) AS last FROM done) AS d
WHERE place < last ORDER BY order_number
