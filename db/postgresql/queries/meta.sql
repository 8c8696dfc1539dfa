-- As migration 0001 draws it.
-- name: draw_station
UPDATE meta SET value = (SELECT string_agg(substr('ABCDEFGHJKMNPQRSTUVWXYZ23456789', 1 + CAST(floor(random() * 31) AS integer), 1), '')
    FROM generate_series(1, 6))
WHERE key = 'station'
