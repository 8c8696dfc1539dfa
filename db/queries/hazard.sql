-- Hazards by pair and premises.

-- name: note
INSERT INTO hazard_order (pair, office, service_order)
SELECT :pair, :office, id FROM service_order WHERE order_number = :order_number
ON CONFLICT DO NOTHING

-- name: orders
SELECT o.order_number FROM service_order AS o
WHERE o.id IN (SELECT service_order FROM hazard_order) ORDER BY o.order_number

-- name: on_pair
SELECT o.order_number FROM hazard_order AS h JOIN service_order AS o ON o.id = h.service_order
WHERE h.pair = :pair AND h.pair <> '' AND h.office = :office AND o.order_number <> :order_number
UNION
SELECT t.order_number FROM told_hazard AS t
WHERE t.pair = :pair AND t.pair <> '' AND t.office = :office AND t.order_number <> :order_number
ORDER BY order_number

-- name: pairs
SELECT h.pair FROM service_order AS o JOIN hazard_order AS h ON h.service_order = o.id
WHERE o.order_number = :order_number ORDER BY h.pair

-- name: at_premises
SELECT o.order_number FROM service_order AS o
WHERE o.premises_key = :premises_key AND o.premises_key <> '' AND o.order_number <> :order_number
  AND EXISTS (SELECT 1 FROM hazard_order AS h WHERE h.service_order = o.id)
UNION
SELECT t.order_number FROM told_hazard AS t
WHERE t.premises_key = :premises_key AND t.premises_key <> '' AND t.order_number <> :order_number
ORDER BY order_number

-- name: open_orders_concerned
SELECT o.order_number FROM service_order AS o
WHERE o.premises_key <> '' AND o.order_number <> :order_number AND o.status = 'open'
  AND (o.premises_key = :premises_key
       OR o.premises_key IN (SELECT p.premises_key
                             FROM hazard_order AS h JOIN service_order AS p ON p.id = h.service_order
                             WHERE h.pair = :pair AND h.pair <> '' AND h.office = :office)
       OR o.premises_key IN (SELECT t.premises_key FROM told_hazard AS t
                             WHERE t.pair = :pair AND t.pair <> '' AND t.office = :office))
UNION
SELECT o.order_number FROM service_order AS o JOIN office AS f ON f.id = o.office
WHERE o.pair_identity = :pair AND o.pair_identity <> '' AND f.office = :office
  AND o.order_number <> :order_number AND o.status = 'open'
ORDER BY order_number

-- Orders of an office with a hazard that nobody closed.
-- name: open_at_office
SELECT DISTINCT o.order_number FROM hazard_order AS h
JOIN service_order AS o ON o.id = h.service_order
JOIN order_state AS s ON s.service_order = h.service_order
WHERE h.office = :office AND s.hazard = 1 ORDER BY o.order_number

-- Orders of which an office told, and that are not here.
-- name: told_elsewhere
SELECT DISTINCT t.order_number FROM told_hazard AS t
WHERE NOT EXISTS (SELECT 1 FROM service_order AS o WHERE o.order_number = t.order_number)
ORDER BY t.order_number

-- What the office told a van.
-- name: told
SELECT order_number, pair, office, premises_key, events, content FROM told_hazard
WHERE order_number = :order_number ORDER BY pair

-- name: told_with_card
SELECT DISTINCT order_number FROM told_hazard WHERE instr(CAST(content AS TEXT), :card) > 0
ORDER BY order_number

-- name: tell
INSERT INTO told_hazard (order_number, pair, office, premises_key, events, content)
VALUES (:order_number, :pair, :office, :premises_key, :events, :content)
ON CONFLICT (order_number, pair) DO UPDATE
SET office = excluded.office, premises_key = excluded.premises_key, events = excluded.events,
    content = excluded.content
