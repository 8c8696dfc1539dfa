-- The history: one chain per circuit and one for the register.

-- The log as it is told to others: of each event the first digits of its digest.
-- name: log_digests
SELECT substr(log_digest, 1, :digits) AS digest FROM event
WHERE log_position >= :first AND log_position <= :last ORDER BY log_position

-- Where in the log an event of a chain stands.
-- name: place_in_log
SELECT log_position FROM event WHERE subject = :subject AND sequence = :sequence

-- name: head
SELECT events, digest FROM chain_head WHERE subject = :subject

-- name: set_head
INSERT INTO chain_head (subject, events, digest) VALUES (:subject, :events, :digest)
ON CONFLICT (subject) DO UPDATE SET events = excluded.events, digest = excluded.digest

-- name: add
INSERT INTO event (subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
                   recorded_offset, kind, detail, previous, digest, log_position, station, sealed,
                   log_digest)
VALUES (:subject, :sequence, :order_number, :by, :at_utc, :at_offset, :recorded_utc,
        :recorded_offset, :kind, :detail, :previous, :digest, :log_position, :station, :sealed,
        :log_digest)

-- name: of_order
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest, log_position, log_digest
FROM event WHERE order_number = :order_number AND order_number <> ''
ORDER BY log_position

-- name: of_subject
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest, log_position, log_digest
FROM event WHERE subject = :subject ORDER BY sequence

-- name: of_register
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest, log_position, log_digest
FROM event WHERE subject = 'register' AND kind = :kind ORDER BY sequence

-- How often the registers were changed of which a bundle tells.
-- name: register_changes
SELECT count(*) AS changes FROM event
WHERE subject = 'register'
  AND (kind LIKE 'office%' OR kind LIKE 'person%' OR kind LIKE 'instrument%' OR kind LIKE 'issuer%'
       OR kind LIKE 'limit_set%')

-- name: between
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest, log_position, log_digest
FROM event WHERE log_position >= :first AND log_position <= :last ORDER BY log_position

-- All events in the order of the log, for LogWalk, which reads the columns by their place.
-- name: log
SELECT log_position, subject, order_number, actor, at_utc, recorded_utc, kind, detail, previous,
       at_offset, recorded_offset, sequence, digest, station, sealed, log_digest
FROM event NOT INDEXED ORDER BY log_position

-- name: heads
SELECT subject, events, digest FROM chain_head

-- name: log_head
SELECT m.value AS station, e.log_position, e.log_digest, e.recorded_utc, e.recorded_offset
FROM meta AS m LEFT JOIN event AS e ON e.log_position = (SELECT max(log_position) FROM event)
WHERE m.key = 'station'

-- name: in_log
SELECT station, log_digest, recorded_utc, recorded_offset FROM event
WHERE log_position = :log_position

-- name: count
SELECT count(*) AS events FROM event
