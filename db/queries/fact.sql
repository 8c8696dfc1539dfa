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
SELECT uuid, content FROM fact WHERE voids = :uuid

-- name: of_order
SELECT f.uuid, f.content FROM fact AS f JOIN service_order AS o ON o.id = f.service_order
WHERE o.order_number = :order_number ORDER BY f.at_utc, f.id

-- name: at_premises
SELECT f.uuid, f.content FROM fact AS f JOIN service_order AS o ON o.id = f.service_order
WHERE o.premises_key = :premises_key AND f.at_utc >= :from_utc AND f.at_utc < :before_utc
ORDER BY f.at_utc, f.id

-- name: open_orders_using
SELECT DISTINCT o.order_number FROM fact AS f JOIN service_order AS o ON o.id = f.service_order
WHERE f.instrument = :instrument AND f.instrument <> '' -- as the index says it
  AND o.status = 'open' ORDER BY o.order_number
