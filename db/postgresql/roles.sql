-- Who may do what on a server, beside the owner of the tables: three groups, to which logins
-- belong. None of them owns a table, so none can put a trigger off. Run by the owner, as the tables
-- are made and wherever something of it is missing, as in a dump that was restored elsewhere.

DO $$
DECLARE
    wanted text;
BEGIN
    FOREACH wanted IN ARRAY ARRAY['installer', 'dispatcher', 'supervisor'] LOOP
        BEGIN
            IF NOT EXISTS (SELECT 1 FROM pg_roles WHERE rolname = wanted) THEN
                EXECUTE format('CREATE ROLE %I NOLOGIN', wanted);
            END IF;
        EXCEPTION WHEN duplicate_object OR unique_violation THEN
            NULL; -- the owner of another database of this server was faster
        END;
    END LOOP;
END $$;

GRANT USAGE ON SCHEMA public TO installer, dispatcher, supervisor;
GRANT SELECT ON ALL TABLES IN SCHEMA public TO installer, dispatcher, supervisor;

-- What every work on a line writes.
GRANT INSERT ON circuit, service_order, order_terminal, assignment, fact, decision, certificate,
    certificate_issue, event, chain_head, order_state, board_tally, hazard_order, draft, paper_due,
    instrument, calibration, public_key, bundle, carried_order, told_order, told_hazard,
    foreign_event, foreign_fact, conflict, settlement, meta
    TO installer, dispatcher, supervisor;
GRANT UPDATE ON service_order, order_terminal, assignment, chain_head, order_state, board_tally,
    draft, instrument, carried_order, told_order, told_hazard, conflict, meta
    TO installer, dispatcher, supervisor;
GRANT DELETE ON order_terminal, assignment, board_tally, draft, paper_due
    TO installer, dispatcher, supervisor;

-- What an office keeps.
GRANT INSERT, UPDATE ON office, office_test_line TO dispatcher, supervisor;
GRANT INSERT ON station TO dispatcher, supervisor;
GRANT UPDATE (log) ON station TO dispatcher, supervisor;
GRANT DELETE ON office_test_line TO dispatcher, supervisor;

-- What a supervisor answers for.
GRANT INSERT, UPDATE ON installer, issuer, limit_set TO supervisor;
GRANT UPDATE (lost) ON station TO supervisor;

-- For logins that only read, such as of a report: of a number that is not published its end.
CREATE OR REPLACE FUNCTION masked_test_lines() RETURNS TABLE (office text, label text, number text)
    LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
    AS $$SELECT o.office, t.label, repeat('*', greatest(length(t.number) - 2, 0)) || right(t.number, 2)
         FROM office_test_line AS t JOIN office AS o ON o.id = t.office ORDER BY 1, 2$$;
REVOKE ALL ON FUNCTION masked_test_lines() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION masked_test_lines() TO installer, dispatcher, supervisor;
