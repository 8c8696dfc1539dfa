-- Evidence.

-- name: add
INSERT INTO fact (uuid, service_order, kind, at_utc, at_offset, installer, instrument, voids,
                  content, digest)
VALUES (:uuid, (SELECT id FROM service_order WHERE order_number = :order_number), :kind, :at_utc,
        :at_offset, :installer, :instrument, :voids, :content, :digest)

-- name: digest
SELECT digest FROM fact WHERE uuid = :uuid

-- name: find
SELECT uuid, content FROM fact WHERE uuid = :uuid

-- name: void_of
SELECT v.uuid, v.content FROM fact AS f JOIN fact AS v ON v.voids = f.uuid AND v.service_order = f.service_order
WHERE f.uuid = :uuid ORDER BY v.id LIMIT 1

-- name: of_order
SELECT f.uuid, f.content FROM fact AS f JOIN service_order AS o ON o.id = f.service_order
WHERE o.order_number = :order_number ORDER BY f.at_utc, f.id

-- What an installer said of visits to the premises, and of self-tests there, in other orders; what
-- was voided is left out. The index of the visits is small, that of the premises may not be.
-- name: visits_at_premises
SELECT f.uuid, f.content
FROM fact AS f CROSS JOIN service_order AS o ON o.id = f.service_order
WHERE f.kind IN ('visit', 'self_test') AND f.installer = :installer
  AND f.at_utc >= :from_utc AND f.at_utc < :before_utc
  AND o.premises_key = :premises_key AND o.order_number <> :order_number
  AND NOT EXISTS (SELECT 1 FROM fact AS v WHERE v.voids = f.uuid AND v.service_order = f.service_order)
ORDER BY f.at_utc, f.id

-- The visits of whomever, for the page of an order.
-- name: visits_of_all_at_premises
SELECT f.uuid, f.content
FROM service_order AS o CROSS JOIN fact AS f ON f.service_order = o.id
WHERE f.kind = 'visit' AND f.at_utc >= :from_utc AND f.at_utc < :before_utc
  AND o.premises_key = :premises_key AND o.order_number <> :order_number
  AND NOT EXISTS (SELECT 1 FROM fact AS v WHERE v.voids = f.uuid AND v.service_order = f.service_order)
ORDER BY f.at_utc, f.id

-- name: visits_of_installer
SELECT f.uuid, f.content
FROM fact AS f
WHERE f.kind IN ('visit', 'self_test') AND f.installer = :installer
  AND f.at_utc >= :from_utc AND f.at_utc < :before_utc
  AND NOT EXISTS (SELECT 1 FROM fact AS v WHERE v.voids = f.uuid AND v.service_order = f.service_order)
ORDER BY f.at_utc, f.id

-- name: other_orders_at_premises
SELECT o.order_number FROM service_order AS o
WHERE o.premises_key = :premises_key AND o.order_number <> :order_number
  AND EXISTS (SELECT 1 FROM fact AS f WHERE f.service_order = o.id
              AND f.at_utc >= :from_utc AND f.at_utc < :before_utc)
ORDER BY o.order_number

-- name: open_orders_using
SELECT DISTINCT o.order_number FROM fact AS f JOIN service_order AS o ON o.id = f.service_order
WHERE f.instrument = :instrument AND f.instrument <> '' -- as the index says it
  AND o.status = 'open' ORDER BY o.order_number

-- The make-ups of the pairs that an office holds, those of one order one after the other, oldest
-- first; what was voided is left out.
-- name: makeups_of_office
SELECT s.circuit_number, s.order_number, s.pair, s.kind, a.value AS held_pair,
       coalesce(f.content ->> 'pair', '') AS measured_pair, f.content
FROM assignment AS a
CROSS JOIN order_state AS s ON s.service_order = a.service_order
CROSS JOIN fact AS f ON f.service_order = a.service_order
WHERE a.kind = 'pair' AND a.scope = :office AND a.state <> 'released'
  AND f.kind = 'loop' AND json_type(f.content, '$.makeup') = 'object'
  AND NOT EXISTS (SELECT 1 FROM fact AS v WHERE v.voids = f.uuid AND v.service_order = f.service_order)
ORDER BY a.value, a.service_order, f.at_utc, f.id

-- name: pairs_of_office
SELECT count(*) AS pairs FROM assignment
WHERE kind = 'pair' AND scope = :office AND state <> 'released'
