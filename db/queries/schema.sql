-- What the database is made of.

-- Statistics that SQLite itself keeps are nobody's.
-- name: all
SELECT type || ' ' || name, tbl_name || ': ' || coalesce(sql, '') FROM sqlite_schema
WHERE name NOT GLOB 'sqlite_stat*'
