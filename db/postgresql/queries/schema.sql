-- What the database is made of, in the words of the server; triggers also by whether they fire.
-- name: all
SELECT 'table ' || c.relname AS thing,
       string_agg(a.attname || ' ' || format_type(a.atttypid, a.atttypmod)
                  || CASE WHEN a.attnotnull THEN ' not null' ELSE '' END
                  || CASE WHEN a.attidentity <> '' THEN ' identity' ELSE '' END
                  || coalesce(' default ' || pg_get_expr(d.adbin, d.adrelid), ''),
                  ', ' ORDER BY a.attnum) AS told
FROM pg_class AS c JOIN pg_attribute AS a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
LEFT JOIN pg_attrdef AS d ON d.adrelid = c.oid AND d.adnum = a.attnum
WHERE c.relnamespace = CAST('public' AS regnamespace) AND c.relkind = 'r'
GROUP BY c.relname
UNION ALL
SELECT 'view ' || c.relname, pg_get_viewdef(c.oid)
FROM pg_class AS c WHERE c.relnamespace = CAST('public' AS regnamespace) AND c.relkind = 'v'
UNION ALL
SELECT 'constraint ' || r.conname || ' of ' || c.relname,
       pg_get_constraintdef(r.oid) || CASE WHEN r.convalidated THEN '' ELSE ' not valid' END
FROM pg_constraint AS r JOIN pg_class AS c ON c.oid = r.conrelid
WHERE r.connamespace = CAST('public' AS regnamespace)
UNION ALL
SELECT 'index ' || c.relname, pg_get_indexdef(i.indexrelid) || CASE WHEN i.indisvalid THEN '' ELSE ' invalid' END
FROM pg_index AS i JOIN pg_class AS c ON c.oid = i.indexrelid
WHERE c.relnamespace = CAST('public' AS regnamespace)
UNION ALL
SELECT 'trigger ' || t.tgname || ' of ' || c.relname,
       pg_get_triggerdef(t.oid) || CASE WHEN t.tgenabled = 'O' THEN '' ELSE ', off' END
FROM pg_trigger AS t JOIN pg_class AS c ON c.oid = t.tgrelid
WHERE c.relnamespace = CAST('public' AS regnamespace) AND NOT t.tgisinternal
UNION ALL
SELECT 'checks of references of ' || c.relname, CAST(count(*) AS text)
FROM pg_trigger AS t JOIN pg_class AS c ON c.oid = t.tgrelid
WHERE c.relnamespace = CAST('public' AS regnamespace) AND t.tgisinternal AND t.tgenabled = 'O'
GROUP BY c.relname
UNION ALL
SELECT 'rule ' || r.rulename || ' of ' || c.relname, pg_get_ruledef(r.oid)
FROM pg_rewrite AS r JOIN pg_class AS c ON c.oid = r.ev_class
WHERE c.relnamespace = CAST('public' AS regnamespace) AND r.rulename <> '_RETURN'
UNION ALL
SELECT 'function ' || p.proname || '(' || pg_get_function_arguments(p.oid) || ')', pg_get_functiondef(p.oid)
FROM pg_proc AS p
WHERE p.pronamespace = CAST('public' AS regnamespace)
  AND NOT EXISTS (SELECT 1 FROM pg_depend AS d WHERE d.objid = p.oid AND d.deptype = 'e')
ORDER BY 1
