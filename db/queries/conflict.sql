-- What two stations say otherwise, and how it was settled: the newest settlement counts, for what was
-- there when it was settled first.

-- name: add
INSERT INTO conflict (conflict, service_order, code, station, content, at_utc, at_offset, stands)
VALUES (:conflict, (SELECT id FROM service_order WHERE order_number = :order_number), :code,
        :station, :content, :at_utc, :at_offset, 1)
ON CONFLICT (conflict) DO UPDATE SET stands = 1 WHERE conflict.stands = 0

-- name: withdraw
UPDATE conflict SET stands = 0 WHERE conflict = :conflict

-- name: settle
INSERT INTO settlement (conflict, side, because, actor, at_utc, at_offset)
VALUES (:conflict, :side, :because, :by, :at_utc, :at_offset)

-- name: of_order
SELECT c.conflict, o.order_number, c.code, c.station, c.content, c.at_utc, c.at_offset, c.stands,
       s.side, s.because, s.actor, s.at_utc AS settled_utc, s.at_offset AS settled_offset,
       f.at_utc AS first_utc, f.at_offset AS first_offset
FROM service_order AS o JOIN conflict AS c ON c.service_order = o.id
LEFT JOIN settlement AS s
    ON s.id = (SELECT max(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
LEFT JOIN settlement AS f
    ON f.id = (SELECT min(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
WHERE o.order_number = :order_number ORDER BY c.id

-- name: all
SELECT c.conflict, o.order_number, c.code, c.station, c.content, c.at_utc, c.at_offset, c.stands,
       s.side, s.because, s.actor, s.at_utc AS settled_utc, s.at_offset AS settled_offset,
       f.at_utc AS first_utc, f.at_offset AS first_offset
FROM conflict AS c JOIN service_order AS o ON o.id = c.service_order
LEFT JOIN settlement AS s
    ON s.id = (SELECT max(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
LEFT JOIN settlement AS f
    ON f.id = (SELECT min(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
ORDER BY c.id

-- name: other_orders_at_premises
SELECT o.order_number FROM service_order AS o
WHERE o.premises_key = :premises_key AND o.order_number <> :order_number
  AND EXISTS (SELECT 1 FROM conflict AS c WHERE c.service_order = o.id AND c.stands = 1)
ORDER BY o.order_number

-- name: find
SELECT c.conflict, o.order_number, c.code, c.station, c.content, c.at_utc, c.at_offset, c.stands,
       s.side, s.because, s.actor, s.at_utc AS settled_utc, s.at_offset AS settled_offset,
       f.at_utc AS first_utc, f.at_offset AS first_offset
FROM conflict AS c JOIN service_order AS o ON o.id = c.service_order
LEFT JOIN settlement AS s
    ON s.id = (SELECT max(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
LEFT JOIN settlement AS f
    ON f.id = (SELECT min(n.id) FROM settlement AS n WHERE n.conflict = c.conflict)
WHERE c.conflict = :conflict
