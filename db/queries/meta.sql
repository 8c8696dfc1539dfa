-- What is said of the database itself.

-- name: value
SELECT value FROM meta WHERE key = :key

-- name: put
INSERT INTO meta (key, value) VALUES (:key, :value)
ON CONFLICT (key) DO UPDATE SET value = excluded.value

-- A new tag and a new series, which the old ones cannot be: as migration 0001 draws them.
-- name: draw_station
UPDATE meta SET value = CASE key
    WHEN 'series' THEN printf('%03d', 1 + (CAST(value AS INTEGER) + abs(random() % 998)) % 999)
    ELSE (SELECT group_concat(substr('ABCDEFGHJKMNPQRSTUVWXYZ23456789', 1 + abs(random() % 31), 1), '')
          FROM (VALUES (1), (2), (3), (4), (5), (6)))
    END
WHERE key IN ('station', 'series')
