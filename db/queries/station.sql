-- Stations that work is exchanged with, bundles, and the orders that are out.

-- name: newest
SELECT station, tag, lost FROM station WHERE station = :station ORDER BY id DESC LIMIT 1

-- name: of_tag
SELECT station, tag, lost FROM station WHERE tag = :tag

-- name: all
SELECT station, tag, lost FROM station ORDER BY station, id

-- name: add
INSERT INTO station (station, tag, lost, log) VALUES (:station, :tag, 0, '')

-- name: log
SELECT log FROM station WHERE tag = :tag

-- name: put_log
UPDATE station SET log = :log WHERE tag = :tag

-- name: lose
UPDATE station SET lost = 1 WHERE station = :station

-- name: bundle
SELECT bundle, kind, station, chains FROM bundle WHERE bundle = :bundle

-- name: add_bundle
INSERT INTO bundle (bundle, kind, station, chains) VALUES (:bundle, :kind, :station, :chains)
ON CONFLICT (bundle) DO NOTHING

-- name: bundles_of_kind
SELECT bundle FROM bundle WHERE kind = :kind ORDER BY id

-- name: carry
INSERT INTO carried_order (service_order, station, bundle, content, at_utc, at_offset, back)
VALUES ((SELECT id FROM service_order WHERE order_number = :order_number), :station, :bundle,
        :content, :at_utc, :at_offset, 0)
ON CONFLICT (service_order, station, bundle) DO UPDATE SET back = 0

-- name: tell
INSERT INTO told_order (service_order, station, base, content, evidence, known, events)
VALUES ((SELECT id FROM service_order WHERE order_number = :order_number), :station, :base,
        :content, :evidence, :known, :events)
ON CONFLICT (service_order, station) DO UPDATE
SET base = excluded.base, content = excluded.content, known = excluded.known,
    evidence = CASE WHEN told_order.evidence > excluded.evidence THEN told_order.evidence
                    ELSE excluded.evidence END,
    events = CASE WHEN told_order.events > excluded.events THEN told_order.events
                  ELSE excluded.events END

-- name: told
SELECT t.station, t.base, t.content, t.evidence, t.known, t.events
FROM service_order AS o JOIN told_order AS t ON t.service_order = o.id
WHERE o.order_number = :order_number ORDER BY t.station

-- name: bring_home
UPDATE carried_order SET back = 1
WHERE service_order = (SELECT id FROM service_order WHERE order_number = :order_number)
  AND back = 0
  AND (station = :station OR station IN ( -- under a tag that it had before it was restored
       SELECT o.tag FROM station AS n JOIN station AS o ON o.station = n.station
       WHERE n.tag = :station))

-- The newest taking of each order by each station.
-- name: carried
SELECT o.order_number, c.station, coalesce(s.station, '') AS name, c.bundle, c.content, c.at_utc,
       c.at_offset, c.back
FROM carried_order AS c JOIN service_order AS o ON o.id = c.service_order
LEFT JOIN station AS s ON s.tag = c.station
WHERE c.id = (SELECT max(n.id) FROM carried_order AS n
              WHERE n.service_order = c.service_order AND n.station = c.station)
ORDER BY o.order_number, c.id

-- name: carried_of_order
SELECT o.order_number, c.station, coalesce(s.station, '') AS name, c.bundle, c.content, c.at_utc,
       c.at_offset, c.back
FROM service_order AS o JOIN carried_order AS c ON c.service_order = o.id
LEFT JOIN station AS s ON s.tag = c.station
WHERE o.order_number = :order_number
  AND c.id = (SELECT max(n.id) FROM carried_order AS n
              WHERE n.service_order = c.service_order AND n.station = c.station)
ORDER BY c.id
