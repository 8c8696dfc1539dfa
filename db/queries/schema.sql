-- What the database is made of.

-- Statistics that SQLite itself keeps are nobody's. A name whose bytes were made a blob reads as
-- before, and is none.
-- name: all
SELECT type || ' ' || name,
       tbl_name || ': ' || coalesce(sql, '')
           || CASE WHEN typeof(type) = 'text' AND typeof(name) = 'text' AND typeof(tbl_name) = 'text'
                    AND typeof(sql) IN ('text', 'null') THEN '' ELSE ', not as text' END
FROM sqlite_schema
WHERE name NOT GLOB 'sqlite_stat*'
