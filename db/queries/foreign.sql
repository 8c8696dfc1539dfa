-- What other stations recorded: their chains, and where each fact comes from.

-- name: add_event
INSERT INTO foreign_event (station, subject, sequence, order_number, actor, at_utc, at_offset,
                           recorded_utc, recorded_offset, kind, detail, previous, digest)
VALUES (:station, :subject, :sequence, :order_number, :by, :at_utc, :at_offset, :recorded_utc,
        :recorded_offset, :kind, :detail, :previous, :digest)

-- As far as the order itself came home with them, or was opened here: a chain may be told further
-- with another order of the circuit, or tell of an order that is no order here.
-- name: events_of_order
SELECT e.station, e.subject, e.sequence, e.order_number, e.actor, e.at_utc, e.at_offset,
       e.recorded_utc, e.recorded_offset, e.kind, e.detail, e.previous, e.digest
FROM foreign_event AS e
JOIN service_order AS o ON o.order_number = e.order_number
JOIN circuit AS c ON c.id = o.circuit AND e.subject = 'circuit:' || c.circuit_number
WHERE e.order_number = :order_number AND e.order_number <> ''
  AND (EXISTS (SELECT 1 FROM told_order AS t WHERE t.service_order = o.id
               AND t.station = e.station AND t.events >= e.sequence)
       OR EXISTS (SELECT 1 FROM carried_order AS h WHERE h.service_order = o.id -- by these records
                  AND NOT EXISTS (SELECT 1 FROM station AS s WHERE s.tag = h.station)))
ORDER BY e.recorded_utc, e.station, e.sequence

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
