-- Limit sets.

-- name: add
INSERT INTO limit_set (version, valid_from, content, digest)
VALUES (:version, :valid_from, :content, :digest)

-- name: find
SELECT version, content FROM limit_set WHERE version = :version

-- name: in_force
SELECT version, content FROM limit_set WHERE valid_from <= :day
ORDER BY valid_from DESC, id DESC LIMIT 1

-- name: all
SELECT version, content FROM limit_set ORDER BY valid_from, id
