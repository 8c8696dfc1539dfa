-- What is said of the database itself.

-- name: value
SELECT value FROM meta WHERE key = :key

-- name: put
INSERT INTO meta (key, value) VALUES (:key, :value)
ON CONFLICT (key) DO UPDATE SET value = excluded.value

-- As migration 0001 draws it.
-- name: draw_station
UPDATE meta SET value = (SELECT group_concat(substr('ABCDEFGHJKMNPQRSTUVWXYZ23456789', 1 + abs(random() % 31), 1), '')
    FROM (VALUES (1), (2), (3), (4), (5), (6)))
WHERE key = 'station'
