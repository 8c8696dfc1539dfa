-- What is said of the database itself.

-- name: value
SELECT value FROM meta WHERE key = :key

-- name: put
INSERT INTO meta (key, value) VALUES (:key, :value)
ON CONFLICT (key) DO UPDATE SET value = excluded.value
