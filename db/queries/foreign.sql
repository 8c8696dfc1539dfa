-- What other stations recorded: their chains, and where each fact comes from.

-- name: add_event
INSERT INTO foreign_event (station, subject, sequence, order_number, actor, at_utc, at_offset,
                           recorded_utc, recorded_offset, kind, detail, previous, digest)
VALUES (:station, :subject, :sequence, :order_number, :by, :at_utc, :at_offset, :recorded_utc,
        :recorded_offset, :kind, :detail, :previous, :digest)

-- name: events_of_order
SELECT station, subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
       recorded_offset, kind, detail, previous, digest
FROM foreign_event WHERE order_number = :order_number AND order_number <> ''
ORDER BY recorded_utc, station, sequence

-- name: chain
SELECT station, subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
       recorded_offset, kind, detail, previous, digest
FROM foreign_event WHERE station = :station AND subject = :subject ORDER BY sequence

-- name: digest
SELECT digest FROM foreign_event
WHERE station = :station AND subject = :subject AND sequence = :sequence

-- name: all_events
SELECT station, subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
       recorded_offset, kind, detail, previous, digest
FROM foreign_event ORDER BY station, subject, sequence

-- name: add_fact
INSERT INTO foreign_fact (fact, station, pair, ahead) VALUES (:fact, :station, :pair, :ahead)
ON CONFLICT (fact, station) DO NOTHING

-- Each fact once: of those who tell the same one the first by tag, whoever came first.
-- name: facts_of_order
SELECT x.fact, x.station, coalesce(s.station, '') AS name, x.pair, x.ahead
FROM service_order AS o JOIN fact AS f ON f.service_order = o.id
JOIN foreign_fact AS x ON x.fact = f.uuid
LEFT JOIN station AS s ON s.tag = x.station
WHERE o.order_number = :order_number
  AND x.station = (SELECT min(n.station) FROM foreign_fact AS n WHERE n.fact = x.fact)
ORDER BY f.id

-- Each fact with everybody who tells it.
-- name: tellers_of_order
SELECT x.fact, x.station, '' AS name, x.pair, x.ahead
FROM service_order AS o JOIN fact AS f ON f.service_order = o.id
JOIN foreign_fact AS x ON x.fact = f.uuid
WHERE o.order_number = :order_number ORDER BY x.station, f.id

-- Where chains of other stations were joined.
-- name: joins
SELECT subject, sequence, detail FROM event NOT INDEXED WHERE kind = :kind ORDER BY log_position
