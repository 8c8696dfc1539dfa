-- What is asked of the schema, for exports.

-- name: names
SELECT name FROM sqlite_master
WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name NOT LIKE 'order_search%'
ORDER BY name

-- name: counts
SELECT (SELECT count(*) FROM office) + (SELECT count(*) FROM service_order)
    + (SELECT count(*) FROM event WHERE subject <> 'register') AS rows
