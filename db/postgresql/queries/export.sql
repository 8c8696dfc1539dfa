-- name: tables_there
SELECT tablename AS name FROM pg_tables WHERE schemaname = 'public' ORDER BY tablename
