-- The history: one chain per circuit and one for the register.

-- name: head
SELECT events, digest FROM chain_head WHERE subject = :subject

-- name: set_head
INSERT INTO chain_head (subject, events, digest) VALUES (:subject, :events, :digest)
ON CONFLICT (subject) DO UPDATE SET events = excluded.events, digest = excluded.digest

-- name: add
INSERT INTO event (subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc,
                   recorded_offset, kind, detail, previous, digest)
VALUES (:subject, :sequence, :order_number, :by, :at_utc, :at_offset, :recorded_utc,
        :recorded_offset, :kind, :detail, :previous, :digest)

-- name: of_order
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest
FROM event WHERE order_number = :order_number AND order_number <> '' ORDER BY id

-- name: of_subject
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest
FROM event WHERE subject = :subject ORDER BY sequence

-- name: all
SELECT subject, sequence, order_number, actor, at_utc, at_offset, recorded_utc, recorded_offset,
       kind, detail, previous, digest
FROM event ORDER BY subject, sequence

-- name: count
SELECT count(*) AS events FROM event
