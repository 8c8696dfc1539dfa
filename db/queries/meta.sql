-- What is said of the database itself.

-- name: value
SELECT value FROM meta WHERE key = :key
