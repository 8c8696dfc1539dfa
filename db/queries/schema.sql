-- What the database is made of.

-- Statistics that SQLite itself keeps are nobody's, in the tables that it makes for them: what only
-- bears such a name is none. A name whose bytes were made a blob reads as before, and is none.
-- name: all
SELECT type || ' ' || name,
       tbl_name || ': ' || coalesce(sql, '')
           || CASE WHEN typeof(type) = 'text' AND typeof(name) = 'text' AND typeof(tbl_name) = 'text'
                    AND typeof(sql) IN ('text', 'null') THEN '' ELSE ', not as text' END
FROM sqlite_schema
WHERE (type, name, tbl_name, sql) NOT IN (
    VALUES ('table', 'sqlite_stat1', 'sqlite_stat1', 'CREATE TABLE sqlite_stat1(tbl,idx,stat)'),
           ('table', 'sqlite_stat4', 'sqlite_stat4',
            'CREATE TABLE sqlite_stat4(tbl,idx,neq,nlt,ndlt,sample)'))
